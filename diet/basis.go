package diet

import (
	"example.org/bowlgram/units"
)

// A content as fed is a [units.Percent]. The other bases are types of their
// own, so that none can be used in place of another by accident: going from one
// to the next takes the moisture, which is in the [Analysis], or the energy
// density, which has a type for each of the two bases it is on.

// DryMatter is a content in percent of the dry matter, what is left without the
// water.
type DryMatter float64

// DryEnergy is an energy density in kcal for a kilogram of dry matter.
type DryEnergy float64

// PerMcal is a content in grams for 1000 kcal of metabolizable energy.
type PerMcal float64

// PerMJ is a content in grams for a megajoule of metabolizable energy.
type PerMJ float64

// EnergyShare is the part of the metabolizable energy that a constituent
// supplies, in percent.
type EnergyShare float64

// DryMatter returns a content of the food as fed as one of its dry matter:
// 9 % of a food with 75 % of moisture is 36 % of the dry matter. The error is a
// [*units.FieldError] where the moisture is not given or can't be.
func (a Analysis) DryMatter(content units.Percent) (DryMatter, error) {
	dry, err := a.dry()
	if err != nil {
		return 0, err
	}
	return DryMatter(float64(content) / dry), nil
}

// AsFed returns a content of the dry matter as one of the food as fed, as
// [Analysis.DryMatter] undoes. Neither says whether a food can hold so much.
func (a Analysis) AsFed(content DryMatter) (units.Percent, error) {
	dry, err := a.dry()
	if err != nil {
		return 0, err
	}
	return units.Percent(float64(content) * dry), nil
}

// DryEnergy returns the energy density of the dry matter of a food that has e
// as fed: 1120 kcal/kg with 75 % of moisture is 4480 kcal/kg of dry matter. The
// error is that of [Analysis.DryMatter].
func (a Analysis) DryEnergy(e units.EnergyDensity) (DryEnergy, error) {
	dry, err := a.dry()
	if err != nil {
		return 0, err
	}
	return DryEnergy(float64(e) / dry), nil
}

// AsFedEnergy returns the energy density as fed, as [Analysis.DryEnergy]
// undoes.
func (a Analysis) AsFedEnergy(e DryEnergy) (units.EnergyDensity, error) {
	dry, err := a.dry()
	if err != nil {
		return 0, err
	}
	return units.EnergyDensity(float64(e) * dry), nil
}

// dry returns the fraction that is not water, above 0.
func (a *Analysis) dry() (float64, error) {
	moisture := a.Moisture
	if !a.isGiven(Moisture) {
		d, ok := defaultOf(a.Defaults, Moisture)
		if !ok {
			return 0, a.missing(Moisture)
		}
		moisture = d.content
	}
	if !a.isMoisture(a.Defaults) {
		var errs units.ErrorList
		a.faults(&errs, a.Defaults)
		return 0, errs.Err()
	}
	return 1 - moisture.Fraction(), nil
}

// GramsPerMcal returns a content as fed on the basis of the energy, e being
// that of the food as fed: 8.0 % at 1198 kcal/kg is 66.8 g/1000 kcal. It is
// infinite or NaN where e is zero, and so are the others: a caller checks e
// first.
func GramsPerMcal(content units.Percent, e units.EnergyDensity) PerMcal {
	return PerMcal(float64(content) * 1e4 / float64(e))
}

// AsFed returns the content of a food that has e as fed.
func (p PerMcal) AsFed(e units.EnergyDensity) units.Percent {
	return units.Percent(float64(p) * float64(e) / 1e4)
}

// PerMcal returns d on the basis of the energy, e being that of the dry matter.
func (d DryMatter) PerMcal(e DryEnergy) PerMcal { return PerMcal(float64(d) * 1e4 / float64(e)) }

// DryMatter returns the content of the dry matter where that has e. At 4000
// kcal/kg it is the basis on which the nutrient profiles of AAFCO, which
// correct richer foods to it, and of FEDIAF are printed.
func (p PerMcal) DryMatter(e DryEnergy) DryMatter { return DryMatter(float64(p) * float64(e) / 1e4) }

// PerMJ returns p for a megajoule, 1000 kcal being 4.184 MJ.
func (p PerMcal) PerMJ() PerMJ { return PerMJ(float64(p) / 4.184) }

// PerMcal returns p for 1000 kcal.
func (p PerMJ) PerMcal() PerMcal { return PerMcal(float64(p) * 4.184) }

// EnergyShare returns the part of the energy that p supplies where a gram
// supplies factor, as in 3.5 kcal/g of protein.
func (p PerMcal) EnergyShare(factor units.EnergyDensity) EnergyShare {
	return EnergyShare(float64(p) * factor.KilocaloriesPerGram() / 10)
}

// PerMcal returns the content that supplies the part s where a gram supplies
// factor.
func (s EnergyShare) PerMcal(factor units.EnergyDensity) PerMcal {
	return PerMcal(float64(s) * 10 / factor.KilocaloriesPerGram())
}

// EnergyShares is where the metabolizable energy of a food comes from; the
// three come to 100 %.
type EnergyShares struct {
	Protein EnergyShare `json:"protein"`
	Fat     EnergyShare `json:"fat"`
	NFE     EnergyShare `json:"nfe"`
}

// EnergyShares returns the parts of the energy from protein, fat and
// nitrogen-free extract by the factors of [ModifiedAtwater], as they are
// usually given, whichever equation gave the energy. The error is that of
// [Analysis.Predict].
func (a Analysis) EnergyShares() (EnergyShares, error) {
	p, err := a.Predict(ModifiedAtwater, 0)
	if err != nil {
		return EnergyShares{}, err
	}
	kcal := float64(p.Energy) / 10 // in 100 g
	return EnergyShares{
		Protein: EnergyShare(100 * modifiedAtwater.protein * float64(a.Protein) / kcal),
		Fat:     EnergyShare(100 * modifiedAtwater.fat * float64(a.Fat) / kcal),
		NFE:     EnergyShare(100 * modifiedAtwater.nfe * float64(p.NFE) / kcal),
	}, nil
}
