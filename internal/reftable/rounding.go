package reftable

import (
	"math"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// rounded evaluates a number rounded to decimals or digits, as grams on a scale
// with that step. Rules that aren't to the nearest are not evaluated.
func rounded(r Row, in inputs) (float64, error) {
	switch in.signature() {
	case "decimals x":
		x, err := in.numbers("x", "decimals")
		if err != nil {
			return 0, err
		}
		return onScale(x[0], math.Pow10(-int(x[1])))
	case "digits x":
		x, err := in.numbers("x", "digits")
		if err != nil {
			return 0, err
		}
		return onScale(x[0], math.Pow10(1+int(math.Floor(math.Log10(x[0])))-int(x[1])))
	case "mode":
		if in["mode"] != "half_even" && in["mode"] != "half_up" {
			return 0, ErrNoEvaluator
		}
		sum, _, ok := strings.Cut(r.Quantity, " rounded to 5 digits")
		a, b, isSum := strings.Cut(sum, " + ")
		if !ok || !isSum {
			return 0, ErrNoEvaluator
		}
		x, err := inputs{"a": a, "b": b}.numbers("a", "b")
		if err != nil {
			return 0, err
		}
		return onScale(x[0]+x[1], 1) // all have five digits before the point
	}
	return 0, ErrNoEvaluator
}

// onScale weighs so many grams of a food on a scale.
func onScale(grams, step float64) (float64, error) {
	menu := diet.Menu{
		{Food: ofEnergy("weighed", 1000), Amount: diet.Fixed(units.Mass(grams) * units.Gram)},
		{Food: ofEnergy("the rest", 4000), Amount: diet.Rest()},
	}
	ration, err := portion.Weigh(energy.Estimate{Daily: units.Energy(grams+100) * units.Kilocalorie}, menu)
	if err != nil {
		return 0, err
	}
	w, err := ration.On(units.Mass(step) * units.Gram)
	if err != nil {
		return 0, err
	}
	return w.Portion(0).Mass.Grams(), nil
}
