package portion_test

import (
	"errors"
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// A day's milk for a kitten of 284 g: 22.5 kcal/100 g is 63.9 kcal, over 1.02
// kcal/mL 62.65 mL, 62.5 mL in marks of half a millilitre. Its stomach takes 11.36
// mL, so that six feeds are enough and five aren't.
func ExampleBottle() {
	kitten := energy.Animal{Species: energy.Cat, Weight: 284 * units.Gram, Age: 14 * energy.Day}
	need, err := energy.Nursling{Animal: kitten}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	powder := diet.Food{Name: "Finnimore Orphan Milk Powder", Label: diet.Label{Energy: 5100 * units.KilocaloriePerKilogram}}
	mix := diet.Mix{Name: "milk", Parts: []diet.Part{{Food: powder, Amount: diet.Fixed(30 * units.Gram)}}, Water: 125 * units.Millilitre, Made: 150 * units.Millilitre}
	food, err := mix.Food()
	if err != nil {
		fmt.Println(err)
		return
	}
	milk, err := portion.LiquidFood(food)
	if err != nil {
		fmt.Println(err)
		return
	}
	bottle := portion.Bottle{Need: need, Liquid: milk, Feeds: 5, Mark: 0.5 * units.Millilitre}
	if _, err := bottle.Plan(); err != nil {
		fmt.Println(err)
	}
	if bottle.Feeds, err = bottle.LeastFeeds(); err != nil {
		fmt.Println(err)
		return
	}
	feeds, err := bottle.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, f := range feeds.All() {
		fmt.Print(f.Volume, " ")
	}
	fmt.Println("=", feeds.Volume)
	// Output:
	// portion: feeds "5": want 6 or more: 12.5 mL is too much for a stomach that takes 11.36 mL (4 mL for each 100 g)
	// 10.5 mL 10.5 mL 10.5 mL 10.5 mL 10.5 mL 10 mL = 62.5 mL
}

// A cat of 4.2 kg on a ladder of three days: 70 × 4.2^0.75 = 205.4 kcal, of a slurry
// of 1 kcal and 0.842 mL of water in each millilitre. The water is short of 60
// mL/kg every day, and the sheet says so.
func ExampleTube() {
	cat := energy.Animal{Species: energy.Cat, Weight: 4.2 * units.Kilogram, Condition: energy.BCS9(4), Circumstances: energy.TubeFed}
	for day, number := range []int{6, 6, 5} {
		need, err := energy.Refeeding{Animal: cat, Ladder: energy.ThreeDayLadder(), Day: day + 1, By: "Dr Ysolde Crake"}.Estimate()
		if err != nil {
			fmt.Println(err)
			return
		}
		feeds, err := portion.Tube{
			Need:   need,
			Liquid: portion.Liquid{Name: "slurry", Energy: 1 * units.KilocaloriePerMillilitre, Water: 84.18},
			Feeds:  number, Flush: 10 * units.Millilitre, Goal: 252 * units.Millilitre,
		}.Plan()
		if err != nil {
			fmt.Println(err)
			return
		}
		short, _ := feeds.Shortfall()
		fmt.Printf("day %d: %v in %d feeds of up to %v, water %.0f mL, %.0f mL short\n",
			day+1, feeds.Volume, feeds.Number, feeds.Largest(), feeds.Water.Millilitres(), short.Millilitres())
	}
	// Output:
	// day 1: 68.5 mL in 6 feeds of up to 11.5 mL, water 118 mL, 134 mL short
	// day 2: 137 mL in 6 feeds of up to 23 mL, water 175 mL, 77 mL short
	// day 3: 205.5 mL in 5 feeds of up to 41.5 mL, water 223 mL, 29 mL short
}

// An equation is no plan for a tube.
func ExampleTube_Plan() {
	need, err := energy.Resting{Animal: energy.Animal{Species: energy.Cat, Weight: 4.2 * units.Kilogram, Condition: energy.BCS9(5)}}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = portion.Tube{Need: need, Liquid: portion.Liquid{Energy: 1 * units.KilocaloriePerMillilitre}, Feeds: 5}.Plan()
	fmt.Println(errors.Is(err, energy.ErrVeterinarian))
	// Output: true
}
