package portion

import (
	"math"

	"example.org/bowlgram/units"
)

// scale is a step of a scale as a whole number of parts of ten: num/den gram.
// Counts of steps are turned into masses by it with one rounding: their products
// are whole numbers that a float64 holds. A day is at most 20 kg. The rest of a
// menu is more where seven foods are rounded down by half a step of 1 kg each, at
// most 9400 kcal/kg, and leave it to a food of at least 10 kcal/kg: 3300 kg, which
// in parts of nine decimals is 3.3e15, below 2^53.
type scale struct {
	step     units.Mass
	num, den float64
}

// Limits of a step. Kitchen and laboratory scales lie well within.
const (
	minStep = units.Milligram
	maxStep = units.Kilogram
)

// maxDen is the finest decimal that a step may be given to, in grams: enough
// for the ounce, which has nine decimals.
const maxDen = 1e9

// newScale returns the scale of a step, and false for a step out of range or
// one that is no decimal of at most nine places.
func newScale(step units.Mass) (scale, bool) {
	if !(minStep <= step && step <= maxStep) {
		return scale{}, false
	}
	for den := 1.0; den <= maxDen; den *= 10 {
		if num := math.Round(float64(step) * den); num/den == float64(step) {
			return scale{step, num, den}, true
		}
	}
	return scale{}, false
}

// refuseStep says what is wrong with a step that newScale doesn't take.
func refuseStep(step units.Mass) error {
	hint := ""
	if minStep <= step && step <= maxStep {
		hint = tooFine
	}
	return unfit("scale step", massText(step), acceptedStep, hint)
}

// tooFine is what is wrong with a step or a mark in range.
const tooFine = "it has more than nine decimals: what does the scale or the syringe show?"

// count returns the number of steps nearest to m, a half away from zero. It is
// the only rounding of the package.
func (s scale) count(m units.Mass) int64 {
	return int64(math.Round(float64(m) * s.den / s.num))
}

// mass returns the mass of n steps, the float64 nearest to the decimal.
func (s scale) mass(n int64) units.Mass { return units.Mass(float64(n) * s.num / s.den) }

// ScaleError refuses a food that is too little for the scale: half a step or
// more would be off by all of it.
type ScaleError struct {
	Food string
	Mass units.Mass // the exact mass for the day
	Step units.Mass // of the scale
}

// Error returns the refusal with its remedy.
func (e *ScaleError) Error() string {
	return "portion: " + trimmed(e.Mass) + " of " + e.Food + " a day is less than half a step of a " +
		e.Step.String() + " scale: want a finer scale"
}
