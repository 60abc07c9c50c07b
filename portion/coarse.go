package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// A meal of fewer steps than this is told as coarse. OIML R 76-1 sets the
// minimum capacity of an ordinary scale at 20 scale intervals; half a step is
// then 2.5 %. From the second limit, 5 %, it is a warning (ours).
const (
	minSteps  = 20
	warnSteps = 10
)

var sourceMinimum = advice.Source{
	Work: "OIML R 76-1, Non-automatic weighing instruments", Where: "minimum capacity 20 e, as a guide for a kitchen scale", Seen: advice.Memory,
}

// A day that is off by more than these is said: ours. From the second on, the
// scale must not be used for it.
const (
	warnDay  = 0.025
	referDay = 0.10
)

// scaleCautions says what the scale does to the day and to so many meals.
func (w *Weighed) scaleCautions(meals int) []advice.Caution {
	var c []advice.Caution
	for i := range w.ration.n {
		if w.ration.counted(i) {
			continue
		}
		exact, weighed := w.ration.parts[i].mass, w.mass(i)
		if off := w.off(i); math.Abs(off) > warnDay {
			c = append(c, advice.Caution{
				Level: w.offLevel(i), Source: ours,
				Text: "the " + w.scale.step.String() + " scale makes " + weighed.String() + " of " + w.ration.menu[i].Food.Name +
					" out of " + trimmed(exact) + " a day, " + signed(100*off) + " %: " + finer(exact, w.scale.step),
			})
		}
		given := meals
		if w.ration.menu[i].Treat {
			given = 1
		}
		if s, ok := w.scaleCaution(i, given); ok {
			c = append(c, s)
		}
	}
	return c
}

// off returns the error of the weighed day of a food, as a fraction of the exact
// one.
func (w *Weighed) off(i int) float64 {
	return float64(w.mass(i)/w.ration.parts[i].mass) - 1
}

// offLevel says how much the error of a food weighs: by what it is of the day's
// energy, which is all the energy in a menu of one food.
func (w *Weighed) offLevel(i int) advice.Level {
	switch off := math.Abs(w.off(i)) * float64(w.ration.parts[i].energy/w.Target()); {
	case off > referDay:
		return advice.Refer
	case off > warnDay:
		return advice.Warn
	}
	return advice.Note
}

// signed writes x to one decimal with its sign.
func signed(x float64) string {
	s := strconv.FormatFloat(x, 'f', 1, 64)
	if x > 0 {
		s = "+" + s
	}
	return s
}

// scaleCaution says where the scale is too coarse for a meal of the i-th food,
// by how much and what helps.
func (w *Weighed) scaleCaution(i, meals int) (advice.Caution, bool) {
	day := w.counts[i]
	least := day / int64(meals) // the smallest meal
	if least >= minSteps {
		return advice.Caution{}, false
	}
	food := w.ration.menu[i].Food.Name
	step := w.scale.step.String()
	c := advice.Caution{Level: advice.Note, Source: sourceMinimum}
	if least < warnSteps {
		c.Level = advice.Warn
	}
	remedy := finer(w.scale.mass(least), w.scale.step)
	if meals > 1 && math.Abs(w.off(i)) <= warnDay {
		remedy += ", or weigh the day's " + w.scale.mass(day).String() + " once and divide it"
	}
	if least == 0 {
		c.Text = "some of the " + strconv.Itoa(meals) + " meals get no " + food + " on a " + step + " scale: " + remedy + ", or feed fewer meals"
		return c, true
	}
	c.Text = "a " + step + " scale is coarse for " + w.scale.mass(least).String() + " of " + food +
		": half a step is " + strconv.FormatFloat(50/float64(least), 'f', 1, 64) + " % of it: " + remedy
	return c, true
}

// finer names a scale that would do.
func finer(meal, step units.Mass) string {
	for _, s := range [...]units.Mass{units.Gram, units.Gram / 10} {
		if s < step && meal >= minSteps*s {
			return "use a " + s.String() + " scale"
		}
	}
	return "use a finer scale"
}
