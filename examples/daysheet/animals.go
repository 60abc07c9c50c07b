package main

import (
	"errors"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/oneline"
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

	// From here on they came with the stages.
	colStage
	colAge
	colIdeal
	colCircumstances
	colWeighed
	colAdultWeight
	colWeightBefore
	colYoung
	colWeek
	colExercise
	colDistance
	colLadder
	colDay
	colIntake
	colOver

	colTreats // it came with the menus
)

var (
	animalColumns = []string{
		"animal", "place", "species", "weight", "status", "energy", "by",
		"condition", "days unfed", "food", "meals", "scale", "hold",
		"stage", "age", "ideal weight", "circumstances", "weighed", "adult weight", "weight before",
		"young", "week", "exercise", "distance", "ladder", "day", "intake", "over",
		"treats",
	}
	optionalAnimalColumns = append([]string{
		"status", "energy", "by", "condition", "days unfed", "meals", "scale", "hold",
	}, animalColumns[colStage:]...)
)

const (
	maxMeals   = 24
	notWeighed = -1 // in the place of the days since an animal was weighed
)

// order is a row of the animals file: what is to be fed to whom.
type order struct {
	line    int
	name    string
	place   string
	food    string    // the cell
	treats  string    // the cell
	menu    diet.Menu // the foods of the meals, then the treats
	fed     []*food   // the foods of the menu
	bowls   int       // how many of them are in the meals
	animal  energy.Animal
	kind    kind
	need    energy.Estimate
	times   int // meals a day
	scale   units.Mass
	weighed int    // days since the last weighing, or notWeighed
	earlier int    // the line that the animal stood on before; 0: it is new
	faulty  bool   // whether the row couldn't be taken apart: it may hold the animal
	hold    string // why nothing is to be fed; empty: nothing holds it
	problem string // what is wrong with the row; empty: nothing
}

// animals reads the animals file row by row.
type animals struct {
	records *csvrow.Reader
	row     row  // the one that is being read
	staged  bool // whether the file has a column that came with the stages
	seen    nameSet
	key     []byte // of a name, used again
}

func newAnimals(r *csvrow.Reader) (*animals, error) {
	h, err := csvrow.ReadHeader(r, animalColumns, optionalAnimalColumns)
	if err != nil {
		return nil, err
	}
	r.AllowBreaks(h[colHold])
	return &animals{
		records: r, row: row{header: h},
		staged: slices.ContainsFunc(h[colStage:colTreats], func(i int) bool { return i >= 0 }),
	}, nil
}

// has reports whether the file has a column.
func (a *animals) has(column int) bool { return a.row.header.Has(column) }

// next reads the next row into o. The error is io.EOF at the end of the file.
func (a *animals) next(o *order, foods *foods) error {
	rec, err := a.records.Next()
	if err != nil {
		return err
	}
	r := &a.row
	r.record, r.Texts = rec, r.Texts[:0]
	*o = order{
		line:    rec.Line,
		name:    r.cell(colAnimal),
		place:   r.cell(colPlace),
		food:    r.cell(colFood),
		treats:  r.cell(colTreats),
		weighed: notWeighed,
	}
	if rec.Fault != "" {
		o.name, o.place, o.food = oneline.Of(o.name), oneline.Of(o.place), oneline.Of(o.food)
		o.faulty = true
		if csvrow.NameFault(o.name) == "" {
			a.key = oneline.AppendKey(a.key[:0], o.name)
			o.earlier = max(a.seen.add(a.key, o.line), 0)
		}
		r.Texts = append(r.Texts, rec.Fault+", feed nothing by this line: it may hold the animal")
	} else {
		a.read(o, foods)
	}
	if r.Any() {
		o.problem = r.String(o.line)
	}
	return nil
}

// read fills in the order from a sound record.
func (a *animals) read(o *order, foods *foods) {
	r := &a.row
	a.key = oneline.AppendKey(a.key[:0], o.name)
	if why := csvrow.NameFault(o.name); why != "" {
		r.refuse(colAnimal, why)
	} else if line := a.seen.add(a.key, o.line); line > 0 {
		o.earlier = line
		r.refuse(colAnimal, "already on line "+strconv.Itoa(line)+`, want each animal once (two of one name: "Rex 2")`)
	} else if line < 0 {
		r.refuse(colAnimal, "more animals than the duplicate check can hold, want a shorter file")
	}
	if why := csvrow.NameFault(o.place); why != "" {
		r.refuse(colPlace, why)
	}
	o.hold = oneline.Of(r.cell(colHold))
	a.readNeed(o)
	o.readMenu(r, foods)
	o.readMeals(r)
	o.scale = units.Gram
	if s := r.cell(colScale); s != "" {
		var err error
		if o.scale, err = units.ParseMass(s); err != nil {
			r.fail(colScale, err)
		} else if o.scale <= 0 {
			r.refuse(colScale, `want the smallest step of the scale, as in "1 g"`)
		}
	}
}

