package main

import (
	"fmt"
	"math"
	"slices"
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
	if len(p.menu) > 1 {
		return needText(p.need) + "; " + menuSum(p) + scale + "; reweigh: " + strconv.Itoa(int(p.need.Reweigh/energy.Day)) + " d"
	}
	return fmt.Sprintf("%s ÷ %s = %.2f → %s%s; reweigh: %d d",
		needText(p.need), number(r.Density(0).Energy.KilocaloriesPerKilogram()),
		r.Portion(0).Mass.Grams(), appendGrams(nil, p.ration.Portion(0).Mass, p.scale), scale, p.need.Reweigh/energy.Day)
}

// menuSum is the sum of each food of a menu, in the order in which they are
// computed: what is fixed, the shares of what that leaves, the rest.
func menuSum(p *plan) string {
	r := p.ration.Ration()
	var fixed, shares, rest []string
	var given, weighed units.Energy // what is fixed, and all but the rest as it is weighed
	for i := range p.menu {
		x, a := r.Portion(i), p.menu[i].Amount
		_, isShare := a.Share()
		if !isShare && !a.IsRest() {
			given += x.Energy
		}
		if !a.IsRest() {
			weighed += p.ration.Portion(i).Energy
		}
	}
	for i := range p.menu {
		x, a := r.Portion(i), p.menu[i].Amount
		density := number(r.Density(i).Energy.KilocaloriesPerKilogram())
		kcal, of, list := x.Energy.Kilocalories(), "", &fixed
		switch share, isShare := a.Share(); {
		case isShare:
			list = &shares
			of = share.String()
			if given > 0 {
				of += fmt.Sprintf(" of %.2f − %.2f", p.need.Daily.Kilocalories(), given.Kilocalories())
			}
		case a.IsRest():
			list = &rest
			kcal = max((p.need.Daily - weighed).Kilocalories(), 0)
			of = fmt.Sprintf("%.2f − %.2f", p.need.Daily.Kilocalories(), weighed.Kilocalories())
		default:
			text := fmt.Sprintf("%s %s × %s = %.2f kcal", x.Food, number(x.Mass.Grams())+" g", density, kcal)
			if x.Pieces > 0 {
				text = fmt.Sprintf("%s %s = %s g × %s = %.2f kcal", x.Food, pieces(x.Pieces, x.Unit), number(x.Mass.Grams()), density, kcal)
			}
			if p.ration.Count(i) > 0 {
				text += " → " + string(appendGrams(nil, p.ration.Portion(i).Mass, p.scale))
			}
			*list = append(*list, text)
			continue
		}
		*list = append(*list, fmt.Sprintf("%s %s = %.2f kcal ÷ %s = %.2f → %s", x.Food, of, kcal, density,
			kcal/r.Density(i).Energy.KilocaloriesPerKilogram()*1000, appendGrams(nil, p.ration.Portion(i).Mass, p.scale)))
	}
	return strings.Join(slices.Concat(fixed, shares, rest), "; ")
}

// foodText is a food with the density that its amounts rest on.
func foodText(w portion.Weighed, i int) string {
	d := w.Ration().Density(i)
	how := "stated"
	switch d.Origin {
	case diet.Derived:
		how = number(d.Serving.Energy.Kilocalories()) + " kcal ÷ " + number(d.Serving.Mass.Grams()) + " g × 1000"
	case diet.Predicted:
		how = "predicted from the analysis by " + strings.ReplaceAll(w.Ration().Menu()[i].Food.Predictor.String(), "_", " ")
	}
	return fmt.Sprintf("%s %s kcal/kg (%s)", w.Portion(i).Food, number(d.Energy.KilocaloriesPerKilogram()), how)
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
