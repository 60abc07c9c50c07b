package trend_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/energy/trend"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// slowTrend is the line of a log and what is known of it, in grams and days.
type slowTrend struct {
	slope, half *big.Float // a day, and half its interval
	height      *big.Float // at the mean day
	mean        *big.Float // day since the first
	noise       *big.Float // of a weighing
	spread      *big.Float
	free        int
	n           int
}

// slowNoise is the expected square of a weighing: the scale's step is as likely
// to be up as down (JCGM 100:2008, F.2.2.1: step²/12), and the body's 0.3 % are
// ours.
func slowNoise(w trend.Weighing) *big.Float {
	scale, body := Exact(w.Readability), Mul(Dec("0.003"), Exact(w.Weight))
	return Add(Quo(Mul(scale, scale), Dec("12")), Mul(body, body))
}

// slowLine is the straight line by least squares. The expected squares count as
// much as 8 weighings: ours.
func slowLine(log trend.Weights) slowTrend {
	n := Exact(len(log))
	x := func(w trend.Weighing) *big.Float { return Exact(w.Date - log[0].Date) }
	sumX, sumY, expected := Zero(), Zero(), Zero()
	for _, w := range log {
		sumX.Add(sumX, x(w))
		sumY.Add(sumY, Exact(w.Weight))
		expected.Add(expected, slowNoise(w))
	}
	l := slowTrend{mean: Quo(sumX, n), height: Quo(sumY, n), spread: Zero(), free: 8 + len(log) - 2, n: len(log)}
	product := Zero()
	for _, w := range log {
		d := Sub(x(w), l.mean)
		l.spread.Add(l.spread, Mul(d, d))
		product.Add(product, Mul(d, Exact(w.Weight)))
	}
	l.slope = Quo(product, l.spread)
	squares := Zero()
	for _, w := range log {
		r := Sub(Exact(w.Weight), l.at(x(w)))
		squares.Add(squares, Mul(r, r))
	}
	l.noise = Root(Quo(Add(Mul(Dec("8"), Quo(expected, n)), squares), Exact(l.free)))
	l.half = Quo(Mul(t95(l.free), l.noise), Root(l.spread))
	return l
}

func (l slowTrend) at(x *big.Float) *big.Float { return Add(l.height, Mul(l.slope, Sub(x, l.mean))) }

// heightHalf is half of the interval of the line's height.
func (l slowTrend) heightHalf(x *big.Float) *big.Float {
	d := Sub(x, l.mean)
	return Mul(t95(l.free), l.noise, Root(Add(Quo(Dec("1"), Exact(l.n)), Quo(Mul(d, d), l.spread))))
}

// A rate is a difference of weights, so that rates are held against the sum of
// rate and interval, and heights against the weight. The largest difference seen
// is 1.7e-14.
func TestTrendIsThatOfTheSlowReference(t *testing.T) {
	d := NewDraws(5, 12)
	worst := 0.0
	week, hundred := Dec("7"), Dec("100")
	for range 300 {
		weight := DrawnBeside(d, 100*units.Gram, 90*units.Kilogram)
		log := drawnLog(d, 2+d.IntN(30), 15, weight, DrawnBeside(d, 1e-4, 0.1), 0, DrawnBeside(d, weight/1e4, weight/5))
		got, err := log.Trend(on("2199-12-31"))
		if err != nil {
			t.Fatal(err)
		}
		want := slowLine(log)
		n := len(log)
		first, last := Exact(log[0].Weight), Exact(log[n-1].Weight)
		rate, half := Mul(want.slope, week), Mul(want.half, week)
		size := Add(Zero().Abs(rate), half)
		part := func(x, of *big.Float) *big.Float { return Mul(hundred, Quo(x, of)) }
		day := log[0].Date + trend.Date(d.IntN(400))
		x := Exact(day - log[0].Date)
		at, band := got.At(day)
		bandHalf := want.heightHalf(x)
		tall := most(Zero().Abs(want.at(x)), first)
		for name, off := range map[string]float64{
			"rate":                 Apart(Exact(got.Rate), rate, size),
			"low":                  Apart(Exact(got.Interval.Low), Sub(rate, half), size),
			"high":                 Apart(Exact(got.Interval.High), Add(rate, half), size),
			"smallest":             Apart(Exact(got.Smallest), half, half),
			"smallest change":      Apart(Exact(got.SmallestChange), Mul(t95(want.free), Root(Dec("2")), want.noise), want.noise),
			"of the initial":       Apart(Exact(got.OfInitial), part(rate, first), part(size, first)),
			"low of the initial":   Apart(Exact(got.OfInitialInterval.Low), part(Sub(rate, half), first), part(size, first)),
			"high of the initial":  Apart(Exact(got.OfInitialInterval.High), part(Add(rate, half), first), part(size, first)),
			"of the last":          Apart(Exact(got.OfLast), part(rate, last), part(size, last)),
			"low of the last":      Apart(Exact(got.OfLastInterval.Low), part(Sub(rate, half), last), part(size, last)),
			"high of the last":     Apart(Exact(got.OfLastInterval.High), part(Add(rate, half), last), part(size, last)),
			"height":               Apart(Exact(at), want.at(x), tall),
			"low end of a height":  Apart(Exact(band.Low), Sub(want.at(x), bandHalf), Add(tall, bandHalf)),
			"high end of a height": Apart(Exact(band.High), Add(want.at(x), bandHalf), Add(tall, bandHalf)),
			"since the start":      Apart(Exact(got.SinceStart.PerWeek), slowPerWeek(log[0], log[n-1]), hundred),
			"since the last":       Apart(Exact(got.SinceLast.PerWeek), slowPerWeek(log[n-2], log[n-1]), hundred),
		} {
			worst = max(worst, off)
			if !(off <= 1e-12) {
				t.Errorf("%s of %v: off by %.3g", name, log, off)
			}
		}
		if got.First != log[0] || got.Last != log[n-1] || got.Weighings != n || got.Days != int(log[n-1].Date-log[0].Date) {
			t.Errorf("%v is of another log than %v", got, log)
		}
		if shown := above(Sub(rate, half), Zero()) || above(Zero(), Add(rate, half)); got.Shown() != shown {
			t.Errorf("%v: shown %v", got, got.Shown())
		}
	}
	t.Logf("largest difference %.2g", worst)
}

// slowPerWeek is the change a week in percent of the earlier weight.
func slowPerWeek(a, b trend.Weighing) *big.Float {
	return Quo(Mul(Dec("700"), Sub(Exact(b.Weight), Exact(a.Weight))), Mul(Exact(a.Weight), Exact(b.Date-a.Date)))
}

// Largest difference seen: 3.8e-16.
func TestSmallestChangeIsThatOfTheSlowReference(t *testing.T) {
	d := NewDraws(5, 12)
	worst := 0.0
	for range 500 {
		w := trend.Weighing{Weight: DrawnBeside(d, 50*units.Gram, 200*units.Kilogram), Readability: DrawnBeside(d, units.Gram/10, units.Kilogram)}
		want := Mul(t95(8), Root(Dec("2")), Root(slowNoise(w)))
		off := Apart(Exact(trend.SmallestChange(w.Weight, w.Readability)), want, want)
		worst = max(worst, off)
		if !(off <= 1e-12) {
			t.Errorf("%v: off by %.3g", w, off)
		}
	}
	t.Logf("largest difference %.2g", worst)
}
