package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// A kitten that gains 7 g gains enough (the alarm is under 7 g, see
// nursling_test.go), whatever the last bits of the two weights are: 128.2 less
// 121.2 is less than 7 in binary. Up to the second day a loss of a tenth is none.
func TestGainOnTheBoundOfTheAlarm(t *testing.T) {
	for _, test := range []struct {
		before, now units.Mass
		age         energy.Age
		alarm       bool
	}{
		{121.2, 128.2, 10, false},
		{121.2, 128.1, 10, true},
		{121, 128, 10, false},
		{121, 127.9, 10, true},
		{110, 99, 2, false},
		{110, 98.9, 2, true},
	} {
		n := energy.Nursling{Animal: energy.Animal{Species: energy.Cat, Weight: test.now, Age: test.age}, DayBefore: test.before}
		e, err := n.Estimate()
		if err != nil {
			t.Fatal(err)
		}
		got := false
		for _, c := range e.Cautions() {
			got = got || c.Level == advice.Refer
		}
		if got != test.alarm {
			t.Errorf("%v to %v at %v: alarm %v, want %v: %v", test.before, test.now, test.age, got, test.alarm, e.Cautions())
		}
	}
}
