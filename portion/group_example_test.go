package portion_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Two cats that will not be parted: 61 g and 70 g are one bowl of 131 g, and an
// order that says what it doesn't know.
func ExampleGroup_OneBowl() {
	var pen portion.Group
	for _, x := range []struct {
		name string
		kg   float64
	}{{"Nettle", 3.9}, {"Sorrel", 4.7}} {
		cat := energy.Animal{Species: energy.Cat, Weight: units.Mass(x.kg) * units.Kilogram, Condition: energy.BCS9(5)}
		weighed, err := fed(energy.Adult{Animal: cat, Status: energy.Neutered}, diet.Only(catDry))
		if err != nil {
			fmt.Println(err)
			return
		}
		pen = append(pen, portion.Plan{Animal: x.name, Weighed: weighed})
	}
	bowl, err := pen.OneBowl(2)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range bowl.Meals {
		fmt.Println(m.Number, m.Mass, m.Food)
	}
	fmt.Println(bowl.Foods[0].Mass, "for", len(bowl.Animals), "cats")
	for _, c := range bowl.Cautions() {
		fmt.Println(c.Level, "- what each eats is not known")
	}
	// Output:
	// 1 66 g Tarnwick House Cat Dry
	// 2 65 g Tarnwick House Cat Dry
	// 131 g for 2 cats
	// warn - what each eats is not known
}

// Wherever the animals can be kept apart for the meal, each has its bowl.
func ExampleGroup_Bowls() {
	pair := portion.Group{}
	for _, x := range []struct {
		name string
		kcal units.Energy
	}{{"Bolster", 1181.1}, {"Pippet", 534.3}} {
		weighed, err := fed(energy.Prescribed{Daily: x.kcal, By: "Dr Ysolde Crake"}, diet.Only(kibble))
		if err != nil {
			fmt.Println(err)
			return
		}
		pair = append(pair, portion.Plan{Animal: x.name, Weighed: weighed})
	}
	bowls, err := pair.Bowls(2)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, b := range bowls {
		fmt.Println(b.Number, b.Animal, b.Mass)
	}
	// Output:
	// 1 Bolster 166 g
	// 1 Pippet 75 g
	// 2 Bolster 166 g
	// 2 Pippet 75 g
}
