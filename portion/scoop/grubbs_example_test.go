package scoop_test

import (
	"fmt"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// The sixth fill was heaped. The mean is 90 g and the sum of squares 5 × 2² + 10² =
// 120, so that SD = √(120/5) = 4.899 g and G = 10 / 4.899 = 2.041; Grubbs' critical
// value for 6 at 95 % is 1.887 (Grubbs and Beck, Technometrics 1972;14:847-854, from
// memory).
func ExampleGrubbs() {
	c, err := scoop.Calibrate([]units.Mass{88, 88, 88, 88, 88, 100}, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	g, err := c.Outlier(95)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("G %.3f, critical %.3f, outlier %v\n", g.G, g.Critical, g.Outlier)
	// Output: G 2.041, critical 1.887, outlier true
}

// The farthest from the mean is told by its number, so that it can be found in the
// notes and weighed again.
func ExampleWeighing() {
	c, err := scoop.Calibrate([]units.Mass{88, 91, 86, 110}, units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("lightest", c.Lowest.Number, c.Lowest.Mass, "heaviest", c.Highest.Number, c.Highest.Mass)
	// Output: lightest 3 86 g heaviest 4 110 g
}
