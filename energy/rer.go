package energy

import (
	"math"

	"example.org/bowlgram/units"
)

// Coefficients of the resting energy requirement. SACN 5th ed., Table 5-2, p. 61.
const (
	rerCoefficient = 70 // kcal × kg^-0.75, any weight
	linearSlope    = 30 // kcal × kg^-1
	linearConstant = 70 // kcal
)

// Range of the linear form: SACN 5th ed., Table 5-2. Above linearWarn R. Saar
// (dvm360, 2021) advises against it; it runs 8 % high there and 17 % at 45 kg.
const (
	linearLow  = 2 * units.Kilogram
	linearHigh = 45 * units.Kilogram
	linearWarn = 30 * units.Kilogram
)

// threeQuarters returns w^0.75. Two square roots are nearer to the true value
// than math.Pow and the same on every architecture.
func threeQuarters(w float64) float64 { return math.Sqrt(math.Sqrt(w * w * w)) }

// MetabolicWeight returns the metabolic weight of an animal in the unit of the
// sources: kg^0.75 of a dog, kg^0.67 of a cat (NRC 2006, FEDIAF), and 0 for any
// other species, for which none is published.
func MetabolicWeight(s Species, w units.Mass) float64 {
	switch kg := w.Kilograms(); s {
	case Dog:
		return threeQuarters(kg)
	case Cat:
		return math.Pow(kg, exponentCat)
	}
	return 0
}

// rer returns the resting energy requirement by the power form.
func rer(w units.Mass) units.Energy {
	return units.Energy(rerCoefficient * threeQuarters(w.Kilograms()))
}

// rerLinear returns it by the linear form. The conversion keeps the product
// from being fused with the sum, which would differ between architectures.
func rerLinear(w units.Mass) units.Energy {
	return units.Energy(float64(linearSlope*w.Kilograms()) + linearConstant)
}
