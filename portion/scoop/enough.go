package scoop

import (
	"math"
	"sort"

	"example.org/bowlgram/units"
)

// mostWeighings is the most that anybody is told to do: ours.
const mostWeighings = 10000

// Enough returns how many weighings in all, at least 3, make the interval of the mean
// no wider than ± within, in percent of the mean, above 0 % and below 100 %, at a level of confidence. It
// takes the spread to stay as it is; with few weighings that is itself
// uncertain, so that a plan of that many is looked at again when it is done.
//
// Where not even 10,000 weighings are enough, which a coarse scale can bring
// about, the [*units.FieldError] says what they reach.
func (c Calibration) Enough(within, level units.Percent) (int, error) {
	errs := checkLevel(c.faults(), level)
	if !(0 < within && within < 100) {
		errs = append(errs, fault("within", within.String(), "above 0 % to less than 100 %", ""))
	}
	if len(errs) > 0 {
		return 0, errs.Err()
	}
	reached := func(n int) units.Percent {
		return units.Percent(100 * c.ofMeanOf(n).half(level) / c.Mean)
	}
	if best := reached(mostWeighings); best > within {
		hint := "the spread of the cup is too wide"
		if fromScale(c.Readability).square > c.fromScatter(1.0/mostWeighings).square {
			hint = "the steps of the scale are too coarse"
		}
		best = units.Percent(math.Ceil(float64(best)*1000) / 1000)
		return 0, fault("within", within.String(), best.String()+" or more, which 10000 weighings reach", hint)
	}
	return leastWeighings + sort.Search(mostWeighings, func(i int) bool {
		return reached(leastWeighings+i) <= within
	}), nil
}
