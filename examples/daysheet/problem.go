package main

import (
	"errors"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// problems collects everything that is wrong with one row, so that all of it
// can be mended at once.
type problems struct {
	texts []string
}

func (p *problems) any() bool { return len(p.texts) > 0 }

// add notes a value that was refused, and what is accepted in its column.
func (p *problems) add(column, value, reason string) {
	p.texts = append(p.texts, column+" "+quoteStart([]byte(value))+": "+reason)
}

// addError notes a value that a package of the library refused.
func (p *problems) addError(column, value string, err error) {
	for _, e := range faults(err) {
		p.add(column, value, reason(e))
	}
}

// String returns `line 7: weight "24.9": no unit, want …; meals "0": want …`.
func (p *problems) String(line int) string {
	return "line " + strconv.Itoa(line) + ": " + strings.Join(p.texts, "; ")
}

// faults takes a list of errors apart.
func faults(err error) []error {
	var list units.ErrorList
	if errors.As(err, &list) {
		return slices.Clone(list)
	}
	return []error{err}
}

// reason returns what an error of the library says besides the name and the
// value of the field, which the row gives in its own words.
func reason(err error) string {
	var parse *units.ParseError
	var field *units.FieldError
	var vet *energy.VeterinarianError
	switch {
	case errors.As(err, &parse):
		if parse.Accepted == "" {
			return parse.Reason
		}
		return parse.Reason + ", want " + parse.Accepted
	case errors.As(err, &vet):
		return refer(vet) + "want the veterinarian's kcal a day in energy and the name in by"
	case errors.As(err, &field):
		s := "want " + field.Accepted
		if field.Hint != "" {
			s += " (" + field.Hint + ")"
		}
		return s
	}
	return err.Error()
}

// refer begins what is said where only a veterinarian's figure will do.
func refer(vet *energy.VeterinarianError) string {
	return "refer to a veterinarian, " + vet.Reason + ", "
}

// nameFault says why a name can't stand on a sheet, or returns "".
func nameFault(name string) string {
	switch {
	case name == "":
		return "want a name"
	case len(name) > maxName:
		return strconv.Itoa(len(name)) + " bytes, want at most " + strconv.Itoa(maxName)
	case hasControl(name):
		return "want no line breaks or other control characters"
	}
	return ""
}

// hasControl reports whether s holds a control character. Nearly every name is
// ASCII, where that is quickly seen.
func hasControl(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c >= 0x7f {
			return strings.ContainsFunc(s[i:], isControl)
		}
	}
	return false
}

// isControl reports whether c steers how text is shown: a control character, or
// one that turns the direction of writing.
func isControl(c rune) bool { return unicode.IsControl(c) || unicode.Is(unicode.Bidi_Control, c) }

// oneLine makes a free text fit one line.
func oneLine(s string) string {
	if !hasControl(s) {
		return s
	}
	return strings.Join(strings.FieldsFunc(s, func(r rune) bool {
		return unicode.IsSpace(r) || isControl(r)
	}), " ")
}
