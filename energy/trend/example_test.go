package trend_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// A clinic dog at its fifth visit: nothing is cut before it is asked what else
// the dog gets.
func ExamplePlan_Next() {
	dog := energy.Animal{Species: energy.Dog, Weight: 38.5 * units.Kilogram, Condition: energy.BCS9(8)}
	start, _ := trend.ParseDate("2026-11-02")
	var log trend.Weights
	for i, kg := range []units.Mass{38.5, 37.9, 37.2, 36.4, 36.2} {
		log = append(log, trend.Weighing{
			Date: start + trend.Date(14*i), Weight: kg * units.Kilogram, Readability: 100 * units.Gram,
		})
	}
	plan := trend.Plan{Loss: energy.WeightLoss{Animal: dog}, Daily: 889, Since: start}
	for _, asked := range []bool{false, true} {
		plan.Asked = asked
		step, err := plan.Next(log, start+56)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(step.Sentence())
		fmt.Printf("ask first: %v; %.0f kcal a day; weigh again on %v\n", step.Ask, step.Daily.Kilocalories(), step.Recheck)
	}
	// Output:
	// Stalled: it loses 0.79 % of its initial weight a week, since the last visit it loses 0.26 %, and the target is 1 % to 2 % a week.
	// ask first: true; 889 kcal a day; weigh again on 2027-01-11
	// Stalled: it loses 0.79 % of its initial weight a week, since the last visit it loses 0.26 %, and the target is 1 % to 2 % a week.
	// ask first: false; 800 kcal a day; weigh again on 2027-01-11
}

func ExampleWeights_Trend() {
	var log trend.Weights
	err := json.Unmarshal([]byte(`[
		{"date": "2026-11-02", "weight": "5.8 kg",  "readability": "10 g"},
		{"date": "2026-11-09", "weight": "5.74 kg", "readability": "10 g"},
		{"date": "2026-11-16", "weight": "5.71 kg", "readability": "10 g"},
		{"date": "2026-11-23", "weight": "5.66 kg", "readability": "10 g"}
	]`), &log)
	if err != nil {
		fmt.Println(err)
		return
	}
	t, err := log.Trend(trend.DateOf(time.Date(2026, 11, 23, 9, 0, 0, 0, time.UTC)))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(t)
	// Output:
	// loses 45 g a week (29 g to 61 g), 0.78 % of 5.8 kg at the start, 0.8 % of 5.66 kg now
}

// 44 pounds in the box for kilograms.
func ExampleWeights_Check() {
	october, _ := trend.ParseDate("2026-10-02")
	log := trend.Weights{
		{Date: october, Weight: 19.4 * units.Kilogram, Readability: 100 * units.Gram},
		{Date: october + 31, Weight: 44 * units.Kilogram, Readability: 100 * units.Gram},
	}
	fmt.Println(log.Check(october + 31))
	// Output:
	// trend: weighing 2 weight "44 kg": want a weight like the 19.4 kg of 2026-10-02 (+126.8 %: pounds? 44 lb is 19.96 kg; weigh again, and set Confirmed where it is right)
}

// A shelter cat that lost 6.5 % in its first week.
func ExampleWatch_Flags() {
	intake, _ := trend.ParseDate("2026-11-02")
	w := trend.Watch{
		Animal: energy.Animal{Species: energy.Cat}, Shelter: true, Today: intake + 7,
		Weights: trend.Weights{
			{Date: intake, Weight: 4.3 * units.Kilogram, Readability: 10 * units.Gram},
			{Date: intake + 7, Weight: 4.02 * units.Kilogram, Readability: 10 * units.Gram},
		},
		Appetites: trend.Appetites{{Date: intake + 7, Appetite: trend.Reduced}},
	}
	flags, err := w.Flags()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, f := range flags {
		fmt.Println(f.Level, f.Text)
	}
	// Output:
	// refer lost 6.51 % in 7 days (4.3 kg to 4.02 kg): a veterinarian must see it
	// refer lost 6.51 % of its weight a week since 2026-11-02, more than 2 %: a cat's liver is in danger
	// warn -6.51 % since intake (4.3 kg to 4.02 kg), more than 3 %: look for the cause, and score the condition
}

