package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// The weights of a nursling that are worth a second look are ours, in grams, by
// week of life. No lighter ones than the first are taken.
func TestLightNurslings(t *testing.T) {
	for species, least := range map[energy.Species][4]units.Mass{
		energy.Dog: {50, 70, 100, 130}, energy.Cat: {40, 70, 100, 130},
	} {
		for i, grams := range least {
			for _, off := range []units.Mass{0, -0.1} {
				if i == 0 && off < 0 {
					continue
				}
				a := animal(species, (grams+off)*units.Gram)
				a.Age = energy.Age(i+1) * energy.Week
				if got := told(t, energy.Nursling{Animal: a}, "very little"); got != (off < 0) {
					t.Errorf("%v in week %d, %v g: told %v", species, i+1, float64(grams+off), got)
				}
			}
		}
	}
}

// The same of one that is too heavy for its first days.
func TestHeavyNewborns(t *testing.T) {
	for species, most := range map[energy.Species]units.Mass{energy.Dog: 1200, energy.Cat: 200} {
		for _, off := range []units.Mass{0, 0.1} {
			a := animal(species, (most+off)*units.Gram)
			a.Age = 3 * energy.Day
			if got := told(t, energy.Nursling{Animal: a}, "is it 3 wk old?"); got != (off > 0) {
				t.Errorf("%v of %v g: told %v", species, float64(most+off), got)
			}
		}
	}
}
