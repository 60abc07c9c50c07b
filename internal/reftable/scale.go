package reftable

import (
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// leastLoad evaluates the least load of a scale: by the multiple of its class that the
// library takes as a guide, and by the rule for a tolerance.
func leastLoad(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "minimum capacity Min, lower limit":
		if in["class"] != "III" {
			return 0, ErrNoEvaluator
		}
		s := portion.Scale{Step: units.Gram}
		return float64(s.LeastLoad() / s.Step), s.Validate()
	case "smallest load by the OIML class III rule 20 e, e = d":
		d, err := in.number("d_g")
		if err != nil {
			return 0, err
		}
		s := portion.Scale{Step: units.Mass(d) * units.Gram}
		return s.LeastLoad().Grams(), s.Validate()
	case "smallest load by the USP rule carried to another tolerance: 2 x 0.41 d / tol":
		x, err := in.numbers("d_g", "tolerance_pct")
		if err != nil {
			return 0, err
		}
		m, err := portion.Scale{Step: units.Mass(x[0]) * units.Gram}.LeastFor(units.Percent(x[1]))
		return m.Grams(), err
	}
	return leastInSteps(r, in)
}

// leastInSteps evaluates what USP <41> states in steps, at its own tolerance.
func leastInSteps(r Row, in inputs) (float64, error) {
	if in["readability"] != "d" {
		return 0, ErrNoEvaluator
	}
	const tolerance units.Percent = 0.10
	s := portion.Scale{Step: units.Gram}
	m, err := s.LeastFor(tolerance)
	switch r.Quantity {
	case "smallest possible net weight when s is replaced by 0.41 d":
		return float64(m / s.Step), err
	case "floor for the standard deviation":
		return float64(m/s.Step) * tolerance.Fraction() / 2, err
	}
	return 0, ErrNoEvaluator
}
