package diet

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

	// NoStage stands alone: what a food is made of is for different stages, and for
	// none in common. See [Mix.Food].
	NoStage Stages = noneOf
)

var stageNames = []string{"", "growth", "reproduction", "maintenance"}

// Has reports whether s holds every stage of t.
func (s Stages) Has(t Stages) bool { return s&t == t }

// ParseStages reads growth, reproduction and maintenance, separated by spaces
// or commas, or none alone, which is [NoStage]. Case is folded. An empty text is
// the empty set.
func ParseStages(s string) (Stages, error) {
	v, err := parseStated("stages", s, stageNames)
	return Stages(v), err
}

// String returns the names of the stages in s, as in "growth reproduction".
func (s Stages) String() string { return statedText(uint8(s), stageNames) }

// AppendText appends the text of s.
func (s Stages) AppendText(b []byte) ([]byte, error) {
	return appendStated(b, "stages", uint8(s), stageNames)
}

// MarshalText returns the text of s.
func (s Stages) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the empty set. On error
// s is left as it was.
func (s *Stages) UnmarshalText(text []byte) error {
	v, err := ParseStages(string(text))
	if err == nil {
		*s = v
	}
	return err
}
