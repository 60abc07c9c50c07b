package portion_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Four weeks is the end of the milk; a gram is a weight.
func TestWhoDrinksWater(t *testing.T) {
	for _, test := range []struct {
		age    energy.Age
		weight units.Mass
		ok     bool
	}{
		{0, 1000, true}, {1, 1000, false}, {28, 1000, false}, {29, 1000, true}, {0, 1, true}, {0, 0, false}, {0, -1, false},
	} {
		need := energy.Estimate{Animal: energy.Animal{Species: energy.Cat, Weight: test.weight, Age: test.age}, Daily: 0.4}
		r, err := portion.Weigh(need, diet.Only(moist("wet", 1000, 80)))
		if err != nil {
			t.Fatal(err)
		}
		if _, err := r.Water(portion.ByWeight); (err == nil) != test.ok {
			t.Errorf("%v of %d days: %v", test.weight, test.age, err)
		}
	}
}
