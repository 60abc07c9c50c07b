package reftable

import (
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// scored returns an adult of the row's weight and condition score.
func scored(in inputs) (energy.Animal, error) {
	key, ok := in.first("bcs5", "bcs_5pt", "bcs9")
	if !ok {
		return energy.Animal{}, ErrNoEvaluator
	}
	score, err := in.number(key)
	if err != nil {
		return energy.Animal{}, ErrNoEvaluator // a range of scores
	}
	kg, ok := in.first("bw_kg", "bw_lb")
	if !ok {
		return energy.Animal{}, ErrNoEvaluator
	}
	n, err := in.number(kg)
	if err != nil {
		return energy.Animal{}, err
	}
	a := healthy(species(in), units.Mass(n)*units.Kilogram)
	if kg == "bw_lb" {
		a.Weight = units.Mass(n) * units.Pound
	}
	a.Condition = energy.BCS5(int(score))
	if key == "bcs9" {
		a.Condition = energy.BCS9(int(score))
	}
	return a, nil
}

// idealWeight evaluates an ideal weight from a condition score, and the resting
// energy at it.
func idealWeight(r Row, in inputs) (float64, error) {
	method := energy.BodyFat
	switch {
	case strings.HasPrefix(r.Quantity, "ideal body weight from BCS (9-point), subtractive"),
		r.Quantity == "ideal weight, 8/9, subtractive":
		method = energy.PerPoint
	case r.Quantity == "ideal body weight from BCS (5-point)", r.Quantity == "ideal body weight from BCS",
		r.Quantity == "ideal body weight from body fat", strings.HasPrefix(r.Quantity, "table look-up, "),
		r.Quantity == "RER at ideal body weight":
	default:
		return 0, ErrNoEvaluator
	}
	animal, err := scored(in)
	if err != nil {
		return 0, err
	}
	t, err := energy.IdealWeight(animal, method)
	if err != nil {
		return 0, err
	}
	switch r.Unit {
	case "kg", "kg ideal":
		if in["pct_per_unit"] == "15" || strings.HasSuffix(r.Quantity, " 15%/unit") {
			return t.Low.Kilograms(), nil
		}
		return t.Weight.Kilograms(), nil
	case "lb":
		return t.Weight.Pounds(), nil
	case "kcal/d", "kcal/day":
		return perDay(r, energy.Resting{Animal: healthy(animal.Species, t.Weight)})
	}
	return 0, ErrNoEvaluator
}

// perPoint evaluates the excess weight for a point of the condition score.
func perPoint(r Row, in inputs) (float64, error) {
	if r.ID != "mvma-2023-bcs-unit" {
		return 0, ErrNoEvaluator
	}
	dog := healthy(energy.Dog, typical(energy.Dog))
	dog.Condition = energy.BCS9(6)
	t, err := energy.IdealWeight(dog, energy.PerPoint)
	return float64(100*dog.Weight/t.Weight) - 100, err
}

// emaciated finds the loss of weight, in percent of the ideal, from which no
// equation is used.
func emaciated(r Row, _ inputs) (float64, error) {
	if r.Quantity != "emaciated, dog" || r.Unit != "% below ideal (at least)" {
		return 0, ErrNoEvaluator
	}
	ideal := typical(energy.Dog)
	for percent := 0; percent <= 100; percent++ {
		dog := healthy(energy.Dog, ideal*units.Mass(100-percent)/100-units.Gram)
		dog.Ideal = ideal
		if _, err := (energy.Resting{Animal: dog}).Estimate(); err != nil {
			return float64(percent), nil
		}
	}
	return 0, ErrNoEvaluator
}

// overweight returns an animal a fifth above its recorded ideal weight.
func overweight(s energy.Species, ideal units.Mass) energy.Animal {
	a := healthy(s, 1.2*ideal)
	a.Ideal, a.Condition = ideal, energy.BCS9(7)
	return a
}

// lossFactor evaluates the factor on the resting energy at ideal weight, or the
// share of maintenance, on which weight is lost.
func lossFactor(r Row, in inputs) (float64, error) {
	loss := energy.WeightLoss{Animal: overweight(species(in), typical(species(in)))}
	switch {
	case r.Quantity == "weight-loss factor on RER at ideal weight", in["state"] == "adult-weight-loss-overweight":
		return onResting(r, in, loss)
	case r.Unit == "% of MER":
		loss.Status, loss.Method = energy.Intact, energy.ShareOfMaintenance
		e, err := loss.Estimate()
		if err != nil {
			return 0, err
		}
		adult, err := kcal(energy.Adult{Animal: healthy(e.Animal.Species, e.Weight), Status: energy.Intact})
		return 100 * e.Daily.Kilocalories() / adult, err
	}
	return 0, ErrNoEvaluator
}

// lossLinear evaluates the energy for weight loss on the linear form.
func lossLinear(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "kcal/day for weight loss (linear RER at ideal weight)", "kcal/day for weight loss (0.8 x linear RER at ideal weight)",
		"10 lb ideal cat", "20 lb ideal dog":
	default:
		return 0, ErrNoEvaluator
	}
	lb, err := in.number("ideal_lb")
	if err != nil {
		return 0, err
	}
	return perDay(r, energy.WeightLoss{Animal: overweight(species(in), units.Mass(lb)*units.Pound), Method: energy.RERLinear})
}

