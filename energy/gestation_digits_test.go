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
