package energy_test

import (
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// The slow reference computes every equation a second time, to 200 bits, from
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

// exact is a float64 or a whole number as it is.
func exact[T ~float64 | ~int](x T) *big.Float { return slow().SetFloat64(float64(x)) }

func add(x, y *big.Float) *big.Float { return slow().Add(x, y) }
func sub(x, y *big.Float) *big.Float { return slow().Sub(x, y) }
func quo(x, y *big.Float) *big.Float { return slow().Quo(x, y) }

func mul(factors ...*big.Float) *big.Float {
	p := dec("1")
	for _, x := range factors {
		p.Mul(p, x)
	}
	return p
}

// kilograms is a mass, held in grams, in kilograms.
func kilograms(w units.Mass) *big.Float { return quo(exact(w), dec("1000")) }

// exponential returns e^x by the series at x/2^k, squared k times. The bits in
// excess are those that squaring loses.
func exponential(x *big.Float) *big.Float {
	const halvings, excess = 32, 64
	x = new(big.Float).SetPrec(slowBits+excess).SetMantExp(x, -halvings)
	sum := new(big.Float).SetPrec(slowBits + excess).SetInt64(1)
	term := new(big.Float).Copy(sum)
	for n := int64(1); n < 12; n++ { // the last is below 2^-(31 × 11)
		term.Mul(term, x)
		term.Quo(term, new(big.Float).SetInt64(n))
		sum.Add(sum, term)
	}
	for range halvings {
		sum.Mul(sum, sum)
	}
	return slow().Set(sum)
}

// logarithm returns ln x, x above 0: with x = m × 2^e, ln m + e × ln 2, each by
// the series of 2 artanh((m-1)/(m+1)).
func logarithm(x *big.Float) *big.Float {
	series := func(m *big.Float) *big.Float {
		one := dec("1")
		z := quo(sub(m, one), add(m, one))
		sum, power, square := slow(), slow().Set(z), mul(z, z)
		for n := 1; n < 150; n += 2 { // z is at most 1/3: 9^-75 is below 2^-230
			sum.Add(sum, quo(power, exact(n)))
			power.Mul(power, square)
		}
		return mul(dec("2"), sum)
	}
	m := slow()
	e := x.MantExp(m)
	return add(series(m), mul(exact(e), series(dec("2"))))
}

func power(x, p *big.Float) *big.Float { return exponential(mul(p, logarithm(x))) }

// The wanted digits are those of e, ln 10 and the square root of 2, from
// memory; 16^0.75 = 8 and 32^-0.4 = 1/4 are exact.
func TestSlowArithmetic(t *testing.T) {
	for _, tt := range []struct {
		got  *big.Float
		want string
	}{
		{exponential(dec("1")), "2.71828182845904523536028747135266249775724709369995"},
		{logarithm(dec("10")), "2.30258509299404568401799145468436420760110148862877"},
		{power(dec("2"), dec("0.5")), "1.41421356237309504880168872420969807856967187537694"},
		{power(dec("16"), dec("0.75")), "8"},
		{power(dec("32"), dec("-0.4")), "0.25"},
	} {
		if off := relative(tt.got, dec(tt.want)); off > 1e-48 {
			t.Errorf("%v, want %s: off by %.3g", tt.got.Text('g', 50), tt.want, off)
		}
	}
}

// relative returns how far got is from want, as a part of want.
func relative(got, want *big.Float) float64 {
	off := sub(got, want)
	if want.Sign() != 0 {
		off.Quo(off, want)
	}
	x, _ := off.Float64()
	return math.Abs(x)
}

// draws draws inputs from a fixed seed.
type draws struct{ *rand.Rand }

func newDraws() draws { return draws{rand.New(rand.NewPCG(8, 3))} }

// drawn draws log-uniformly, and one in five an edge or the number beside it.
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

// whole draws a whole number, the ends included.
func whole[T ~int | ~uint8](d draws, low, high T) T { return low + T(d.IntN(int(high-low)+1)) }

func oneOf[T any](d draws, values ...T) T { return values[d.IntN(len(values))] }

// grownWeights are those that a grown animal is taken with, as the doc comment
// of Animal has them.
var grownWeights = map[energy.Species][2]units.Mass{
	energy.Dog: {0.8 * kg, 120 * kg}, energy.Cat: {1.5 * kg, 20 * kg}, energy.Ferret: {0.4 * kg, 4 * kg},
}

// grown draws a grown animal, with an ideal weight below or above the current
// one or without, and for a dog and a cat a score or none.
func grown(d draws, s energy.Species) energy.Animal {
	low, high := grownWeights[s][0], grownWeights[s][1]
	a := energy.Animal{Species: s, Weight: drawn(d, low, high)}
	if d.IntN(2) == 0 {
		a.Ideal = drawn(d, max(low, a.Weight/3), min(high, 1.4*a.Weight))
	}
	if s != energy.Ferret {
		a.Condition = oneOf(d, energy.Condition{}, energy.BCS9(3+d.IntN(7)), energy.BCS5(2+d.IntN(4)))
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
