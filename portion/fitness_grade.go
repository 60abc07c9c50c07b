package portion

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/enum"
)

// Grade says how well a scale weighs a load. The zero value is no grade. The
// two limits of coarseness are 20 and 10 steps: the first is OIML R 76-1's
// minimum capacity, taken as a guide, the second is ours.
type Grade uint8

// Grades, from the best.
const (
	Fits      Grade = iota + 1 // 20 steps or more: half a step is at most 2.5 %
	Coarse                     // 10 to 19 steps: half a step is at most 5 %
	TooCoarse                  // under 10 steps
	Nothing                    // some meals are less than a step, and get nothing
	Overload                   // more than the scale holds
)

var gradeNames = []string{"", "fits", "coarse", "too_coarse", "nothing", "overload"}

// String returns the name of g, as in "too_coarse", and "" for the zero value.
func (g Grade) String() string { return enum.Text(g, gradeNames) }

// AppendText appends the text of g.
func (g Grade) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "portion", "grade", g, gradeNames)
}

// MarshalText returns the text of g.
func (g Grade) MarshalText() ([]byte, error) { return g.AppendText(nil) }

// UnmarshalText sets g from its text; an empty text is the zero value.
func (g *Grade) UnmarshalText(text []byte) error {
	return enum.Unmarshal(g, "portion", "grade", text, gradeNames)
}

// level returns how much a caution of that grade weighs.
func (g Grade) level() advice.Level {
	switch g {
	case Coarse:
		return advice.Note
	case TooCoarse, Nothing, Overload:
		return advice.Warn
	}
	return 0
}
