package testkit

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"io"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// Point is a place in a drawing, in points, counted from the lower left.
type Point struct{ X, Y float64 }

// Drawing is what an SVG file of the gallery holds.
type Drawing struct {
	Texts []string
	paths []path
}

type path struct {
	points       []Point
	round        bool
	fill, stroke string
}

var number = regexp.MustCompile(`-?\d+(\.\d+)?(e-?\d+)?`)

// SVG reads a file.
func SVG(t *testing.T, name string) *Drawing {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Group struct {
			Paths []struct {
				D     string `xml:"d,attr"`
				Style string `xml:"style,attr"`
			} `xml:"path"`
		} `xml:"g"`
	}
	if err := xml.NewDecoder(bytes.NewReader(data)).Decode(&file); err != nil {
		t.Fatal(err)
	}
	d := &Drawing{Texts: texts(t, data)}
	for _, p := range file.Group.Paths {
		read := path{round: strings.Contains(p.D, "A"), fill: property(p.Style, "fill"), stroke: property(p.Style, "stroke")}
		var n []float64
		for _, text := range number.FindAllString(p.D, -1) {
			x, err := strconv.ParseFloat(text, 64)
			if err != nil {
				t.Fatal(err)
			}
			n = append(n, x)
		}
		for i := 0; i+1 < len(n); i += 2 {
			read.points = append(read.points, Point{n[i], n[i+1]})
		}
		d.paths = append(d.paths, read)
	}
	return d
}

// texts returns those of every group: a turned text is in one of its own.
func texts(t *testing.T, data []byte) (list []string) {
	dec := xml.NewDecoder(bytes.NewReader(data))
	for {
		token, err := dec.Token()
		if err == io.EOF {
			return list
		}
		if err != nil {
			t.Fatal(err)
		}
		if start, ok := token.(xml.StartElement); ok && start.Name.Local == "text" {
			var text string
			if err := dec.DecodeElement(&text, &start); err != nil {
				t.Fatal(err)
			}
			list = append(list, text)
		}
	}
}

func property(style, name string) string {
	for part := range strings.SplitSeq(style, ";") {
		if key, value, ok := strings.Cut(part, ":"); ok && key == name {
			return value
		}
	}
	return ""
}

// Has reports whether a text stands in the drawing.
func (d *Drawing) Has(text string) bool {
	return slices.Contains(d.Texts, text)
}

// Dots returns the centres of the points of a colour in the order drawn, without
// that of the key, which is the first.
func (d *Drawing) Dots(c color.Color) (centres []Point) {
	for _, p := range d.paths {
		if p.round && p.fill == hex(c) {
			// It begins at the right of the circle, 3.5 points from the centre.
			centres = append(centres, Point{p.points[0].X - 3.5, p.points[0].Y})
		}
	}
	return centres[min(1, len(centres)):]
}

// Lines returns the lines of a colour in the order drawn, without that of the key.
func (d *Drawing) Lines(c color.Color) (lines [][]Point) {
	for _, p := range d.paths {
		if p.stroke == hex(c) {
			lines = append(lines, p.points)
		}
	}
	return lines[min(1, len(lines)):]
}

// Areas returns the outlines of the areas of a colour, without that of the key.
func (d *Drawing) Areas(c color.Color) (areas [][]Point) {
	for _, p := range d.paths {
		if !p.round && p.fill == hex(c) {
			areas = append(areas, p.points)
		}
	}
	return areas[min(1, len(areas)):]
}

func hex(c color.Color) string {
	r, g, b, _ := c.RGBA()
	return fmt.Sprintf("#%02X%02X%02X", r>>8, g>>8, b>>8)
}

// Axis turns a height in the drawing into what it stands for, from two that are
// known.
func Axis(y0, value0, y1, value1 float64) func(y float64) float64 {
	return func(y float64) float64 { return value0 + (y-y0)/(y1-y0)*(value1-value0) }
}

// PNG reads a file.
func PNG(t *testing.T, name string) image.Image {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// At returns the colour of a raster picture at a point of the drawing.
func At(img image.Image, dpi float64, p Point) color.RGBA {
	perPoint := dpi / 72
	x := int(p.X * perPoint)
	y := img.Bounds().Max.Y - 1 - int(p.Y*perPoint)
	return color.RGBAModel.Convert(img.At(x, y)).(color.RGBA)
}
