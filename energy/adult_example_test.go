package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand: 24.9³ = 15438.249, its square root 124.2507, of that again 11.14678;
// × 70 × 1.6 = 1248.4.
func ExampleAdult() {
	dog := energy.Animal{
		Species:   energy.Dog,
		Weight:    24.9 * units.Kilogram,
		Condition: energy.BCS9(5),
	}
	e, err := energy.Adult{Animal: dog, Status: energy.Neutered}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal/day, weigh again in %v\n", e.Daily.Kilocalories(), e.Reweigh)
	// Output: 1248 kcal/day, weigh again in 4 wk
}

// FEDIAF Table VII-12: a dog of 15 kg, 838 kcal at 110 and 724 kcal at 95
// kcal/kg^0.75; a cat of 4 kg, 253 kcal at 100 kcal/kg^0.67.
func ExampleAdult_fediaf() {
	dog := energy.Animal{Species: energy.Dog, Weight: 15 * units.Kilogram}
	cat := energy.Animal{Species: energy.Cat, Weight: 4 * units.Kilogram}
	for _, s := range []energy.Adult{
		{Animal: dog, Status: energy.Intact},
		{Animal: dog, Status: energy.Inactive},
		{Animal: cat, Status: energy.Intact},
	} {
		s.Method = energy.FEDIAF
		e, err := s.Estimate()
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%v %v: %.0f kcal/day\n", s.Status, s.Animal.Species, e.Daily.Kilocalories())
	}
	// Output:
	// intact dog: 838 kcal/day
	// inactive dog: 724 kcal/day
	// intact cat: 253 kcal/day
}

// SACN 5th ed., Table 70-1 after McLain 1988: 200 to 300 kcal/kg.
func ExampleAdult_ferret() {
	e, err := energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v, from %v to %v\n", e.Daily, e.Low, e.High)
	// Output: 300 kcal, from 240 kcal to 360 kcal
}
