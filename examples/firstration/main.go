// Firstration is the smallest use of the library: one dog, one food, three
// meals. It is the code of the README.
package main

import (
	"fmt"
	"log"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

func main() {
	dog := energy.Animal{Species: energy.Dog, Weight: 24.9 * units.Kilogram, Condition: energy.BCS9(5)}
	need, err := energy.Adult{Animal: dog, Status: energy.Neutered}.Estimate()
	check(err)
	kibble := diet.Food{
		Name: "Tarnwick House Dog Dry", Role: diet.Complete,
		For: diet.Purpose{Species: diet.Dogs, Stages: diet.Maintenance},
		Label: diet.Label{
			Energy:  3560 * units.KilocaloriePerKilogram, // as fed
			Serving: diet.Serving{Name: "cup", Energy: 356 * units.Kilocalorie, Mass: 100 * units.Gram},
		},
	}
	ration, err := portion.Weigh(need, diet.Only(kibble))
	check(err)
	weighed, err := ration.On(units.Gram) // a scale that shows whole grams
	check(err)
	text, err := weighed.Explain(3) // three meals
	check(err)
	fmt.Print(text) // what needs a veterinarian comes first
}

func check(err error) {
	if err != nil {
		log.Fatal(err)
	}
}
