package portion

import (
	"math"
	"math/big"
	"testing"

	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// steps are the scales of the trade, and some that are no power of ten.
var steps = []units.Mass{0.01, 0.1, 0.2, 0.5, 1, 2, 5, 10, units.Ounce}

func TestSharesAddUpAndStayWithinOneStep(t *testing.T) {
	proptest.Check(t, "shares of a day", prop.ForAll(
		func(m units.Mass, n int, at int) string {
			s, ok := newScale(steps[at])
			if !ok {
				return "step refused"
			}
			day := s.count(m)
			var sum int64
			for i := range n {
				c := share(day, n, i)
				sum += c
				// Exact fractions: the share of the unrounded mass.
				exact := new(big.Rat).SetFloat64(float64(m))
				exact.Quo(exact, new(big.Rat).SetFloat64(float64(steps[at])))
				exact.Quo(exact, big.NewRat(int64(n), 1))
				off := exact.Sub(exact, big.NewRat(c, 1))
				if off.Abs(off).Cmp(big.NewRat(1, 1)) >= 0 {
					return "a meal is a step or more from its share"
				}
				if i > 0 && c > share(day, n, i-1) {
					return "a later meal is larger"
				}
			}
			if sum != day {
				return "the meals don't add up to the day"
			}
			return ""
		},
		proptest.Quantity[units.Mass](0.01, 5000), gen.IntRange(1, MaxMeals), gen.IntRange(0, len(steps)-1)))
}

// The mass of n steps is the decimal's nearest float64, not n float additions.
func TestStepsAreDecimal(t *testing.T) {
	for _, test := range []struct {
		step units.Mass
		n    int64
		want string
	}{
		{0.1, 3, "0.3 g"},
		{0.1, 7, "0.7 g"},
		{0.1, 10, "1 g"},
		{0.2, 3, "0.6 g"},
		{0.01, 1999, "19.99 g"},
		{5, 67, "335 g"},
		{units.Ounce, 16, "453.59237 g"},
	} {
		s, ok := newScale(test.step)
		if !ok {
			t.Fatalf("step %v refused", test.step)
		}
		if got := s.mass(test.n).String(); got != test.want {
			t.Errorf("%d steps of %v = %q, want %q", test.n, test.step, got, test.want)
		}
	}
}

func TestHalfAStepRoundsAwayFromZero(t *testing.T) {
	for _, test := range []struct {
		m, step units.Mass
		want    int64
	}{
		{0.5, 1, 1},
		{1.5, 1, 2},
		{2.5, 1, 3},
		{units.Mass(math.Nextafter(2.5, 0)), 1, 2},
	} {
		s, _ := newScale(test.step)
		if got := s.count(test.m); got != test.want {
			t.Errorf("count(%v on %v) = %d, want %d", test.m, test.step, got, test.want)
		}
	}
}
