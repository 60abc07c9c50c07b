package scoop

import (
	"math"

	"example.org/bowlgram/units"

	"gonum.org/v1/gonum/stat/distuv"
)

// uncertainty is a squared standard uncertainty, in g², and its effective
// degrees of freedom.
type uncertainty struct {
	square, freedom float64
}

// fromScatter is the part that repeated weighings show: k times the square of
// their standard deviation.
func (c Calibration) fromScatter(k float64) uncertainty {
	return uncertainty{k * float64(c.SD) * float64(c.SD), float64(c.N - 1)}
}

// fromScale is the part of a scale's rounding: a twelfth of the squared step
// (JCGM 100:2008, F.2.2.1).
func fromScale(step units.Mass) uncertainty {
	return certain(float64(step) * float64(step) / 12)
}

// certain is a part that is known without weighings.
func certain(square float64) uncertainty { return uncertainty{square, math.Inf(1)} }

// plus combines uncorrelated parts: the squares add up, and the effective degrees of
// freedom are those of Welch and Satterthwaite (JCGM 100:2008, G.4.1).
func (u uncertainty) plus(parts ...uncertainty) uncertainty {
	sum := u.square
	for _, p := range parts {
		sum += p.square
	}
	// Shares of the sum, so that no fourth power leaves the range.
	share := u.square / sum
	inverse := share * share / u.freedom
	for _, p := range parts {
		share = p.square / sum
		inverse += share * share / p.freedom
	}
	return uncertainty{sum, 1 / inverse}
}

// standard returns the standard uncertainty.
func (u uncertainty) standard() float64 { return math.Sqrt(u.square) }

// half returns the half width of the interval at a level.
func (u uncertainty) half(level units.Percent) units.Mass {
	return units.Mass(quantile(float64(100-level)/200, u.freedom) * u.standard())
}

// asNormal is the number of degrees of freedom from which the normal distribution
// stands for Student's: they differ by 2e-8 there, and the quantile of the latter loses
// as many digits.
const asNormal = 1e8

// quantile returns the distance from 0 that leaves the part tail above it.
func quantile(tail, freedom float64) float64 {
	if freedom >= asNormal {
		return -distuv.UnitNormal.Quantile(tail)
	}
	return -distuv.StudentsT{Sigma: 1, Nu: freedom}.Quantile(tail)
}

// quantileF returns the quantile of the distribution of F. The mean square below it is
// then known for good, where the degrees of freedom are so many, and the other
// scatters like that of a normal distribution.
func quantileF(p, above, below float64) float64 {
	if below >= asNormal {
		return distuv.ChiSquared{K: above}.Quantile(p) / above
	}
	return distuv.F{D1: above, D2: below}.Quantile(p)
}
