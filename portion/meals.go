package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/units"
)

// MaxMeals is the largest number of meals a day is split into.
const MaxMeals = 24

// acceptedMeals is what a number of meals, feeds or bowls has to be.
const acceptedMeals = "1 to 24 a day"

// Meal is one food of one meal.
type Meal struct {
	Number int          `json:"number"`      // from 1
	At     Clock        `json:"at,omitzero"` // of a Timetable that says so
	Food   string       `json:"food"`
	Count  int64        `json:"count"` // steps of the scale
	Mass   units.Mass   `json:"mass"`
	Energy units.Energy `json:"energy"`
}

// Meals rounds the day once to the step of a scale and splits it into n meals,
// 1 to 24: food by food within a meal, meal after meal. The counts of each
// food add up to its day exactly, each is less than one step from its exact
// share, and the odd steps go to the earliest meals. Treats are given outside
// meals, and are in none. A food of fewer steps than meals has rows of 0 g.
//
// What the scale does to the meals is said by [Weighed.Cautions]: to show it, take
// On, then Meals and Cautions of the [Weighed].
func (r Ration) Meals(n int, step units.Mass) ([]Meal, error) {
	return r.AppendMeals(nil, n, step)
}

// AppendMeals is Meals, appended to dst. It allocates nothing where dst has
// room. On an error dst is returned as it was.
func (r Ration) AppendMeals(dst []Meal, n int, step units.Mass) ([]Meal, error) {
	w, err := r.On(step)
	if err != nil {
		return dst, err
	}
	return w.AppendMeals(dst, n)
}

// Meals splits the weighed day into n meals, 1 to 24.
func (w Weighed) Meals(n int) ([]Meal, error) { return w.AppendMeals(nil, n) }

// AppendMeals is Meals, appended to dst. It allocates nothing where dst has
// room. On an error dst is returned as it was.
func (w Weighed) AppendMeals(dst []Meal, n int) ([]Meal, error) {
	if n < 1 || n > MaxMeals {
		return dst, &units.FieldError{
			Package: "portion", Field: "meals", Value: strconv.Itoa(n), Accepted: acceptedMeals,
		}
	}
	if w.ration.n == 0 {
		return dst, noRation()
	}
	for number := range n {
		for i := range w.ration.n {
			if w.ration.menu[i].Treat {
				continue
			}
			p := &w.ration.parts[i]
			count := share(w.counts[i], n, number)
			m := w.scale.mass(count)
			dst = append(dst, Meal{Number: number + 1, Food: w.ration.menu[i].Food.Name, Count: count, Mass: m, Energy: p.density.Energy.Energy(m)})
		}
	}
	return dst, nil
}

// share returns the steps of one meal of n, numbered from 0.
func share(day int64, n, number int) int64 {
	s := day / int64(n)
	if int64(number) < day%int64(n) {
		s++
	}
	return s
}

// kcal writes an energy for a reader.
func kcal(e units.Energy) string { return strconv.FormatFloat(e.Kilocalories(), 'f', 1, 64) + " kcal" }

// massText is m as text, also where m is no number.
func massText(m units.Mass) string {
	if math.IsNaN(float64(m)) || math.IsInf(float64(m), 0) {
		return "not a finite number"
	}
	return m.String()
}

// trimmed writes an exact mass for a reader.
func trimmed(m units.Mass) string {
	return strconv.FormatFloat(m.Grams(), 'f', 2, 64) + " g"
}

// unfit is the refusal of one field.
func unfit(field, value, accepted, hint string) error {
	return &units.FieldError{Package: "portion", Field: field, Value: value, Accepted: accepted, Hint: hint}
}
