package energy_test

import (
	"errors"
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand, on 16.2 kg: 16.2³ = 4251.5; the square root 65.204, again 8.0749;
// × 70 = 565.2 kcal, of which 25 % are 141.3, 50 % 282.6 and 75 % 423.9.
func ExampleRefeeding() {
	dog := energy.Animal{Species: energy.Dog, Weight: 16.2 * units.Kilogram, Condition: energy.BCS9(1)}
	ladder, err := energy.NewLadder(25, 25, 50, 75, 100) // Dr Example's
	if err != nil {
		fmt.Println(err)
		return
	}
	for day := 1; day <= ladder.Len(); day++ {
		e, err := energy.Refeeding{Animal: dog, Ladder: ladder, Day: day, By: "Dr A. Example"}.Estimate()
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("day %d: %.1f kcal\n", day, e.Daily.Kilocalories())
	}
	// Output:
	// day 1: 141.3 kcal
	// day 2: 141.3 kcal
	// day 3: 282.6 kcal
	// day 4: 423.9 kcal
	// day 5: 565.2 kcal
}

// A starved animal is fed by the veterinarian's own ladder only.
func ExampleRefeeding_starved() {
	dog := energy.Animal{Species: energy.Dog, Weight: 16.2 * units.Kilogram, Condition: energy.BCS9(1)}
	_, err := energy.Refeeding{Animal: dog, Ladder: energy.FourDayLadder(), Day: 1, By: "Dr A. Example"}.Estimate()
	fmt.Println(errors.Is(err, energy.ErrVeterinarian))
	var refusal *energy.VeterinarianError
	if errors.As(err, &refusal) {
		fmt.Println(refusal.Need)
	}
	// Output:
	// true
	// the veterinarian's own ladder, as in "25/25/50/75/100 %", with the name: Refeeding{Ladder, By}
}
