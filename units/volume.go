package units

// Volume is a volume, held in millilitres. The zero value is no volume, 0 mL.
type Volume float64

// Units of volume. There is no unit called "cup": the US customary cup, the
// cup of US nutrition labels and the metric cup differ by up to 5.7 %, so each
// has a name of its own. The spoons and the fluid ounce are the US customary
// ones (UCUM [tbs_us], [tsp_us], [foz_us]).
const (
	Millilitre Volume = 1
	Litre             = 1000 * Millilitre
	USCup             = 236.5882365 * Millilitre
	LabelCup          = 240 * Millilitre // 21 CFR 101.9(b)(5)(viii); UCUM [cup_m]
	MetricCup         = 250 * Millilitre
	FluidOunce        = USCup / 8
	Tablespoon        = USCup / 16
	Teaspoon          = USCup / 48
)

// Millilitres returns v as a number of millilitres.
func (v Volume) Millilitres() float64 { return float64(v) }

// Litres returns v as a number of litres.
func (v Volume) Litres() float64 { return float64(v / Litre) }

// USCups returns v as a number of US customary cups.
func (v Volume) USCups() float64 { return float64(v / USCup) }

// LabelCups returns v as a number of 240 mL nutrition-label cups.
func (v Volume) LabelCups() float64 { return float64(v / LabelCup) }

// MetricCups returns v as a number of 250 mL metric cups.
func (v Volume) MetricCups() float64 { return float64(v / MetricCup) }

// FluidOunces returns v as a number of US fluid ounces.
func (v Volume) FluidOunces() float64 { return float64(v / FluidOunce) }

// Tablespoons returns v as a number of US tablespoons.
func (v Volume) Tablespoons() float64 { return float64(v / Tablespoon) }

// Teaspoons returns v as a number of US teaspoons.
func (v Volume) Teaspoons() float64 { return float64(v / Teaspoon) }
