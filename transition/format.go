package transition

import (
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// kcal writes an energy for a reader.
func kcal(e units.Energy) string { return strconv.FormatFloat(e.Kilocalories(), 'f', 1, 64) + " kcal" }

// grams writes a mass for a reader.
func grams(m units.Mass) string { return short(m.Grams()) + " g" }

// short writes x with at most two decimals, without trailing zeros.
func short(x float64) string { return decimals(x, 2) }

// decimals writes x with at most n decimals, n above 0, without trailing zeros.
func decimals(x float64, n int) string {
	s := strconv.FormatFloat(x, 'f', n, 64)
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}
