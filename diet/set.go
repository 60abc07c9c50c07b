package diet

import (
	"fmt"
	"strings"

	"example.org/bowlgram/energy"
)

// SpeciesSet is a set of species. The zero value, the empty set, means not
// stated.
type SpeciesSet uint8

// The species a food can be for; join them with |.
const (
	Dogs         SpeciesSet = 1 << (energy.Dog - 1)
	Cats         SpeciesSet = 1 << (energy.Cat - 1)
	Ferrets      SpeciesSet = 1 << (energy.Ferret - 1)
	OtherSpecies SpeciesSet = 1 << (energy.Other - 1)
)

var speciesNames = names{"species", []string{"dog", "cat", "ferret", "other"}}

// Has reports whether s holds the species. No set holds the zero species.
func (s SpeciesSet) Has(species energy.Species) bool {
	return species >= energy.Dog && species <= energy.Other && s&(1<<(species-1)) != 0
}

// ParseSpeciesSet reads names of species, singular or plural, separated by
// spaces, commas or plus signs: "dog", "cats, ferrets". Case is folded.
func ParseSpeciesSet(s string) (SpeciesSet, error) {
	v, err := speciesNames.parseSet(s, func(name string) string { return strings.TrimSuffix(name, "s") })
	return SpeciesSet(v), err
}

// String returns the names of the species in s, as in "dog cat"; empty for the
// empty set.
func (s SpeciesSet) String() string { return speciesNames.stringOfSet(uint8(s), "SpeciesSet") }

// AppendText implements encoding.TextAppender. The empty set has no text.
func (s SpeciesSet) AppendText(b []byte) ([]byte, error) {
	return speciesNames.appendSet(b, uint8(s))
}

// MarshalText implements encoding.TextMarshaler.
func (s SpeciesSet) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText implements encoding.TextUnmarshaler. On error s is left as it
// was.
func (s *SpeciesSet) UnmarshalText(text []byte) error {
	v, err := ParseSpeciesSet(string(text))
	if err == nil {
		*s = v
	}
	return err
}

// Stages is a set of life stages. The zero value, the empty set, means not
// stated.
type Stages uint8

// The life stages a food can be for, in the words of the nutritional adequacy
// statement (AAFCO Model Regulation PF7, from memory); join them with |.
const (
	Growth       Stages = 1 << iota // puppies, kittens, kits
	Reproduction                    // gestation and lactation
	Maintenance                     // adults
	AllStages    Stages = Growth | Reproduction | Maintenance
)

var stageNames = names{"stages", []string{"growth", "reproduction", "maintenance"}}

// Has reports whether s holds all the stages of t.
func (s Stages) Has(t Stages) bool { return s&t == t }

// ParseStages reads names of life stages, separated by spaces, commas or plus
// signs: "maintenance", "growth, reproduction". Case is folded.
func ParseStages(s string) (Stages, error) {
	v, err := stageNames.parseSet(s, func(name string) string { return name })
	return Stages(v), err
}

// String returns the names of the stages in s, as in "growth reproduction";
// empty for the empty set.
func (s Stages) String() string { return stageNames.stringOfSet(uint8(s), "Stages") }

// AppendText implements encoding.TextAppender. The empty set has no text.
func (s Stages) AppendText(b []byte) ([]byte, error) { return stageNames.appendSet(b, uint8(s)) }

// MarshalText implements encoding.TextMarshaler.
func (s Stages) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText implements encoding.TextUnmarshaler. On error s is left as it
// was.
func (s *Stages) UnmarshalText(text []byte) error {
	v, err := ParseStages(string(text))
	if err == nil {
		*s = v
	}
	return err
}

// parseSet reads a list of names as a bit set, value v of the enumeration as
// bit v-1.
func (n names) parseSet(s string, singular func(string) string) (uint8, error) {
	var set uint8
	for _, word := range strings.FieldsFunc(s, isSeparator) {
		v, err := n.parse(singular(strings.ToLower(word)))
		if err != nil {
			return 0, n.refuse(word)
		}
		set |= 1 << (v - 1)
	}
	if set == 0 {
		return 0, n.refuse(s)
	}
	return set, nil
}

func isSeparator(r rune) bool { return r == ' ' || r == ',' || r == '+' }

func (n names) stringOfSet(set uint8, typ string) string {
	if set>>len(n.list) != 0 {
		return fmt.Sprintf("%s(%#x)", typ, set)
	}
	var b strings.Builder
	for i, name := range n.list {
		if set&(1<<i) == 0 {
			continue
		}
		if b.Len() > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(name)
	}
	return b.String()
}

func (n names) appendSet(b []byte, set uint8) ([]byte, error) {
	if set == 0 || set>>len(n.list) != 0 {
		return nil, n.refuse(fmt.Sprintf("%#x", set))
	}
	return append(b, n.stringOfSet(set, "")...), nil
}
