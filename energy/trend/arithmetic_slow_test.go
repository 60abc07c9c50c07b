package trend_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// The slow reference works everything out a second time, to 200 bits, from
// coefficients that are typed as decimals. It has nothing of the package but
// the types of its inputs.

const slowBits = 200

func slow() *big.Float { return new(big.Float).SetPrec(slowBits) }

// dec is a decimal, to 200 bits.
func dec(s string) *big.Float {
	x, ok := slow().SetString(s)
	if !ok {
		panic(s + " is no decimal")
	}
	return x
}

// exact is a number as it is.
func exact[T ~float64 | ~int | ~int32](x T) *big.Float { return slow().SetFloat64(float64(x)) }

func add(x, y *big.Float) *big.Float { return slow().Add(x, y) }
func sub(x, y *big.Float) *big.Float { return slow().Sub(x, y) }
func quo(x, y *big.Float) *big.Float { return slow().Quo(x, y) }
func neg(x *big.Float) *big.Float    { return slow().Neg(x) }
func root(x *big.Float) *big.Float   { return slow().Sqrt(x) }

func mul(factors ...*big.Float) *big.Float {
	p := dec("1")
	for _, x := range factors {
		p.Mul(p, x)
	}
	return p
}

// hypot is the root of the summed squares.
func hypot(x, y *big.Float) *big.Float { return root(add(mul(x, x), mul(y, y))) }

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

// apart returns how far got is from want, as a part of a scale above zero.
func apart[T ~float64](got T, want, scale *big.Float) float64 {
	x, _ := quo(sub(exact(got), want), scale).Float64()
	return math.Abs(x)
}

// arctangent is that of x, at least 0: atan x = 2 atan(x / (1 + √(1 + x²))) six
// times, then the series.
func arctangent(x *big.Float) *big.Float {
	const halvings = 6
	one := dec("1")
	for range halvings {
		x = quo(x, add(one, root(add(one, mul(x, x)))))
	}
	sum, power, square := slow(), slow().Set(x), mul(x, x)
	for n := 1; n < 50; n += 2 { // x is below 1/40: 40^-50 is below 2^-260
		term := quo(power, exact(n))
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
	length := root(add(exact(free), mul(t, t)))
	cos, sin := quo(root(exact(free)), length), quo(t, length)
	square, sum := mul(cos, cos), slow()
	if free%2 == 0 {
		term := dec("1")
		for k := 2; k <= free; k += 2 {
			sum.Add(sum, term)
			term = mul(term, square, quo(exact(k-1), exact(k)))
		}
		return mul(sin, sum)
	}
	term := cos
	for k := 3; k <= free; k += 2 {
		sum.Add(sum, term)
		term = mul(term, square, quo(exact(k-1), exact(k)))
	}
	angle := add(arctangent(quo(t, root(exact(free)))), mul(sin, sum))
	return quo(angle, mul(dec("2"), arctangent(dec("1"))))
}

// studentT returns the t that a variable lies within with that chance, by
// halving.
func studentT(chance *big.Float, free int) *big.Float {
	const halvings = 100 // 1000 × 2^-100 is below 1e-26
	low, high := slow(), dec("1000")
	for range halvings {
		middle := quo(add(low, high), dec("2"))
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
		known[free] = studentT(dec("0.95"), free)
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
		got, _ := studentT(dec(tt.chance), tt.free).Float64()
		within(t, tt.chance, got, tt.want, tt.within)
	}
	// arctan 1 is π/4.
	pi := mul(dec("4"), arctangent(dec("1")))
	if off := sub(pi, dec("3.14159265358979323846264338327950288419716939937510582097494")); off.MantExp(nil) > -190 {
		t.Errorf("π is off by %v", off)
	}
}

// draws draws inputs from a fixed seed.
type draws struct{ *rand.Rand }

func newDraws() draws { return draws{rand.New(rand.NewPCG(5, 12))} }

// drawn draws log-uniformly, and one in five an end or the number beside it.
// Both ends must be above zero.
func drawn[T ~float64](d draws, low, high T) T {
	switch d.IntN(20) {
	case 0:
		return low
	case 1:
		return high
	case 2:
		return T(math.Nextafter(float64(low), float64(high)))
	case 3:
		return T(math.Nextafter(float64(high), float64(low)))
	}
	l, h := math.Log(float64(low)), math.Log(float64(high))
	return min(max(T(math.Exp(l+d.Float64()*(h-l))), low), high)
}

// log draws weighings that wander from a weight, each at most so large a part
// off the one before it, at most so many days apart.
func (d draws) log(n, gap int, weight units.Mass, part, drift float64, step units.Mass) trend.Weights {
	log := trend.Weights{{Date: on(firstDay), Weight: weight, Readability: step}}
	for len(log) < n {
		w := log[len(log)-1]
		w.Date += trend.Date(1 + d.IntN(gap))
		w.Weight *= units.Mass(1 + drift + part*(2*d.Float64()-1))
		log = append(log, w)
	}
	return log
}
