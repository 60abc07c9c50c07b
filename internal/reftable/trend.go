package reftable

import (
	"math"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// logStart is the first day that package trend takes.
func logStart() (trend.Date, error) { return trend.ParseDate("1900-01-01") }

// twoWeighings returns the trend from one weight to another.
func twoWeighings(from, to units.Mass, days int) (trend.Trend, error) {
	start, err := logStart()
	if err != nil {
		return trend.Trend{}, err
	}
	last := start + trend.Date(days)
	return trend.Weights{
		{Date: start, Weight: from, Readability: units.Gram},
		{Date: last, Weight: to, Readability: units.Gram},
	}.Trend(last)
}

// twoVisits evaluates what two weighings say of a loss.
func twoVisits(r Row, in inputs) (float64, error) {
	const week = 7
	switch {
	case r.Unit == "% of original" && in.signature() == "bw0_kg bw_kg species":
		x, err := in.numbers("bw0_kg", "bw_kg")
		if err != nil {
			return 0, err
		}
		t, err := twoWeighings(units.Mass(x[0])*units.Kilogram, units.Mass(x[1])*units.Kilogram, week)
		return -float64(t.SinceStart.Percent), err
	case r.Unit == "% of initial/week" && in.signature() == "bw0_kg bw_kg species weeks":
		x, err := in.numbers("bw0_kg", "bw_kg", "weeks")
		if err != nil {
			return 0, err
		}
		t, err := twoWeighings(units.Mass(x[0])*units.Kilogram, units.Mass(x[1])*units.Kilogram, int(week*x[2]))
		return -float64(t.SinceStart.PerWeek), err
	case strings.HasPrefix(r.Quantity, "weekly loss at ") && in.signature() == "bw_kg rate_pct_wk species":
		// The rate of a loss of 10 g a week says how many grams the row's rate is.
		x, err := in.numbers("bw_kg", "rate_pct_wk")
		if err != nil {
			return 0, err
		}
		initial := units.Mass(x[0]) * units.Kilogram
		t, err := twoWeighings(initial, initial-10*units.Gram, week)
		return x[1] * (t.Rate / units.Mass(t.OfInitial)).Kilograms(), err
	}
	return 0, ErrNoEvaluator
}

// eatsEnough finds the share of its plan below which a cat that loses weight is
// sent to a veterinarian.
func eatsEnough(r Row, in inputs) (float64, error) {
	if r.Quantity != "minimum share of the daily food dose an obese cat must eat" || species(in) != energy.Cat {
		return 0, ErrNoEvaluator
	}
	start, err := logStart()
	if err != nil {
		return 0, err
	}
	const dose = 100 // g of 1 kcal each
	for percent := range dose + 1 {
		served := trend.Served{
			Meal: 1, Food: "food", Offered: dose * units.Gram, Left: units.Mass(dose-percent) * units.Gram,
			Density: 1000 * units.KilocaloriePerKilogram,
		}
		watch := trend.Watch{
			Animal: healthy(energy.Cat, typical(energy.Cat)), Today: start + 10, Daily: dose * units.Kilocalorie,
		}
		for d := watch.Today - 2; d < watch.Today; d++ {
			served.Date = d
			watch.Intake = append(watch.Intake, served)
		}
		flags, err := watch.Flags()
		if err != nil {
			return 0, err
		}
		under := false
		for _, f := range flags {
			under = under || f.Kind == trend.UnderHalf
		}
		if !under {
			return float64(percent), nil
		}
	}
	return 0, ErrNoEvaluator
}

// The thermometer of JCGM 100:2008, H.3, in a log of weights: a ten-thousandth of
// a degree above 20 °C is a day, and a correction of -1 °C is 0 g, since no weight
// is below zero. Neither changes the line.
const (
	daysPerDegree = 10000
	gramsAtZero   = 1
)

// thermometer evaluates what is printed of the line through the data. What
// the residuals alone make of its uncertainty is not there: package trend pools it
// with what a scale and a body do.
func thermometer(r Row, in inputs) (float64, error) {
	if in["dataset"] != "gum-h3-thermometer" {
		return 0, ErrNoEvaluator
	}
	t, start, err := thermometerTrend(in["dataset"])
	if err != nil {
		return 0, err
	}
	at := func(degrees float64) float64 {
		w, _ := t.At(start + trend.Date(math.Round(degrees*daysPerDegree)))
		return w.Grams() - gramsAtZero
	}
	mean, correlation := band(t, start)
	switch r.Quantity {
	case "intercept at t0 = 20":
		return at(0), nil
	case "slope":
		const week = 7
		return t.Rate.Grams() / week * daysPerDegree, nil
	case "predicted correction at 30":
		return at(10), nil
	case "mean of t (minimum-variance point)":
		return 20 + mean, nil
	case "intercept at t0 = tbar":
		return at(mean), nil
	case "correlation of slope and intercept":
		return correlation, nil
	}
	return 0, ErrNoEvaluator
}

func thermometerTrend(set string) (t trend.Trend, start trend.Date, err error) {
	degrees, err := dataColumn(set, 1)
	if err != nil {
		return trend.Trend{}, 0, err
	}
	corrections, err := dataColumn(set, 2)
	if err != nil {
		return trend.Trend{}, 0, err
	}
	if start, err = logStart(); err != nil {
		return trend.Trend{}, 0, err
	}
	var log trend.Weights
	for i, x := range degrees {
		log = append(log, trend.Weighing{
			Date:   start + trend.Date(math.Round((x-20)*daysPerDegree)),
			Weight: units.Mass(corrections[i]+gramsAtZero) * units.Gram, Readability: units.Milligram,
		})
	}
	t, err = log.Trend(log[len(log)-1].Date)
	return t, start, err
}

// band returns where the band around a line is narrowest, in degrees above 20,
// and the correlation of the line's slope and its height there. Squared, the
// band's width is c + b x + a x², with the variance of the height at 0 in c, that of
// the slope in a and twice their covariance in b.
func band(t trend.Trend, start trend.Date) (narrowest, correlation float64) {
	const h = 5
	square := func(degrees int) float64 {
		_, b := t.At(start + trend.Date(degrees*daysPerDegree))
		return b.Width().Grams() * b.Width().Grams()
	}
	q0, q1, q2 := square(0), square(h), square(2*h)
	b := (4*q1 - 3*q0 - q2) / (2 * h)
	a := (q2 - 2*q1 + q0) / (2 * h * h)
	return -b / (2 * a), b / (2 * math.Sqrt(a*q0))
}
