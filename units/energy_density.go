package units

// EnergyDensity is metabolizable energy per mass of food, held in kcal/kg. It
// says nothing of the basis: package diet keeps as fed and dry matter apart.
// The zero value means not given.
type EnergyDensity float64

// Units of energy density.
const (
	KilocaloriePerKilogram EnergyDensity = 1
	KilocaloriePerGram                   = 1000 * KilocaloriePerKilogram
	KilocaloriePer100Gram                = 10 * KilocaloriePerKilogram
	KilocaloriePerPound                  = KilocaloriePerKilogram / 0.45359237
	KilocaloriePerOunce                  = 16 * KilocaloriePerPound
	KilojoulePerKilogram                 = KilocaloriePerKilogram / 4.184
	KilojoulePerGram                     = KilocaloriePerGram / 4.184
	KilojoulePer100Gram                  = KilocaloriePer100Gram / 4.184
	MegajoulePerKilogram                 = 1000 * KilojoulePerKilogram
)

// KilocaloriesPerKilogram returns d as a number of kcal/kg.
func (d EnergyDensity) KilocaloriesPerKilogram() float64 { return float64(d) }

// KilocaloriesPerGram returns d as a number of kcal/g.
func (d EnergyDensity) KilocaloriesPerGram() float64 { return float64(d / KilocaloriePerGram) }

// KilocaloriesPer100Grams returns d as a number of kcal/100 g.
func (d EnergyDensity) KilocaloriesPer100Grams() float64 { return float64(d / KilocaloriePer100Gram) }

// KilocaloriesPerPound returns d as a number of kcal/lb.
func (d EnergyDensity) KilocaloriesPerPound() float64 { return float64(d) * 0.45359237 }

// KilocaloriesPerOunce returns d as a number of kcal/oz (avoirdupois).
func (d EnergyDensity) KilocaloriesPerOunce() float64 { return float64(d) * 0.028349523125 }

// KilojoulesPer100Grams returns d as a number of kJ/100 g.
func (d EnergyDensity) KilojoulesPer100Grams() float64 { return float64(d) * 4.184 / 10 }

// KilojoulesPerGram returns d as a number of kJ/g.
func (d EnergyDensity) KilojoulesPerGram() float64 { return float64(d) * 4.184 / 1000 }

// KilojoulesPerKilogram returns d as a number of kJ/kg.
func (d EnergyDensity) KilojoulesPerKilogram() float64 { return float64(d) * 4.184 }

// MegajoulesPerKilogram returns d as a number of MJ/kg.
func (d EnergyDensity) MegajoulesPerKilogram() float64 { return float64(d) * 4.184 / 1000 }

// Energy returns the energy in a mass of food of density d.
func (d EnergyDensity) Energy(m Mass) Energy { return Energy(float64(d) * float64(m) / 1000) }

// Mass returns the mass of food of density d that holds the energy e. It is
// infinite or NaN where d is zero: a caller checks d first.
func (d EnergyDensity) Mass(e Energy) Mass { return Mass(float64(e) / float64(d) * 1000) }

var energyDensityTable = newTable(table{
	quantity: "energy density", base: "kcal/kg",
	numerator: energyTable, denominator: massTable,
	units: []unit{
		{code: "kcal/kg"},
		{code: "kcal/g", shift: 3},
		{code: "kcal/100 g", shift: 1},
		{code: "kcal/lb", mul: 1e8, div: 45359237},
		{code: "kcal/oz", mul: 16e8, div: 45359237},
		{code: "Mcal/kg", shift: 3},
		{code: "kJ/100 g", shift: 1, mul: 125, div: 523},
		{code: "kJ/g", shift: 3, mul: 125, div: 523},
		{code: "kJ/kg", mul: 125, div: 523},
		{code: "MJ/kg", shift: 3, mul: 125, div: 523},
	},
})

// ParseEnergyDensity reads an energy density, as in "3560 kcal/kg", "356 kcal/100 g"
// or "1490 kJ per 100 g".
//
// An error is a [*ParseError].
func ParseEnergyDensity(s string) (EnergyDensity, error) {
	v, _, err := read(energyDensityTable, s)
	return EnergyDensity(v), err
}

// String returns d in kilocalories per kilogram, as in "3560 kcal/kg". It is read back by
// [ParseEnergyDensity] as the same value.
func (d EnergyDensity) String() string { return energyDensityTable.text(float64(d)) }

// AppendText appends the text of String. It fails where d is NaN or infinite.
func (d EnergyDensity) AppendText(b []byte) ([]byte, error) {
	return energyDensityTable.appendText(b, float64(d))
}

// MarshalText returns the text of String. It fails where d is NaN or infinite.
func (d EnergyDensity) MarshalText() ([]byte, error) { return d.AppendText(nil) }

// UnmarshalText sets d as [ParseEnergyDensity] reads text. On an error d stays as it was.
func (d *EnergyDensity) UnmarshalText(text []byte) error {
	return unmarshal(d, energyDensityTable, text)
}
