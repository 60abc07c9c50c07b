package energy_test

import (
	"errors"
	"testing"

	"example.org/bowlgram/energy"
)

const need = "; needed: a veterinarian's kcal a day (Prescribed) or, for a starved animal, ladder (Refeeding), with the name"

// gated are the animals that get no computed amount.
var gated = []struct {
	field  string
	change func(*energy.Animal)
	want   string
}{
	{
		"condition", func(a *energy.Animal) { a.Condition = energy.BCS9(2) },
		`energy: condition "2/9": very thin: too much food too soon can kill (refeeding)` + need,
	},
	{
		"condition", func(a *energy.Animal) { a.Condition = energy.BCS9(1) },
		`energy: condition "1/9": very thin: too much food too soon can kill (refeeding)` + need,
	},
	{
		"condition", func(a *energy.Animal) { a.Condition = energy.BCS5(1) },
		`energy: condition "1/5": very thin: too much food too soon can kill (refeeding)` + need,
	},
	{
		"days unfed", func(a *energy.Animal) { a.DaysUnfed = 5 },
		`energy: days unfed "5": long without food: too much food too soon can kill (refeeding)` + need,
	},
	{
		"circumstances", func(a *energy.Animal) { a.Circumstances = energy.Ill },
		`energy: circumstances "ill": an ill animal is not fed by an equation for healthy ones` + need,
	},
	{
		"circumstances", func(a *energy.Animal) { a.Circumstances = energy.TubeFed },
		`energy: circumstances "tube_fed": tube feeding is set by the clinician` + need,
	},
}

func TestGatedAnimalGetsNoComputedAmount(t *testing.T) {
	for _, tt := range gated {
		a := animal(energy.Dog, 20*kg)
		tt.change(&a)
		for _, s := range []energy.Stage{energy.Resting{Animal: a}, energy.Adult{Animal: a, Status: energy.Intact}} {
			e, err := s.Estimate()
			if e != (energy.Estimate{}) {
				t.Errorf("%s: estimate %+v, want the zero value", tt.field, e)
			}
			if err == nil || err.Error() != tt.want {
				t.Errorf("got  %v\nwant %v", err, tt.want)
			}
			var refusal *energy.VeterinarianError
			if !errors.Is(err, energy.ErrVeterinarian) || !errors.As(err, &refusal) || refusal.Field != tt.field {
				t.Errorf("%T %v, want a *VeterinarianError of %s", err, err, tt.field)
			}
		}
	}
}

func TestPrescribedPassesTheGates(t *testing.T) {
	for _, tt := range gated {
		a := animal(energy.Dog, 20*kg)
		tt.change(&a)
		e := estimate(t, energy.Prescribed{Animal: a, Daily: 660, By: "Dr A. Example"})
		if e.Daily != 660 || e.Low != 660 || e.High != 660 {
			t.Errorf("%s: %v from %v to %v, want 660 kcal in all three", tt.field, e.Daily, e.Low, e.High)
		}
	}
}

func TestNextToTheGateIsComputed(t *testing.T) {
	for _, a := range []energy.Animal{
		{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(3)},
		{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS5(2)},
		{Species: energy.Dog, Weight: 20 * kg, DaysUnfed: 4},
		{Species: energy.Dog, Weight: 20 * kg, Circumstances: energy.Diabetic},
	} {
		estimate(t, energy.Adult{Animal: a, Status: energy.Intact})
	}
}

func TestEveryGateIsReportedAtOnce(t *testing.T) {
	a := animal(energy.Cat, 4*kg)
	for _, tt := range gated[2:] {
		tt.change(&a)
	}
	a.Circumstances = energy.Ill | energy.TubeFed
	_, err := energy.Adult{Animal: a, Status: energy.Intact}.Estimate()
	want := gated[2].want + "; " + gated[3].want + "; " + gated[4].want + "; " + gated[5].want
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %v", err, want)
	}
}
