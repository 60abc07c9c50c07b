package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

const kg = units.Kilogram

// animal returns one of which only the species and the weight are known.
func animal(s energy.Species, weight units.Mass) energy.Animal {
	return energy.Animal{Species: s, Weight: weight}
}

// estimate returns what the stage estimates, which must not fail.
func estimate(t testing.TB, s energy.Stage) energy.Estimate {
	t.Helper()
	e, err := s.Estimate()
	if err != nil {
		t.Fatalf("%+v: %v", s, err)
	}
	return e
}

// stages are one of each, with every field of the animal in use.
func stages() []energy.Stage {
	dog := energy.Animal{
		Species: energy.Dog, Weight: 24.9 * kg, Age: 4 * energy.Year, Condition: energy.BCS9(6),
		Ideal: 23 * kg, DaysUnfed: 1, Circumstances: energy.Diabetic,
	}
	return []energy.Stage{
		energy.Resting{Animal: dog, Method: energy.RERLinear},
		energy.Adult{Animal: dog, Status: energy.Neutered, Method: energy.NRC2006},
		energy.Prescribed{Animal: dog, Daily: 1100 * units.Kilocalorie, By: "Dr A. Example"},
	}
}
