package reftable

import (
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func nursling(s energy.Species, w units.Mass, age energy.Age, m energy.Method) energy.Nursling {
	return energy.Nursling{Animal: energy.Animal{Species: s, Weight: w, Age: age}, Method: m}
}

// newborn is a weight within every bound of the species; the energy of a
// nursling is in proportion to it.
func newborn(s energy.Species) units.Mass {
	if s == energy.Cat {
		return 150 * units.Gram
	}
	return 400 * units.Gram
}

// The day of life, from 1, that stands for the words of the sources; the others
// name no age, and their figure is that of NRC 2006.
var nurslingDays = map[string]energy.Age{
	"1-3": 2, "4-6": 5, "over 6": 14, // days
	"2": 11, "4": 25, // weeks
}

// nurslingEnergy evaluates the energy of a nursling for a unit of its weight.
func nurslingEnergy(r Row, in inputs) (float64, error) {
	kind := species(in)
	var s energy.Nursling
	switch what(r) {
	case "energy intake of orphan kitten":
		s = nursling(kind, newborn(kind), nurslingDays[in["age_days"]], 0)
	case "daily energy of orphan puppy", "energy requirement at 4 weeks":
		s = nursling(kind, newborn(kind), nurslingDays[in["age_weeks"]], 0)
	case "energy of orphan kitten":
		s = nursling(kind, newborn(kind), 14, 0)
	case "energy of newborn", "energy of newborn until weaning", "energy before weaning":
		s = nursling(kind, newborn(kind), 14, energy.NRC2006)
	default:
		return 0, ErrNoEvaluator
	}
	e, err := s.Estimate()
	if err != nil {
		return 0, err
	}
	perKilogram := units.EnergyDensity(end(r, in, e).Kilocalories()/e.Weight.Kilograms()) * units.KilocaloriePerKilogram
	switch r.Unit {
	case "kcal/kg/day":
		return perKilogram.KilocaloriesPerKilogram(), nil
	case "kcal/100 g/day":
		return perKilogram.KilocaloriesPer100Grams(), nil
	case "kcal/lb/day":
		return perKilogram.KilocaloriesPerPound(), nil
	}
	return 0, ErrNoEvaluator
}

// orphan is the estimate of a kitten of the row's weight in its third week, when
// the 20 kcal/100 g of the shelter charts are the low end of what is published.
func orphan(in inputs) (energy.Estimate, error) {
	g, err := in.number("bw_g")
	if err != nil {
		return energy.Estimate{}, err
	}
	return nursling(energy.Cat, units.Mass(g)*units.Gram, 3*energy.Week, 0).Estimate()
}

// orphanChart evaluates the energies and the volumes of milk of the charts for
// orphan kittens. The mass of a millilitre is not in the row and cancels out.
func orphanChart(r Row, in inputs) (float64, error) {
	switch {
	case in.signature() == "bw_g species" && strings.HasPrefix(r.Quantity, "daily energy of orphan kitten"):
		e, err := orphan(in)
		return e.Low.Kilocalories(), err
	case in.signature() == "bw_g kcal_per_ml species" && r.Unit == "mL/day":
		need, err := orphan(in)
		if err != nil {
			return 0, err
		}
		x, err := in.number("kcal_per_ml")
		if err != nil {
			return 0, err
		}
		need.Daily = need.Low
		millilitre := diet.Serving{Name: "mL", Energy: units.Energy(x) * units.Kilocalorie, Mass: units.Gram}
		g, err := grams(need, diet.Food{Name: r.ID, Label: diet.Label{Serving: millilitre}})
		return g / millilitre.Mass.Grams(), err
	}
	return 0, ErrNoEvaluator
}

// kittenGain evaluates the daily gain of a kitten in grams.
func kittenGain(r Row, in inputs) (float64, error) {
	if species(in) != energy.Cat || r.Unit != "g/day" {
		return 0, ErrNoEvaluator
	}
	g, err := nursling(energy.Cat, newborn(energy.Cat), 14, 0).DailyGain()
	if err != nil {
		return 0, err
	}
	switch r.Quantity {
	case "minimum daily gain":
		return g.Alarm.Grams(), nil
	case "average daily gain" + lowEnd:
		return g.Low.Grams(), nil
	case "average daily gain" + highEnd:
		return g.High.Grams(), nil
	}
	return 0, ErrNoEvaluator
}
