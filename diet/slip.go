package diet

import (
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// Slip is a mistake in copying a label that explains why its figures cannot
// all be right. The zero value means that none is known that does.
type Slip uint8

// Slips, by what happened.
const (
	Per100GramsAsPerKilogram Slip = iota + 1 // kcal/100 g typed as kcal/kg
	PerServingAsPerKilogram                  // kcal per cup or can typed as kcal/kg
	PerPoundAsPerKilogram                    // kcal/lb typed as kcal/kg
	PerOunceAsPerKilogram                    // kcal/oz typed as kcal/kg
	PerGramAsPerKilogram                     // kcal/g typed as kcal/kg
	KilojoulesAsKilocalories                 // kJ/kg typed as kcal/kg
	KilojoulesPer100Grams                    // kJ/100 g typed as kcal/kg
	ServingInKilojoules                      // kJ per serving typed as kcal
	KilocaloriesAsKilojoules                 // kcal/kg typed as kJ/kg
	ServingInKilocalories                    // kcal per serving typed as kJ
	DryMatterAsFed                           // kcal/kg of dry matter typed as fed
	EightOuncesAsCup                         // a cup given the mass of eight ounces, 227 g, or its 240 mL as grams
	OuncesAsGrams                            // ounces per serving typed as grams
)

var slipNames = []string{
	"",
	"kcal/100 g typed as kcal/kg", "kcal per serving typed as kcal/kg", "kcal/lb typed as kcal/kg", "kcal/oz typed as kcal/kg",
	"kcal/g typed as kcal/kg", "kJ/kg typed as kcal/kg", "kJ/100 g typed as kcal/kg", "kJ per serving typed as kcal",
	"kcal/kg typed as kJ/kg", "kcal per serving typed as kJ",
	"kcal/kg of dry matter taken for as fed", "8 oz by weight, or 240 mL as grams, taken for a cup", "ounces typed as grams",
}

// String says what happened, as in "kcal/100 g typed as kcal/kg"; empty for
// the zero value.
func (s Slip) String() string { return enum.Text(s, slipNames) }

// correction is a slip undone: what the stated density, or the one that the
// serving implies, has to be multiplied by.
type correction struct {
	slip            Slip
	stated, implied float64
}

// corrections are the slips whose factor is known, the likelier first.
var corrections = [...]correction{
	{Per100GramsAsPerKilogram, 10, 1},
	{PerPoundAsPerKilogram, float64(units.KilocaloriePerPound), 1},
	{KilojoulesAsKilocalories, float64(units.KilojoulePerKilogram), 1},
	{KilojoulesPer100Grams, float64(units.KilojoulePer100Gram), 1},
	{ServingInKilojoules, 1, float64(units.Kilojoule)},
	{KilocaloriesAsKilojoules, 1 / float64(units.Kilojoule), 1},
	{ServingInKilocalories, 1, 1 / float64(units.Kilojoule)},
	{PerOunceAsPerKilogram, float64(units.KilocaloriePerOunce), 1},
	{PerGramAsPerKilogram, 1000, 1},
	{OuncesAsGrams, 1, 1 / units.Ounce.Grams()},
}

// slips returns the slip that brings the three figures of f nearest to each
// other, within noteGap, and another that does so as well. One that leaves an
// energy which no such food has is none.
func (f *Food) slips() (likeliest, or Slip) {
	s := &f.Label.Serving
	if s.isEightOunces() && f.isPlausible(f.Label.Energy) {
		return EightOuncesAsCup, 0
	}
	stated, implied := f.Label.statedRange(), s.impliedRange()
	best := noteGap
	try := func(c correction) {
		if !f.isPlausible(f.Label.Energy * units.EnergyDensity(c.stated)) {
			return
		}
		g := gap(scale(stated, c.stated), scale(implied, c.implied))
		switch {
		case g < best-roundoff || g <= best && likeliest == 0:
			best, likeliest, or = g, c.slip, 0
		case g <= best+roundoff && or == 0:
			or = c.slip
		}
	}
	try(correction{DryMatterAsFed, f.dryMatter(), 1}) // without moisture it changes nothing
	try(corrections[0])
	try(correction{PerServingAsPerKilogram, 1000 / s.Mass.Grams(), 1})
	for _, c := range corrections[1:] {
		try(c)
	}
	return likeliest, or
}

// isPlausible reports whether a slip undone can have left e. A dry food whose
// moisture is not known is taken to be dry.
func (f *Food) isPlausible(e units.EnergyDensity) bool {
	return f.limit(e) == 0 && !(f.Form == Dry && f.Analysis.Moisture == 0 && e < leastDry)
}

// slipsBeyond returns the slips behind a density d that breaks a bound and has
// no third figure to be held against.
func (f *Food) slipsBeyond(d Density) (likeliest, or Slip) {
	dm := units.EnergyDensity(f.dryMatter())
	usual := func(e units.EnergyDensity) bool { return e >= leastDry*dm && e <= mostUsual*dm }
	var candidates []correction
	switch e := d.Energy; {
	case d.Origin == Derived:
		candidates = []correction{
			{slip: ServingInKilojoules, stated: float64(units.Kilojoule)},
			{slip: ServingInKilocalories, stated: 1 / float64(units.Kilojoule)},
			{slip: OuncesAsGrams, stated: 1 / units.Ounce.Grams()},
		}
	case e > mostUsual*dm:
		candidates = []correction{
			{slip: DryMatterAsFed, stated: float64(dm)},
			{slip: KilojoulesAsKilocalories, stated: float64(units.KilojoulePerKilogram)},
		}
	default:
		if usual(e * 10) {
			return Per100GramsAsPerKilogram, PerServingAsPerKilogram
		}
		candidates = []correction{
			{slip: PerGramAsPerKilogram, stated: 1000},
			{slip: KilocaloriesAsKilojoules, stated: 1 / float64(units.Kilojoule)},
		}
	}
	for _, c := range candidates {
		switch {
		case !usual(d.Energy * units.EnergyDensity(c.stated)):
		case likeliest == 0:
			likeliest = c.slip
		default:
			or = c.slip
		}
	}
	return likeliest, or
}

func scale(r units.Range[units.EnergyDensity], by float64) units.Range[units.EnergyDensity] {
	return units.Range[units.EnergyDensity]{Low: r.Low * units.EnergyDensity(by), High: r.High * units.EnergyDensity(by)}
}
