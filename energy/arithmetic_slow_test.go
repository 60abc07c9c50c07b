package energy_test

import (
	"fmt"
	"math/big"

	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// The slow reference computes every equation a second time, from coefficients that
// are typed as decimals.

// kilograms is a mass, held in grams, in kilograms.
func kilograms(w units.Mass) *big.Float { return Quo(Exact(w), Dec("1000")) }

// grownWeights are those that a grown animal is taken with, as the doc comment
// of Animal has them.
var grownWeights = map[energy.Species][2]units.Mass{
	energy.Dog: {0.8 * kg, 120 * kg}, energy.Cat: {1.5 * kg, 20 * kg}, energy.Ferret: {0.4 * kg, 4 * kg},
}

// grown draws a grown animal, with an ideal weight below or above the current
// one or without, and for a dog and a cat a score or none.
func grown(d Draws, s energy.Species) energy.Animal {
	low, high := grownWeights[s][0], grownWeights[s][1]
	a := energy.Animal{Species: s, Weight: DrawnBeside(d, low, high)}
	if d.IntN(2) == 0 {
		a.Ideal = DrawnBeside(d, max(low, a.Weight/3), min(high, 1.4*a.Weight))
	}
	if s != energy.Ferret {
		a.Condition = OneOf(d, energy.Condition{}, energy.BCS9(3+d.IntN(7)), energy.BCS5(2+d.IntN(4)))
	}
	return a
}

// used is the weight to compute on: the ideal one where that is below the
// current one.
func used(a energy.Animal) *big.Float {
	if a.Ideal > 0 && a.Ideal < a.Weight {
		return kilograms(a.Ideal)
	}
	return kilograms(a.Weight)
}

// nine is the score on the scale of nine: 5/9 is 3/5 and 7/9 is 4/5. An animal
// that isn't scored counts as 5.
func nine(c energy.Condition) int {
	if c.IsZero() {
		return 5
	}
	var score, scale int
	if _, err := fmt.Sscanf(c.String(), "%d/%d", &score, &scale); err != nil {
		panic(err)
	}
	if scale == 5 {
		return 2*score - 1
	}
	return score
}
