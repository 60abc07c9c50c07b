package energy

import (
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// Age is an age, counted from 1 on the day of birth, or a number of days between
// two weighings, in days. The zero value is not given.
type Age int

// Units of age. A month is counted as 30 days and a year as 365: an age is
// used to choose a row of a table, never in an equation.
const (
	Day   Age = 1
	Week      = 7 * Day
	Month     = 30 * Day
	Year      = 365 * Day
)

// maxAge is beyond any animal of the three species, and a check on typing.
const maxAge = 40 * Year

var ageUnits = []struct {
	name string
	unit Age
}{
	{"y", Year},
	{"year", Year},
	{"years", Year},
	{"mo", Month},
	{"month", Month},
	{"months", Month},
	{"wk", Week},
	{"week", Week},
	{"weeks", Week},
	{"d", Day},
	{"day", Day},
	{"days", Day},
}

// ageUnit returns the unit of that name, and 0 where there is none.
func ageUnit(name string) Age {
	for _, u := range ageUnits {
		if strings.EqualFold(name, u.name) {
			return u.unit
		}
	}
	return 0
}

// ParseAge reads a whole number of days, weeks, months or years: "10 d",
// "12 wk", "6 mo", "4 y". An age without a unit is refused.
func ParseAge(s string) (Age, error) {
	t := strings.TrimSpace(s)
	if a := readAge(t); a != 0 {
		return a, nil
	}
	return 0, &units.FieldError{
		Package: "energy", Field: "age", Value: s,
		Accepted: `a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`,
		Hint:     ageHint(t),
	}
}

// readAge returns the age that t is, and 0 where it is none.
func readAge(t string) Age {
	i := 0
	for i < len(t) && '0' <= t[i] && t[i] <= '9' {
		i++
	}
	n, err := strconv.Atoi(t[:i])
	if err != nil || n > int(maxAge) { // so that the product is in an int
		return 0
	}
	if a := Age(n) * ageUnit(strings.TrimSpace(t[i:])); a <= maxAge {
		return a
	}
	return 0
}

// ageHint returns what is likely meant by an age that is not read: months by
// "m", and a part of a year or of a month in the next smaller unit; nothing where
// that is no age that is read.
func ageHint(s string) string {
	i := strings.LastIndexAny(s, "0123456789") + 1
	x, err := strconv.ParseFloat(s[:i], 64)
	if err != nil {
		return ""
	}
	var unit string
	before, after := s+" is ", ""
	switch name := strings.TrimSpace(s[i:]); {
	case strings.EqualFold(name, "m"):
		unit, before, after = "mo", "", "?"
	case ageUnit(name) == Year:
		x, unit = 12*x, "mo"
	case ageUnit(name) == Month:
		x, unit = float64(Month)*x, "d"
	}
	meant := round(x, 0) + " " + unit
	if x != math.Trunc(x) || readAge(meant) == 0 {
		return ""
	}
	return before + meant + after
}

// String returns a in the largest unit that holds it whole: "4 y", "12 wk".
// Months of 30 days come before weeks; "" is the zero value.
func (a Age) String() string {
	if a == 0 {
		return ""
	}
	for _, u := range ageUnits {
		if len(u.name) <= 2 && a%u.unit == 0 {
			return strconv.Itoa(int(a/u.unit)) + " " + u.name
		}
	}
	return "" // not reached: every age is a whole number of days
}

// AppendText appends the text of a. It fails where a is below zero or above
// 40 y, since such a text is not read back.
func (a Age) AppendText(b []byte) ([]byte, error) {
	if a < 0 || a > maxAge {
		return nil, refuse("age", a.String(), "0 (not given) to 40 y", "")
	}
	return append(b, a.String()...), nil
}

// MarshalText returns the text of a. It fails where AppendText does.
func (a Age) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// UnmarshalText sets a from its text; an empty text is the zero value.
func (a *Age) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*a = 0
		return nil
	}
	x, err := ParseAge(string(text))
	if err != nil {
		return err
	}
	*a = x
	return nil
}
