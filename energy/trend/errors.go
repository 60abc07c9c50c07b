package trend

import (
	"math"

	"example.org/bowlgram/units"
)

// refuse returns one refused field.
func refuse(field, value, accepted, hint string) error {
	return &units.FieldError{Package: "trend", Field: field, Value: value, Accepted: accepted, Hint: hint}
}

// isPositive reports whether x is a number above zero.
func isPositive[Q units.Quantity](x Q) bool { return x > 0 && !math.IsInf(float64(x), 0) }
