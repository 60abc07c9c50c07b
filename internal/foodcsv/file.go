package foodcsv

import (
	"errors"
	"io"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/oneline"
)

// Entry is a row of a foods file.
type Entry struct {
	Name    string
	Line    int
	Food    diet.Food
	Problem string // why nothing can be fed by it; empty: it can
}

// File is a foods file that was read whole. A food that can't be used is kept,
// so that the rows that name it can say so.
type File struct {
	byName map[string]*Entry
	byKey  map[string]*Entry // by what a person can't tell apart
	names  []string          // in the order of the file
}

// ReadFile reads a foods file. Each problem goes to report, as in `line 3: …`;
// the error is that of the header or of the reading.
func ReadFile(r *csvrow.Reader, report func(string)) (*File, error) {
	h, err := csvrow.ReadHeader(r, Columns, Optional)
	if err != nil {
		return nil, err
	}
	f := &File{byName: make(map[string]*Entry), byKey: make(map[string]*Entry)}
	for {
		rec, err := r.Next()
		switch {
		case errors.Is(err, io.EOF):
			return f, nil
		case err != nil:
			return nil, err
		}
		problem := ""
		if rec.Fault != "" {
			problem = "line " + strconv.Itoa(rec.Line) + ": " + rec.Fault
		} else {
			problem = f.add(h, &rec)
		}
		if problem != "" {
			report(problem)
		}
	}
}

// add takes in one sound record and returns what is wrong with it.
func (f *File) add(h csvrow.Header, rec *csvrow.Record) string {
	var p csvrow.Problems
	name := h.Cell(rec, Name)
	if why := csvrow.NameFault(name); why != "" {
		p.Add(Columns[Name], name, why)
		return p.String(rec.Line)
	}
	key := string(oneline.AppendKey(nil, name))
	if earlier := f.byKey[key]; earlier != nil {
		// Nobody can tell which row is right.
		p.Add(Columns[Name], name, "already on line "+strconv.Itoa(earlier.Line)+", want each food once: neither is used")
		text := p.String(rec.Line)
		if earlier.Problem == "" {
			earlier.Problem = text
		}
		return text
	}
	food := Read(h, rec, &p)
	if !p.Any() {
		Density(food, h, rec, &p)
	}
	e := &Entry{Name: food.Name, Line: rec.Line, Food: food}
	if p.Any() {
		e.Problem = p.String(rec.Line)
	}
	f.byName[e.Name], f.byKey[key] = e, e
	f.names = append(f.names, e.Name)
	return e.Problem
}

// Entry returns the row of a food by its name, or nil.
func (f *File) Entry(name string) *Entry { return f.byName[name] }

// Entries returns the rows in the order of the file, each food once.
func (f *File) Entries() []*Entry {
	entries := make([]*Entry, len(f.names))
	for i, name := range f.names {
		entries[i] = f.byName[name]
	}
	return entries
}

// Fault says why nothing can be fed by that name, or returns "".
func (f *File) Fault(name string) string {
	const most = 8
	e := f.byName[name]
	switch {
	case e != nil && e.Problem != "":
		return "refused in the foods file, " + e.Problem
	case e != nil:
		return ""
	case len(f.names) == 0:
		return "not in the foods file, which holds none"
	}
	if e = f.byKey[string(oneline.AppendKey(nil, name))]; e != nil {
		return "not in the foods file as it is written here, want " + strconv.Quote(e.Name)
	}
	s := "not in the foods file, want one of " + strings.Join(f.names[:min(len(f.names), most)], ", ")
	if len(f.names) > most {
		s += " …"
	}
	return s
}
