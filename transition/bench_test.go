package transition_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

var (
	days  []transition.Day
	floor [7][4]float64
)

// needs are dogs of many weights.
func needs() []energy.Estimate {
	n := make([]energy.Estimate, 256)
	for i := range n {
		n[i] = estimate(energy.Adult{
			Animal: energy.Animal{Species: energy.Dog, Weight: units.Mass(5000 + 100*i), Condition: energy.BCS9(5)}, Status: energy.Neutered,
		})
	}
	return n
}

// BenchmarkDays makes a week's change with its cautions.
func BenchmarkDays(b *testing.B) {
	p, in := toSlim(), needs()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		var err error
		if days, err = p.Days(in[i&255]); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkDaysFloor is the bare arithmetic of BenchmarkDays.
func BenchmarkDaysFloor(b *testing.B) {
	shares := [7]float64{0.25, 0.25, 0.5, 0.5, 0.75, 0.75, 1}
	in := needs()
	for i := 0; b.Loop(); i++ {
		kcal := float64(in[i&255].Daily)
		for d, f := range shares {
			old := math.Round((1 - f) * kcal / 3.56)
			new := math.Round((kcal - float64(old*3.56)) / 2.98)
			half := math.Ceil(old / 2)
			floor[d] = [4]float64{half, old - half, math.Ceil(new / 2), new - math.Ceil(new/2)}
		}
	}
}
