package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand: 8/9 is 3 points above 5/9, 30 % over the ideal weight: 38.5 / 1.30 =
// 29.615; at 15 % a point 38.5 / 1.45 = 26.552; at 35 % body fat 38.5 × 65 / 80 =
// 31.281.
func ExampleIdealWeight() {
	harbottle := energy.Animal{
		Species:   energy.Dog,
		Weight:    38.5 * units.Kilogram,
		Condition: energy.BCS9(8),
	}
	t, err := energy.IdealWeight(harbottle, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kg, between %.1f and %.1f kg, by %v\n",
		t.Weight.Kilograms(), t.Low.Kilograms(), t.High.Kilograms(), t.Method)
	// Output: 29.6 kg, between 26.6 and 31.3 kg, by per_point
}

// A cat of 6.5 kg at 8/9 has an ideal weight of 5.00 kg: 6.5 / 1.30.
func ExampleIdealWeight_cat() {
	cat := energy.Animal{Species: energy.Cat, Weight: 6.5 * units.Kilogram, Condition: energy.BCS9(8)}
	t, err := energy.IdealWeight(cat, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kg\n", t.Weight.Kilograms())
	// Output: 5.00 kg
}

// Tudor 2013 after Witzel: 100 lb with 40 % body fat hold 60 lb of lean mass,
// which is 80 % of 75 lb. 9/9 is the end of the scale: a first target.
func ExampleIdealWeight_bodyFat() {
	dog := energy.Animal{Species: energy.Dog, Weight: 100 * units.Pound, Condition: energy.BCS9(9)}
	t, err := energy.IdealWeight(dog, energy.BodyFat)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f lb, a first target: %v\n", t.Weight.Pounds(), t.First)
	// Output: 75 lb, a first target: true
}
