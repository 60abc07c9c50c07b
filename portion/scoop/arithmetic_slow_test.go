package scoop_test

import (
	"math/big"
	"testing"

	. "example.org/bowlgram/internal/slow"
)

// The slow reference computes every figure of the package a second time, to 256
// bits and from the formulas as they are printed. It has nothing of the package but
// the types of its inputs. The largest relative differences seen on amd64, in 300 draws of each: 9e-16 of a mean,
// a spread, an uncertainty, its degrees of freedom, a variance; where a quantile is in it, 0.4 of what slowPart.lost
// has, which is gonum's: 7e-15 for each degree of freedom. TestSlow… with -v prints them.

func square(x *big.Float) *big.Float { return Mul(x, x) }

// half of a number.
func half(x *big.Float) *big.Float { return Quo(x, Exact(2)) }

// bernoulli holds B2 / (2 × 1), B4 / (4 × 3) …, the coefficients of Stirling's series.
var bernoulli = func() (c []*big.Float) {
	const last = 60
	b := []*big.Rat{big.NewRat(1, 1)} // by Σ (m+1 over j) Bj = 0
	for m := int64(1); m <= last; m++ {
		s := new(big.Rat)
		for j := range m {
			binomial := new(big.Rat).SetInt(new(big.Int).Binomial(m+1, j))
			s.Add(s, binomial.Mul(binomial, b[j]))
		}
		b = append(b, s.Mul(s, big.NewRat(-1, m+1)))
	}
	for k := int64(2); k <= last; k += 2 {
		c = append(c, Zero().SetRat(new(big.Rat).Mul(b[k], big.NewRat(1, k*(k-1)))))
	}
	return c
}()

var pi = Dec("3.14159265358979323846264338327950288419716939937510582097494459230781640628620899")

// logGamma returns ln Γ(x), x above 0, by Stirling's series from 100 on: its last term
// there, of B60, is below 2^-280.
func logGamma(x *big.Float) *big.Float {
	below := Exact(1)
	for x = Zero().Set(x); x.Cmp(Exact(100)) < 0; x.Add(x, Exact(1)) {
		below.Mul(below, x)
	}
	sum := Add(Mul(Sub(x, Dec("0.5")), Logarithm(x)), Zero().Neg(x), half(Logarithm(Mul(Exact(2), pi))))
	power := Quo(Exact(1), x)
	for _, c := range bernoulli {
		sum.Add(sum, Mul(c, power))
		power = Quo(power, square(x))
	}
	return Sub(sum, Logarithm(below))
}

// The wanted digits of √π are from memory; 13! = 6227020800.
func TestSlowGamma(t *testing.T) {
	for _, tt := range []struct {
		got  *big.Float
		want string
	}{
		{Exponential(logGamma(Dec("0.5"))), "1.77245385090551602729816748334114518279754945612239"},
		{Exponential(logGamma(Exact(14))), "6227020800"},
		{Exponential(Sub(logGamma(Dec("200.5")), logGamma(Dec("199.5")))), "199.5"},
	} {
		if off := Relative(tt.got, Dec(tt.want)); off > 1e-48 {
			t.Errorf("%v, want %s: off by %.3g", tt.got.Text('g', 50), tt.want, off)
		}
	}
}

// largest keeps the largest difference of a figure and fails above its bound.
type largest struct {
	what  string
	bound float64
	seen  float64
}

func (l *largest) take(t *testing.T, off float64, at ...any) {
	t.Helper()
	l.seen = max(l.seen, off)
	if !(off <= l.bound) {
		t.Errorf("%s: off by %.3g, more than %.3g, at %+v", l.what, off, l.bound, at)
	}
}

func (l *largest) log(t *testing.T) {
	t.Helper()
	t.Logf("%s: largest difference %.3g", l.what, l.seen)
}
