package scoop_test

import (
	"math"
	"math/big"
	"testing"

	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// slowPart is a squared uncertainty with its degrees of freedom, nil for endless ones.
type slowPart struct{ square, freedom *big.Float }

// scatter is s²/n, and of k more scoops s²/k beside it.
func scatter(c scoop.Calibration, per *big.Float) slowPart {
	return slowPart{Mul(Exact(c.SD), Exact(c.SD), per), Exact(c.N - 1)}
}

// rounding is d²/12 (JCGM 100:2008, F.2.2.1).
func rounding(d units.Mass) slowPart { return slowPart{Quo(square(Exact(d)), Exact(12)), nil} }

// combined is JCGM 100:2008, G.2b: ν = u⁴ / Σ (u_i⁴/ν_i).
func combined(parts ...slowPart) slowPart {
	u2, sum := Zero(), Zero()
	for _, p := range parts {
		u2.Add(u2, p.square)
		if p.freedom != nil {
			sum.Add(sum, Quo(square(p.square), p.freedom))
		}
	}
	if sum.Sign() == 0 {
		return slowPart{u2, nil}
	}
	return slowPart{u2, Quo(square(u2), sum)}
}

// tenToTheEight is from where on the package takes the normal distribution.
var tenToTheEight = Dec("1e8")

// distribution is that of the square of t.
func (u slowPart) distribution() distribution {
	if u.freedom == nil || u.freedom.Cmp(tenToTheEight) >= 0 {
		return ofT(nil)
	}
	return ofT(u.freedom)
}

// half returns t u, where t is searched for from start on.
func (u slowPart) half(t *testing.T, level units.Percent, start units.Mass) *big.Float {
	t.Helper()
	s, _ := Quo(square(Exact(start)), u.square).Float64()
	return Root(Mul(u.square, u.distribution().quantile(t, part(level), s)))
}

func drawnCalibration(d Draws) scoop.Calibration {
	c := scoop.Calibration{N: Drawn(d, 3, 1000000), Mean: Drawn[units.Mass](d, 0.001, 25000)}
	c.SD = c.Mean * Drawn[units.Mass](d, 1e-6, 1.5)
	if d.IntN(3) > 0 {
		c.Readability = Drawn[units.Mass](d, 0.001, 1000)
	}
	return c
}

func drawnLevel(d Draws) units.Percent {
	return []units.Percent{50, 90, 95, 99, 99.999, units.Percent(50 + 49.9*d.Float64())}[d.IntN(6)]
}

// lost is what a figure with a quantile of Student's distribution in it may be off: gonum's loses
// digits as the degrees of freedom grow. From 10^8 on, with the normal distribution, it doesn't.
func (u slowPart) lost() float64 {
	const ulps = 64.0 / (1 << 53) // twice what was seen
	if u.freedom == nil || u.freedom.Cmp(tenToTheEight) >= 0 {
		return ulps
	}
	nu, _ := u.freedom.Float64()
	return ulps * (1 + nu)
}

func slowRuns() int {
	if testing.Short() {
		return 20
	}
	return 300
}

func TestSlowIntervals(t *testing.T) {
	d := NewDraws(8, 3)
	freedom, relativeU := largest{what: "degrees of freedom", bound: 1e-15}, largest{what: "relative uncertainty", bound: 1e-15}
	halves := largest{what: "half width, in parts of what gonum may lose", bound: 1}
	days := largest{what: "interval of a day, likewise", bound: 1}
	for range slowRuns() {
		c, level, scoops := drawnCalibration(d), drawnLevel(d), Drawn(d, 1, 1000)
		perN := Quo(Exact(1), Exact(c.N))
		u := combined(scatter(c, perN), rounding(c.Readability))
		x := must[scoop.Comparison](t)(c.Against(c.Mean, level))
		if u.freedom != nil {
			freedom.take(t, Relative(Exact(x.Freedom), u.freedom), c)
		}
		mean, h := Exact(c.Mean), u.half(t, level, x.Interval.High)
		halves.take(t, Relative(Exact(x.Interval.High), h)/u.lost(), c, level)
		i := must[units.Range[units.Mass]](t)(c.MeanInterval(level))
		takeInterval(t, &halves, i, mean, h, u)

		// k (m ± t √(s²/k + s²/n + d²/12))
		k := Exact(scoops)
		u = combined(scatter(c, Add(Quo(Exact(1), k), perN)), rounding(c.Readability))
		i = must[units.Range[units.Mass]](t)(c.Day(scoops, level))
		h = u.half(t, level, (i.High-units.Mass(scoops)*c.Mean)/units.Mass(scoops))
		takeInterval(t, &days, i, Mul(k, mean), Mul(k, h), u)
		r := must[units.Percent](t)(c.RelativeUncertainty(scoops))
		relativeU.take(t, Relative(Exact(r), Quo(Mul(Exact(100), Root(u.square)), mean)), c, scoops)
	}
	for _, l := range []largest{freedom, relativeU, halves, days} {
		l.log(t)
	}
}

// takeInterval compares with m ± h, cut off at zero.
func takeInterval(t *testing.T, l *largest, i units.Range[units.Mass], m, h *big.Float, u slowPart) {
	t.Helper()
	low, high := Sub(m, h), Add(m, h)
	if low.Sign() < 0 {
		low = Zero()
	}
	l.take(t, Apart(Exact(i.Low), low, high)/u.lost(), i)
	l.take(t, Relative(Exact(i.High), high)/u.lost(), i)
}

// The mean and the standard deviation are those of the weighings as they are in binary.
func TestSlowMeanAndSpread(t *testing.T) {
	d := NewDraws(8, 3)
	means, sds := largest{what: "mean", bound: 1e-15}, largest{what: "standard deviation", bound: 1e-14}
	for range slowRuns() {
		w := make([]units.Mass, Drawn(d, 3, 200))
		mean, cv := Drawn[units.Mass](d, 0.01, 10000), Drawn[units.Mass](d, 1e-6, 0.3)
		for i := range w {
			w[i] = min(max(mean*(1+cv*units.Mass(d.NormFloat64())), 0.001), 25000)
		}
		c := must[scoop.Calibration](t)(scoop.Calibrate(w, 0))
		sum, squares, n := Zero(), Zero(), Exact(len(w))
		for _, m := range w {
			sum.Add(sum, Exact(m))
		}
		for _, m := range w {
			squares.Add(squares, square(Sub(Exact(m), Quo(sum, n))))
		}
		sd := Root(Quo(squares, Sub(n, Exact(1))))
		means.take(t, Relative(Exact(c.Mean), Quo(sum, n)), w)
		sds.take(t, Relative(Exact(c.SD), sd), w)
		near(t, "CV", c.CV(), 100*float64(c.SD/c.Mean), 1e-14)
	}
	means.log(t)
	sds.log(t)
}

// s is σ c4 on the average, c4 = √(2/(n-1)) Γ(n/2)/Γ((n-1)/2), and s² is σ², so that the variance of s is
// 1 - c4² of σ². To 1000 weighings the differences of ln Γ lose digits as n grows, beyond
// the formula of JCGM 100:2008, 4.3.2, is off by less than the 0.1 % that is said.
func TestSlowUncertaintyOfTheStandardDeviation(t *testing.T) {
	exactly := largest{what: "by Γ", bound: 1e-8}
	for _, n := range []int{2, 3, 4, 5, 10, 100, 500, 999, 1000, 1001, 1002, 5000, 1000000} {
		nu := Exact(n - 1)
		ratio := Exponential(Mul(Exact(2), Sub(logGamma(half(Exact(n))), logGamma(half(nu)))))
		c4 := Quo(Mul(Exact(2), ratio), nu) // its square
		want := Mul(Exact(100), Root(Sub(Quo(Exact(1), c4), Exact(1))))
		got := Exact(scoop.Calibration{N: n}.SDUncertainty())
		if n <= 1000 {
			exactly.take(t, Relative(got, want), n)
			continue
		}
		if off := Relative(got, want); off > 1e-3 {
			t.Errorf("%d weighings: off by %.3g", n, off)
		}
		if off := Relative(got, Quo(Exact(100), Root(Mul(Exact(2), nu)))); off > 1e-15 {
			t.Errorf("%d weighings: off by %.3g", n, off)
		}
	}
	exactly.log(t)
}

// Of n weighings the mean is within so much as often as the level says, of one fewer it isn't: by the
// distribution itself, without a quantile.
func TestSlowEnough(t *testing.T) {
	d := NewDraws(8, 3)
	found, refusals := 0, 0
	for range slowRuns() {
		c, level := drawnCalibration(d), drawnLevel(d)
		// About what so many weighings reach.
		n := Drawn[units.Mass](d, 3, 20000)
		u := units.Mass(math.Sqrt(float64(c.SD*c.SD/n + c.Readability*c.Readability/12)))
		within := min(99, units.Percent(100*u/c.Mean)*Drawn[units.Percent](d, 0.7, 5))
		reaches := func(n int) bool {
			as := c
			as.N = n
			u := combined(scatter(as, Quo(Exact(1), Exact(n))), rounding(c.Readability))
			p, _ := u.distribution().below(Quo(square(Mul(part(within), Exact(c.Mean))), u.square))
			return p.Cmp(part(level)) >= 0
		}
		got, err := c.Enough(within, level)
		switch {
		case err != nil && (got != 0 || reaches(10000)):
			t.Errorf("%+v, ± %v at %v: %d, %v", c, within, level, got, err)
		case err != nil:
			refusals++
		case !reaches(got) || got > 3 && reaches(got-1):
			t.Errorf("%+v, ± %v at %v: %d", c, within, level, got)
		case got > 3:
			found++
		}
	}
	if found < slowRuns()/10 || refusals < slowRuns()/10 {
		t.Errorf("%d numbers, %d refusals: too few to show anything", found, refusals)
	}
}
