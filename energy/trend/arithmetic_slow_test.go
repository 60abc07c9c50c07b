package trend_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/energy/trend"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// The slow reference works everything out a second time, from
// coefficients that are typed as decimals.

// hypot is the root of the summed squares.
func hypot(x, y *big.Float) *big.Float { return Root(Add(Mul(x, x), Mul(y, y))) }

func above(x, y *big.Float) bool { return x.Cmp(y) > 0 }

func most(x, y *big.Float) *big.Float {
	if above(x, y) {
		return x
	}
	return y
}

func least(x, y *big.Float) *big.Float {
	if above(x, y) {
		return y
	}
	return x
}

// arctangent is that of x, at least 0: atan x = 2 atan(x / (1 + √(1 + x²))) six
// times, then the series.
func arctangent(x *big.Float) *big.Float {
	const halvings = 6
	one := Dec("1")
	for range halvings {
		x = Quo(x, Add(one, Root(Add(one, Mul(x, x)))))
	}
	sum, power, square := Zero(), Zero().Set(x), Mul(x, x)
	for n := 1; n < 50; n += 2 { // x is below 1/40: 40^-50 is below 2^-260
		term := Quo(power, Exact(n))
		if n%4 == 3 {
			term.Neg(term)
		}
		sum.Add(sum, term)
		power.Mul(power, square)
	}
	return sum.SetMantExp(sum, halvings)
}

// withinT returns the chance that a variable of Student's t lies within t of
// zero, by the finite sums for a whole number of degrees of freedom above 1
// (Abramowitz and Stegun 1964, 26.7.3 and 26.7.4, from memory).
func withinT(t *big.Float, free int) *big.Float {
	length := Root(Add(Exact(free), Mul(t, t)))
	cos, sin := Quo(Root(Exact(free)), length), Quo(t, length)
	square, sum := Mul(cos, cos), Zero()
	if free%2 == 0 {
		term := Dec("1")
		for k := 2; k <= free; k += 2 {
			sum.Add(sum, term)
			term = Mul(term, square, Quo(Exact(k-1), Exact(k)))
		}
		return Mul(sin, sum)
	}
	term := cos
	for k := 3; k <= free; k += 2 {
		sum.Add(sum, term)
		term = Mul(term, square, Quo(Exact(k-1), Exact(k)))
	}
	angle := Add(arctangent(Quo(t, Root(Exact(free)))), Mul(sin, sum))
	return Quo(angle, Mul(Dec("2"), arctangent(Dec("1"))))
}

// studentT returns the t that a variable lies within with that chance, by
// halving.
func studentT(chance *big.Float, free int) *big.Float {
	const halvings = 100 // 1000 × 2^-100 is below 1e-26
	low, high := Zero(), Dec("1000")
	for range halvings {
		middle := Quo(Add(low, high), Dec("2"))
		if above(chance, withinT(middle, free)) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// t95 is studentT for 19 cases in 20.
func t95(free int) *big.Float {
	if known[free] == nil {
		known[free] = studentT(Dec("0.95"), free)
	}
	return known[free]
}

var known = map[int]*big.Float{}

// Two-sided, as NIST/SEMATECH's e-Handbook, 1.3.6.7.2, prints them (from memory);
// for 194 degrees of freedom 1.3.5.2.
func TestSlowStudentT(t *testing.T) {
	for _, tt := range []struct {
		chance string
		free   int
		want   float64
		within float64
	}{
		{"0.95", 8, 2.306, 5e-4},
		{"0.95", 9, 2.262, 5e-4},
		{"0.95", 15, 2.131, 5e-4},
		{"0.95", 30, 2.042, 5e-4},
		{"0.95", 100, 1.984, 5e-4},
		{"0.998", 10, 4.144, 5e-4},
		{"0.998", 11, 4.025, 5e-4},
		{"0.95", 194, 1.972268, 5e-7},
		{"0.999", 194, 3.341382, 5e-7},
	} {
		got, _ := studentT(Dec(tt.chance), tt.free).Float64()
		within(t, tt.chance, got, tt.want, tt.within)
	}
	// arctan 1 is π/4.
	pi := Mul(Dec("4"), arctangent(Dec("1")))
	if off := Sub(pi, Dec("3.14159265358979323846264338327950288419716939937510582097494")); off.MantExp(nil) > -190 {
		t.Errorf("π is off by %v", off)
	}
}

// drawnLog draws weighings that wander from a weight, each at most so large a part
// off the one before it, at most so many days apart.
func drawnLog(d Draws, n, gap int, weight units.Mass, part, drift float64, step units.Mass) trend.Weights {
	log := trend.Weights{{Date: on(firstDay), Weight: weight, Readability: step}}
	for len(log) < n {
		w := log[len(log)-1]
		w.Date += trend.Date(1 + d.IntN(gap))
		w.Weight *= units.Mass(1 + drift + part*(2*d.Float64()-1))
		log = append(log, w)
	}
	return log
}
