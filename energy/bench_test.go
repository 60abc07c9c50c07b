package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Package variables, so that no result is computed for nothing.
var (
	sink      energy.Estimate
	sinkFloor float64
)

// weights returns 256 weights from 1 kg on.
func weights() (w [256]units.Mass) {
	for i := range w {
		w[i] = units.Mass(1+float64(i)/4) * units.Kilogram
	}
	return w
}

func BenchmarkAdult(b *testing.B) {
	w := weights()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		e, err := energy.Adult{Animal: animal(energy.Dog, w[i&255]), Status: energy.Neutered}.Estimate()
		if err != nil {
			b.Fatal(err)
		}
		sink = e
	}
}

// BenchmarkAdultFloor is the bare arithmetic of BenchmarkAdult.
func BenchmarkAdultFloor(b *testing.B) {
	w := weights()
	for i := 0; b.Loop(); i++ {
		kg := w[i&255].Kilograms()
		sinkFloor = 70 * math.Sqrt(math.Sqrt(kg*kg*kg)) * 1.6
	}
}
