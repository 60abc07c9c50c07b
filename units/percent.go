package units

// Percent is a part of a whole, held in percent: 9 % moisture is Percent(9).
// What a zero means is for the field that holds it to say.
type Percent float64

// Fraction returns p as a fraction of one.
func (p Percent) Fraction() float64 { return float64(p) / 100 }

var percentTable = newTable(table{
	quantity: "percentage", base: "%",
	units: []unit{{code: "%", names: []string{"percent", "per cent", "pct"}}},
})

// ParsePercent reads a percentage, as in "9 %", "9%" or "9 percent".
//
// An error is a [*ParseError].
func ParsePercent(s string) (Percent, error) {
	v, _, err := read(percentTable, s)
	return Percent(v), err
}

// String returns p with its sign, as in "9 %". It is read back by
// [ParsePercent] as the same value.
func (p Percent) String() string { return percentTable.text(float64(p)) }

// AppendText appends the text of String. It fails where p is NaN or infinite.
func (p Percent) AppendText(b []byte) ([]byte, error) { return percentTable.appendText(b, float64(p)) }

// MarshalText returns the text of String. It fails where p is NaN or infinite.
func (p Percent) MarshalText() ([]byte, error) { return p.AppendText(nil) }

// UnmarshalText sets p as [ParsePercent] reads text. On an error p stays as it was.
func (p *Percent) UnmarshalText(text []byte) error { return unmarshal(p, percentTable, text) }
