package main

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// width of the page, in characters.
const width = 104

// page is text laid out in lines.
type page struct{ b strings.Builder }

// text writes one line as it is.
func (w *page) text(line string) {
	w.b.WriteString(strings.TrimRight(line, " "))
	w.b.WriteByte('\n')
}

// heading writes a line ruled out to the width.
func (w *page) heading(s string) {
	w.text("")
	line := "--- " + s + " "
	w.text(line + strings.Repeat("-", max(0, width-utf8.RuneCountInString(line))))
}

// item writes a text behind a mark, broken into lines that are indented to where
// the mark ends or, if that is far, a little.
func (w *page) item(mark, s string) {
	indent := utf8.RuneCountInString(mark)
	n, empty := indent, true
	if indent > 24 {
		indent = 4
	}
	line := mark
	for word := range strings.FieldsSeq(s) {
		length := utf8.RuneCountInString(word)
		if !empty && n+1+length > width {
			w.text(line)
			line, n, empty = strings.Repeat(" ", indent), indent, true
		}
		if !empty {
			line, n = line+" ", n+1
		}
		line, n, empty = line+word, n+length, false
	}
	w.text(line)
}

func padRight(s string, n int) string {
	return s + strings.Repeat(" ", max(0, n-utf8.RuneCountInString(s)))
}

func padLeft(s string, n int) string {
	return strings.Repeat(" ", max(0, n-utf8.RuneCountInString(s))) + s
}

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
