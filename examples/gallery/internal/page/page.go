// Package page lays text out in lines that fit a printed page.
package page

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// Width of a page, in characters.
const Width = 100

// Page is text laid out in lines. The zero value is an empty page.
type Page struct{ b strings.Builder }

// String returns the text.
func (p *Page) String() string { return p.b.String() }

// Line writes one line as it is.
func (p *Page) Line(s string) {
	p.b.WriteString(strings.TrimRight(s, " "))
	p.b.WriteByte('\n')
}

// Heading writes a line ruled out to the width, after an empty one.
func (p *Page) Heading(s string) {
	p.Line("")
	s = "--- " + s + " "
	p.Line(s + strings.Repeat("-", max(0, Width-utf8.RuneCountInString(s))))
}

// Item writes a text behind a mark, broken into lines that are indented to where
// the mark ends.
func (p *Page) Item(mark, s string) {
	indent := utf8.RuneCountInString(mark)
	line, n, empty := mark, indent, true
	for word := range strings.FieldsSeq(s) {
		length := utf8.RuneCountInString(word)
		if !empty && n+1+length > Width {
			p.Line(line)
			line, n, empty = strings.Repeat(" ", indent), indent, true
		}
		if !empty {
			line, n = line+" ", n+1
		}
		line, n, empty = line+word, n+length, false
	}
	p.Line(line)
}

// Working writes the lines of an Explain, each a label and a text. Continued
// lines have no label.
func (p *Page) Working(explained string) {
	const column = 10
	for line := range strings.Lines(explained) {
		line = strings.TrimSuffix(line, "\n")
		if len(line) <= column {
			p.Line(line)
			continue
		}
		p.Item(line[:column], line[column:])
	}
}

// Cells writes one line of a table: the first cell to the left, the others to the
// right of columns of those widths.
func (p *Page) Cells(widths []int, cells ...string) {
	var line strings.Builder
	for i, cell := range cells {
		space := strings.Repeat(" ", max(0, widths[i]-utf8.RuneCountInString(cell)))
		if i == 0 {
			line.WriteString(cell + space)
		} else {
			line.WriteString(space + cell)
		}
	}
	p.Line(line.String())
}

// Number writes x with at most so many decimals.
func Number(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}
