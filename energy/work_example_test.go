package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand: 16^0.75 = 8, × 70 = 560, × 1.8 = 1008; 1 × 16 × 20 = 320; together
// 1328. Low 0.7 × 1008 + 0.7 × 320 = 929.6, high 1.3 × 1008 + 1.1 × 320 = 1662.4.
func ExampleWork() {
	dog := energy.Animal{Species: energy.Dog, Weight: 16 * units.Kilogram, Condition: energy.BCS9(5)}
	e, err := energy.Work{Animal: dog, Status: energy.Intact, Distance: 20 * units.Kilometre}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal/day by %v, from %.0f to %.0f\n",
		e.Daily.Kilocalories(), e.Method, e.Low.Kilocalories(), e.High.Kilocalories())
	// Output: 1328 kcal/day by per_distance, from 930 to 1662
}

// Gajanayake and others 2011: heavy exercise, 4 to 8 times the resting energy.
// 560 × 6 = 3360, × 4 = 2240, × 8 = 4480.
func ExampleWork_heavyExercise() {
	dog := energy.Animal{Species: energy.Dog, Weight: 16 * units.Kilogram, Condition: energy.BCS9(5)}
	e, err := energy.Work{Animal: dog, Exercise: energy.HeavyExercise}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(e.Daily, "from", e.Low, "to", e.High)
	// Output: 3360 kcal from 2240 kcal to 4480 kcal
}

func ExampleExercise() {
	x, err := energy.ParseExercise("moderate")
	fmt.Println(x == energy.ModerateExercise, x, err)
	_, err = energy.ParseExercise("hard")
	fmt.Println(err)
	// Output:
	// true moderate <nil>
	// energy: exercise "hard": want light, moderate or heavy
}
