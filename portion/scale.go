package portion

import (
	"math"

	"example.org/bowlgram/units"
)

// scale is a step of a scale as a whole number of parts of ten: num/den gram.
// Counts of steps are turned into masses by it with one rounding.
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

// maxCount keeps every product of steps exact in a float64.
const maxCount = 1 << 53

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

// count returns the number of steps nearest to m, a half away from zero. It is
// the only rounding of the package.
func (s scale) count(m units.Mass) int64 {
	return int64(math.Round(float64(m) * s.den / s.num))
}

// fits reports whether count steps are an exact product.
func (s scale) fits(m units.Mass) bool { return float64(m)*s.den < maxCount }

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
