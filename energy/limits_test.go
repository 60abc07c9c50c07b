package energy_test

import (
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
