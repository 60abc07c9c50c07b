package scoop_test

import (
	"math"
	"math/big"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// slowPart is a squared uncertainty with its degrees of freedom, nil for endless ones.
type slowPart struct{ square, freedom *big.Float }

// scatter is s²/n, and of k more scoops s²/k beside it.
func scatter(c scoop.Calibration, per *big.Float) slowPart {
	return slowPart{mul(exact(c.SD), exact(c.SD), per), exact(c.N - 1)}
}

// rounding is d²/12 (JCGM 100:2008, F.2.2.1).
func rounding(d units.Mass) slowPart { return slowPart{quo(square(exact(d)), exact(12)), nil} }

// combined is JCGM 100:2008, G.2b: ν = u⁴ / Σ (u_i⁴/ν_i).
func combined(parts ...slowPart) slowPart {
	u2, sum := slow(), slow()
	for _, p := range parts {
		u2.Add(u2, p.square)
		if p.freedom != nil {
			sum.Add(sum, quo(square(p.square), p.freedom))
		}
	}
	if sum.Sign() == 0 {
		return slowPart{u2, nil}
	}
	return slowPart{u2, quo(square(u2), sum)}
}

// tenToTheEight is from where on the package takes the normal distribution.
var tenToTheEight = dec("1e8")

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
	s, _ := quo(square(exact(start)), u.square).Float64()
	return root(mul(u.square, u.distribution().quantile(t, part(level), s)))
}

func drawnCalibration(d draws) scoop.Calibration {
	c := scoop.Calibration{N: drawn(d, 3, 1000000), Mean: drawn[units.Mass](d, 0.001, 25000)}
	c.SD = c.Mean * drawn[units.Mass](d, 1e-6, 1.5)
	if d.IntN(3) > 0 {
		c.Readability = drawn[units.Mass](d, 0.001, 1000)
	}
	return c
}

func drawnLevel(d draws) units.Percent {
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
	d := newDraws()
	freedom, relativeU := largest{what: "degrees of freedom", bound: 1e-15}, largest{what: "relative uncertainty", bound: 1e-15}
	halves := largest{what: "half width, in parts of what gonum may lose", bound: 1}
	days := largest{what: "interval of a day, likewise", bound: 1}
	for range slowRuns() {
		c, level, scoops := drawnCalibration(d), drawnLevel(d), drawn(d, 1, 1000)
		perN := quo(exact(1), exact(c.N))
		u := combined(scatter(c, perN), rounding(c.Readability))
		x := must[scoop.Comparison](t)(c.Against(c.Mean, level))
		if u.freedom != nil {
			freedom.take(t, relative(exact(x.Freedom), u.freedom), c)
		}
		mean, h := exact(c.Mean), u.half(t, level, x.Interval.High)
		halves.take(t, relative(exact(x.Interval.High), h)/u.lost(), c, level)
		i := must[units.Range[units.Mass]](t)(c.MeanInterval(level))
		takeInterval(t, &halves, i, mean, h, u)

		// k (m ± t √(s²/k + s²/n + d²/12))
		k := exact(scoops)
		u = combined(scatter(c, add(quo(exact(1), k), perN)), rounding(c.Readability))
		i = must[units.Range[units.Mass]](t)(c.Day(scoops, level))
		h = u.half(t, level, (i.High-units.Mass(scoops)*c.Mean)/units.Mass(scoops))
		takeInterval(t, &days, i, mul(k, mean), mul(k, h), u)
		r := must[units.Percent](t)(c.RelativeUncertainty(scoops))
		relativeU.take(t, relative(exact(r), quo(mul(exact(100), root(u.square)), mean)), c, scoops)
	}
	for _, l := range []largest{freedom, relativeU, halves, days} {
		l.log(t)
	}
}

// takeInterval compares with m ± h, cut off at zero.
func takeInterval(t *testing.T, l *largest, i units.Range[units.Mass], m, h *big.Float, u slowPart) {
	t.Helper()
	low, high := sub(m, h), add(m, h)
	if low.Sign() < 0 {
		low = slow()
	}
	l.take(t, apart(exact(i.Low), low, high)/u.lost(), i)
	l.take(t, relative(exact(i.High), high)/u.lost(), i)
}

// The mean and the standard deviation are those of the weighings as they are in binary.
func TestSlowMeanAndSpread(t *testing.T) {
	d := newDraws()
	means, sds := largest{what: "mean", bound: 1e-15}, largest{what: "standard deviation", bound: 1e-14}
	for range slowRuns() {
		w := make([]units.Mass, drawn(d, 3, 200))
		mean, cv := drawn[units.Mass](d, 0.01, 10000), drawn[units.Mass](d, 1e-6, 0.3)
		for i := range w {
			w[i] = min(max(mean*(1+cv*units.Mass(d.NormFloat64())), 0.001), 25000)
		}
		c := must[scoop.Calibration](t)(scoop.Calibrate(w, 0))
		sum, squares, n := slow(), slow(), exact(len(w))
		for _, m := range w {
			sum.Add(sum, exact(m))
		}
		for _, m := range w {
			squares.Add(squares, square(sub(exact(m), quo(sum, n))))
		}
		sd := root(quo(squares, sub(n, exact(1))))
		means.take(t, relative(exact(c.Mean), quo(sum, n)), w)
		sds.take(t, relative(exact(c.SD), sd), w)
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
		nu := exact(n - 1)
		ratio := exponential(mul(exact(2), sub(logGamma(half(exact(n))), logGamma(half(nu)))))
		c4 := quo(mul(exact(2), ratio), nu) // its square
		want := mul(exact(100), root(sub(quo(exact(1), c4), exact(1))))
		got := exact(scoop.Calibration{N: n}.SDUncertainty())
		if n <= 1000 {
			exactly.take(t, relative(got, want), n)
			continue
		}
		if off := relative(got, want); off > 1e-3 {
			t.Errorf("%d weighings: off by %.3g", n, off)
		}
		if off := relative(got, quo(exact(100), root(mul(exact(2), nu)))); off > 1e-15 {
			t.Errorf("%d weighings: off by %.3g", n, off)
		}
	}
	exactly.log(t)
}

// Of n weighings the mean is within so much as often as the level says, of one fewer it isn't: by the
// distribution itself, without a quantile.
func TestSlowEnough(t *testing.T) {
	d := newDraws()
	found, refusals := 0, 0
	for range slowRuns() {
		c, level := drawnCalibration(d), drawnLevel(d)
		// About what so many weighings reach.
		n := drawn[units.Mass](d, 3, 20000)
		u := units.Mass(math.Sqrt(float64(c.SD*c.SD/n + c.Readability*c.Readability/12)))
		within := min(99, units.Percent(100*u/c.Mean)*drawn[units.Percent](d, 0.7, 5))
		reaches := func(n int) bool {
			as := c
			as.N = n
			u := combined(scatter(as, quo(exact(1), exact(n))), rounding(c.Readability))
			p, _ := u.distribution().below(quo(square(mul(part(within), exact(c.Mean))), u.square))
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
