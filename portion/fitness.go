package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Fitness says how well a scale weighs a day's food and its meals. It is
// comparable. The zero value is none.
type Fitness struct {
	Food  string // "" where not known
	Scale Scale
	Meals int        // a day; a treat is given once
	Exact units.Mass // the day's food, unrounded
	Day   units.Mass // the day as the scale weighs it
	Meal  units.Mass // the smallest meal of it; 0 where some get nothing
	Grade Grade      // of the smallest meal
	// Finer is the step of a usual scale, 1 g or 0.1 g, on which the smallest
	// meal would be 20 steps or more. It is 0 where none is needed, and where
	// it takes a finer one than these.
	Finer units.Mass
	// DayOnce says that it helps to weigh the day once and divide it: the day is
	// 20 steps or more and rounded by at most 2.5 %.
	DayOnce bool
}

// Fitness returns how well s weighs a day's food in so many meals, 1 to 24.
// The day is rounded to the nearest step and divided as [Ration.Meals] does.
//
// All faults come back at once. A day of less than half a step is a
// [*ScaleError]. The day is at most 20 kg, as in [Weigh].
func (s Scale) Fitness(day units.Mass, meals int) (Fitness, error) {
	errs := checkMeals(s.faults(nil), meals)
	if !(day > 0 && day <= maxMass) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "day", Value: massText(day), Accepted: "above 0 g and at most " + maxMass.String(),
		})
	}
	if len(errs) > 0 {
		return Fitness{}, errs.Err()
	}
	steps, _ := newScale(s.Step)
	n := steps.count(day)
	if n == 0 {
		return Fitness{}, &ScaleError{Food: "food", Mass: day, Step: s.Step}
	}
	return fitness("", s, steps, day, n, meals), nil
}

// Fitness returns how well the scale weighs the i-th food in so many meals, 1
// to 24. A treat is given once, whatever the meals. Counted pieces need no
// scale and are refused. It panics where i is not below Len, as a slice does.
func (w Weighed) Fitness(i, meals int) (Fitness, error) {
	if err := w.checkFood(i, meals).Err(); err != nil {
		return Fitness{}, err
	}
	return w.fitness(i, meals), nil
}

// checkFood refuses what no bowl of the i-th food can be told for.
func (w *Weighed) checkFood(i, meals int) units.ErrorList {
	errs := checkMeals(nil, meals)
	if w.ration.n == 0 {
		return append(errs, noRation())
	}
	if item := &w.ration.menu[:w.ration.n][i]; w.ration.counted(i) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "food", Value: item.Food.Name, Accepted: "a food that is weighed",
			Hint: "a treat in whole pieces is counted",
		})
	}
	return errs
}

func checkMeals(errs units.ErrorList, meals int) units.ErrorList {
	if 1 <= meals && meals <= MaxMeals {
		return errs
	}
	return append(errs, &units.FieldError{
		Package: "portion", Field: "meals", Value: strconv.Itoa(meals), Accepted: acceptedMeals,
	})
}

func noRation() error {
	return &units.FieldError{Package: "portion", Field: "ration", Accepted: "a ration from Weigh", Hint: "its error was not looked at?"}
}

// given returns in how many parts the i-th food is given a day: a treat at once.
func (w *Weighed) given(i, meals int) int {
	if w.ration.menu[i].Treat {
		return 1
	}
	return meals
}

func (w *Weighed) fitness(i, meals int) Fitness {
	return fitness(w.ration.menu[i].Food.Name, Scale{Step: w.scale.step}, w.scale, w.ration.parts[i].mass, w.counts[i], w.given(i, meals))
}

// fitness is that of n steps for exact, in so many meals of one size.
func fitness(food string, s Scale, steps scale, exact units.Mass, n int64, meals int) Fitness {
	return fitnessOfMeals(food, s, steps, exact, n, meals, n/int64(meals), exact/units.Mass(meals))
}

