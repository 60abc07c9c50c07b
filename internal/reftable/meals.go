package reftable

import (
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// mealsADay evaluates how many meals are recommended.
func mealsADay(r Row, in inputs) (float64, error) {
	if !strings.HasPrefix(r.Unit, "meals/d") && r.Unit != "smaller meals/d (rather than one)" {
		return 0, ErrNoEvaluator
	}
	kind := energy.Dog
	if in["species"] == "cat" {
		kind = energy.Cat
	}
	a := healthy(kind, typical(kind))
	var s energy.Stage = energy.Adult{Animal: a, Status: energy.Neutered}
	switch what(r) + "; " + in["life_stage"] + in["age_mo"] {
	case "meals per day; adult", "meals per day; ", "large or deep-chested dogs; ":
	case "meals per day; growth":
		s = growing(kind, 0.5, 0, 0)
	case "meals per day; pregnant_or_nursing_or_kitten_or_debilitated":
		s = lactating(kind, a.Weight, 3, 3, 0)
	case "meals per day; 6":
		s = growing(kind, 0.5, 6*energy.Month, 0)
	case "meals per day; 1.5-6":
		s = growing(kind, 0.5, 3*energy.Month, 0)
	case "meals per day in weight loss; ":
		a.Condition = energy.BCS9(8)
		s = energy.WeightLoss{Animal: a}
	default:
		return 0, ErrNoEvaluator
	}
	e, err := s.Estimate()
	if err != nil {
		return 0, err
	}
	f, ok := portion.MealsFor(e)
	if !ok {
		return 0, ErrNoEvaluator
	}
	if strings.HasSuffix(r.Quantity, highEnd) {
		return float64(f.High), nil
	}
	return float64(f.Low), nil
}

// energyByMonth evaluates the energies that stand beside the meals: a kitten's for
// each kilogram by the month, a ferret's and a jill's.
func energyByMonth(r Row, in inputs) (float64, error) {
	var s energy.Stage
	switch {
	case r.Unit == "kcal/kg/d" && in.signature() == "age_mo species" && in["species"] == "cat":
		months, err := in.number("age_mo")
		if err != nil {
			return 0, err
		}
		s = growing(energy.Cat, 0, energy.Age(months)*energy.Month, energy.PerKilogram)
	case r.Unit == "kcal/kg/d" && in.signature() == "species" && in["species"] == "ferret":
		s = energy.Adult{Animal: healthy(energy.Ferret, units.Kilogram)}
	case what(r) == "energy, peak lactation" && in["species"] == "ferret":
		return ferretDam(r, inputs{"species": "ferret", "state": "peak-lactation"})
	default:
		return 0, ErrNoEvaluator
	}
	e, err := s.Estimate()
	return end(r, in, e).Kilocalories() / e.Weight.Kilograms(), err
}
