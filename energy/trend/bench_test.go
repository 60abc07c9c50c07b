package trend_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// Results go here, so that no call is thrown away.
var (
	sinkTrend trend.Trend
	sinkRates [3]float64
)

// twelveWeeks are 64 logs of one weighing a week, losing different amounts.
func twelveWeeks() (logs [64]trend.Weights, today trend.Date) {
	first := on("2026-09-07")
	for i := range logs {
		for week := range 12 {
			today = first + trend.Date(7*week)
			w := 38500 - units.Mass(week*(200+5*i)+(i*7+week*week*5)%90)
			logs[i] = append(logs[i], trend.Weighing{Date: today, Weight: w, Readability: 100 * units.Gram})
		}
	}
	return logs, today
}

// BenchmarkTrend fits a line with its interval to twelve weighings.
func BenchmarkTrend(b *testing.B) {
	logs, today := twelveWeeks()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		t, err := logs[i&63].Trend(today)
		if err != nil {
			b.Fatal(err)
		}
		sinkTrend = t
	}
}

// BenchmarkTrendFloor is the bare arithmetic of BenchmarkTrend: least squares,
// and the interval by Student's t of ten degrees of freedom as tables have it.
func BenchmarkTrendFloor(b *testing.B) {
	logs, _ := twelveWeeks()
	for i := 0; b.Loop(); i++ {
		log := logs[i&63]
		var x, y float64
		for _, w := range log {
			x += float64(w.Date - log[0].Date)
			y += w.Weight.Grams()
		}
		x, y = x/12, y/12
		var xx, xy, yy float64
		for _, w := range log {
			dx, dy := float64(w.Date-log[0].Date)-x, w.Weight.Grams()-y
			xx += dx * dx
			xy += dx * dy
			yy += dy * dy
		}
		slope := xy / xx
		half := 2.228 * math.Sqrt((yy-float64(slope*xy))/10/xx)
		sinkRates = [3]float64{7 * slope, 7 * (slope - half), 7 * (slope + half)}
	}
}
