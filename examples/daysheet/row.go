package main

import (
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/units"
)

// row is one record of the animals file, and what is wrong with it.
type row struct {
	csvrow.Problems
	header csvrow.Header
	record csvrow.Record
}

// cell returns the value of a column without the space around it, or "".
func (r *row) cell(column int) string { return r.header.Cell(&r.record, column) }

// refuse notes that the value of a column can't be used, and what can.
func (r *row) refuse(column int, reason string) { r.Add(animalColumns[column], r.cell(column), reason) }

// fail is refuse for a value that a package of the library refused.
func (r *row) fail(column int, err error) { r.AddError(animalColumns[column], r.cell(column), err) }

// The readers of one cell. Each returns zero where the cell is empty, and where
// it is refused, which is then noted.

// mass reads a body weight.
func (r *row) mass(column int) units.Mass {
	s := r.cell(column)
	if s == "" {
		return 0
	}
	m, err := units.ParseMass(s)
	switch {
	case err != nil:
		r.fail(column, err)
		return 0
	case !(m > 0):
		r.refuse(column, "want a weight above zero")
		return 0
	}
	return m
}

// daily reads "1250 kcal", "1250 kcal/day" or "1250 kcal/d".
func (r *row) daily(column int) units.Energy {
	s := r.cell(column)
	if s == "" {
		return 0
	}
	e, err := parseDaily(s)
	switch {
	case err != nil:
		r.fail(column, err)
		return 0
	case !(e > 0):
		r.refuse(column, `want more than zero, as in "1250 kcal/day"`)
		return 0
	}
	return e
}

// whole reads a whole number that is not below least; want says of what.
func (r *row) whole(column, least int, want string) int {
	s := r.cell(column)
	if s == "" {
		return 0
	}
	n, err := strconv.ParseUint(s, 10, 15)
	if err != nil || int(n) < least {
		r.refuse(column, want)
		return 0
	}
	return int(n)
}

// days reads an age or a time.
func (r *row) days(column int) energy.Age { return parsed(r, column, energy.ParseAge) }

// parsed reads what a parser of the library reads.
func parsed[T any](r *row, column int, parse func(string) (T, error)) (value T) {
	s := r.cell(column)
	if s == "" {
		return value
	}
	v, err := parse(s)
	if err != nil {
		r.fail(column, err)
		return value
	}
	return v
}

// name reads a name; want says whose is missing.
func (r *row) name(column int, want string) string {
	s := r.cell(column)
	if s == "" {
		r.refuse(column, want)
	} else if why := csvrow.NameFault(s); why != "" {
		r.refuse(column, why)
	}
	return s
}
