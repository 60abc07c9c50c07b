package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// 30 × 20 + 70 = 670; a dog's spread is ±30 %, 469 to 871.
func ExampleEstimate() {
	dog := energy.Animal{Species: energy.Dog, Weight: 20 * units.Kilogram}
	e, err := energy.Resting{Animal: dog, Method: energy.RERLinear}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal/day, from %.0f to %.0f\n", e.Daily.Kilocalories(), e.Low.Kilocalories(), e.High.Kilocalories())
	// Output: 670 kcal/day, from 469 to 871
}

func ExampleEstimate_Cautions() {
	cat := energy.Animal{Species: energy.Cat, Weight: 4 * units.Kilogram, DaysUnfed: 1}
	e, err := energy.Adult{Animal: cat, Status: energy.Unknown}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range e.Cautions() {
		fmt.Printf("%-5v %v\n", c.Level, c.Text)
	}
	// Output:
	// refer a cat that has eaten nothing for a day needs a veterinarian now: never fast a cat or wait it out
	// warn  neuter status unknown: the lower figure was used
	// note  condition not scored: without it nobody can say whether this weight is right
	// note  a starting estimate, not a need: weigh the animal and correct it
}

func ExampleEstimate_Explain() {
	e, err := energy.Prescribed{Daily: 160 * units.Kilocalorie, By: "Dr A. Example"}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(e.Explain())
	// Output:
	// given     species not given, weight not given, condition not scored
	// formula   none: 160.0 kcal a day, set by Dr A. Example
	// result    160 kcal/day
	// next      weigh again in 7 days
	// caution   warn: nothing to hold the prescribed energy against: no species with a known need, or no weight [ours, not published]
	// caution   note: condition not scored: without it nobody can say whether this weight is right [ours, not published]
}
