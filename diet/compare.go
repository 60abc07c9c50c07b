package diet

import (
	"strconv"
	"strings"

	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Comparison is one row of foods set side by side, on the bases on which foods
// of different water can be compared. What the label of the food doesn't tell is
// zero, and left out of its JSON. A Comparison is comparable.
type Comparison struct {
	Food   string              `json:"food,omitzero"`
	Energy units.EnergyDensity `json:"energy"` // as fed
	Origin Origin              `json:"origin"` // of the energy
	// Serving is the household unit of the label, with its kcal and its grams.
	// A cup of one food is compared with a cup of another, not with a can.
	Serving   Serving               `json:"serving,omitzero"`
	PerVolume units.EnergyPerVolume `json:"per_volume,omitzero"` // see [Food.PerVolume]
	DryEnergy DryEnergy             `json:"dry_energy,omitzero"` // where the moisture is known
	Kind      AnalysisKind          `json:"kind,omitzero"`       // of Protein and Fat: bounds or averages
	Protein   PerMcal               `json:"protein,omitzero"`
	Fat       PerMcal               `json:"fat,omitzero"`
	// Cost is the price of 1000 kcal out of the pack where that is least, among
	// the packs whose currency is that of the first which has a price.
	Cost Price `json:"cost,omitzero"`
}

// Compare returns a row for each food, in the order given: sorting is left to
// the caller. Energy that is predicted is not set against stated energy
// unawares, nor a guaranteed content against a typical one: Origin and Kind say
// what it is. Nothing is rounded, and there may be any number of foods.
//
// All faults come back at once: those of [Food.Density] for each food, and an
// [*AnalysisError] for an analysis of more than 105 % (ours), since its contents
// would be set side by side. A fault names the food by its place, as in foods[1].
// Whether a label can be trusted is said by [Food.Cautions].
func Compare(foods ...Food) ([]Comparison, error) {
	var errs units.ErrorList
	rows := make([]Comparison, len(foods))
	for i := range foods {
		if err := rows[i].of(&foods[i]); err != nil {
			errs = append(errs, ofFood(err, i)...)
		}
	}
	if len(errs) > 0 {
		return nil, errs.Err()
	}
	return rows, nil
}

// ofFood puts the place of a food before each fault: before the field where it is
// one.
func ofFood(err error, i int) units.ErrorList {
	place := "foods[" + strconv.Itoa(i) + "]"
	faults := errlist.At(err, place+".")
	for k, fault := range faults {
		if _, ok := fault.(*units.FieldError); !ok {
			faults[k] = &placedError{place, fault}
		}
	}
	return faults
}

// placedError is what is wrong with one of several foods.
type placedError struct {
	place string
	err   error
}

func (e *placedError) Error() string {
	return "diet: " + e.place + ": " + strings.TrimPrefix(e.err.Error(), "diet: ")
}

func (e *placedError) Unwrap() error { return e.err }

// mcal is the energy that contents and costs are compared for.
const mcal = 1 * units.Megacalorie

// of sets c to the row of f.
func (c *Comparison) of(f *Food) error {
	d, err := f.Density()
	if err != nil {
		return err
	}
	a := &f.Analysis
	if err := a.overflow(); err != nil {
		return err
	}
	*c = Comparison{Food: f.Name, Energy: d.Energy, Origin: d.Origin, Cost: f.Label.Packs.cost(d.Energy.Mass(mcal))}
	if d.Serving.Mass > 0 {
		c.Serving = d.Serving
	}
	// A unit that contradicts the label, which [Food.Cautions] says, is left out
	// as one that isn't there.
	if v, err := f.PerVolume(); err == nil {
		c.PerVolume = v
	}
	if dry, err := a.DryEnergy(d.Energy); err == nil {
		c.DryEnergy = dry
	}
	c.Protein, c.Fat = GramsPerMcal(a.Protein, d.Energy), GramsPerMcal(a.Fat, d.Energy)
	if c.Protein > 0 || c.Fat > 0 {
		c.Kind = a.Kind
	}
	return nil
}

// cost returns the least that the mass m costs, or zero.
func (p *Packs) cost(m units.Mass) (least Price) {
	for i := range p {
		x, ok := p[i].Cost(m)
		if ok && (least.IsZero() || x.currency == least.currency && x.amount < least.amount) {
			least = x
		}
	}
	return least
}
