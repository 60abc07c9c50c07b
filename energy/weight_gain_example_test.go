package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand: 16^0.75 = 8; 1.5 × 70 × 8 = 840, × 1.2 = 672, × 1.8 = 1008. The factors
// are from memory.
func ExampleWeightGain() {
	dog := energy.Animal{
		Species: energy.Dog, Weight: 14 * units.Kilogram, Ideal: 16 * units.Kilogram, Condition: energy.BCS9(4),
	}
	e, err := energy.WeightGain{Animal: dog}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v a day, from %v to %v\n", e.Daily, e.Low, e.High)
	// Output: 840 kcal a day, from 672 kcal to 1008 kcal
}

// 110 % of 200 kcal, a first step for a thin cat whose ideal weight nobody knows.
func ExampleWeightGain_intake() {
	cat := energy.Animal{Species: energy.Cat, Weight: 3 * units.Kilogram, Condition: energy.BCS9(3)}
	e, err := energy.WeightGain{Animal: cat, Intake: 200 * units.Kilocalorie}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal a day\n", e.Daily.Kilocalories())
	// Output: 220 kcal a day
}
