package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

const (
	wantAbove  = "5/9 to 9/9 or 3/5 to 5/5, or a recorded ideal weight"
	notScored  = " (not given: score the animal, it is never taken for ideal)"
	noPercent  = " (below the ideal score no percentage is published: record the ideal weight)"
	ownWeight  = " (its weight is not that of its condition alone)"
	grownOnly  = "a grown animal, neither pregnant nor lactating"
	fiveFerret = "3/5 to 5/5 for a ferret, or a recorded ideal weight (the scale of nine is made for dogs and cats)"
)

func TestIdealWeightIsRefused(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(*energy.Animal)
		method energy.Method
		want   string
	}{
		{"not scored", func(a *energy.Animal) { a.Condition = energy.Condition{} }, 0, `energy: condition "": want ` + wantAbove + notScored},
		{"4/9", func(a *energy.Animal) { a.Condition = energy.BCS9(4) }, 0, `energy: condition "4/9": want ` + wantAbove + noPercent},
		{"2/5", func(a *energy.Animal) { a.Condition = energy.BCS5(2) }, energy.BodyFat, `energy: condition "2/5": want ` + wantAbove + noPercent},
		{"10/9", func(a *energy.Animal) { a.Condition = energy.BCS9(10) }, 0, `energy: condition "10/9": want ` + wantScore},
		{"growing", func(a *energy.Animal) { a.Circumstances = energy.Growing }, 0, `energy: circumstances "growing": want ` + grownOnly + ownWeight},
		{"pregnant", func(a *energy.Animal) { a.Circumstances = energy.Pregnant }, 0, `energy: circumstances "pregnant": want ` + grownOnly + ownWeight},
		{"lactating", func(a *energy.Animal) { a.Circumstances = energy.Lactating }, 0, `energy: circumstances "lactating": want ` + grownOnly + ownWeight},
		{
			"pup", func(a *energy.Animal) { a.Age = 5 * energy.Month }, 0,
			`energy: age "5 mo": want 6 mo or more for an ideal weight (Growth takes the expected adult weight)`,
		},
		{
			"other species", func(a *energy.Animal) { a.Species = energy.Other }, 0,
			`energy: species "other": want dog, cat or ferret (no ideal weight is worked out for it: ask a veterinarian)`,
		},
		{"no species", func(a *energy.Animal) { a.Species = 0 }, 0, `energy: species "": want dog, cat or ferret (not given)`},
		{
			"ferret on nine points", func(a *energy.Animal) { a.Species, a.Weight = energy.Ferret, 1.2*kg }, 0,
			`energy: condition "8/9": want ` + fiveFerret,
		},
		{
			"body fat of a ferret", func(a *energy.Animal) { a.Species, a.Weight = energy.Ferret, 1.2*kg }, energy.BodyFat,
			`energy: method "body_fat": want recorded_ideal or per_point`,
		},
		{"nothing on record", func(a *energy.Animal) {}, energy.RecordedIdeal, `energy: ideal weight "": want the weight on record (not given)`},
		{"a method of a stage", func(a *energy.Animal) {}, energy.NRC2006, `energy: method "nrc_2006": want recorded_ideal, per_point or body_fat`},
		{"no method", func(a *energy.Animal) {}, 99, `energy: method "99": want recorded_ideal, per_point or body_fat`},
		{"no weight", func(a *energy.Animal) { a.Weight = 0 }, 0, `energy: weight "": want 800 g to 120 kg for an adult dog (not given)`},
		{
			"grams", func(a *energy.Animal) { a.Weight = 38500 * kg }, 0,
			`energy: weight "38500 kg": want 800 g to 120 kg for an adult dog (grams? 38500 g is 38.5 kg)`,
		},
		{
			"pounds on record", func(a *energy.Animal) { a.Ideal = 85 * kg }, 0,
			`energy: ideal weight "85 kg": want at most twice the current 38.5 kg (pounds for kilograms?)`,
		},
		{
			"an ideal weight no dog has", func(a *energy.Animal) { a.Weight, a.Ideal = 1.2*kg, 0.7*kg }, 0,
			`energy: ideal weight "700 g": want 800 g to 120 kg for an adult dog`,
		},
		{
			"ideal weight NaN", func(a *energy.Animal) { a.Ideal = units.Mass(math.NaN()) }, 0,
			`energy: ideal weight "NaN g": want above 0 g, or none if not recorded`,
		},
		{
			"several", func(a *energy.Animal) { a.Age, a.Condition, a.DaysUnfed = 3*energy.Month, energy.BCS9(3), -1 }, 0,
			`energy: days unfed "-1": want 0 or more whole days; ` +
				`energy: age "3 mo": want 6 mo or more for an ideal weight (Growth takes the expected adult weight); ` +
				`energy: condition "3/9": want ` + wantAbove + noPercent,
		},
	} {
		t.Run(tt.name, func(t *testing.T) {
			a := energy.Animal{Species: energy.Dog, Weight: 38.5 * kg, Condition: energy.BCS9(8)}
			tt.change(&a)
			got, err := energy.IdealWeight(a, tt.method)
			if got != (energy.Target{}) {
				t.Errorf("target %+v beside the error", got)
			}
			if err == nil || err.Error() != tt.want {
				t.Errorf("got  %v\nwant %v", err, tt.want)
			}
		})
	}
}

// A weight on record says nothing of an amount, so that the thin and the ill
// may be asked for theirs.
func TestIdealWeightOnRecordPassesTheGates(t *testing.T) {
	for _, tt := range gated {
		a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Ideal: 26 * kg}
		tt.change(&a)
		if got := ideal(t, a, 0); got.Weight != 26*kg {
			t.Errorf("%s: %v, want 26 kg", tt.field, got.Weight)
		}
	}
}
