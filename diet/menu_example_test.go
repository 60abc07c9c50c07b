package diet_test

import (
	"encoding/json"
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// Half of the energy wet, dry food for the rest, and biscuits outside meals.
func ExampleMenu_several() {
	menu := diet.Menu{
		{Food: diet.Food{Name: "Tarnwick House Cat Wet"}, Amount: diet.Share(50)},
		{Food: diet.Food{Name: "Tarnwick House Cat Dry"}, Amount: diet.Rest()},
		{Food: diet.Food{Name: "cooked chicken"}, Amount: diet.Fixed(5 * units.Gram), Treat: true},
	}
	fmt.Println(menu.Validate())
	menu[1].Amount = diet.Share(30)
	fmt.Println(menu.Validate())
	// Output:
	// <nil>
	// diet: menu "50 % + 30 % = 80 % and no rest": want a rest, or shares of 100 %
}

func ExampleParseAmount() {
	for _, text := range []string{"50 %", "45 g", "1.5 oz", "2 biscuit", "rest", "60 kcal"} {
		amount, err := diet.ParseAmount(text)
		fmt.Printf("%q %v\n", amount, err)
	}
	// Output:
	// "50 %" <nil>
	// "45 g" <nil>
	// "42.5242846875 g" <nil>
	// "2 biscuit" <nil>
	// "rest" <nil>
	// "" diet: amount "60 kcal": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest
}

// What one can holds, from a label in cups that says what a can weighs.
func ExampleFood_Unit() {
	stew := diet.Food{
		Name: "Tarnwick House Cat Wet", Form: diet.Wet,
		Label: diet.Label{
			Energy:  1090 * units.KilocaloriePerKilogram,
			Serving: diet.Serving{Name: "cup", Mass: 230 * units.Gram},
			Others:  diet.Servings{{Name: "can", Mass: 156 * units.Gram}},
		},
	}
	can, err := stew.Unit("can")
	fmt.Println(can.Mass, can.Energy, err)
	_, err = stew.Unit("tray")
	fmt.Println(err)
	// Output:
	// 156 g 170.04 kcal <nil>
	// diet: unit "tray": want a unit on the label of "Tarnwick House Cat Wet": cup or can
}

// A tray of 24 cans, and what a day of 121 g costs: 121 / 3744 × 31.20.
func ExamplePack() {
	price, err := diet.ParsePrice("31.20 EUR")
	if err != nil {
		fmt.Println(err)
		return
	}
	tray := diet.Pack{Net: 24 * 156 * units.Gram, Price: price}
	day, ok := tray.Cost(121 * units.Gram)
	fmt.Printf("%.2f %s %v\n", day.Amount(), day.Currency(), ok)
	// Output: 1.01 EUR true
}

func ExampleServings() {
	text, err := json.Marshal(diet.Label{
		Energy:  1090 * units.KilocaloriePerKilogram,
		Serving: diet.Serving{Name: "cup", Mass: 230 * units.Gram},
		Others:  diet.Servings{{Name: "can", Mass: 156 * units.Gram}},
	})
	fmt.Println(string(text), err)
	// Output: {"energy":"1090 kcal/kg","serving":{"name":"cup","mass":"230 g"},"others":[{"name":"can","mass":"156 g"}]} <nil>
}
