// Package foodcsv reads the rows of a foods file, so that the file that one
// example checks is the one that another feeds by.
package foodcsv

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Columns of the file, by their index in [Columns].
const (
	Name = iota
	Energy
	Serving
	ServingEnergy
	ServingMass
	Moisture
	For

	// From here on they are optional.
	Stages
	Units
	Form
	Role
	Analysis
	Defaults
	Predict
	Claim
)

var (
	// Columns are all the columns that a file can have.
	Columns = []string{
		"food", "energy", "serving", "serving energy", "serving mass", "moisture", "for",
		"stages", "units", "form", "role", "analysis", "defaults", "predict", "claim",
	}
	// Optional are those that may be absent.
	Optional = Columns[Stages:]
)

// Read returns the food of a row, and adds to p what is wrong with its cells.
// Whether the figures fit each other is for [Density] to say.
func Read(h csvrow.Header, rec *csvrow.Record, p *csvrow.Problems) diet.Food {
	// The record's text is one string; the name must not keep all of it.
	f := diet.Food{Name: strings.Clone(h.Cell(rec, Name))}
	f.Label.Energy, f.Label.HalfStep = printed(h, rec, Energy, diet.ParseLabelEnergy, p)
	s := &f.Label.Serving
	s.Name = strings.Clone(h.Cell(rec, Serving))
	if s.Name != "" && csvrow.NameFault(s.Name) != "" {
		p.Add(Columns[Serving], s.Name, csvrow.NameFault(s.Name))
	}
	s.Energy, s.EnergyHalfStep = printed(h, rec, ServingEnergy, diet.ParseServingEnergy, p)
	s.Mass, s.MassHalfStep = printed(h, rec, ServingMass, diet.ParseServingMass, p)
	moisture, _ := printed(h, rec, Moisture, units.ParsePrinted[units.Percent], p)
	f.For.Species = parsed(h, rec, For, diet.ParseSpeciesSet, p)
	f.For.Stages = parsed(h, rec, Stages, diet.ParseStages, p)
	f.Label.Claim = parsed(h, rec, Claim, diet.ParseClaim, p)
	readUnits(&f.Label.Others, h.Cell(rec, Units), p)
	f.Form = parsed(h, rec, Form, diet.ParseForm, p)
	f.Role = parsed(h, rec, Role, diet.ParseRole, p)
	f.Analysis = readAnalysis(h, rec, moisture, p)
	f.Predictor = parsed(h, rec, Predict, diet.ParsePredictor, p)
	return f
}

// readAnalysis reads the analysis as the label prints it. The moisture has a
// column of its own, which was there first, and may stand in either.
func readAnalysis(h csvrow.Header, rec *csvrow.Record, moisture units.Percent, p *csvrow.Problems) diet.Analysis {
	a := parsed(h, rec, Analysis, diet.ParseAnalysis, p)
	a.Defaults = parsed(h, rec, Defaults, diet.ParseForm, p)
	switch {
	case moisture == 0:
	case a.None.Has(diet.Moisture) || a.Moisture != 0 && a.Moisture != moisture:
		p.Add(Columns[Moisture], h.Cell(rec, Moisture), "want the same as in the analysis, "+a.Moisture.String()+", or one of the two empty")
	default:
		a.Moisture = moisture
	}
	return a
}

// readUnits reads further household units, as in "biscuit = 8 g = 28 kcal;
// scoop = 85 g".
func readUnits(others *diet.Servings, text string, p *csvrow.Problems) {
	if text == "" {
		return
	}
	n := 0
	for unit := range strings.SplitSeq(text, ";") {
		if unit = strings.TrimSpace(unit); unit == "" {
			continue
		}
		if n == len(others) {
			p.Add(Columns[Units], text, "want at most "+strconv.Itoa(len(others))+" units")
			return
		}
		if s, why := readUnit(unit); why != "" {
			p.Add(Columns[Units], unit, why)
		} else {
			others[n] = s
		}
		n++
	}
}

// readUnit reads one household unit, or says why it can't be one.
func readUnit(text string) (s diet.Serving, why string) {
	const want = `want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`
	name, figures, ok := strings.Cut(text, "=")
	s.Name = strings.Clone(strings.TrimSpace(name))
	switch why := csvrow.NameFault(s.Name); {
	case !ok:
		return s, want
	case why != "":
		return s, why
	}
	for figure := range strings.SplitSeq(figures, "=") {
		if m, half, err := diet.ParseServingMass(figure); err == nil && m > 0 && s.Mass == 0 {
			s.Mass, s.MassHalfStep = m, half
		} else if e, half, err := diet.ParseServingEnergy(figure); err == nil && e > 0 && s.Energy == 0 {
			s.Energy, s.EnergyHalfStep = e, half
		} else {
			return s, want
		}
	}
	return s, ""
}

// parsed reads what a parser of the library reads, or nothing from an empty
// cell.
func parsed[T any](h csvrow.Header, rec *csvrow.Record, column int, parse func(string) (T, error), p *csvrow.Problems) T {
	var none T
	text := h.Cell(rec, column)
	if text == "" {
		return none
	}
	v, err := parse(text)
	if err != nil {
		p.AddError(Columns[column], text, err)
		return none
	}
	return v
}

// printed reads a figure and half the step that it was rounded to when it was
// printed; both are zero where the cell is empty.
func printed[Q units.Quantity](h csvrow.Header, rec *csvrow.Record, column int, parse func(string) (Q, Q, error), p *csvrow.Problems) (value, halfStep Q) {
	text := h.Cell(rec, column)
	if text == "" {
		return 0, 0
	}
	value, halfStep, err := parse(text)
	if err != nil {
		p.AddError(Columns[column], text, err)
		if perUnit(text) {
			p.Say(`of one cup or can: its kcal go into "serving energy" as "356 kcal", its grams into "serving mass" as "100 g", "cup" or "can" into "serving"`)
		}
		return 0, 0
	}
	if !(value > 0) {
		p.Add(Columns[column], text, "want a figure above zero, or none")
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

// Density works out the energy density of a food, or adds to p why there is
// none.
func Density(f diet.Food, h csvrow.Header, rec *csvrow.Record, p *csvrow.Problems) diet.Density {
	d, err := f.Density()
	if err == nil {
		return d
	}
	columns := map[string]int{
		"label.energy":         Energy,
		"label.serving.energy": ServingEnergy,
		"label.serving.mass":   ServingMass,
		"analysis.moisture":    Moisture,
		"for.species":          For,
	}
	for _, e := range errlist.Of(err) {
		var label *diet.LabelError
		var field *units.FieldError
		switch {
		case errors.As(e, &label):
			bare := *label
			bare.Food = ""
			p.Say(fmt.Sprintf("food %q: %s", f.Name, strings.TrimPrefix(bare.Error(), "diet: ")))
		case errors.As(e, &field):
			if c, ok := columns[field.Field]; ok {
				p.Add(Columns[c], h.Cell(rec, c), csvrow.Reason(e))
			} else {
				p.Add("food "+strconv.Quote(f.Name)+": "+field.Field, field.Value, csvrow.Reason(e))
			}
		default:
			p.Add(Columns[Name], f.Name, strings.TrimPrefix(e.Error(), "diet: "))
		}
	}
	return diet.Density{}
}