// fitnessOfMeals is that of meals of which the smallest is least steps, and
// exactly smallest.
func fitnessOfMeals(food string, s Scale, steps scale, exact units.Mass, n int64, meals int, least int64, smallest units.Mass) Fitness {
	f := Fitness{Food: food, Scale: s, Meals: meals, Exact: exact, Day: steps.mass(n), Meal: steps.mass(least)}
	most := steps.mass(share(n, meals, 0))
	switch {
	case s.Capacity > 0 && most > s.Capacity:
		f.Grade = Overload
		return f
	case least == 0:
		f.Grade = Nothing
	case least < warnSteps:
		f.Grade = TooCoarse
	case least < minSteps:
		f.Grade = Coarse
	default:
		f.Grade = Fits
		return f
	}
	f.Finer = finer(smallest, s.Step)
	// A day of 20 steps that gets here is of two meals or more.
	f.DayOnce = n >= minSteps && math.Abs(float64(f.Off())) <= 100*warnDay &&
		(s.Capacity == 0 || f.Day <= s.Capacity)
	return f
}

// finer returns the step of a usual scale on which a meal is 20 steps or more,
// or 0.
func finer(meal, step units.Mass) units.Mass {
	for _, s := range [...]units.Mass{units.Gram, units.Gram / 10} {
		if s < step && meal >= minSteps*s {
			return s
		}
	}
	return 0
}

// Off returns how far the weighed day is from the exact one, in percent: a
// known change, not an uncertainty. It is 0 for the zero Fitness.
func (f Fitness) Off() units.Percent { return percentOf(f.Day-f.Exact, f.Exact) }

// HalfStepOfMeal returns half a step in percent of the smallest meal: the most
// that its rounding can be off. It is 0 where there is no such meal.
func (f Fitness) HalfStepOfMeal() units.Percent { return percentOf(f.Scale.HalfStep(), f.Meal) }

// HalfStepOfDay returns half a step in percent of the day, weighed once.
func (f Fitness) HalfStepOfDay() units.Percent { return percentOf(f.Scale.HalfStep(), f.Day) }

// Uncertainty returns the relative standard uncertainty that the step brings to
// the smallest meal. It is 0 where there is no such meal.
func (f Fitness) Uncertainty() units.Percent { return percentOf(f.Scale.Uncertainty(), f.Meal) }

func percentOf(part, whole units.Mass) units.Percent {
	if whole == 0 {
		return 0
	}
	return units.Percent(100 * part / whole)
}

// Remedy says what helps, or "" where nothing is needed.
func (f Fitness) Remedy() string {
	switch f.Grade {
	case 0, Fits:
		return ""
	case Overload:
		return "weigh it in parts"
	}
	text := useFiner(f.Finer)
	if f.DayOnce {
		text += ", or weigh the day's " + f.Day.String() + " once and divide it"
	}
	if f.Grade == Nothing {
		text += ", or feed fewer meals"
	}
	return text
}

// useFiner names a scale that would do.
func useFiner(step units.Mass) string {
	if step == 0 {
		return "use a finer scale"
	}
	return "use a " + step.String() + " scale"
}

// Caution returns what is to be said of the scale, and false where it fits.
func (f Fitness) Caution() (advice.Caution, bool) {
	level := f.Grade.level()
	if level == 0 {
		return advice.Caution{}, false
	}
	food, step := f.Food, f.Scale.Step.String()
	if food == "" {
		food = "food"
	}
	c := advice.Caution{Level: level, Source: sourceMinimum}
	switch f.Grade {
	case Overload:
		c.Source = ours
		c.Text = f.Day.String() + " of " + food
		if f.Meals > 1 {
			c.Text = "a meal of " + c.Text + " a day in " + strconv.Itoa(f.Meals)
		}
		c.Text += " is more than the " + f.Scale.Capacity.String() + " that the scale holds with its bowl"
	case Nothing:
		c.Text = "some of the " + strconv.Itoa(f.Meals) + " meals get no " + food + " on a " + step + " scale"
	default:
		c.Text = "a " + step + " scale is coarse for " + f.Meal.String() + " of " + food +
			": half a step is " + oneDecimal(f.HalfStepOfMeal()) + " of it"
	}
	c.Text += ": " + f.Remedy()
	return c, true
}

// oneDecimal writes a percentage for a reader.
func oneDecimal(p units.Percent) string { return strconv.FormatFloat(float64(p), 'f', 1, 64) + " %" }
