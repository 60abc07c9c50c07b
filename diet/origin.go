package diet

// Origin says where a figure comes from. The zero value means not known.
type Origin uint8

// Origins of an energy density.
const (
	Stated  Origin = iota + 1 // printed on the label
	Derived                   // from the energy and the mass of one serving
)

var originNames = names{"origin", []string{"stated", "derived"}}

// ParseOrigin reads the text of an origin; case is folded.
func ParseOrigin(s string) (Origin, error) {
	v, err := originNames.parse(s)
	return Origin(v), err
}

// String returns the text of o, as in "stated".
func (o Origin) String() string { return originNames.stringOf(uint8(o), "Origin") }

// AppendText implements encoding.TextAppender. An origin that is not known has
// no text.
func (o Origin) AppendText(b []byte) ([]byte, error) { return originNames.appendText(b, uint8(o)) }

// MarshalText implements encoding.TextMarshaler.
func (o Origin) MarshalText() ([]byte, error) { return o.AppendText(nil) }

// UnmarshalText implements encoding.TextUnmarshaler. On error o is left as it
// was.
func (o *Origin) UnmarshalText(text []byte) error {
	v, err := ParseOrigin(string(text))
	if err == nil {
		*o = v
	}
	return err
}
