package energy

import (
	"strconv"

	"example.org/bowlgram/internal/enum"
)

// Method names an equation. On input the zero value is the default of the
// stage; an Estimate always names the one used.
type Method uint8

// The equations. kg is the body weight used, in kilograms.
const (
	RERPower     Method = iota + 1 // 70 × kg^0.75 kcal/day
	RERLinear                      // 30 × kg + 70 kcal/day, 2 to 45 kg
	FactorOnRER                    // a life-stage factor × 70 × kg^0.75
	NRC2006                        // National Research Council 2006
	FEDIAF                         // FEDIAF Nutritional Guidelines, Annex VII-2
	PerKilogram                    // kcal for each kilogram
	Prescription                   // a veterinarian's figure
)

var methodNames = []string{"", "rer_power", "rer_linear", "factor_on_rer", "nrc_2006", "fediaf", "per_kilogram", "prescription"}

// ParseMethod returns the method named s, as String writes it.
func ParseMethod(s string) (Method, error) {
	return enum.Parse[Method]("energy", "method", s, methodNames)
}

// String returns the name of m, as in "factor_on_rer", and "" for the zero
// value.
func (m Method) String() string { return enum.Text(m, methodNames) }

// AppendText appends the text of m.
func (m Method) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "energy", "method", m, methodNames)
}

// MarshalText returns the text of m.
func (m Method) MarshalText() ([]byte, error) { return m.AppendText(nil) }

// UnmarshalText sets m from its text; an empty text is the zero value.
func (m *Method) UnmarshalText(text []byte) error {
	return enum.Unmarshal(m, "energy", "method", text, methodNames)
}

// given is m as it was typed in, also where it names no method.
func (m Method) given() string {
	if s := m.String(); s != "" {
		return s
	}
	return strconv.Itoa(int(m))
}
