package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// refusal returns the reason why a veterinarian must decide, or nothing.
func refusal(s energy.Stage) string {
	_, err := s.Estimate()
	var v *energy.VeterinarianError
	if errors.As(err, &v) {
		return v.Reason
	}
	return ""
}

// A cat that eats less than half of its plan is in danger (Hand and others 2010,
// p. 529). By hand, with the deficit of Table 27-15: 8 kg have a resting energy of
// 70 × 4.75683 = 332.98 kcal, neutered 1.2 times that, 399.57; 0.5 % a week are
// 0.04 kg, 7920 × 0.04 / 7 = 45.26 kcal a day, which leaves 354.32, half of it
// 177.16. Six tenths of the resting energy of 4 kg are only 118.8.
func TestCatThatEatsHalfOfItsPlan(t *testing.T) {
	for intake, want := range map[units.Energy]bool{177: true, 178: false} {
		s := energy.WeightLoss{
			Animal: energy.Animal{Species: energy.Cat, Weight: 8 * kg, Ideal: 4 * kg, Condition: energy.BCS9(9)},
			Status: energy.Neutered, Method: energy.Deficit, Rate: 0.5, Intake: intake,
		}
		if got := refusal(s); strings.Contains(got, "less than half of its plan, 354 kcal, is in danger") != want {
			t.Errorf("cat eating %v: %q, want it refused: %t", intake, got, want)
		}
		s.Animal.Species, s.Animal.Weight, s.Animal.Ideal = energy.Dog, 8*kg, 4*kg
		if got := refusal(s); strings.Contains(got, "half of its plan") {
			t.Errorf("dog eating %v: %q, want no word of half a plan", intake, got)
		}
	}
}

// Where no ideal weight is recorded, what must be eaten at least is that of the
// weight the score stands for. By hand: 6 kg at 8/9 are 6 / 1.3 = 4.615 kg ideal,
// 70 × 3.1489 = 220.4 kcal resting, six tenths of it 132.3; of 6 kg it would be
// 161.0. Ours.
func TestLeastEatenIsOfTheIdealWeight(t *testing.T) {
	for intake, want := range map[units.Energy]bool{132: true, 133: false, 160: false} {
		s := energy.WeightLoss{
			Animal: energy.Animal{Species: energy.Cat, Weight: 6 * kg, Condition: energy.BCS9(8)}, Intake: intake,
		}
		if got := refusal(s); strings.Contains(got, "0.6 of the resting energy (220 kcal)") != want {
			t.Errorf("%v: %q, want it refused: %t", intake, got, want)
		}
	}
	// At 5/9 the weight is the ideal one: 70 × 2.8284 = 198.0 kcal for 4 kg, 118.8.
	for intake, want := range map[units.Energy]bool{118: true, 119: false} {
		s := energy.Observed{Animal: energy.Animal{Species: energy.Cat, Weight: 4 * kg, Condition: energy.BCS9(5)}, Intake: intake}
		if got := refusal(s); strings.Contains(got, "0.6 of the resting energy (198 kcal)") != want {
			t.Errorf("%v at 5/9: %q, want it refused: %t", intake, got, want)
		}
	}
}

// Ferrets of 2 kg: 200 to 600 kcal/kg (Hand and others 2010, Table 70-1: 200 to
// 300; twice the high end ours) are 400 to 1200 kcal; below 200 and above 2000 it is
// referred, ours.
func TestUsualOfAFerretGoesWithItsWeight(t *testing.T) {
	for daily, want := range map[units.Energy]advice.Level{
		199: advice.Refer, 200: advice.Warn, 399: advice.Warn, 400: 0, 1200: 0, 1201: advice.Warn, 2000: advice.Warn, 2001: advice.Refer,
	} {
		for _, s := range []energy.Stage{
			energy.Prescribed{Animal: animal(energy.Ferret, 2*kg), Daily: daily, By: "Dr A. Example"},
			energy.Observed{Animal: animal(energy.Ferret, 2*kg), Intake: daily},
		} {
			var got advice.Level
			for _, c := range estimate(t, s).Cautions() {
				if strings.Contains(c.Text, "200 kcal/kg to twice 300 kcal/kg (400 kcal to 1200 kcal)") {
					got = c.Level
				}
			}
			if got != want {
				t.Errorf("%T of %v: level %v, want %v", s, daily, got, want)
			}
		}
	}
}

// An intake is refused from five thirds of three times the resting energy on,
// ours. By hand: 16 kg have 560 kcal, and 560 × 3 × 5 / 3 = 2800.
func TestIntakeFarAboveTheUsual(t *testing.T) {
	for intake, want := range map[units.Energy]bool{2800: false, 2801: true} {
		_, err := energy.WeightLoss{
			Animal: energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(8)}, Intake: intake,
		}.Estimate()
		if got := err != nil && strings.Contains(err.Error(), "at most 2800 kcal a day"); got != want {
			t.Errorf("%v: %v, want it refused: %t", intake, err, want)
		}
	}
}

// More than twice the weight is no ideal weight for a thin animal (ours).
func TestIdealOfTwiceTheWeight(t *testing.T) {
	for ideal, want := range map[units.Mass]bool{8 * kg: false, 8.1 * kg: true} {
		_, err := energy.IdealWeight(energy.Animal{Species: energy.Dog, Weight: 4 * kg, Ideal: ideal}, energy.RecordedIdeal)
		if got := err != nil && strings.Contains(err.Error(), "at most twice the current 4 kg"); got != want {
			t.Errorf("%v: %v, want it refused: %t", ideal, err, want)
		}
	}
}
