package energy

import (
	"math"
	"testing"
)

// The usual misprints of the NRC forms lose the minus sign of the exponent or
// take the last term out of the bracket: 7.32 and 1.24 for the puppy at p = 1,
// 3.67 and 4.89 for the kitten. The coefficients of the kitten are from memory,
// and so are its two factors.
func TestFactorsOfTheNRCFormsAtBothEnds(t *testing.T) {
	for _, tt := range []struct {
		name    string
		curve   growthCurve
		p, want float64
	}{
		{"puppy", puppyNRC, 0, 2.880},
		{"puppy", puppyNRC, 1, 1.021},
		{"kitten", kittenNRC, 0, 2.278},
		{"kitten", kittenNRC, 1, 1.124},
	} {
		if got := tt.curve.factor(tt.p); math.Abs(got-tt.want) > 0.0005 {
			t.Errorf("%s at p = %v: %.4f, want %v", tt.name, tt.p, got, tt.want)
		}
	}
}
