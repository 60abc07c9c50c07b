package slow

import (
	"math"
	"math/big"
)

// Bits is the precision of the numbers.
const Bits = 256

// Zero is a number to be computed in.
func Zero() *big.Float { return new(big.Float).SetPrec(Bits) }

// Dec is a decimal, to 256 bits.
func Dec(s string) *big.Float {
	x, ok := Zero().SetString(s)
	if !ok {
		panic(s + " is no decimal")
	}
	return x
}

// Exact is a float64 or a whole number, below 2^53, as it is.
func Exact[T ~float64 | ~int | ~int32](x T) *big.Float { return Zero().SetFloat64(float64(x)) }

// Add is the sum of the terms.
func Add(terms ...*big.Float) *big.Float {
	sum := Zero()
	for _, x := range terms {
		sum.Add(sum, x)
	}
	return sum
}

// Mul is the product of the factors.
func Mul(factors ...*big.Float) *big.Float {
	p := Exact(1)
	for _, x := range factors {
		p.Mul(p, x)
	}
	return p
}

// Sub is x - y.
func Sub(x, y *big.Float) *big.Float { return Zero().Sub(x, y) }

// Quo is x / y.
func Quo(x, y *big.Float) *big.Float { return Zero().Quo(x, y) }

// Neg is -x.
func Neg(x *big.Float) *big.Float { return Zero().Neg(x) }

// Root is the square root of x.
func Root(x *big.Float) *big.Float { return Zero().Sqrt(x) }

// Exponential returns e^x, x below 2^32, by the series at x/2^64, squared 64
// times. The bits in excess are those that squaring loses.
func Exponential(x *big.Float) *big.Float {
	const halvings, excess = 64, 64
	x = new(big.Float).SetPrec(Bits+excess).SetMantExp(x, -halvings)
	sum := new(big.Float).SetPrec(Bits + excess).SetInt64(1)
	term := new(big.Float).Copy(sum)
	for n := int64(1); n < 12; n++ { // the last is below 2^-(32 × 11)
		term.Mul(term, x)
		term.Quo(term, new(big.Float).SetInt64(n))
		sum.Add(sum, term)
	}
	for range halvings {
		sum.Mul(sum, sum)
	}
	return Zero().Set(sum)
}

// Logarithm returns ln x, x above 0: with x = m × 2^e, ln m + e × ln 2.
func Logarithm(x *big.Float) *big.Float {
	m := Zero()
	e := x.MantExp(m)
	return Add(nearOne(m), Mul(Exact(e), nearOne(Exact(2))))
}

// nearOne is the logarithm of 1/2 to 2, by the series of 2 artanh((m-1)/(m+1)).
func nearOne(m *big.Float) *big.Float {
	z := Quo(Sub(m, Exact(1)), Add(m, Exact(1)))
	sum, power, square := Zero(), Zero().Set(z), Mul(z, z)
	for n := 1; n < 170; n += 2 { // z is at most 1/3: 9^-85 is below 2^-269
		sum.Add(sum, Quo(power, Exact(n)))
		power.Mul(power, square)
	}
	return Mul(Exact(2), sum)
}

// Power is x^p, x above 0.
func Power(x, p *big.Float) *big.Float { return Exponential(Mul(p, Logarithm(x))) }

// Apart returns how far got is from want, as a part of whole; of a whole of zero
// it is the difference.
func Apart(got, want, whole *big.Float) float64 {
	off := Sub(got, want)
	if whole.Sign() != 0 {
		off.Quo(off, whole)
	}
	x, _ := off.Float64()
	return math.Abs(x)
}

// Relative returns how far got is from want, as a part of want.
func Relative(got, want *big.Float) float64 { return Apart(got, want, want) }
