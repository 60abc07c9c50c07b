package main

import (
	"image"
	"image/color"
	"math"
	"path/filepath"
	"testing"

	"example.org/bowlgram/examples/gallery/internal/picture"
	"example.org/bowlgram/examples/gallery/internal/testkit"
)

// draws runs the program and returns both of its pictures.
func draws(t *testing.T, args ...string) (image.Image, *testkit.Drawing) {
	t.Helper()
	dir := t.TempDir()
	raster, drawing := filepath.Join(dir, "cup.png"), filepath.Join(dir, "cup.SVG")
	if _, stderr, status := program.Run(t, "", append([]string{"-plot", raster, "-plot", drawing}, args...)...); status != 0 {
		t.Fatalf("exit status %d, stderr %q", status, stderr)
	}
	return testkit.PNG(t, raster), testkit.SVG(t, drawing)
}

func TestPictureOfTheDemo(t *testing.T) {
	img, d := draws(t)
	for _, text := range []string{
		"Level fills of feed room cup, Tarnwick House Dog Dry",
		"mass of one fill, g", "weighing, in the order made",
		"the label: 100 g", "12 weighings", "90", "100", "1", "12",
	} {
		if !d.Has(text) {
			t.Errorf("no text %q in %q", text, d.Texts)
		}
	}
	weighed := []float64{94, 97, 91, 95, 99, 93, 96, 92, 94, 98, 90, 95}
	dots, label := d.Dots(picture.Ink), d.Lines(picture.Green)
	if len(dots) != len(weighed) || len(label) != 1 {
		t.Fatalf("%d points and %d lines of the label", len(dots), len(label))
	}
	grams := testkit.Axis(dots[0].Y, weighed[0], label[0][0].Y, 100)
	for i, dot := range dots {
		if got := grams(dot.Y); math.Abs(got-weighed[i]) > 0.02 {
			t.Errorf("point %d is drawn at %.2f g, want %v g", i+1, got, weighed[i])
		}
		if i > 0 && dot.X <= dots[i-1].X {
			t.Errorf("point %d is not to the right of the one before", i+1)
		}
	}
	// By hand, as in TestDemoByHand: to the tenth of a gram that the page prints.
	lines := d.Lines(picture.Blue)
	if len(lines) != 4 { // the key's second one among them
		t.Fatalf("%d blue lines", len(lines))
	}
	for i, want := range []float64{88.2, 100.8, 94.5} {
		if got := grams(lines[i+1][0].Y); math.Abs(got-want) > 0.07 {
			t.Errorf("line %d at %.2f g, want %v g", i+1, got, want)
		}
	}
	band := d.Areas(picture.PaleBlue)
	if len(band) != 1 {
		t.Fatalf("%d bands", len(band))
	}
	if low, high := grams(band[0][0].Y), grams(band[0][2].Y); math.Abs(low-92.7) > 0.07 || math.Abs(high-96.3) > 0.07 {
		t.Errorf("the band is %.2f g to %.2f g, want 92.7 g to 96.3 g", low, high)
	}

	if got := img.Bounds().Size(); got != (image.Point{X: 1063, Y: 709}) { // 18 cm × 12 cm at 150 dots an inch
		t.Errorf("%v pixels", got)
	}
	for _, tt := range []struct {
		what string
		at   testkit.Point
		want color.RGBA
	}{
		{"the first weighing", dots[0], picture.Ink},
		{"the lowest weighing", dots[10], picture.Ink},
		{"the label", testkit.Point{X: dots[0].X, Y: label[0][0].Y}, picture.Green},
		{"the band, at 94 g", testkit.Point{X: dots[2].X, Y: dots[0].Y}, picture.PaleBlue},
		{"the margin", testkit.Point{X: 2, Y: 2}, color.RGBA{R: 0xff, G: 0xff, B: 0xff, A: 0xff}},
	} {
		if got := testkit.At(img, picture.DPI, tt.at); got != tt.want {
			t.Errorf("%s is %v, want %v", tt.what, got, tt.want)
		}
	}
}

// The eight masses of the uranium example of the NIST Dataplot manual on Grubbs'
// test, of which 245.57 is the outlier.
func TestOddWeighingIsRed(t *testing.T) {
	_, d := draws(t, "199.31 g", "199.53 g", "200.19 g", "200.82 g", "201.92 g", "201.95 g", "202.18 g", "245.57 g")
	if n := len(d.Dots(picture.Ink)); n != 7 {
		t.Errorf("%d ordinary points, want 7", n)
	}
	if odd := d.Dots(picture.Red); len(odd) != 1 {
		t.Errorf("%d odd points, want 1", len(odd))
	}
	if !d.Has("an odd one (Grubbs, 95 %), still counted") {
		t.Errorf("texts %q", d.Texts)
	}
	if len(d.Lines(picture.Green)) != 0 {
		t.Error("a label that isn't there is drawn")
	}
}
