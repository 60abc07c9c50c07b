package units

import (
	"strconv"
	"strings"
)

// FieldError is one input that was refused: which, what was given, what would
// have been accepted and, where one is likely, the slip behind it. Every
// package of the library reports bad input with it. A text that is not of the form
// is a [*ParseError], and what is wrong with JSON itself, as a member of unknown
// name or one that stands twice, an error without a type.
type FieldError struct {
	Package  string // the package that refused, as in "energy"
	Field    string // what was wrong, as in "weight"
	Value    string // what was given, as text
	Accepted string // what would be accepted
	Hint     string // the likeliest slip and where to go; may be empty
}

// Error returns `energy: weight "4300 kg": want 1.5 kg to 20 kg (grams?)`. It is
// one line, whatever the value holds.
func (e *FieldError) Error() string {
	var b strings.Builder
	b.WriteString(e.Package)
	b.WriteString(": ")
	b.WriteString(e.Field)
	b.WriteString(" ")
	b.WriteString(strconv.Quote(cut(e.Value)))
	if e.Accepted != "" {
		b.WriteString(": want ")
		b.WriteString(e.Accepted)
	}
	if e.Hint != "" {
		b.WriteString(" (")
		b.WriteString(e.Hint)
		b.WriteString(")")
	}
	return b.String()
}

// cut shortens a value that is too long to be read in an error.
func cut(s string) string {
	const shown = 40
	if len(s) <= maxText {
		return s
	}
	return strings.ToValidUTF8(s[:shown], "") + "…"
}

// ErrorList holds every fault of one input, so that all can be mended at once.
// errors.Is and errors.As look through it.
type ErrorList []error

// maxShown is the most faults that the text of a list has; ours. A person mends
// no more than that at a time, and the text still fits one cell of a sheet.
const maxShown = 50

// Error joins the texts of the faults by "; ", so that it fits one CSV cell. Of
// more than 50 it has the first 50 and says how many more there are, as in
// "; and 12 more"; the list itself holds them all.
func (l ErrorList) Error() string {
	var s []string
	for i, err := range l {
		if i == maxShown {
			s = append(s, "and "+strconv.Itoa(len(l)-i)+" more")
			break
		}
		s = append(s, err.Error())
	}
	return strings.Join(s, "; ")
}

// Unwrap returns the faults.
func (l ErrorList) Unwrap() []error { return l }

// Err returns nil for an empty list, the only fault for a list of one, and l
// itself otherwise.
func (l ErrorList) Err() error {
	switch len(l) {
	case 0:
		return nil
	case 1:
		return l[0]
	}
	return l
}
