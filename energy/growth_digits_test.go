package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// fieldsOf returns the fields that the error names.
func fieldsOf(err error) string {
	var all []string
	var list units.ErrorList
	var one *units.FieldError
	switch {
	case errors.As(err, &list):
		for _, e := range list {
			if errors.As(e, &one) {
				all = append(all, one.Field)
			}
		}
	case errors.As(err, &one):
		all = append(all, one.Field)
	}
	return strings.Join(all, " ")
}

// The weights taken at an age are ours, and so are the figures here, worked out
// by hand. At 8 weeks, four after the start, a kitten may have 150 + 4 × 30 g to
// 1000 + 4 × 250 g, a puppy 150 + 4 × 25 g to 7000 + 4 × 2500 g; from 37 weeks
// on what is taken of the least and the most is what a small and a large adult
// have.
func TestGrowthWeightsByAge(t *testing.T) {
	for _, tt := range []struct {
		species     energy.Species
		age         energy.Age
		least, most units.Mass // g
		under, over units.Mass
	}{
		{energy.Cat, 4 * energy.Week, 150, 1000, 149.9, 1000.1},
		{energy.Cat, 8 * energy.Week, 270, 2000, 269.9, 2000.1},
		{energy.Cat, 37 * energy.Week, 1000, 9250, 999.9, 9250.1},
		{energy.Cat, 52 * energy.Week, 1000, 12000, 999.9, 12000.1},
		{energy.Dog, 4 * energy.Week, 150, 7000, 149.9, 7000.1},
		{energy.Dog, 8 * energy.Week, 250, 17000, 249.9, 17000.1},
		{energy.Dog, 37 * energy.Week, 800, 89500, 799.9, 89500.1},
	} {
		for weight, taken := range map[units.Mass]bool{tt.least: true, tt.most: true, tt.under: false, tt.over: false} {
			a := animal(tt.species, weight*units.Gram)
			a.Age = tt.age
			_, err := energy.Growth{Animal: a}.Estimate()
			if (fieldsOf(err) == "") != taken || !taken && fieldsOf(err) != "weight" {
				t.Errorf("%v of %v, %v g: %v, want it taken: %v", tt.species, tt.age, float64(weight), err, taken)
			}
		}
	}
}

// Below 15 % of the adult weight, ours, it may be a nursling: 3 kg of 20 kg.
func TestAgeIsNeededBelowAPartOfTheAdultWeight(t *testing.T) {
	for weight, want := range map[units.Mass]string{3 * kg: "", 2.99 * kg: "age", 2.81 * kg: "age"} {
		_, err := energy.Growth{Animal: animal(energy.Dog, weight), AdultWeight: 20 * kg}.Estimate()
		if fieldsOf(err) != want {
			t.Errorf("%v: %v, want %q", weight, err, want)
		}
	}
}

// Growth ends with two years (ours), 730 days; an age is at most 40 years.
func TestLastDayOfGrowth(t *testing.T) {
	for age, want := range map[energy.Age]string{
		730: "", 731: "age", 40 * energy.Year: "age",
	} {
		s := puppy(10*kg, 20*kg, age)
		_, err := s.Estimate()
		if fieldsOf(err) != want || want != "" && !strings.Contains(err.Error(), "grown: Adult") {
			t.Errorf("day %d: %v, want %q refused", age, err, want)
		}
		// The rows of a kitten without an adult weight end with a year.
		months := kitten(3*kg, 0, age)
		_, err = months.Estimate()
		if fieldsOf(err) != "age" || strings.Contains(err.Error(), "its table ends there") != (want == "") {
			t.Errorf("kitten on day %d: %v, want it refused for its table: %t", age, err, want == "")
		}
	}
	// The least at an age is 800 g for the grown dog, and 50 g where it is not known.
	refused(t, puppy(0.5*kg, 0, 730), "weight", `energy: weight "500 g": want 800 g to 120 kg for a 2 y old dog`)
}

// Ours: more than six tenths of its adult weight is odd before twelve weeks, less
// than three tenths from six months on; exactly so much is not.
func TestPartOfTheAdultWeightAtAnAge(t *testing.T) {
	for _, tt := range []struct {
		weight units.Mass
		age    energy.Age
		want   bool
	}{
		{6 * kg, 11 * energy.Week, false},
		{6.01 * kg, 11 * energy.Week, true},
		{3 * kg, 7 * energy.Month, false},
		{2.99 * kg, 7 * energy.Month, true},
	} {
		if got := told(t, puppy(tt.weight, 10*kg, tt.age), "is unusual at"); got != tt.want {
			t.Errorf("%v of 10 kg at %v: told %t", tt.weight, tt.age, got)
		}
	}
}
