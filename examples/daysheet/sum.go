package main

import (
	"fmt"
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// sumText is one line from which anybody can redo the amount: the weight used,
// the equation, the energy, the density of the food, the grams.
func sumText(p *plan) string {
	r := p.weighed.Ration()
	scale := ""
	if p.scale != units.Gram {
		scale = " (" + p.scale.String() + " scale)"
	}
	return fmt.Sprintf("%s ÷ %s = %.2f → %s%s; reweigh: %d d",
		needText(p.need), number(r.Density(0).Energy.KilocaloriesPerKilogram()),
		r.Portion(0).Mass.Grams(), appendGrams(nil, p.weighed.Portion(0).Mass, p.scale), scale, p.need.Reweigh/energy.Day)
}

// foodText is a food with the density that its amounts rest on.
func foodText(w portion.Weighed) string {
	d := w.Ration().Density(0)
	how := "stated"
	if d.Origin == diet.Derived {
		how = number(d.Serving.Energy.Kilocalories()) + " kcal ÷ " + number(d.Serving.Mass.Grams()) + " g × 1000"
	}
	return fmt.Sprintf("%s %s kcal/kg (%s)", w.Portion(0).Food, number(d.Energy.KilocaloriesPerKilogram()), how)
}

// needText says how the day's energy was come by.
func needText(e energy.Estimate) string {
	if s, ok := e.Stage.(energy.Prescribed); ok {
		return fmt.Sprintf("%s now: %.1f kcal set by %s", kilograms(e.Animal.Weight), s.Daily.Kilocalories(), s.By)
	}
	equation := e.Method.String()
	switch e.Method {
	case energy.FactorOnRER:
		resting := energy.Resting{Animal: energy.Animal{Species: e.Animal.Species, Weight: e.Weight}}
		if rest, err := resting.Estimate(); err == nil {
			equation = fmt.Sprintf("70 × kg^0.75 × %.4g", float64(e.Daily/rest.Daily))
		}
	case energy.PerKilogram:
		equation = fmt.Sprintf("kg × %.4g", e.Daily.Kilocalories()/e.Weight.Kilograms())
	}
	return fmt.Sprintf("%s %s: %s = %.1f kcal", kilograms(e.Weight), e.Basis, equation, e.Daily.Kilocalories())
}

// kilograms writes a body weight to the gram.
func kilograms(m units.Mass) string {
	return strconv.FormatFloat(m.Kilograms(), 'f', decimals(m.Kilograms(), 3), 64) + " kg"
}

// number writes a figure of a label as it is printed there, or to a hundredth
// where it was converted.
func number(x float64) string { return strconv.FormatFloat(x, 'f', decimals(x, 2), 64) }

// decimals returns how many decimals x needs to be read, at most most.
func decimals(x float64, most int) int {
	s := strconv.FormatFloat(x, 'f', most, 64)
	n := most
	for n > 0 && s[len(s)-1-(most-n)] == '0' {
		n--
	}
	return n
}
