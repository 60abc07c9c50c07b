package trend_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// The grams of a scale of 0.1 g are no float64, and their difference is off by its last
// bits: what is gained is what a person subtracts. The alarm is at 7 g a day of a kitten
// and 3.5 % of a puppy, 10 g are expected of a kitten (SACN 5th ed., Tables 23-5, 16-1
// and 23-1); in the first 24 hours a loss of up to 10 % is no alarm (common practice, no
// source).
func TestGainOnABoundIsOnIt(t *testing.T) {
	flag := func(species energy.Species, age int, grams ...units.Mass) trend.Flag {
		l := orphan(species, age, grams...)
		for i := range l.Nurslings[0].Weights {
			l.Nurslings[0].Weights[i].Readability = 0.1
		}
		gains := report(t, l).Gains
		return gains[len(gains)-1].Flag
	}
	for i := range 1000 {
		// Every tenth of a gram from 100 to 200 g.
		at := func(tenths units.Mass) units.Mass { return (1000 + units.Mass(i) + tenths) / 10 }
		if f := flag(energy.Cat, 10, at(0), at(70)); f != (trend.Flag{}) {
			t.Fatalf("7 g on %v: %v", at(0), f)
		}
		if f := flag(energy.Cat, 10, at(0), at(69)); f == (trend.Flag{}) {
			t.Fatalf("6.9 g on %v are no alarm", at(0))
		}
		if f := flag(energy.Cat, 10, at(0), at(100), at(200), at(300)); f != (trend.Flag{}) {
			t.Fatalf("10 g a day on %v: %v", at(0), f)
		}
		if f := flag(energy.Cat, 10, at(0), at(100), at(200), at(299)); f == (trend.Flag{}) {
			t.Fatalf("9.97 g a day on %v are not noted", at(0))
		}
	}
	if f := flag(energy.Cat, 10, 121.2, 128.2); f != (trend.Flag{}) {
		t.Error(f)
	}
	if f := flag(energy.Cat, 10, 98.2, 108.2, 118.2, 128.2); f != (trend.Flag{}) {
		t.Error(f)
	}
	for i := range 100 {
		from := 100 + units.Mass(i)
		left := units.Mass(1000-100+10*i-i) / 10 // nine tenths of it
		if f := flag(energy.Cat, 1, from, left); f.Level == advice.Refer {
			t.Fatalf("a tenth of %v: %v", from, f)
		}
		if f := flag(energy.Cat, 1, from, left-0.1); f.Level != advice.Refer {
			t.Fatalf("a tenth of %v and 0.1 g: %v", from, f)
		}
	}
	if f := flag(energy.Dog, 10, 420, 434.7); f != (trend.Flag{}) { // 3.5 % are 14.7 g
		t.Error(f)
	}
}
