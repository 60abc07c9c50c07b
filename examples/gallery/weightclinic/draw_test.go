package main

import (
	"image"
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
	raster, drawing := filepath.Join(dir, "visit.png"), filepath.Join(dir, "visit.svg")
	if _, stderr, status := program.Run(t, "", append([]string{"-plot", raster, "-plot", drawing}, args...)...); status != 0 {
		t.Fatalf("exit status %d, stderr %q", status, stderr)
	}
	return testkit.PNG(t, raster), testkit.SVG(t, drawing)
}

// near checks a weight of the drawing against one worked out by hand.
func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 0.01 {
		t.Errorf("%s is drawn at %.3f kg, want %.2f kg", what, got, want)
	}
}

func TestPictureOfTheWeightLoss(t *testing.T) {
	img, d := draws(t)
	for _, text := range []string{
		"Weight of Harbottle", "body weight, kg", "day", "weighed",
		"target: 1 % to 2 % a week", "goal 29.62 kg", "30", "38", "16 Nov", "28 Dec", "11 Jan", "2027",
	} {
		if !d.Has(text) {
			t.Errorf("no text %q in %q", text, d.Texts)
		}
	}
	weights := []float64{38.5, 37.9, 37.2, 36.4, 36.2}
	dots := d.Dots(picture.Ink)
	if len(dots) != len(weights) {
		t.Fatalf("%d points, want %d", len(dots), len(weights))
	}
	kg := testkit.Axis(dots[0].Y, weights[0], dots[4].Y, weights[4])
	day := testkit.Axis(dots[0].X, 0, dots[4].X, 56)
	for i, dot := range dots {
		near(t, "a weighing", kg(dot.Y), weights[i])
		if got := day(dot.X); math.Abs(got-float64(14*i)) > 0.02 {
			t.Errorf("weighing %d is drawn on day %.2f, want %d", i+1, got, 14*i)
		}
	}

	// Least squares by hand: the mean is 37.24 kg on day 28, the slope -85.4 / 1960 =
	// -0.04357 kg a day.
	line := d.Lines(picture.Blue)
	if len(line) != 1 {
		t.Fatalf("%d lines", len(line))
	}
	near(t, "the line on the first day", kg(line[0][0].Y), 38.46)
	near(t, "the line on the last day", kg(line[0][len(line[0])-1].Y), 36.02)
	if n := len(d.Areas(picture.PaleBlue)); n != 1 {
		t.Errorf("%d bands of the line", n)
	}

	// 1 to 2 % of 38.5 kg a week, to the next weighing after 10 weeks: 34.65 and
	// 30.8 kg. The goal is 38.5 / 1.3.
	corridor, goal := d.Areas(picture.PaleGreen), d.Lines(picture.Green)
	if len(corridor) != 1 || len(goal) != 1 {
		t.Fatalf("%d corridors, %d goals", len(corridor), len(goal))
	}
	half := len(corridor[0]) / 2
	near(t, "the fast end of the corridor", kg(corridor[0][half-1].Y), 30.8)
	near(t, "the slow end of the corridor", kg(corridor[0][half].Y), 34.65)
	near(t, "the goal", kg(goal[0][0].Y), 29.615)

	inside := testkit.Point{X: dots[4].X, Y: (corridor[0][half-1].Y + corridor[0][half].Y) / 2}
	if got := testkit.At(img, picture.DPI, inside); got != picture.PaleGreen {
		t.Errorf("the corridor is %v, want %v", got, picture.PaleGreen)
	}
	for i, dot := range dots {
		if got := testkit.At(img, picture.DPI, dot); got != picture.Ink {
			t.Errorf("weighing %d is %v, want %v", i+1, got, picture.Ink)
		}
	}
	if got := testkit.At(img, picture.DPI, testkit.Point{X: dots[2].X, Y: goal[0][0].Y}); got != picture.Green {
		t.Errorf("the goal is %v, want %v", got, picture.Green)
	}
}

// A cat that isn't meant to lose weight has no target.
func TestPictureWithoutATarget(t *testing.T) {
	_, d := draws(t, "-demo", "custard")
	if n := len(d.Dots(picture.Ink)); n != 6 {
		t.Errorf("%d points, want 6", n)
	}
	if len(d.Lines(picture.Green)) != 0 || len(d.Areas(picture.PaleGreen)) != 0 {
		t.Error("a target that isn't there is drawn")
	}
}
