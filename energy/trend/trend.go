package trend

import (
	"math"
	"strconv"

	"example.org/bowlgram/units"
)

// Trend is what a log of weights says. Rates are a week's; a loss is below
// zero, so that Low is the fastest loss that goes with the log. Nothing is
// rounded. It is comparable with ==; the zero value is no trend. It isn't
// stored: keep the Weights. encoding/json gets an error for it.
type Trend struct {
	First, Last Weighing
	Weighings   int
	Days        int // from the first to the last

	Rate     units.Mass              // a week, by least squares
	Interval units.Range[units.Mass] // holds the true rate 19 times in 20, if weighings scatter as the package says

	// The same in percent of the initial weight, as SACN has it, and of the last
	// one. The initial weight is the first of the log, and in a Step that of its
	// plan. Sources differ; they are never the same.
	OfInitial         units.Percent
	OfInitialInterval units.Range[units.Percent]
	OfLast            units.Percent
	OfLastInterval    units.Range[units.Percent]

	SinceStart Change // from the first weighing
	SinceLast  Change // from the one before the last

	// Smallest is the smallest rate, up or down, that a log like this one can
	// tell from none: half the width of Interval. SmallestChange is the same
	// for the difference of the last two weighings.
	Smallest       units.Mass
	SmallestChange units.Mass

	fitted  line
	noise   float64
	free    float64
	initial units.Mass
}

// Trend returns the trend of the whole log: l.Since(day).Trend(today) for that
// of a part of it. It needs two weighings or more. The errors are those of
// Check.
func (l Weights) Trend(today Date) (Trend, error) {
	if err := l.check(today, growth{}).Err(); err != nil {
		return Trend{}, err
	}
	if len(l) < 2 {
		return Trend{}, refuse("weights", strconv.Itoa(len(l))+" weighings", "two weighings or more for a trend", "")
	}
	return l.trend(l[0].Weight), nil
}

// trend is Trend for a checked log of two weighings or more, with the weight
// that counts as the initial one.
func (l Weights) trend(initial units.Mass) Trend {
	first, last := l[0], l[len(l)-1]
	x, y := make([]float64, len(l)), make([]float64, len(l))
	for i, w := range l {
		x[i], y[i] = float64(w.Date-first.Date), w.Weight.Grams()
	}
	t := Trend{
		First: first, Last: last, Weighings: len(l), Days: int(last.Date - first.Date),
		SinceStart: change(first, last), SinceLast: change(l[len(l)-2], last),
		fitted: fit(x, y), initial: initial,
	}
	t.noise, t.free = l.noise(t.fitted)
	half := quantile(confidence, t.free) * t.fitted.slopeError(t.noise)
	t.Rate = daysPerWeek * units.Mass(t.fitted.slope)
	t.Smallest = daysPerWeek * units.Mass(half)
	t.Interval = units.Range[units.Mass]{Low: t.Rate - t.Smallest, High: t.Rate + t.Smallest}
	t.SmallestChange = units.Mass(quantile(confidence, t.free) * math.Sqrt2 * t.noise)
	t.OfInitial, t.OfInitialInterval = t.of(initial)
	t.OfLast, t.OfLastInterval = t.of(last.Weight)
	return t
}

// of returns the rate in percent of a weight.
func (t Trend) of(w units.Mass) (units.Percent, units.Range[units.Percent]) {
	part := func(m units.Mass) units.Percent { return units.Percent(100 * (m / w)) }
	return part(t.Rate), units.Range[units.Percent]{Low: part(t.Interval.Low), High: part(t.Interval.High)}
}

// Shown reports whether the log shows a change: whether the interval is all on
// one side of none.
func (t Trend) Shown() bool { return t.Interval.Low > 0 || t.Interval.High < 0 }

// At returns the weight of the line on a day, and the interval that holds the
// true line there as often as Interval does the rate: what a plot draws. Outside the days of the log
// it is a guess that gets worse with every day. The zero Trend gives zeros.
func (t Trend) At(d Date) (units.Mass, units.Range[units.Mass]) {
	if t.Weighings == 0 {
		return 0, units.Range[units.Mass]{}
	}
	x := float64(d - t.First.Date)
	w := units.Mass(t.fitted.at(x))
	half := units.Mass(quantile(confidence, t.free) * t.fitted.heightError(x, t.noise))
	return w, units.Range[units.Mass]{Low: w - half, High: w + half}
}

// String returns the trend in one line: the rate with its interval, in both
// percentages.
func (t Trend) String() string {
	if t.Weighings == 0 {
		return ""
	}
	verb := "gains "
	rate, low, high := t.Rate, t.Interval.Low, t.Interval.High
	initial, last := t.OfInitial, t.OfLast
	if t.Rate < 0 {
		verb = "loses "
		rate, low, high = -rate, -high, -low
		initial, last = -initial, -last
	}
	if readable(rate) == "0 g" {
		return "keeps its weight, " + readable(rate) + " a week (" + readable(low) + " to " + readable(high) + ")"
	}
	s := verb + readable(rate) + " a week (" + readable(low) + " to " + readable(high) + "), " +
		percent(initial) + " of " + readable(t.initial) + " at the start, " + percent(last) + " of " + readable(t.Last.Weight) + " now"
	if !t.Shown() {
		s += ": a change can't be told from none"
	}
	return s
}
