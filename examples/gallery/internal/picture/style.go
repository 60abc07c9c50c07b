package picture

import (
	"image/color"

	imgfont "golang.org/x/image/font"
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// Colours. The pale ones are opaque, so that they are the same in every format.
var (
	Ink       = color.RGBA{R: 0x22, G: 0x26, B: 0x2b, A: 0xff} // what was measured
	Pale      = color.RGBA{R: 0xe6, G: 0xe8, B: 0xea, A: 0xff} // rules behind the plot
	Blue      = color.RGBA{R: 0x1f, G: 0x5f, B: 0xa8, A: 0xff} // what it comes to
	PaleBlue  = color.RGBA{R: 0xcb, G: 0xdd, B: 0xf0, A: 0xff} // how sure that is
	Green     = color.RGBA{R: 0x2e, G: 0x7d, B: 0x46, A: 0xff} // what is wanted
	PaleGreen = color.RGBA{R: 0xd7, G: 0xec, B: 0xd9, A: 0xff} // within these bounds
	Red       = color.RGBA{R: 0xb3, G: 0x26, B: 0x1e, A: 0xff} // what is odd
)

// Line is the style of a line across the plot.
func Line(c color.Color) draw.LineStyle {
	return draw.LineStyle{Color: c, Width: vg.Points(1.75)}
}

// Dashed is the style of the edge of something.
func Dashed(c color.Color) draw.LineStyle {
	return draw.LineStyle{Color: c, Width: vg.Points(1.25), Dashes: []vg.Length{vg.Points(5), vg.Points(3)}}
}

// Dot is the style of a point.
func Dot(c color.Color) draw.GlyphStyle {
	return draw.GlyphStyle{Color: c, Radius: vg.Points(3.5), Shape: draw.CircleGlyph{}}
}

// sans is a font that the plotting library brings with it, whatever a machine has.
func sans(points float64) text.Style {
	return text.Style{
		Color:   Ink,
		Font:    font.Font{Typeface: "Liberation", Variant: "Sans", Size: vg.Points(points)},
		Handler: plot.DefaultTextHandler,
	}
}

func bold(points float64) text.Style {
	s := sans(points)
	s.Font.Weight = imgfont.WeightBold
	return s
}

// withAlignment returns style as it is aligned in old.
func withAlignment(old, style text.Style) text.Style {
	style.XAlign, style.YAlign, style.Rotation = old.XAlign, old.YAlign, old.Rotation
	return style
}
