package diet

import "strings"

// Constituents is a set of the constituents of an [Analysis]. The zero value
// is the empty set.
type Constituents uint8

// The constituents that are analysed; join them with |. The nitrogen-free
// extract is what they leave.
const (
	CrudeProtein Constituents = 1 << iota
	CrudeFat
	CrudeFibre
	Moisture
	CrudeAsh
)

// constituents are all of them, in the order of a label.
var constituents = [...]Constituents{CrudeProtein, CrudeFat, CrudeFibre, Moisture, CrudeAsh}

var constituentNames = []string{"", "protein", "fat", "fibre", "moisture", "ash"}

// Has reports whether s holds every constituent of t.
func (s Constituents) Has(t Constituents) bool { return s&t == t }

// ParseConstituents reads protein, fat, fibre, moisture and ash, separated by
// spaces or commas. Case is folded. An empty text is the empty set.
func ParseConstituents(s string) (Constituents, error) {
	v, err := parseSet("constituents", s, constituentNames)
	return Constituents(v), err
}

// String returns the names of the constituents in s, as in "fibre ash".
func (s Constituents) String() string { return setText(uint8(s), constituentNames) }

// AppendText appends the text of s.
func (s Constituents) AppendText(b []byte) ([]byte, error) {
	return appendSet(b, "constituents", uint8(s), constituentNames)
}

// MarshalText returns the text of s.
func (s Constituents) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the empty set. On error
// s is left as it was.
func (s *Constituents) UnmarshalText(text []byte) error {
	v, err := ParseConstituents(string(text))
	if err == nil {
		*s = v
	}
	return err
}

// words returns the name of one constituent for a sentence.
func (s Constituents) words() string {
	if s == Moisture {
		return s.String()
	}
	return "crude " + s.String()
}

// list joins the names in s for a sentence: "fibre and ash".
func (s Constituents) list() string { return strings.ReplaceAll(s.String(), " ", " and ") }
