package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand: 16^0.75 = 8; 145 × 8 = 1160; six puppies in week 4, 16 × (24 × 4 +
// 12 × 2) × 1.2 = 16 × 120 × 1.2 = 2304.
func ExampleLactation() {
	bitch := energy.Animal{Species: energy.Dog, Weight: 16 * units.Kilogram, Condition: energy.BCS9(5)}
	e, err := energy.Lactation{Animal: bitch, Young: 6, Week: 4}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal/day\n", e.Daily.Kilocalories())
	for _, c := range e.Cautions() {
		fmt.Printf("%v: %s\n", c.Level, c.Text)
	}
	// Output:
	// 3464 kcal/day
	// warn: feed free choice: the figure is a floor, what to offer at least, and no ration
	// warn: trembling, stiff, panting hard or in seizures while nursing: an emergency, possible low blood calcium
	// note: a starting estimate, not a need: weigh the animal and correct it
}

// National Academies, Your Cat's Nutritional Needs, 2006, p. 5: a nursing
// queen of 5, 10, 15, 20 lb, 336, 603, 851, 1091 kcal. It has 4 kittens at the
// peak; the equation gives 602 at 10 lb.
func ExampleLactation_booklet() {
	for _, lb := range []units.Mass{5, 10, 15, 20} {
		queen := energy.Animal{Species: energy.Cat, Weight: lb * units.Pound}
		e, err := energy.Lactation{Animal: queen, Young: 4, Week: 3}.Estimate()
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%v lb: %.0f kcal/day\n", float64(lb), e.Daily.Kilocalories())
	}
	// Output:
	// 5 lb: 336 kcal/day
	// 10 lb: 602 kcal/day
	// 15 lb: 851 kcal/day
	// 20 lb: 1091 kcal/day
}