// reduced evaluates a share of the present intake. A case says 80 % of it
// without a figure for the row to hold; that is the default.
func reduced(r Row, in inputs) (float64, error) {
	key, ok := in.first("from_kcal", "intake_kcal_day", "energy_kcal_day")
	if !ok {
		return 0, ErrNoEvaluator
	}
	var share units.Percent
	switch {
	case in.signature() == "from_kcal species":
	case in.signature() == "fraction intake_kcal_day":
		fraction, err := in.number("fraction")
		if err != nil {
			return 0, err
		}
		share = units.Percent(100 * fraction)
	case in.signature() == "energy_kcal_day fraction" && r.Quantity == "10% of current energy":
		fraction, err := in.number("fraction")
		if err != nil {
			return 0, err
		}
		share = units.Percent(100 - 100*fraction)
	case in.signature() == "cut_kcal_day energy_kcal_day":
		x, err := in.numbers("cut_kcal_day", "energy_kcal_day")
		if err != nil {
			return 0, err
		}
		share = units.Percent(100 - 100*x[0]/x[1])
	default:
		return 0, ErrNoEvaluator
	}
	intake, err := in.number(key)
	if err != nil {
		return 0, err
	}
	daily, err := kcal(energy.WeightLoss{
		Animal: overweight(species(in), typical(species(in))),
		Intake: units.Energy(intake) * units.Kilocalorie, Share: share, Method: energy.ShareOfIntake,
	})
	if r.Quantity == "10% of current energy" {
		return intake - daily, err
	}
	return daily, err
}

// adipose evaluates the energy of a kilogram of lost tissue: the difference
// between two rates of loss by the deficit form.
func adipose(r Row, _ inputs) (float64, error) {
	if r.Quantity != "energy of adipose tissue" || r.Unit != "kcal/kg" {
		return 0, ErrNoEvaluator
	}
	dog := overweight(energy.Dog, typical(energy.Dog))
	var daily [2]float64
	rates := [...]units.Percent{0.5, 1}
	for i, rate := range rates {
		e, err := kcal(energy.WeightLoss{Animal: dog, Status: energy.Intact, Rate: rate, Method: energy.Deficit})
		if err != nil {
			return 0, err
		}
		daily[i] = e
	}
	kg := dog.Weight.Kilograms() * (rates[1] - rates[0]).Fraction()
	return (daily[0] - daily[1]) * 7 / kg, nil
}

// lossGoal evaluates what a plan of weight loss says beside the energy.
func lossGoal(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "minimum useful rate of weight loss":
		g, err := energy.WeightLoss{Animal: overweight(energy.Dog, typical(energy.Dog))}.Goal()
		return float64(g.Rate.Low), err
	case "weight to lose":
		x, err := in.numbers("bw_kg", "ideal_kg")
		if err != nil {
			return 0, err
		}
		a := overweight(species(in), units.Mass(x[1])*units.Kilogram)
		a.Weight = units.Mass(x[0]) * units.Kilogram
		g, err := energy.WeightLoss{Animal: a}.Goal()
		return g.Lose.Kilograms(), err
	}
	return 0, ErrNoEvaluator
}

// lossVisit evaluates after how many weeks an animal that loses weight is
// weighed again.
func lossVisit(r Row, in inputs) (float64, error) {
	if r.Quantity != "re-check interval at the start of weight loss" {
		return 0, ErrNoEvaluator
	}
	e, err := energy.WeightLoss{Animal: overweight(species(in), typical(species(in)))}.Estimate()
	return float64(e.Reweigh) / float64(energy.Week), err
}
