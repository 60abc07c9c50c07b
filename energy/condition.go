package energy

import (
	"strconv"
	"strings"
)

// Condition is a body condition score on the scale of nine or of five. The
// zero value is not scored. It is comparable with ==; scores of the two scales
// are never equal.
//
// A condition decides cautions and gates, not the amount of Resting or Adult
// (but for the cat curves of NRC 2006, another from 7/9, and of Bermingham,
// others up to 3/9 and from 7/9): up to 2/9 or 1/5 no amount is computed, at 3/9
// and from 7/9 there is a warning. What changes the amount of an
// overweight animal is a recorded ideal weight.
type Condition struct {
	scale int32 // 9, 5, or 0 for not scored
	score int32
}

// BCS9 returns a score on the nine-point scale: 1 emaciated, 5 ideal, 9 obese.
// A score outside 1 to 9 is refused where the condition is used.
func BCS9(score int) Condition { return Condition{9, clamp(score)} }

// BCS5 returns a score on the five-point scale: 1 emaciated, 3 ideal, 5 obese.
// A score outside 1 to 5 is refused where the condition is used.
func BCS5(score int) Condition { return Condition{5, clamp(score)} }

// clamp keeps a score that is out of range out of range, and in an int32.
func clamp(score int) int32 { return int32(max(-99, min(score, 99))) }

const (
	conditionForms = `the score with its scale, as in "5/9" or "3/5"`
	conditionRange = "1/9 to 9/9 or 1/5 to 5/5"
)

// ParseCondition reads "5/9" or "3/5". A score without its scale is refused:
// 5 is ideal on one and obese on the other.
func ParseCondition(s string) (Condition, error) {
	score, scale, _ := strings.Cut(strings.TrimSpace(s), "/")
	score, scale = strings.TrimSpace(score), strings.TrimSpace(scale)
	if scale != "9" && scale != "5" {
		return Condition{}, refuse("condition", s, conditionForms, "")
	}
	n, err := strconv.Atoi(score)
	if err != nil {
		return Condition{}, refuse("condition", s, conditionForms, halfPoint(score))
	}
	c := BCS9(n)
	if scale == "5" {
		c = BCS5(n)
	}
	if !c.isValid() {
		return Condition{}, refuse("condition", s, conditionRange, "")
	}
	return c, nil
}

// halfPoint returns the hint at a score between two points.
func halfPoint(score string) string {
	before, after, ok := strings.Cut(strings.Replace(score, ",", ".", 1), ".")
	if _, err := strconv.ParseUint(before+after, 10, 64); ok && err == nil {
		return "half points are not taken"
	}
	return ""
}

// IsZero reports whether the animal was not scored.
func (c Condition) IsZero() bool { return c == Condition{} }

// Nine returns the score on the nine-point scale, the five-point scores 1 to 5
// counted as 1, 3, 5, 7 and 9, and false where the animal was not scored.
func (c Condition) Nine() (score int, ok bool) {
	switch c.scale {
	case 9:
		return int(c.score), true
	case 5:
		return int(2*c.score - 1), true
	}
	return 0, false
}

func (c Condition) isValid() bool {
	return c.IsZero() || 1 <= c.score && c.score <= c.scale
}

// String returns "5/9" or "3/5", and "" where the animal was not scored.
func (c Condition) String() string {
	if c.IsZero() {
		return ""
	}
	return strconv.Itoa(int(c.score)) + "/" + strconv.Itoa(int(c.scale))
}

// AppendText appends the text of c. It fails where c is out of range, since
// such a text is not read back.
func (c Condition) AppendText(b []byte) ([]byte, error) {
	if !c.isValid() {
		return nil, refuse("condition", c.String(), conditionRange, "")
	}
	return append(b, c.String()...), nil
}

// MarshalText returns the text of c. It fails where c is out of range.
func (c Condition) MarshalText() ([]byte, error) { return c.AppendText(nil) }

// UnmarshalText sets c from its text; an empty text is not scored.
func (c *Condition) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*c = Condition{}
		return nil
	}
	x, err := ParseCondition(string(text))
	if err != nil {
		return err
	}
	*c = x
	return nil
}
