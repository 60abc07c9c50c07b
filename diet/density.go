package diet

import "example.org/bowlgram/units"

// Density is the energy density of a food as fed, and how it was come by.
type Density struct {
	Energy units.EnergyDensity              `json:"energy"` // as fed
	Range  units.Range[units.EnergyDensity] `json:"range"`  // what the rounding of the figures that Energy is from leaves possible; Energy alone where it is predicted, which nothing bounds
	Origin Origin                           `json:"origin"`
	// Gap is how far kcal/kg and the figures of the serving disagree beyond
	// their rounding: larger / smaller - 1 between the nearest ends of the two
	// intervals. It is 0 where they agree, and where fewer than all three are
	// given, so that there is nothing to agree.
	Gap float64 `json:"gap,omitzero"`
	// Serving is that of the label, with the figure that was missing, if two
	// of the three were given. The half-steps stay those of the label.
	Serving Serving `json:"serving,omitzero"`
}

// Density returns the energy density that the label of f states or, where it
// gives only the energy and the mass of one serving, implies. The printed
// kcal/kg wins over the serving where both are given. Where it gives neither,
// the energy is predicted from the analysis if f.Predictor asks for that, and
// never otherwise; what else the label says of the serving is completed by it.
//
// All three figures are held against each other through the intervals that
// their rounding leaves, and against the water in the food where that is
// known. Errors are a [*units.FieldError] for a figure that no label can carry
// or for too few figures, several in a [units.ErrorList], and a [*LabelError]
// for figures that cannot all be right; a prediction has those of
// [Food.Predict]. Smaller doubts are cautions: see
// [Food.Cautions].
//
// Density does not allocate unless it fails.
func (f Food) Density() (Density, error) { return f.density() }

func (f *Food) density() (Density, error) {
	if err := f.check(); err != nil {
		return Density{}, err
	}
	l := &f.Label
	d := Density{Serving: l.Serving}
	switch {
	case l.Energy > 0:
		d.Energy, d.Range, d.Origin = l.Energy, l.statedRange(), Stated
		d.complete()
	case l.Serving.Energy > 0 && l.Serving.Mass > 0:
		d.Energy, d.Range, d.Origin = l.Serving.implied(), l.Serving.impliedRange(), Derived
	case f.Predictor != 0:
		p, err := f.predicted()
		if err != nil {
			return Density{}, err
		}
		d.Energy, d.Range, d.Origin = p.Energy, units.Range[units.EnergyDensity]{Low: p.Energy, High: p.Energy}, Predicted
		d.complete()
		return d, nil // an analysis holds no more than it can
	default:
		return Density{}, f.missing()
	}
	if d.Origin == Stated && l.Serving.Energy > 0 && l.Serving.Mass > 0 {
		d.Gap = gap(d.Range, l.Serving.impliedRange())
	}
	if isApart(d.Gap) || f.limit(d.Energy) != 0 {
		return Density{}, f.labelError(d)
	}
	return d, nil
}

// complete fills in the figure of the serving that the label leaves out. Where
// it gives neither, the other is zero too.
func (d *Density) complete() {
	switch s := &d.Serving; {
	case s.Mass == 0:
		s.Mass = d.Energy.Mass(s.Energy)
	case s.Energy == 0:
		s.Energy = d.Energy.Energy(s.Mass)
	}
}

// missing says what is needed to weigh the food by.
func (f *Food) missing() error {
	s := &f.Label.Serving
	unit := s.unit()
	hint := "ask the manufacturer for kcal/kg as fed"
	if f.Analysis.Protein > 0 && f.Analysis.Fat > 0 {
		hint += ", or name the equation that predicts it from the analysis: Predictor"
	}
	switch {
	case s.Energy > 0:
		return &units.FieldError{
			Package:  "diet",
			Field:    "label",
			Value:    number(float64(s.Energy)) + " kcal/" + unit,
			Accepted: "kcal/kg as fed, or the grams of one " + unit + ", beside it",
			Hint:     s.howToWeigh(),
		}
	case s.Mass > 0:
		return &units.FieldError{
			Package:  "diet",
			Field:    "label",
			Value:    number(float64(s.Mass)) + " g/" + unit,
			Accepted: "kcal/kg as fed, or the kcal of one " + unit + ", beside it",
			Hint:     hint,
		}
	}
	return &units.FieldError{
		Package:  "diet",
		Field:    "label",
		Accepted: "kcal/kg as fed, or the kcal and the grams of one serving",
		Hint:     hint,
	}
}
