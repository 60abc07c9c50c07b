package scoop

import (
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// Figures in a working are rounded for reading, here and nowhere else in the
// package.

// round writes x with n decimals, without the sign of a zero.
func round(x float64, n int) string {
	s := strconv.FormatFloat(x, 'f', n, 64)
	if strings.Trim(s, "-0.") == "" {
		return strings.TrimPrefix(s, "-")
	}
	return s
}

// signed is round with the sign of what is above zero, unless it is written as zero.
func signed(x float64, n int) string {
	s := round(x, n)
	if strings.HasPrefix(s, "-") || strings.Trim(s, "0.") == "" {
		return s
	}
	return "+" + s
}

// decimals returns how many decimals of a gram are written where masses are about
// m: one, and for less than 10 g as many as give three digits.
func decimals(m units.Mass) int {
	return max(1, 2-int(math.Floor(math.Log10(m.Grams()))))
}

// grams writes a mass.
func (w *working) grams(m units.Mass) string { return round(m.Grams(), w.decimals) + " g" }

// change writes a mass as a change.
func (w *working) change(m units.Mass) string { return signed(m.Grams(), w.decimals) + " g" }

// interval writes the ends of an interval of masses.
func (w *working) interval(r units.Range[units.Mass]) string {
	return w.grams(r.Low) + " to " + w.grams(r.High)
}

// percent writes a percentage to one decimal.
func percent(p units.Percent) string { return round(float64(p), 1) + " %" }

// step writes the step of a scale: one in pounds or ounces to six digits.
func step(m units.Mass) string { return strconv.FormatFloat(m.Grams(), 'g', 6, 64) + " g" }
