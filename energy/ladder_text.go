package energy

import (
	"strconv"
	"strings"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

var ladderForms = "three_day, four_day, full, or " + stepForms

// ParseLadder reads the name of a hospital schedule (three_day, four_day or
// full) or a veterinarian's own steps, as in "25/25/50/75/100 %". Steps without
// a percent sign at the end are refused. See NewLadder for what steps may be.
//
// An error is a *units.FieldError.
func ParseLadder(s string) (Ladder, error) {
	if named, err := enum.Parse[schedule]("energy", "ladder", s, scheduleNames); err == nil {
		return named.ladder(), nil
	}
	steps, hint := scanSteps(s)
	if steps != nil {
		hint = checkSteps(steps)
	}
	if steps == nil || hint != "" {
		return Ladder{}, refuse("ladder", s, ladderForms, hint)
	}
	return ownLadder(steps), nil
}

// scanSteps reads the steps, or returns none and what is wrong with their text,
// if s looks like steps at all.
func scanSteps(s string) (steps []units.Percent, hint string) {
	list, ok := strings.CutSuffix(strings.TrimSpace(s), "%")
	if !ok {
		if strings.ContainsAny(s, "0123456789") {
			return nil, "no % at the end"
		}
		return nil, ""
	}
	for part := range strings.SplitSeq(list, "/") {
		part = strings.TrimSpace(part)
		// A sign after each step is one too many, and clear.
		p, err := units.ParsePercent(strings.TrimSuffix(part, "%") + "%")
		if err != nil {
			return nil, "step " + strconv.Itoa(len(steps)+1) + " is " + strconv.Quote(part)
		}
		steps = append(steps, p)
	}
	return steps, ""
}

// appendSteps writes steps so that they are read back bit for bit.
func appendSteps(b []byte, steps []units.Percent) []byte {
	for i, p := range steps {
		if i > 0 {
			b = append(b, '/')
		}
		b = strconv.AppendFloat(b, float64(p), 'f', -1, 64)
	}
	if len(steps) > 0 {
		b = append(b, " %"...)
	}
	return b
}

// String returns the name of a hospital schedule, as in "four_day", or the
// steps of a veterinarian's own, as in "25/25/50/75/100 %", and "" for the zero
// value. ParseLadder reads it back as the same value, its steps bit for bit.
func (l Ladder) String() string {
	b, _ := l.AppendText(nil)
	return string(b)
}

// AppendText appends the text of l. It never fails.
func (l Ladder) AppendText(b []byte) ([]byte, error) {
	if name := l.name(); name != "" {
		return append(b, name...), nil
	}
	return appendSteps(b, l.steps[:l.n]), nil
}

// MarshalText returns the text of l. It never fails.
func (l Ladder) MarshalText() ([]byte, error) { return l.AppendText(nil) }

// UnmarshalText sets l from its text; an empty text is the zero value.
func (l *Ladder) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*l = Ladder{}
		return nil
	}
	x, err := ParseLadder(string(text))
	if err != nil {
		return err
	}
	*l = x
	return nil
}
