package units

// Mass is a mass, held in grams. The zero value is no mass, 0 g.
//
// A Mass may be negative: a change of weight is. The packages that take the
// weight of an animal or the mass of a portion refuse zero and less.
type Mass float64

// Units of mass. The pound is the international avoirdupois pound, exactly
// 0.45359237 kg; the ounce is a sixteenth of it.
const (
	Gram      Mass = 1
	Milligram      = Gram / 1000
	Kilogram       = 1000 * Gram
	Pound          = 453.59237 * Gram
	Ounce          = Pound / 16
)

// Grams returns m as a number of grams.
func (m Mass) Grams() float64 { return float64(m) }

// Milligrams returns m as a number of milligrams.
func (m Mass) Milligrams() float64 { return float64(m) * 1000 }

// Kilograms returns m as a number of kilograms.
func (m Mass) Kilograms() float64 { return float64(m / Kilogram) }

// Pounds returns m as a number of avoirdupois pounds.
func (m Mass) Pounds() float64 { return float64(m / Pound) }

// Ounces returns m as a number of avoirdupois ounces.
func (m Mass) Ounces() float64 { return float64(m / Ounce) }

var massTable = newTable(
	table{
		quantity: "mass", base: "g", thousand: "kg",
		units: []unit{
			{code: "kg", names: []string{"kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"}, shift: 3},
			{code: "g", names: []string{"gm", "gms", "gram", "grams", "gramme", "grammes"}},
			{code: "mg", names: []string{"milligram", "milligrams", "milligramme", "milligrammes"}, shift: -3},
			{code: "lb", names: []string{"[lb_av]", "lbs", "lb.", "lbs.", "pound", "pounds"}, mul: 45359237, div: 1e5},
			{code: "oz", names: []string{"[oz_av]", "ozs", "oz.", "ounce", "ounces"}, mul: 45359237, div: 16e5},
		},
	},
	doubt{[]string{"mg"}, "milligram or megagram", []string{"mg", "kg"}},
	doubt{[]string{"gr", "grs"}, "gram or grain", []string{"g", "mg"}},
)

// ParseMass reads a mass, as in "24.9 kg", "332g", "55 lbs"
// or "12 lb 4 oz".
//
// An error is a [*ParseError].
func ParseMass(s string) (Mass, error) {
	v, _, err := read(massTable, s)
	return Mass(v), err
}

// String returns m in grams, or in kilograms from 1000 g, as in "332 g" and "24.9 kg". It is read back by
// [ParseMass] as the same value.
func (m Mass) String() string { return massTable.text(float64(m)) }

// AppendText appends the text of String. It fails where m is NaN or infinite.
func (m Mass) AppendText(b []byte) ([]byte, error) { return massTable.appendText(b, float64(m)) }

// MarshalText returns the text of String. It fails where m is NaN or infinite.
func (m Mass) MarshalText() ([]byte, error) { return m.AppendText(nil) }

// UnmarshalText sets m as [ParseMass] reads text. On an error m stays as it was.
func (m *Mass) UnmarshalText(text []byte) error { return unmarshal(m, massTable, text) }
