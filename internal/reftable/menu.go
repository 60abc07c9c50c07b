package reftable

import (
	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// day prescribes so many kilocalories for an animal that no gate stops.
func day(kcal float64) (energy.Estimate, error) {
	return energy.Prescribed{
		Animal: healthy(energy.Dog, 10*units.Kilogram),
		Daily:  units.Energy(kcal) * units.Kilocalorie,
		By:     "the printed example",
	}.Estimate()
}

// ofEnergy is a food of so many kcal/kg.
func ofEnergy(name string, perKilogram float64) diet.Food {
	return diet.Food{Name: name, Label: diet.Label{Energy: units.EnergyDensity(perKilogram) * units.KilocaloriePerKilogram}}
}

// piece is a food that comes in pieces of so many kilocalories. What one weighs
// is not in the rows and cancels out.
func piece(kcal float64) diet.Food {
	return diet.Food{Name: "piece", Label: diet.Label{Serving: diet.Serving{
		Name: "piece", Energy: units.Energy(kcal) * units.Kilocalorie, Mass: units.Mass(kcal / 3),
	}}}
}

// severalFoods weighs a day of dry and wet food, after the treats.
func severalFoods(r Row, in inputs) (float64, error) {
	if in.signature() != "der_kcal dry_kcal_kg dry_share_of_food_energy treat_kcal wet_kcal_kg" {
		return 0, ErrNoEvaluator
	}
	x, err := in.numbers("der_kcal", "dry_kcal_kg", "dry_share_of_food_energy", "treat_kcal", "wet_kcal_kg")
	if err != nil {
		return 0, err
	}
	menu := diet.Menu{
		{Food: ofEnergy("dry food", x[1]), Amount: diet.Share(units.Percent(100 * x[2]))},
		{Food: ofEnergy("wet food", x[4]), Amount: diet.Rest()},
	}
	if x[3] > 0 {
		menu = append(menu, diet.Item{Food: piece(x[3]), Amount: diet.Count(1, "piece"), Treat: true})
	}
	ration, err := weighed(x[0], menu)
	if err != nil {
		return 0, err
	}
	for i := range ration.Len() {
		if p := ration.Portion(i); p.Food == r.Quantity {
			return p.Mass.Grams(), nil
		}
	}
	return 0, ErrNoEvaluator
}

func weighed(kcal float64, menu diet.Menu) (portion.Ration, error) {
	need, err := day(kcal)
	if err != nil {
		return portion.Ration{}, err
	}
	return portion.Weigh(need, menu)
}

// afterACan weighs the dry food that fills up a day with one can.
func afterACan(r Row, in inputs) (float64, error) {
	dry := ofEnergy("dry food", 4000) // where the row asks for its energy only
	cup := 100 * units.Gram
	switch in.signature() {
	case "can_kcal der_kcal":
	case "can_kcal der_kcal dry_kcal_kg":
		x, err := in.number("dry_kcal_kg")
		if err != nil {
			return 0, err
		}
		dry = ofEnergy("dry food", x)
	case "can_kcal der_kcal dry_kcal_cup":
		x, err := in.number("dry_kcal_cup")
		if err != nil {
			return 0, err
		}
		dry = diet.Food{Name: "dry food", Label: diet.Label{Serving: diet.Serving{Name: "cup", Energy: units.Energy(x), Mass: cup}}}
	default:
		return 0, ErrNoEvaluator
	}
	x, err := in.numbers("can_kcal", "der_kcal")
	if err != nil {
		return 0, err
	}
	ration, err := weighed(x[1], diet.Menu{{Food: piece(x[0]), Amount: diet.Count(1, "piece")}, {Food: dry, Amount: diet.Rest()}})
	if err != nil {
		return 0, err
	}
	p := ration.Portion(1)
	switch r.Unit {
	case "kcal/day":
		return p.Energy.Kilocalories(), nil
	case "g/day":
		return p.Mass.Grams(), nil
	case "cup/day":
		return float64(p.Mass / cup), nil
	}
	return 0, ErrNoEvaluator
}

// counted gives the energy of so many cans or treats, and their part of a day.
func counted(r Row, in inputs) (float64, error) {
	switch in.signature() {
	case "cans_day kcal_can", "kcal_treat treats_day":
		unit, count := "kcal_can", "cans_day"
		if _, ok := in["kcal_treat"]; ok {
			unit, count = "kcal_treat", "treats_day"
		}
		x, err := in.numbers(unit, count)
		if err != nil {
			return 0, err
		}
		ration, err := weighed(1000, diet.Menu{
			{Food: piece(x[0]), Amount: diet.Count(x[1], "piece"), Treat: true},
			{Food: ofEnergy("the rest", 3500), Amount: diet.Rest()},
		})
		if err != nil {
			return 0, err
		}
		return ration.Portion(0).Energy.Kilocalories(), nil
	case "der_kcal treat_kcal":
		x, err := in.numbers("der_kcal", "treat_kcal")
		if err != nil {
			return 0, err
		}
		ration, err := weighed(x[0], diet.Menu{
			{Food: piece(x[1]), Amount: diet.Count(1, "piece"), Treat: true},
			{Food: ofEnergy("the rest", 3500), Amount: diet.Rest()},
		})
		if err != nil {
			return 0, err
		}
		return 100 * float64(ration.Portion(0).Energy/ration.Need().Daily), nil
	}
	return 0, ErrNoEvaluator
}

// blend mixes two foods by weight.
func blend(r Row, in inputs) (float64, error) {
	if in.signature() != "dry_g dry_kcal_kg wet_g wet_kcal_kg" {
		return 0, ErrNoEvaluator
	}
	x, err := in.numbers("dry_g", "dry_kcal_kg", "wet_g", "wet_kcal_kg")
	if err != nil {
		return 0, err
	}
	f, err := diet.Mix{Parts: []diet.Part{
		{Food: ofEnergy("dry", x[1]), Amount: diet.Fixed(units.Mass(x[0]) * units.Gram)},
		{Food: ofEnergy("wet", x[3]), Amount: diet.Fixed(units.Mass(x[2]) * units.Gram)},
	}}.Food()
	if err != nil {
		return 0, err
	}
	d, err := f.Density()
	return d.Energy.KilocaloriesPerKilogram(), err
}
