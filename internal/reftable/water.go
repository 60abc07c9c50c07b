package reftable

import (
	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// dailyWater evaluates the ends of what is published of an animal's daily water.
func dailyWater(r Row, _ inputs) (float64, error) {
	var basis portion.WaterBasis
	switch r.Unit {
	case "mL/kg/d":
		basis = portion.ByWeight
	case "mL per g dietary dry matter":
		basis = portion.ByDryMatter
	default:
		return 0, ErrNoEvaluator
	}
	if what(r) == r.Quantity { // no end of a range
		return 0, ErrNoEvaluator
	}
	const dry = 0.5
	need, err := energy.Prescribed{Animal: healthy(energy.Dog, typical(energy.Dog)), Daily: 500, By: "the printed range"}.Estimate()
	if err != nil {
		return 0, err
	}
	food := diet.Food{Name: r.ID, Form: diet.Wet, Analysis: diet.Analysis{Moisture: 100 * (1 - dry)}, Label: diet.Label{Energy: 2000 * units.KilocaloriePerKilogram}}
	ration, err := portion.Weigh(need, diet.Only(food))
	if err != nil {
		return 0, err
	}
	water, err := ration.Water(basis)
	if err != nil {
		return 0, err
	}
	per := need.Animal.Weight.Kilograms()
	if basis == portion.ByDryMatter {
		per = dry * ration.Portion(0).Mass.Grams()
	}
	v := water.Total.Low
	if r.Quantity == what(r)+highEnd {
		v = water.Total.High
	}
	return v.Millilitres() / per, nil
}

// stomach evaluates what a nursling's stomach takes.
func stomach(r Row, in inputs) (float64, error) {
	switch {
	case r.Unit == "mL/100 g" && what(r) == "normal stomach volume of neonate":
		return energy.StomachCapacity(100 * units.Gram).Millilitres(), nil
	case in.signature() == "bw_g species" && (r.Unit == "mL" || r.Unit == "mL/feed"):
		g, err := in.number("bw_g")
		return energy.StomachCapacity(units.Mass(g) * units.Gram).Millilitres(), err
	}
	return 0, ErrNoEvaluator
}

// fewestFeeds evaluates how many feeds a stomach divides the day into, of the
// energy that the charts take for orphan kittens, in marks of 0.01 mL: the
// charts know no syringe.
func fewestFeeds(r Row, in inputs) (float64, error) {
	if in.signature() != "bw_g kcal_per_ml species" || r.Unit != "feeds/day" {
		return 0, ErrNoEvaluator
	}
	need, err := orphan(in)
	if err != nil {
		return 0, err
	}
	need.Daily = need.Low
	x, err := in.number("kcal_per_ml")
	if err != nil {
		return 0, err
	}
	milk := portion.Liquid{Energy: units.EnergyPerVolume(x) * units.KilocaloriePerMillilitre}
	n, err := portion.Bottle{Need: need, Liquid: milk, Mark: 0.01 * units.Millilitre}.LeastFeeds()
	return float64(n), err
}
