package energy

import "example.org/bowlgram/internal/enum"

// Exercise is how hard a dog works over the day. The zero value is not given.
// No hours are published with the names: one dog's heavy day is another's
// moderate one, and the weight decides.
type Exercise uint8

// How hard a dog works.
const (
	LightExercise Exercise = iota + 1
	ModerateExercise
	HeavyExercise
)

var exerciseNames = []string{"", "light", "moderate", "heavy"}

// ParseExercise returns the exercise named s: light, moderate or heavy.
func ParseExercise(s string) (Exercise, error) {
	return enum.Parse[Exercise]("energy", "exercise", s, exerciseNames)
}

// String returns "light", "moderate" or "heavy", and "" for the zero value.
func (x Exercise) String() string { return enum.Text(x, exerciseNames) }

// AppendText appends the text of x.
func (x Exercise) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "energy", "exercise", x, exerciseNames)
}

// MarshalText returns the text of x.
func (x Exercise) MarshalText() ([]byte, error) { return x.AppendText(nil) }

// UnmarshalText sets x from its text; an empty text is the zero value.
func (x *Exercise) UnmarshalText(text []byte) error {
	return enum.Unmarshal(x, "energy", "exercise", text, exerciseNames)
}
