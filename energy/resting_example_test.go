package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// SACN 5th ed., Box 1-2, p. 12: a 4.5 kg cat, 216 kcal.
func ExampleResting() {
	cat := energy.Animal{Species: energy.Cat, Weight: 4.5 * units.Kilogram}
	e, err := energy.Resting{Animal: cat}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal/day\n", e.Daily.Kilocalories())
	// Output: 216 kcal/day
}

// Sonsthagen, Tasks for the Veterinary Assistant, 4th ed. 2020, p. 116: a cat
// of 11 kg, 30 × 11 + 70 = 400 kcal.
func ExampleResting_linear() {
	cat := energy.Animal{Species: energy.Cat, Weight: 11 * units.Kilogram}
	e, err := energy.Resting{Animal: cat, Method: energy.RERLinear}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(e.Daily, e.Method)
	// Output: 400 kcal rer_linear
}
