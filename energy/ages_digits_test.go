package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// At six months an animal is grown, a day before it is not (ours): for adults,
// ideal weights, gain and what is usual of a prescribed figure.
func TestGrownAtSixMonths(t *testing.T) {
	const half = 6 * energy.Month
	for age, grown := range map[energy.Age]bool{half: true, half - 1: false} {
		a := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Age: age, Condition: energy.BCS9(5)}
		thin := a
		thin.Ideal, thin.Condition = 20*kg, energy.BCS9(4)
		ideal := func() error { _, err := energy.IdealWeight(thin, energy.RecordedIdeal); return err }
		for name, err := range map[string]error{
			"adult":        failure(energy.Adult{Animal: a, Status: energy.Neutered}),
			"weight gain":  failure(energy.WeightGain{Animal: thin}),
			"ideal weight": ideal(),
		} {
			refused := err != nil && strings.Contains(err.Error(), "6 mo or more")
			if refused == grown || grown && err != nil {
				t.Errorf("%s at %v: %v, want it accepted: %t", name, age, err, grown)
			}
		}
		s := energy.Prescribed{Animal: a, Daily: 100, By: "Dr A. Example"}
		if got := told(t, s, "in growth"); got == grown {
			t.Errorf("prescribed at %v: held against growth: %t", age, got)
		}
		if got := told(t, energy.Resting{Animal: a}, "needs a multiple of its resting energy"); got == grown {
			t.Errorf("resting at %v: told that it needs more: %t", age, got)
		}
	}
}

func failure(s energy.Stage) error {
	_, err := s.Estimate()
	return err
}

// Thin to 3/9, very thin to 2/9 (ours, after Pointer 2013); five days unfed are
// more than four (Koret: "more than 5-10 days").
func TestThinAndUnfedByAVeterinariansFigure(t *testing.T) {
	prescribed := func(score, unfed int) energy.Stage {
		return energy.Prescribed{Animal: energy.Animal{
			Species: energy.Dog, Weight: 16 * kg, Age: 4 * energy.Year, Condition: energy.BCS9(score), DaysUnfed: unfed,
		}, Daily: 560 * units.Kilocalorie, By: "Dr A. Example"}
	}
	for score, want := range map[int]string{2: "very thin (2/9): small meals", 3: "thin (3/9): find the cause"} {
		if !told(t, prescribed(score, 0), want) {
			t.Errorf("%d/9: %v, want %s", score, estimate(t, prescribed(score, 0)).Cautions(), want)
		}
	}
	for days, want := range map[int]bool{4: false, 5: true, 6: true} {
		if got := told(t, prescribed(5, days), "refeeding can kill"); got != want {
			t.Errorf("%d days unfed: told of refeeding: %t", days, got)
		}
	}
}

// Ours: before twelve weeks no puppy has more than six tenths of its adult weight,
// from six months on none less than three tenths; 25 kg is a large breed; Klein's
// puppies were over 8 weeks.
func TestPuppiesAtTheBoundsOfAgeAndWeight(t *testing.T) {
	for _, tt := range []struct {
		age           energy.Age
		weight, adult units.Mass
		method        energy.Method
		text          string
		want          bool
	}{
		{12*energy.Week - 1, 7 * kg, 10 * kg, 0, "is unusual at", true},
		{12 * energy.Week, 7 * kg, 10 * kg, 0, "is unusual at", false},
		{6 * energy.Month, 2.9 * kg, 10 * kg, 0, "is unusual at", true},
		{6*energy.Month - 1, 2.9 * kg, 10 * kg, 0, "is unusual at", false},
		{8 * energy.Month, 25 * kg, 0, 0, "25 kg or more when grown", true},
		{8 * energy.Month, 24.9 * kg, 0, 0, "25 kg or more when grown", false},
		{8*energy.Week - 1, 3 * kg, 10 * kg, energy.Klein2019, "over 8 weeks old", true},
		{8 * energy.Week, 3 * kg, 10 * kg, energy.Klein2019, "over 8 weeks old", false},
		{0, 3 * kg, 10 * kg, energy.Klein2019, "over 8 weeks old", false}, // not given
	} {
		s := energy.Growth{
			Animal:      energy.Animal{Species: energy.Dog, Weight: tt.weight, Age: tt.age, Condition: energy.BCS9(5)},
			AdultWeight: tt.adult, Method: tt.method,
		}
		if got := told(t, s, tt.text); got != tt.want {
			t.Errorf("%v at %v: told %q: %t, want %t", tt.weight, tt.age, tt.text, got, tt.want)
		}
	}
}
