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
	fat := dog
	fat.Circumstances = energy.TherapeuticDiet
	thin := energy.Animal{Species: energy.Cat, Weight: 3.5 * kg, Condition: energy.BCS9(4), Ideal: 4 * kg}
	return []energy.Stage{
		energy.Resting{Animal: dog, Method: energy.RERLinear},
		energy.Adult{Animal: dog, Status: energy.Neutered, Method: energy.NRC2006},
		energy.Prescribed{Animal: dog, Daily: 1100 * units.Kilocalorie, By: "Dr A. Example"},
		energy.Growth{
			Animal:      energy.Animal{Species: energy.Dog, Weight: 6.4 * kg, Age: 12 * energy.Week, Condition: energy.BCS9(5)},
			AdultWeight: 22 * kg, Method: energy.Klein2019,
		},
		energy.Gestation{Animal: animal(energy.Dog, 18*kg), Week: 6, WeightBeforeMating: 16 * kg, Method: energy.FactorOnRER},
		energy.Lactation{Animal: animal(energy.Cat, 4*kg), Young: 4, Week: 3},
		energy.Nursling{
			Animal:    energy.Animal{Species: energy.Cat, Weight: 212 * units.Gram, Age: 2 * energy.Week},
			DayBefore: 201 * units.Gram, Method: energy.NRC2006,
		},
		energy.Work{Animal: dog, Status: energy.Neutered, Distance: 12 * units.Kilometre, Minutes: 90, Method: energy.TwoTerm},
		energy.WeightLoss{Animal: fat, Status: energy.Intact, Rate: 0.5, Method: energy.Deficit},
		energy.WeightGain{Animal: thin, Intake: 190, Share: 115, Method: energy.ShareOfIntake},
		energy.Refeeding{Animal: dog, Ladder: energy.FourDayLadder(), Day: 2, By: "Dr A. Example"},
		energy.Observed{Animal: thin, Intake: 210, Over: 3 * energy.Week, Before: 3.5 * kg},
	}
}
