package portion_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// bolster is a dog on 1068 kcal of a food of 3560 kcal/kg: 300 g a day.
func bolster(step units.Mass) portion.Weighed {
	ration, err := portion.Weigh(prescribed(1068), diet.Only(kibble))
	if err != nil {
		panic(err)
	}
	w, err := ration.On(step)
	if err != nil {
		panic(err)
	}
	return w
}

// 300 g are 1068 kcal.
func ExamplePortion() {
	p := bolster(units.Gram).Portion(0)
	fmt.Println(p.Food, p.Mass, p.Energy)
	// Output: Tarnwick House Dog Dry 300 g 1068 kcal
}

// 300 g in two meals.
func ExampleMeal() {
	meals, err := bolster(units.Gram).Meals(2)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range meals {
		fmt.Println("meal", m.Number, m.Mass, "is", m.Count, "steps of the scale")
	}
	// Output:
	// meal 1 150 g is 150 steps of the scale
	// meal 2 150 g is 150 steps of the scale
}

// Two parts in the morning and one at night: 200 and 100 g.
func ExampleMealtime() {
	day := portion.Timetable{{At: portion.At(7, 30), Parts: 2}, {At: portion.At(18, 0), Parts: 1}}
	meals, err := bolster(units.Gram).Serve(day)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range meals {
		fmt.Println(m.At, m.Mass)
	}
	// Output:
	// 07:30 200 g
	// 18:00 100 g
}

// 12 g of a food can't be told on a scale of 50 g.
func ExampleScaleError() {
	ration, err := portion.Weigh(prescribed(42.72), diet.Only(kibble))
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = ration.On(50 * units.Gram)
	var scale *portion.ScaleError
	if errors.As(err, &scale) {
		fmt.Println(scale.Mass, "on a scale of", scale.Step)
	}
	// Output: 12 g on a scale of 50 g
}

// 300 g in two meals on a scale of 5 g: 150 g are 30 steps of it.
func ExampleFitness() {
	f, err := bolster(5*units.Gram).Fitness(0, 2)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v %v, half a step is %.1f %% of a meal\n", f.Meal, f.Grade, float64(f.HalfStepOfMeal()))
	// Output: 150 g fits, half a step is 1.7 % of a meal
}

// 15 g on a scale of 1 g are 15 steps: fewer than the 20 of OIML R 76-1.
func ExampleGrade() {
	f, err := portion.Scale{Step: units.Gram}.Fitness(15*units.Gram, 1)
	fmt.Println(f.Grade == portion.Coarse, err)
	// Output: true <nil>
}

func ExampleComponent() {
	var c portion.Component
	err := json.Unmarshal([]byte(`"scale"`), &c)
	fmt.Println(c == portion.ScaleStep, err)
	// Output: true <nil>
}

// A cup that varies by 8 % from fill to fill is what limits this bowl.
func ExampleBudget() {
	b, err := bolster(units.Gram).Budget(0, portion.Measuring{Meals: 2, Scoop: 8})
	if err != nil {
		fmt.Println(err)
		return
	}
	limit, ok := b.Limit()
	fmt.Println(b.Bowl, limit, ok, b.Part(portion.ScoopFill))
	// Output: 150 g scoop true 8 %
}

// A bowl that is weighed has no scoop in it; one of two meals is half the day.
func ExampleMeasuring() {
	b, err := bolster(units.Gram).Budget(0, portion.Measuring{Meals: 2})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Bowl, b.Bowls, "bowls, scoop", b.Scoop)
	// Output: 150 g 2 bowls, scoop 0 %
}

// 150 g in a cup of 120 g with quarters are a cup and a quarter.
func ExampleCup() {
	c, err := bolster(units.Gram).InCups(0, 2, portion.Cup{Mass: 120 * units.Gram, Marks: portion.Quarters})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(c.Mark.Measures(), "cups of", c.Cup.Mass)
	// Output: 1.25 cups of 120 g
}

// The nearest mark of a cup without marks to 150 g is one cup of 120 g: 240 g for
// the day's 300, 20 % too little.
func ExampleCupped() {
	c, err := bolster(units.Gram).InCups(0, 2, portion.Cup{Mass: 120 * units.Gram})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v a meal, %+.0f %%; weigh %v instead\n", c.Mass, float64(c.Off()), c.Weigh)
	// Output: 120 g a meal, -20 %; weigh 300 g instead
}

func ExampleMark() {
	fmt.Println(portion.Mark{Parts: 5, Of: 4}.Measures())
	// Output: 1.25
}

// 90 g in a cup of 120 g: three quarters, if the cup shows them, and otherwise one or
// the other.
func ExampleMarks() {
	ration, err := portion.Weigh(prescribed(320.4), diet.Only(kibble))
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, marks := range []portion.Marks{0, portion.Quarters} {
		c, err := w.InCups(0, 1, portion.Cup{Mass: 120 * units.Gram, Marks: marks})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(c.Mark.Measures(), c.Mass)
	}
	// Output:
	// 1 120 g
	// 0.75 90 g
}

// What people do with a cup, as two studies found it.
func ExampleStudy() {
	for _, s := range portion.Studies() {
		fmt.Printf("%.0f %% to %+.0f %%: %s\n", float64(s.Error.Low), float64(s.Error.High), s.What)
	}
	// Output:
	// -18 % to +80 %: people with the maker's measuring cup, six dry foods
	// -48 % to +152 %: 100 dog owners with three devices, asked for 1/4, 1/2 and 1 cup
}

