package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
)

func ExampleLadder() {
	l, err := energy.ParseLadder("four_day")
	fmt.Println(l, l == energy.FourDayLadder(), err)
	fmt.Println(l.Len(), l.Steps())
	// Output:
	// four_day true <nil>
	// 4 [25 % 50 % 75 % 100 %]
}

// A veterinarian's own ladder is never one of the named, even with its steps.
func ExampleNewLadder() {
	l, err := energy.NewLadder(25, 50, 75, 100)
	fmt.Println(l, l == energy.FourDayLadder(), err)
	// Output: 25/50/75/100 % false <nil>
}

func ExampleNewLadder_fractions() {
	_, err := energy.NewLadder(0.25, 0.5, 1)
	fmt.Println(err)
	// Output:
	// energy: ladder "0.25/0.5/1 %": want 1 to 14 steps in percent of resting energy, each above 1 % and at most 100 % and none below the one before, as in "25/50/75/100 %" (step 1 is 0.25 %: a fraction? that is 25 %, step 2 is 0.5 %: a fraction? that is 50 %, step 3 is 1 %: a fraction? that is 100 %)
}

func ExampleParseLadder() {
	l, err := energy.ParseLadder("25 / 25 / 50 / 75 / 100%")
	fmt.Println(l, err)
	// Output: 25/25/50/75/100 % <nil>
}
