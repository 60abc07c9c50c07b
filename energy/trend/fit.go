package trend

import (
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// line is a straight line by least squares and what its residuals say.
type line struct {
	intercept, slope float64
	squares          float64 // of the residuals, summed
	free             float64 // degrees of freedom, n - 2
	meanX            float64
	spread           float64 // Σ(x - mean)²
	n                float64
}

// fit returns the line through two points or more, not all at one x.
func fit(x, y []float64) line {
	l := line{n: float64(len(x)), free: float64(len(x) - 2)}
	l.intercept, l.slope = stat.LinearRegression(x, y, nil, false)
	l.meanX = stat.Mean(x, nil)
	for i := range x {
		r := y[i] - l.at(x[i])
		l.squares += float64(r * r)
		d := x[i] - l.meanX
		l.spread += float64(d * d)
	}
	return l
}

// at returns the line's height. The product is kept from being fused.
func (l line) at(x float64) float64 { return l.intercept + float64(l.slope*x) }

// pull returns how much of a point's own height at x the line takes over, its
// leverage.
func (l line) pull(x float64) float64 {
	d := x - l.meanX
	return 1/l.n + float64(d*d)/l.spread
}

// slopeError and heightError return the standard uncertainty of the slope and
// of the line at x, for points that are off by s.
func (l line) slopeError(s float64) float64 { return s / math.Sqrt(l.spread) }

func (l line) heightError(x, s float64) float64 {
	return s * math.Sqrt(l.pull(x))
}

// confidence is the share of cases in which an interval holds the truth.
const confidence = 0.95

// quantile returns the two-sided quantile of Student's t.
func quantile(confidence, free float64) float64 {
	return distuv.StudentsT{Sigma: 1, Nu: free}.Quantile(0.5 + confidence/2)
}
