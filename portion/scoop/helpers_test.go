package scoop_test

import (
	"math"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

const g = units.Gram

// calibrate returns the calibration of weighings in grams, without a scale's
// rounding.
func calibrate(t testing.TB, weighings ...float64) scoop.Calibration {
	t.Helper()
	c, err := scoop.Calibrate(masses(weighings...), 0)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func masses(weighings ...float64) []units.Mass {
	m := make([]units.Mass, len(weighings))
	for i, w := range weighings {
		m[i] = units.Mass(w) * g
	}
	return m
}

// must returns the result of a call that is to succeed.
func must[T any](t testing.TB) func(T, error) T {
	return func(x T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
}

// near fails where got is farther from want than within.
func near[Q ~float64](t *testing.T, what string, got Q, want, within float64) {
	t.Helper()
	if !(math.Abs(float64(got)-want) <= within) {
		t.Errorf("%s: got %v, want %v ± %g", what, float64(got), want, within)
	}
}
