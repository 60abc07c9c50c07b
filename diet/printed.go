package diet

import (
	"math"
	"strings"

	"example.org/bowlgram/units"
)

// ParseLabelEnergy reads the energy density of a label as printed, with its
// unit, for [Label.Energy], and the half-step it was rounded to, for
// [Label.HalfStep]: half of one in the last printed digit or, for a whole
// number that ends in 0, half of ten. "3560 kcal/kg" has 5 kcal/kg, and
// "356 kcal/100 g" too; "1490 kJ/100 g" has 5 kJ/100 g, 11.95 kcal/kg. An
// error is that of [units.ParseEnergyDensity].
func ParseLabelEnergy(s string) (value, halfStep units.EnergyDensity, err error) {
	value, digit, err := units.ParsePrinted[units.EnergyDensity](s)
	if err != nil {
		return 0, 0, err
	}
	if isWholeTens(value, digit) && !hasPoint(s) {
		return value, 5 * digit, nil
	}
	return value, digit / 2, nil
}

// ParseServingEnergy reads the energy of one serving as printed, with its
// unit, for [Serving.Energy], and half of one in the last printed digit, for
// [Serving.EnergyHalfStep]: 0.5 kcal for "356 kcal". An error is that of
// [units.ParseEnergy].
func ParseServingEnergy(s string) (value, halfStep units.Energy, err error) {
	value, digit, err := units.ParsePrinted[units.Energy](s)
	return value, digit / 2, err
}

// ParseServingMass reads the mass of one serving as printed, with its unit,
// for [Serving.Mass], and half of one in the last printed digit, for
// [Serving.MassHalfStep]: 0.5 g for "156 g", and 0.05 oz for "5.5 oz". An
// error is that of [units.ParseMass].
func ParseServingMass(s string) (value, halfStep units.Mass, err error) {
	value, digit, err := units.ParsePrinted[units.Mass](s)
	return value, digit / 2, err
}

// isWholeTens reports whether value is a whole number of tens of digit. A unit
// that is not decimal leaves a few ulps in the quotient.
func isWholeTens(value, digit units.EnergyDensity) bool {
	tens := float64(value / digit / 10)
	return math.Abs(tens-math.Round(tens)) <= 1e-9
}

// hasPoint reports whether the number at the start of s shows decimals.
func hasPoint(s string) bool {
	number := strings.TrimLeft(strings.TrimSpace(s), "+0123456789")
	return strings.HasPrefix(number, ".")
}
