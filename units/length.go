package units

// Length is the length of a run or a walk, held in metres. The zero value is no
// distance, 0 m.
type Length float64

// Units of length. The mile is the international one, exactly 1.609344 km.
const (
	Metre     Length = 1
	Kilometre        = 1000 * Metre
	Mile             = 1609.344 * Metre
)

// Metres returns l as a number of metres.
func (l Length) Metres() float64 { return float64(l) }

// Kilometres returns l as a number of kilometres.
func (l Length) Kilometres() float64 { return float64(l / Kilometre) }

// Miles returns l as a number of international miles.
func (l Length) Miles() float64 { return float64(l / Mile) }

var lengthTable = newTable(
	table{
		quantity: "length", base: "m", thousand: "km",
		units: []unit{
			{code: "m", names: []string{"metre", "metres", "meter", "meters"}},
			{code: "km", names: []string{"kms", "kilometre", "kilometres", "kilometer", "kilometers"}, shift: 3},
			{code: "mi", names: []string{"[mi_i]", "mile", "miles"}, mul: 1609344, div: 1000},
		},
	},
	doubt{[]string{"m"}, "metre or mile", []string{"m", "km", "mi"}},
)

// ParseLength reads a length, as in "12 km", "800 m" or "7.5 miles". A small m is
// the metre; a capital one is refused, since it is written for the mile too.
//
// An error is a [*ParseError].
func ParseLength(s string) (Length, error) {
	v, _, err := read(lengthTable, s)
	return Length(v), err
}

// String returns l in metres, or in kilometres from 1000 m, as in "800 m" and
// "12 km". It is read back by [ParseLength] as the same value.
func (l Length) String() string { return lengthTable.text(float64(l)) }

// AppendText appends the text of String. It fails where l is NaN or infinite.
func (l Length) AppendText(b []byte) ([]byte, error) { return lengthTable.appendText(b, float64(l)) }

// MarshalText returns the text of String. It fails where l is NaN or infinite.
func (l Length) MarshalText() ([]byte, error) { return l.AppendText(nil) }

// UnmarshalText sets l as [ParseLength] reads text. On an error l stays as it was.
func (l *Length) UnmarshalText(text []byte) error { return unmarshal(l, lengthTable, text) }
