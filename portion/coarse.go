package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
)

// A meal of fewer steps than this is told as coarse. OIML R 76-1 sets the
// minimum capacity of a class III scale at 20 scale intervals; half a step is
// then 2.5 %. From the second limit, 5 %, it is a warning (ours).
const (
	minSteps  = 20
	warnSteps = 10
)

var sourceMinimum = advice.Source{
	Work: "OIML R 76-1, Non-automatic weighing instruments", Where: "Table 3: minimum capacity 20 e in class III, as a guide for a kitchen scale", Seen: advice.Secondary,
}

// A day that is off by more than these is said: ours. From the second on, the
// scale must not be used for it.
const (
	warnDay  = 0.025
	referDay = 0.10
)

// scaleCautions says what the scale does to the day and to the meals of each
// food, given how it fits those.
func (w *Weighed) scaleCautions(fitness func(i int) Fitness) []advice.Caution {
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
					" out of " + trimmed(exact) + " a day, " + signed(100*off) + " %: " + useFiner(finer(exact, w.scale.step)),
			})
		}
		if s, ok := fitness(i).Caution(); ok {
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
	switch off := math.Abs(w.off(i)) * float64(w.ration.parts[i].energy/w.ration.need.Daily); {
	case off > referDay:
		return advice.Refer
	case off > warnDay:
		return advice.Warn
	}
	return advice.Note
}

// signed writes x to one decimal with its sign, and 0.0 without.
func signed(x float64) string {
	s := strconv.FormatFloat(x, 'f', 1, 64)
	switch {
	case s == "-0.0":
		return "0.0"
	case x > 0 && s != "0.0":
		return "+" + s
	}
	return s
}
