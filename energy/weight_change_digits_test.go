package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestNoWeightPlanForANewborn(t *testing.T) {
	fat := energy.Animal{Species: energy.Dog, Weight: 30 * kg, Age: energy.Day, Condition: energy.BCS9(8)}
	_, err := energy.WeightLoss{Animal: fat}.Estimate()
	var refused *energy.VeterinarianError
	if !errors.As(err, &refused) || refused.Field != "age" {
		t.Errorf("weight loss: %v, want the age refused", err)
	}
	thin := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Age: energy.Day, Condition: energy.BCS9(4), Ideal: 22 * kg}
	if _, err := (energy.WeightGain{Animal: thin}).Estimate(); fieldsOf(err) != "age" {
		t.Errorf("weight gain: %v, want the age refused", err)
	}
}

// A dog may miss a day and not two (ours); a cat not one.
func TestNoWeightLossForOneThatHasStoppedEating(t *testing.T) {
	for _, tt := range []struct {
		species energy.Species
		weight  units.Mass
		days    int
		want    string
	}{
		{energy.Dog, 30 * kg, 0, ""},
		{energy.Dog, 30 * kg, 1, ""},
		{energy.Dog, 30 * kg, 2, "days unfed"},
		{energy.Dog, 30 * kg, 4, "days unfed"},
		{energy.Cat, 6 * kg, 0, ""},
		{energy.Cat, 6 * kg, 1, "days unfed"},
	} {
		a := energy.Animal{Species: tt.species, Weight: tt.weight, Condition: energy.BCS9(8), DaysUnfed: tt.days}
		_, err := energy.WeightLoss{Animal: a}.Estimate()
		field := ""
		var refused *energy.VeterinarianError
		if errors.As(err, &refused) {
			field = refused.Field
		}
		if field != tt.want || (err == nil) != (tt.want == "") {
			t.Errorf("%v, %d days: %v, want %q refused", tt.species, tt.days, err, tt.want)
		}
	}
}

// A dog may lose 0.5 to 2 % a week (SACN 5th ed., Box 27-12): 0.005 and 0.02 of
// its weight.
func TestRateTypedAsAFraction(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 30 * kg, Condition: energy.BCS9(8)}
	for rate, want := range map[units.Percent]bool{0.0049: false, 0.005: true, 0.02: true, 0.0201: false} {
		_, err := energy.WeightLoss{Animal: dog, Status: energy.Neutered, Method: energy.Deficit, Rate: rate}.Estimate()
		if err == nil || strings.Contains(err.Error(), "a fraction?") != want {
			t.Errorf("%v: %v, want a fraction seen: %v", float64(rate), err, want)
		}
	}
}
