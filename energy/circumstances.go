package energy

import (
	"math/bits"
	"strings"

	"example.org/bowlgram/units"
)

// Circumstances is a set of what else is known of the animal. The zero value
// is nothing known. Growth, Gestation and Lactation say themselves that the animal
// grows, is pregnant or nurses: Growing, Pregnant and Lactating are for the other
// stages, most of which refuse them.
type Circumstances uint16

// What may be known of an animal. They are combined with |.
const (
	Growing Circumstances = 1 << iota
	Pregnant
	Lactating
	Ill
	TubeFed
	TherapeuticDiet
	Diabetic
	UrinaryDisease
	Pancreatitis
	KidneyDisease
	LiverDisease
)

var circumstanceNames = []string{
	"growing", "pregnant", "lactating", "ill", "tube_fed", "therapeutic_diet",
	"diabetic", "urinary_disease", "pancreatitis", "kidney_disease", "liver_disease",
}

// Has reports whether every circumstance of x is in c.
func (c Circumstances) Has(x Circumstances) bool { return c&x == x }

// diseases are those that food and amount depend on.
const diseases = Diabetic | UrinaryDisease | Pancreatitis | KidneyDisease | LiverDisease

// known is the set of all that have a name.
const known = Growing<<11 - 1

// ParseCircumstances reads names separated by white space, as in
// "growing ill". An empty text is the empty set.
func ParseCircumstances(s string) (Circumstances, error) {
	var c Circumstances
next:
	for name := range strings.FieldsSeq(s) {
		for i, n := range circumstanceNames {
			if strings.EqualFold(name, n) {
				c |= 1 << i
				continue next
			}
		}
		return 0, &units.FieldError{
			Package: "energy", Field: "circumstances", Value: name,
			Accepted: strings.Join(circumstanceNames, ", "),
		}
	}
	return c, nil
}

// String returns the names in c, separated by spaces.
func (c Circumstances) String() string {
	b, _ := (c & known).AppendText(nil)
	return string(b)
}

// AppendText appends the text of c.
func (c Circumstances) AppendText(b []byte) ([]byte, error) {
	if c&^known != 0 {
		return nil, &units.FieldError{
			Package: "energy", Field: "circumstances", Value: "unknown bits",
			Accepted: strings.Join(circumstanceNames, ", "),
		}
	}
	for n := len(b); c != 0; c &= c - 1 {
		if len(b) > n {
			b = append(b, ' ')
		}
		b = append(b, circumstanceNames[bits.TrailingZeros16(uint16(c))]...)
	}
	return b, nil
}

// MarshalText returns the text of c.
func (c Circumstances) MarshalText() ([]byte, error) { return c.AppendText(nil) }

// UnmarshalText sets c from its text.
func (c *Circumstances) UnmarshalText(text []byte) error {
	x, err := ParseCircumstances(string(text))
	if err != nil {
		return err
	}
	*c = x
	return nil
}
