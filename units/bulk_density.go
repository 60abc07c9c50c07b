package units

// BulkDensity is the mass of food that fills a volume, held in g/mL. The zero
// value means not given.
type BulkDensity float64

// Units of bulk density. Grams per cup needs to say which cup.
const (
	GramPerMillilitre BulkDensity = 1
	GramPerLitre                  = GramPerMillilitre / 1000
	GramPerUSCup                  = GramPerMillilitre / 236.5882365
	GramPerLabelCup               = GramPerMillilitre / 240
	GramPerMetricCup              = GramPerMillilitre / 250
)

// GramsPerMillilitre returns d as a number of g/mL.
func (d BulkDensity) GramsPerMillilitre() float64 { return float64(d) }

// GramsPerLitre returns d as a number of g/L.
func (d BulkDensity) GramsPerLitre() float64 { return float64(d) * 1000 }

// GramsPerUSCup returns d as a number of g in a US customary cup.
func (d BulkDensity) GramsPerUSCup() float64 { return float64(d) * 236.5882365 }

// GramsPerLabelCup returns d as a number of g in a 240 mL label cup.
func (d BulkDensity) GramsPerLabelCup() float64 { return float64(d) * 240 }

// GramsPerMetricCup returns d as a number of g in a 250 mL metric cup.
func (d BulkDensity) GramsPerMetricCup() float64 { return float64(d) * 250 }

// Mass returns the mass that fills the volume v.
func (d BulkDensity) Mass(v Volume) Mass { return Mass(float64(d) * float64(v)) }

// Volume returns the volume that the mass m fills. It is infinite or NaN where
// d is zero: a caller checks d first.
func (d BulkDensity) Volume(m Mass) Volume { return Volume(float64(m) / float64(d)) }

var bulkDensityTable = newTable(table{
	quantity: "bulk density", base: "g/mL",
	numerator: massTable, denominator: volumeTable,
	units: []unit{
		{code: "g/mL"},
		{code: "g/100 mL", shift: -2},
		{code: "g/L", shift: -3},
		{code: "kg/L"},
		{code: "g/US cup", mul: 2e6, div: 473176473},
		{code: "g/label cup", mul: 1, div: 240},
		{code: "g/metric cup", mul: 1, div: 250},
		{code: "g/fl oz", mul: 16e6, div: 473176473},
		{code: "g/tbsp", mul: 32e6, div: 473176473},
		{code: "g/tsp", mul: 32e6, div: 157725491},
	},
})

// ParseBulkDensity reads a bulk density, as in "0.42 g/mL" or
// "100 g/US cup". A bare "g/cup" is refused.
//
// An error is a [*ParseError].
func ParseBulkDensity(s string) (BulkDensity, error) {
	v, _, err := read(bulkDensityTable, s)
	return BulkDensity(v), err
}

// String returns d in grams per millilitre, as in "0.42 g/mL". It is read back by
// [ParseBulkDensity] as the same value.
func (d BulkDensity) String() string { return bulkDensityTable.text(float64(d)) }

// AppendText appends the text of String. It fails where d is NaN or infinite.
func (d BulkDensity) AppendText(b []byte) ([]byte, error) {
	return bulkDensityTable.appendText(b, float64(d))
}

// MarshalText returns the text of String. It fails where d is NaN or infinite.
func (d BulkDensity) MarshalText() ([]byte, error) { return d.AppendText(nil) }

// UnmarshalText sets d as [ParseBulkDensity] reads text. On an error d stays as it was.
func (d *BulkDensity) UnmarshalText(text []byte) error { return unmarshal(d, bulkDensityTable, text) }
