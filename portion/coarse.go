package portion

import (
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

// scaleCaution says where the scale is too coarse for a meal of the i-th food,
// by how much and what helps.
func (w Weighed) scaleCaution(i, meals int) (advice.Caution, bool) {
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
	if meals > 1 {
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
