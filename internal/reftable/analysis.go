package reftable

import (
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// contents are the constituents that a row can give, by the key of the input.
var contents = []struct {
	key  string
	of   func(*diet.Analysis) *units.Percent
	none diet.Constituents
}{
	{"cp_pct", func(a *diet.Analysis) *units.Percent { return &a.Protein }, diet.CrudeProtein},
	{"fat_pct", func(a *diet.Analysis) *units.Percent { return &a.Fat }, diet.CrudeFat},
	{"cf_pct", func(a *diet.Analysis) *units.Percent { return &a.Fibre }, diet.CrudeFibre},
	{"moisture_pct", func(a *diet.Analysis) *units.Percent { return &a.Moisture }, diet.Moisture},
	{"ash_pct", func(a *diet.Analysis) *units.Percent { return &a.Ash }, diet.CrudeAsh},
}

// analysis returns the row's. Where the row gives only some of the five, what
// they and its NFE leave of 100 % is taken for ash, which has no energy.
func analysis(in inputs) (diet.Analysis, error) {
	var a diet.Analysis
	left, given := 100.0, 0
	for _, c := range contents {
		if _, ok := in[c.key]; !ok {
			a.None |= c.none
			continue
		}
		x, err := in.number(c.key)
		if err != nil {
			return a, err
		}
		*c.of(&a) = units.Percent(x)
		left -= x
		given++
	}
	if given == len(contents) {
		return a, nil
	}
	if _, ok := in["nfe_pct"]; ok {
		x, err := in.number("nfe_pct")
		if err != nil {
			return a, err
		}
		left -= x
	}
	if left > 0 {
		a.Ash, a.None = units.Percent(left), a.None&^diet.CrudeAsh
	}
	return a, nil
}

// alone is a food of nothing but one constituent, or of nitrogen-free extract.
func alone(c diet.Constituents) diet.Analysis {
	a := diet.Analysis{None: diet.CrudeProtein | diet.CrudeFat | diet.CrudeFibre | diet.Moisture | diet.CrudeAsh}
	for _, x := range contents {
		if x.none == c {
			*x.of(&a) = 100
			a.None &^= c
		}
	}
	return a
}

// constituent finds the one that words speak of; none is nitrogen-free extract.
func constituent(words string) diet.Constituents {
	switch {
	case strings.Contains(words, "protein"):
		return diet.CrudeProtein
	case strings.Contains(words, "fat"):
		return diet.CrudeFat
	}
	return 0
}

// predictor finds the equation that a row's quantity names.
func predictor(quantity string) (diet.Predictor, bool) {
	switch {
	case strings.Contains(quantity, "TDF"), strings.Contains(quantity, "95/10"):
		return 0, false
	case strings.Contains(strings.ToLower(quantity), "modified atwater"):
		return diet.ModifiedAtwater, true
	case strings.Contains(quantity, "natural-state"):
		return diet.Atwater, true
	case strings.Contains(quantity, "NRC 2006 four-step"):
		return diet.FourStep, true
	}
	return 0, false
}

// inPerGram returns an energy density in the row's unit.
func inPerGram(r Row, d units.EnergyDensity) (float64, error) {
	switch strings.TrimSuffix(strings.TrimSuffix(r.Unit, " as fed"), " food") {
	case "kcal/g", "kcal/g CP":
		return d.KilocaloriesPerGram(), nil
	case "kJ/g":
		return d.KilojoulesPerGram(), nil
	case "kcal/100 g":
		return d.KilocaloriesPer100Grams(), nil
	case "kcal/kg":
		return d.KilocaloriesPerKilogram(), nil
	}
	return 0, ErrNoEvaluator
}

// predictorFactor gives a coefficient of an equation, from food of one constituent.
func predictorFactor(r Row, in inputs) (float64, error) {
	if in.signature() != "" {
		return 0, ErrNoEvaluator
	}
	name, of, _ := strings.Cut(r.Quantity, ", ")
	s := energy.Dog
	if strings.HasSuffix(of, "cat") || strings.HasPrefix(of, "cat ") {
		s = energy.Cat
	}
	by := map[string]diet.Predictor{
		"modified Atwater factor": diet.ModifiedAtwater, "Atwater factor": diet.Atwater, "gross energy": diet.FourStep,
		"energy digestibility intercept": diet.FourStep, "energy digestibility slope per % crude fibre in DM": diet.FourStep,
		"DE to ME protein correction": diet.FourStep,
	}[name]
	if by == 0 || strings.Contains(of, "dietary fibre") {
		return 0, ErrNoEvaluator
	}
	p, err := alone(constituent(of)).Predict(by, s)
	if err != nil {
		return 0, err
	}
	switch name {
	case "gross energy":
		return inPerGram(r, p.Gross)
	case "energy digestibility intercept":
		return float64(p.Digestibility), nil
	case "energy digestibility slope per % crude fibre in DM":
		fibrous, err := diet.Analysis{Fibre: 1, None: diet.CrudeProtein | diet.CrudeFat | diet.Moisture | diet.CrudeAsh}.Predict(by, s)
		return float64(p.Digestibility - fibrous.Digestibility), err
	case "DE to ME protein correction":
		protein, err := alone(diet.CrudeProtein).Predict(by, s)
		return (protein.Digestible - protein.Energy).KilocaloriesPerGram(), err
	}
	return inPerGram(r, p.Energy)
}

// byDefault gives what a constituent is taken for where it is not given.
func byDefault(r Row, in inputs) (float64, error) {
	a := diet.Analysis{Protein: 20, Fat: 10, Fibre: 2, Moisture: 10, Ash: 6}
	var assumed *units.Percent
	switch r.Quantity {
	case "default ash when not on the label, dry food", "ash used in a dry-food worked example":
		a.Defaults, assumed = diet.Dry, &a.Ash
	case "default ash when not on the label, moist (canned) food":
		a.Defaults, assumed = diet.Wet, &a.Ash
	case "crude fibre used in a dry-food worked example":
		a.Defaults, assumed = diet.Dry, &a.Fibre
	default:
		return 0, ErrNoEvaluator
	}
	given := a
	given.Defaults = 0
	before, err := given.NFE()
	if err != nil {
		return 0, err
	}
	known := *assumed
	*assumed = 0
	after, err := a.NFE()
	return float64(known + before - after), err
}

// ofAnalysis gives what the library makes of the row's analysis.
func ofAnalysis(r Row, in inputs) (float64, error) {
	if in.signature() == "sum_pct" && r.Unit == "% as fed" {
		x, err := in.number("sum_pct")
		if err != nil {
			return 0, err
		}
		nfe, err := diet.Analysis{
			Ash: units.Percent(x), None: diet.CrudeProtein | diet.CrudeFat | diet.CrudeFibre | diet.Moisture,
		}.NFE()
		return float64(nfe), err
	}
	if !isAnalysis(in) {
		return 0, ErrNoEvaluator
	}
	a, err := analysis(in)
	if err != nil {
		return 0, err
	}
	by, named := predictor(r.Quantity)
	s := species(in)
	if _, ok := in["species"]; !ok {
		s = energy.Dog // as the row's equation
	}
	switch {
	case strings.HasSuffix(r.Quantity, "by difference"):
		nfe, err := a.NFE()
		return float64(nfe), err
	case strings.HasPrefix(r.Quantity, "sum of "):
		nfe, err := a.NFE()
		return 100 - float64(nfe), err
	case r.Quantity == "NRC four-step relative to modified Atwater":
		nrc, err := a.Predict(diet.FourStep, s)
		if err != nil {
			return 0, err
		}
		modified, err := a.Predict(diet.ModifiedAtwater, s)
		return 100 * (float64(nrc.Energy/modified.Energy) - 1), err
	case named:
		p, err := a.Predict(by, s)
		if err != nil {
			return 0, err
		}
		if r.Unit == "kcal/kg DM" {
			return float64(p.DryEnergy), nil
		}
		return inPerGram(r, p.Energy)
	case strings.HasPrefix(r.Quantity, "ME from "):
		p, err := a.Predict(diet.ModifiedAtwater, s)
		if err != nil {
			return 0, err
		}
		return inPerGram(r, p.Energy)
	case r.Quantity == "ME of that beef from its own protein and fat":
		p, err := a.Predict(diet.Atwater, s)
		if err != nil {
			return 0, err
		}
		return inPerGram(r, p.Energy)
	}
	p, err := a.Predict(diet.FourStep, s)
	if err != nil {
		return 0, err
	}
	switch r.Quantity {
	case "gross energy":
		return inPerGram(r, p.Gross)
	case "energy digestibility":
		return float64(p.Digestibility), nil
	case "digestible energy":
		return inPerGram(r, p.Digestible)
	case "crude fibre, dry matter basis":
		return float64(p.Fibre), nil
	}
	return 0, ErrNoEvaluator
}

// isAnalysis reports whether the row gives an analysis, whole or in part, and
// nothing that the library doesn't take. The factors that a source prints beside
// it are the library's own.
func isAnalysis(in inputs) bool {
	some := false
	for key := range in {
		switch key {
		case "cp_pct", "fat_pct", "nfe_pct":
			some = true
		case "cf_pct", "moisture_pct", "ash_pct", "species", "factor_kcal_g", "factor_kj_g":
		default:
			return false
		}
	}
	return some
}
