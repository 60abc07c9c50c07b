package trend

import (
	"strings"

	"example.org/bowlgram/internal/enum"
)

// Appetite is how an animal ate on a day, on the scale of 0 to 2 that Tanaka
// and others scored shelter cats on daily (J Am Vet Med Assoc 2012;240:570-576).
// The zero value is not scored.
type Appetite uint8

// The scores.
const (
	NotEating Appetite = iota + 1 // 0
	Reduced                       // 1
	Normal                        // 2
)

var appetiteNames = []string{"", "none", "reduced", "normal"}

// ParseAppetite reads a score, 0, 1 or 2, or its name: none, reduced or normal.
func ParseAppetite(s string) (Appetite, error) {
	switch strings.TrimSpace(s) {
	case "0":
		return NotEating, nil
	case "1":
		return Reduced, nil
	case "2":
		return Normal, nil
	}
	a, err := enum.Parse[Appetite]("trend", "appetite", s, appetiteNames)
	if err != nil {
		return 0, refuse("appetite", s, "0 or none, 1 or reduced, 2 or normal", "")
	}
	return a, nil
}

// String returns "none", "reduced" or "normal", and "" for the zero value.
func (a Appetite) String() string { return enum.Text(a, appetiteNames) }

// AppendText appends the text of a.
func (a Appetite) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "trend", "appetite", a, appetiteNames)
}

// MarshalText returns the text of a.
func (a Appetite) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// UnmarshalText sets a from its text; an empty text is the zero value.
func (a *Appetite) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*a = 0
		return nil
	}
	x, err := ParseAppetite(string(text))
	if err != nil {
		return err
	}
	*a = x
	return nil
}
