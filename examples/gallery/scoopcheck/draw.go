package main

import (
	"strconv"

	"example.org/bowlgram/examples/gallery/internal/picture"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
)

// picture draws the weighings in their order, with what they come to.
func (c *check) picture() *picture.Picture {
	p := picture.New("Level fills of "+c.settings.cup, "weighing, in the order made", "mass of one fill, g")
	n := len(c.used)
	first, last := 0.5, float64(n)+0.5
	p.X.Min, p.X.Max = first, last
	p.X.Tick.Marker = plot.TickerFunc(picture.Counts)

	band := picture.Band(picture.PaleBlue, c.mean.Low.Grams(), c.mean.High.Grams(), first, last)
	mean := picture.Level(picture.Line(picture.Blue), c.cup.Mean.Grams(), first, last)
	low := picture.Level(picture.Dashed(picture.Blue), c.next.Low.Grams(), first, last)
	high := picture.Level(picture.Dashed(picture.Blue), c.next.High.Grams(), first, last)
	var points, odd plotter.XYs
	figures := []float64{c.next.Low.Grams(), c.next.High.Grams()}
	for i, m := range c.used {
		xy := plotter.XY{X: float64(i + 1), Y: m.Grams()}
		figures = append(figures, xy.Y)
		if c.odd.Outlier && c.odd.Suspect.Number == i+1 {
			odd = append(odd, xy)
		} else {
			points = append(points, xy)
		}
	}
	p.Add(band, low, high, mean)
	if c.settings.label > 0 {
		label := picture.Level(picture.Line(picture.Green), c.settings.label.Grams(), first, last)
		figures = append(figures, c.settings.label.Grams())
		p.Add(label)
		p.Key("the label: "+c.settings.label.String(), label)
	}
	dots := picture.Dots(picture.Dot(picture.Ink), points)
	p.Add(dots)
	p.Key(strconv.Itoa(n)+" weighings", dots)
	if len(odd) > 0 {
		dots := picture.Dots(picture.Dot(picture.Red), odd)
		p.Add(dots)
		p.Key("an odd one (Grubbs, 95 %), still counted", dots)
	}
	p.Key("mean "+c.grams(c.cup.Mean)+", the true mean 19 times in 20", band, mean)
	p.Key("the next scoop 19 times in 20, "+c.grams(c.next.Low)+" to "+c.grams(c.next.High), low)
	p.Y.Min, p.Y.Max = picture.Bounds(figures...)
	return p
}
