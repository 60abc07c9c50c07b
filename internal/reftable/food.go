package reftable

import (
	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// numbers returns the inputs of those keys.
func (in inputs) numbers(keys ...string) ([]float64, error) {
	var list []float64
	for _, key := range keys {
		x, err := in.number(key)
		if err != nil {
			return nil, err
		}
		list = append(list, x)
	}
	return list, nil
}

// serving finds the third of a label's figures from two.
func serving(r Row, in inputs) (float64, error) {
	var label diet.Label
	switch in.signature() {
	case "kcal_per_cup kcal_per_kg":
		x, err := in.numbers("kcal_per_cup", "kcal_per_kg")
		if err != nil {
			return 0, ErrNoEvaluator // the formula row
		}
		label.Serving = diet.Serving{Name: "cup", Energy: units.Energy(x[0]) * units.Kilocalorie}
		label.Energy = units.EnergyDensity(x[1]) * units.KilocaloriePerKilogram
	case "g_per_cup kcal_per_kg", "can_g kcal_per_kg":
		key, _ := in.first("g_per_cup", "can_g")
		x, err := in.numbers(key, "kcal_per_kg")
		if err != nil {
			return 0, err
		}
		label.Serving = diet.Serving{Name: "serving", Mass: units.Mass(x[0]) * units.Gram}
		label.Energy = units.EnergyDensity(x[1]) * units.KilocaloriePerKilogram
	default:
		return 0, ErrNoEvaluator
	}
	d, err := diet.Food{Name: r.ID, Label: label}.Density()
	if err != nil {
		return 0, err
	}
	switch r.Unit {
	case "g/cup":
		return d.Serving.Mass.Grams(), nil
	case "kcal/cup", "kcal/can":
		return d.Serving.Energy.Kilocalories(), nil
	}
	return 0, ErrNoEvaluator
}

// amount weighs the food that holds a day's energy.
func amount(r Row, in inputs) (float64, error) {
	switch r.Unit {
	case "g", "g/day", "g DM/day":
	default:
		return 0, ErrNoEvaluator
	}
	switch in.signature() {
	case "density_kcal_per_100g der_kcal_day", "density_kcal_per_100g_dm energy_kcal_day",
		"density_kcal_per_100g_dm mer_kcal_day", "der_kcal kcal_100g", "kcal_100g_dm kcal_day",
		"de_kcal_day density_kcal_de_per_kg_dm":
		need, err := prescribed(in)
		if err != nil {
			return 0, err
		}
		return weigh(r, in, need)
	case "bw_kg coef kcal_per_100g_dm species":
		animal, err := patient(in)
		if err != nil {
			return 0, err
		}
		c, ok := columnOf(in)
		if !ok {
			return 0, ErrNoEvaluator
		}
		need, err := c.stage(animal.Weight).Estimate()
		if err != nil {
			return 0, err
		}
		return weigh(r, in, need)
	case "g_per_cup kcal_per_cup need_kcal":
		x, err := in.numbers("kcal_per_cup", "g_per_cup")
		if err != nil {
			return 0, err
		}
		need, err := prescribed(in)
		if err != nil {
			return 0, err
		}
		return grams(need, diet.Food{Name: r.ID, Label: diet.Label{Serving: diet.Serving{
			Name: "cup", Energy: units.Energy(x[0]) * units.Kilocalorie, Mass: units.Mass(x[1]) * units.Gram,
		}}})
	}
	return 0, ErrNoEvaluator
}

// cups gives the cups that hold a day's energy. The mass of a cup is not in
// the row and cancels out.
func cups(r Row, in inputs) (float64, error) {
	if in.signature() != "bw_kg density_kcal_per_cup energy_kcal_day species" || r.Unit != "cup/day" {
		return 0, ErrNoEvaluator
	}
	x, err := in.numbers("density_kcal_per_cup")
	if err != nil {
		return 0, err
	}
	need, err := prescribed(in)
	if err != nil {
		return 0, err
	}
	cup := diet.Serving{Name: "cup", Energy: units.Energy(x[0]) * units.Kilocalorie, Mass: 100 * units.Gram}
	g, err := grams(need, diet.Food{Name: r.ID, Label: diet.Label{Serving: cup}})
	return g / cup.Mass.Grams(), err
}

// prescribed takes the row's energy as given.
func prescribed(in inputs) (energy.Estimate, error) {
	key, ok := in.first("energy_kcal_day", "der_kcal_day", "mer_kcal_day", "de_kcal_day", "der_kcal", "kcal_day", "need_kcal")
	if !ok {
		return energy.Estimate{}, ErrNoEvaluator
	}
	x, err := in.number(key)
	if err != nil {
		return energy.Estimate{}, err
	}
	return day(x)
}

// weigh weighs a food of the row's energy density.
func weigh(r Row, in inputs, need energy.Estimate) (float64, error) {
	unit := units.KilocaloriePer100Gram
	key, ok := in.first("density_kcal_per_100g", "density_kcal_per_100g_dm", "kcal_100g", "kcal_100g_dm", "kcal_per_100g_dm")
	if !ok {
		key, unit = "density_kcal_de_per_kg_dm", units.KilocaloriePerKilogram
	}
	x, err := in.number(key)
	if err != nil {
		return 0, err
	}
	return grams(need, diet.Food{Name: r.ID, Label: diet.Label{Energy: units.EnergyDensity(x) * unit}})
}

func grams(need energy.Estimate, food diet.Food) (float64, error) {
	ration, err := portion.Weigh(need, diet.Only(food))
	if err != nil {
		return 0, err
	}
	return ration.Portion(0).Mass.Grams(), nil
}
