package diet_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// A dry and a wet food side by side: the wet one has a third of the energy and
// of the protein by weight, and more protein for the same energy.
func ExampleCompare() {
	price := func(s string) diet.Price {
		p, err := diet.ParsePrice(s)
		if err != nil {
			fmt.Println(err)
		}
		return p
	}
	rows, err := diet.Compare(
		diet.Food{
			Name: "Tarnwick House Cat Dry",
			Label: diet.Label{
				Energy:  3850 * units.KilocaloriePerKilogram,
				Serving: diet.Serving{Name: "cup", Mass: 105 * units.Gram},
				Packs:   diet.Packs{{Net: 1.5 * units.Kilogram, Price: price("13.50 EUR")}},
			},
			Analysis: diet.Analysis{Kind: diet.Typical, Protein: 34},
		},
		diet.Food{
			Name: "Tarnwick House Cat Wet",
			Label: diet.Label{
				Energy:  1090 * units.KilocaloriePerKilogram,
				Serving: diet.Serving{Name: "can", Mass: 156 * units.Gram},
				Packs:   diet.Packs{{Net: 24 * 156 * units.Gram, Price: price("31.20 EUR")}},
			},
			Analysis: diet.Analysis{Kind: diet.Typical, Protein: 11},
		},
	)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range rows {
		fmt.Printf("%s: %v, %.0f kcal/%s, protein %.0f g/1000 kcal, %.2f %s/1000 kcal\n",
			r.Food, r.Energy, r.Serving.Energy.Kilocalories(), r.Serving.Name, float64(r.Protein), r.Cost.Amount(), r.Cost.Currency())
	}
	// Output:
	// Tarnwick House Cat Dry: 3850 kcal/kg, 404 kcal/cup, protein 88 g/1000 kcal, 2.34 EUR/1000 kcal
	// Tarnwick House Cat Wet: 1090 kcal/kg, 170 kcal/can, protein 101 g/1000 kcal, 7.65 EUR/1000 kcal
}
