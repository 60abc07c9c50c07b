package diet_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// The slow reference computes a second time in exact fractions, from
// coefficients that are typed as decimals.

// slowBound is the largest difference taken, as a part of what is computed:
// 16 half-units in the last place. What was found is below 8 of them.
const slowBound = 16.0 / (1 << 53)

// slowDraws returns the number of inputs of each test.
func slowDraws() int {
	if testing.Short() {
		return 100
	}
	return 500
}

// slowly holds figures against the slow reference, and keeps the largest
// difference.
type slowly struct {
	t     *testing.T
	worst float64
}

// hold compares got with want. The difference is taken as a part of whole: want
// itself or, where that is a small difference of large figures, one of them.
func (s *slowly) hold(name string, got float64, want, whole *big.Rat) {
	s.t.Helper()
	off := Off(got, want, whole)
	s.worst = max(s.worst, off)
	if off > slowBound {
		s.t.Errorf("%s is %v, want %s (off by %.2g)", name, got, want.FloatString(20), off)
	}
}

func (s *slowly) log() { s.t.Logf("largest difference %.2g", s.worst) }

// drawnAnalysis draws a composition of 100 % at most.
func drawnAnalysis(d Draws) diet.Analysis {
	moisture := Drawn[units.Percent](d, 1, 90)
	var parts [5]units.Percent
	var sum units.Percent
	for i := range parts {
		parts[i] = Drawn[units.Percent](d, 0.01, 1)
		sum += parts[i]
	}
	of := func(i int) units.Percent { return (100 - moisture) * parts[i] / sum }
	a := diet.Analysis{Kind: diet.Typical, Moisture: moisture, Protein: of(0), Fat: of(1), Fibre: of(2) / 4, Ash: of(3)}
	if d.IntN(5) == 0 {
		a.Fibre, a.None = 0, diet.CrudeFibre
	}
	return a
}
