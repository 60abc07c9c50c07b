package units

import (
	"strconv"
	"strings"
)

// ParseError is a text that could not be read as a quantity.
type ParseError struct {
	Quantity string // what was wanted, as in "mass"
	Text     string // the text, cut off if it is too long to be a quantity
	Reason   string // what is wrong with it, as in "no unit"
	Accepted string // what would be accepted; may be empty
}

// Error returns `units: mass "24.9": no unit: want kg, g, mg, lb or oz`.
func (e *ParseError) Error() string {
	s := "units: " + e.Quantity + " " + strconv.Quote(e.Text) + ": " + e.Reason
	if e.Accepted != "" {
		s += ": want " + e.Accepted
	}
	return s
}

// fail returns the error for s.
func (t *table) fail(s, reason, accepted string) error {
	return &ParseError{t.quantity, strings.Clone(s), reason, accepted}
}

// failTooLong returns the error for s, which is above maxText.
func (t *table) failTooLong(s string) error {
	return t.fail(cut(s), "too long", "at most "+strconv.Itoa(maxText)+" bytes")
}

// failRange returns the error for s, which a float64 can't hold.
func (t *table) failRange(s string) error {
	return t.fail(s, "out of range", "")
}

// explainNoNumber returns the error for s, which begins with no number.
func (t *table) explainNoNumber(s, text string) error {
	reason := "no number"
	if text == "" {
		reason = "empty"
	}
	return t.fail(s, reason, "a number and "+t.codes())
}

// explainNoUnit returns the error for s, whose rest after the number n is no
// unit of t, or one with more than one reading.
func (t *table) explainNoUnit(s string, n number, rest string, d *doubt) error {
	name := trimLeft(rest)
	switch {
	case name == "":
		return t.fail(s, "no unit", t.codes())
	case d != nil:
		return t.fail(s, "ambiguous unit "+strconv.Quote(name)+" ("+d.why+")", orList(d.choices))
	case rest[0] == ',':
		return t.fail(s, "comma in the number", "a decimal point and no thousands separator")
	case rest[0] == '.' || rest[0] == '_' || (rest[0] == 'x' || rest[0] == 'X') && n.zero:
		return t.fail(s, "not a plain decimal number", `digits with at most one point, as in "24.9"`)
	case beginsNumber(name):
		return t.fail(s, "more than one number", "one decimal number and "+t.codes())
	}
	if other := t.elsewhere(name); other != "" {
		return t.fail(s, strconv.Quote(name)+" is a unit of "+other, t.codes())
	}
	return t.fail(s, "unknown unit "+strconv.Quote(name), t.codes())
}

// beginsNumber reports whether a second number follows the first: the rest of a
// fraction, of a span, whose dash may be a long one, or of a number with a space
// in it.
func beginsNumber(name string) bool {
	for _, between := range []string{"/", "-", "+", "±", "–", "−"} {
		if rest, ok := strings.CutPrefix(name, between); ok {
			name = trimLeft(rest)
			break
		}
	}
	return name != "" && isDigit(name[0])
}

// elsewhere returns the quantity that has a unit spelled name, if one has. A
// lone letter in doubt, as the t and the C of a recipe, says nothing where no
// volume is wanted: there it may be a tonne or a Calorie.
func (t *table) elsewhere(name string) string {
	for _, other := range []*table{
		massTable, energyTable, volumeTable,
		energyDensityTable, energyPerVolumeTable, bulkDensityTable, percentTable, lengthTable,
	} {
		u, d := other.find(name)
		if u != nil || d != nil && len(strings.TrimSuffix(name, ".")) > 1 {
			return other.quantity
		}
	}
	return ""
}
