package diet

import "example.org/bowlgram/internal/enum"

// AnalysisKind says what the figures of an analysis are. The zero value means
// not stated.
type AnalysisKind uint8

// Kinds of analysis.
const (
	// Guaranteed figures are bounds: at least so much protein and fat, at most
	// so much fibre and moisture (AAFCO; Merck Veterinary Manual, Dog and Cat
	// Foods, rev. 2023). Their sum is not the food's.
	Guaranteed AnalysisKind = iota + 1
	// Typical figures are averages: those of a manufacturer or a laboratory,
	// and the analytical constituents of a label in the European Union or the
	// United Kingdom, which have legal tolerances.
	Typical
)

var kindNames = []string{"", "guaranteed", "typical"}

// ParseAnalysisKind reads the text of a kind: guaranteed or typical. Case is
// folded.
func ParseAnalysisKind(s string) (AnalysisKind, error) {
	return enum.Parse[AnalysisKind]("diet", "kind", s, kindNames)
}

// String returns the text of k, as in "typical", and "" for the zero value.
func (k AnalysisKind) String() string { return enum.Text(k, kindNames) }

// AppendText appends the text of k.
func (k AnalysisKind) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "kind", k, kindNames)
}

// MarshalText returns the text of k.
func (k AnalysisKind) MarshalText() ([]byte, error) { return k.AppendText(nil) }

// UnmarshalText sets k from its text; an empty text is the zero value. On error
// k is left as it was.
func (k *AnalysisKind) UnmarshalText(text []byte) error {
	return enum.Unmarshal(k, "diet", "kind", text, kindNames)
}
