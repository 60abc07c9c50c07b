package trend

import (
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// Figures in a text are rounded for reading, here and nowhere else in the
// package.

// round writes x with n decimals, and never as minus zero.
func round(x float64, n int) string {
	s := strconv.FormatFloat(x, 'f', n, 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}

// trim drops the zeros at the end of a decimal.
func trim(s string) string {
	if !strings.Contains(s, ".") {
		return s
	}
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}

// readable writes a mass as a person would: kilograms to two decimals, grams
// to one.
func readable(m units.Mass) string {
	if math.Abs(float64(m)) >= float64(units.Kilogram) {
		return trim(round(m.Kilograms(), 2)) + " kg"
	}
	return trim(round(m.Grams(), 1)) + " g"
}

// kcal writes an energy to the whole kilocalorie.
func kcal(e units.Energy) string { return round(e.Kilocalories(), 0) + " kcal" }

// percent writes a percentage with one decimal from 10 on, else with two.
func percent(p units.Percent) string {
	n := 2
	if math.Abs(float64(p)) >= 10 {
		n = 1
	}
	return trim(round(float64(p), n)) + " %"
}

// signed writes a percentage with its sign, as a change is written.
func signed(p units.Percent) string {
	if p > 0 {
		return "+" + percent(p)
	}
	return percent(p)
}

// days writes a number of days.
func days(n int) string {
	if n == 1 {
		return "1 day"
	}
	return strconv.Itoa(n) + " days"
}
