package scoop

import (
	"math"
	"strconv"

	"example.org/bowlgram/units"
)

// Limits, ours: as far as the cups, scoops and scales of feeding go.
const (
	leastWeighings = 3
	mostN          = 1000000
	mostPeople     = 1000
	leastMass      = units.Milligram
	mostMass       = 25 * units.Kilogram // a sack
	leastStep      = units.Milligram
	mostStep       = units.Kilogram
	mostScoops     = 1000
	leastLevel     = 50
	mostLevel      = 99.999
	mostSpread     = mostMass * mostN // of anything that is computed from such masses
)

// Weighings that differ by less than leastSpread are equal but for the last bits of
// their conversion. leastSD keeps the square of a standard deviation in range.
const (
	leastSpread = 1e-9 * units.Gram
	leastSD     = 1e-15 * units.Gram
)

// A weighing must be nearer than whole, in steps, to a whole number of them: a unit that isn't metric
// costs a rounding. The least mass is whole of the greatest step, so that no weighing passes for
// no step at all.
const whole = 1e-6

// fault returns the refusal of a field.
func fault(field, value, accepted, hint string) *units.FieldError {
	return &units.FieldError{Package: "scoop", Field: field, Value: value, Accepted: accepted, Hint: hint}
}

func isMass(m units.Mass) bool { return leastMass <= m && m <= mostMass }

func isStep(m units.Mass) bool { return m == 0 || leastStep <= m && m <= mostStep }

const (
	acceptedMass = "1 mg to 25 kg"
	acceptedStep = "the step of the scale, 1 mg to 1 kg, or 0 g to leave it out"
	acceptedN    = "3 to 1000000"
)

// checkWeighings returns every fault of what a calibration is made from.
func checkWeighings(weighings []units.Mass, readability units.Mass) error {
	var errs units.ErrorList
	if n := len(weighings); n < leastWeighings || n > mostN {
		errs = append(errs, fault("weighings", strconv.Itoa(n), acceptedN, ""))
	}
	for i, m := range weighings {
		if !isMass(m) {
			errs = append(errs, fault("weighing "+strconv.Itoa(i+1), m.String(), acceptedMass, ""))
		}
	}
	if !isStep(readability) {
		return append(errs, fault("readability", readability.String(), acceptedStep, "")).Err()
	}
	if readability == 0 {
		return errs.Err()
	}
	for i, m := range weighings {
		if !isMass(m) {
			continue
		}
		if steps := float64(m / readability); math.Abs(steps-math.Round(steps)) >= whole {
			errs = append(errs, fault("readability", readability.String(),
				"a step of which every weighing is a whole number", "weighing "+strconv.Itoa(i+1)+" is "+m.String()))
			break
		}
	}
	return errs.Err()
}

// Validate returns what is wrong with c, all faults at once, or nil. Every
// method that can fail starts with it.
func (c Calibration) Validate() error { return c.faults().Err() }

func (c Calibration) faults() units.ErrorList {
	var errs units.ErrorList
	if c.N < leastWeighings || c.N > mostN {
		errs = append(errs, fault("weighings", strconv.Itoa(c.N), acceptedN, ""))
	}
	if !isMass(c.Mean) {
		errs = append(errs, fault("mean", c.Mean.String(), acceptedMass, ""))
	}
	if !c.isSD() {
		errs = append(errs, fault("SD", c.SD.String(), "0 g to √n times the mean", ""))
	}
	if !isStep(c.Readability) {
		errs = append(errs, fault("readability", c.Readability.String(), acceptedStep, ""))
	}
	if len(errs) == 0 && c.SD == 0 && c.Readability == 0 {
		errs = append(errs, fault("readability", c.Readability.String(), "the step of the scale", "all weighings are equal, and it hides their spread"))
	}
	return c.checkEnds(errs)
}

