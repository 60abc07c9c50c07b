package diet

import "example.org/bowlgram/internal/enum"

// Standard is a body of nutrient minima. The zero value is none.
type Standard uint8

// The standards.
const (
	// AAFCO: the dog and cat food nutrient profiles, for food sold in the
	// United States. They are tied to no intake and compared as printed.
	AAFCO Standard = iota + 1
	// FEDIAF: the nutritional guidelines, for food sold in Europe. The minima
	// for adults are tied to an intake of 110 (or 95) kcal/kg^0.75 in dogs and
	// 100 (or 75) kcal/kg^0.67 in cats.
	FEDIAF
	// NRC2006: the recommended allowances of the National Research Council,
	// tied to 130 kcal/kg^0.75 in dogs and 100 kcal/kg^0.67 in cats. Adults
	// only.
	NRC2006
)

var standardNames = []string{"", "aafco", "fediaf", "nrc_2006"}

// ParseStandard reads the text of a standard: aafco, fediaf or nrc_2006. Case
// is folded.
func ParseStandard(s string) (Standard, error) {
	return enum.Parse[Standard]("diet", "standard", s, standardNames)
}

// String returns the text of s, as in "fediaf", and "" for the zero value.
func (s Standard) String() string { return enum.Text(s, standardNames) }

// AppendText appends the text of s.
func (s Standard) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "standard", s, standardNames)
}

// MarshalText returns the text of s.
func (s Standard) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the zero value. On error
// s is left as it was.
func (s *Standard) UnmarshalText(text []byte) error {
	return enum.Unmarshal(s, "diet", "standard", text, standardNames)
}

// words returns the name of s for a sentence.
func (s Standard) words() string { return [...]string{"", "AAFCO", "FEDIAF", "NRC 2006"}[s] }

// Rule says how a food is held against a figure. The zero value is none.
type Rule uint8

// The rules.
const (
	Minimum      Rule = iota + 1 // at least so much
	Maximum                      // at most so much
	RatioMinimum                 // at least so many times the phosphorus
	RatioMaximum                 // at most so many times the phosphorus
)

var ruleNames = []string{"", "minimum", "maximum", "ratio_minimum", "ratio_maximum"}

// ParseRule reads the text of a rule: minimum, maximum, ratio_minimum or
// ratio_maximum. Case is folded.
func ParseRule(s string) (Rule, error) { return enum.Parse[Rule]("diet", "rule", s, ruleNames) }

// String returns the text of r, as in "minimum", and "" for the zero value.
func (r Rule) String() string { return enum.Text(r, ruleNames) }

// AppendText appends the text of r.
func (r Rule) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "rule", r, ruleNames)
}

// MarshalText returns the text of r.
func (r Rule) MarshalText() ([]byte, error) { return r.AppendText(nil) }

// UnmarshalText sets r from its text; an empty text is the zero value. On error
// r is left as it was.
func (r *Rule) UnmarshalText(text []byte) error {
	return enum.Unmarshal(r, "diet", "rule", text, ruleNames)
}

// isMost reports whether more than the figure is too much.
func (r Rule) isMost() bool { return r == Maximum || r == RatioMaximum }

// isRatio reports whether the figure is a multiple of the phosphorus.
func (r Rule) isRatio() bool { return r >= RatioMinimum }
