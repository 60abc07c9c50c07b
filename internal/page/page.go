// Package page lays text out in lines for the examples.
package page

import (
	"strings"
	"unicode/utf8"
)

// Width of the page, in characters.
const Width = 104

// Page is text laid out in lines. The zero value is empty.
type Page struct{ b strings.Builder }

// String returns the lines.
func (w *Page) String() string { return w.b.String() }

// Lines writes lines that are laid out already.
func (w *Page) Lines(s string) { w.b.WriteString(s) }

// Text writes one line as it is.
func (w *Page) Text(line string) {
	w.b.WriteString(strings.TrimRight(line, " "))
	w.b.WriteByte('\n')
}

// Heading writes a line ruled out to the width.
func (w *Page) Heading(s string) {
	w.Text("")
	line := "--- " + s + " "
	w.Text(line + strings.Repeat("-", max(0, Width-utf8.RuneCountInString(line))))
}

// Columns writes three texts that begin at fixed columns where they fit.
func (w *Page) Columns(a string, atB int, b string, atC int, c string) {
	line := PadRight(a, atB-1) + " " + b
	if c != "" {
		line = PadRight(line, atC-1) + " " + c
	}
	w.Text(line)
}

// Item writes a text behind a mark, broken into lines that are indented to
// where the mark ends or, if that is far, a little.
func (w *Page) Item(mark, s string) {
	indent := utf8.RuneCountInString(mark)
	if indent > 24 {
		indent = 7
	}
	line := mark
	n := utf8.RuneCountInString(line)
	empty := true
	for word := range strings.FieldsSeq(s) {
		length := utf8.RuneCountInString(word)
		if !empty && n+1+length > Width {
			w.Text(line)
			line, n, empty = strings.Repeat(" ", indent), indent, true
		}
		if !empty {
			line, n = line+" ", n+1
		}
		line, n, empty = line+word, n+length, false
	}
	w.Text(line)
}

// PadRight puts spaces behind s until it is n characters long.
func PadRight(s string, n int) string {
	return s + strings.Repeat(" ", max(0, n-utf8.RuneCountInString(s)))
}

// PadLeft puts spaces before s until it is n characters long.
func PadLeft(s string, n int) string {
	return strings.Repeat(" ", max(0, n-utf8.RuneCountInString(s))) + s
}
