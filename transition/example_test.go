package transition_test

import (
	"fmt"
	"time"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// A dog that keeps its weight on 300 g of one food goes over to another in a
// week. The energy stays the same; the grams don't.
func ExamplePlan() {
	need, err := energy.Observed{
		Animal: energy.Animal{Species: energy.Dog, Weight: 18 * units.Kilogram, Condition: energy.BCS9(5)},
		Intake: 1068 * units.Kilocalorie,
	}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	now := diet.Food{Name: "House Dog Dry", Label: diet.Label{Energy: 3560 * units.KilocaloriePerKilogram}}
	slim := diet.Food{Name: "Slim Dog Dry", Label: diet.Label{Energy: 2980 * units.KilocaloriePerKilogram}}

	plan := transition.Plan{From: diet.Only(now), To: diet.Only(slim), Steps: transition.FourStages, Meals: 2, Scale: units.Gram}
	days, err := plan.Days(need)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range days {
		fmt.Printf("day %d  %.0f %%  %.0f + %.0f g  %.0f kcal\n", d.Number, float64(d.Share),
			d.Mass(now.Name).Grams(), d.Mass(slim.Name).Grams(), d.Energy.Kilocalories())
	}
	// Output:
	// day 1  25 %  225 + 90 g  1069 kcal
	// day 2  25 %  225 + 90 g  1069 kcal
	// day 3  50 %  150 + 179 g  1067 kcal
	// day 4  50 %  150 + 179 g  1067 kcal
	// day 5  75 %  75 + 269 g  1069 kcal
	// day 6  75 %  75 + 269 g  1069 kcal
	// day 7  100 %  0 + 358 g  1067 kcal
}

// A cat goes over in ten days, 10 % more each day. On day 4 it leaves one of its
// meals: the next step waits a day for its appetite, and the change takes eleven.
func ExamplePlan_mealLeft() {
	need, err := energy.Adult{
		Animal: energy.Animal{Species: energy.Cat, Weight: 4 * units.Kilogram, Condition: energy.BCS9(5)},
		Status: energy.Neutered,
	}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	now := diet.Food{Name: "House Cat Dry", Label: diet.Label{Energy: 3850 * units.KilocaloriePerKilogram}}
	next := diet.Food{Name: "Light Cat Dry", Label: diet.Label{Energy: 3300 * units.KilocaloriePerKilogram}}

	plan := transition.Plan{From: diet.Only(now), To: diet.Only(next), Steps: transition.TenSteps, Meals: 3, Scale: units.Gram}
	plan.Events = []transition.Event{{Day: 5, Kind: transition.Hold, Days: 1}}
	days, err := plan.Days(need)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print("new:")
	for _, d := range days {
		fmt.Print(" ", d.Share)
	}
	fmt.Println()
	for _, m := range days[4].Meals {
		fmt.Println("day 5, meal", m.Number, m.Mass, "of", m.Food)
	}
	// Output:
	// new: 10 % 20 % 30 % 40 % 40 % 50 % 60 % 70 % 80 % 90 % 100 %
	// day 5, meal 1 13 g of House Cat Dry
	// day 5, meal 1 10 g of Light Cat Dry
	// day 5, meal 2 12 g of House Cat Dry
	// day 5, meal 2 10 g of Light Cat Dry
	// day 5, meal 3 12 g of House Cat Dry
	// day 5, meal 3 9 g of Light Cat Dry
}

// What pouring the old total of 300 g would do.
func ExampleBasis() {
	plan := toSlim()
	plan.Basis = transition.ByOldTotal
	days, err := plan.Days(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, i := range []int{0, 2, 4, 6} {
		d := days[i]
		fmt.Printf("%s: %s + %s, %.1f of %.0f kcal\n", d.Share, d.Mass(houseDry.Name), d.Mass(slimDry.Name),
			d.Energy.Kilocalories(), d.Target.Kilocalories())
	}
	// Output:
	// 25 %: 225 g + 75 g, 1024.5 of 1068 kcal
	// 50 %: 150 g + 150 g, 981.0 of 1068 kcal
	// 75 %: 75 g + 225 g, 937.5 of 1068 kcal
	// 100 %: 0 g + 300 g, 894.0 of 1068 kcal
}

// Soft stool on the third day: the answer, and the days that follow from it.
func ExampleSigns_Respond() {
	answer, err := transition.SoftStool.Respond(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(answer.Do, answer.Days, "or", answer.Or, "- call", answer.Call)

	plan := toSlim()
	plan.Events = []transition.Event{{Day: 4, Kind: answer.Do, Days: answer.Days}}
	days, err := plan.Days(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range days {
		fmt.Print(d.Share, "; ")
	}
	fmt.Println()
	// Output:
	// hold 3 or step_back - call if_lasting
	// 25 %; 25 %; 50 %; 50 %; 50 %; 50 %; 50 %; 75 %; 75 %; 100 %;
}

// The library never reads the clock: the start is given.
func ExampleDay_Date() {
	days, err := toSlim().Days(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	start := time.Date(2026, time.November, 2, 0, 0, 0, 0, time.UTC)
	fmt.Println(days[6].Number, days[6].Date(start).Format(time.DateOnly))
	// Output: 7 2026-11-08
}

// A ladder of the veterinarian's own for a dog at 1/9, as in the demo.
func ExampleRamp_Refeeding() {
	ladder, err := energy.ParseLadder("25/25/50/75/100 %")
	if err != nil {
		fmt.Println(err)
		return
	}
	ramp := transition.Ramp{Menu: diet.Only(houseDry), Meals: 4, Scale: units.Gram}
	days, err := ramp.Refeeding(energy.Refeeding{
		Animal: energy.Animal{Species: energy.Dog, Weight: 16.2 * units.Kilogram, Condition: energy.BCS9(1)},
		Ladder: ladder, By: "Dr Ysolde Crake",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range days {
		fmt.Printf("%d: %.1f kcal, %s:", d.Number, d.Target.Kilocalories(), d.Foods[0].Mass)
		for _, m := range d.Meals {
			fmt.Printf(" %s", m.Mass)
		}
		fmt.Println()
	}
	// Output:
	// 1: 141.3 kcal, 40 g: 10 g 10 g 10 g 10 g
	// 2: 141.3 kcal, 40 g: 10 g 10 g 10 g 10 g
	// 3: 282.6 kcal, 79 g: 20 g 20 g 20 g 19 g
	// 4: 423.9 kcal, 119 g: 30 g 30 g 30 g 29 g
	// 5: 565.2 kcal, 159 g: 40 g 40 g 40 g 39 g
}

// Half a bag of the old food: what to buy, and what change it would do for.
func ExamplePlan_Shopping() {
	plan := toSlim()
	plan.To[0].Food.Label.Packs[0].Net = 1.5 * units.Kilogram
	days, err := plan.Days(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	list, err := plan.Shopping(days, portion.Stock{Food: houseDry, Mass: 500 * units.Gram})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, x := range list {
		fmt.Printf("%s: %s needed, %s there, %s to buy in %d packs\n", x.Food, x.Need, x.Have, x.Buy, x.Packs)
		if x.Out > 0 {
			fmt.Println("  not enough on day", x.Out)
		}
	}
	steps, err := plan.LongestSteps(oakum(), portion.Stock{Food: houseDry, Mass: 500 * units.Gram})
	fmt.Println(steps, err)
	// Output:
	// Tarnwick House Dog Dry: 900 g needed, 500 g there, 400 g to buy in 0 packs
	//   not enough on day 3
	// Ostlehouse Slim Dog Dry: 1.434 kg needed, 0 g there, 1.434 kg to buy in 1 packs
	// four_days <nil>
}
