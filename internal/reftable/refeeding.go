package reftable

import "example.org/bowlgram/energy"

// refeeding evaluates a step of a hospital schedule, in percent of the resting
// energy.
func refeeding(r Row, in inputs) (float64, error) {
	if r.Unit != "% of RER" {
		return 0, ErrNoEvaluator
	}
	var ladder energy.Ladder
	switch r.Quantity {
	case "assisted feeding, first day":
		ladder = energy.FourDayLadder()
	case "starting allowance, assisted feeding (general)":
		ladder = energy.FullLadder()
	default:
		return 0, ErrNoEvaluator
	}
	patient := healthy(species(in), typical(species(in)))
	e, err := energy.Refeeding{Animal: patient, Ladder: ladder, Day: 1, By: "the printed schedule"}.Estimate()
	if err != nil {
		return 0, err
	}
	rest, err := kcal(energy.Resting{Animal: patient})
	return 100 * e.Daily.Kilocalories() / rest, err
}
