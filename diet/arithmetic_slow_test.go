package diet_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// The slow reference computes a second time in exact fractions, from
// coefficients that are typed as decimals.

// decimal is the fraction that a decimal is.
func decimal(s string) *big.Rat {
	x, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s + " is no decimal")
	}
	return x
}

// fraction is a float64 as it is.
func fraction[T ~float64](x T) *big.Rat { return new(big.Rat).SetFloat64(float64(x)) }

func plus(terms ...*big.Rat) *big.Rat {
	sum := new(big.Rat)
	for _, x := range terms {
		sum.Add(sum, x)
	}
	return sum
}

func minus(x, y *big.Rat) *big.Rat { return new(big.Rat).Sub(x, y) }
func over(x, y *big.Rat) *big.Rat  { return new(big.Rat).Quo(x, y) }

func times(factors ...*big.Rat) *big.Rat {
	p := big.NewRat(1, 1)
	for _, x := range factors {
		p.Mul(p, x)
	}
	return p
}

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
	off, _ := over(minus(fraction(got), want), whole).Float64()
	off = math.Abs(off)
	s.worst = max(s.worst, off)
	if off > slowBound {
		s.t.Errorf("%s is %v, want %s (off by %.2g)", name, got, want.FloatString(20), off)
	}
}

func (s *slowly) log() { s.t.Logf("largest difference %.2g", s.worst) }

// draws draws inputs from a fixed seed.
type draws struct{ *rand.Rand }

func newDraws() draws { return draws{rand.New(rand.NewPCG(8, 3))} }

// drawn draws log-uniformly, and one in ten an edge.
func drawn[T ~float64](d draws, low, high T) T {
	switch d.IntN(20) {
	case 0:
		return low
	case 1:
		return high
	}
	l, h := math.Log(float64(low)), math.Log(float64(high))
	return min(max(T(math.Exp(l+d.Float64()*(h-l))), low), high)
}

// drawnAnalysis draws a composition of 100 % at most.
func drawnAnalysis(d draws) diet.Analysis {
	moisture := drawn[units.Percent](d, 1, 90)
	var parts [5]units.Percent
	var sum units.Percent
	for i := range parts {
		parts[i] = drawn[units.Percent](d, 0.01, 1)
		sum += parts[i]
	}
	of := func(i int) units.Percent { return (100 - moisture) * parts[i] / sum }
	a := diet.Analysis{Kind: diet.Typical, Moisture: moisture, Protein: of(0), Fat: of(1), Fibre: of(2) / 4, Ash: of(3)}
	if d.IntN(5) == 0 {
		a.Fibre, a.None = 0, diet.CrudeFibre
	}
	return a
}
