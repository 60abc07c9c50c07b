package main

import (
	"errors"
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Columns of the animals file.
const (
	colAnimal = iota
	colPlace
	colSpecies
	colWeight
	colStatus
	colEnergy
	colBy
	colCondition
	colDaysUnfed
	colFood
	colMeals
	colScale
	colHold
)

var (
	animalColumns = []string{
		"animal", "place", "species", "weight", "status", "energy", "by",
		"condition", "days unfed", "food", "meals", "scale", "hold",
	}
	optionalAnimalColumns = []string{
		"status", "energy", "by", "condition", "days unfed", "meals", "scale", "hold",
	}
)

const maxMeals = 24

// order is a row of the animals file: what is to be fed to whom.
type order struct {
	line    int
	name    string
	place   string
	food    string
	animal  energy.Animal
	need    energy.Estimate
	times   int // meals a day
	scale   units.Mass
	earlier int    // the line that the animal stood on before; 0: it is new
	faulty  bool   // whether the row couldn't be taken apart: it may hold the animal
	hold    string // why nothing is to be fed; empty: nothing holds it
	problem string // what is wrong with the row; empty: nothing
}

// animals reads the animals file row by row.
type animals struct {
	records *records
	header  header
	seen    nameSet
	key     []byte // of a name, used again
}

func newAnimals(r *records) (*animals, error) {
	h, err := readHeader(r, animalColumns, optionalAnimalColumns)
	if err != nil {
		return nil, err
	}
	r.breaks = h[colHold]
	return &animals{records: r, header: h}, nil
}

// next reads the next row into o. The error is io.EOF at the end of the file.
func (a *animals) next(o *order, foods *foods) error {
	rec, err := a.records.next()
	if err != nil {
		return err
	}
	*o = order{
		line:  rec.line,
		name:  a.header.cell(&rec, colAnimal),
		place: a.header.cell(&rec, colPlace),
		food:  a.header.cell(&rec, colFood),
	}
	var p problems
	if rec.fault != "" {
		o.name, o.place, o.food = oneLine(o.name), oneLine(o.place), oneLine(o.food)
		o.faulty = true
		if nameFault(o.name) == "" {
			a.key = appendKey(a.key[:0], o.name)
			o.earlier = max(a.seen.add(a.key, o.line), 0)
		}
		p.texts = append(p.texts, rec.fault+", feed nothing by this line: it may hold the animal")
	} else {
		a.read(o, &rec, foods, &p)
	}
	if p.any() {
		o.problem = p.String(o.line)
	}
	return nil
}

// read fills in the order from a sound record.
func (a *animals) read(o *order, rec *record, foods *foods, p *problems) {
	cell := func(column int) string { return a.header.cell(rec, column) }

	a.key = appendKey(a.key[:0], o.name)
	if why := nameFault(o.name); why != "" {
		p.add("animal", o.name, why)
	} else if line := a.seen.add(a.key, o.line); line > 0 {
		o.earlier = line
		p.add("animal", o.name, "already on line "+strconv.Itoa(line)+`, want each animal once (two of one name: "Rex 2")`)
	} else if line < 0 {
		p.add("animal", o.name, "more animals than the duplicate check can hold, want a shorter file")
	}
	if why := nameFault(o.place); why != "" {
		p.add("place", o.place, why)
	}
	o.hold = oneLine(cell(colHold))
	a.readNeed(o, rec, p)
	if why := foods.fault(o.food); why != "" {
		p.add("food", o.food, why)
	}
	o.times = 2
	if s := cell(colMeals); s != "" {
		n, err := strconv.ParseUint(s, 10, 8)
		if err != nil || n < 1 || n > maxMeals {
			p.add("meals", s, "want a whole number, 1 to "+strconv.Itoa(maxMeals))
		}
		o.times = int(n)
	}
	o.scale = units.Gram
	if s := cell(colScale); s != "" {
		var err error
		if o.scale, err = units.ParseMass(s); err != nil {
			p.addError("scale", s, err)
		} else if o.scale <= 0 {
			p.add("scale", s, `want the smallest step of the scale, as in "1 g"`)
		}
	}
}

// readNeed reads the columns that the day's energy follows from.
func (a *animals) readNeed(o *order, rec *record, p *problems) {
	cell := func(column int) string { return a.header.cell(rec, column) }
	before := len(p.texts)

	var err error
	if o.animal.Species, err = energy.ParseSpecies(cell(colSpecies)); err != nil {
		p.addError("species", cell(colSpecies), err)
	}
	if s := cell(colWeight); s == "" {
		p.add("weight", s, `want a weight with its unit, as in "24.9 kg" or "55 lb"`)
	} else if o.animal.Weight, err = units.ParseMass(s); err != nil {
		p.addError("weight", s, err)
	} else if !(o.animal.Weight > 0) {
		p.add("weight", s, "want a weight above zero")
	}
	if s := cell(colCondition); s != "" {
		if o.animal.Condition, err = energy.ParseCondition(s); err != nil {
			p.addError("condition", s, err)
		}
	}
	if s := cell(colDaysUnfed); s != "" {
		n, err := strconv.ParseUint(s, 10, 15)
		if err != nil {
			p.add("days unfed", s, "want a whole number of days")
		}
		o.animal.DaysUnfed = int(n)
	}
	ok := len(p.texts) == before
	stage := a.readStage(o, rec, p)
	if !ok || stage == nil {
		return
	}
	if o.need, err = stage.Estimate(); err == nil {
		return
	}
	for _, e := range faults(err) {
		column, value := a.blame(rec, e)
		p.add(column, value, reason(e))
	}
}

// readStage reads what the energy is computed by: the status of an adult, or
// a prescribed amount. In the place of one that it refuses it returns another
// that does for finding out what else is wrong with the animal, or nil.
func (a *animals) readStage(o *order, rec *record, p *problems) energy.Stage {
	status := a.header.cell(rec, colStatus)
	daily := a.header.cell(rec, colEnergy)
	by := a.header.cell(rec, colBy)
	switch {
	case status == "" && daily == "" && o.animal.Species == energy.Ferret:
		return energy.Adult{Animal: o.animal} // its figure asks for no status
	case status == "" && daily == "":
		p.add("status", status, `want the status of an adult, as in "neutered", or a prescribed amount in energy`)
		return nil
	case status != "" && daily != "":
		p.add("energy", daily, "want status or energy, not both")
		return nil
	case daily != "":
		e, err := parseDaily(daily)
		if err != nil {
			p.addError("energy", daily, err)
			e = units.Kilocalorie
		}
		switch why := nameFault(by); {
		case by == "":
			p.add("by", by, "want the name of who prescribed the energy")
			by = "nobody" // a name, to find what else is wrong
		case why != "":
			p.add("by", by, why)
		}
		return energy.Prescribed{Animal: o.animal, Daily: e, By: by}
	}
	if by != "" {
		p.add("by", by, "want it with a prescribed amount in energy only")
	}
	s, err := energy.ParseStatus(status)
	if err != nil {
		p.addError("status", status, err)
		s = energy.Unknown
	}
	return energy.Adult{Animal: o.animal, Status: s}
}

// parseDaily reads "1250 kcal", "1250 kcal/day" or "1250 kcal/d".
func parseDaily(s string) (units.Energy, error) {
	amount, per, ok := strings.Cut(s, "/")
	if per = strings.TrimSpace(per); ok && (per == "day" || per == "d") {
		s = strings.TrimSpace(amount)
	}
	return units.ParseEnergy(s)
}

// fieldColumns are the columns that the inputs of package energy come from.
var fieldColumns = map[string]int{
	"species":           colSpecies,
	"weight":            colWeight,
	"condition":         colCondition,
	"days unfed":        colDaysUnfed,
	"status":            colStatus,
	"prescribed energy": colEnergy,
	"by":                colBy,
}

// blame returns the column that an error of package energy is about, and what
// the row has there.
func (a *animals) blame(rec *record, err error) (column, value string) {
	var field *units.FieldError
	var vet *energy.VeterinarianError
	switch {
	case errors.As(err, &vet):
		column, value = vet.Field, vet.Value
	case errors.As(err, &field):
		column, value = field.Field, field.Value
	}
	if c, ok := fieldColumns[column]; ok {
		return animalColumns[c], a.header.cell(rec, c)
	}
	return column, value
}
