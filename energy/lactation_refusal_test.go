package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestLactationRefusesWhatCannotBe(t *testing.T) {
	const (
		elsewhere = " (no equation here is made for it: Prescribed takes a veterinarian's figure)"
		more      = ", or Prescribed with a veterinarian's figure)"
	)
	for _, tt := range []struct {
		field  string
		change func(*energy.Lactation)
		want   string
	}{
		{"young", func(s *energy.Lactation) { s.Young = 0 }, `energy: young "0": want 1 to 24 that nurse (not given)`},
		{"young", func(s *energy.Lactation) { s.Young = -1 }, `energy: young "-1": want 1 to 24 that nurse`},
		{"young", func(s *energy.Lactation) { s.Young = 25 }, `energy: young "25": want 1 to 24 that nurse`},
		{"week", func(s *energy.Lactation) { s.Week = -1 }, `energy: week "-1": want 1 to 10, counted from birth, or 0 if not known`},
		{"week", func(s *energy.Lactation) { s.Week = 11 }, `energy: week "11": want 1 to 10, counted from birth, or 0 if not known (days? day 11 is in week 2, once the young are weaned: Adult)`},
		{"week", func(s *energy.Lactation) { s.Week = 70 }, `energy: week "70": want 1 to 10, counted from birth, or 0 if not known (days? day 70 is in week 10, once the young are weaned: Adult)`},
		{"week", func(s *energy.Lactation) { s.Week = 71 }, `energy: week "71": want 1 to 10, counted from birth, or 0 if not known (once the young are weaned: Adult)`},
		{"weight", func(s *energy.Lactation) { s.Animal.Weight = 0 }, `energy: weight "": want 1.5 kg to 20 kg for an adult cat (not given)`},
		{"weight", func(s *energy.Lactation) { s.Animal.Weight = 4.3 * units.Gram }, `energy: weight "4.3 g": want 1.5 kg to 20 kg for an adult cat (kilograms? 4.3 kg is in range)`},
		{"species", func(s *energy.Lactation) { s.Animal.Species = 0 }, `energy: species "": want dog, cat or ferret (not given)`},
		{"species", func(s *energy.Lactation) { s.Animal.Species = energy.Other }, `energy: species "other": want dog, cat or ferret` + elsewhere},
		{"species", func(s *energy.Lactation) { s.Animal.Species = 9 }, `energy: species "9": want dog, cat, ferret or other`},
		{"age", func(s *energy.Lactation) { s.Animal.Age = 5 * energy.Month }, `energy: age "5 mo": want 6 mo or more (no equation covers growth as well: Prescribed with a veterinarian's figure)`},
		{"circumstances", func(s *energy.Lactation) { s.Animal.Circumstances = energy.Pregnant | energy.Lactating }, `energy: circumstances "pregnant": want no other than lactating (it needs more than maintenance: Gestation` + more},
		{"circumstances", func(s *energy.Lactation) { s.Animal.Circumstances = energy.Growing }, `energy: circumstances "growing": want no other than lactating (it needs more than maintenance: Growth` + more},
		{"method", func(s *energy.Lactation) { s.Method = energy.FEDIAF }, `energy: method "fediaf": want nrc_2006 or factor_on_rer`},
		{"method", func(s *energy.Lactation) { s.Method = 99 }, `energy: method "99": want nrc_2006 or factor_on_rer`},
	} {
		t.Run(tt.want, func(t *testing.T) {
			s := nursing(energy.Cat, 4*kg, 4, 3, 0)
			tt.change(&s)
			refused(t, s, tt.field, tt.want)
		})
	}
	refused(t, nursing(energy.Ferret, 1*kg, 4, 3, energy.FactorOnRER), "method", `energy: method "factor_on_rer": want per_kilogram`)
}

func TestEveryFaultOfLactationIsReportedAtOnce(t *testing.T) {
	s := energy.Lactation{
		Animal: energy.Animal{Species: energy.Dog, Weight: 130 * kg, Age: 3 * energy.Month, Condition: energy.BCS9(1), Circumstances: energy.Pregnant},
		Week:   12, Method: energy.RERLinear,
	}
	e, err := s.Estimate()
	var list units.ErrorList
	if e != (energy.Estimate{}) || !errors.As(err, &list) {
		t.Fatalf("%v, %T: want the zero estimate and a units.ErrorList", e, err)
	}
	want := []string{"condition", "weight", "age", "circumstances", "method", "young", "week"}
	if len(list) != len(want) {
		t.Fatalf("%d faults, want %d: %v", len(list), len(want), err)
	}
	for i, field := range want {
		if !strings.HasPrefix(list[i].Error(), "energy: "+field+` "`) {
			t.Errorf("fault %d is %v, want one of %q", i, list[i], field)
		}
	}
}
