package scoop_test

import (
	"math/big"
	"testing"

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
		return distribution{d1, nil, slow().Neg(logGamma(a))}
	}
	b := half(d2)
	return distribution{d1, d2, sub(logGamma(add(a, b)), add(logGamma(a), logGamma(b)))}
}

// ofT is the distribution of the square of Student's t, nil for the normal distribution's.
func ofT(freedom *big.Float) distribution { return ofF(exact(1), freedom) }

// below returns the probability of less than f and the density there.
func (d distribution) below(f *big.Float) (p, density *big.Float) {
	a := half(d.d1)
	if d.d2 == nil {
		// γ(a, x)/Γ(a) = x^a e^-x / Γ(a) Σ x^n / (a (a+1) … (a+n)), x = a f.
		x := mul(a, f)
		front := exponential(add(mul(a, logarithm(x)), slow().Neg(x), d.constant))
		p = quo(mul(front, series(func(n *big.Float) *big.Float { return quo(x, add(a, n)) })), a)
		return p, quo(front, f)
	}
	b := half(d.d2)
	sum := add(mul(d.d1, f), d.d2)
	x, y := quo(mul(d.d1, f), sum), quo(d.d2, sum)
	front := exponential(add(mul(a, logarithm(x)), mul(b, logarithm(y)), d.constant))
	if x.Cmp(y) <= 0 {
		p = quo(mul(front, ratios(x, a, b)), a)
	} else {
		p = sub(exact(1), quo(mul(front, ratios(y, b, a)), b))
	}
	return p, quo(front, f)
}

// ratios is Σ (a+b)(a+b+1) … / ((a+1)(a+2) …) x^n: times x^a (1-x)^b / (a B(a, b)) it is the
// incomplete beta function (Abramowitz and Stegun, 26.5.4 and 15.1.1, from memory).
func ratios(x, a, b *big.Float) *big.Float {
	ab := sub(add(a, b), exact(1))
	return series(func(n *big.Float) *big.Float { return quo(mul(x, add(ab, n)), add(a, n)) })
}

// series sums terms from 1 on, each the last times a ratio, until they are nothing. That is
// after some hundreds, far from any quantile never.
func series(ratio func(n *big.Float) *big.Float) *big.Float {
	sum, term := exact(1), exact(1)
	for n := 1; n < 20000; n++ {
		r := ratio(exact(n))
		term = mul(term, r)
		sum.Add(sum, term)
		if r.Cmp(dec("0.99")) < 0 && term.MantExp(nil) < sum.MantExp(nil)-slowBits-8 {
			return sum
		}
	}
	return slow()
}

// quantile returns what is above a part p, by Newton's method. The start is a help and no
// more: whatever it is, p of the distribution is below what comes out.
func (d distribution) quantile(t *testing.T, p *big.Float, start float64) *big.Float {
	t.Helper()
	if !(start > 0 && start < 1e12) {
		t.Fatalf("no quantile is near %v", start)
	}
	f := exact(start)
	for range 30 {
		is, density := d.below(f)
		step := quo(sub(is, p), density)
		if f.Sub(f, step); f.Sign() <= 0 {
			break
		}
		if relative(add(f, step), f) < 1e-50 {
			return f
		}
	}
	t.Fatalf("no quantile from %v on", start)
	return nil
}

// part is a level as a part of one.
func part(level units.Percent) *big.Float { return quo(exact(level), exact(100)) }

// By hand: t of 2 degrees of freedom with A between ± t is A √(2/(1 - A²)), that of 1 tan(πA/2), which
// is 1 for the half. χ² of 2 is -2 ln(1 - p), and F of 2 and d is d/2 ((1-p)^(-2/d) - 1). z 0.975 to 20 digits is from
// memory, t of 9 from JCGM 100:2008, Table G.2 (2.26) and to 10 digits from mpmath.
func TestSlowQuantiles(t *testing.T) {
	for _, tt := range []struct {
		got, want *big.Float
		within    float64
	}{
		{root(ofT(exact(2)).quantile(t, dec("0.95"), 9)), mul(dec("0.95"), root(quo(exact(2), dec("0.0975")))), 1e-45},
		{root(ofT(exact(1)).quantile(t, dec("0.5"), 2)), exact(1), 1e-45},
		{ofF(exact(2), nil).quantile(t, dec("0.95"), 2), logarithm(exact(20)), 1e-45},
		{ofF(exact(2), exact(4)).quantile(t, dec("0.99"), 9), exact(18), 1e-45},
		{ofF(exact(2), exact(1)).quantile(t, dec("0.9"), 30), dec("49.5"), 1e-45},
		{root(ofT(nil).quantile(t, dec("0.95"), 3)), dec("1.9599639845400542355"), 1e-19},
		{root(ofT(exact(9)).quantile(t, dec("0.95"), 4)), dec("2.2621571628"), 2e-11},
	} {
		if off := relative(tt.got, tt.want); off > tt.within {
			t.Errorf("%v, want %v", tt.got.Text('g', 40), tt.want.Text('g', 40))
		}
	}
}
