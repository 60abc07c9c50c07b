package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// sumText is one line from which anybody can redo the amount: the weight used,
// the equation, the energy, the density of the food, the grams.
func sumText(p *plan) string {
	r := p.ration.Ration()
	scale := ""
	if p.scale != units.Gram {
		scale = " (" + p.scale.String() + " scale)"
	}
	return fmt.Sprintf("%s ÷ %s = %.2f → %s%s; reweigh: %d d",
		needText(p.need), number(r.Density(0).Energy.KilocaloriesPerKilogram()),
		r.Portion(0).Mass.Grams(), appendGrams(nil, p.ration.Portion(0).Mass, p.scale), scale, p.need.Reweigh/energy.Day)
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
	switch s := e.Stage.(type) {
	case energy.Prescribed:
		return fmt.Sprintf("%s now: %.1f kcal set by %s", kilograms(e.Animal.Weight), s.Daily.Kilocalories(), s.By)
	case energy.Observed:
		return fmt.Sprintf("%s now: %.1f kcal measured as eaten a day", kilograms(e.Animal.Weight), s.Intake.Kilocalories())
	}
	return fmt.Sprintf("%s %s: %s = %.1f kcal", kilograms(e.Weight), strings.ReplaceAll(e.Basis.String(), "_", " "), equation(e), e.Daily.Kilocalories())
}

// equation writes the equation of an estimate with its figures in it, kg
// standing for the weight used.
func equation(e energy.Estimate) string {
	const resting = "70 × kg^0.75"
	switch e.Method {
	case energy.RERPower:
		return resting
	case energy.FactorOnRER:
		return fmt.Sprintf("%s × %.4g", resting, timesResting(e))
	case energy.PercentOfRER:
		return fmt.Sprintf("%s × %.4g %%", resting, 100*timesResting(e))
	case energy.PerKilogram:
		return fmt.Sprintf("kg × %.4g", e.Daily.Kilocalories()/e.Weight.Kilograms())
	case energy.ShareOfIntake:
		return "a share of what it eats now"
	case energy.PerDistance:
		s, _ := e.Stage.(energy.Work)
		maintenance, err := energy.Adult{Animal: s.Animal, Status: s.Status}.Estimate()
		if err != nil {
			break
		}
		perKilometre := (e.Daily - maintenance.Daily).Kilocalories() / e.Weight.Kilograms() / s.Distance.Kilometres()
		return fmt.Sprintf("%s × %.4g + kg × %s × %.4g", resting, timesResting(maintenance), s.Distance, perKilometre)
	}
	return step(e)
}

// timesResting returns the energy as a multiple of the resting energy at the
// weight used.
func timesResting(e energy.Estimate) float64 {
	rest, err := energy.Resting{Animal: energy.Animal{Species: e.Animal.Species, Weight: e.Weight}}.Estimate()
	if err != nil {
		return math.NaN()
	}
	return float64(e.Daily / rest.Daily)
}

// step returns the line of the working that has the figures put in, up to its
// result.
func step(e energy.Estimate) string {
	_, working, _ := strings.Cut(e.Explain(), "\nformula")
	for line := range strings.Lines(working) {
		if figures, ok := strings.CutPrefix(strings.TrimSpace(line), "= "); ok {
			figures, _, _ = strings.Cut(figures, " = ")
			return figures
		}
	}
	return e.Method.String()
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
