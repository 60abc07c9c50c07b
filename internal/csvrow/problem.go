package csvrow

import (
	"errors"
	"strconv"
	"strings"

	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Problems collects everything that is wrong with one row, so that all of it
// can be mended at once.
type Problems struct {
	Texts []string
}

// Any reports whether anything is wrong.
func (p *Problems) Any() bool { return len(p.Texts) > 0 }

// Say notes what is wrong in words of its own.
func (p *Problems) Say(text string) { p.Texts = append(p.Texts, text) }

// Add notes a value that was refused, and what is accepted in its column.
func (p *Problems) Add(column, value, reason string) {
	p.Say(column + " " + QuoteStart([]byte(value)) + ": " + reason)
}

// AddError notes a value that a package of the library refused.
func (p *Problems) AddError(column, value string, err error) {
	for _, e := range errlist.Of(err) {
		p.Add(column, value, Reason(e))
	}
}

// String returns `line 7: weight "24.9": no unit, want …; meals "0": want …`.
func (p *Problems) String(line int) string {
	return "line " + strconv.Itoa(line) + ": " + p.Joined()
}

// Joined returns the problems without a line.
func (p *Problems) Joined() string { return strings.Join(p.Texts, "; ") }

// Plain returns the text of an error of the library without the package that it
// comes from.
func Plain(err error) string {
	text := err.Error()
	if pkg, rest, ok := strings.Cut(text, ": "); ok && !strings.ContainsAny(pkg, " \"") {
		return rest
	}
	return text
}

// Reason returns what an error of the library says besides the name and the
// value of the field, which the row gives in its own words.
func Reason(err error) string {
	var parse *units.ParseError
	var field *units.FieldError
	switch {
	case errors.As(err, &parse):
		if parse.Accepted == "" {
			return parse.Reason
		}
		return parse.Reason + ", want " + parse.Accepted
	case errors.As(err, &field):
		s := "want " + field.Accepted
		if field.Hint != "" {
			s += " (" + field.Hint + ")"
		}
		return s
	}
	return err.Error()
}

// QuoteStart quotes the beginning of a text, to show which one is meant.
func QuoteStart(text []byte) string {
	const most = 60
	s := strings.ToValidUTF8(strings.TrimRight(string(text[:min(len(text), most+1)]), "\r\n"), "?")
	if len(s) > most {
		s = strings.ToValidUTF8(s[:most], "") + "…"
	}
	return strconv.Quote(s)
}
