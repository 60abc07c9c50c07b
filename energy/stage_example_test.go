package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func ExampleStage() {
	cat := energy.Animal{Species: energy.Cat, Weight: 4.5 * units.Kilogram}
	for _, s := range []energy.Stage{
		energy.Resting{Animal: cat},
		energy.Adult{Animal: cat, Status: energy.Intact},
		energy.Prescribed{Animal: cat, Daily: 240 * units.Kilocalorie, By: "Dr A. Example"},
	} {
		e, err := s.Estimate()
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%.0f kcal/day by %v\n", e.Daily.Kilocalories(), e.Method)
	}
	// SACN 5th ed., Box 1-2, p. 12: 216. The box rounds that before it takes
	// 1.4 times it, 302; unrounded, 1.4 × 216.28 is 302.8.

	// Output:
	// 216 kcal/day by rer_power
	// 303 kcal/day by factor_on_rer
	// 240 kcal/day by prescription
}
