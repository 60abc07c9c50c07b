package trend_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/energy/trend"
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
	scale, body := exact(w.Readability), mul(dec("0.003"), exact(w.Weight))
	return add(quo(mul(scale, scale), dec("12")), mul(body, body))
}

// slowLine is the straight line by least squares. The expected squares count as
// much as 8 weighings: ours.
func slowLine(log trend.Weights) slowTrend {
	n := exact(len(log))
	x := func(w trend.Weighing) *big.Float { return exact(w.Date - log[0].Date) }
	sumX, sumY, expected := slow(), slow(), slow()
	for _, w := range log {
		sumX.Add(sumX, x(w))
		sumY.Add(sumY, exact(w.Weight))
		expected.Add(expected, slowNoise(w))
	}
	l := slowTrend{mean: quo(sumX, n), height: quo(sumY, n), spread: slow(), free: 8 + len(log) - 2, n: len(log)}
	product := slow()
	for _, w := range log {
		d := sub(x(w), l.mean)
		l.spread.Add(l.spread, mul(d, d))
		product.Add(product, mul(d, exact(w.Weight)))
	}
	l.slope = quo(product, l.spread)
	squares := slow()
	for _, w := range log {
		r := sub(exact(w.Weight), l.at(x(w)))
		squares.Add(squares, mul(r, r))
	}
	l.noise = root(quo(add(mul(dec("8"), quo(expected, n)), squares), exact(l.free)))
	l.half = quo(mul(t95(l.free), l.noise), root(l.spread))
	return l
}

func (l slowTrend) at(x *big.Float) *big.Float { return add(l.height, mul(l.slope, sub(x, l.mean))) }

// heightHalf is half of the interval of the line's height.
func (l slowTrend) heightHalf(x *big.Float) *big.Float {
	d := sub(x, l.mean)
	return mul(t95(l.free), l.noise, root(add(quo(dec("1"), exact(l.n)), quo(mul(d, d), l.spread))))
}

// A rate is a difference of weights, so that rates are held against the sum of
// rate and interval, and heights against the weight. The largest difference seen
// is 1.7e-14.
func TestTrendIsThatOfTheSlowReference(t *testing.T) {
	d := newDraws()
	worst := 0.0
	week, hundred := dec("7"), dec("100")
	for range 300 {
		weight := drawn(d, 100*units.Gram, 90*units.Kilogram)
		log := d.log(2+d.IntN(30), 15, weight, drawn(d, 1e-4, 0.1), 0, drawn(d, weight/1e4, weight/5))
		got, err := log.Trend(on("2199-12-31"))
		if err != nil {
			t.Fatal(err)
		}
		want := slowLine(log)
		n := len(log)
		first, last := exact(log[0].Weight), exact(log[n-1].Weight)
		rate, half := mul(want.slope, week), mul(want.half, week)
		size := add(slow().Abs(rate), half)
		part := func(x, of *big.Float) *big.Float { return mul(hundred, quo(x, of)) }
		day := log[0].Date + trend.Date(d.IntN(400))
		x := exact(day - log[0].Date)
		at, band := got.At(day)
		bandHalf := want.heightHalf(x)
		tall := most(slow().Abs(want.at(x)), first)
		for name, off := range map[string]float64{
			"rate":                 apart(got.Rate, rate, size),
			"low":                  apart(got.Interval.Low, sub(rate, half), size),
			"high":                 apart(got.Interval.High, add(rate, half), size),
			"smallest":             apart(got.Smallest, half, half),
			"smallest change":      apart(got.SmallestChange, mul(t95(want.free), root(dec("2")), want.noise), want.noise),
			"of the initial":       apart(got.OfInitial, part(rate, first), part(size, first)),
			"low of the initial":   apart(got.OfInitialInterval.Low, part(sub(rate, half), first), part(size, first)),
			"high of the initial":  apart(got.OfInitialInterval.High, part(add(rate, half), first), part(size, first)),
			"of the last":          apart(got.OfLast, part(rate, last), part(size, last)),
			"low of the last":      apart(got.OfLastInterval.Low, part(sub(rate, half), last), part(size, last)),
			"high of the last":     apart(got.OfLastInterval.High, part(add(rate, half), last), part(size, last)),
			"height":               apart(at, want.at(x), tall),
			"low end of a height":  apart(band.Low, sub(want.at(x), bandHalf), add(tall, bandHalf)),
			"high end of a height": apart(band.High, add(want.at(x), bandHalf), add(tall, bandHalf)),
			"since the start":      apart(got.SinceStart.PerWeek, slowPerWeek(log[0], log[n-1]), hundred),
			"since the last":       apart(got.SinceLast.PerWeek, slowPerWeek(log[n-2], log[n-1]), hundred),
		} {
			worst = max(worst, off)
			if !(off <= 1e-12) {
				t.Errorf("%s of %v: off by %.3g", name, log, off)
			}
		}
		if got.First != log[0] || got.Last != log[n-1] || got.Weighings != n || got.Days != int(log[n-1].Date-log[0].Date) {
			t.Errorf("%v is of another log than %v", got, log)
		}
		if shown := above(sub(rate, half), slow()) || above(slow(), add(rate, half)); got.Shown() != shown {
			t.Errorf("%v: shown %v", got, got.Shown())
		}
	}
	t.Logf("largest difference %.2g", worst)
}

// slowPerWeek is the change a week in percent of the earlier weight.
func slowPerWeek(a, b trend.Weighing) *big.Float {
	return quo(mul(dec("700"), sub(exact(b.Weight), exact(a.Weight))), mul(exact(a.Weight), exact(b.Date-a.Date)))
}

// Largest difference seen: 3.8e-16.
func TestSmallestChangeIsThatOfTheSlowReference(t *testing.T) {
	d := newDraws()
	worst := 0.0
	for range 500 {
		w := trend.Weighing{Weight: drawn(d, 50*units.Gram, 200*units.Kilogram), Readability: drawn(d, units.Gram/10, units.Kilogram)}
		want := mul(t95(8), root(dec("2")), root(slowNoise(w)))
		off := apart(trend.SmallestChange(w.Weight, w.Readability), want, want)
		worst = max(worst, off)
		if !(off <= 1e-12) {
			t.Errorf("%v: off by %.3g", w, off)
		}
	}
	t.Logf("largest difference %.2g", worst)
}
