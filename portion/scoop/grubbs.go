package scoop

import (
	"math"

	"example.org/bowlgram/units"
)

// Grubbs is the outcome of Grubbs' test for one outlier.
type Grubbs struct {
	Suspect  Weighing      // the weighing farthest from the mean
	G        float64       // its distance from the mean, in standard deviations
	Critical float64       // what G must be above
	Level    units.Percent // of confidence
	// Outlier says that it is one: G is above Critical, and stays there when the
	// rounding of the scale is counted.
	Outlier bool
}

// Outlier tests the weighing farthest from the mean, on either side, the lowest where
// both ends are as far, by Grubbs' two-sided test. At 95 % it finds an outlier where there is none in one of
// twenty calibrations. Of three or four weighings hardly any can be told to be
// one, and two outliers can hide each other. An outlier is weighed again, not
// dropped: a spilt scoop is a reason to leave it out, a high G alone is none.
//
// On a coarse scale most weighings can be equal, and one that is a step away is
// many standard deviations off for that alone. So a weighing within a step of
// the mean is never an outlier, nor one that is none beside a standard deviation
// with the rounding in it, √(s² + d²/12).
//
// The lowest and the highest weighing must be known.
func (c Calibration) Outlier(level units.Percent) (Grubbs, error) {
	errs := checkLevel(c.faults(), level)
	if c.Lowest == (Weighing{}) && len(errs) == 0 {
		errs = append(errs, fault("lowest and highest weighing", "not known", "the weighings, by Calibrate", ""))
	}
	if len(errs) > 0 {
		return Grubbs{}, errs.Err()
	}
	g := Grubbs{Suspect: c.Lowest, Level: level, Critical: c.critical(level)}
	far := c.Mean - c.Lowest.Mass
	if d := c.Highest.Mass - c.Mean; d > far {
		g.Suspect, far = c.Highest, d
	}
	if c.SD > 0 {
		g.G = float64(far / c.SD)
	}
	rounded := c.fromScatter(1).plus(fromScale(c.Readability)).standard()
	g.Outlier = g.G > g.Critical && far > c.Readability && far.Grams() > g.Critical*rounded
	return g, nil
}

// critical returns the critical value of the two-sided test: NIST/SEMATECH e-Handbook,
// 1.3.5.17.1.
func (c Calibration) critical(level units.Percent) float64 {
	n := float64(c.N)
	t := quantile(float64(100-level)/200/n, n-2)
	return (n - 1) / math.Sqrt(n) * math.Sqrt(t*t/(n-2+float64(t*t)))
}
