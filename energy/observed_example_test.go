package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A rabbit has no equation here; what has kept its weight is its requirement.
func ExampleObserved() {
	rabbit := energy.Animal{Species: energy.Other, Weight: 2.4 * units.Kilogram, Condition: energy.BCS5(3)}
	e, err := energy.Observed{
		Animal: rabbit,
		Intake: 195 * units.Kilocalorie,
		Over:   3 * energy.Week,
		Before: 2.38 * units.Kilogram,
	}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(e.Daily, e.Low == e.High, e.Reweigh)
	for _, c := range e.Cautions() {
		fmt.Println(c.Level, c.Text)
	}
	// Output:
	// 195 kcal true 2 wk
	// warn nothing to hold the measured intake against: no need is known for the species
	// note count what was eaten, not what was offered: left-overs weighed back, treats and table food in
}
