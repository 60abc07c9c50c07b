package diet

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Prediction is the metabolizable energy of a food as an equation predicts it
// from the analysis, with the steps on the way. It is comparable. The zero
// value is no prediction.
type Prediction struct {
	Energy    units.EnergyDensity `json:"energy"` // as fed, unrounded
	Origin    Origin              `json:"origin"` // Predicted
	Predictor Predictor           `json:"predictor"`
	Species   energy.Species      `json:"species,omitzero"`
	Form      Form                `json:"form,omitzero"`
	Analysis  Analysis            `json:"analysis"`         // as given
	Assumed   Constituents        `json:"assumed,omitzero"` // the figures that are defaults
	NFE       units.Percent       `json:"nfe"`              // nitrogen-free extract as fed, by difference
	DryEnergy DryEnergy           `json:"dry_energy"`       // the energy of the dry matter

	// The steps of [FourStep]; zero for the others.
	Gross         units.EnergyDensity `json:"gross,omitzero"`         // what it burns with
	Fibre         DryMatter           `json:"fibre,omitzero"`         // crude fibre in the dry matter
	Digestibility units.Percent       `json:"digestibility,omitzero"` // of the energy
	Digestible    units.EnergyDensity `json:"digestible,omitzero"`
}

// Predict returns the metabolizable energy that p predicts for food of this
// analysis in an animal of species s. A zero p means [ModifiedAtwater], which
// is the same for all and needs no species. A ferret gets what a cat would, for
// want of equations of its own: [Prediction.Cautions] says so.
//
// Errors are those of [Analysis.NFE]; an unknown predictor or a species without
// an equation is a [*units.FieldError], and so is fibre beyond what the equation
// can bear, so that no energy would be left.
func (a Analysis) Predict(p Predictor, s energy.Species) (Prediction, error) {
	return a.predict(p, s, 0)
}

// Predict returns the energy that p predicts from the analysis of f, whatever
// its label states, as [Analysis.Predict] does.
func (f Food) Predict(p Predictor, s energy.Species) (Prediction, error) {
	return f.Analysis.predict(p, s, f.Form)
}

func (a Analysis) predict(p Predictor, s energy.Species, form Form) (Prediction, error) {
	if p == 0 {
		p = ModifiedAtwater
	}
	if form == 0 {
		form = a.Defaults
	}
	full, assumed, err := a.complete(form)
	if err != nil || !p.takes(s) {
		return Prediction{}, p.faults(err, s)
	}
	nfe := full.rest()
	if nfe < 0 {
		return Prediction{}, &AnalysisError{Analysis: full, Assumed: assumed, Sum: full.sum(), NFE: nfe}
	}
	r := Prediction{
		Origin: Predicted, Predictor: p, Species: s, Form: form, Analysis: a, Assumed: assumed, NFE: nfe,
	}
	switch {
	case p == FourStep:
		r.fourStep(&full)
	default:
		r.Energy = p.factors(s).energy(full.Protein, full.Fat, nfe)
	}
	if !(r.Energy > 0) {
		return Prediction{}, &units.FieldError{
			Package: "diet", Field: "analysis", Value: "protein, fat and NFE " + number(float64(full.Protein+full.Fat+nfe)) + " %, fibre " + number(float64(full.Fibre)) + " %",
			Accepted: "a food from which " + p.String() + " leaves energy",
		}
	}
	r.DryEnergy = DryEnergy(float64(r.Energy) / (1 - full.Moisture.Fraction()))
	return r, nil
}

// takes reports whether p is made for food of species s, or for that of a
// species near it.
func (p Predictor) takes(s energy.Species) bool {
	return p <= FourStep && (s >= energy.Dog && s <= energy.Ferret || s == 0 && p == ModifiedAtwater)
}

// faults adds to err what p can't take.
func (p Predictor) faults(err error, s energy.Species) error {
	var errs units.ErrorList
	if p > FourStep {
		errs = append(errs, refuse("predictor", "out of range", enum.List(predictorNames)))
	} else if !p.takes(s) {
		errs = append(errs, &units.FieldError{
			Package: "diet", Field: "species", Value: s.String(), Accepted: "dog, cat or ferret",
			Hint: "no equation is published for the food of other animals",
		})
	}
	return errlist.Add(errs, err).Err()
}

// factors returns those of an equation that has nothing else.
func (p Predictor) factors(s energy.Species) factors {
	switch {
	case p == ModifiedAtwater:
		return modifiedAtwater
	case s == energy.Dog:
		return atwaterDog
	}
	return atwaterCat
}

// energy returns the sum, 10 × that of the kcal in 100 g. The products are
// kept from being fused with the sums.
func (f factors) energy(protein, fat, nfe units.Percent) units.EnergyDensity {
	return units.EnergyDensity(10 * (float64(f.protein*float64(protein)) + float64(f.fat*float64(fat)) + float64(f.nfe*float64(nfe))))
}

// fourStep sets the energy and the steps.
func (r *Prediction) fourStep(a *Analysis) {
	c := fourStepOf(r.Species)
	r.Gross = grossEnergy.energy(a.Protein, a.Fat, r.NFE+a.Fibre)
	r.Fibre = DryMatter(float64(a.Fibre) / (1 - a.Moisture.Fraction()))
	r.Digestibility = units.Percent(c.most - float64(c.slope*float64(r.Fibre)))
	r.Digestible = units.EnergyDensity(float64(r.Gross) * r.Digestibility.Fraction())
	r.Energy = r.Digestible - units.EnergyDensity(float64(10*c.urine*float64(a.Protein)))
}

func fourStepOf(s energy.Species) fourStep {
	if s == energy.Dog {
		return fourStepDog
	}
	return fourStepCat
}
