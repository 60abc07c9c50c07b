package diet

import (
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// Price is an amount of money in a currency, which the caller names: nothing is
// converted. The zero value is not known; a price of nothing, as of donated
// food, has a currency. A Price is comparable.
type Price struct {
	amount   float64
	currency string
}

const priceForm = "a number and a currency of three capital letters, as in 1.52 USD"

// NewPrice returns a price: amount is zero or more, and the currency three
// capital letters, as in USD (ISO 4217; whether there is such a currency is not
// looked up).
func NewPrice(amount float64, currency string) (Price, error) {
	p := Price{amount, currency}
	if !p.isSound() {
		return Price{}, refuse("price", p.text(), priceForm)
	}
	if amount == 0 {
		p.amount = 0 // -0
	}
	return p, nil
}

// ParsePrice reads a price, as in "1.52 USD".
func ParsePrice(s string) (Price, error) {
	amount, currency, _ := strings.Cut(strings.TrimSpace(s), " ")
	x, err := units.ParsePercent(amount + "%") // as a plain number
	if err != nil {
		return Price{}, refuse("price", s, priceForm)
	}
	p, err := NewPrice(float64(x), strings.TrimSpace(currency))
	if err != nil {
		return Price{}, refuse("price", s, priceForm)
	}
	return p, nil
}

func (p Price) isSound() bool {
	if !(p.amount >= 0) || math.IsInf(p.amount, 0) || len(p.currency) != 3 {
		return false
	}
	for i := range 3 {
		if c := p.currency[i]; c < 'A' || c > 'Z' {
			return false
		}
	}
	return true
}

// Amount returns the number of units of the currency.
func (p Price) Amount() float64 { return p.amount }

// Currency returns the currency, as in "USD", and "" for the zero value.
func (p Price) Currency() string { return p.currency }

// IsZero reports whether p is not known.
func (p Price) IsZero() bool { return p.amount == 0 && p.currency == "" }

// Equal reports whether p and q are the same amount in the same currency.
func (p Price) Equal(q Price) bool { return p == q }

func (p Price) text() string {
	return strconv.FormatFloat(p.amount, 'f', -1, 64) + " " + p.currency
}

// String returns the text of p, as in "1.52 USD", unrounded, and "" for the zero
// value.
func (p Price) String() string {
	if p.IsZero() {
		return ""
	}
	return p.text()
}

// AppendText appends the text of p.
func (p Price) AppendText(b []byte) ([]byte, error) {
	if p.IsZero() {
		return b, nil
	}
	if !p.isSound() {
		return nil, refuse("price", p.text(), priceForm)
	}
	return append(b, p.text()...), nil
}

// MarshalText returns the text of p.
func (p Price) MarshalText() ([]byte, error) { return p.AppendText(nil) }

// UnmarshalText sets p from its text; an empty text is the zero value. On error
// p is left as it was.
func (p *Price) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*p = Price{}
		return nil
	}
	x, err := ParsePrice(string(text))
	if err == nil {
		*p = x
	}
	return err
}
