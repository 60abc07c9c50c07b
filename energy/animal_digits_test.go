package energy_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// told reports whether a caution of the stage's estimate contains the text.
func told(t *testing.T, s energy.Stage, text string) bool {
	t.Helper()
	for _, c := range estimate(t, s).Cautions() {
		if strings.Contains(c.Text, text) {
			return true
		}
	}
	return false
}

// An age is counted from 1, so that the first day of life is an age like any
// other, not an age that isn't known.
func TestFirstDayOfLifeIsAnAge(t *testing.T) {
	dog := animal(energy.Dog, 20*kg)
	dog.Age = energy.Day
	for _, s := range []energy.Stage{
		energy.Adult{Animal: dog, Status: energy.Neutered},
		energy.Gestation{Animal: dog, Week: 3},
		energy.Lactation{Animal: dog, Week: 3, Young: 4},
		energy.Observed{Animal: dog, Intake: 900},
		energy.Refeeding{Animal: dog, Ladder: energy.FourDayLadder(), Day: 1, By: "Dr A. Example"},
	} {
		_, err := s.Estimate()
		if err == nil || !strings.Contains(err.Error(), `age "1 d"`) {
			t.Errorf("%T: %v, want the age refused", s, err)
		}
	}

	puppy := energy.Animal{Species: energy.Dog, Weight: 0.3 * kg, Age: energy.Day, Condition: energy.BCS9(8)}
	s := energy.Prescribed{Animal: puppy, Daily: 60, By: "Dr A. Example"}
	if !told(t, s, "chilled") {
		t.Error("nothing of a chilled puppy")
	}
	if told(t, s, "plan a weight loss") {
		t.Error("a weight loss for a newborn")
	}
	if text := estimate(t, s).Explain(); !strings.Contains(text, "1 d old") || !strings.Contains(text, "in growth") {
		t.Errorf("without the age, or without the bounds of growth:\n%s", text)
	}
	puppy.Condition = energy.Condition{}
	if !told(t, energy.Resting{Animal: puppy}, "growing, pregnant or lactating") {
		t.Error("nothing of growth beside a newborn's resting energy")
	}
}

func TestNoWeightLossIsPlannedForAnAnimalADayUnfed(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 30 * kg, Condition: energy.BCS9(8)}
	fed := energy.Prescribed{Animal: dog, Daily: 900, By: "Dr A. Example"}
	unfed := fed
	unfed.Animal.DaysUnfed = 1
	if !told(t, fed, "plan a weight loss") || told(t, unfed, "plan a weight loss") {
		t.Error("want a weight loss planned for the fed dog only")
	}
}

// The bounds of an adult dog, 800 g and 120 kg, typed as a number of grams.
func TestKilogramsForGramsAreSeenUpToTheBounds(t *testing.T) {
	for grams, hint := range map[units.Mass]string{
		0.799: "", 0.8: "kilograms? 0.8 kg is in range", 120: "kilograms? 120 kg is in range", 120.1: "",
	} {
		_, err := energy.Adult{Animal: animal(energy.Dog, grams*units.Gram), Status: energy.Intact}.Estimate()
		var field *units.FieldError
		if !errors.As(err, &field) || field.Field != "weight" || strings.Contains(field.Hint, "kilograms?") != (hint != "") || !strings.Contains(field.Hint, hint) {
			t.Errorf("%v g: %v, want the hint %q", float64(grams), err, hint)
		}
	}
}

// A half point whose second digit is a nine is a half point as well.
func TestHalfPointsOfAnyDigit(t *testing.T) {
	for text, half := range map[string]bool{"5.5/9": true, "4,9/9": true, "9.9/9": true, "5.a/9": false, "a.5/9": false} {
		_, err := energy.ParseCondition(text)
		if err == nil || strings.Contains(err.Error(), "half points are not taken") != half {
			t.Errorf("%s: %v, want half points named: %v", text, err, half)
		}
	}
}

// Architectures may differ in the last bits, and a record may come from
// another one.
func TestEstimateOffByTheLastBitFollows(t *testing.T) {
	s := energy.Adult{Animal: animal(energy.Dog, 20*kg), Status: energy.Neutered}
	const text = "not those its stage gives"
	for factor, want := range map[float64]bool{1: false, math.Nextafter(1, 2): false, 1 + 1e-9: true} {
		e := estimate(t, s)
		e.Daily *= units.Energy(factor)
		found := false
		for _, c := range e.Cautions() {
			found = found || c.Level == advice.Refer && strings.Contains(c.Text, text)
		}
		if found != want {
			t.Errorf("times %v: refused %v, want %v", factor, found, want)
		}
	}
}

// A caution that refers to the veterinarian comes first, also where it is the
// only one.
func TestTheOnlyCautionComesFirst(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(5), Circumstances: energy.TherapeuticDiet}
	e := estimate(t, energy.Prescribed{Animal: dog, Daily: 1000, By: "Dr A. Example"})
	if n := len(e.Cautions()); n != 1 {
		t.Fatalf("%d cautions, want one", n)
	}
	if text := e.Explain(); !strings.HasPrefix(text, "caution ") {
		t.Errorf("the caution isn't first in\n%s", text)
	}
}
