package diet

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/bowlgram/units"
)

// Amount is how much of a food a menu asks for. It is made by [Share],
// [Fixed], [Count], [Rest] or [ParseAmount]. The zero value is no amount:
// [Menu.Validate] refuses it, so that a forgotten amount doesn't become a meal.
// An Amount is comparable.
type Amount struct {
	kind   amountKind
	figure float64 // in %, in g, or a number of units
	of     string  // the unit that is counted; empty: the label's serving
}

type amountKind uint8

const (
	shareOfRest amountKind = iota + 1
	fixedMass
	countOfUnits
	restOfDay
)

// restText is the text of the rest.
const restText = "rest"

// servingText is the text of a count of the label's own serving.
const servingText = "serving"

// amountForms is what an amount can be written as.
const amountForms = "a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest"

// Share returns an amount of food that supplies p of the energy that treats
// and the fixed amounts of the menu leave: above 0 and at most 100 %. Half of
// the energy is neither half of the grams nor half a can.
func Share(p units.Percent) Amount { return Amount{kind: shareOfRest, figure: float64(p)} }

// Fixed returns the amount m, as fed and above 0 g, whatever the day's energy
// is.
func Fixed(m units.Mass) Amount { return Amount{kind: fixedMass, figure: float64(m)} }

// Count returns n household units or pieces, n above 0: cans, cups, biscuits.
// They are those that the label calls by the name of, in the singular or the
// plural ([Label.Others] beside [Label.Serving]); an empty name and "serving"
// are the label's serving, whatever that is called. The label says what one
// weighs.
func Count(n float64, of string) Amount {
	if of == servingText {
		of = ""
	}
	return Amount{kind: countOfUnits, figure: n, of: of}
}

// Rest returns the amount of food that supplies what energy of the day the
// other foods of the menu leave: all of it, in a menu of one food.
func Rest() Amount { return Amount{kind: restOfDay} }

// ParseAmount reads the text of an amount: "50 %", "45 g" or any other mass,
// "2 biscuit", "0.5 can", or "rest". Whether the label knows the unit of a
// count is for [Menu.Validate] to say. An energy is refused, and so are a product,
// as in "2 x 3 biscuit", more than 1000 units and a unit of more than 64 bytes.
func ParseAmount(s string) (Amount, error) {
	a, ok := parseAmount(strings.TrimSpace(s))
	if !ok || a.textFault() {
		e := refuse("amount", s, amountForms)
		if isProduct(a.of) {
			e.Hint = "one number and no x: 2 x 3 biscuit are 6 biscuit"
		}
		return Amount{}, e
	}
	return a, nil
}

func parseAmount(s string) (Amount, bool) {
	if strings.EqualFold(s, restText) {
		return Rest(), true
	}
	if p, err := units.ParsePercent(s); err == nil {
		return Share(p), true
	}
	if m, err := units.ParseMass(s); err == nil {
		return Fixed(m), true
	}
	of := strings.TrimLeft(s, "+-.0123456789")
	n, err := units.ParsePercent(s[:len(s)-len(of)] + "%") // as a plain number
	return Count(float64(n), strings.TrimSpace(of)), err == nil && strings.TrimSpace(of) != ""
}

// IsZero reports whether a is no amount.
func (a Amount) IsZero() bool { return a == Amount{} }

// IsRest reports whether a is the rest of the day's energy.
func (a Amount) IsRest() bool { return a.kind == restOfDay }

// Share returns the percentage that was given to [Share], and false where a is
// no share.
func (a Amount) Share() (units.Percent, bool) {
	if a.kind != shareOfRest {
		return 0, false
	}
	return units.Percent(a.figure), true
}

// Fixed returns the mass that was given to [Fixed], and false where a is no
// fixed mass. That of a count is for the label to say: see [Food.Unit].
func (a Amount) Fixed() (units.Mass, bool) {
	if a.kind != fixedMass {
		return 0, false
	}
	return units.Mass(a.figure), true
}

// Count returns how many units are counted and what they were called, empty
// for the label's serving, and false where a is no count.
func (a Amount) Count() (n float64, of string, ok bool) {
	if a.kind != countOfUnits {
		return 0, "", false
	}
	return a.figure, a.of, true
}

