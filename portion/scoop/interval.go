package scoop

import (
	"math"

	"example.org/bowlgram/units"
)

// MeanInterval returns the interval that holds the cup's true mean, the mean of
// endlessly many fills, at a level of confidence: 95 for 95 %.
func (c Calibration) MeanInterval(level units.Percent) (units.Range[units.Mass], error) {
	if errs := checkLevel(c.faults(), level); len(errs) > 0 {
		return units.Range[units.Mass]{}, errs.Err()
	}
	return around(c.Mean, c.ofMean().half(level)), nil
}

// NextScoop returns the interval that holds the next scoop, by the same person from
// the same food, at a level of confidence: the prediction interval.
func (c Calibration) NextScoop(level units.Percent) (units.Range[units.Mass], error) {
	return c.Day(1, level)
}

// Day returns the interval that holds the sum of so many further scoops, 1 to
// 1000, at a level of confidence. It is narrower than as many times the
// interval of one, since what one has too much another has too little; the
// error of the calibration itself doesn't level out.
func (c Calibration) Day(scoops int, level units.Percent) (units.Range[units.Mass], error) {
	if errs := checkScoops(checkLevel(c.faults(), level), scoops); len(errs) > 0 {
		return units.Range[units.Mass]{}, errs.Err()
	}
	k := units.Mass(scoops)
	return around(k*c.Mean, k*c.ofScoops(scoops).half(level)), nil
}

// RelativeUncertainty returns the relative standard uncertainty, one standard deviation in percent, of
// the mass in so many scoops, 1 to 1000, that are counted with the mean of this calibration. It
// is what a budget of the bowl's uncertainty takes.
func (c Calibration) RelativeUncertainty(scoops int) (units.Percent, error) {
	if errs := checkScoops(c.faults(), scoops); len(errs) > 0 {
		return 0, errs.Err()
	}
	return units.Percent(100 * c.ofScoops(scoops).standard() / c.Mean.Grams()), nil
}

// ofMean is the uncertainty of the mean.
func (c Calibration) ofMean() uncertainty { return c.ofMeanOf(c.N) }

// ofMeanOf is the uncertainty of the mean if it were of n weighings with this spread.
func (c Calibration) ofMeanOf(n int) uncertainty {
	u := c.fromScatter(1 / float64(n))
	u.freedom = float64(n - 1)
	return u.plus(fromScale(c.Readability))
}

// ofScoops is the uncertainty of the mean of so many further scoops.
func (c Calibration) ofScoops(scoops int) uncertainty {
	return c.fromScatter(1/float64(scoops) + 1/float64(c.N)).plus(fromScale(c.Readability))
}

// around returns the interval of a half width around m. No mass is below zero.
func around(m, half units.Mass) units.Range[units.Mass] {
	return units.Range[units.Mass]{Low: units.Mass(math.Max(0, float64(m-half))), High: m + half}
}
