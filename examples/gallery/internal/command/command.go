// Package command holds what the programs of the gallery have in common on the
// command line: exit statuses, opening a file or the demo, reading its rows,
// writing pictures.
package command

import (
	"bytes"
	"fmt"
	"io"
	"os"

	"example.org/bowlgram/examples/gallery/internal/picture"
	"example.org/bowlgram/internal/csvrow"
)

// Exit statuses.
const (
	OK      = 0
	BadRows = 1 // a result, without the rows that couldn't be used
	Failed  = 2 // no result, or no whole one
)

// Open opens a file, or the standard input where its name is "-". It returns the
// name to report.
func Open(name string, stdin io.Reader) (io.ReadCloser, string, error) {
	if name == "-" {
		return io.NopCloser(stdin), "standard input", nil
	}
	f, err := os.Open(name)
	return f, name, err
}

// Demo is Open for built-in data.
func Demo(name string, data []byte) (io.ReadCloser, string, error) {
	return io.NopCloser(bytes.NewReader(data)), name, nil
}

// Row is what a program makes of one row of a file: it reads its cells and notes
// in the problems what is wrong with them.
type Row func(cell func(column int) string, line int, p *csvrow.Problems)

// Read reads a CSV file with those columns row by row, the last so many of them
// optional, and passes on what is wrong with each row. An error is that of the
// file: what was read before it has been passed on.
func Read(in io.Reader, columns []string, optional int, row Row, report func(problem string)) error {
	r := csvrow.NewReader(in)
	h, err := csvrow.ReadHeader(r, columns, columns[len(columns)-optional:])
	if err != nil {
		return err
	}
	for {
		rec, err := r.Next()
		if err == io.EOF {
			return nil
		}
		if err != nil {
			return fmt.Errorf("the reading broke off at line %d: %w", r.Line(), err)
		}
		var p csvrow.Problems
		if rec.Fault != "" {
			p.Say(rec.Fault)
		} else {
			row(func(column int) string { return h.Cell(&rec, column) }, rec.Line, &p)
		}
		if p.Any() {
			report(p.String(rec.Line))
		}
	}
}

// Plots are the files to draw into, a flag that may be given more than once.
type Plots []string

// String returns the names.
func (f *Plots) String() string { return fmt.Sprint([]string(*f)) }

// Set adds a file, whose name must say its format.
func (f *Plots) Set(name string) error {
	if _, err := picture.Format(name); err != nil {
		return err
	}
	*f = append(*f, name)
	return nil
}

// Write draws the picture into each of the files.
func (f Plots) Write(p *picture.Picture) error {
	for _, name := range f {
		format, err := picture.Format(name)
		if err != nil {
			return err
		}
		data, err := p.Encode(format)
		if err != nil {
			return err
		}
		if err := os.WriteFile(name, data, 0o644); err != nil {
			return err
		}
	}
	return nil
}
