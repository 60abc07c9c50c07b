package main

import (
	"strings"
	"unicode/utf8"
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

// columns writes three texts that begin at fixed columns where they fit.
func (w *page) columns(a string, atB int, b string, atC int, c string) {
	line := padRight(a, atB-1) + " " + b
	if c != "" {
		line = padRight(line, atC-1) + " " + c
	}
	w.text(line)
}

// item writes a text behind a mark, broken into lines that are indented to
// where the mark ends or, if that is far, a little.
func (w *page) item(mark, s string) {
	indent := utf8.RuneCountInString(mark)
	if indent > 24 {
		indent = 7
	}
	line := mark
	n := utf8.RuneCountInString(line)
	empty := true
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
