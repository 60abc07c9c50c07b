package reftable

import (
	"math"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// groups are the cats of Bermingham's equations, by condition score.
var groups = map[string]int{"light": 3, "normal": 5, "heavy": 7}

// allometric evaluates the equations for adults that have a power of their own,
// and the mean and the spread of Thes.
func allometric(r Row, in inputs) (float64, error) {
	author, _, _ := strings.Cut(r.ID, "-")
	switch author {
	case "bermingham", "bermingham2014":
		return bermingham(r, in)
	case "thes":
		return thes(r, in)
	}
	if r.ID == "calc-bermingham-cat-heavy-6kg" {
		animal, err := patient(in)
		if err != nil {
			return 0, err
		}
		animal.Condition = energy.BCS9(groups["heavy"])
		return perDay(r, energy.Adult{Animal: animal, Status: energy.Intact, Method: energy.Bermingham})
	}
	return 0, ErrNoEvaluator
}

func bermingham(r Row, in inputs) (float64, error) {
	score := groups["normal"]
	if species(in) == energy.Cat {
		var ok bool
		if score, ok = groups[in["group"]]; !ok {
			return 0, ErrNoEvaluator
		}
	}
	a, x, err := fit(func(w units.Mass) energy.Stage {
		animal := healthy(species(in), w)
		animal.Condition = energy.BCS9(score)
		return energy.Adult{Animal: animal, Status: energy.Intact, Method: energy.Bermingham}
	})
	switch r.Quantity {
	case "allometric MER, coefficient":
		return a, err
	case "allometric MER, exponent", "allometric exponent":
		return x, err
	}
	return 0, ErrNoEvaluator
}

func thes(r Row, in inputs) (float64, error) {
	exponent, err := in.number("exponent")
	if err != nil {
		return 0, err
	}
	e, err := energy.Adult{Animal: healthy(energy.Dog, typical(energy.Dog)), Status: energy.Intact, Method: energy.Thes}.Estimate()
	if err != nil {
		return 0, err
	}
	base := math.Pow(e.Weight.Kilograms(), exponent)
	switch r.Quantity {
	case "mean ME intake client-owned adult dogs":
		return e.Daily.Kilocalories() / base, nil
	case "SD of ME intake client-owned adult dogs":
		return (e.High - e.Daily).Kilocalories() / base, nil
	}
	return 0, ErrNoEvaluator
}
