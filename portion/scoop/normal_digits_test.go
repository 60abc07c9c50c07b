package scoop_test

import (
	"math"
	"testing"

	"example.org/bowlgram/portion/scoop"
)

// From 10^8 degrees of freedom on, ours, the quantiles are those of the normal distribution, to
// their last digits; z 0.975 is 1.959963984540054. By hand: ten weighings of SD 0.0151 g on a
// 1 g scale have 9 × ((0.0151²/10 + 1/12)/(0.0151²/10))² = 1.203e8.
func TestTheNormalDistributionTakesOver(t *testing.T) {
	const z = 1.959963984540054
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 0.0151 * g, Readability: g}
	x := must[scoop.Comparison](t)(c.Against(99*g, 95))
	near(t, "degrees of freedom", x.Freedom, 1.203e8, 5e4)
	near(t, "quantile", x.Interval.Width().Grams()/2*x.T, z, 1e-13) // the difference is 1 g

	// Two such people: often × rounding is 10/12, 18 × (0.0151² + 10/12)²/0.0151⁴ = 2.4e8. The square of z is the
	// quantile of χ² of one degree of freedom.
	p := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{c, c}, 95))
	near(t, "critical F", p.Critical, z*z, 1e-9)
	// Of three people χ² has two degrees of freedom, where its quantile is -2 ln 0.05 = 5.991465, and F half of that.
	p = must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{c, c, c}, 95))
	near(t, "critical F of three", p.Critical, -math.Log(0.05), 1e-9)
	// With an SD of 0.0185 g they are 1.068e8.
	c.SD = 0.0185 * g
	p = must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{c, c}, 95))
	near(t, "critical F", p.Critical, z*z, 1e-9)
}
