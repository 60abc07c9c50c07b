package scoop_test

import (
	"math/big"
	"testing"

	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// distribution is that of F of d1 and d2 degrees of freedom or, where d2 is nil, that of
// χ²/d1. Student's t of d2 is the root of an F of 1 and d2, the normal distribution that of
// χ² of one.
type distribution struct {
	d1, d2   *big.Float
	constant *big.Float // the logarithm of 1/B(d1/2, d2/2) or of 1/Γ(d1/2)
}

func ofF(d1, d2 *big.Float) distribution {
	a := half(d1)
	if d2 == nil {
		return distribution{d1, nil, Zero().Neg(logGamma(a))}
	}
	b := half(d2)
	return distribution{d1, d2, Sub(logGamma(Add(a, b)), Add(logGamma(a), logGamma(b)))}
}

// ofT is the distribution of the square of Student's t, nil for the normal distribution's.
func ofT(freedom *big.Float) distribution { return ofF(Exact(1), freedom) }

// below returns the probability of less than f and the density there.
func (d distribution) below(f *big.Float) (p, density *big.Float) {
	a := half(d.d1)
	if d.d2 == nil {
		// γ(a, x)/Γ(a) = x^a e^-x / Γ(a) Σ x^n / (a (a+1) … (a+n)), x = a f.
		x := Mul(a, f)
		front := Exponential(Add(Mul(a, Logarithm(x)), Zero().Neg(x), d.constant))
		p = Quo(Mul(front, series(func(n *big.Float) *big.Float { return Quo(x, Add(a, n)) })), a)
		return p, Quo(front, f)
	}
	b := half(d.d2)
	sum := Add(Mul(d.d1, f), d.d2)
	x, y := Quo(Mul(d.d1, f), sum), Quo(d.d2, sum)
	front := Exponential(Add(Mul(a, Logarithm(x)), Mul(b, Logarithm(y)), d.constant))
	if x.Cmp(y) <= 0 {
		p = Quo(Mul(front, ratios(x, a, b)), a)
	} else {
		p = Sub(Exact(1), Quo(Mul(front, ratios(y, b, a)), b))
	}
	return p, Quo(front, f)
}

// ratios is Σ (a+b)(a+b+1) … / ((a+1)(a+2) …) x^n: times x^a (1-x)^b / (a B(a, b)) it is the
// incomplete beta function (Abramowitz and Stegun, 26.5.4 and 15.1.1, from memory).
func ratios(x, a, b *big.Float) *big.Float {
	ab := Sub(Add(a, b), Exact(1))
	return series(func(n *big.Float) *big.Float { return Quo(Mul(x, Add(ab, n)), Add(a, n)) })
}

// series sums terms from 1 on, each the last times a ratio, until they are nothing. That is
// after some hundreds, far from any quantile never.
func series(ratio func(n *big.Float) *big.Float) *big.Float {
	sum, term := Exact(1), Exact(1)
	for n := 1; n < 20000; n++ {
		r := ratio(Exact(n))
		term = Mul(term, r)
		sum.Add(sum, term)
		if r.Cmp(Dec("0.99")) < 0 && term.MantExp(nil) < sum.MantExp(nil)-Bits-8 {
			return sum
		}
	}
	return Zero()
}

// quantile returns what is above a part p, by Newton's method. The start is a help and no
// more: whatever it is, p of the distribution is below what comes out.
func (d distribution) quantile(t *testing.T, p *big.Float, start float64) *big.Float {
	t.Helper()
	if !(start > 0 && start < 1e12) {
		t.Fatalf("no quantile is near %v", start)
	}
	f := Exact(start)
	for range 30 {
		is, density := d.below(f)
		step := Quo(Sub(is, p), density)
		if f.Sub(f, step); f.Sign() <= 0 {
			break
		}
		if Relative(Add(f, step), f) < 1e-50 {
			return f
		}
	}
	t.Fatalf("no quantile from %v on", start)
	return nil
}

// part is a level as a part of one.
func part(level units.Percent) *big.Float { return Quo(Exact(level), Exact(100)) }

// By hand: t of 2 degrees of freedom with A between ± t is A √(2/(1 - A²)), that of 1 tan(πA/2), which
// is 1 for the half. χ² of 2 is -2 ln(1 - p), and F of 2 and d is d/2 ((1-p)^(-2/d) - 1). z 0.975 to 20 digits is from
// memory, t of 9 from JCGM 100:2008, Table G.2 (2.26) and to 10 digits from mpmath.
func TestSlowQuantiles(t *testing.T) {
	for _, tt := range []struct {
		got, want *big.Float
		within    float64
	}{
		{Root(ofT(Exact(2)).quantile(t, Dec("0.95"), 9)), Mul(Dec("0.95"), Root(Quo(Exact(2), Dec("0.0975")))), 1e-45},
		{Root(ofT(Exact(1)).quantile(t, Dec("0.5"), 2)), Exact(1), 1e-45},
		{ofF(Exact(2), nil).quantile(t, Dec("0.95"), 2), Logarithm(Exact(20)), 1e-45},
		{ofF(Exact(2), Exact(4)).quantile(t, Dec("0.99"), 9), Exact(18), 1e-45},
		{ofF(Exact(2), Exact(1)).quantile(t, Dec("0.9"), 30), Dec("49.5"), 1e-45},
		{Root(ofT(nil).quantile(t, Dec("0.95"), 3)), Dec("1.9599639845400542355"), 1e-19},
		{Root(ofT(Exact(9)).quantile(t, Dec("0.95"), 4)), Dec("2.2621571628"), 2e-11},
	} {
		if off := Relative(tt.got, tt.want); off > tt.within {
			t.Errorf("%v, want %v", tt.got.Text('g', 40), tt.want.Text('g', 40))
		}
	}
}
