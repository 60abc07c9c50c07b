package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// Columns of the foods file.
const (
	colID = iota
	colDensity
	colServing
	colServingEnergy
	colServingMass
	colMoisture
	colFor
	colStages
)

var (
	foodColumns = []string{"food", "energy", "serving", "serving energy", "serving mass", "moisture", "for", "stages"}

	optionalFoodColumns = []string{"stages"}
)

// food is a row of the foods file with what follows from it, worked out once.
type food struct {
	id      string
	line    int
	menu    diet.Menu
	density diet.Density
	problem string // why it can't be fed by; empty: it can

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
func readFoods(r *records, report func(string)) (*foods, error) {
	h, err := readHeader(r, foodColumns, optionalFoodColumns)
	if err != nil {
		return nil, err
	}
	fs := &foods{byID: make(map[string]*food), keys: make(map[string]*food)}
	for {
		rec, err := r.next()
		if err == io.EOF {
			return fs, nil
		}
		if err != nil {
			return nil, err
		}
		if rec.fault != "" {
			report("line " + strconv.Itoa(rec.line) + ": " + rec.fault)
			continue
		}
		if problem := fs.add(h, &rec); problem != "" {
			report(problem)
		}
	}
}

// add takes in one sound record and returns what is wrong with it.
func (fs *foods) add(h header, rec *record) string {
	// The record's text is one string; the name must not keep all of it.
	f := &food{id: strings.Clone(h.cell(rec, colID)), line: rec.line}
	var p problems
	if why := nameFault(f.id); why != "" {
		p.add("food", f.id, why)
		return p.String(f.line)
	}
	key := string(appendKey(nil, f.id))
	if earlier := fs.keys[key]; earlier != nil {
		p.add("food", f.id, "already on line "+strconv.Itoa(earlier.line)+", want each food once: neither is used")
		text := p.String(f.line)
		if earlier.problem == "" {
			earlier.problem = text
		}
		return text
	}
	fs.byID[f.id], fs.keys[key] = f, f
	fs.ids = append(fs.ids, f.id)

	kind := diet.Food{Name: f.id}
	kind.Label.Energy, kind.Label.HalfStep = printed(h, rec, colDensity, diet.ParseLabelEnergy, &p)
	s := &kind.Label.Serving
	s.Name = h.cell(rec, colServing)
	if s.Name != "" && nameFault(s.Name) != "" {
		p.add("serving", s.Name, nameFault(s.Name))
	}
	if v, err := units.ParseVolume(s.Name); err == nil && v > 0 {
		f.servingVolume = v
	}
	s.Energy, s.EnergyHalfStep = printed(h, rec, colServingEnergy, diet.ParseServingEnergy, &p)
	s.Mass, s.MassHalfStep = printed(h, rec, colServingMass, diet.ParseServingMass, &p)
	kind.Analysis.Moisture, _ = printed(h, rec, colMoisture, units.ParsePrinted[units.Percent], &p)
	if text := h.cell(rec, colFor); text != "" {
		var err error
		if kind.For.Species, err = diet.ParseSpeciesSet(text); err != nil {
			p.addError("for", text, err)
		}
	}
	if text := h.cell(rec, colStages); text != "" {
		var err error
		if kind.For.Stages, err = diet.ParseStages(text); err != nil {
			p.addError("stages", text, err)
		}
	}
	if !p.any() {
		f.density = density(kind, h, rec, &p)
	}
	if p.any() {
		f.problem = p.String(f.line)
		return f.problem
	}
	f.menu = diet.Only(kind)
	return ""
}

// printed reads a figure and half the step that it was rounded to when it was
// printed; both are zero where the cell is empty.
func printed[Q units.Quantity](h header, rec *record, column int, parse func(string) (Q, Q, error), p *problems) (value, halfStep Q) {
	text := h.cell(rec, column)
	if text == "" {
		return 0, 0
	}
	value, halfStep, err := parse(text)
	if err != nil {
		p.addError(foodColumns[column], text, err)
		if perUnit(text) {
			p.texts = append(p.texts, `of one cup or can: its kcal go into "serving energy" as "356 kcal", its grams into "serving mass" as "100 g", "cup" or "can" into "serving"`)
		}
		return 0, 0
	}
	if !(value > 0) {
		p.add(foodColumns[column], text, "want a figure above zero, or none")
		return 0, 0
	}
	return value, halfStep
}

// perUnit reports whether a figure was written as one of a household unit.
func perUnit(text string) bool {
	_, unit, ok := strings.Cut(strings.ToLower(text), "/")
	return ok && slices.ContainsFunc([]string{"cup", "can", "tin", "pouch", "tray", "piece", "serving"}, func(u string) bool {
		return strings.Contains(unit, u)
	})
}

// density works out the energy density of a food, or says why there is none.
func density(kind diet.Food, h header, rec *record, p *problems) diet.Density {
	d, err := kind.Density()
	if err == nil {
		return d
	}
	columns := map[string]int{
		"label.energy":         colDensity,
		"label.serving.energy": colServingEnergy,
		"label.serving.mass":   colServingMass,
		"analysis.moisture":    colMoisture,
	}
	for _, e := range faults(err) {
		var label *diet.LabelError
		var field *units.FieldError
		switch {
		case errors.As(e, &label):
			bare := *label
			bare.Food = ""
			p.texts = append(p.texts, fmt.Sprintf("food %q: %s", kind.Name, strings.TrimPrefix(bare.Error(), "diet: ")))
		case errors.As(e, &field):
			if c, ok := columns[field.Field]; ok {
				p.add(foodColumns[c], h.cell(rec, c), reason(e))
			} else {
				p.add("food "+strconv.Quote(kind.Name)+": "+field.Field, field.Value, reason(e))
			}
		default:
			p.add("food", kind.Name, e.Error())
		}
	}
	return diet.Density{}
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
