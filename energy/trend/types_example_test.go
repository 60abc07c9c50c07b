package trend_test

import (
	"encoding/json"
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// The scale of shelters, 0 to 2, and its names are read alike.
func ExampleAppetite() {
	for _, text := range []string{"0", "reduced", "2"} {
		a, err := trend.ParseAppetite(text)
		fmt.Println(a, err)
	}
	// Output:
	// none <nil>
	// reduced <nil>
	// normal <nil>
}

// Two scores of one day can't both be right.
func ExampleAppetites() {
	monday, _ := trend.ParseDate("2026-11-02")
	log := trend.Appetites{{Date: monday, Appetite: trend.Normal}, {Date: monday, Appetite: trend.Reduced}}
	fmt.Println(log.Check(monday + 1))
	// Output: trend: appetite 2 date "2026-11-02": want one entry a day (stands twice)
}

func ExampleScored() {
	monday, _ := trend.ParseDate("2026-11-02")
	b, err := json.Marshal(trend.Scored{Date: monday, Appetite: trend.NotEating})
	fmt.Println(string(b), err)
	// Output: {"date":"2026-11-02","appetite":"none"} <nil>
}

// The difference of two dates is a number of days.
func ExampleDate() {
	visit, _ := trend.ParseDate("2026-11-30")
	fmt.Println(visit+14, visit-14)
	// Output: 2026-12-14 2026-11-16
}

func ExampleWeighing() {
	var w trend.Weighing
	err := json.Unmarshal([]byte(`{"date":"2026-11-02","weight":"38.5 kg","readability":"100 g"}`), &w)
	fmt.Println(w.Date, w.Weight, "to", w.Readability, err)
	// Output: 2026-11-02 38.5 kg to 100 g <nil>
}

// From 40 kg to 39.2 kg in two weeks: 800 g of 40 kg are 2 %, 1 % a week.
func ExampleChange() {
	start, _ := trend.ParseDate("2026-11-02")
	c := fortnight(start).SinceStart
	fmt.Printf("%v in %d days, %.1f %%, %.1f %% a week\n", c.Mass, c.Days, float64(c.Percent), float64(c.PerWeek))
	// Output: -800 g in 14 days, -2.0 %, -1.0 % a week
}

// Two points make a line without a spread of its own: what they may be off is that
// of the scale and the animal.
func ExampleTrend() {
	start, _ := trend.ParseDate("2026-11-02")
	t := fortnight(start)
	fmt.Printf("%.0f g a week, shown: %v\n", t.Rate.Grams(), t.Shown())
	// Output: -400 g a week, shown: true
}

// fortnight is the trend of a dog that went from 40 kg to 39.2 kg in two weeks.
func fortnight(start trend.Date) trend.Trend {
	log := trend.Weights{
		{Date: start, Weight: 40 * units.Kilogram, Readability: 10 * units.Gram},
		{Date: start + 14, Weight: 39.2 * units.Kilogram, Readability: 10 * units.Gram},
	}
	t, err := log.Trend(start + 14)
	if err != nil {
		panic(err)
	}
	return t
}

// A weighing far from the line that the others make, as a person reads it.
func ExampleDoubt() {
	day, _ := trend.ParseDate("2026-11-16")
	fmt.Println(trend.Doubt{
		Weighing: trend.Weighing{Date: day, Weight: 4.9 * units.Kilogram, Readability: 10 * units.Gram},
		Expected: 4.4 * units.Kilogram, Off: 0.5 * units.Kilogram,
	})
	// Output: 2026-11-16: 4.9 kg is 500 g above the line of the other weighings; the same scale, empty carrier, same hour?
}

// 30 g offered and 4 g left are 26 g of 3850 kcal/kg: 100.1 kcal.
func ExampleServed() {
	s := trend.Served{Meal: 1, Food: "dry", Offered: 30 * units.Gram, Left: 4 * units.Gram, Density: 3850 * units.KilocaloriePerKilogram}
	fmt.Printf("%v, %.1f kcal\n", s.Eaten(), s.Energy().Kilocalories())
	// Output: 26 g, 100.1 kcal
}

// 26 g of 3850 kcal/kg are 100.1 kcal, 50 % of 200.2 kcal.
func ExampleEaten() {
	monday, _ := trend.ParseDate("2026-11-02")
	log := trend.Intake{{Date: monday, Meal: 1, Food: "dry", Offered: 30, Left: 4, Density: 3850}}
	days, err := log.Days(200.2*units.Kilocalorie, monday)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v of %v, %.1f kcal, %.0f %%\n", days[0].Mass, days[0].Offered, days[0].Energy.Kilocalories(), float64(days[0].OfGoal))
	// Output: 26 g of 30 g, 100.1 kcal, 50 %
}

// A cat that has eaten nothing for a day is referred at once (Côté's Clinical
// Veterinary Advisor, 4th ed., 2020, p. 3088).
func ExampleFlag() {
	today, _ := trend.ParseDate("2026-11-09")
	flags, err := trend.Watch{Animal: energy.Animal{Species: energy.Cat}, Today: today, HoursUnfed: 24}.Flags()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, f := range flags {
		fmt.Println(f.Kind, f.Level == advice.Refer, f.Date)
	}
	// Output: nothing_eaten true 2026-11-09
}

func ExampleFlagKind() {
	k, err := trend.ParseFlagKind("nothing_eaten")
	fmt.Println(k == trend.NothingEaten, err)
	// Output: true <nil>
}

func ExampleVerdict() {
	v, err := trend.ParseVerdict("stalled")
	fmt.Println(v == trend.Stalled, err)
	// Output: true <nil>
}

// The day on which an animal is due on the scale again: a week after the order.
func ExampleOrder() {
	written, _ := trend.ParseDate("2026-11-02")
	order := trend.Order{Written: written, Reweigh: energy.Week}
	fmt.Println(order.Written + trend.Date(order.Reweigh/energy.Day))
	// Output: 2026-11-09
}

// At the first visit there is one weighing: nothing to judge yet.
func ExampleStep() {
	start, _ := trend.ParseDate("2026-11-02")
	dog := energy.Animal{Species: energy.Dog, Weight: 39 * units.Kilogram, Condition: energy.BCS9(8)}
	plan := trend.Plan{Loss: energy.WeightLoss{Animal: dog}, Daily: 897 * units.Kilocalorie, Since: start}
	step, err := plan.Next(trend.Weights{{Date: start, Weight: dog.Weight, Readability: 100 * units.Gram}}, start)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(step.Verdict, step.Daily, step.Recheck)
	// Output: too_early 897 kcal 2026-11-16
}

// Pim weighs 212 g, 13 g more than the day before: 22.5 kcal for 100 g (Small Animal
// Clinical Nutrition, 5th ed., Table 23-4, the middle of 20 to 25) are 47.7 kcal, and
// 46.8 mL of a milk of 1.02 kcal/mL. Its stomach takes 4 mL for 100 g: 8.5 mL.
func ExampleReport() {
	r, ok := pim()
	if !ok {
		return
	}
	fmt.Printf("%s: %.1f mL in %d feeds, at most %.1f mL each\n", r.Name, r.Milk.Millilitres(), r.Feeds, r.Stomach.Millilitres())
	// Output: Pim: 46.8 mL in 6 feeds, at most 8.5 mL each
}

// A kitten is expected to gain 10 to 13 g a day.
func ExampleGained() {
	r, ok := pim()
	if !ok {
		return
	}
	for _, g := range r.Gains {
		fmt.Println(g.Date, g.Gain, "in", g.Days, "day, expected", g.Expected.Low, "to", g.Expected.High)
	}
	// Output: 2026-11-09 13 g in 1 day, expected 10 g to 13 g
}

func ExampleNursling() {
	monday, _ := trend.ParseDate("2026-11-02")
	pim := trend.Nursling{Name: "Pim", Weights: trend.Weights{{Date: monday, Weight: 199 * units.Gram, Readability: units.Gram}}}
	b, err := json.Marshal(pim)
	fmt.Println(string(b), err)
	// Output: {"name":"Pim","weights":[{"date":"2026-11-02","weight":"199 g","readability":"1 g"}]} <nil>
}

// pim is the report of a kitten of two weeks.
func pim() (trend.Report, bool) {
	today, _ := trend.ParseDate("2026-11-09")
	litter := trend.Litter{
		Species: energy.Cat, Born: today - 13, Milk: 1.02 * units.KilocaloriePerMillilitre, Feeds: 6,
		Nurslings: []trend.Nursling{{Name: "Pim", Weights: trend.Weights{
			{Date: today - 1, Weight: 199 * units.Gram, Readability: units.Gram},
			{Date: today, Weight: 212 * units.Gram, Readability: units.Gram},
		}}},
	}
	reports, err := litter.Reports(today)
	if err != nil {
		fmt.Println(err)
		return trend.Report{}, false
	}
	return reports[0], true
}
