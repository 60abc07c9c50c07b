package energy

import "example.org/bowlgram/internal/enum"

// Basis says which body weight an energy was computed on. The zero value is
// none: a prescribed figure uses no weight.
type Basis uint8

// The weights an energy is computed on.
const (
	Current      Basis = iota + 1 // the weight on the scale
	Ideal                         // the ideal weight, recorded or worked out
	BeforeMating                  // the weight before mating
)

var basisNames = []string{"", "current", "ideal", "before_mating"}

// String returns "current", "ideal" or "before_mating", and "" for the zero
// value.
func (b Basis) String() string { return enum.Text(b, basisNames) }

// AppendText appends the text of b.
func (b Basis) AppendText(t []byte) ([]byte, error) {
	return enum.Marshal(t, "energy", "basis", b, basisNames)
}

// MarshalText returns the text of b.
func (b Basis) MarshalText() ([]byte, error) { return b.AppendText(nil) }

// UnmarshalText sets b from its text; an empty text is the zero value.
func (b *Basis) UnmarshalText(text []byte) error {
	return enum.Unmarshal(b, "energy", "basis", text, basisNames)
}

// words is b as it is read aloud.
func (b Basis) words() string {
	if b == BeforeMating {
		return "weight before mating"
	}
	return b.String() + " weight"
}
