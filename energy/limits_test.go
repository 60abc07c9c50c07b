package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Lawler 2008: 4 mL for each 100 g.
func TestStomachCapacity(t *testing.T) {
	if got := energy.StomachCapacity(250 * units.Gram); got != 10*units.Millilitre {
		t.Errorf("250 g: %v, want 10 mL", got)
	}
}

// By hand: 16^0.75 is 8; ln 4 × 0.67 = 0.92882, its exponential 2.5315.
func TestMetabolicWeight(t *testing.T) {
	if got := energy.MetabolicWeight(energy.Dog, 16*kg); got != 8 {
		t.Errorf("dog of 16 kg: %v, want 8", got)
	}
	if got := energy.MetabolicWeight(energy.Cat, 4*kg); math.Abs(got-2.5315) > 5e-5 {
		t.Errorf("cat of 4 kg: %v, want 2.5315", got)
	}
	if got := energy.MetabolicWeight(energy.Ferret, 1*kg); got != 0 {
		t.Errorf("ferret: %v, want 0", got)
	}
}

// SACN 5th ed., p. 522: 0.5 to 2 % a week; p. 529: 0.5 to 1 % is safer in cats.
func TestSafeLossRate(t *testing.T) {
	for species, want := range map[energy.Species]units.Range[units.Percent]{
		energy.Dog: {Low: 0.5, High: 2}, energy.Cat: {Low: 0.5, High: 1}, energy.Ferret: {}, energy.Other: {}, 0: {},
	} {
		if got := energy.SafeLossRate(species); got != want {
			t.Errorf("%v: %v, want %v", species, got, want)
		}
	}
}
