package energy

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"
)

// slowThreeQuarters returns w^0.75 by square roots of 200 bits.
func slowThreeQuarters(w float64) *big.Float {
	const bits = 200
	x := new(big.Float).SetPrec(bits).SetFloat64(w)
	cube := new(big.Float).SetPrec(bits).Mul(x, x)
	cube.Mul(cube, x)
	root := new(big.Float).SetPrec(bits).Sqrt(cube)
	return root.Sqrt(root)
}

// Two products and two roots are each rounded by 2^-53 at most; the first root
// halves what came before it and so does the second: (2/2+1)/2 + 1 = 2 of them,
// which is 2^-52, up to two units in the last place.
func TestThreeQuartersIsWithinTwoRoundings(t *testing.T) {
	bound := new(big.Float).SetMantExp(big.NewFloat(1), -52)
	r := rand.New(rand.NewPCG(1, 2))
	for range 1000 {
		// Log-uniform, from 5 g to 200 kg.
		w := math.Exp(math.Log(0.005) + r.Float64()*math.Log(200/0.005))
		got, want := threeQuarters(w), slowThreeQuarters(w)
		off := new(big.Float).Sub(new(big.Float).SetPrec(200).SetFloat64(got), want)
		if off.Quo(off.Abs(off), want).Cmp(bound) > 0 {
			t.Errorf("%v^0.75 = %v, want %v", w, got, want.Text('g', 25))
		}
	}
}

// Fourth powers, so that the power 3/4 is a whole number.
func TestThreeQuartersIsExactWhereItCanBe(t *testing.T) {
	for _, tt := range [][2]float64{{1, 1}, {16, 8}, {81, 27}, {0.0625, 0.125}} {
		if got := threeQuarters(tt[0]); got != tt[1] {
			t.Errorf("%v^0.75 = %v, want %v", tt[0], got, tt[1])
		}
	}
}
