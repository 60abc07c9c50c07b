// Package reftable holds the published figures that the library is checked
// against, and evaluates each of them with the library.
//
// A table is a file of tab-separated rows in tables. The first ten columns
// carry the figure and where it was read; the last three are this library's
// judgement of it:
//
//	verdict  checked, disagrees or out
//	ours     for disagrees: the library's figure, as Text prints it
//	reason   for disagrees: why; for out: why the library has no such figure
//
// A row whose source is wrong, or follows another convention, stays in its
// table as disagrees. The tolerance is never widened to let it pass.
package reftable

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"
)

// Verdict is what a table says of a row.
type Verdict string

// Verdicts.
const (
	Checked   Verdict = "checked"   // the library gives the printed figure
	Disagrees Verdict = "disagrees" // the library gives another, for a reason
	Out       Verdict = "out"       // the library gives no such figure
)

// How a row's figure was seen.
const (
	Primary   = "primary"   // read in the source's own text
	Secondary = "secondary" // read in a publication that quotes the source
	Memory    = "memory"    // recalled, not seen in print
	Computed  = "computed"  // this project's arithmetic, printed nowhere
	Practice  = "practice"  // common practice, no source
)

// Row is one published figure.
type Row struct {
	ID        string
	Quantity  string
	Inputs    string // key=value;key=value, units in the keys
	Value     string // as printed
	Unit      string
	Tolerance string // half of the last printed digit; empty: a coefficient, to be met exactly
	Source    string
	Where     string
	Seen      string
	Note      string
	Verdict   Verdict
	Ours      string
	Reason    string
}

var header = []string{
	"id", "quantity", "inputs", "value", "unit", "tolerance", "source", "where", "seen", "note",
	"verdict", "ours", "reason",
}

// Read reads one table. It refuses another header, a row of another width, a
// repeated id, and a row whose judgement is incomplete or contradicts itself.
func Read(r io.Reader) ([]Row, error) {
	lines := bufio.NewScanner(r)
	if !lines.Scan() {
		if err := lines.Err(); err != nil {
			return nil, err
		}
		return nil, fmt.Errorf("reftable: no header")
	}
	if got := strings.Split(lines.Text(), "\t"); !slices.Equal(got, header) {
		return nil, fmt.Errorf("reftable: columns %q, want %q", got, header)
	}
	var rows []Row
	seen := make(map[string]bool)
	for n := 2; lines.Scan(); n++ {
		row, err := parseRow(lines.Text())
		if err != nil {
			return nil, fmt.Errorf("reftable: line %d: %w", n, err)
		}
		if seen[row.ID] {
			return nil, fmt.Errorf("reftable: line %d: id %q is repeated", n, row.ID)
		}
		seen[row.ID] = true
		rows = append(rows, row)
	}
	return rows, lines.Err()
}

func parseRow(line string) (Row, error) {
	f := strings.Split(line, "\t")
	if len(f) != len(header) {
		return Row{}, fmt.Errorf("%d columns, want %d", len(f), len(header))
	}
	row := Row{f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8], f[9], Verdict(f[10]), f[11], f[12]}
	return row, row.check()
}

func (r Row) check() error {
	if r.ID == "" || r.Source == "" {
		return fmt.Errorf("row %q: no id or no source", r.ID)
	}
	switch r.Seen {
	case Primary, Secondary, Memory, Computed, Practice:
	default:
		return fmt.Errorf("%s: seen %q", r.ID, r.Seen)
	}
	switch r.Verdict {
	case Checked:
		if r.Ours != "" || r.Reason != "" {
			return fmt.Errorf("%s: checked, yet with ours or reason", r.ID)
		}
	case Disagrees:
		if r.Ours == "" || r.Reason == "" {
			return fmt.Errorf("%s: disagrees without ours and reason", r.ID)
		}
	case Out:
		if r.Ours != "" || r.Reason == "" {
			return fmt.Errorf("%s: out wants a reason and no figure of ours", r.ID)
		}
	default:
		return fmt.Errorf("%s: verdict %q", r.ID, r.Verdict)
	}
	return nil
}
