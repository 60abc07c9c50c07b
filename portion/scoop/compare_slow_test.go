package scoop_test

import (
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// Welch: T = (x2 - x1)/√(s1²/n1 + s2²/n2), here with the rounding of both scales.
func TestSlowComparison(t *testing.T) {
	d := newDraws()
	ts, freedom := largest{what: "T", bound: 1e-15}, largest{what: "degrees of freedom", bound: 1e-15}
	ends := largest{what: "interval, in parts of what gonum may lose", bound: 1}
	for range slowRuns() {
		a, b, level := drawnCalibration(d), drawnCalibration(d), drawnLevel(d)
		x := must[scoop.Comparison](t)(scoop.Compare(a, b, level))
		u := combined(
			scatter(a, quo(exact(1), exact(a.N))), scatter(b, quo(exact(1), exact(b.N))), rounding(a.Readability), rounding(b.Readability))
		off := sub(exact(b.Mean), exact(a.Mean))
		ts.take(t, relative(exact(x.T), quo(off, root(u.square))), a, b)
		freedom.take(t, relative(exact(x.Freedom), u.freedom), a, b)
		h := u.half(t, level, x.Interval.Width()/2)
		whole := add(slow().Abs(off), h)
		ends.take(t, apart(exact(x.Interval.Low), sub(off, h), whole)/u.lost(), a, b, level)
		ends.take(t, apart(exact(x.Interval.High), add(off, h), whole)/u.lost(), a, b, level)
		if x.Different != (h.Cmp(slow().Abs(off)) < 0) {
			t.Errorf("different %v: %+v, %+v", x.Different, a, b)
		}
	}
	for _, l := range []largest{ts, freedom, ends} {
		l.log(t)
	}
}

// NIST/SEMATECH e-Handbook 1.3.5.17.1: G = max |x - mean| / s, critical (n-1)/√n √(t²/(n-2+t²)), where t
// leaves α/(2n) above it, so that 1 - α/n lie between ± t.
func TestSlowGrubbs(t *testing.T) {
	d := newDraws()
	gs := largest{what: "G, in parts of the mean in standard deviations", bound: 1e-15}
	criticals := largest{what: "critical value, in parts of what gonum may lose", bound: 1}
	outliers := 0
	for range slowRuns() {
		w := make([]units.Mass, drawn(d, 3, 60))
		cv := drawn[units.Mass](d, 1e-3, 0.2)
		for i := range w {
			w[i] = max(1, 98*(1+cv*units.Mass(d.NormFloat64())))
		}
		if d.IntN(3) == 0 {
			w[d.IntN(len(w))] *= 1 + 4*cv
		}
		c := must[scoop.Calibration](t)(scoop.Calibrate(w, 0))
		level := drawnLevel(d)
		o := must[scoop.Grubbs](t)(c.Outlier(level))

		mean, squares, far, n := slow(), slow(), slow(), exact(len(w))
		for _, m := range w {
			mean.Add(mean, quo(exact(m), n))
		}
		suspect := 0
		for i, m := range w {
			off := sub(exact(m), mean)
			squares.Add(squares, square(off))
			if off.Abs(off).Cmp(far) > 0 {
				far, suspect = off, i+1
			}
		}
		sd := root(quo(squares, sub(n, exact(1))))
		g := quo(far, sd)
		gs.take(t, apart(exact(o.G), g, quo(mean, sd)), w) // what is left of a difference from the mean

		// t² from the critical value, as a start of the search.
		q := quo(mul(square(exact(o.Critical)), n), square(sub(n, exact(1)))) // = t²/(n-2+t²)
		nu := sub(n, exact(2))
		start, _ := quo(mul(q, nu), sub(exact(1), q)).Float64()
		p := sub(exact(1), quo(sub(exact(1), part(level)), n))
		t2 := ofT(nu).quantile(t, p, start)
		critical := mul(quo(sub(n, exact(1)), root(n)), root(quo(t2, add(nu, t2))))
		criticals.take(t, relative(exact(o.Critical), critical)/slowPart{nil, nu}.lost(), len(w), level)
		if o.Outlier != (g.Cmp(critical) > 0) || o.Outlier && o.Suspect.Number != suspect {
			t.Errorf("%+v of %v", o, w)
		}
		if o.Outlier {
			outliers++
		}
	}
	if outliers < slowRuns()/20 {
		t.Errorf("%d outliers: too few to show anything", outliers)
	}
	gs.log(t)
	criticals.log(t)
}

// One-way analysis of variance of unequal numbers (JCGM 100:2008, H.5, has equal ones; the mean number
// n0 = (N - Σn²/N)/(k - 1), any textbook, from memory).
func TestSlowPeople(t *testing.T) {
	d := newDraws()
	fs := largest{what: "F, in parts of the square of the mean over that below", bound: 1e-15}
	parts := largest{what: "within, between, mean and its uncertainty", bound: 4e-15}
	relatives := largest{what: "relative uncertainty", bound: 4e-15}
	// F is as a square of t. Of the part above 99.999 % a float64 of the part below has twelve digits.
	criticals := largest{what: "critical F, in parts of twice what gonum may lose and 1e-12", bound: 1}
	differ := 0
	for range slowRuns() {
		each := make([]scoop.Calibration, drawn(d, 2, 12))
		spread, cv, step := drawn[units.Mass](d, 1e-2, 0.3), drawn[units.Mass](d, 1e-2, 0.3), units.Mass(0)
		if d.IntN(2) == 0 {
			step = drawn[units.Mass](d, 0.1, 20)
		}
		for i := range each {
			each[i] = scoop.Calibration{
				N: drawn(d, 3, 100), Mean: max(1, 98*(1+spread*units.Mass(d.NormFloat64()))), SD: 98 * cv * (0.5 + units.Mass(d.Float64())),
				Readability: step * units.Mass(d.IntN(3)),
			}
		}
		level, scoops := drawnLevel(d), drawn(d, 1, 1000)
		p := must[scoop.People](t)(scoop.ComparePeople(each, level))

		k, n, squares, sum, means, inner, rounded, fills := exact(len(each)), slow(), slow(), slow(), slow(), slow(), slow(), slow()
		coarsest := units.Mass(0)
		for _, c := range each {
			n.Add(n, exact(c.N))
			squares.Add(squares, square(exact(c.N)))
			sum.Add(sum, mul(exact(c.N), exact(c.Mean)))
			means.Add(means, quo(exact(c.Mean), k))
			inner.Add(inner, scatter(c, exact(c.N-1)).square)
			rounded.Add(rounded, quo(rounding(c.Readability).square, k))
			fills.Add(fills, quo(exact(1), exact(c.N)))
			coarsest = max(coarsest, c.Readability)
		}
		one := exact(1)
		within := quo(inner, sub(n, k))
		between := slow()
		for _, c := range each {
			between.Add(between, quo(mul(exact(c.N), square(sub(exact(c.Mean), quo(sum, n)))), sub(k, one)))
		}
		often := quo(sub(n, quo(squares, n)), sub(k, one))
		u := combined(slowPart{within, sub(n, k)}, slowPart{mul(often, rounded), nil})
		variance := quo(sub(between, u.square), often)
		if variance.Sign() < 0 {
			variance = slow()
		}
		ofMean := quo(add(variance, rounded, quo(mul(within, fills), k)), k)

		f := quo(between, u.square)
		fs.take(t, apart(exact(p.F), f, add(f, quo(square(means), u.square))), each)
		parts.take(t, relative(exact(p.Within), root(within)), each)
		parts.take(t, relative(exact(p.Mean), means), each)
		whole := quo(add(between, u.square), often)
		parts.take(t, apart(square(exact(p.Between)), variance, whole), each)
		parts.take(t, apart(square(exact(p.Uncertainty)), ofMean, add(ofMean, whole)), each)
		all := add(variance, quo(within, exact(scoops)), ofMean, rounding(coarsest).square)
		r := must[units.Percent](t)(p.RelativeUncertainty(scoops))
		relatives.take(t, relative(exact(r), quo(mul(exact(100), root(all)), means)), each, scoops)

		distribution := ofF(sub(k, one), u.freedom)
		if u.freedom.Cmp(tenToTheEight) >= 0 {
			distribution = ofF(sub(k, one), nil)
		}
		critical := distribution.quantile(t, part(level), p.Critical)
		criticals.take(t, relative(exact(p.Critical), critical)/(2*u.lost()+1e-12), each, level)
		if p.Differ != (f.Cmp(critical) > 0) {
			t.Errorf("%+v", p)
		}
		if p.Differ {
			differ++
		}
		if p.Count != len(each) || exact(p.Weighings).Cmp(n) != 0 || p.Readability != coarsest {
			t.Errorf("%+v of %+v", p, each)
		}
	}
	if differ < slowRuns()/10 || differ > slowRuns()*9/10 {
		t.Errorf("%d of %d differ: too few to show anything", differ, slowRuns())
	}
	for _, l := range []largest{fs, parts, relatives, criticals} {
		l.log(t)
	}
}
