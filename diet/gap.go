package diet

import "example.org/bowlgram/units"

// Limits on the gap between the figures of one label, beyond their rounding;
// ours. A label above warnGap is refused.
const (
	noteGap = 0.02
	warnGap = 0.10
)

// isApart reports whether a gap is more than a label can have.
func isApart(gap float64) bool { return gap > warnGap }

// roundoff is a gap that the arithmetic itself can make between intervals that
// touch.
const roundoff = 1e-12

// gap returns larger/smaller - 1 between the nearest ends of a and b, and 0
// where they have a point in common. Both lie above zero.
func gap(a, b units.Range[units.EnergyDensity]) float64 {
	if a.Low > b.Low {
		a, b = b, a
	}
	g := float64(b.Low/a.High) - 1
	if g > roundoff {
		return g
	}
	return 0
}
