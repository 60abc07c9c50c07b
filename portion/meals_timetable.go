package portion

import (
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Mealtime is one meal of a [Timetable]. The zero value is a meal at no set
// time, as large as any other, of every food.
type Mealtime struct {
	At Clock `json:"at,omitzero"` // all of a timetable have one, or none has
	// Parts is how large the meal is beside the others: 2 and 1 give two thirds
	// and one third, 60 and 40 give percentages. Zero is 1; at most 1,000,000.
	// Of a food that is not in every meal only the meals that have it count.
	Parts int `json:"parts,omitzero"`
	// Foods are the names of those in this meal: wet in the morning, dry at
	// night. None: every food of the menu.
	Foods []string `json:"foods,omitempty"`
}

// UnmarshalJSON reads a mealtime. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves m as it was.
func (m *Mealtime) UnmarshalJSON(data []byte) error {
	type plain Mealtime
	return strictjson.Record("portion", "mealtime", data, func(p plain) { *m = Mealtime(p) })
}

// Timetable is the meals of a day, in the order they are given in: at most
// [MaxMeals]. It may go past midnight once. The nil timetable has no meals and is
// refused.
type Timetable []Mealtime

// maxParts is the largest part of a meal; ours. A million allows percentages to
// four decimals.
const maxParts = 1_000_000

// Serve splits the weighed day by a timetable: food by food within a meal, meal
// after meal. A meal has a row for each food that is given in it. The counts of
// each food add up to its day exactly and each is less than one step from its
// exact share of the weighed day: whole steps are given first, and those that are
// left go one each to the meals with the largest remainders, the earlier one of
// two that are equal (Hamilton's method; the rule for equal ones is ours). With equal parts that is
// what [Weighed.Meals] gives. Treats are given outside meals.
//
// Every fault of the timetable comes back at once, as [*units.FieldError]: a
// food that the menu doesn't have, or that is a treat or in no meal, parts out
// of range, and times that are not in the order of the day.
func (w Weighed) Serve(t Timetable) ([]Meal, error) {
	if w.ration.n == 0 {
		return nil, noRation()
	}
	if errs := t.check(&w); len(errs) > 0 {
		return nil, errs.Err()
	}
	var counts [len(Ration{}.parts)][MaxMeals]int64
	for i := range w.ration.n {
		if !w.ration.menu[i].Treat {
			w.apportion(t, i, &counts[i])
		}
	}
	meals := make([]Meal, 0, len(t)*w.ration.n)
	for j := range t {
		for i := range w.ration.n {
			item := &w.ration.menu[i]
			if item.Treat || t[j].partsOf(item.Food.Name) == 0 {
				continue
			}
			m := w.scale.mass(counts[i][j])
			meals = append(meals, Meal{
				Number: j + 1, At: t[j].At, Food: item.Food.Name, Count: counts[i][j],
				Mass: m, Energy: w.ration.parts[i].density.Energy.Energy(m),
			})
		}
	}
	return meals, nil
}

// apportion splits the i-th food by a timetable and returns its parts.
func (w *Weighed) apportion(t Timetable, i int, counts *[MaxMeals]int64) (parts [MaxMeals]uint64) {
	for j := range t {
		parts[j] = t[j].partsOf(w.ration.menu[i].Food.Name)
	}
	apportion(uint64(w.counts[i]), parts[:len(t)], counts[:len(t)])
	return parts
}

// served returns how the scale fits the i-th food in the meals of a timetable.
func (w *Weighed) served(t Timetable, i int) Fitness {
	if w.ration.menu[i].Treat {
		return w.fitness(i, len(t)) // at once, however many there are
	}
	var counts [MaxMeals]int64
	parts := w.apportion(t, i, &counts)
	var meals int
	var sum, fewest uint64
	var least int64
	for j, p := range parts {
		if p == 0 {
			continue
		}
		if meals == 0 || p < fewest {
			fewest = p
		}
		if meals == 0 || counts[j] < least {
			least = counts[j]
		}
		meals++
		sum += p
	}
	exact := w.ration.parts[i].mass
	return fitnessOfMeals(w.ration.menu[i].Food.Name, Scale{Step: w.scale.step}, w.scale, exact, w.counts[i],
		meals, least, exact*units.Mass(fewest)/units.Mass(sum))
}

// partsOf returns the parts of a food in the meal, 0 where it is not in it.
func (m *Mealtime) partsOf(food string) uint64 {
	switch {
	case len(m.Foods) > 0 && !slices.Contains(m.Foods, food):
		return 0
	case m.Parts == 0:
		return 1
	}
	return uint64(m.Parts)
}

// check returns what is wrong with t for the foods of w.
func (t Timetable) check(w *Weighed) units.ErrorList {
	var errs units.ErrorList
	if len(t) < 1 || len(t) > MaxMeals {
		return append(errs, unfit("timetable", strconv.Itoa(len(t))+" meals", acceptedMeals, ""))
	}
	var meals []string // that menu foods are given in
	for i := range w.ration.n {
		if item := &w.ration.menu[i]; !item.Treat {
			meals = append(meals, item.Food.Name)
		}
	}
	for j := range t {
		field := "timetable[" + strconv.Itoa(j) + "]"
		if p := t[j].Parts; p < 0 || p > maxParts {
			errs = append(errs, unfit(field+".parts", strconv.Itoa(p), "1 to 1000000, or 0 for 1", ""))
		}
		for k, food := range t[j].Foods {
			switch {
			case slices.Contains(t[j].Foods[:k], food):
				errs = append(errs, unfit(field+".foods", food, "each food once", ""))
			case !slices.Contains(meals, food):
				hint := ""
				if w.isTreat(food) {
					hint = "it is a treat, given outside meals"
				}
				errs = append(errs, unfit(field+".foods", food, strings.Join(meals, ", "), hint))
			}
		}
	}
	for k, food := range meals {
		given := slices.Contains(meals[:k], food) // said of the first of that name
		for j := range t {
			given = given || t[j].partsOf(food) > 0
		}
		if !given {
			errs = append(errs, unfit("timetable", "no meal with "+food, "every food of the menu in a meal", ""))
		}
	}
	return t.checkTimes(errs)
}

func (w *Weighed) isTreat(food string) bool {
	for i := range w.ration.n {
		if item := &w.ration.menu[i]; item.Treat && item.Food.Name == food {
			return true
		}
	}
	return false
}

// checkTimes adds what is wrong with the times of t.
func (t Timetable) checkTimes(errs units.ErrorList) units.ErrorList {
	timed, sound := 0, true
	for j := range t {
		if !t[j].At.IsZero() {
			timed++
		}
		if !t[j].At.isValid() {
			errs = append(errs, unfit("timetable["+strconv.Itoa(j)+"].at", "out of range", clockForm, ""))
			sound = false
		}
	}
	switch {
	case timed == 0 || !sound:
		return errs
	case timed < len(t):
		return append(errs, unfit("timetable", strconv.Itoa(timed)+" of "+strconv.Itoa(len(t))+" meals with a time", "a time for each meal, or for none", ""))
	}
	// Minutes from the first meal must rise, past midnight too.
	before := 0
	for j := 1; j < len(t); j++ {
		since := t[j].At.since(t[0].At)
		if since <= before {
			errs = append(errs, unfit("timetable["+strconv.Itoa(j)+"].at", t[j].At.String(),
				"after "+t[j-1].At.String()+" and before "+t[0].At.String()+" of the next day", "meals are in the order they are given in"))
			return errs
		}
		before = since
	}
	return errs
}

// since returns the minutes from d to c, over midnight where c is earlier.
func (c Clock) since(d Clock) int {
	return (int(c.minute) - int(d.minute) + minutesOfDay) % minutesOfDay
}

// LongestGap returns the longest time between two meals in minutes, that from
// the last meal to the first of the next day too, and false where the meals have
// no times.
func (t Timetable) LongestGap() (minutes int, ok bool) {
	if len(t) == 0 || len(t.checkTimes(nil)) > 0 || t[0].At.IsZero() {
		return 0, false
	}
	for j := range t {
		gap := t[(j+1)%len(t)].At.since(t[j].At)
		if gap == 0 { // one meal a day
			gap = minutesOfDay
		}
		minutes = max(minutes, gap)
	}
	return minutes, true
}

// TimetableCautions is [Weighed.Cautions] for the meals of a timetable, with what
// is to be said of their number. The scale is judged by the smallest meal of each
// food; one that the timetable gives and the scale leaves empty is a warning. It
// is nil where Serve fails.
func (w Weighed) TimetableCautions(t Timetable) []advice.Caution {
	if w.ration.n == 0 || len(t.check(&w)) > 0 {
		return nil
	}
	c := append(w.ration.Cautions(), w.scaleCautions(func(i int) Fitness { return w.served(t, i) })...)
	c = appendFrequency(c, &w.ration, len(t))
	advice.Sort(c)
	return c
}
