package energy_test

import (
	"errors"
	"fmt"
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

// Five thirds of the 1680 kcal that are three times 560 are 2800 kcal, beyond
// which it is referred (ours).
func TestPrescribedFarAboveTheUsual(t *testing.T) {
	for daily, want := range map[units.Energy]advice.Level{1681: advice.Warn, 2800: advice.Warn, 2801: advice.Refer} {
		s := energy.Prescribed{Animal: animal(energy.Dog, 16*kg), Daily: daily, By: "Dr A. Example"}
		cautioned(t, s, want, "above 0.5 to 3 times its resting energy (280 kcal to 1680 kcal)")
	}
}

// Refeeding ends at the resting energy, 560 kcal of 16 kg; it may be reached.
func TestStarvedDogToItsRestingEnergy(t *testing.T) {
	for daily, want := range map[units.Energy]bool{560: false, 561: true} {
		starved := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(1)}
		s := energy.Prescribed{Animal: starved, Daily: daily, By: "Dr A. Example"}
		if got := told(t, s, "refeeding starts at a part of the resting energy, 560 kcal, and ends at it"); got != want {
			t.Errorf("%v: told %t", daily, got)
		}
	}
}

// What is usual is rounded outwards to whole kilocalories, so that no figure that
// is written as usual is cautioned. By hand: 1.234 kg × 200 and × 600 are 246.8 and
// 740.4 kcal; 0.57 kg are 114 and 342, 1.1 kg 220 and 660 exactly.
func TestUsualOfAFerretAsItIsWritten(t *testing.T) {
	for grams, usual := range map[units.Mass][2]units.Energy{1234: {246, 741}, 570: {114, 342}, 1100: {220, 660}} {
		for daily, want := range map[units.Energy]bool{usual[0] - 1: true, usual[0]: false, usual[1]: false, usual[1] + 1: true} {
			s := energy.Prescribed{Animal: animal(energy.Ferret, grams*units.Gram), Daily: daily, By: "Dr A. Example"}
			text := fmt.Sprintf("(%v to %v)", usual[0], usual[1])
			if got := told(t, s, text); got != want {
				t.Errorf("%v of %v g: told of %s: %t", daily, float64(grams), text, got)
			}
		}
	}
}

// A weight that stayed has no sign.
func TestWeightThatStayed(t *testing.T) {
	s := energy.Observed{Animal: animal(energy.Dog, 16*kg), Intake: 900, Over: 14 * energy.Day, Before: 16 * kg}
	if text := estimate(t, s).Explain(); !strings.Contains(text, "weights   16 kg, then 16 kg: 0.0 %\n") {
		t.Errorf("want 0.0 %% in\n%s", text)
	}
}
