package scoop_test

import (
	"math"
	"reflect"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// Package variables, so that no result is computed for nothing.
var (
	sink         scoop.Calibration
	sinkInterval units.Range[units.Mass]
	sinkFloat    float64
)

// sets returns 64 sets of twelve weighings.
func sets() (s [64][]units.Mass) {
	for i := range s {
		for j := range 12 {
			s[i] = append(s[i], units.Mass(90+(i*7+j*j*5)%21))
		}
	}
	return s
}

func BenchmarkCalibrate(b *testing.B) {
	s := sets()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		c, err := scoop.Calibrate(s[i&63], units.Gram)
		if err != nil {
			b.Fatal(err)
		}
		sink = c
	}
}

// BenchmarkCalibrateFloor is the bare arithmetic of BenchmarkCalibrate: a mean
// and a standard deviation.
func BenchmarkCalibrateFloor(b *testing.B) {
	s := sets()
	for i := 0; b.Loop(); i++ {
		var sum, square float64
		for _, m := range s[i&63] {
			sum += m.Grams()
		}
		mean := sum / 12
		for _, m := range s[i&63] {
			square += (m.Grams() - mean) * (m.Grams() - mean)
		}
		sinkFloat = mean + math.Sqrt(square/11)
	}
}

// BenchmarkNextScoop is a quantile of Student's distribution, nearly all of it.
func BenchmarkNextScoop(b *testing.B) {
	s := sets()
	var c [64]scoop.Calibration
	for i := range c {
		c[i] = must[scoop.Calibration](b)(scoop.Calibrate(s[i], units.Gram))
	}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		r, err := c[i&63].NextScoop(95)
		if err != nil {
			b.Fatal(err)
		}
		sinkInterval = r
	}
}

func TestAllocations(t *testing.T) {
	w := sets()[0]
	c := must[scoop.Calibration](t)(scoop.Calibrate(w, units.Gram))
	for _, tt := range []struct {
		name string
		most float64
		call func()
	}{
		{"Calibrate", 1, func() { sink, _ = scoop.Calibrate(w, units.Gram) }}, // the weighings as numbers
		{"MeanInterval", 0, func() { sinkInterval, _ = c.MeanInterval(95) }},
		{"Day", 0, func() { sinkInterval, _ = c.Day(3, 95) }},
		{"Outlier", 0, func() { o, _ := c.Outlier(95); sinkFloat = o.G }},
		{"RelativeUncertainty", 0, func() { u, _ := c.RelativeUncertainty(3); sinkFloat = float64(u) }},
		{"Compare", 0, func() { x, _ := scoop.Compare(c, c, 95); sinkFloat = x.T }},
	} {
		if n := testing.AllocsPerRun(100, tt.call); n > tt.most {
			t.Errorf("%s: %v allocations, want at most %v", tt.name, n, tt.most)
		}
	}
}

func TestValuesAreComparable(t *testing.T) {
	for _, v := range []any{scoop.Calibration{}, scoop.Grubbs{}, scoop.Comparison{}, scoop.People{}} {
		if !reflect.ValueOf(v).Comparable() {
			t.Errorf("%T can't be compared", v)
		}
	}
}
