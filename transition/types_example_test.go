package transition_test

import (
	"errors"
	"fmt"

	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// One's own schedule, as a person writes it.
func ExampleSteps() {
	steps, err := transition.ParseSteps("10 % 3 d, 50 % 2 d, 100 %")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(steps.Len(), "steps in", steps.Days(), "days:", steps)
	// Output: 3 steps in 6 days: 10 % 3 d, 50 % 2 d, 100 %
}

func ExampleStep() {
	for _, s := range transition.FourDays.All() {
		fmt.Println(s.Days, "d at", s.Share)
	}
	// Output:
	// 1 d at 25 %
	// 1 d at 50 %
	// 1 d at 75 %
	// 1 d at 100 %
}

// Day 3 went to the old bag: it is made up for by nothing, the plan ends a day later.
func ExampleEvent() {
	plan := toSlim()
	plan.Events = []transition.Event{{Day: 3, Kind: transition.Missed}}
	days, err := plan.Days(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(len(days), "days; day 3 missed:", days[2].Missed, "- day 4 at", days[3].Share)
	// Output: 8 days; day 3 missed: true - day 4 at 50 %
}

func ExampleEventKind() {
	kind, err := transition.ParseEventKind("step_back")
	fmt.Println(kind == transition.StepBack, err)
	// Output: true <nil>
}

// Blood is for a veterinarian, and for no schedule.
func ExampleCall() {
	answer, err := transition.Blood.Respond(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("call", answer.Call)
	// Output: call now
}

// Soft stool on the way: hold for three days or go back a step.
func ExampleResponse() {
	answer, err := transition.SoftStool.Respond(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(answer.Do, "for", answer.Days, "days, or", answer.Or)
	// Output: hold for 3 days, or step_back
}

// Of 1068 kcal a day a quarter, a half, three quarters for two days each and all of
// it for one are 4 × 1068 kcal of the new food: 1434 g at 2980 kcal/kg, less what the
// whole grams of the days leave.
func ExamplePurchase() {
	plan := toSlim()
	days, err := plan.Days(oakum())
	if err != nil {
		fmt.Println(err)
		return
	}
	list, err := plan.Shopping(days)
	if err != nil {
		fmt.Println(err)
		return
	}
	slim := list[1]
	fmt.Println(slim.Food, slim.Need, "to buy", slim.Buy)
	// Output: Ostlehouse Slim Dog Dry 1.434 kg to buy 1.434 kg
}

// On a scale that shows whole kilograms no day of a dog of 18 kg can be weighed.
func ExampleDayError() {
	plan := toSlim()
	plan.Scale = units.Kilogram
	_, err := plan.Days(oakum())
	var day *transition.DayError
	if errors.As(err, &day) {
		fmt.Println("days", day.First, "to", day.Last)
	}
	var scale *portion.ScaleError
	fmt.Println(errors.As(err, &scale))
	// Output:
	// days 1 to 2
	// true
}

// A handful of the old food is enough for no schedule.
func ExampleStockError() {
	_, err := toSlim().LongestSteps(oakum(), portion.Stock{Food: houseDry, Mass: 50 * units.Gram})
	var stock *transition.StockError
	if errors.As(err, &stock) {
		fmt.Println(stock.Food, "has", stock.Have)
	}
	// Output: Tarnwick House Dog Dry has 50 g
}
