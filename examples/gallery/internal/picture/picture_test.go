package picture

import (
	"bytes"
	"image/png"
	"strings"
	"testing"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
)

func TestFormat(t *testing.T) {
	for name, want := range map[string]string{"a.png": "png", "b.SVG": "svg", "dir.svg/c.png": "png"} {
		if got, err := Format(name); got != want || err != nil {
			t.Errorf("%s: %q, %v, want %q", name, got, err, want)
		}
	}
	for _, name := range []string{"", "png", "a.gif", "a.png.pdf"} {
		if got, err := Format(name); got != "" || err == nil {
			t.Errorf("%q: %q, %v, want an error", name, got, err)
		}
	}
}

// labels returns the ticks as one text.
func labels(ticks []plot.Tick) string {
	var list []string
	for _, tick := range ticks {
		list = append(list, tick.Label)
	}
	return strings.Join(list, " ")
}

func TestTicks(t *testing.T) {
	for _, tt := range []struct {
		ticker    func(low, high float64) []plot.Tick
		low, high float64
		want      string
	}{
		{round, 87, 102, "88 90 92 94 96 98 100 102"},
		{round, 3.75, 4.34, "3.8 3.9 4.0 4.1 4.2 4.3"},
		{round, 0, 1, "0.0 0.2 0.4 0.6 0.8 1.0"},
		{round, 0.101, 0.109, "0.101 0.102 0.103 0.104 0.105 0.106 0.107 0.108 0.109"},
		{round, 0, 4500, "0 500 1000 1500 2000 2500 3000 3500 4000 4500"},
		{Counts, 0.5, 3.5, "1 2 3"},
		{Counts, 0.5, 40.5, "5 10 15 20 25 30 35 40"},
	} {
		if got := labels(tt.ticker(tt.low, tt.high)); got != tt.want {
			t.Errorf("%v to %v: %s, want %s", tt.low, tt.high, got, tt.want)
		}
	}
}

func TestBounds(t *testing.T) {
	for _, tt := range []struct{ figures, want []float64 }{
		{[]float64{100, 50, 150}, []float64{42, 158}}, // 8 % of 100 around
		{[]float64{0, 100}, []float64{0, 108}},
		{[]float64{40}, []float64{38, 42}}, // something to see, where all are equal
		{[]float64{0.5}, []float64{0, 1.5}},
	} {
		if low, high := Bounds(tt.figures...); low != tt.want[0] || high != tt.want[1] {
			t.Errorf("%v: %v to %v, want %v", tt.figures, low, high, tt.want)
		}
	}
}

// One point, no key and no line are a picture too.
func TestSmallestPicture(t *testing.T) {
	p := New("One", "day", "body weight, kg")
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = 0, 2, 0, 2
	p.Add(Dots(Dot(Ink), plotter.XYs{{X: 1, Y: 1}}))
	data, err := p.Encode("png")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := png.Decode(bytes.NewReader(data)); err != nil {
		t.Error(err)
	}
	if _, err := p.Encode("pdf"); err == nil || err.Error() != `format "pdf": want png or svg` {
		t.Errorf("pdf: %v", err)
	}
	// Twice the same, so that a picture under version control changes with its data only.
	first, _ := p.Encode("svg")
	second, _ := p.Encode("svg")
	if !bytes.Equal(first, second) || !bytes.Contains(first, []byte("sans-serif")) {
		t.Errorf("svg:\n%s", first)
	}
}
