package main

import (
	"strconv"
	"strings"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// lastGain returns the gain up to the weighing of a row, if there is one before it.
func lastGain(r *row) (trend.Gained, bool) {
	g := r.report.Gains
	if len(g) == 0 {
		return trend.Gained{}, false
	}
	return g[len(g)-1], true
}

// number writes x with at most so many decimals.
func number(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// The figures of the page: a tenth of a gram, of a kilocalorie, of a millilitre.

func grams(m units.Mass) string { return number(m.Grams(), 1) + " g" }

// signed writes a gain.
func signed(m units.Mass) string {
	if s := number(m.Grams(), 1); m > 0 && s != "0" {
		return "+" + s + " g"
	}
	return grams(m)
}

func kilocalories(e units.Energy) string {
	return strconv.FormatFloat(e.Kilocalories(), 'f', 1, 64) + " kcal"
}

func millilitres(v units.Volume) string {
	return strconv.FormatFloat(v.Millilitres(), 'f', 1, 64) + " mL"
}
