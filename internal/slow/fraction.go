package slow

import (
	"math"
	"math/big"
)

// Decimal is the fraction that a decimal is.
func Decimal(s string) *big.Rat {
	x, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s + " is no decimal")
	}
	return x
}

// Fraction is a finite float64 as it is.
func Fraction[T ~float64](x T) *big.Rat { return new(big.Rat).SetFloat64(float64(x)) }

// Plus is the sum of the terms.
func Plus(terms ...*big.Rat) *big.Rat {
	sum := new(big.Rat)
	for _, x := range terms {
		sum.Add(sum, x)
	}
	return sum
}

// Times is the product of the factors.
func Times(factors ...*big.Rat) *big.Rat {
	p := big.NewRat(1, 1)
	for _, x := range factors {
		p.Mul(p, x)
	}
	return p
}

// Minus is x - y.
func Minus(x, y *big.Rat) *big.Rat { return new(big.Rat).Sub(x, y) }

// Over is x / y.
func Over(x, y *big.Rat) *big.Rat { return new(big.Rat).Quo(x, y) }

// Off returns how far got is from want, as a part of whole.
func Off[T ~float64](got T, want, whole *big.Rat) float64 {
	off, _ := Over(Minus(Fraction(got), want), whole).Float64()
	return math.Abs(off)
}
