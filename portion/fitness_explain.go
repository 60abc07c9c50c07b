package portion

import (
	"fmt"
	"strings"

	"example.org/bowlgram/energy/advice"
)

var sourceStep = advice.Source{
	Work: "JCGM 100:2008, Guide to the expression of uncertainty in measurement", Where: "F.2.2.1: step/√12", Seen: advice.Primary,
}

// Explain returns how the scale fits, line by line, so that it can be redone
// with a pencil. Figures in it are rounded for reading. It is "" for the zero
// Fitness and where the scale is none.
func (f Fitness) Explain() string {
	if f.Grade.String() == "" || f.Scale.Validate() != nil || f.Meals < 1 {
		return ""
	}
	var b strings.Builder
	step := f.Scale.Step
	off := signed(float64(f.Off()))
	fmt.Fprintf(&b, "day       %s is %s on a %s scale, %s %%\n", exactFood(f), f.Day, step, off)
	fmt.Fprintf(&b, "load      %s\n", f.load())
	rounding := "half a step, " + number(f.Scale.HalfStep().Grams()) + " g, is "
	uncertain := "standard uncertainty " + number(step.Grams()) + " g ÷ √12 = " + threePlaces(f.Scale.Uncertainty().Grams()) + " g"
	if f.Meal > 0 {
		rounding += oneDecimal(f.HalfStepOfMeal()) + " of that"
		uncertain += ", " + oneDecimal(f.Uncertainty())
		if f.Meals > 1 {
			rounding += " and " + oneDecimal(f.HalfStepOfDay()) + " of the day"
		}
	} else {
		rounding += oneDecimal(f.HalfStepOfDay()) + " of the day"
	}
	fmt.Fprintf(&b, "rounding  %s\n", rounding)
	fmt.Fprintf(&b, "uncertain %s\n", uncertain)
	fmt.Fprintf(&b, "source    %s\n", sourceStep)
	fmt.Fprintf(&b, "guide     20 steps, %s, are the least load of a class III scale, where half a step is 2.5 %%\n", f.Scale.LeastLoad())
	fmt.Fprintf(&b, "source    %s\n", sourceMinimum)
	if remedy := f.Remedy(); remedy != "" {
		fmt.Fprintf(&b, "remedy    %s\n", remedy)
	} else {
		b.WriteString("remedy    none needed: the scale fits\n")
	}
	return b.String()
}

func exactFood(f Fitness) string {
	if f.Food == "" {
		return trimmed(f.Exact)
	}
	return trimmed(f.Exact) + " of " + f.Food
}

// load names what is put on the scale.
func (f Fitness) load() string {
	switch {
	case f.Meals == 1:
		return f.Meal.String() + ", at once"
	case f.Meal == 0:
		return fmt.Sprintf("some of the %d meals are less than a step", f.Meals)
	}
	return fmt.Sprintf("%s, the smallest of %d meals", f.Meal, f.Meals)
}

// threePlaces writes x with at most three decimals, without trailing zeros.
func threePlaces(x float64) string {
	s := fmt.Sprintf("%.3f", x)
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}
