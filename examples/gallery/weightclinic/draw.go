package main

import (
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/examples/gallery/internal/picture"
	"example.org/bowlgram/units"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
)

// picture draws the weights by day, the line through them and how sure it is; of
// a weight loss the corridor of the target, up to the next weighing, and the goal.
func (v *visit) picture() *picture.Picture {
	unit := chart{unit: units.Kilogram, name: "kg"}
	if v.weights[0].Weight < units.Kilogram {
		unit = chart{unit: units.Gram, name: "g"}
	}
	first, last := v.weights[0].Date, max(v.today, v.step.Recheck)
	p := picture.New("Weight of "+v.name, "day", "body weight, "+unit.name)
	p.X.Min, p.X.Max = float64(first)-1, float64(last)+1
	p.X.Tick.Marker = plot.TickerFunc(days)
	var figures []float64
	note := func(points plotter.XYs) plotter.XYs {
		for _, xy := range points {
			figures = append(figures, xy.Y)
		}
		return points
	}

	var points plotter.XYs
	for _, w := range v.weights {
		points = append(points, plotter.XY{X: float64(w.Date), Y: unit.of(w.Weight)})
	}
	dots := picture.Dots(picture.Dot(picture.Ink), note(points))
	p.Key("weighed", dots)
	line := []plot.Plotter{dots} // above the target
	if v.line.Weighings > 0 {
		band, path := v.fitted(unit)
		note(band.XYs[0])
		line = []plot.Plotter{band, path, dots}
		p.Key("the line through them; the true one 19 times in 20", band, path)
	}

	if v.loses() {
		low, high := v.corridor(unit, last)
		area := picture.Area(picture.PaleGreen, note(low), note(high))
		goal := picture.Level(picture.Line(picture.Green), unit.of(v.step.Goal.Target.Weight), p.X.Min, p.X.Max)
		note(goal.XYs)
		p.Add(area, goal)
		p.Key("target: "+v.step.Target.Low.String()+" to "+v.step.Target.High.String()+" a week", area)
		p.Key("goal "+kilograms(v.step.Goal.Target.Weight), goal)
	}
	p.Add(line...)
	p.Y.Min, p.Y.Max = picture.Bounds(figures...)
	return p
}

// fitted returns the line through the weighings, and the band that holds the true
// one 19 times in 20.
func (v *visit) fitted(c chart) (*plotter.Polygon, *plotter.Line) {
	var low, line, high plotter.XYs
	for d := v.line.First.Date; d <= v.line.Last.Date; d++ {
		at, sure := v.line.At(d)
		low = append(low, plotter.XY{X: float64(d), Y: c.of(sure.Low)})
		line = append(line, plotter.XY{X: float64(d), Y: c.of(at)})
		high = append(high, plotter.XY{X: float64(d), Y: c.of(sure.High)})
	}
	return picture.Area(picture.PaleBlue, low, high), picture.Path(picture.Line(picture.Blue), line...)
}

// chart is the unit of the axis of weights.
type chart struct {
	unit units.Mass
	name string
}

func (c chart) of(m units.Mass) float64 { return float64(m / c.unit) }

// corridor returns the fastest and the slowest loss of the target, in percent of
// the initial weight a week, from the first day on that this energy is fed.
func (v *visit) corridor(c chart, last trend.Date) (fast, slow plotter.XYs) {
	start, from := v.weights[0], v.step.Plan.Since
	if since := v.weights.Since(from); len(since) > 0 {
		start = since[0]
	}
	initial := v.step.Plan.Loss.Animal.Weight
	at := func(d trend.Date, percent units.Percent) plotter.XY {
		weeks := float64(d-start.Date) / 7
		lost := initial * units.Mass(percent.Fraction()*weeks)
		return plotter.XY{X: float64(d), Y: c.of(max(start.Weight-lost, min(start.Weight, v.step.Goal.Target.Weight)))}
	}
	for d := start.Date; d <= last; d++ {
		fast, slow = append(fast, at(d, v.step.Target.High)), append(slow, at(d, v.step.Target.Low))
	}
	return fast, slow
}

// days is a ticker of calendar days: the same day of the week, or of some weeks.
func days(low, high float64) (ticks []plot.Tick) {
	const most = 9
	step := 1
	for _, step = range []int{1, 2, 7, 14, 28, 56, 112, 224, 448, 896, 3584} {
		if (high-low)/float64(step) <= most {
			break
		}
	}
	for d := trend.Date(low + 1); float64(d) <= high; d += trend.Date(step) {
		label := d.Time().Format("2 Jan")
		if len(ticks) == 0 || d.Time().Year() != (d-trend.Date(step)).Time().Year() {
			label = d.Time().Format("2 Jan\n2006")
		}
		ticks = append(ticks, plot.Tick{Value: float64(d), Label: label})
	}
	return ticks
}
