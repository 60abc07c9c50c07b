// Package page is the page of the other examples with what these need besides: the
// working of a statistic, a table, a number.
package page

import (
	"strconv"
	"strings"

	"example.org/bowlgram/internal/page"
)

// Page is text laid out in lines. The zero value is an empty page.
type Page struct{ page.Page }

// Working writes the lines of an Explain, each a label and a text. Continued
// lines have no label.
func (p *Page) Working(explained string) {
	const column = 10
	for line := range strings.Lines(explained) {
		line = strings.TrimSuffix(line, "\n")
		if len(line) <= column {
			p.Text(line)
			continue
		}
		p.Item(line[:column], line[column:])
	}
}

// Cells writes one line of a table: the first cell to the left, the others to the
// right of columns of those widths.
func (p *Page) Cells(widths []int, cells ...string) {
	var line strings.Builder
	line.WriteString(page.PadRight(cells[0], widths[0]))
	for i, cell := range cells[1:] {
		line.WriteString(page.PadLeft(cell, widths[1+i]))
	}
	p.Text(line.String())
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