// A cat of 4.6 kg that ate 60 g of a food of 3850 kcal/kg every day and lost 10 g
// a week: it needs a little more than the 231 kcal it ate.
func ExampleNewRequirement() {
	start, _ := trend.ParseDate("2026-11-02")
	var weights trend.Weights
	var intake trend.Intake
	for week := range 5 {
		weights = append(weights, trend.Weighing{
			Date: start + trend.Date(7*week), Weight: 4600*units.Gram - units.Mass(10*week), Readability: 10 * units.Gram,
		})
	}
	for day := range trend.Date(28) {
		intake = append(intake, trend.Served{
			Date: start + day, Meal: 1, Food: "Tarnwick House Cat Dry", Offered: 65 * units.Gram, Left: 5 * units.Gram,
			Density: 3850 * units.KilocaloriePerKilogram,
		})
	}
	need, err := trend.NewRequirement(weights, intake, start+28)
	if err != nil {
		fmt.Println(err)
		return
	}
	cat := energy.Animal{Species: energy.Cat, Weight: 4.56 * units.Kilogram, Condition: energy.BCS9(5)}
	equation, err := energy.Adult{Animal: cat, Status: energy.Neutered}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	of, differs := need.Against(equation)
	fmt.Print(need.Explain())
	fmt.Printf("%.0f %% of the equation's %.0f kcal; shown to differ: %v\n", float64(of), equation.Daily.Kilocalories(), differs)
	// Output:
	// eaten     231 kcal a day over 28 days
	// weights   loses 10 g a week (1.7 g to 18.3 g), 0.22 % of 4.6 kg at the start, 0.22 % of 4.56 kg now
	// formula   eaten + 7920 kcal for each kg lost
	//           = 231 kcal + 7.92 × 1.4 g a day = 242 kcal
	// source    Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010, Table 27-15, p. 528: 7,920 kcal/kg
	// uncertain 232 kcal to 252 kcal a day: by the interval of the weights, and tissue of 5000 to 8230 kcal/kg
	// 92 % of the equation's 262 kcal; shown to differ: true
}

func ExampleLitter_Reports() {
	born, _ := trend.ParseDate("2026-10-26")
	moth := trend.Nursling{Name: "Moth"}
	for i, grams := range []units.Mass{176, 184, 189} {
		moth.Weights = append(moth.Weights, trend.Weighing{Date: born + 7 + trend.Date(i), Weight: grams, Readability: units.Gram})
	}
	litter := trend.Litter{
		Species: energy.Cat, Born: born, Milk: 1.02 * units.KilocaloriePerMillilitre, Feeds: 6, Nurslings: []trend.Nursling{moth},
	}
	reports, err := litter.Reports(born + 9)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range reports {
		fmt.Printf("%s: %d feeds of %.1f mL, mean gain %.1f g a day, alarm %v\n", r.Name, r.Feeds, r.Feed.Millilitres(), r.Mean.Grams(), r.Alarm())
		for _, g := range r.Gains {
			if g.Flag != (trend.Flag{}) {
				fmt.Println(g.Flag.Level, g.Flag.Text)
			}
		}
	}
	// Output:
	// Moth: 6 feeds of 6.9 mL, mean gain 6.5 g a day, alarm true
	// refer gained only 5 g a day (184 g to 189 g in 1 day): it must gain 7 g or more; see that it is warm, and call the veterinarian today
}

func ExampleIntake_Days() {
	monday, _ := trend.ParseDate("2026-11-02")
	log := trend.Intake{
		{Date: monday, Meal: 1, Food: "dry", Offered: 30, Left: 4, Density: 3850},
		{Date: monday, Meal: 2, Food: "dry", Offered: 30, Left: 21, Density: 3850},
		{Date: monday, Meal: 2, Food: "wet", Offered: 50, Left: 0, Density: 1090},
	}
	days, err := log.Days(264*units.Kilocalorie, monday)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range days {
		fmt.Printf("%v: %v of %v eaten, %.0f kcal, %.0f %% of the goal\n", d.Date, d.Mass, d.Offered, d.Energy.Kilocalories(), float64(d.OfGoal))
	}
	// Output:
	// 2026-11-02: 85 g of 110 g eaten, 189 kcal, 72 % of the goal
}
