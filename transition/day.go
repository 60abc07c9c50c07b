package transition

import (
	"encoding/json"
	"math"
	"slices"
	"strconv"
	"time"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Day is one day of a plan. Compare two with Equal. The zero value is no day.
type Day struct {
	Number int `json:"day"` // from 1
	// Step of the schedule, from 1; 0 is the old food alone.
	Step int `json:"step,omitzero"`
	// Share of the new food, in percent of the plan's basis.
	Share units.Percent `json:"share"`
	// Missed is a day on which the plan was not followed. It holds no food.
	Missed bool `json:"missed,omitzero"`
	// Foods of the day as they are weighed, those that are given. Meals are the same
	// divided: meal by meal, and in each food by food. Treats are given outside them.
	Foods []portion.Portion `json:"foods,omitzero"`
	Meals []portion.Meal    `json:"meals,omitzero"`
	// Energy is what the foods hold, Target what the animal needs.
	Energy units.Energy `json:"energy,omitzero"`
	Target units.Energy `json:"target,omitzero"`
	// Cautions are what the grams must be shown with, the gravest first; one of
	// refer level comes before them.
	Cautions []advice.Caution `json:"cautions,omitzero"`
}

// newDay returns a weighed day in so many meals.
func newDay(number int, w portion.Weighed, meals int) (Day, error) {
	d := Day{Number: number, Energy: w.Energy(), Target: w.Target()}
	var err error
	if d.Meals, err = w.Meals(meals); err != nil {
		return Day{}, err
	}
	for i := range w.Len() {
		d.Foods = append(d.Foods, w.Portion(i))
	}
	return d, nil
}

// on returns the same day with another number.
func (d Day) on(number int) Day {
	d.Number = number
	d.Foods, d.Meals, d.Cautions = slices.Clone(d.Foods), slices.Clone(d.Meals), slices.Clone(d.Cautions)
	return d
}

// Mass returns the mass of a food on that day, treats included; 0 where none is
// given.
func (d Day) Mass(food string) units.Mass {
	var m units.Mass
	for i := range d.Foods {
		if d.Foods[i].Food == food {
			m += d.Foods[i].Mass
		}
	}
	return m
}

// Date returns the calendar day of d where the plan starts on that of start, at
// midnight in UTC. What day that is decides start's own location; its time of day
// doesn't matter. The zero start gives the zero time.
func (d Day) Date(start time.Time) time.Time {
	if start.IsZero() {
		return time.Time{}
	}
	year, month, day := start.Date()
	return time.Date(year, month, day+d.Number-1, 0, 0, 0, 0, time.UTC)
}

// Equal reports whether d and e are the same in every figure and word.
func (d Day) Equal(e Day) bool {
	return d.Number == e.Number && d.Step == e.Step && d.Share == e.Share && d.Missed == e.Missed &&
		d.Energy == e.Energy && d.Target == e.Target &&
		slices.Equal(d.Foods, e.Foods) && slices.Equal(d.Meals, e.Meals) && slices.Equal(d.Cautions, e.Cautions)
}

// Cautions returns the cautions of all the days, each once, the gravest first.
func Cautions(days []Day) []advice.Caution {
	var all []advice.Caution
	for i := range days {
		for _, c := range days[i].Cautions {
			if !slices.Contains(all, c) {
				all = append(all, c)
			}
		}
	}
	advice.Sort(all)
	return all
}

// MarshalJSON writes the day, its figures bit for bit, and the zero Day as null.
func (d Day) MarshalJSON() ([]byte, error) {
	if d.Equal(Day{}) {
		return []byte("null"), nil
	}
	type plain Day
	return json.Marshal(plain(d))
}

// UnmarshalJSON reads what MarshalJSON wrote. A record whose meals don't add up to
// its foods, in grams or in energy, or its foods to its energy, is refused: grams
// that were changed by hand would be fed. What was changed in every one of these
// alike can't be seen. A JSON null leaves d as it was, and so does an error.
func (d *Day) UnmarshalJSON(data []byte) error {
	type plain Day
	if strictjson.IsNull(data) {
		return nil
	}
	var p plain
	if err := strictjson.Into("transition", "day", data, &p); err != nil {
		return err
	}
	if err := Day(p).check(); err != nil {
		return err
	}
	*d = Day(p)
	return nil
}

// roundoff is how far sums of decimal masses, and of energies, may be off by their
// last bits, as a part of the sum.
const roundoff = 1e-9

func near(a, b float64) bool { return math.Abs(a-b) <= roundoff*math.Abs(b) }

// check refuses a day whose figures contradict each other.
func (d Day) check() error {
	var errs units.ErrorList
	say := func(field, value, accepted string) {
		errs = append(errs, refuse("day record", field+" "+value, accepted, ""))
	}
	if d.Number < 1 || d.Number > maxDays {
		say("day", strconv.Itoa(d.Number), "1 to "+strconv.Itoa(maxDays))
	}
	if d.Step < 0 || d.Step > maxSteps {
		say("step", strconv.Itoa(d.Step), "0 to "+strconv.Itoa(maxSteps))
	}
	if !(d.Share >= 0 && d.Share <= 100) {
		say("share", d.Share.String(), "0 % to 100 %")
	}
	if d.Missed {
		if !d.Equal(Day{Number: d.Number, Missed: true}) {
			say("missed", "true", "nothing but the number on a day that was missed")
		}
		return errs.Err()
	}
	if d.Step == 0 && d.Share != 0 && d.Share != 100 {
		say("share", d.Share.String(), "0 %, or 100 % on a ramp, where there is no step")
	}
	if !(d.Target > 0) {
		say("target", kcal(d.Target), "more than 0 kcal")
	}
	if len(d.Foods) == 0 {
		say("foods", "none", "the foods of the day")
	}
	var sum units.Energy
	for i := range d.Foods {
		f := &d.Foods[i]
		if !(f.Mass > 0) || !(f.Energy > 0) {
			say("food", f.Food, "more than 0 g and 0 kcal of it")
		}
		sum += f.Energy
	}
	if !near(float64(sum), float64(d.Energy)) {
		say("energy", kcal(d.Energy), kcal(sum)+", what the foods hold")
	}
	errs = errlist.Add(errs, d.checkMeals())
	return errs.Err()
}

// checkMeals refuses meals that don't add up to the foods, in grams or energy.
func (d *Day) checkMeals() error {
	type total struct {
		mass   units.Mass
		energy units.Energy
	}
	foods, meals := make(map[string]total), make(map[string]units.Mass)
	per := 0 // foods in a meal
	var errs units.ErrorList
	say := func(what, accepted string) { errs = append(errs, refuse("day record", what, accepted, "")) }
	for i := range d.Foods {
		if f := &d.Foods[i]; !f.Treat {
			t := foods[f.Food]
			foods[f.Food] = total{t.mass + f.Mass, t.energy + f.Energy}
			per++
		}
	}
	var step units.Mass // of the scale
	for i := range d.Meals {
		m := &d.Meals[i]
		nth := "meal " + strconv.Itoa(m.Number)
		if m.Number > portion.MaxMeals || !(m.Mass >= 0) || m.Count < 0 {
			say(nth, "meals 1 to "+strconv.Itoa(portion.MaxMeals)+" of 0 g or more")
		}
		if per == 0 || m.Number != i/per+1 || len(d.Meals)%per != 0 {
			say(nth, "the meals in turn from 1, each with every food")
		}
		meals[m.Food] += m.Mass
		f, ok := foods[m.Food]
		if !ok {
			say("meal of "+m.Food, "meals of the foods of the day")
			continue
		}
		if step == 0 && m.Count > 0 {
			step = m.Mass / units.Mass(m.Count)
		}
		if !near(float64(m.Mass), float64(m.Count)*float64(step)) {
			say(nth+" of "+m.Food+" "+grams(m.Mass), grams(units.Mass(m.Count)*step)+", its "+strconv.FormatInt(m.Count, 10)+" steps of the scale")
		}
		if e := units.Energy(float64(f.energy) * float64(m.Mass/f.mass)); !near(float64(m.Energy), float64(e)) {
			say(nth+" of "+m.Food+" "+kcal(m.Energy), kcal(e)+", as the food of the day")
		}
	}
	for i := range d.Foods {
		name := d.Foods[i].Food
		if d.Foods[i].Treat || near(float64(meals[name]), float64(foods[name].mass)) {
			continue
		}
		say("meals of "+name+" "+grams(meals[name]), grams(foods[name].mass)+", the food of the day")
	}
	return errs.Err()
}
