package units_test

import (
	"fmt"

	"example.org/bowlgram/units"
)

// A function of one's own for any quantity, like the halves of a day's food, its
// energy or the water beside it.
func ExampleQuantity() {
	fmt.Println(half(351*units.Gram), half(1250*units.Kilocalorie), half(1.5*units.Litre))
	// Output: 175.5 g 625 kcal 750 mL
}

func half[Q units.Quantity](q Q) Q { return q / 2 }
