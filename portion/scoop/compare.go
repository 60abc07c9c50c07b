package scoop

import (
	"math"

	"example.org/bowlgram/units"
)

// Comparison is a cup held against another or against its label.
type Comparison struct {
	From       units.Mass // the first cup's mean, or the label's mass
	To         units.Mass // the second cup's mean, or the cup's
	Difference units.Mass // To less From
	// Interval holds the true difference at the Level.
	Interval units.Range[units.Mass]
	Level    units.Percent
	// T is the difference in its standard uncertainties, and Freedom the
	// degrees of freedom that the uncertainty is known with: +Inf where nothing
	// but the rounding of the scale is seen.
	T, Freedom float64
	// Different says that the interval doesn't hold 0 g. If false a difference
	// isn't shown; that doesn't show the two to be the same.
	Different bool
}

// Compare returns how the mean of b differs from that of a: two cups, two foods, or two people with
// one cup. The spreads may differ too (Welch's test).
func Compare(a, b Calibration, level units.Percent) (Comparison, error) {
	errs := prefixed("first ", a.faults())
	errs = append(errs, prefixed("second ", b.faults())...)
	if errs = checkLevel(errs, level); len(errs) > 0 {
		return Comparison{}, errs.Err()
	}
	u := a.fromScatter(1/float64(a.N)).plus(
		b.fromScatter(1/float64(b.N)), fromScale(a.Readability), fromScale(b.Readability))
	return compared(a.Mean, b.Mean, u, level), nil
}

// Against returns how the mean of c differs from what the cup is said to hold, as in
// "1 cup = 100 g" on a label, which is taken as exact.
func (c Calibration) Against(label units.Mass, level units.Percent) (Comparison, error) {
	errs := checkLevel(c.faults(), level)
	if !isMass(label) {
		errs = append(errs, fault("label", label.String(), acceptedMass, ""))
	}
	if len(errs) > 0 {
		return Comparison{}, errs.Err()
	}
	return compared(label, c.Mean, c.ofMean(), level), nil
}

func compared(from, to units.Mass, u uncertainty, level units.Percent) Comparison {
	d, half := to-from, u.half(level)
	return Comparison{
		From: from, To: to, Difference: d, Level: level,
		Interval:  units.Range[units.Mass]{Low: d - half, High: d + half},
		T:         d.Grams() / u.standard(),
		Freedom:   u.freedom,
		Different: math.Abs(float64(d)) > float64(half),
	}
}

// isResult reports whether c may come from a comparison, so that it can be explained.
func (c Comparison) isResult() bool {
	return isMass(c.From) && isMass(c.To) && c.Difference == c.To-c.From && c.Interval.IsValid() &&
		c.Interval.Contains(c.Difference) && c.Interval.Width() <= mostSpread && len(checkLevel(nil, c.Level)) == 0
}

// prefixed returns the faults of one calibration with the fields told apart.
func prefixed(which string, errs units.ErrorList) units.ErrorList {
	for i, err := range errs {
		if f, ok := err.(*units.FieldError); ok {
			renamed := *f
			renamed.Field = which + f.Field
			errs[i] = &renamed
		}
	}
	return errs
}
