package energy

import (
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// Figures in a working or an error are rounded for reading, here and nowhere
// else in the package.

// round writes x with n decimals.
func round(x float64, n int) string { return strconv.FormatFloat(x, 'f', n, 64) }

// short writes x in kilograms as people do: at most three decimals, no
// trailing zeros.
func short(x float64) string { return trimmed(x, 3) }

// typed writes x as somebody may have typed it, without the last bits of a
// conversion.
func typed(x float64) string { return trimmed(x, 6) }

// trimmed writes x with at most n decimals, one or more, and no trailing zeros.
func trimmed(x float64, n int) string {
	return strings.TrimSuffix(strings.TrimRight(round(x, n), "0"), ".")
}

// cube writes the third power of x with a decimal, and a small one with four
// digits, since the working goes on with it.
func cube(x float64) string {
	x3 := x * x * x
	if x3 >= 10 {
		return round(x3, 1)
	}
	return round(x3, max(1, 3-int(math.Floor(math.Log10(x3)))))
}

// kcal writes an energy to the whole kilocalorie.
func kcal(e units.Energy) string { return round(e.Kilocalories(), 0) + " kcal" }

// kcal1 writes an energy to a tenth, for steps that are worked on.
func kcal1(e units.Energy) string { return round(e.Kilocalories(), 1) + " kcal" }

// atLeast and atMost round a limit to whole kilocalories, or grams, on the side
// that is taken, so that a figure that is typed as it was read is not refused
// again.
func atLeast[Q units.Energy | units.Mass](q Q) Q { return Q(math.Ceil(float64(q))) }
func atMost[Q units.Energy | units.Mass](q Q) Q  { return Q(math.Floor(float64(q))) }

// dayCount writes a number of days.
func dayCount(a Age) string {
	if a == Day {
		return "1 day"
	}
	return strconv.Itoa(int(a)) + " days"
}

// readable writes a mass as a person would: kilograms to three decimals, grams
// to one.
func readable(m units.Mass) string {
	if m >= units.Kilogram {
		return short(m.Kilograms()) + " kg"
	}
	return short(math.Round(m.Grams()*10)/10) + " g"
}
