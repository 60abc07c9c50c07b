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
	kibble := diet.Food{Name: "Tarnwick House Dog Dry", Label: diet.Label{
		Energy:  3560 * units.KilocaloriePerKilogram, // as fed
		Serving: diet.Serving{Name: "cup", Energy: 356 * units.Kilocalorie, Mass: 100 * units.Gram},
	}}
	ration, err := portion.Weigh(need, diet.Only(kibble))
	check(err)
	meals, err := ration.Meals(3, units.Gram) // on a scale that shows whole grams
	check(err)
	for _, m := range meals {
		fmt.Println("meal", m.Number, m.Mass, m.Food)
	}
	fmt.Print(need.Explain())
}

func check(err error) {
	if err != nil {
		log.Fatal(err)
	}
}
