package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Resting is the resting energy requirement (RER) of a dog or a cat of any
// age: 70 × kg^0.75 kcal/day by default. It is a basis for other figures and a
// feeding goal only where a veterinarian says so.
//
// Method RERLinear takes 30 × kg + 70 instead, refuses weights outside 2 to
// 45 kg and cautions above 30 kg. No allometric equation is published for
// ferrets, which are refused, as are other species.
type Resting struct {
	Animal Animal `json:"animal"`          // a dog or a cat
	Method Method `json:"method,omitzero"` // RERPower (default) or RERLinear
}

// restingReweigh is the shorter end of the published 2 to 4 weeks. Ours.
const restingReweigh = 2 * Week

// Estimate returns the resting energy requirement.
func (r Resting) Estimate() (Estimate, error) {
	method := r.Method
	if method == 0 {
		method = RERPower
	}
	a := r.Animal
	faults := a.check(true)
	switch {
	case a.Species == 0:
		faults = append(faults, refuse("species", "", "dog or cat", "not given"))
	case a.Species == Ferret || a.Species == Other:
		faults = append(faults, refuse("species", a.Species.String(), "dog or cat",
			"no resting-energy equation is published for it: Adult for a ferret, Prescribed for any animal"))
	case a.Species.isValid():
		if err := a.checkWeight(anyStage[:], ""); err != nil {
			faults = append(faults, err)
		}
	}
	w, basis := a.weightUsed()
	switch {
	case method != RERPower && method != RERLinear:
		faults = append(faults, refuse("method", method.given(), "rer_power or rer_linear", ""))
	case method == RERLinear && len(faults) == 0 && (w < linearLow || linearHigh < w):
		faults = append(faults, refuse("weight", w.String(), "2 kg to 45 kg for method rer_linear", "rer_power takes any weight"))
	}
	if len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	daily := rer(w)
	if method == RERLinear {
		daily = rerLinear(w)
	}
	e := Estimate{
		Stage: r, Animal: a, Weight: w, Basis: basis, Method: method,
		Daily: daily, Reweigh: restingReweigh,
	}
	e.Low, e.High = spread(a.Species, daily)
	return e, nil
}

func (r Resting) explain(e Estimate, w *working) {
	if e.Method == RERLinear {
		kg := short(e.Weight.Kilograms())
		w.line("formula", "resting energy = 30 × kg + 70 (only from 2 to 45 kg)")
		w.line("", "= 30 × "+kg+" + 70 = "+kcal1(e.Daily)+"; 70 × kg^0.75 would give "+kcal1(rer(e.Weight)))
		w.source(sourceRER)
	} else {
		explainRER(w, e.Weight)
	}
	explainSpread(w, e.Animal.Species)
}

func (r Resting) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	c = append(c, advice.Caution{
		Level: advice.Note, Text: "resting energy is not a day's ration for a healthy animal", Source: ours,
	})
	const more = Growing | Pregnant | Lactating
	if a := &e.Animal; a.Circumstances&more != 0 || 0 < a.Age && a.Age < grown {
		c = append(c, advice.Caution{
			Level: advice.Refer, Text: "a growing, pregnant or lactating animal needs a multiple of its resting energy", Source: ours,
		})
	}
	if e.Method == RERLinear && e.Weight > linearWarn {
		c = append(c, advice.Caution{
			Level:  advice.Warn,
			Text:   "above 30 kg the linear equation runs high: " + kcal(e.Daily) + " against " + kcal(rer(e.Weight)) + " by 70 × kg^0.75",
			Source: advice.Source{Work: "Saar R, talk report, dvm360, 2021", Seen: advice.Primary},
		})
	}
	return c
}

// explainSpread names where Low and High come from.
func explainSpread(w *working, s Species) {
	if s == Cat {
		w.line("spread", "±50 %: "+sourceSpreadCat.String())
	} else {
		w.line("spread", "±30 %: "+sourceSpreadDog.String())
	}
}

// startingEstimate is said of every figure that an equation gave.
func startingEstimate() advice.Caution {
	return advice.Caution{
		Level: advice.Note, Text: "a starting estimate, not a need: weigh the animal and correct it", Source: sourceBox,
	}
}

// appendWeightWatch cautions at weights that are rarer than a slip of the unit.
func appendWeightWatch(c []advice.Caution, a *Animal) []advice.Caution {
	usual := usualAdults[a.Species]
	if usual.contains(a.Weight) {
		return c
	}
	text := readable(a.Weight) + " is unusual for an adult " + a.Species.String() + ": if "
	if a.Weight > usual.high {
		text += "it was pounds, the weight is " + round((units.Mass(a.Weight.Kilograms())*units.Pound).Kilograms(), 2) + " kg"
	} else {
		text += "kilograms were typed as pounds, the weight is " + short(a.Weight.Pounds()) + " kg"
	}
	return append(c, advice.Caution{Level: advice.Warn, Source: ours, Text: text})
}
