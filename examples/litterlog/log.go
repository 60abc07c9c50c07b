package main

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"strings"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Columns of the file.
const (
	colNursling = iota
	colDate
	colWeight
	colScale
	colConfirmed
)

var (
	columns  = []string{"nursling", "date", "weight", "scale", "confirmed"}
	optional = columns[colScale:]
)

// row is one row of the file.
type row struct {
	csvrow.Problems
	line         int
	of           *nursling
	date, weight string // as typed
	weighing     trend.Weighing
	report       trend.Report // of that morning; zero where there are problems
}

// problem returns what is wrong with the row in one line, or "".
func (r *row) problem() string {
	if !r.Any() {
		return ""
	}
	return r.String(r.line)
}

// nursling is one of the litter with its rows, in the order of the file.
type nursling struct {
	name string
	rows []*row
}

// newest returns the last row that can be used, or nil.
func (n *nursling) newest() *row {
	for i := len(n.rows) - 1; i >= 0; i-- {
		if !n.rows[i].Any() {
			return n.rows[i]
		}
	}
	return nil
}

// log is what the file holds.
type log struct {
	rows      []*row      // in the order of the file
	nurslings []*nursling // in the order of their first rows
}

// readLog reads the whole file. An error of the reading comes with the rows that
// were read before it.
func readLog(in io.Reader) (*log, error) {
	r := csvrow.NewReader(in)
	h, err := csvrow.ReadHeader(r, columns, optional)
	if err != nil {
		return nil, err
	}
	l := new(log)
	known := make(map[string]*nursling)
	for {
		rec, err := r.Next()
		if err == io.EOF {
			return l, nil
		}
		if err != nil {
			return l, fmt.Errorf("the reading broke off at line %d: %w", r.Line(), err)
		}
		cell := func(column int) string { return h.Cell(&rec, column) }
		w := &row{line: rec.Line, date: oneline.Of(cell(colDate)), weight: oneline.Of(cell(colWeight))}
		name := cell(colNursling)
		switch why := csvrow.NameFault(name); {
		case rec.Fault != "":
			w.Say(rec.Fault)
		default:
			if why != "" {
				w.Add(columns[colNursling], name, why)
			}
			w.read(cell)
		}
		if csvrow.NameFault(name) != "" {
			name = cmp.Or(strings.Trim(csvrow.QuoteStart([]byte(name)), `"`), "(no name)")
		}
		key := string(oneline.AppendKey(nil, name))
		if known[key] == nil {
			known[key] = &nursling{name: name}
			l.nurslings = append(l.nurslings, known[key])
		}
		w.of = known[key]
		w.of.rows = append(w.of.rows, w)
		l.rows = append(l.rows, w)
	}
}

// read reads the weighing of a row.
func (r *row) read(cell func(int) string) {
	var err error
	if r.weighing.Date, err = trend.ParseDate(cell(colDate)); err != nil {
		r.AddError(columns[colDate], cell(colDate), err)
	}
	if r.weighing.Weight, err = units.ParseMass(cell(colWeight)); err != nil {
		r.AddError(columns[colWeight], cell(colWeight), err)
	}
	r.weighing.Readability = units.Gram
	if s := cell(colScale); s != "" {
		if r.weighing.Readability, err = units.ParseMass(s); err != nil {
			r.AddError(columns[colScale], s, err)
		}
	}
	switch s := cell(colConfirmed); s {
	case "":
	case "yes":
		r.weighing.Confirmed = true
	default:
		r.Add(columns[colConfirmed], s, "want yes, or nothing")
	}
}

// newestDay returns the newest day on which the litter can have been a nursling, so
// that one mistyped year doesn't make a page of the future; zero: there is none.
func (l *log) newestDay(born trend.Date) (newest trend.Date) {
	for _, r := range l.rows {
		if d := r.weighing.Date; !r.Any() && born <= d && d < born+lastDay {
			newest = max(newest, d)
		}
	}
	return newest
}

// lastDay is the age at which a nursling is none any more: see energy.Nursling.
const lastDay = 28

// settle works out each row as of its own morning. A weighing that the library
// refuses, by itself or beside the others, leaves the log.
func (n *nursling) settle(litter trend.Litter, today trend.Date) {
	for {
		var kept []*row
		var weights trend.Weights
		for _, r := range n.rows {
			if !r.Any() {
				kept, weights = append(kept, r), append(weights, r.weighing)
			}
		}
		err := litter.CheckWeights(weights, today)
		if err == nil {
			n.report(litter, kept)
			return
		}
		for _, fault := range errlist.Of(err) {
			field, i := fieldOf(fault)
			if i >= 1 && i <= len(kept) {
				kept[i-1].refuse(field, fault)
				continue
			}
			for _, r := range kept { // a fault of the log as a whole
				r.refuse(field, fault)
			}
		}
	}
}

// report makes the page of each morning from the weighings up to it.
func (n *nursling) report(litter trend.Litter, rows []*row) {
	var weights trend.Weights
	for _, r := range rows {
		weights = append(weights, r.weighing)
		litter.Nurslings = []trend.Nursling{{Name: n.name, Weights: weights}}
		reports, err := litter.Reports(r.weighing.Date)
		if err != nil {
			for _, fault := range errlist.Of(err) {
				field, _ := fieldOf(fault)
				r.refuse(strings.TrimPrefix(field, "nursling 1 "+n.name+" "), fault)
			}
			weights = weights[:len(weights)-1]
			continue
		}
		r.report = reports[0]
	}
}

// fieldOf returns the field that a fault is about, and the number of the weighing
// where it is one of a log.
func fieldOf(fault error) (field string, weighing int) {
	var f *units.FieldError
	if !errors.As(fault, &f) {
		return "weight", 0
	}
	field = f.Field
	if n, _ := fmt.Sscanf(field, "weighing %d %s", &weighing, &field); n != 2 {
		return f.Field, 0
	}
	return field, weighing
}

// refuse notes that the library refused the weighing of a row.
func (r *row) refuse(field string, fault error) {
	var f *units.FieldError
	value := ""
	if errors.As(fault, &f) {
		value = f.Value
	}
	if field == "readability" {
		field = columns[colScale]
	}
	r.Add(field, value, csvrow.Reason(fault))
}
