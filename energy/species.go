package energy

import "example.org/bowlgram/internal/enum"

// Species is the kind of animal. The zero value is not given.
type Species uint8

// The species with equations of their own, and Other for every other animal
// (rabbit, guinea pig …), which is fed by a prescribed figure.
const (
	Dog Species = iota + 1
	Cat
	Ferret
	Other
)

// isValid reports whether s is one of them, or not given.
func (s Species) isValid() bool { return s <= Other }

var speciesNames = []string{"", "dog", "cat", "ferret", "other"}

// ParseSpecies returns the species named s: dog, cat, ferret or other.
func ParseSpecies(s string) (Species, error) {
	return enum.Parse[Species]("energy", "species", s, speciesNames)
}

// String returns "dog", "cat", "ferret" or "other", and "" for the zero value.
func (s Species) String() string { return enum.Text(s, speciesNames) }

// AppendText appends the text of s.
func (s Species) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "energy", "species", s, speciesNames)
}

// MarshalText returns the text of s.
func (s Species) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the zero value.
func (s *Species) UnmarshalText(text []byte) error {
	return enum.Unmarshal(s, "energy", "species", text, speciesNames)
}
