package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// By hand: 16 kg have a resting energy of 70 × 8 = 560 kcal, and half of it to
// three times it, 280 to 1680 kcal, is usual. Below half of that, 140 kcal, it
// is referred. Both are ours.
func TestPrescribedFarBelowTheUsual(t *testing.T) {
	for daily, want := range map[units.Energy]advice.Level{139: advice.Refer, 140: advice.Warn, 279: advice.Warn} {
		found := false
		for _, c := range estimate(t, energy.Prescribed{Animal: animal(energy.Dog, 16*kg), Daily: daily, By: "Dr A. Example"}).Cautions() {
			found = found || c.Level == want && strings.Contains(c.Text, "below 0.5 to 3 times its resting energy (280 kcal to 1680 kcal)")
		}
		if !found {
			t.Errorf("%v: want level %v", daily, want)
		}
	}
}

// By hand: 62.5 g have 70 × 0.125 = 8.75 kcal, so that 4 to 27 kcal, rounded
// outwards, are usual, and 4,000 to 27,000 if a dot was taken for a comma.
func TestThreeDigitsTooMany(t *testing.T) {
	for daily, want := range map[units.Energy]bool{3999: false, 4000: true, 27000: true, 27001: false} {
		s := energy.Prescribed{Animal: animal(energy.Dog, 62.5*units.Gram), Daily: daily, By: "Dr A. Example"}
		if got := told(t, s, "three digits too many?"); got != want {
			t.Errorf("%v: told %v, want %v", daily, got, want)
		}
	}
}

// Of 40 g, two hundredths are 0.8 g: a gain of less than a gram is a gain.
func TestGainOfLessThanAGram(t *testing.T) {
	s := energy.Observed{Animal: animal(energy.Other, 40.9*units.Gram), Intake: 12, Over: 14 * energy.Day, Before: 40 * units.Gram}
	if !told(t, s, "it needs less than it ate") {
		t.Errorf("%v", estimate(t, s).Cautions())
	}
}

func TestIntakeOfOneDayIsInTheWorking(t *testing.T) {
	s := energy.Observed{Animal: animal(energy.Dog, 20*kg), Intake: 900, Over: energy.Day, Before: 20 * kg}
	if text := estimate(t, s).Explain(); !strings.Contains(text, "eaten a day, measured over 1 day\n") {
		t.Errorf("one day is not in\n%s", text)
	}
}

// Less than a kilocalorie a day keeps no dog's weight.
func TestIntakeOfAPartOfAKilocalorie(t *testing.T) {
	_, err := energy.Observed{Animal: animal(energy.Dog, 20*kg), Intake: 0.5}.Estimate()
	var refused *energy.VeterinarianError
	if !errors.As(err, &refused) || refused.Field != "intake" {
		t.Errorf("%v, want the intake refused", err)
	}
}
