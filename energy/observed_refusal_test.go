package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// observed returns a dog of 16 kg that ate 900 kcal for four weeks, scored and
// steady, after change.
func observed(change func(*energy.Observed)) energy.Observed {
	s := energy.Observed{
		Animal: energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(5)},
		Intake: 900, Over: 4 * energy.Week, Before: 16 * kg,
	}
	change(&s)
	return s
}

func TestObservedFieldIsRefused(t *testing.T) {
	const intake = "want more than 0 kcal and at most 50000 kcal a day"
	const steady = "want an animal whose weight is steady (it needs more than maintenance: "
	const figure = ", or Prescribed with a veterinarian's figure)"
	const before = "want above 0 g, or none if it was not weighed"
	const nearby = "want a weight between half and twice the current 16 kg (pounds for kilograms?)"
	const days = "want 0 (not given) to 40 y"
	for _, tt := range []struct {
		field  string
		change func(*energy.Observed)
		want   string
	}{
		{"species", func(s *energy.Observed) { s.Animal.Species = 0 }, `energy: species "": want dog, cat, ferret or other (not given)`},
		{"species", func(s *energy.Observed) { s.Animal.Species = 5 }, `energy: species "5": want dog, cat, ferret or other`},
		{
			"weight", func(s *energy.Observed) { s.Animal.Weight, s.Before = 0, 0 },
			`energy: weight "": want 800 g to 120 kg for an adult dog (not given)`,
		},
		{
			"weight", func(s *energy.Observed) { s.Animal.Weight, s.Before = 16000*kg, 0 },
			`energy: weight "16000 kg": want 800 g to 120 kg for an adult dog (grams? 16000 g is 16 kg)`,
		},
		{
			"weight", func(s *energy.Observed) { s.Animal.Species, s.Animal.Weight, s.Before = energy.Other, 0, 0 },
			`energy: weight "": want 5 g to 200 kg for any other animal (not given)`,
		},
		{
			"age", func(s *energy.Observed) { s.Animal.Age = 179 },
			`energy: age "179 d": want 6 mo or more (its weight isn't steady while it grows: Growth)`,
		},
		{"circumstances", func(s *energy.Observed) { s.Animal.Circumstances = energy.Growing }, `energy: circumstances "growing": ` + steady + "Growth" + figure},
		{"circumstances", func(s *energy.Observed) { s.Animal.Circumstances = energy.Pregnant }, `energy: circumstances "pregnant": ` + steady + "Gestation" + figure},
		{"circumstances", func(s *energy.Observed) { s.Animal.Circumstances = energy.Lactating }, `energy: circumstances "lactating": ` + steady + "Lactation" + figure},
		{"intake", func(s *energy.Observed) { s.Intake = 0 }, `energy: intake "0 kcal": ` + intake},
		{"intake", func(s *energy.Observed) { s.Intake = -900 }, `energy: intake "-900 kcal": ` + intake},
		{"intake", func(s *energy.Observed) { s.Intake = 50001 }, `energy: intake "50001 kcal": ` + intake},
		{"intake", func(s *energy.Observed) { s.Intake = units.Energy(math.NaN()) }, `energy: intake "NaN kcal": ` + intake},
		{"intake", func(s *energy.Observed) { s.Intake = units.Energy(math.Inf(1)) }, `energy: intake "+Inf kcal": ` + intake},
		{"over", func(s *energy.Observed) { s.Over = -1 }, `energy: over "-1 d": ` + days},
		{"over", func(s *energy.Observed) { s.Over = 14601 }, `energy: over "14601 d": ` + days},
		{"weight before", func(s *energy.Observed) { s.Before = -1 }, `energy: weight before "-1 g": ` + before},
		{"weight before", func(s *energy.Observed) { s.Before = units.Mass(math.NaN()) }, `energy: weight before "NaN g": ` + before},
		{"weight before", func(s *energy.Observed) { s.Before = units.Mass(math.Inf(1)) }, `energy: weight before "+Inf g": ` + before},
		{"weight before", func(s *energy.Observed) { s.Before = 35.3 * kg }, `energy: weight before "35.3 kg": ` + nearby},
		{"weight before", func(s *energy.Observed) { s.Before = 7.9 * kg }, `energy: weight before "7.9 kg": ` + nearby},
	} {
		t.Run(tt.want, func(t *testing.T) { refused(t, observed(tt.change), tt.field, tt.want) })
	}
}

func TestObservedTakesEverySpecies(t *testing.T) {
	for species, want := range map[energy.Species]energy.Age{
		energy.Dog: 4 * energy.Week, energy.Cat: 2 * energy.Week, energy.Ferret: 2 * energy.Week, energy.Other: 2 * energy.Week,
	} {
		e := estimate(t, observed(func(s *energy.Observed) {
			s.Animal.Species, s.Animal.Weight, s.Before, s.Intake = species, 2*kg, 2*kg, 301.5
		}))
		if e.Daily != 301.5 || e.Low != 301.5 || e.High != 301.5 || e.Method != energy.MeasuredIntake ||
			e.Weight != 2*kg || e.Basis != energy.Current || e.Reweigh != want {
			t.Errorf("%v: %+v, want 301.5 kcal as measured, on 2 kg, weighed again in %v", species, e, want)
		}
	}
	// Six months is an adult; a guinea pig is grown before that.
	estimate(t, observed(func(s *energy.Observed) { s.Animal.Age = 6 * energy.Month }))
	estimate(t, observed(func(s *energy.Observed) { s.Animal.Species, s.Animal.Age = energy.Other, 4*energy.Month }))
}

func TestObservedBoundsAreClosed(t *testing.T) {
	for _, change := range []func(*energy.Observed){
		func(s *energy.Observed) { s.Intake = 50000 },
		func(s *energy.Observed) { s.Animal.Species, s.Intake = energy.Other, 0.5 },
		func(s *energy.Observed) { s.Over = 40 * energy.Year },
		func(s *energy.Observed) { s.Before = 8 * kg },
		func(s *energy.Observed) { s.Before = 32 * kg },
	} {
		estimate(t, observed(change))
	}
}

func TestGatedAnimalIsNotFedByItsIntake(t *testing.T) {
	for _, tt := range gated {
		e, err := observed(func(s *energy.Observed) { tt.change(&s.Animal) }).Estimate()
		if e != (energy.Estimate{}) || err == nil || err.Error() != tt.want || !errors.Is(err, energy.ErrVeterinarian) {
			t.Errorf("%+v, %v\nwant %v", e, err, tt.want)
		}
	}
}

func TestEveryFaultOfAnObservedIntakeIsReportedAtOnce(t *testing.T) {
	_, err := energy.Observed{Over: -1, Before: -1}.Estimate()
	const want = `energy: species "": want dog, cat, ferret or other (not given); ` +
		`energy: intake "0 kcal": want more than 0 kcal and at most 50000 kcal a day; ` +
		`energy: over "-1 d": want 0 (not given) to 40 y; ` +
		`energy: weight before "-1 g": want above 0 g, or none if it was not weighed`
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %v", err, want)
	}
}
