package transition_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// Which dog that refuses its food can't wait until later today is ours: a puppy of
// a breed under 4 kg, one under 2 kg, one under 8 weeks, for puppies under 6 months.
func TestDogsThatCannotWait(t *testing.T) {
	const kg = units.Kilogram
	growing := func(weight, adult units.Mass, age energy.Age) energy.Estimate {
		return estimate(energy.Growth{
			Animal:      energy.Animal{Species: energy.Dog, Weight: weight, Age: age, Condition: energy.BCS9(5)},
			AdultWeight: adult,
		})
	}
	grown := func(weight units.Mass, age energy.Age) energy.Estimate {
		return energy.Estimate{Animal: energy.Animal{Species: energy.Dog, Weight: weight, Age: age}, Daily: 300}
	}
	for _, tt := range []struct {
		need energy.Estimate
		want transition.Call
	}{
		{growing(2.5*kg, 3.9*kg, 14*energy.Week), transition.CallNow},
		{growing(2.5*kg, 4.1*kg, 14*energy.Week), transition.CallToday},
		{growing(2.5*kg, 4*kg, 14*energy.Week), transition.CallToday},
		{growing(2.5*kg, 0, 14*energy.Week), transition.CallToday}, // of no known breed
		{growing(2*kg, 8*kg, 14*energy.Week), transition.CallToday},
		{growing(3*kg, 30*kg, 56*energy.Day), transition.CallToday},
		{growing(1.9*kg, 8*kg, 14*energy.Week), transition.CallNow},
		{growing(2.1*kg, 8*kg, 14*energy.Week), transition.CallToday},
		{growing(3*kg, 30*kg, 55*energy.Day), transition.CallNow},
		{growing(3*kg, 30*kg, 57*energy.Day), transition.CallToday},
		{grown(1.9*kg, 179*energy.Day), transition.CallNow},
		{grown(1.9*kg, 180*energy.Day), transition.CallToday}, // a small dog, but grown
		{grown(0, energy.Day), transition.CallNow},            // nobody weighed it
		{grown(0, 14*energy.Week), transition.CallToday},
		{grown(0, 0), transition.CallToday},
	} {
		r, err := transition.Refusal.Respond(tt.need)
		if a := tt.need.Animal; err != nil || r.Call != tt.want {
			t.Errorf("%v, %v: call %v, want %v, %v", a.Weight, a.Age, r.Call, tt.want, err)
		}
	}
}
