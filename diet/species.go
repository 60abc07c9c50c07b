package diet

import "example.org/bowlgram/energy"

// SpeciesSet is a set of species. The zero value, the empty set, means not
// stated.
type SpeciesSet uint8

// The species a food can be for; join them with |.
const (
	Dogs         SpeciesSet = 1 << (energy.Dog - 1)
	Cats         SpeciesSet = 1 << (energy.Cat - 1)
	Ferrets      SpeciesSet = 1 << (energy.Ferret - 1)
	OtherSpecies SpeciesSet = 1 << (energy.Other - 1)

	// NoSpecies stands alone: what a food is made of is for different species, and
	// for none in common. See [Mix.Food].
	NoSpecies SpeciesSet = noneOf
)

var speciesNames = []string{"", "dog", "cat", "ferret", "other"}

// Has reports whether s holds the species. No set holds the zero species.
func (s SpeciesSet) Has(species energy.Species) bool {
	return species >= energy.Dog && species <= energy.Other && s&(1<<(species-1)) != 0
}

// ParseSpeciesSet reads dog, cat, ferret and other, separated by spaces or
// commas: "dog", "cat, ferret", or none alone, which is [NoSpecies]. Case is
// folded. An empty text is the empty set.
func ParseSpeciesSet(s string) (SpeciesSet, error) {
	v, err := parseStated("species", s, speciesNames)
	return SpeciesSet(v), err
}

// String returns the names of the species in s, as in "dog cat".
func (s SpeciesSet) String() string { return statedText(uint8(s), speciesNames) }

// AppendText appends the text of s.
func (s SpeciesSet) AppendText(b []byte) ([]byte, error) {
	return appendStated(b, "species", uint8(s), speciesNames)
}

// MarshalText returns the text of s.
func (s SpeciesSet) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the empty set. On error
// s is left as it was.
func (s *SpeciesSet) UnmarshalText(text []byte) error {
	v, err := ParseSpeciesSet(string(text))
	if err == nil {
		*s = v
	}
	return err
}