// isSD reports whether a standard deviation is possible. No masses above zero
// have a greater one than √n means: that is where all but one are nothing. What
// is wrong with the mean and the number is said elsewhere.
func (c Calibration) isSD() bool {
	if c.SD == 0 {
		return true
	}
	most := mostMass
	if isMass(c.Mean) {
		most = c.Mean
	}
	return leastSD <= c.SD && c.SD <= most*units.Mass(math.Sqrt(float64(max(c.N, 1))))
}

// checkEnds adds the faults of the lowest and the highest weighing.
func (c Calibration) checkEnds(errs units.ErrorList) units.ErrorList {
	if c.Lowest == (Weighing{}) && c.Highest == (Weighing{}) {
		return errs
	}
	// The mean of equal weighings may differ from them in its last bit.
	const slack = 1e-9
	if w := c.Lowest; w.Number < 1 || w.Number > c.N || !isMass(w.Mass) || w.Mass > c.Mean*(1+slack) {
		errs = append(errs, fault("lowest weighing", w.text(), "one of the n, not above the mean", ""))
	}
	if w := c.Highest; w.Number < 1 || w.Number > c.N || !isMass(w.Mass) || w.Mass < c.Mean*(1-slack) {
		errs = append(errs, fault("highest weighing", w.text(), "one of the n, not below the mean", ""))
	}
	if len(errs) > 0 {
		return errs
	}
	if c.Lowest.Number == c.Highest.Number && c.Lowest.Mass != c.Highest.Mass {
		errs = append(errs, fault("highest weighing", c.Highest.text(), "another than the lowest", ""))
	}
	if least, most := c.rangeOfSD(slack); c.SD < least || most < c.SD {
		errs = append(errs, fault("SD", c.SD.String(), "one that goes with n, the mean, and "+c.Lowest.Mass.String()+" to "+c.Highest.Mass.String(), ""))
	}
	return errs
}

// rangeOfSD returns the least and the greatest standard deviation that n weighings with
// that mean, lowest and highest can have, with slack for the last bits of the
// mean and for weighings that count as equal. The last bits of the deviation itself
// are less than that, since none is above √n means.
//
// The least is that of two at the ends and all others between them, (h - l) / √(2 (n - 1)),
// and not less than that of one end and all others at one value, which is where G has its greatest
// value, (n - 1)/√n. The greatest is that of all weighings at either end, √((h - m) (m - l) n / (n - 1))
// (Bhatia, Davis, Am Math Monthly 2000;107:353-357, from memory).
func (c Calibration) rangeOfSD(slack units.Mass) (least, most units.Mass) {
	n := float64(c.N)
	bits := float64(slack * c.Mean)
	low, high := math.Max(0, float64(c.Mean-c.Lowest.Mass)), math.Max(0, float64(c.Highest.Mass-c.Mean))
	ends := float64(c.Highest.Mass-c.Lowest.Mass) / math.Sqrt(2*(n-1))
	one := math.Max(low, high) * math.Sqrt(n) / (n - 1)
	least = units.Mass(math.Max(ends, one)-bits) - leastSpread
	most = units.Mass(math.Sqrt((high + bits) * (low + bits) * n / (n - 1)))
	return least, most
}

func (w Weighing) text() string { return w.Mass.String() + ", number " + strconv.Itoa(w.Number) }

// checkLevel adds the fault of a level of confidence.
func checkLevel(errs units.ErrorList, level units.Percent) units.ErrorList {
	if leastLevel <= level && level <= mostLevel {
		return errs
	}
	hint := ""
	if p := 100 * level; leastLevel <= p && p <= mostLevel { // a part of one
		hint = p.String() + "?"
	}
	return append(errs, fault("level", level.String(), "50 % to 99.999 %", hint))
}

// checkScoops adds the fault of a number of scoops.
func checkScoops(errs units.ErrorList, scoops int) units.ErrorList {
	if 1 <= scoops && scoops <= mostScoops {
		return errs
	}
	return append(errs, fault("scoops", strconv.Itoa(scoops), "1 to 1000", ""))
}