// 47.7 kcal over 1.02 kcal/mL are 46.76 mL a day, 47 mL in the half millilitres of a
// syringe.
func ExampleFeeds() {
	feeds, err := kittenBottle().Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(feeds.Number, "feeds,", feeds.Volume, "in marks of", feeds.Mark)
	// Output: 6 feeds, 47 mL in marks of 0.5 mL
}

// 47 mL are 94 marks: six feeds of 15 marks and 4 of them with one more.
func ExampleFeed() {
	feeds, err := kittenBottle().Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, f := range feeds.All() {
		fmt.Print(f.Volume, "; ")
	}
	fmt.Println()
	// Output: 8 mL; 8 mL; 8 mL; 8 mL; 7.5 mL; 7.5 mL;
}

// A can of 1000 kcal/kg stirred with as much water: half as dense.
func ExampleLiquid() {
	can := diet.Food{Name: "recovery can", Form: diet.Wet, Label: diet.Label{Energy: 1000 * units.KilocaloriePerKilogram}}
	mix := diet.Mix{Parts: []diet.Part{{Food: can, Amount: diet.Fixed(100 * units.Gram)}}, Water: 100 * units.Millilitre, Made: 200 * units.Millilitre}
	food, err := mix.Food()
	if err != nil {
		fmt.Println(err)
		return
	}
	liquid, err := portion.LiquidFood(food)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(liquid.Energy)
	// Output: 0.5 kcal/mL
}

// kittenBottle is the milk of a kitten of 212 g, 22.5 kcal for 100 g.
func kittenBottle() portion.Bottle {
	kitten := energy.Animal{Species: energy.Cat, Weight: 212 * units.Gram, Age: 14 * energy.Day}
	return portion.Bottle{Need: must(energy.Nursling{Animal: kitten}), Liquid: portion.Liquid{Name: "milk", Energy: 1.02 * units.KilocaloriePerMillilitre}, Feeds: 6}
}

// 44 to 66 mL for each kg: a cat of 4.6 kg takes 202.4 to 303.6 mL.
func ExampleWater() {
	food := catDry
	food.Analysis.Moisture = 8
	ration, err := portion.Weigh(prescribedCat(231), diet.Only(food))
	if err != nil {
		fmt.Println(err)
		return
	}
	water, err := ration.Water(portion.ByWeight)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f to %.1f mL drunk and eaten\n", water.Total.Low.Millilitres(), water.Total.High.Millilitres())
	// Output: 202.4 to 303.6 mL drunk and eaten
}

func ExampleWaterBasis() {
	b, err := portion.ParseWaterBasis("dry_matter")
	fmt.Println(b == portion.ByDryMatter, err)
	// Output: true <nil>
}

func ExampleStock() {
	text, err := json.Marshal(portion.Stock{Food: diet.Food{Name: "dry", Label: diet.Label{Energy: 3560}}, Mass: 1.5 * units.Kilogram})
	fmt.Println(string(text), err)
	// Output: {"food":{"name":"dry","label":{"energy":"3560 kcal/kg"}},"mass":"1.5 kg"} <nil>
}

// 300 g a day for ten days are 3 kg: 2 kg are short of what is in store, which lasts
// for three days and a third.
func ExampleSupplyLine() {
	lines, err := tenDays(kibble).Lines()
	if err != nil {
		fmt.Println(err)
		return
	}
	l := lines[0]
	fmt.Printf("need %v, short %v, %.1f days left\n", l.Need, l.Short, l.DaysLeft)
	// Output: need 3 kg, short 2 kg, 3.3 days left
}

// 300 g from a bag of 3 kg for 30 EUR cost 3 EUR.
func ExampleAnimalCost() {
	food := kibble
	price, err := diet.NewPrice(30, "EUR")
	if err != nil {
		fmt.Println(err)
		return
	}
	food.Label.Packs[0] = diet.Pack{Net: 3 * units.Kilogram, Price: price}
	costs, err := tenDays(food).Costs()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s %.2f %s a day\n", costs[0].Animal, costs[0].Cost.Amount(), costs[0].Cost.Currency())
	// Output: Bolster 3.00 EUR a day
}

// tenDays is a dog on 300 g of a food, with 1 kg in store.
func tenDays(f diet.Food) portion.Supply {
	weighed, err := fed(given(1068), diet.Only(f))
	if err != nil {
		panic(err)
	}
	return portion.Supply{
		Days: 10, Plans: []portion.Plan{{Animal: "Bolster", Weighed: weighed}},
		Store: []portion.Stock{{Food: f, Mass: units.Kilogram}},
	}
}

// Each of a pair has its bowl, and is named on it.
func ExampleBowl() {
	bowls, err := portion.Group(tenDays(kibble).Plans).Bowls(2)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(bowls[1].Animal, "meal", bowls[1].Number, bowls[1].Mass)
	// Output: Bolster meal 2 150 g
}

// Two dogs of 300 g each from one bowl: 600 g a day, and nobody knows who eats what.
func ExampleOneBowl() {
	a, b := tenDays(kibble).Plans[0], tenDays(kibble).Plans[0]
	b.Animal = "Pippet"
	bowl, err := portion.Group{a, b}.OneBowl(2)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(bowl.Foods[0].Mass, "for", bowl.Animals, len(bowl.Cautions()) > 0)
	// Output: 600 g for [Bolster Pippet] true
}
