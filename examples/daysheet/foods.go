package main

import (
	"io"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/units"
)

// food is a row of the foods file with what follows from it, worked out once.
type food struct {
	id      string
	line    int
	menu    diet.Menu // of nothing else
	alone   []*food   // the same
	problem string    // why it can't be fed by; empty: it can

	servingVolume units.Volume // of one serving, where that is a volume
}

// foods are the foods file, by the name that the animals file uses.
type foods struct {
	byID map[string]*food
	keys map[string]*food // by what a person can't tell apart
	ids  []string
}

// readFoods reads the foods file whole. Each problem goes to report; a food
// that has one is kept, so that the rows that use it can say so.
func readFoods(r *csvrow.Reader, report func(string)) (*foods, error) {
	h, err := csvrow.ReadHeader(r, foodcsv.Columns, foodcsv.Optional)
	if err != nil {
		return nil, err
	}
	fs := &foods{byID: make(map[string]*food), keys: make(map[string]*food)}
	for {
		rec, err := r.Next()
		if err == io.EOF {
			return fs, nil
		}
		if err != nil {
			return nil, err
		}
		if rec.Fault != "" {
			report("line " + strconv.Itoa(rec.Line) + ": " + rec.Fault)
			continue
		}
		if problem := fs.add(h, &rec); problem != "" {
			report(problem)
		}
	}
}

// add takes in one sound record and returns what is wrong with it.
func (fs *foods) add(h csvrow.Header, rec *csvrow.Record) string {
	// The record's text is one string; the name must not keep all of it.
	f := &food{id: strings.Clone(h.Cell(rec, foodcsv.Name)), line: rec.Line}
	var p csvrow.Problems
	if why := csvrow.NameFault(f.id); why != "" {
		p.Add("food", f.id, why)
		return p.String(f.line)
	}
	key := string(csvrow.AppendKey(nil, f.id))
	if earlier := fs.keys[key]; earlier != nil {
		p.Add("food", f.id, "already on line "+strconv.Itoa(earlier.line)+", want each food once: neither is used")
		text := p.String(f.line)
		if earlier.problem == "" {
			earlier.problem = text
		}
		return text
	}
	fs.byID[f.id], fs.keys[key] = f, f
	fs.ids = append(fs.ids, f.id)

	kind := foodcsv.Read(h, rec, &p)
	if v, err := units.ParseVolume(kind.Label.Serving.Name); err == nil && v > 0 {
		f.servingVolume = v
	}
	if !p.Any() {
		foodcsv.Density(kind, h, rec, &p)
	}
	if p.Any() {
		f.problem = p.String(f.line)
		return f.problem
	}
	f.menu, f.alone = diet.Only(kind), []*food{f}
	return ""
}

// fault says why no animal can be fed by the food named id, or returns "".
func (fs *foods) fault(id string) string {
	const most = 8
	switch f := fs.byID[id]; {
	case f == nil && len(fs.ids) == 0:
		return "not in the foods file, which holds none"
	case f == nil:
		s := "not in the foods file, want one of " + strings.Join(fs.ids[:min(len(fs.ids), most)], ", ")
		if len(fs.ids) > most {
			s += " …"
		}
		return s
	case f.problem != "":
		return "refused in the foods file, " + f.problem
	}
	return ""
}
