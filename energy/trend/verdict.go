package trend

import "example.org/bowlgram/internal/enum"

// Verdict is how a weight loss goes. The zero value is none.
type Verdict uint8

// The verdicts, on the loss a week in percent of the initial weight.
const (
	// TooEarly: fewer than two weighings or 14 days on this energy, or the
	// loss is below the target and the interval still reaches it, or the last
	// days are not, or the newest weight is more than 28 days old.
	TooEarly Verdict = iota + 1
	// OnTarget: within the target.
	OnTarget
	// TooFast: above the target, measured over 14 days, or sooner where the whole
	// interval is; or the last days are shown to be.
	TooFast
	// TooSlow: below the target, and shown to be, or for 28 days.
	TooSlow
	// Stalled: too slow, and the loss can't be told from none, or less was lost
	// since the last visit than 0.5 % a week.
	Stalled
	// AtGoal: the target weight is reached.
	AtGoal
)

var verdictNames = []string{"", "too_early", "on_target", "too_fast", "too_slow", "stalled", "at_goal"}

// ParseVerdict returns the verdict named v, as String writes it.
func ParseVerdict(v string) (Verdict, error) {
	return enum.Parse[Verdict]("trend", "verdict", v, verdictNames)
}

// String returns the name of v, as in "on_target", and "" for the zero value.
func (v Verdict) String() string { return enum.Text(v, verdictNames) }

// AppendText appends the text of v.
func (v Verdict) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "trend", "verdict", v, verdictNames)
}

// MarshalText returns the text of v.
func (v Verdict) MarshalText() ([]byte, error) { return v.AppendText(nil) }

// UnmarshalText sets v from its text; an empty text is the zero value.
func (v *Verdict) UnmarshalText(text []byte) error {
	return enum.Unmarshal(v, "trend", "verdict", text, verdictNames)
}
