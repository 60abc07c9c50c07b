package diet

import "example.org/bowlgram/internal/enum"

// Predictor names an equation that predicts the metabolizable energy of a food
// from its analysis. In [Analysis.Predict] the zero value means
// [ModifiedAtwater]; in a [Food] it means that nothing is predicted. A
// [Prediction] always names one. [Predictors] says what each is for.
type Predictor uint8

// The equations.
const (
	ModifiedAtwater Predictor = iota + 1 // 3.5, 8.5, 3.5 kcal/g: the label formula of the United States
	Atwater                              // 4, 9, 4 kcal/g, in a cat 4, 8.5, 4: natural foods only
	FourStep                             // NRC 2006, from gross energy and fibre: prepared foods
)

var predictorNames = []string{"", "modified_atwater", "atwater", "four_step"}

// ParsePredictor reads the text of a predictor: modified_atwater, atwater or
// four_step. Case is folded.
func ParsePredictor(s string) (Predictor, error) {
	return enum.Parse[Predictor]("diet", "predictor", s, predictorNames)
}

// String returns the text of p, as in "four_step", and "" for the zero value.
func (p Predictor) String() string { return enum.Text(p, predictorNames) }

// AppendText appends the text of p.
func (p Predictor) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "predictor", p, predictorNames)
}

// MarshalText returns the text of p.
func (p Predictor) MarshalText() ([]byte, error) { return p.AppendText(nil) }

// UnmarshalText sets p from its text; an empty text is the zero value. On error
// p is left as it was.
func (p *Predictor) UnmarshalText(text []byte) error {
	return enum.Unmarshal(p, "diet", "predictor", text, predictorNames)
}
