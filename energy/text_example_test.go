package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
)

func ExampleSpecies() {
	s, err := energy.ParseSpecies("Ferret")
	fmt.Println(s, s == energy.Ferret, err)
	// Output: ferret true <nil>
}

func ExampleStatus() {
	s, err := energy.ParseStatus("neutered")
	fmt.Println(s, s == energy.Neutered, err)
	// Output: neutered true <nil>
}

func ExampleMethod() {
	m, err := energy.ParseMethod("nrc_2006")
	fmt.Println(m, m == energy.NRC2006, err)
	// Output: nrc_2006 true <nil>
}

func ExampleBasis() {
	fmt.Println(energy.Current, energy.Ideal)
	// Output: current ideal
}

// The five scores of the short scale are 1, 3, 5, 7 and 9 of nine.
func ExampleCondition() {
	c, err := energy.ParseCondition("4/5")
	nine, ok := c.Nine()
	fmt.Println(c, c == energy.BCS5(4), err)
	fmt.Println(nine, ok)
	// Output:
	// 4/5 true <nil>
	// 7 true
}

func ExampleAge() {
	a, err := energy.ParseAge("84 days")
	fmt.Println(a, a == 12*energy.Week, err)
	// Output: 12 wk true <nil>
}

func ExampleCircumstances() {
	c := energy.Ill | energy.Growing
	fmt.Println(c, c.Has(energy.Ill), c.Has(energy.Diabetic))
	// Output: growing ill true false
}
