package diet

import "example.org/bowlgram/internal/enum"

// Nutrient is one that a [Standard] sets a minimum for. The zero value is
// none.
type Nutrient uint8

// The nutrients of which a published figure is held, in the order of the
// standards' tables. Vitamins, fatty acids other than linoleic, and the trace
// elements zinc, iodine and selenium are not among them: of those no figure
// was found that could be cited.
const (
	Protein Nutrient = iota + 1 // crude protein
	Arginine
	Histidine
	Isoleucine
	Lysine
	Methionine
	MethionineCystine // the two together
	Phenylalanine
	Threonine
	Tryptophan
	Valine
	Taurine
	Fat // crude fat
	LinoleicAcid
	Calcium
	Phosphorus
	Potassium
	Sodium
	Chloride
	Magnesium
	Iron
	Copper
	Manganese
)

const lastNutrient = Manganese

var nutrientNames = []string{
	"", "protein", "arginine", "histidine", "isoleucine", "lysine", "methionine", "methionine_cystine", "phenylalanine",
	"threonine", "tryptophan", "valine", "taurine", "fat", "linoleic_acid", "calcium", "phosphorus", "potassium", "sodium",
	"chloride", "magnesium", "iron", "copper", "manganese",
}

// ParseNutrient reads the text of a nutrient, as in calcium or
// methionine_cystine. Case is folded.
func ParseNutrient(s string) (Nutrient, error) {
	return enum.Parse[Nutrient]("diet", "nutrient", s, nutrientNames)
}

// String returns the text of n, as in "linoleic_acid", and "" for the zero
// value.
func (n Nutrient) String() string { return enum.Text(n, nutrientNames) }

// AppendText appends the text of n.
func (n Nutrient) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "nutrient", n, nutrientNames)
}

// MarshalText returns the text of n.
func (n Nutrient) MarshalText() ([]byte, error) { return n.AppendText(nil) }

// UnmarshalText sets n from its text; an empty text is the zero value. On error
// n is left as it was.
func (n *Nutrient) UnmarshalText(text []byte) error {
	return enum.Unmarshal(n, "diet", "nutrient", text, nutrientNames)
}

// words returns the name of n for a sentence.
func (n Nutrient) words() string {
	switch n {
	case MethionineCystine:
		return "methionine and cystine"
	case LinoleicAcid:
		return "linoleic acid"
	}
	return n.String()
}
