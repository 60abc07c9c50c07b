package advice

import (
	"cmp"
	"slices"

	"example.org/bowlgram/internal/enum"
)

var levelNames = []string{"", "note", "warn", "refer"}

// String returns "note", "warn" or "refer", and "" for the zero value.
func (l Level) String() string { return enum.Text(l, levelNames) }

// AppendText appends the text of l.
func (l Level) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "advice", "level", l, levelNames)
}

// MarshalText returns the text of l.
func (l Level) MarshalText() ([]byte, error) { return l.AppendText(nil) }

// UnmarshalText sets l from its text; an empty text is the zero value.
func (l *Level) UnmarshalText(text []byte) error {
	return enum.Unmarshal(l, "advice", "level", text, levelNames)
}

var seenNames = []string{"", "primary", "secondary", "memory", "ours"}

// String returns "primary", "secondary", "memory" or "ours", and "" for the
// zero value.
func (s Seen) String() string { return enum.Text(s, seenNames) }

// AppendText appends the text of s.
func (s Seen) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "advice", "seen", s, seenNames)
}

// MarshalText returns the text of s.
func (s Seen) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the zero value.
func (s *Seen) UnmarshalText(text []byte) error {
	return enum.Unmarshal(s, "advice", "seen", text, seenNames)
}

// String returns the source as a reader cites it, with how it was seen where
// that was not in print.
func (s Source) String() string {
	t := s.Work
	if s.Where != "" {
		t += ", " + s.Where
	}
	switch s.Seen {
	case Secondary:
		t += " (as quoted elsewhere)"
	case Memory:
		t += " (from memory)"
	case Ours:
		if t == "" {
			return "ours, not published"
		}
		t += " (ours, not published)"
	}
	return t
}

// String returns the caution as one line, its level first.
func (c Caution) String() string {
	s := c.Level.String() + ": " + c.Text
	if src := c.Source.String(); src != "" {
		s += " [" + src + "]"
	}
	return s
}

// Sort puts the cautions in the order they are to be read: refer, warn, note;
// within a level as they came.
func Sort(c []Caution) {
	slices.SortStableFunc(c, func(a, b Caution) int { return cmp.Compare(b.Level, a.Level) })
}
