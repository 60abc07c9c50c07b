package units_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/units"
)

// By hand, from powers of ten and the pound of 453.59237 g.
func TestExponentsOfTwoDigits(t *testing.T) {
	for text, want := range map[string]units.Mass{
		"1e10 g": 1e10, "2.5E+12 mg": 2.5e9, "1e-12 kg": 1e-9, "3e19 g": 3e19, "1e010 g": 1e10,
	} {
		if got, err := units.ParseMass(text); err != nil || got != want {
			t.Errorf("%s: %v g, %v, want %v g", text, float64(got), err, float64(want))
		}
	}
}

// A figure that is refused is zero, whatever it is refused for.
func TestRefusedIsZero(t *testing.T) {
	for _, text := range []string{
		strings.Repeat("1", 5000) + " g", "1e400 g", "-1e308 lb", "1e308 lb", "1e-400 g", "x", "5", "5 x", "12.5 lb 4 oz", "12 lb 16 oz", ".5.5 kg", "",
	} {
		if got, err := units.ParseMass(text); err == nil || got != 0 {
			t.Errorf("%.20q: %v g, %v, want an error and zero", text, float64(got), err)
		}
		if got, digit, err := units.ParsePrinted[units.Mass](text); err == nil || got != 0 || digit != 0 {
			t.Errorf("%.20q: %v g, digit %v g, %v, want an error and zeros", text, float64(got), float64(digit), err)
		}
	}
	// The number is fine, the digit is below what a float64 holds.
	const tiny = "1.0000000000e-320 g"
	if got, digit, err := units.ParsePrinted[units.Mass](tiny); err == nil || got != 0 || digit != 0 {
		t.Errorf("%s: %v g, digit %v g, %v, want an error and zeros", tiny, float64(got), float64(digit), err)
	}
}

func TestDigitAfterALeadingPoint(t *testing.T) {
	got, digit, err := units.ParsePrinted[units.Mass](".5 kg")
	if err != nil || got != 500 || digit != 100 {
		t.Errorf("%v g, digit %v g, %v, want 500 g and 100 g", float64(got), float64(digit), err)
	}
	if _, err := units.ParseMass(".5.5 kg"); err == nil || strings.Contains(err.Error(), "range") {
		t.Errorf("%v, want the second point seen", err)
	}
}
