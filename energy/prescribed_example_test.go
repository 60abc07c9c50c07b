package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A prescribed figure passes the gates, for any species.
func ExamplePrescribed() {
	rabbit := energy.Animal{
		Species:   energy.Other,
		Weight:    2 * units.Kilogram,
		DaysUnfed: 6,
	}
	e, err := energy.Prescribed{Animal: rabbit, Daily: 160 * units.Kilocalorie, By: "Dr A. Example"}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(e.Daily, e.Method)
	fmt.Println(e.Cautions()[0].Level)
	// Output:
	// 160 kcal prescription
	// refer
}

// 2770 kJ is 662 kcal, the resting energy of a dog of 20 kg: 70 × 9.4574.
func ExamplePrescribed_slip() {
	dog := energy.Animal{Species: energy.Dog, Weight: 20 * units.Kilogram, Condition: energy.BCS9(5)}
	e, err := energy.Prescribed{Animal: dog, Daily: 2770 * units.Kilocalorie, By: "Dr A. Example"}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range e.Cautions() {
		fmt.Println(c.Level, c.Text)
	}
	// Output:
	// warn check the prescribed 2770 kcal, above 0.5 to 3 times its resting energy (331 kcal to 1987 kcal): kilojoules? that is 662 kcal
}
