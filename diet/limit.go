package diet

import "example.org/bowlgram/units"

// Bounds on the metabolizable energy of dry matter, in kcal/kg. The first is
// the gross energy of fat, 9.4 kcal/g (NRC 2006 in FEDIAF Annex 1), which no
// food can exceed; using it and the others as bounds is ours.
const (
	mostPossible units.EnergyDensity = 9400 // above: refused
	mostUsual    units.EnergyDensity = 6500 // above: a warning, but for a fat or oil
	leastUsual   units.EnergyDensity = 2500 // below: a warning, but for a liquid
	leastDry     units.EnergyDensity = 1000 // below: refused, grams would be tenfold
)

// Bounds on the energy of a food as fed whose moisture is not known, in
// kcal/kg; ours.
const (
	leastAsFed units.EnergyDensity = 500 // below: refused, but for a liquid, and a warning for what complements a diet
	leastKnown units.EnergyDensity = 10  // below: refused, kcal/g taken for kcal/kg
)

// dryMatter returns the fraction of f that is not water; 1, the most it can
// be, where the moisture is not known.
func (f *Food) dryMatter() float64 { return 1 - f.Analysis.Moisture.Fraction() }

// wetDryMatter is the most dry matter of a wet food, which has more than 60 %
// of water (review, Animals (Basel) 2024;14:1095, Table 1). As a bound on its
// energy where the moisture is not known: ours.
const wetDryMatter = 0.4

// mostDoubtless returns the energy as fed above which f is warned about.
func (f *Food) mostDoubtless() units.EnergyDensity {
	dm := f.dryMatter()
	if (f.Form == Wet || f.Form == 0 && f.Label.Serving.isCan()) && f.Analysis.Moisture == 0 {
		dm = wetDryMatter
	}
	return mostUsual * units.EnergyDensity(dm)
}

// limit returns the bound that the energy e of f as fed breaks, or 0.
func (f *Food) limit(e units.EnergyDensity) units.EnergyDensity {
	dm := units.EnergyDensity(f.dryMatter())
	if most := mostPossible * dm; !(e <= most) { // an infinite e breaks it too
		return most
	}
	least := leastDry * dm
	if f.Analysis.Moisture == 0 {
		least = leastAsFed
		if f.Form == Liquid || f.Role == Complementary {
			least = leastKnown
		}
	}
	if e < least {
		return least
	}
	return 0
}
