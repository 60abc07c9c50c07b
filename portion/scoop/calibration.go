package scoop

import (
	"math"

	"example.org/bowlgram/units"

	"gonum.org/v1/gonum/stat"
)

// Weighing is one of the weighings of a calibration.
type Weighing struct {
	Number int        `json:"number"` // in the order given, from 1; 0: not known
	Mass   units.Mass `json:"mass"`
}

// Calibration is what repeated weighings of level fills say of a cup or scoop.
// The zero value is no calibration. It is comparable.
type Calibration struct {
	// N is the number of weighings, 3 to 1,000,000.
	N int `json:"n"`
	// Mean is their mean, 1 mg to 25 kg.
	Mean units.Mass `json:"mean"`
	// SD is their standard deviation, with N - 1. It is 0 where all are equal,
	// which needs the Readability.
	SD units.Mass `json:"sd"`
	// Lowest and Highest are the least and the greatest weighing, the first of
	// equal ones. Both zero: not known, so that there is no test for an outlier.
	Lowest  Weighing `json:"lowest,omitzero"`
	Highest Weighing `json:"highest,omitzero"`
	// Readability is the step of the scale, 1 mg to 1 kg. Zero: its rounding is
	// not counted.
	Readability units.Mass `json:"readability,omitzero"`
}

// Calibrate returns the calibration of a cup from three or more weighings of its
// level fill, each 1 mg to 25 kg, on a scale of that readability: units.Gram
// for one that shows whole grams, zero to leave its rounding out. Every
// weighing must be a whole number of such steps, to a millionth of one.
//
// Each fault is a [*units.FieldError]; all come at once. The weighings are
// neither kept nor changed.
func Calibrate(weighings []units.Mass, readability units.Mass) (Calibration, error) {
	if err := checkWeighings(weighings, readability); err != nil {
		return Calibration{}, err
	}
	grams := make([]float64, len(weighings))
	low, high := 0, 0
	for i, m := range weighings {
		grams[i] = m.Grams()
		if m < weighings[low] {
			low = i
		}
		if m > weighings[high] {
			high = i
		}
	}
	mean, sd := stat.MeanStdDev(grams, nil)
	if weighings[high]-weighings[low] < leastSpread {
		mean, sd = grams[0], 0
	}
	c := Calibration{
		N: len(weighings), Mean: units.Mass(mean), SD: units.Mass(sd), Readability: readability,
		Lowest:  Weighing{low + 1, weighings[low]},
		Highest: Weighing{high + 1, weighings[high]},
	}
	if err := c.Validate(); err != nil {
		return Calibration{}, err
	}
	return c, nil
}

// CV returns the coefficient of variation, the standard deviation in percent of the mean. It
// is 0 where [Calibration.Validate] refuses c.
func (c Calibration) CV() units.Percent {
	if c.Validate() != nil {
		return 0
	}
	return units.Percent(100 * c.SD / c.Mean)
}

// SDUncertainty returns the relative standard uncertainty of the standard deviation itself, from the
// number of weighings alone: 52 % for three, 24 % for ten (JCGM 100:2008, Table E.1). It
// assumes normal scatter. It is 0 where there are fewer than two weighings.
func (c Calibration) SDUncertainty() units.Percent { return sdUncertainty(c.N) }

// sdUncertainty returns the relative standard deviation of the standard deviation of n values.
func sdUncertainty(n int) units.Percent {
	if n < 2 {
		return 0
	}
	nu := float64(n - 1)
	if n > 1000 {
		// JCGM 100:2008, 4.3.2. The gamma functions of many values are too great
		// for their ratio to be known, and the two differ by less than 0.1 % of it.
		return units.Percent(100 / math.Sqrt(2*nu))
	}
	a, _ := math.Lgamma(float64(n) / 2)
	b, _ := math.Lgamma(nu / 2)
	c4 := math.Sqrt(2/nu) * math.Exp(a-b) // the mean of s, in parts of sigma
	return units.Percent(100 * math.Sqrt(1/(c4*c4)-1))
}
