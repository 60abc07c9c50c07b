// Package picture draws the plots of the gallery in one style: what is measured
// in ink, what is worked out from it in blue, what is wanted in green, a plain
// sans serif, the key above the plot, where it can't hide a point.
package picture

import (
	"bytes"
	"fmt"
	"image/color"
	"path/filepath"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
	"gonum.org/v1/plot/vg/vgsvg"
)

// Size of a picture, and the dots per inch of a PNG.
const (
	Width  = 18 * vg.Centimeter
	Height = 12 * vg.Centimeter
	DPI    = 150
)

// Picture is a plot with a title and a key above it.
type Picture struct {
	*plot.Plot
	title string
	keys  []key
}

type key struct {
	name   string
	thumbs []plot.Thumbnailer
}

// New returns an empty picture. The names of the axes say their units.
func New(title, x, y string) *Picture {
	p := &Picture{Plot: plot.New(), title: title}
	for _, axis := range [...]*plot.Axis{&p.X, &p.Y} {
		axis.LineStyle = draw.LineStyle{Color: Ink, Width: vg.Points(0.75)}
		axis.Padding = 0
		axis.Label.TextStyle = withAlignment(axis.Label.TextStyle, sans(10))
		axis.Label.Padding = vg.Points(5)
		axis.Tick.Label = withAlignment(axis.Tick.Label, sans(9))
		axis.Tick.LineStyle = axis.LineStyle
		axis.Tick.Length = vg.Points(4)
	}
	p.X.Label.Text, p.Y.Label.Text = x, y
	p.X.Tick.Marker, p.Y.Tick.Marker = plot.TickerFunc(round), plot.TickerFunc(round)
	rules := plotter.NewGrid()
	rules.Horizontal = draw.LineStyle{Color: Pale, Width: vg.Points(0.75)}
	rules.Vertical = draw.LineStyle{}
	p.Add(rules)
	return p
}

// Key adds a line to the key.
func (p *Picture) Key(name string, thumbs ...plot.Thumbnailer) {
	p.keys = append(p.keys, key{name, thumbs})
}

// Draw draws the picture: the title, the key in two columns, the plot.
func (p *Picture) Draw(c draw.Canvas) {
	c.SetColor(color.White)
	c.Fill(c.Rectangle.Path())
	c = draw.Crop(c, vg.Points(10), -vg.Points(14), vg.Points(8), -vg.Points(10))

	title := bold(13)
	title.YAlign = draw.YTop
	c.FillText(title, vg.Point{X: c.Min.X, Y: c.Max.Y}, p.title)
	c = draw.Crop(c, 0, 0, 0, -vg.Points(24))

	rows := (len(p.keys) + 1) / 2
	left, right := legend(p.keys[:rows]), legend(p.keys[rows:])
	left.Draw(c)
	widest := left.Rectangle(c)
	// A fifth more room, for a viewer of an SVG file that has only a wider font.
	right.Draw(draw.Crop(c, (widest.Max.X-widest.Min.X)*1.2+vg.Points(16), 0, 0, 0))
	p.Plot.Draw(draw.Crop(c, 0, 0, 0, -vg.Points(float64(14*rows+10))))
}

// legend returns a column of the key.
func legend(keys []key) plot.Legend {
	l := plot.NewLegend()
	l.Top, l.Left, l.Padding = true, true, vg.Points(2)
	l.TextStyle, l.ThumbnailWidth = sans(9.5), vg.Points(22)
	for _, k := range keys {
		l.Add(k.name, k.thumbs...)
	}
	return l
}

// Format returns the format that the name of a file asks for: png or svg.
func Format(name string) (string, error) {
	switch ext := strings.ToLower(filepath.Ext(name)); ext {
	case ".png", ".svg":
		return ext[1:], nil
	}
	return "", fmt.Errorf("%q: want a name that ends in .png or .svg", name)
}

// Encode returns the picture as a PNG or an SVG file.
func (p *Picture) Encode(format string) ([]byte, error) {
	var b bytes.Buffer
	switch format {
	case "png":
		c := vgimg.NewWith(vgimg.UseWH(Width, Height), vgimg.UseDPI(DPI))
		p.Draw(draw.New(c))
		_, err := vgimg.PngCanvas{Canvas: c}.WriteTo(&b)
		return b.Bytes(), err
	case "svg":
		c := vgsvg.New(Width, Height)
		p.Draw(draw.New(c))
		if _, err := c.WriteTo(&b); err != nil {
			return nil, err
		}
		// A viewer without the font shall take another without serifs.
		return bytes.ReplaceAll(b.Bytes(), []byte("font-family:Liberation Sans"),
			[]byte("font-family:'Liberation Sans',Arial,Helvetica,sans-serif")), nil
	}
	return nil, fmt.Errorf("format %q: want png or svg", format)
}
