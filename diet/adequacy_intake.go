package diet

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// intake returns the energy that a grown animal gets for each kg of metabolic
// weight, at its ideal weight.
func (a *Adequacy) intake() (float64, units.ErrorList) {
	var faults units.ErrorList
	if now := circumstances(a.Animal); now&(energy.Growing|energy.Pregnant|energy.Lactating) != 0 {
		e := refuse("stage", a.Stage.String(), "growth or reproduction for this animal")
		e.Hint = "it is " + (now & (energy.Growing | energy.Pregnant | energy.Lactating)).String()
		return 0, append(faults, e)
	}
	if !isPositive(float64(a.Daily)) {
		faults = append(faults, refuse("daily", a.Daily.String(), "the kcal of a day, above 0"))
	}
	if a.Animal.Species != energy.Dog && a.Animal.Species != energy.Cat {
		return 0, faults // said by the caller
	}
	ideal, err := energy.IdealWeight(a.Animal, 0)
	if faults = errlist.Add(faults, err); len(faults) > 0 {
		return 0, faults
	}
	return a.Daily.Kilocalories() / energy.MetabolicWeight(a.Animal.Species, ideal.Weight), nil
}

// metabolicUnit is what an intake of s is in.
func metabolicUnit(s energy.Species) string {
	if s == energy.Cat {
		return "kcal/kg^0.67"
	}
	return "kcal/kg^0.75"
}
