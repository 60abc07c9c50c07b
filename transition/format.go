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
func short(x float64) string {
	s := strconv.FormatFloat(x, 'f', 2, 64)
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}
