package energy_test

import (
	"errors"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// An age is at most 40 years of 365 days.
func TestAgeOfFortyYears(t *testing.T) {
	for text, want := range map[string]energy.Age{"9 d": 9, "14600 d": 14600, "40 y": 14600, "14601 d": 0} {
		if got, err := energy.ParseAge(text); got != want || (err == nil) != (want != 0) {
			t.Errorf("%q: %d, %v; want %d", text, got, err, want)
		}
	}
}

// What is asked back is an age that is taken: 486 months are 14,580 days, 487 more
// than 40 years.
func TestAgeAskedBackIsTaken(t *testing.T) {
	for text, want := range map[string]string{
		"0 m": "", "486 m": "486 mo?", "487 m": "", "14600 m": "", "40.5 y": "40.5 y is 486 mo", "50.5 y": "", "500.5 mo": "",
	} {
		_, err := energy.ParseAge(text)
		var fault *units.FieldError
		if !errors.As(err, &fault) || fault.Hint != want {
			t.Errorf("%q: %v, want the hint %q", text, err, want)
		}
	}
}
