package slow_test

import (
	"math/big"
	"testing"

	. "example.org/bowlgram/internal/slow"
)

// The wanted digits are those of e, ln 10 and the square root of 2, from
// memory; 16^0.75 = 8 and 32^-0.4 = 1/4 are exact.
func TestNumbers(t *testing.T) {
	for _, tt := range []struct {
		got  *big.Float
		want string
	}{
		{Exponential(Dec("1")), "2.71828182845904523536028747135266249775724709369995"},
		{Logarithm(Dec("10")), "2.30258509299404568401799145468436420760110148862877"},
		{Power(Dec("2"), Dec("0.5")), "1.41421356237309504880168872420969807856967187537694"},
		{Power(Dec("16"), Dec("0.75")), "8"},
		{Power(Dec("32"), Dec("-0.4")), "0.25"},
	} {
		if off := Relative(tt.got, Dec(tt.want)); off > 1e-48 {
			t.Errorf("%v, want %s: off by %.3g", tt.got.Text('g', 50), tt.want, off)
		}
	}
}
