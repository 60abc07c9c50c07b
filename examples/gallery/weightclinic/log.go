package main

import (
	"cmp"
	"embed"
	"errors"
	"fmt"
	"io"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/examples/gallery/internal/command"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

//go:embed harbottle.csv harbottle-intake.csv custard.csv
var demos embed.FS

// row is what a row of a file says, with its line.
type row[T any] struct {
	line  int
	value T
}

// log is what the files say.
type log struct {
	weights   []row[trend.Weighing]
	appetites []row[trend.Scored]
	intake    []row[trend.Served]
	problems  []string // rows that can't be used
	// partial are the days of whose meals a row can't be used, so that they can't be
	// added up; the zero day where a row doesn't say its day.
	partial    map[trend.Date]bool
	weightFile string
	intakeFile string
}

// Columns of the two files.
const (
	colDate = iota
	colWeight
	colScale
	colConfirmed
	colAppetite
)

const (
	colMeal = iota + 1 // behind the date
	colFood
	colOffered
	colLeft
	colEnergy
)

var (
	weightColumns = []string{"date", "weight", "scale", "confirmed", "appetite"}
	intakeColumns = []string{"date", "meal", "food", "offered", "left", "energy"}
)

// read reads both files, or those of the demo.
func (s *settings) read(stdin io.Reader) (*log, error) {
	l := &log{partial: make(map[trend.Date]bool)}
	open := func(name, demo string) (io.ReadCloser, string, error) {
		if s.demo == "" {
			return command.Open(name, stdin)
		}
		f, err := demos.Open(demo)
		return f, demo, err
	}
	in, name, err := open(s.weights, s.demo+".csv")
	if err != nil {
		return nil, err
	}
	defer in.Close()
	l.weightFile = name
	if err := command.Read(in, weightColumns, 3, s.weightRow(l), l.say(name)); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if s.intake == "" && s.demo != "harbottle" {
		return l, nil
	}
	if in, name, err = open(s.intake, "harbottle-intake.csv"); err != nil {
		return nil, err
	}
	defer in.Close()
	l.intakeFile = name
	if err := command.Read(in, intakeColumns, 0, l.intakeRow, l.say(name)); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return l, nil
}

// say notes a problem of a file.
func (l *log) say(file string) func(string) {
	return func(problem string) { l.problems = append(l.problems, file+": "+problem) }
}

// weightRow reads a row of the weights.
func (s *settings) weightRow(l *log) command.Row {
	return func(cell func(int) string, line int, p *csvrow.Problems) {
		date := parsed(cell(colDate), "date", trend.ParseDate, p)
		w := trend.Weighing{Date: date, Readability: s.scale}
		if text := cell(colScale); text != "" {
			w.Readability = parsed(text, "scale", units.ParseMass, p)
		}
		switch text := cell(colConfirmed); text {
		case "", "no":
		case "yes":
			w.Confirmed = true
		default:
			p.Add("confirmed", text, "want yes, no or nothing")
		}
		var a trend.Appetite
		if text := cell(colAppetite); text != "" {
			a = parsed(text, "appetite", trend.ParseAppetite, p)
		}
		weighed := cell(colWeight) != "" || a == 0
		if weighed {
			w.Weight = parsed(cell(colWeight), "weight", units.ParseMass, p)
			if w.Readability == 0 && cell(colScale) == "" {
				p.Add("scale", "", "want the step of the scale, as in \"100 g\", or -scale for all rows")
			}
		}
		if p.Any() {
			return
		}
		if weighed {
			l.weights = append(l.weights, row[trend.Weighing]{line, w})
		}
		if a != 0 {
			l.appetites = append(l.appetites, row[trend.Scored]{line, trend.Scored{Date: date, Appetite: a}})
		}
	}
}

// intakeRow reads a row of what was served.
func (l *log) intakeRow(cell func(int) string, line int, p *csvrow.Problems) {
	s := trend.Served{
		Date:    parsed(cell(colDate), "date", trend.ParseDate, p),
		Food:    cell(colFood),
		Offered: parsed(cell(colOffered), "offered", units.ParseMass, p),
		Left:    parsed(cell(colLeft), "left", units.ParseMass, p),
		Density: parsed(cell(colEnergy), "energy", units.ParseEnergyDensity, p),
	}
	if _, err := fmt.Sscanf(cell(colMeal)+"\n", "%d\n", &s.Meal); err != nil {
		p.Add("meal", cell(colMeal), "want a whole number, 1 for the first meal of the day, at most 99")
	}
	if why := csvrow.NameFault(s.Food); why != "" {
		p.Add("food", s.Food, why)
	}
	if p.Any() {
		l.partial[s.Date] = true
		return
	}
	l.intake = append(l.intake, row[trend.Served]{line, s})
}

// parsed reads a cell, or notes why it can't.
func parsed[T any](text, column string, parse func(string) (T, error), p *csvrow.Problems) T {
	v, err := parse(text)
	if err != nil {
		p.AddError(column, text, err)
	}
	return v
}

// newest returns the newest day of any row.
func (l *log) newest() (d trend.Date) {
	for _, r := range l.weights {
		d = max(d, r.value.Date)
	}
	for _, r := range l.appetites {
		d = max(d, r.value.Date)
	}
	return d
}

// usable returns the values that the library takes: a row that it refuses, by
// itself or beside the others, is noted and left out, and is among those refused.
func usable[T any](rows []row[T], check func([]T) error, say func(string)) (values, refused []T) {
	for {
		values = make([]T, len(rows))
		for i, r := range rows {
			values[i] = r.value
		}
		err := check(values)
		if err == nil {
			return values, refused
		}
		problems := make(map[int]*csvrow.Problems)
		for _, fault := range errlist.Of(err) {
			field, value, n := refusal(fault)
			if n < 1 || n > len(rows) { // of the log as a whole
				say(fault.Error())
				return nil, append(refused, values...)
			}
			p := cmp.Or(problems[n-1], new(csvrow.Problems))
			p.Add(field, value, csvrow.Reason(fault))
			problems[n-1] = p
		}
		var kept []row[T]
		for i, r := range rows {
			if p := problems[i]; p != nil {
				say(p.String(r.line))
				refused = append(refused, r.value)
			} else {
				kept = append(kept, r)
			}
		}
		rows = kept
	}
}

// refusal returns the column and the value that a fault is about, and the number
// of the entry in its log, 0 where it is about none.
func refusal(fault error) (column, value string, entry int) {
	var f *units.FieldError
	if !errors.As(fault, &f) {
		return "", "", 0
	}
	var kind string
	if n, _ := fmt.Sscanf(f.Field, "%s %d %s", &kind, &entry, &column); n < 2 {
		return f.Field, f.Value, 0
	}
	switch column {
	case "":
		column = kind // an appetite is a figure by itself
	case "readability":
		column = "scale"
	case "density":
		column = "energy"
	}
	return column, f.Value, entry
}