// fewestRefeeding is the least number of meals a day on a refeeding ladder:
// package energy cautions to 4 to 6. Ours.
const fewestRefeeding = 4

// readMeals reads how often the animal is fed. Those that two meals a day would
// harm must have it said.
func (o *order) readMeals(r *row) {
	o.times = 2
	s := r.cell(colMeals)
	if s != "" {
		n, err := strconv.ParseUint(s, 10, 8)
		if err != nil || n < 1 || n > maxMeals {
			r.refuse(colMeals, "want a whole number, 1 to "+strconv.Itoa(maxMeals))
			return
		}
		o.times = int(n)
	}
	switch {
	case s == "" && o.nurses():
		r.refuse(colMeals, "want the number of feeds a day for a nursling, those at night too")
	case o.kind == refeeding && o.times < fewestRefeeding:
		r.refuse(colMeals, "want "+strconv.Itoa(fewestRefeeding)+" or more for refeeding, small meals through the day")
	}
}

// readNeed reads the columns that the day's energy follows from.
func (a *animals) readNeed(o *order) {
	r := &a.row
	before := len(r.Texts)

	var err error
	if o.animal.Species, err = energy.ParseSpecies(r.cell(colSpecies)); err != nil {
		r.fail(colSpecies, err)
	}
	if o.animal.Weight = r.mass(colWeight); r.cell(colWeight) == "" {
		r.refuse(colWeight, `want a weight with its unit, as in "24.9 kg" or "55 lb"`)
	}
	o.animal.Condition = parsed(r, colCondition, energy.ParseCondition)
	o.animal.DaysUnfed = r.whole(colDaysUnfed, 0, "want a whole number of days")
	if a.staged {
		o.animal.Age = r.days(colAge)
		o.animal.Ideal = r.mass(colIdeal)
		o.animal.Circumstances = parsed(r, colCircumstances, energy.ParseCircumstances)
		if r.cell(colWeighed) != "" {
			o.weighed = r.whole(colWeighed, 0, "want the whole days since the animal was weighed, 0 for today")
		}
	}
	ok := len(r.Texts) == before
	if a.staged {
		var known bool
		if o.kind, known = readKind(r); !known {
			return
		}
	}
	before = len(r.Texts)
	k := &kinds[o.kind]
	stage := k.read(r, o.animal)
	if !ok || stage == nil || !k.lenient && len(r.Texts) > before {
		return
	}
	if o.need, err = stage.Estimate(); err == nil {
		return
	}
	for _, e := range errlist.Of(err) {
		column, value := r.blame(e)
		r.Add(column, value, o.kind.reason(e))
	}
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
	"species":              colSpecies,
	"weight":               colWeight,
	"condition":            colCondition,
	"days unfed":           colDaysUnfed,
	"age":                  colAge,
	"ideal weight":         colIdeal,
	"circumstances":        colCircumstances,
	"status":               colStatus,
	"prescribed energy":    colEnergy,
	"by":                   colBy,
	"adult weight":         colAdultWeight,
	"weight before mating": colWeightBefore,
	"day before":           colWeightBefore,
	"before":               colWeightBefore,
	"young":                colYoung,
	"week":                 colWeek,
	"exercise":             colExercise,
	"distance":             colDistance,
	"ladder":               colLadder,
	"day":                  colDay,
	"intake":               colIntake,
	"over":                 colOver,
}

// blame returns the column that an error of package energy is about, and what
// the row has there.
func (r *row) blame(err error) (column, value string) {
	var field *units.FieldError
	var vet *energy.VeterinarianError
	switch {
	case errors.As(err, &vet):
		column, value = vet.Field, vet.Value
	case errors.As(err, &field):
		column, value = field.Field, field.Value
	}
	if c, ok := fieldColumns[column]; ok {
		return animalColumns[c], r.cell(c)
	}
	return column, value
}
