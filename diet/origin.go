package diet

import "example.org/bowlgram/internal/enum"

// Origin says where a figure comes from. The zero value means not known.
type Origin uint8

// Origins of an energy density.
const (
	Stated    Origin = iota + 1 // printed on the label
	Derived                     // from the energy and the mass of one serving
	Predicted                   // from the analysis, by the equation of a Predictor
)

var originNames = []string{"", "stated", "derived", "predicted"}

// ParseOrigin reads the text of an origin: stated, derived or predicted. Case is
// folded.
func ParseOrigin(s string) (Origin, error) {
	return enum.Parse[Origin]("diet", "origin", s, originNames)
}

// String returns the text of o, as in "stated", and "" for the zero value.
func (o Origin) String() string { return enum.Text(o, originNames) }

// AppendText appends the text of o.
func (o Origin) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "origin", o, originNames)
}

// MarshalText returns the text of o.
func (o Origin) MarshalText() ([]byte, error) { return o.AppendText(nil) }

// UnmarshalText sets o from its text; an empty text is the zero value. On error
// o is left as it was.
func (o *Origin) UnmarshalText(text []byte) error {
	return enum.Unmarshal(o, "diet", "origin", text, originNames)
}