// Equal reports whether a and b are the same amount.
func (a Amount) Equal(b Amount) bool { return a == b }

// maxCount is the most units or pieces in a day; ours.
const maxCount = 1000

// accepted returns what would be accepted in place of the figure of a, or ""
// where a is fine.
func (a Amount) accepted() string {
	switch a.kind {
	case shareOfRest:
		if !(a.figure > 0 && a.figure <= 100) {
			return "above 0 % and at most 100 %"
		}
	case fixedMass:
		if !(a.figure > 0 && a.figure <= maxFigure) {
			return "above 0 g and at most 1e9"
		}
	case countOfUnits:
		if !(a.figure > 0 && a.figure <= maxCount) {
			return "above 0 and at most " + strconv.Itoa(maxCount) + " of them"
		}
	}
	return ""
}

// maxName is the most bytes in the name of a unit that is counted.
const maxName = 64

// textFault reports whether a can't be told from its text: because its figure
// is none, or because the name of its unit means something else.
func (a Amount) textFault() bool {
	return a.accepted() != "" || a.of != "" && (isNoName(a.of) || isQuantity(a.of))
}

// isUntold reports whether a counts a unit by a name that its text can't be told
// by. Of names that are none of a measure it doesn't allocate.
func (a Amount) isUntold() bool {
	return a.of != "" && (isNoName(a.of) || isMeasure(a.of) && isQuantity(a.of))
}

// nameWanted is what the unit of a count has to be called to be told.
const nameWanted = "a unit whose name begins with a letter, not with x for times, and is no mass, energy or percentage, as in portion: call it that on the label"

// isProduct reports whether text, after a number, begins with a sign for times.
func isProduct(text string) bool {
	switch first, size := utf8.DecodeRuneInString(text); first {
	case '×', '*':
		return true
	case 'x', 'X':
		next, _ := utf8.DecodeRuneInString(text[size:])
		return size < len(text) && !unicode.IsLetter(next)
	}
	return false
}

// isNoName reports whether text can't be the name of a unit after a number.
func isNoName(text string) bool {
	first, _ := utf8.DecodeRuneInString(text)
	return !unicode.IsLetter(first) || isProduct(text) || len(text) > maxName || text != strings.TrimSpace(text) ||
		!utf8.ValidString(text) || strings.ContainsFunc(text, func(r rune) bool { return !unicode.IsPrint(r) })
}

// isQuantity reports whether so many of that name are a percentage, a mass or an
// energy.
func isQuantity(name string) bool {
	one := "1 " + name
	_, notPercent := units.ParsePercent(one)
	_, notMass := units.ParseMass(one)
	_, notEnergy := units.ParseEnergy(one)
	return notPercent == nil || notMass == nil || notEnergy == nil
}

// String returns the text of a, as in "50 %", "45 g", "2 biscuit", "2 serving"
// or "rest", and "" for the zero amount.
func (a Amount) String() string {
	switch a.kind {
	case shareOfRest:
		return units.Percent(a.figure).String()
	case fixedMass:
		return units.Mass(a.figure).String()
	case countOfUnits:
		of := a.of
		if of == "" {
			of = servingText
		}
		return strconv.FormatFloat(a.figure, 'f', -1, 64) + " " + of
	case restOfDay:
		return restText
	}
	return ""
}

// AppendText appends the text of a. It fails where that would not be read back:
// for a figure out of range, and for a unit whose name is that of a mass, a
// percentage or an energy or starts with no letter.
func (a Amount) AppendText(b []byte) ([]byte, error) {
	if a.textFault() {
		return nil, refuse("amount", a.String(), amountForms)
	}
	return append(b, a.String()...), nil
}

// MarshalText returns the text of a, as [Amount.AppendText] does.
func (a Amount) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// UnmarshalText sets a from its text; an empty text is the zero amount. On
// error a is left as it was.
func (a *Amount) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*a = Amount{}
		return nil
	}
	x, err := ParseAmount(string(text))
	if err == nil {
		*a = x
	}
	return err
}
