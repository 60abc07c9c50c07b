package units

// EnergyPerVolume is metabolizable energy per volume of a liquid or a measure,
// held in kcal/mL. The zero value means not given.
type EnergyPerVolume float64

// Units of energy per volume.
const (
	KilocaloriePerMillilitre EnergyPerVolume = 1
	KilocaloriePerLitre                      = KilocaloriePerMillilitre / 1000
	KilocaloriePerUSCup                      = KilocaloriePerMillilitre / 236.5882365
	KilocaloriePerLabelCup                   = KilocaloriePerMillilitre / 240
	KilocaloriePerMetricCup                  = KilocaloriePerMillilitre / 250
)

// KilocaloriesPerMillilitre returns d as a number of kcal/mL.
func (d EnergyPerVolume) KilocaloriesPerMillilitre() float64 { return float64(d) }

// KilocaloriesPerLitre returns d as a number of kcal/L.
func (d EnergyPerVolume) KilocaloriesPerLitre() float64 { return float64(d) * 1000 }

// KilocaloriesPerUSCup returns d as a number of kcal in a US customary cup.
func (d EnergyPerVolume) KilocaloriesPerUSCup() float64 { return float64(d) * 236.5882365 }

// KilocaloriesPerLabelCup returns d as a number of kcal in a 240 mL label cup.
func (d EnergyPerVolume) KilocaloriesPerLabelCup() float64 { return float64(d) * 240 }

// KilocaloriesPerMetricCup returns d as a number of kcal in a 250 mL metric cup.
func (d EnergyPerVolume) KilocaloriesPerMetricCup() float64 { return float64(d) * 250 }

// Energy returns the energy in a volume v of density d.
func (d EnergyPerVolume) Energy(v Volume) Energy { return Energy(float64(d) * float64(v)) }

// Volume returns the volume of density d that holds the energy e. It is
// infinite or NaN where d is zero: a caller checks d first.
func (d EnergyPerVolume) Volume(e Energy) Volume { return Volume(float64(e) / float64(d)) }

var energyPerVolumeTable = newTable(table{
	quantity: "energy per volume", base: "kcal/mL",
	numerator: energyTable, denominator: volumeTable,
	units: []unit{
		{code: "kcal/mL"},
		{code: "kcal/100 mL", shift: -2},
		{code: "kcal/L", shift: -3},
		{code: "kcal/US cup", mul: 2e6, div: 473176473},
		{code: "kcal/label cup", mul: 1, div: 240},
		{code: "kcal/metric cup", mul: 1, div: 250},
		{code: "kcal/fl oz", mul: 16e6, div: 473176473},
		{code: "kcal/tbsp", mul: 32e6, div: 473176473},
		{code: "kcal/tsp", mul: 32e6, div: 157725491},
		{code: "kJ/mL", mul: 125, div: 523},
		{code: "kJ/100 mL", shift: -2, mul: 125, div: 523},
		{code: "kJ/L", shift: -3, mul: 125, div: 523},
	},
})

// ParseEnergyPerVolume reads an energy per volume, as in "1.02 kcal/mL"
// or "356 kcal/US cup". A bare "kcal/cup" is refused.
//
// An error is a [*ParseError].
func ParseEnergyPerVolume(s string) (EnergyPerVolume, error) {
	v, _, err := read(energyPerVolumeTable, s)
	return EnergyPerVolume(v), err
}

// String returns d in kilocalories per millilitre, as in "1.02 kcal/mL". It is read back by
// [ParseEnergyPerVolume] as the same value.
func (d EnergyPerVolume) String() string { return energyPerVolumeTable.text(float64(d)) }

// AppendText appends the text of String. It fails where d is NaN or infinite.
func (d EnergyPerVolume) AppendText(b []byte) ([]byte, error) {
	return energyPerVolumeTable.appendText(b, float64(d))
}

// MarshalText returns the text of String. It fails where d is NaN or infinite.
func (d EnergyPerVolume) MarshalText() ([]byte, error) { return d.AppendText(nil) }

// UnmarshalText sets d as [ParseEnergyPerVolume] reads text. On an error d stays as it was.
func (d *EnergyPerVolume) UnmarshalText(text []byte) error {
	return unmarshal(d, energyPerVolumeTable, text)
}
