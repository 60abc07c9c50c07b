package portion

import (
	"math"

	"example.org/bowlgram/units"
)

// Scale is a scale as its plate describes it: what it shows and what it holds.
// It is comparable. The zero value is no scale.
type Scale struct {
	// Step is its readability, the smallest change that it shows: 1 mg to 1 kg
	// and a number of grams with at most nine decimals.
	Step units.Mass `json:"step"`
	// Capacity is the most that it holds, the bowl included, 20 steps or more.
	// Zero: not known, so that no load is too much.
	Capacity units.Mass `json:"capacity,omitzero"`
}

const acceptedStep = "1 mg to 1 kg, as in 0.1 g, 1 g or 5 g"

// Validate reports what is wrong with s: a [*units.FieldError], or a
// [units.ErrorList] of both.
func (s Scale) Validate() error { return s.faults(nil).Err() }

func (s Scale) faults(errs units.ErrorList) units.ErrorList {
	if _, ok := newScale(s.Step); !ok {
		errs = append(errs, refuseStep(s.Step))
	}
	if c := s.Capacity; c != 0 && !(c >= minSteps*s.Step && c < math.MaxFloat64) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "scale capacity", Value: massText(c),
			Accepted: "20 steps or more, or none if not known", Hint: "step and capacity mixed up?",
		})
	}
	return errs
}

// HalfStep returns the most that rounding to a step can be off.
func (s Scale) HalfStep() units.Mass { return s.Step / 2 }

// Uncertainty returns the standard uncertainty of one reading, which the step
// brings: step/√12, 0.29 g for 1 g (JCGM 100:2008, F.2.2.1). It holds for a
// scale that is right; check it with a known mass.
func (s Scale) Uncertainty() units.Mass { return s.Step / units.Mass(math.Sqrt(12)) }

// LeastLoad returns 20 steps. It is the minimum capacity of a class III scale
// (OIML R 76-1, Table 3), where half a step is 2.5 %: a guide for a kitchen
// scale, which is not verified.
func (s Scale) LeastLoad() units.Mass { return minSteps * s.Step }

// tareRepeat is the least standard deviation of a reading less its tare, in
// steps. USP <41>: from memory; 820 steps at 0.10 %, as quoted by a maker of
// balances, is 2 × 0.41 / 0.001. Two readings alone give √(2/12), 0.408.
const tareRepeat = 0.41

// LeastFor returns the least load whose reading less its tare is within a
// tolerance 19 times in 20: 2 × 0.41 steps ÷ tolerance, the rule of USP <41> for balances,
// which has a tolerance of 0.10 %, carried to another one; a repeatability
// worse than the step asks for more. It is 16.4 g at 5 % on a scale that shows
// 1 g. A tolerance is from 0.01 % to 50 % (ours).
func (s Scale) LeastFor(tolerance units.Percent) (units.Mass, error) {
	errs := s.faults(nil)
	if !(0.01 <= tolerance && tolerance <= 50) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "tolerance", Value: percentValue(tolerance), Accepted: "0.01 % to 50 %",
		})
	}
	if len(errs) > 0 {
		return 0, errs.Err()
	}
	return units.Mass(2*tareRepeat*100/float64(tolerance)) * s.Step, nil
}

// percentValue is p as text, also where p is no number.
func percentValue(p units.Percent) string {
	if math.IsNaN(float64(p)) || math.IsInf(float64(p), 0) {
		return "not a finite number"
	}
	return p.String()
}
