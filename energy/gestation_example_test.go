package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand: 16^0.75 = 8; 130 × 8 = 1040; from week 5 on 26 × 16 = 416 more.
func ExampleGestation() {
	bitch := energy.Animal{Species: energy.Dog, Weight: 18.5 * units.Kilogram}
	for _, week := range []int{4, 5} {
		e, err := energy.Gestation{Animal: bitch, Week: week, WeightBeforeMating: 16 * units.Kilogram}.Estimate()
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("week %d: %v on the %v of %v\n", week, e.Daily, e.Basis, e.Weight)
	}
	// Output:
	// week 4: 1040 kcal on the before_mating of 16 kg
	// week 5: 1456 kcal on the before_mating of 16 kg
}
