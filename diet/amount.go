package diet

// Amount is how much of a food a menu asks for. It is made by [Rest] or
// [ParseAmount]. The zero value is no amount: [Menu.Validate] refuses it, so
// that a forgotten amount doesn't become a meal. An Amount is comparable.
type Amount struct {
	kind amountKind
}

type amountKind uint8

const restOfDay amountKind = 1

var amountNames = names{"amount", []string{"rest"}}

// Rest returns the amount of food that supplies what energy of the day the
// other foods of the menu leave: all of it, in a menu of one food.
func Rest() Amount { return Amount{restOfDay} }

// ParseAmount reads the text of an amount: "rest".
func ParseAmount(s string) (Amount, error) {
	v, err := amountNames.parse(s)
	return Amount{amountKind(v)}, err
}

// IsZero reports whether a is no amount.
func (a Amount) IsZero() bool { return a == Amount{} }

// IsRest reports whether a is the rest of the day's energy.
func (a Amount) IsRest() bool { return a.kind == restOfDay }

// Equal reports whether a and b are the same amount.
func (a Amount) Equal(b Amount) bool { return a == b }

// String returns the text of a, as in "rest".
func (a Amount) String() string { return amountNames.stringOf(uint8(a.kind), "Amount") }

// AppendText implements encoding.TextAppender. The zero amount has no text.
func (a Amount) AppendText(b []byte) ([]byte, error) {
	return amountNames.appendText(b, uint8(a.kind))
}

// MarshalText implements encoding.TextMarshaler.
func (a Amount) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// UnmarshalText implements encoding.TextUnmarshaler. On error a is left as it
// was.
func (a *Amount) UnmarshalText(text []byte) error {
	v, err := ParseAmount(string(text))
	if err == nil {
		*a = v
	}
	return err
}
