package diet

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// standardTable is the figures of one standard for one species in some stages.
type standardTable struct {
	standard  Standard
	species   energy.Species
	stages    Stages
	phase     phase
	reference float64 // the intake they are tied to, kcal/kg^0.75 or kg^0.67; 0: none
	limits    []limit
}

// limit is one figure of a standard.
type limit struct {
	nutrient Nutrient
	rule     Rule
	amount   float64 // g/1000 kcal, or the multiple of the phosphorus
	only     condition
	source   *advice.Source
}

// phase is the part of the growth of a dog that FEDIAF tells apart.
type phase uint8

const (
	earlyGrowth phase = iota + 1
	lateGrowth
)

// lateGrowthFrom is the age at which late growth begins: FEDIAF, from memory.
const lateGrowthFrom = 14 * energy.Week

// condition says for which foods or dogs alone a figure holds.
type condition uint8

const (
	always condition = iota
	dryFood
	cannedFood    // and any that is not known to be dry: the larger figure
	largeGrowth   // growth of a dog of 70 lb and more, or of unknown adult weight
	noLargeGrowth // any other
	over15kg      // the adult weight, or not known: the stricter figure
	upTo15kg
)

// Adult weights of dogs at which a standard's figures part.
const (
	largeDog = 31751.4659 * units.Gram // 70 lb, as it is read from text: AAFCO, from memory
	smallDog = 15 * units.Kilogram     // FEDIAF, from memory
)

// profileEnergy is the energy of the dry matter at which the profiles of AAFCO
// and FEDIAF in percent of dry matter are printed.
const profileEnergy DryEnergy = 4000

// dm returns a figure in percent of the dry matter for 1000 kcal. It is used
// where that is the less rounded one: 22.5 % is 56.25 g/1000 kcal, printed 56.3.
func dm(percent DryMatter) float64 { return float64(percent.PerMcal(profileEnergy)) }

// mg returns milligrams in grams.
func mg(x float64) float64 { return x / 1000 }

// table returns the figures for a, which must be sound; nil where the standard
// has none.
func (a *Adequacy) table() *standardTable {
	want := earlyGrowth
	if a.Stage == Growth && a.Animal.Age >= lateGrowthFrom {
		want = lateGrowth
	}
	for i := range standardTables {
		t := &standardTables[i]
		if t.standard == a.Standard && t.species == a.Animal.Species && t.stages.Has(a.Stage) && (t.phase == 0 || t.phase == want) {
			return t
		}
	}
	return nil
}

// holds reports whether a figure under that condition is for a.
func (a *Adequacy) holds(c condition) bool {
	large := a.Stage == Growth && (a.AdultWeight == 0 || a.AdultWeight >= largeDog)
	small := a.AdultWeight > 0 && a.AdultWeight <= smallDog
	switch c {
	case dryFood:
		return a.Form == Dry
	case cannedFood:
		return a.Form != Dry
	case largeGrowth:
		return large
	case noLargeGrowth:
		return !large
	case over15kg:
		return !small
	case upTo15kg:
		return small
	}
	return true
}
