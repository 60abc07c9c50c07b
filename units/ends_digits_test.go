package units_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/units"
)

// What stands at the very end of a text, or is missing there.
func TestEndsOfATextAreToldApart(t *testing.T) {
	for text, want := range map[string]string{
		"5e":    `unknown unit "e"`, // an exponent that was not finished
		"5e3":   "no unit",
		"0 foo": `unknown unit "foo"`,
		"0X10":  "not a plain decimal number", // as a program writes a number in hexadecimal
	} {
		if _, err := units.ParseMass(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %s", text, err, want)
		}
	}
	// The last byte of an en quad and of an ideographic space is the first that
	// is not ASCII.
	for _, text := range []string{"24.9 kg\u2000", "24.9 kg\u3000"} {
		if got, err := units.ParseMass(text); err != nil || got != 24900 {
			t.Errorf("%q: %v g, %v, want 24900 g", text, float64(got), err)
		}
	}
}

// A value is quoted whole up to the longest text that is read, 400 bytes (ours).
func TestLongestValueIsQuotedWhole(t *testing.T) {
	for n, whole := range map[int]bool{400: true, 401: false} {
		value := strings.Repeat("k", n)
		err := &units.FieldError{Package: "units", Field: "mass", Value: value}
		if strings.Contains(err.Error(), value) != whole {
			t.Errorf("%d bytes: %.60s…, want the whole value: %t", n, err.Error(), whole)
		}
	}
}
