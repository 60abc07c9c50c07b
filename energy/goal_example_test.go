package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A dog of 39 kg at 8/9 is 30 % over: 39 / 1.3 = 30 kg, 9 kg to lose. 0.5 to 2 % of
// 39 kg are 195 to 780 g a week: 11.5 to 46.2 weeks.
func ExampleGoal() {
	dog := energy.Animal{Species: energy.Dog, Weight: 39 * units.Kilogram, Condition: energy.BCS9(8)}
	goal, err := energy.WeightLoss{Animal: dog}.Goal()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kg, %.1f kg to lose, %.0f to %.0f g a week\n",
		goal.Target.Weight.Kilograms(), goal.Lose.Kilograms(), goal.Weekly.Low.Grams(), goal.Weekly.High.Grams())
	// Output: 30.0 kg, 9.0 kg to lose, 195 to 780 g a week
}

// 9 kg at 780 g a week and at 195 g a week.
func ExampleSpan() {
	dog := energy.Animal{Species: energy.Dog, Weight: 39 * units.Kilogram, Condition: energy.BCS9(8)}
	goal, err := energy.WeightLoss{Animal: dog}.Goal()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f to %.1f weeks\n", goal.Weeks.Soonest, goal.Weeks.Latest)
	// Output: 11.5 to 46.2 weeks
}

// A kitten gains 10 to 13 g a day; one that gains under 7 g goes to a veterinarian.
func ExampleGain() {
	kitten := energy.Animal{Species: energy.Cat, Weight: 212 * units.Gram, Age: 10 * energy.Day}
	gain, err := energy.Nursling{Animal: kitten}.DailyGain()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(gain.Low, "to", gain.High, "a day, alarm under", gain.Alarm)
	// Output: 10 g to 13 g a day, alarm under 7 g
}
