package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A fat animal is fed on its recorded ideal weight.
// By hand: 4.5^0.75 = 3.0897; × 70 × 1.2 = 259.5.
func ExampleAnimal() {
	cat := energy.Animal{
		Species:   energy.Cat,
		Weight:    6 * units.Kilogram,
		Age:       4 * energy.Year,
		Condition: energy.BCS9(7),
		Ideal:     4.5 * units.Kilogram,
	}
	e, err := energy.Adult{Animal: cat, Status: energy.Neutered}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal/day on the %v weight, %v\n", e.Daily.Kilocalories(), e.Basis, e.Weight)
	// Output: 260 kcal/day on the ideal weight, 4.5 kg
}
