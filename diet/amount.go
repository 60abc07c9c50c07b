package diet

import "example.org/bowlgram/internal/enum"

// Amount is how much of a food a menu asks for. It is made by [Rest] or
// [ParseAmount]. The zero value is no amount: [Menu.Validate] refuses it, so
// that a forgotten amount doesn't become a meal. An Amount is comparable.
type Amount struct {
	kind amountKind
}

type amountKind uint8

const restOfDay amountKind = 1

var amountNames = []string{"", "rest"}

// Rest returns the amount of food that supplies what energy of the day the
// other foods of the menu leave: all of it, in a menu of one food.
func Rest() Amount { return Amount{restOfDay} }

// ParseAmount reads the text of an amount: "rest".
func ParseAmount(s string) (Amount, error) {
	kind, err := enum.Parse[amountKind]("diet", "amount", s, amountNames)
	return Amount{kind}, err
}

// IsZero reports whether a is no amount.
func (a Amount) IsZero() bool { return a == Amount{} }

// IsRest reports whether a is the rest of the day's energy.
func (a Amount) IsRest() bool { return a.kind == restOfDay }

// Equal reports whether a and b are the same amount.
func (a Amount) Equal(b Amount) bool { return a == b }

// String returns the text of a, as in "rest", and "" for the zero amount.
func (a Amount) String() string { return enum.Text(a.kind, amountNames) }

// AppendText appends the text of a.
func (a Amount) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "amount", a.kind, amountNames)
}

// MarshalText returns the text of a.
func (a Amount) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// UnmarshalText sets a from its text; an empty text is the zero amount. On
// error a is left as it was.
func (a *Amount) UnmarshalText(text []byte) error {
	return enum.Unmarshal(&a.kind, "diet", "amount", text, amountNames)
}
