package portion_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

var (
	kibble = diet.Food{
		Name: "Tarnwick House Dog Dry", Role: diet.Complete,
		For: diet.Purpose{Species: diet.Dogs},
		Label: diet.Label{
			Energy:  3560 * units.KilocaloriePerKilogram,
			Serving: diet.Serving{Name: "cup", Energy: 356 * units.Kilocalorie, Mass: 100 * units.Gram},
		},
	}
	dog = energy.Animal{Species: energy.Dog, Weight: 24.9 * units.Kilogram, Condition: energy.BCS9(5)}
)

// given is a day's energy for the dog as a veterinarian would set it, and
// givenCat for a cat of 4.6 kg.
func given(daily units.Energy) energy.Prescribed {
	return energy.Prescribed{Animal: dog, Daily: daily, By: "a veterinarian"}
}

func givenCat(daily units.Energy) energy.Prescribed {
	cat := energy.Animal{Species: energy.Cat, Weight: 4.6 * units.Kilogram, Condition: energy.BCS9(5)}
	return energy.Prescribed{Animal: cat, Daily: daily, By: "a veterinarian"}
}

func prescribed(daily units.Energy) energy.Estimate    { return must(given(daily)) }
func prescribedCat(daily units.Energy) energy.Estimate { return must(givenCat(daily)) }

func must(s energy.Stage) energy.Estimate {
	e, err := s.Estimate()
	if err != nil {
		panic(err)
	}
	return e
}

func ExampleWeigh() {
	need, err := energy.Adult{Animal: dog, Status: energy.Neutered}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	ration, err := portion.Weigh(need, diet.Only(kibble))
	if err != nil {
		fmt.Println(err)
		return
	}
	// 1248.44 kcal ÷ 3560 kcal/kg × 1000
	fmt.Printf("%.2f g, not yet rounded\n", ration.Portion(0).Mass.Grams())
	// Output: 350.69 g, not yet rounded
}

func ExampleRation_Meals() {
	ration, err := portion.Weigh(prescribed(1180), diet.Only(kibble)) // 331.46 g
	if err != nil {
		fmt.Println(err)
		return
	}
	meals, err := ration.Meals(3, units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range meals {
		fmt.Println(m.Number, m.Mass, m.Food)
	}
	// Output:
	// 1 111 g Tarnwick House Dog Dry
	// 2 110 g Tarnwick House Dog Dry
	// 3 110 g Tarnwick House Dog Dry
}

func ExampleRation_On() {
	ration, err := portion.Weigh(prescribed(1180), diet.Only(kibble))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, step := range []units.Mass{units.Gram / 10, units.Gram, 5 * units.Gram} {
		w, err := ration.On(step)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v scale: %v, %.0f kcal of %v\n", step, w.Portion(0).Mass, w.Energy().Kilocalories(), w.Target())
	}
	// Output:
	// 0.1 g scale: 331.5 g, 1180 kcal of 1180 kcal
	// 1 g scale: 331 g, 1178 kcal of 1180 kcal
	// 5 g scale: 330 g, 1175 kcal of 1180 kcal
}

// A cup is for recognising an amount, not for measuring it.
func ExampleWeighed_Household() {
	ration, err := portion.Weigh(prescribed(1180), diet.Only(kibble))
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	if n, unit, ok := w.Household(0); ok {
		fmt.Printf("%v, about %v %s: weigh instead\n", w.Portion(0).Mass, n, unit)
	}
	// Output: 331 g, about 3.25 cup: weigh instead
}

// Practice multiplies cups by grams per cup and rounds the cups first. The food
// has 475 kcal and 112 g a cup, the dog needs 600 kcal: 600/475 is 1.26 cups,
// "1 1/4", and 1.25 × 112 is 140 g (common practice, no source). Rounding once,
// at the end, gives 600 × 112 / 475 = 141.47 g.
func Example_roundOnce() {
	food := diet.Food{
		Name:  "a dry food",
		Label: diet.Label{Serving: diet.Serving{Name: "cup", Energy: 475 * units.Kilocalorie, Mass: 112 * units.Gram}},
	}
	ration, err := portion.Weigh(prescribed(600), diet.Only(food))
	if err != nil {
		fmt.Println(err)
		return
	}
	exact := ration.Portion(0).Mass
	cups := 1.25 * 112 * units.Gram
	fmt.Printf("weighed %.2f g, through quarter cups %v, %.1f g less\n", exact.Grams(), cups, (exact - cups).Grams())
	// Output: weighed 141.47 g, through quarter cups 140 g, 1.5 g less
}
