package transition

import (
	"strconv"
	"strings"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

var stepsForms = enum.List(scheduleNames) + ", or " + stepForms

// ParseSteps reads the name of a published schedule (four_stages, four_days,
// ten_steps, slow or immediate) or one's own steps, as in
// "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %". A step without days takes one. See
// NewSteps for what steps may be.
//
// An error is a *units.FieldError.
func ParseSteps(s string) (Steps, error) {
	if named, err := enum.Parse[schedule]("transition", "steps", s, scheduleNames); err == nil {
		return published(named), nil
	}
	steps, hint := scanSteps(s)
	if hint == "" && len(steps) > 0 {
		hint = checkSteps(steps)
	}
	if hint != "" || len(steps) == 0 {
		return Steps{}, refuse("steps", s, stepsForms, hint)
	}
	return NewSteps(steps...)
}

// scanSteps reads the steps, or returns what is wrong with their text, if s looks
// like steps at all.
func scanSteps(s string) (steps []Step, hint string) {
	if !strings.ContainsAny(s, "0123456789") {
		return nil, ""
	}
	for part := range strings.SplitSeq(s, ",") {
		nth := "step " + strconv.Itoa(len(steps)+1)
		share, days, ok := strings.Cut(part, "%")
		p, err := units.ParsePercent(share + "%")
		if !ok || err != nil {
			return nil, nth + " is " + strconv.Quote(strings.TrimSpace(part))
		}
		n := 1
		if days = strings.TrimSpace(days); days != "" {
			number, unit := days, false
			for _, u := range [...]string{"days", "day", "d"} {
				if number, unit = strings.CutSuffix(days, u); unit {
					break
				}
			}
			x, err := strconv.ParseUint(strings.TrimSpace(number), 10, 16)
			if err != nil || !unit {
				return nil, nth + " takes " + strconv.Quote(days)
			}
			n = int(x)
		}
		steps = append(steps, Step{Days: n, Share: p})
	}
	return steps, ""
}

// stepsText writes steps so that they are read back bit for bit.
func stepsText(steps []Step) string {
	var b strings.Builder
	for i, s := range steps {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(s.Share.String())
		if s.Days != 1 {
			b.WriteString(" " + strconv.Itoa(s.Days) + " d")
		}
	}
	return b.String()
}

// String returns the name of a published schedule, as in "four_stages", or one's
// own steps, as in "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %", and "" for the zero
// value. ParseSteps reads it back as the same value.
func (s Steps) String() string {
	if name := s.name(); name != "" {
		return name
	}
	return stepsText(s.All())
}

// AppendText appends the text of s. It never fails.
func (s Steps) AppendText(b []byte) ([]byte, error) { return append(b, s.String()...), nil }

// MarshalText returns the text of s. It never fails.
func (s Steps) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the zero value. On error s
// is left as it was.
func (s *Steps) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*s = Steps{}
		return nil
	}
	x, err := ParseSteps(string(text))
	if err != nil {
		return err
	}
	*s = x
	return nil
}
