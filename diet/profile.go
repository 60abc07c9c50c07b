package diet

import (
	"iter"
	"maps"
	"math"
	"slices"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// Profile is the nutrients of a food for 1000 kcal of its metabolizable energy.
// A nutrient that isn't given is not known, which is not the same as none of
// it. The zero value gives nothing. A Profile is comparable.
type Profile struct {
	amounts [lastNutrient + 1]PerMcal
	given   uint32 // the bit of each nutrient that is given
}

// Profile returns the crude protein and fat of a, for food that has the energy
// e as fed. What a doesn't give is not given. [Profile.With] adds the others:
//
//	p, err := bag.Analysis.Profile(d.Energy)
//	p, err = p.With(map[diet.Nutrient]diet.PerMcal{
//		diet.Calcium: diet.GramsPerMcal(1.1, d.Energy),      // 1.1 % as fed
//		diet.Copper:  diet.GramsPerMcal(0.0015, d.Energy),   // 15 mg/kg
//		diet.Taurine: diet.DryMatter(0.2).PerMcal(dryEnergy), // 0.2 % of dry matter
//	})
//
// [Guaranteed] figures are the least that the food holds: a shortfall in them
// may not be one, so ask for the typical analysis.
//
// A figure that no food can have, an energy that isn't above zero, and one that
// is too little for the protein or the fat are a [*units.FieldError], figures that
// come to more than 105 % (ours) an [*AnalysisError], several at once a
// [units.ErrorList].
func (a Analysis) Profile(e units.EnergyDensity) (Profile, error) {
	var errs units.ErrorList
	if !a.isSound(a.Defaults) {
		a.faults(&errs, a.Defaults)
	}
	if len(errs) == 0 {
		if err := a.overflow(); err != nil {
			errs = append(errs, err)
		}
	}
	if !isPositive(float64(e)) {
		errs = append(errs, refuse("energy", number(float64(e))+" kcal/kg", "above 0 kcal/kg as fed"))
	}
	if err := errs.Err(); err != nil {
		return Profile{}, err
	}
	contents := make(map[Nutrient]PerMcal)
	if a.isGiven(CrudeProtein) {
		contents[Protein] = GramsPerMcal(a.Protein, e)
	}
	if a.isGiven(CrudeFat) {
		contents[Fat] = GramsPerMcal(a.Fat, e)
	}
	return Profile{}.With(contents)
}

// With returns p with these contents, which replace those that p gives of the
// same nutrients. Zero is none of the nutrient. Every unknown nutrient and
// every content that is negative or more than a food holds is a
// [*units.FieldError], all of them in a [units.ErrorList].
func (p Profile) With(contents map[Nutrient]PerMcal) (Profile, error) {
	var errs units.ErrorList
	for _, n := range slices.Sorted(maps.Keys(contents)) {
		switch v := contents[n]; {
		case n == 0 || n > lastNutrient:
			errs = append(errs, refuse("nutrient", "out of range", enum.List(nutrientNames)))
		case !(v >= 0 && v <= n.mostPossible()):
			e := refuse("profile."+n.String(), number(float64(v))+" g/1000 kcal", "0 to "+n.mostPossible().String())
			if n >= Iron && v > 0 {
				e.Hint = "milligrams taken for grams?"
			}
			errs = append(errs, e)
		default:
			p.set(n, v)
		}
	}
	if err := errs.Err(); err != nil {
		return Profile{}, err
	}
	return p, nil
}

// Of returns the content of n, and false where it isn't given.
func (p Profile) Of(n Nutrient) (PerMcal, bool) {
	if !p.has(n) {
		return 0, false
	}
	return p.amounts[n], true
}

// All returns the contents that are given, in the order of the nutrients.
func (p Profile) All() iter.Seq2[Nutrient, PerMcal] {
	return func(yield func(Nutrient, PerMcal) bool) {
		for n := Protein; n <= lastNutrient; n++ {
			if p.has(n) && !yield(n, p.amounts[n]) {
				return
			}
		}
	}
}

// IsZero reports whether p gives nothing.
func (p Profile) IsZero() bool { return p.given == 0 }

// Equal reports whether p and q give the same of the same nutrients.
func (p Profile) Equal(q Profile) bool { return p == q }

func (p *Profile) has(n Nutrient) bool { return n <= lastNutrient && p.given&(1<<n) != 0 }

func (p *Profile) set(n Nutrient, v PerMcal) {
	p.amounts[n] = v + 0 // no negative zero, so that equal profiles are ==
	p.given |= 1 << n
}

// mostPossible returns the most of n that a profile may give: ours. Protein
// that supplies all the energy is 286 g at 3.5 kcal/g. The trace elements are
// in milligrams, so that a gram of one is a slip.
func (n Nutrient) mostPossible() PerMcal {
	if n >= Iron {
		return 1
	}
	return 300
}

// isPositive reports whether x is above zero and finite.
func isPositive(x float64) bool { return x > 0 && !math.IsInf(x, 1) }
