package portion_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// bottles are kittens of different weights.
func bottles() []portion.Bottle {
	b := make([]portion.Bottle, 256)
	for i := range b {
		kitten := energy.Animal{Species: energy.Cat, Weight: units.Mass(150 + i), Age: 14}
		b[i] = portion.Bottle{Need: must(energy.Nursling{Animal: kitten}), Liquid: portion.Liquid{Energy: 1.02}, Feeds: 8}
	}
	return b
}

var feedsSink portion.Feeds

func BenchmarkBottle(b *testing.B) {
	in := bottles()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		var err error
		if feedsSink, err = in[i&255].Plan(); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkBottleFloor is the bare arithmetic of BenchmarkBottle.
func BenchmarkBottleFloor(b *testing.B) {
	in := bottles()
	for i := 0; b.Loop(); i++ {
		mL := float64(in[i&255].Need.Daily) / 1.02
		n := int64(mL/0.5 + 0.5)
		sink[0] = float64((n+7)/8) * 0.5
	}
}

func BenchmarkServe(b *testing.B) {
	w := tansyDay(b)
	table := portion.Timetable{{Parts: 2}, {Parts: 3}, {Parts: 1}}
	b.ReportAllocs()
	for b.Loop() {
		var err error
		if meals, err = w.Serve(table); err != nil {
			b.Fatal(err)
		}
	}
}

var linesSink []portion.SupplyLine

// BenchmarkSupply is the order of 1000 animals.
func BenchmarkSupply(b *testing.B) {
	s := portion.Supply{Days: 28, Waste: 5}
	for i := range 1000 {
		s.Plans = append(s.Plans, portion.Plan{Animal: string(rune('一' + i)), Weighed: onGrams(b, int64(100+i%300))})
	}
	b.ReportAllocs()
	for b.Loop() {
		var err error
		if linesSink, err = s.Lines(); err != nil {
			b.Fatal(err)
		}
	}
}

// The feeds of a day are planned without an allocation: a sheet of a nursery is
// worked out every morning.
func TestBottlesAllocateNothing(t *testing.T) {
	in := bottles()
	i := 0
	if n := testing.AllocsPerRun(100, func() {
		i++
		if _, err := in[i&255].Plan(); err != nil {
			panic(err)
		}
	}); n > 0 {
		t.Errorf("%v allocations", n)
	}
}
