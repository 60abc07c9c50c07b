package transition_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// The foods are invented.
var (
	houseDry = asFed("Tarnwick House Dog Dry", 3560)
	slimDry  = asFed("Ostlehouse Slim Dog Dry", 2980)
	catDry   = asFed("Tarnwick House Cat Dry", 3850)
	catWet   = diet.Food{Name: "Tarnwick House Cat Wet", Form: diet.Wet, Label: diet.Label{
		Energy:  1090 * units.KilocaloriePerKilogram,
		Serving: diet.Serving{Name: "can", Energy: 170 * units.Kilocalorie, Mass: 156 * units.Gram},
	}}
	kittenDry = asFed("Tarnwick Kitten Dry", 4150)
	biscuit   = diet.Food{Name: "house biscuit", Label: diet.Label{Serving: diet.Serving{Name: "biscuit", Energy: 28 * units.Kilocalorie, Mass: 8 * units.Gram}}}
	noLabel   = diet.Food{Name: "loose kibble"}
)

func asFed(name string, perKilogram float64) diet.Food {
	return diet.Food{Name: name, Label: diet.Label{Energy: units.EnergyDensity(perKilogram) * units.KilocaloriePerKilogram}}
}

// oakum is the invented dog of the demo, on what it eats now: 300 g of F01.
func oakum() energy.Estimate {
	return estimate(energy.Observed{
		Animal: energy.Animal{Species: energy.Dog, Weight: 18 * units.Kilogram, Condition: energy.BCS9(5)},
		Intake: 1068 * units.Kilocalorie,
	})
}

func estimate(s energy.Stage) energy.Estimate {
	e, err := s.Estimate()
	if err != nil {
		panic(err)
	}
	return e
}

// neuteredCat is a cat on 1.2 times its resting energy.
func neuteredCat(weight units.Mass) energy.Estimate {
	return estimate(energy.Adult{
		Animal: energy.Animal{Species: energy.Cat, Weight: weight, Condition: energy.BCS9(5)}, Status: energy.Neutered,
	})
}

// toSlim is the change of the demo.
func toSlim() transition.Plan {
	return transition.Plan{
		From: diet.Only(houseDry), To: diet.Only(slimDry),
		Steps: transition.FourStages, Meals: 2, Scale: units.Gram,
	}
}

func mustDays(t testing.TB, p transition.Plan, need energy.Estimate) []transition.Day {
	t.Helper()
	days, err := p.Days(need)
	if err != nil {
		t.Fatal(err)
	}
	return days
}
