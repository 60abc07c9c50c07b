package scoop_test

import (
	"testing"

	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// Welch: T = (x2 - x1)/√(s1²/n1 + s2²/n2), here with the rounding of both scales.
func TestSlowComparison(t *testing.T) {
	d := NewDraws(8, 3)
	ts, freedom := largest{what: "T", bound: 1e-15}, largest{what: "degrees of freedom", bound: 1e-15}
	ends := largest{what: "interval, in parts of what gonum may lose", bound: 1}
	for range slowRuns() {
		a, b, level := drawnCalibration(d), drawnCalibration(d), drawnLevel(d)
		x := must[scoop.Comparison](t)(scoop.Compare(a, b, level))
		u := combined(
			scatter(a, Quo(Exact(1), Exact(a.N))), scatter(b, Quo(Exact(1), Exact(b.N))), rounding(a.Readability), rounding(b.Readability))
		off := Sub(Exact(b.Mean), Exact(a.Mean))
		ts.take(t, Relative(Exact(x.T), Quo(off, Root(u.square))), a, b)
		freedom.take(t, Relative(Exact(x.Freedom), u.freedom), a, b)
		h := u.half(t, level, x.Interval.Width()/2)
		whole := Add(Zero().Abs(off), h)
		ends.take(t, Apart(Exact(x.Interval.Low), Sub(off, h), whole)/u.lost(), a, b, level)
		ends.take(t, Apart(Exact(x.Interval.High), Add(off, h), whole)/u.lost(), a, b, level)
		if x.Different != (h.Cmp(Zero().Abs(off)) < 0) {
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
	d := NewDraws(8, 3)
	gs := largest{what: "G, in parts of the mean in standard deviations", bound: 1e-15}
	criticals := largest{what: "critical value, in parts of what gonum may lose", bound: 1}
	outliers := 0
	for range slowRuns() {
		w := make([]units.Mass, Drawn(d, 3, 60))
		cv := Drawn[units.Mass](d, 1e-3, 0.2)
		for i := range w {
			w[i] = max(1, 98*(1+cv*units.Mass(d.NormFloat64())))
		}
		if d.IntN(3) == 0 {
			w[d.IntN(len(w))] *= 1 + 4*cv
		}
		c := must[scoop.Calibration](t)(scoop.Calibrate(w, 0))
		level := drawnLevel(d)
		o := must[scoop.Grubbs](t)(c.Outlier(level))

		mean, squares, far, n := Zero(), Zero(), Zero(), Exact(len(w))
		for _, m := range w {
			mean.Add(mean, Quo(Exact(m), n))
		}
		suspect := 0
		for i, m := range w {
			off := Sub(Exact(m), mean)
			squares.Add(squares, square(off))
			if off.Abs(off).Cmp(far) > 0 {
				far, suspect = off, i+1
			}
		}
		sd := Root(Quo(squares, Sub(n, Exact(1))))
		g := Quo(far, sd)
		gs.take(t, Apart(Exact(o.G), g, Quo(mean, sd)), w) // what is left of a difference from the mean

		// t² from the critical value, as a start of the search.
		q := Quo(Mul(square(Exact(o.Critical)), n), square(Sub(n, Exact(1)))) // = t²/(n-2+t²)
		nu := Sub(n, Exact(2))
		start, _ := Quo(Mul(q, nu), Sub(Exact(1), q)).Float64()
		p := Sub(Exact(1), Quo(Sub(Exact(1), part(level)), n))
		t2 := ofT(nu).quantile(t, p, start)
		critical := Mul(Quo(Sub(n, Exact(1)), Root(n)), Root(Quo(t2, Add(nu, t2))))
		criticals.take(t, Relative(Exact(o.Critical), critical)/slowPart{nil, nu}.lost(), len(w), level)
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
	d := NewDraws(8, 3)
	fs := largest{what: "F, in parts of the square of the mean over that below", bound: 1e-15}
	parts := largest{what: "within, between, mean and its uncertainty", bound: 4e-15}
	relatives := largest{what: "relative uncertainty", bound: 4e-15}
	// F is as a square of t. Of the part above 99.999 % a float64 of the part below has twelve digits.
	criticals := largest{what: "critical F, in parts of twice what gonum may lose and 1e-12", bound: 1}
	differ := 0
	for range slowRuns() {
		each := make([]scoop.Calibration, Drawn(d, 2, 12))
		spread, cv, step := Drawn[units.Mass](d, 1e-2, 0.3), Drawn[units.Mass](d, 1e-2, 0.3), units.Mass(0)
		if d.IntN(2) == 0 {
			step = Drawn[units.Mass](d, 0.1, 20)
		}
		for i := range each {
			each[i] = scoop.Calibration{
				N: Drawn(d, 3, 100), Mean: max(1, 98*(1+spread*units.Mass(d.NormFloat64()))), SD: 98 * cv * (0.5 + units.Mass(d.Float64())),
				Readability: step * units.Mass(d.IntN(3)),
			}
		}
		level, scoops := drawnLevel(d), Drawn(d, 1, 1000)
		p := must[scoop.People](t)(scoop.ComparePeople(each, level))

		k, n, squares, sum, means, inner, rounded, fills := Exact(len(each)), Zero(), Zero(), Zero(), Zero(), Zero(), Zero(), Zero()
		coarsest := units.Mass(0)
		for _, c := range each {
			n.Add(n, Exact(c.N))
			squares.Add(squares, square(Exact(c.N)))
			sum.Add(sum, Mul(Exact(c.N), Exact(c.Mean)))
			means.Add(means, Quo(Exact(c.Mean), k))
			inner.Add(inner, scatter(c, Exact(c.N-1)).square)
			rounded.Add(rounded, Quo(rounding(c.Readability).square, k))
			fills.Add(fills, Quo(Exact(1), Exact(c.N)))
			coarsest = max(coarsest, c.Readability)
		}
		one := Exact(1)
		within := Quo(inner, Sub(n, k))
		between := Zero()
		for _, c := range each {
			between.Add(between, Quo(Mul(Exact(c.N), square(Sub(Exact(c.Mean), Quo(sum, n)))), Sub(k, one)))
		}
		often := Quo(Sub(n, Quo(squares, n)), Sub(k, one))
		u := combined(slowPart{within, Sub(n, k)}, slowPart{Mul(often, rounded), nil})
		variance := Quo(Sub(between, u.square), often)
		if variance.Sign() < 0 {
			variance = Zero()
		}
		ofMean := Quo(Add(variance, rounded, Quo(Mul(within, fills), k)), k)

		f := Quo(between, u.square)
		fs.take(t, Apart(Exact(p.F), f, Add(f, Quo(square(means), u.square))), each)
		parts.take(t, Relative(Exact(p.Within), Root(within)), each)
		parts.take(t, Relative(Exact(p.Mean), means), each)
		whole := Quo(Add(between, u.square), often)
		parts.take(t, Apart(square(Exact(p.Between)), variance, whole), each)
		parts.take(t, Apart(square(Exact(p.Uncertainty)), ofMean, Add(ofMean, whole)), each)
		all := Add(variance, Quo(within, Exact(scoops)), ofMean, rounding(coarsest).square)
		r := must[units.Percent](t)(p.RelativeUncertainty(scoops))
		relatives.take(t, Relative(Exact(r), Quo(Mul(Exact(100), Root(all)), means)), each, scoops)

		distribution := ofF(Sub(k, one), u.freedom)
		if u.freedom.Cmp(tenToTheEight) >= 0 {
			distribution = ofF(Sub(k, one), nil)
		}
		critical := distribution.quantile(t, part(level), p.Critical)
		criticals.take(t, Relative(Exact(p.Critical), critical)/(2*u.lost()+1e-12), each, level)
		if p.Differ != (f.Cmp(critical) > 0) {
			t.Errorf("%+v", p)
		}
		if p.Differ {
			differ++
		}
		if p.Count != len(each) || Exact(p.Weighings).Cmp(n) != 0 || p.Readability != coarsest {
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
