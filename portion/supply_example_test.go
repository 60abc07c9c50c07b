package portion_test

import (
	"fmt"
	"time"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Food for two cats for four weeks: 61 + 70 = 131 g a day, with 5 % of waste 3.85 kg.
func ExampleSupply() {
	food := catDry
	food.Label.Packs[0] = diet.Pack{Net: 2 * units.Kilogram}
	supply := portion.Supply{Days: 28, Waste: 5, Store: []portion.Stock{{Food: food, Mass: 1500 * units.Gram}}}
	for _, cat := range []struct {
		name string
		kg   float64
	}{{"Nettle", 3.9}, {"Sorrel", 4.7}} {
		animal := energy.Animal{Species: energy.Cat, Weight: units.Mass(cat.kg) * units.Kilogram, Condition: energy.BCS9(5)}
		weighed, err := fed(energy.Adult{Animal: animal, Status: energy.Neutered}, diet.Only(food))
		if err != nil {
			fmt.Println(err)
			return
		}
		supply.Plans = append(supply.Plans, portion.Plan{Animal: cat.name, Weighed: weighed})
	}
	lines, err := supply.Lines()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range lines {
		day, _ := l.RunsOut(time.Date(2026, time.November, 2, 0, 0, 0, 0, time.UTC))
		fmt.Printf("%s: need %.2f kg, order %d × %v; the store runs out on %s\n",
			l.Food.Name, l.Need.Kilograms(), l.Packs, l.Pack.Net, day.Format(time.DateOnly))
	}
	// Output: Tarnwick House Cat Dry: need 3.85 kg, order 2 × 2 kg; the store runs out on 2026-11-12
}

// The label of a food has changed: whose grams are to be worked out again?
func ExampleUsing() {
	var plans []portion.Plan
	for _, x := range []struct {
		name string
		food diet.Food
	}{{"Bolster", kibble}, {"Larkin", catDry}, {"Gantry", kibble}} {
		weighed, err := fed(energy.Prescribed{Daily: 500, By: "Dr Ysolde Crake"}, diet.Only(x.food))
		if err != nil {
			fmt.Println(err)
			return
		}
		plans = append(plans, portion.Plan{Animal: x.name, Weighed: weighed})
	}
	for _, p := range portion.Using(plans, kibble.Name) {
		fmt.Println(p.Animal)
	}
	// Output:
	// Bolster
	// Gantry
}
