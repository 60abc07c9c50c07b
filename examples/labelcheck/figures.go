package main

import (
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// number writes a figure to a hundredth, without zeros at the end.
func number(x float64) string {
	s := strconv.FormatFloat(x, 'f', 2, 64)
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// perKilogram writes a computed energy density to the kilocalorie, and one that
// the label prints as it is.
func perKilogram(d units.EnergyDensity, origin diet.Origin) string {
	if origin == diet.Stated {
		return number(d.KilocaloriesPerKilogram()) + " kcal/kg"
	}
	return strconv.FormatFloat(d.KilocaloriesPerKilogram(), 'f', 0, 64) + " kcal/kg"
}

// per100 writes an energy density for 100 g.
func per100(d units.EnergyDensity) string {
	return strconv.FormatFloat(d.KilocaloriesPerKilogram()/10, 'f', 0, 64) + " kcal/100 g"
}

// unitName is what one unit is called.
func unitName(s diet.Serving) string {
	if s.Name == "" {
		return "serving"
	}
	return s.Name
}

// unitText writes a household unit as the units column has it.
func unitText(s diet.Serving) string {
	return unitName(s) + " = " + number(s.Mass.Grams()) + " g = " + number(s.Energy.Kilocalories()) + " kcal"
}

// content is a constituent for 1000 kcal.
type content struct {
	name  string
	grams diet.PerMcal
	known bool
}

// contents returns the constituents that the analysis gives.
func (c *check) contents() [4]content {
	a, e := c.food.Analysis, c.density.Energy
	of := func(name string, p units.Percent, set diet.Constituents) content {
		return content{name, diet.GramsPerMcal(p, e), e > 0 && (p > 0 || a.None.Has(set))}
	}
	return [...]content{
		of("protein", a.Protein, diet.CrudeProtein), of("fat", a.Fat, diet.CrudeFat),
		of("fibre", a.Fibre, diet.CrudeFibre), of("ash", a.Ash, diet.CrudeAsh),
	}
}

func (c content) String() string {
	if !c.known {
		return ""
	}
	return strconv.FormatFloat(float64(c.grams), 'f', 1, 64) + " g"
}
