package reftable

import (
	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// packCost gives what a mass out of a can costs.
func packCost(r Row, in inputs) (float64, error) {
	x, err := in.numbers("price_can_usd", "can_g")
	if err != nil {
		return 0, ErrNoEvaluator
	}
	can, err := pack(x[0], units.Mass(x[1])*units.Gram)
	if err != nil {
		return 0, err
	}
	mass := 1.0
	switch in.signature() + " to " + r.Unit {
	case "can_g price_can_usd to USD/g":
	case "can_g feed_g_day price_can_usd to USD/day":
		mass, err = in.number("feed_g_day")
	case "can_g days feed_g_day price_can_usd to USD/year":
		var y []float64
		if y, err = in.numbers("feed_g_day", "days"); err == nil {
			mass = y[0] * y[1]
		}
	default:
		return 0, ErrNoEvaluator
	}
	if err != nil {
		return 0, err
	}
	cost, ok := can.Cost(units.Mass(mass) * units.Gram)
	if !ok {
		return 0, ErrNoEvaluator
	}
	return cost.Amount(), nil
}

// energyCost gives what 1000 kcal cost.
func energyCost(r Row, in inputs) (float64, error) {
	if r.Unit != "USD/1000 kcal" {
		return 0, ErrNoEvaluator
	}
	food := diet.Food{Name: r.ID}
	var net units.Mass
	var price float64
	switch in.signature() {
	case "can_g feed_g kcal price_can_usd":
		x, err := in.numbers("can_g", "feed_g", "kcal", "price_can_usd")
		if err != nil {
			return 0, err
		}
		food.Label.Serving = diet.Serving{Energy: units.Energy(x[2]) * units.Kilocalorie, Mass: units.Mass(x[1]) * units.Gram}
		net, price = units.Mass(x[0])*units.Gram, x[3]
	case "kcal_can price_can_usd":
		x, err := in.numbers("kcal_can", "price_can_usd")
		if err != nil {
			return 0, err
		}
		net, price = 100*units.Gram, x[1] // the mass of the can cancels out
		food.Label.Serving = diet.Serving{Energy: units.Energy(x[0]) * units.Kilocalorie, Mass: net}
	case "usd_per_100kcal":
		x, err := in.number("usd_per_100kcal")
		if err != nil {
			return 0, err
		}
		net, price = 100*units.Gram, x
		food.Label.Serving = diet.Serving{Energy: 100 * units.Kilocalorie, Mass: net}
	default:
		return 0, ErrNoEvaluator
	}
	p, err := pack(price, net)
	if err != nil {
		return 0, err
	}
	food.Label.Packs[0] = p
	rows, err := diet.Compare(food)
	if err != nil {
		return 0, err
	}
	return rows[0].Cost.Amount(), nil
}

func pack(usd float64, net units.Mass) (diet.Pack, error) {
	price, err := diet.NewPrice(usd, "USD")
	return diet.Pack{Net: net, Price: price}, err
}
