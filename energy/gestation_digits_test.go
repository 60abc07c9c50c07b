package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Ten weeks are taken of a bitch, nine to the birth and one overdue, so that
// days of gestation end with day 70.
func TestDaysOfGestationForWeeks(t *testing.T) {
	for week, want := range map[int]bool{11: true, 70: true, 71: false} {
		_, err := energy.Gestation{Animal: animal(energy.Dog, 18*kg), Week: week}.Estimate()
		var field *units.FieldError
		if !errors.As(err, &field) || field.Field != "week" || strings.Contains(field.Hint, "days?") != want {
			t.Errorf("week %d: %v, want days in the hint: %v", week, err, want)
		}
	}
	if text := estimate(t, energy.Gestation{Animal: animal(energy.Dog, 18*kg), Week: 1}).Explain(); !strings.Contains(text, "1, counted from mating") {
		t.Errorf("week 1 is not in\n%s", text)
	}
}

func TestIdealWeightOfANewborn(t *testing.T) {
	a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Age: energy.Day, Condition: energy.BCS9(7)}
	if _, err := energy.IdealWeight(a, 0); fieldsOf(err) != "age" {
		t.Errorf("%v, want the age refused", err)
	}
}

func TestFirstWeekOfLactationIsInTheWorking(t *testing.T) {
	s := energy.Lactation{Animal: animal(energy.Dog, 18*kg), Young: 4, Week: 1}
	if text := estimate(t, s).Explain(); !strings.Contains(text, "week 1 from birth") {
		t.Errorf("week 1 is not in\n%s", text)
	}
}

// The least of an adult ferret is 400 g (ours).
func TestFerretBeforeMating(t *testing.T) {
	for before, want := range map[units.Mass]string{399: "weight before mating", 400: ""} {
		s := energy.Gestation{Animal: animal(energy.Ferret, 500*units.Gram), Week: 5, WeightBeforeMating: before}
		if _, err := s.Estimate(); fieldsOf(err) != want {
			t.Errorf("%v: %v, want %q refused", before, err, want)
		}
	}
}

// Factors of a bitch's milk are published for four weeks (NRC 2006, from memory).
func TestLastPublishedWeekOfLactation(t *testing.T) {
	for week, want := range map[int]bool{4: false, 5: true} {
		s := energy.Lactation{Animal: animal(energy.Dog, 18*kg), Young: 4, Week: week}
		if text := estimate(t, s).Explain(); strings.Contains(text, "week 4, the last published") != want {
			t.Errorf("week %d, the last published: want %t in\n%s", week, want, text)
		}
	}
}

// A queen's factor rises to 2.0 at birth, and stays (Hand and others 2010, p. 410):
// 16 kg have 560 kcal, and 1.6, 1.8 and 2.0 times that are 896, 1008 and 1120.
func TestQueenAtTheEndOfHerWeeks(t *testing.T) {
	for week, want := range map[int]units.Energy{0: 1120, 1: 896, 5: 1008, 9: 1120, 10: 1120} {
		s := energy.Gestation{Animal: animal(energy.Cat, 16*kg), Week: week, Method: energy.FactorOnRER}
		if got := estimate(t, s).Daily; got < want-1e-9 || want+1e-9 < got {
			t.Errorf("week %d: %v, want %v", week, got, want)
		}
	}
}
