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

var volumeTable = newTable(
	table{
		quantity: "volume", base: "mL", thousand: "L",
		units: []unit{
			{code: "mL", names: []string{"ml", "cc", "millilitre", "millilitres", "milliliter", "milliliters"}},
			{code: "cL", names: []string{"centilitre", "centilitres", "centiliter", "centiliters"}, shift: 1},
			{code: "dL", names: []string{"decilitre", "decilitres", "deciliter", "deciliters"}, shift: 2},
			{code: "L", names: []string{"litre", "litres", "liter", "liters"}, shift: 3},
			{code: "US cup", names: []string{"[cup_us]", "US cups"}, mul: 473176473, div: 2e6},
			{code: "label cup", names: []string{"[cup_m]", "label cups"}, mul: 240, div: 1},
			{code: "metric cup", names: []string{"metric cups"}, mul: 250, div: 1},
			{
				code:  "fl oz",
				names: []string{"[foz_us]", "fl. oz.", "fl. oz", "fl oz.", "floz", "US fl oz", "fluid ounce", "fluid ounces", "US fluid ounce", "US fluid ounces"},
				mul:   473176473, div: 16e6,
			},
			{code: "tbsp", names: []string{"[tbs_us]", "tbsp.", "tbsps", "tbs", "US tbsp", "tablespoon", "tablespoons", "US tablespoon", "US tablespoons"}, mul: 473176473, div: 32e6},
			{code: "tsp", names: []string{"[tsp_us]", "tsp.", "tsps", "US tsp", "teaspoon", "teaspoons", "US teaspoon", "US teaspoons"}, mul: 157725491, div: 32e6},
		},
	},
	doubt{
		[]string{"cup", "cups", "c", "c."},
		"cups of 236.6, 240 and 250 mL",
		[]string{"US cup", "label cup", "metric cup"},
	},
	doubt{[]string{"ml"}, "millilitre or megalitre", []string{"mL", "L"}},
	doubt{[]string{"oz", "ozs", "oz.", "ounce", "ounces"}, "the ounce of mass or the fluid ounce", []string{"fl oz"}},
	doubt{[]string{"t"}, "teaspoon or tablespoon", []string{"tsp", "tbsp"}},
)

// ParseVolume reads a volume, as in "45 mL", "1.5 US cups"
// or "2 tbsp". A bare "cup" or "oz" is refused.
//
// An error is a [*ParseError].
func ParseVolume(s string) (Volume, error) {
	v, _, err := read(volumeTable, s)
	return Volume(v), err
}

// String returns v in millilitres, or in litres from 1000 mL, as in "45 mL" and "1.2 L". It is read back by
// [ParseVolume] as the same value.
func (v Volume) String() string { return volumeTable.text(float64(v)) }

// AppendText appends the text of String. It fails where v is NaN or infinite.
func (v Volume) AppendText(b []byte) ([]byte, error) { return volumeTable.appendText(b, float64(v)) }

// MarshalText returns the text of String. It fails where v is NaN or infinite.
func (v Volume) MarshalText() ([]byte, error) { return v.AppendText(nil) }

// UnmarshalText sets v as [ParseVolume] reads text. On an error v stays as it was.
func (v *Volume) UnmarshalText(text []byte) error { return unmarshal(v, volumeTable, text) }
