package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A refusal is a sentence: eight, eleven and eighteen begin with a vowel.
func TestRefusalNamesTheAge(t *testing.T) {
	for age, want := range map[energy.Age]string{
		4 * energy.Week:   "for a 4 wk old dog",
		8 * energy.Week:   "for an 8 wk old dog",
		11 * energy.Month: "for an 11 mo old dog",
		18 * energy.Month: "for an 18 mo old dog",
		80:                "for an 80 d old dog",
		81:                "for an 81 d old dog",
		110:               "for a 110 d old dog",
		179:               "for a 179 d old dog",
		10 * energy.Week:  "for a 10 wk old dog",
		17 * energy.Week:  "for a 17 wk old dog",
	} {
		_, err := energy.Growth{Animal: energy.Animal{Species: energy.Dog, Weight: 500 * units.Kilogram, Age: age}}.Estimate()
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v: %v, want %s", age, err, want)
		}
	}
}
