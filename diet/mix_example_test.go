package diet_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// Milk powder made up for kittens, and what 239 mL of it take.
func ExampleMix() {
	powder := diet.Food{
		Name: "Finnimore Orphan Milk Powder", Form: diet.Powder,
		Label:    diet.Label{Energy: 5100 * units.KilocaloriePerKilogram},
		Analysis: diet.Analysis{Moisture: 4},
	}
	bottle := diet.Mix{
		Name:  "orphan milk",
		Parts: []diet.Part{{Food: powder, Amount: diet.Fixed(30 * units.Gram)}},
		Water: 125 * units.Millilitre,
		Made:  150 * units.Millilitre, // as the jug shows, not 30 + 125
	}
	milk, err := bottle.Food()
	if err != nil {
		fmt.Println(err)
		return
	}
	strength, err := milk.PerVolume()
	fmt.Println(milk.Label.Serving.Energy, milk.Label.Serving.Mass, strength, err)

	night, err := bottle.Making(239 * units.Millilitre)
	grams, _ := night.Parts[0].Amount.Fixed()
	fmt.Printf("%.0f g of powder, %.0f mL of water %v\n", grams.Grams(), night.Water.Millilitres(), err)
	// Output:
	// 153 kcal 155 g 1.02 kcal/mL <nil>
	// 48 g of powder, 199 mL of water <nil>
}

// A can thinned for a feeding tube: its energy in a millilitre, and the water
// that goes down the tube with it.
func ExampleMix_tube() {
	can := diet.Food{
		Name: "Tarnwick House Recovery", Form: diet.Wet,
		Label:    diet.Label{Serving: diet.Serving{Name: "can", Energy: 177 * units.Kilocalorie, Mass: 150 * units.Gram}},
		Analysis: diet.Analysis{Moisture: 78},
	}
	slurry, err := diet.Mix{
		Parts: []diet.Part{{Food: can, Amount: diet.Count(1, "can")}},
		Water: 32 * units.Millilitre,
		Made:  177 * units.Millilitre,
	}.Food()
	if err != nil {
		fmt.Println(err)
		return
	}
	strength, _ := slurry.PerVolume()
	batch, _ := slurry.Unit("batch")
	feed, _ := slurry.Unit("mL")
	water := batch.Mass.Grams() * slurry.Analysis.Moisture.Fraction()
	fmt.Printf("%s: %.2f kcal/mL, %.3f g/mL, %.0f g of water in %.0f g\n",
		slurry.Name, strength.KilocaloriesPerMillilitre(), feed.Mass.Grams(), water, batch.Mass.Grams())
	// Output: Tarnwick House Recovery + water: 1.00 kcal/mL, 1.028 g/mL, 149 g of water in 182 g
}
