package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

var (
	sinkEnergy units.EnergyDensity
	sinkErr    error
)

func TestHotCallsDoNotAllocate(t *testing.T) {
	menu := diet.Only(full)
	several := diet.Menu{
		{Food: tin(), Amount: diet.Count(1, "Cans")},
		{Food: full, Amount: diet.Share(50)},
		{Food: full, Amount: diet.Rest()},
		{Food: full, Amount: diet.Fixed(5), Treat: true},
	}
	derived := food("Tarnwick House Cat Dry", 0, "cup", 424, 110, 8)
	for _, tt := range []struct {
		name string
		call func() error
	}{
		{"Density, stated", func() error { d, err := full.Density(); sinkEnergy = d.Energy; return err }},
		{"Density, derived", func() error { d, err := derived.Density(); sinkEnergy = d.Energy; return err }},
		{"Unit", func() error {
			s, err := several[0].Food.Unit("Cans")
			sinkEnergy = units.EnergyDensity(s.Energy)
			return err
		}},
		{"Validate", menu.Validate},
		{"Validate, several", several.Validate},
	} {
		if n := testing.AllocsPerRun(100, func() {
			if err := tt.call(); err != nil {
				panic(err)
			}
		}); n != 0 {
			t.Errorf("%s: %v allocations, want none", tt.name, n)
		}
	}
}

// foods are labels to walk through, so that no call has a constant input.
func foods() []diet.Food {
	list := make([]diet.Food, 64)
	for i := range list {
		list[i] = food("Tarnwick House Dog Dry", 3500+float64(i), "cup", (3500+float64(i))/10, 100, 9)
	}
	return list
}

func BenchmarkDensity(b *testing.B) {
	list := foods()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		d, err := list[i&63].Density()
		sinkEnergy, sinkErr = d.Energy, err
	}
}

// BenchmarkDensityFloor is the floor: the same intervals and their gap, without
// a check.
func BenchmarkDensityFloor(b *testing.B) {
	list := foods()
	for i := 0; b.Loop(); i++ {
		l := &list[i&63].Label
		low, high := l.Energy-5, l.Energy+5
		impliedLow := units.EnergyDensity(float64(l.Serving.Energy-0.5) / float64(l.Serving.Mass+0.5) * 1000)
		impliedHigh := units.EnergyDensity(float64(l.Serving.Energy+0.5) / float64(l.Serving.Mass-0.5) * 1000)
		sinkEnergy = max(impliedLow/high, low/impliedHigh)
	}
}
