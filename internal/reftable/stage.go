package reftable

import (
	"math"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// kcal returns the day's kilocalories of a stage.
func kcal(s energy.Stage) (float64, error) {
	e, err := s.Estimate()
	return e.Daily.Kilocalories(), err
}

// end returns the end of the published range that the row names, or the figure
// that the library computes with.
func end(r Row, in inputs, e energy.Estimate) units.Energy {
	switch {
	case strings.HasSuffix(r.Quantity, lowEnd), in["range_end"] == "low":
		return e.Low
	case strings.HasSuffix(r.Quantity, highEnd), in["range_end"] == "high":
		return e.High
	}
	return e.Daily
}

const (
	lowEnd  = " (low end of range)"
	highEnd = " (high end of range)"
)

// what is the row's quantity without the end of the range.
func what(r Row) string {
	return strings.TrimSuffix(strings.TrimSuffix(r.Quantity, lowEnd), highEnd)
}

// onResting evaluates a multiple of the resting energy, of the weight used.
func onResting(r Row, in inputs, s energy.Stage) (float64, error) {
	if r.Unit != "x RER" {
		return 0, ErrNoEvaluator
	}
	e, err := s.Estimate()
	if err != nil {
		return 0, err
	}
	rest, err := kcal(energy.Resting{Animal: healthy(e.Animal.Species, e.Weight)})
	return end(r, in, e).Kilocalories() / rest, err
}

// fit finds a and x of an energy a × kg^x from those at two weights.
func fit(stage func(units.Mass) energy.Stage) (a, x float64, err error) {
	const light, heavy = 2.0, 8.0 // kg, which both dogs and cats can weigh
	low, err := kcal(stage(light * units.Kilogram))
	if err != nil {
		return 0, 0, err
	}
	high, err := kcal(stage(heavy * units.Kilogram))
	if err != nil {
		return 0, 0, err
	}
	x = math.Log(high/low) / math.Log(heavy/light)
	return low / math.Pow(light, x), x, nil
}

// solve finds a and b of an energy a × kg^0.75 + b × kg from those at two
// weights.
func solve(stage func(units.Mass) energy.Stage) (a, b float64, err error) {
	one, err := kcal(stage(units.Kilogram))
	if err != nil {
		return 0, 0, err
	}
	sixteen, err := kcal(stage(16 * units.Kilogram)) // 16^0.75 is 8
	return (16*one - sixteen) / 8, (sixteen - 8*one) / 8, err
}

// maintenance returns an adult's energy by the coefficient of NRC 2006 for
// active dogs and lean cats.
func maintenance(s energy.Species, w units.Mass) (float64, error) {
	return kcal(energy.Adult{Animal: healthy(s, w), Status: energy.Intact, Method: energy.NRC2006})
}
