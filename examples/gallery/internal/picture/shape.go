package picture

import (
	"image/color"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg/draw"
)

// Path is a line through points.
func Path(style draw.LineStyle, points ...plotter.XY) *plotter.Line {
	return &plotter.Line{XYs: points, LineStyle: style}
}

// Level is a line at one height, from x0 to x1.
func Level(style draw.LineStyle, y, x0, x1 float64) *plotter.Line {
	return Path(style, plotter.XY{X: x0, Y: y}, plotter.XY{X: x1, Y: y})
}

// Area is the room between two lines, of which the second is drawn backwards.
func Area(c color.Color, low, high plotter.XYs) *plotter.Polygon {
	outline := append(plotter.XYs{}, low...)
	for i := len(high) - 1; i >= 0; i-- {
		outline = append(outline, high[i])
	}
	return &plotter.Polygon{XYs: []plotter.XYs{outline}, Color: c}
}

// Band is the room between two heights, from x0 to x1.
func Band(c color.Color, low, high, x0, x1 float64) *plotter.Polygon {
	return Area(c, plotter.XYs{{X: x0, Y: low}, {X: x1, Y: low}}, plotter.XYs{{X: x0, Y: high}, {X: x1, Y: high}})
}

// Dots are points.
func Dots(style draw.GlyphStyle, points plotter.XYs) *plotter.Scatter {
	return &plotter.Scatter{XYs: points, GlyphStyle: style}
}

// Bounds returns the ends of an axis that holds every figure with some room around.
func Bounds(figures ...float64) (low, high float64) {
	low, high = figures[0], figures[0]
	for _, f := range figures {
		low, high = min(low, f), max(high, f)
	}
	room := 0.08 * (high - low)
	if room == 0 {
		room = max(1, 0.05*high)
	}
	if low >= 0 {
		return max(0, low-room), high + room // no mass is below zero
	}
	return low - room, high + room
}
