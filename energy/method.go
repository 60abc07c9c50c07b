package energy

import (
	"fmt"
	"slices"
	"strconv"

	"example.org/bowlgram/internal/enum"
)

// Method names an equation. On input the zero value is the default of the
// stage; an Estimate always names the one used. Methods says which stage takes
// which.
type Method uint8

// The equations. kg is the body weight used, in kilograms.
const (
	RERPower           Method = iota + 1 // 70 × kg^0.75 kcal/day
	RERLinear                            // 30 × kg + 70 kcal/day, 2 to 45 kg
	FactorOnRER                          // a life-stage factor × 70 × kg^0.75
	NRC2006                              // National Research Council 2006
	FEDIAF                               // FEDIAF Nutritional Guidelines, Annex VII-2
	PerKilogram                          // kcal for each kilogram
	Prescription                         // a veterinarian's figure
	Klein2019                            // Klein and others 2019, pet puppies
	Bermingham                           // Bermingham and others, dogs 2014, cats 2010
	Thes                                 // Thes, LMU Munich, client-owned dogs
	ShareOfMaintenance                   // a part of the adult maintenance energy
	ShareOfIntake                        // a part of what is eaten now
	Deficit                              // maintenance less the energy of the tissue to be lost
	PerDistance                          // maintenance and kcal for each kilogram and kilometre
	TwoTerm                              // maintenance and a cost of distance and of time
	PercentOfRER                         // a step of a ladder, percent of 70 × kg^0.75
	MeasuredIntake                       // what was weighed in and eaten
	RecordedIdeal                        // the ideal weight on record
	PerPoint                             // 10 % of ideal weight for each point above 5/9
	BodyFat                              // lean mass kept, 20 % fat at ideal weight
)

var methodNames = []string{
	"", "rer_power", "rer_linear", "factor_on_rer", "nrc_2006", "fediaf", "per_kilogram", "prescription",
	"klein_2019", "bermingham", "thes", "share_of_maintenance", "share_of_intake", "deficit", "per_distance",
	"two_term", "percent_of_rer", "measured_intake", "recorded_ideal", "per_point", "body_fat",
}

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

// checkMethod refuses a method that the stage doesn't take. The methods are in
// the order of the error text.
func checkMethod(m Method, accepted ...Method) error {
	if slices.Contains(accepted, m) {
		return nil
	}
	return refuse("method", m.given(), list(accepted), "")
}

// list returns the texts of values as in "a, b or c".
func list[T fmt.Stringer](values []T) string {
	names := []string{""}
	for _, v := range values {
		names = append(names, v.String())
	}
	return enum.List(names)
}
