package energy_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// bitchWith returns a pregnant bitch of 20 kg after change.
func bitchWith(change func(*energy.Gestation)) energy.Stage {
	s := energy.Gestation{Animal: animal(energy.Dog, 20*kg), Week: 6, WeightBeforeMating: 18 * kg}
	change(&s)
	return s
}

func TestGestationRefusesWhatCannotBe(t *testing.T) {
	const (
		elsewhere = " (no equation here is made for it: Prescribed takes a veterinarian's figure)"
		more      = ", or Prescribed with a veterinarian's figure)"
		apart     = "want one from which the current 20 kg is at most 50 % less or 75 % more (pounds for kilograms?)"
	)
	for _, tt := range []struct {
		field  string
		change func(*energy.Gestation)
		want   string
	}{
		{"week", func(s *energy.Gestation) { s.Week = 11 }, `energy: week "11": want 1 to 10, counted from mating, or 0 if not known (days? day 11 is in week 2, overdue? call the veterinarian, given birth? Lactation)`},
		{"week", func(s *energy.Gestation) { s.Week = 45 }, `energy: week "45": want 1 to 10, counted from mating, or 0 if not known (days? day 45 is in week 7, overdue? call the veterinarian, given birth? Lactation)`},
		{"week", func(s *energy.Gestation) { s.Week = -1 }, `energy: week "-1": want 1 to 10, counted from mating, or 0 if not known`},
		{"week", func(s *energy.Gestation) { s.Week = math.MaxInt }, `energy: week "` + maxInt() + `": want 1 to 10, counted from mating, or 0 if not known (overdue? call the veterinarian, given birth? Lactation)`},
		{"weight", func(s *energy.Gestation) { s.Animal.Weight = 0 }, `energy: weight "": want 800 g to 120 kg for an adult dog (not given: today's weight, as well as the one before mating)`},
		{"weight", func(s *energy.Gestation) { s.Animal.Weight, s.WeightBeforeMating = 0, 0 }, `energy: weight "": want 800 g to 120 kg for an adult dog (not given)`},
		{"weight", func(s *energy.Gestation) { s.Animal.Weight = 121 * kg; s.WeightBeforeMating = 0 }, `energy: weight "121 kg": want 800 g to 120 kg for an adult dog (pounds? 121 lb is 54.88 kg)`},
		{"species", func(s *energy.Gestation) { s.Animal.Species = 0 }, `energy: species "": want dog, cat or ferret (not given)`},
		{"species", func(s *energy.Gestation) { s.Animal.Species = energy.Other }, `energy: species "other": want dog, cat or ferret` + elsewhere},
		{"species", func(s *energy.Gestation) { s.Animal.Species = 9 }, `energy: species "9": want dog, cat, ferret or other`},
		{"age", func(s *energy.Gestation) { s.Animal.Age = 179 * energy.Day }, `energy: age "179 d": want 6 mo or more (no equation covers growth as well: Prescribed with a veterinarian's figure)`},
		{"circumstances", func(s *energy.Gestation) { s.Animal.Circumstances = energy.Lactating }, `energy: circumstances "lactating": want no other than pregnant (it needs more than maintenance: Lactation` + more},
		{"circumstances", func(s *energy.Gestation) { s.Animal.Circumstances = energy.Growing | energy.Pregnant }, `energy: circumstances "growing": want no other than pregnant (it needs more than maintenance: Growth` + more},
		{"method", func(s *energy.Gestation) { s.Method = energy.FEDIAF }, `energy: method "fediaf": want nrc_2006 or factor_on_rer`},
		{"method", func(s *energy.Gestation) { s.Method = energy.PerKilogram }, `energy: method "per_kilogram": want nrc_2006 or factor_on_rer`},
		{"method", func(s *energy.Gestation) { s.Method = 99 }, `energy: method "99": want nrc_2006 or factor_on_rer`},
		{"weight before mating", func(s *energy.Gestation) { s.WeightBeforeMating = -1 }, `energy: weight before mating "-1 g": want above 0 g, or none if not known`},
		{"weight before mating", func(s *energy.Gestation) { s.WeightBeforeMating = units.Mass(math.NaN()) }, `energy: weight before mating "NaN g": want above 0 g, or none if not known`},
		{"weight before mating", func(s *energy.Gestation) { s.WeightBeforeMating = units.Mass(math.Inf(1)) }, `energy: weight before mating "+Inf g": want above 0 g, or none if not known`},
		{"weight before mating", func(s *energy.Gestation) { s.Animal.Weight = 1 * kg; s.WeightBeforeMating = 790 * units.Gram }, `energy: weight before mating "790 g": want 800 g to 120 kg for an adult dog`},
		{"weight before mating", func(s *energy.Gestation) { s.WeightBeforeMating = 44 * kg }, `energy: weight before mating "44 kg": ` + apart},
		{"weight before mating", func(s *energy.Gestation) { s.WeightBeforeMating = 9 * kg }, `energy: weight before mating "9 kg": ` + apart},
	} {
		t.Run(tt.want, func(t *testing.T) { refused(t, bitchWith(tt.change), tt.field, tt.want) })
	}
}

// maxInt is math.MaxInt in decimal, which depends on the architecture.
func maxInt() string {
	if math.MaxInt == math.MaxInt32 {
		return "2147483647"
	}
	return "9223372036854775807"
}

func TestGestationOfAJillHasItsOwnWeeksAndMethod(t *testing.T) {
	jill := energy.Gestation{Animal: animal(energy.Ferret, 1*kg), Week: 8}
	refused(t, jill, "week", `energy: week "8": want 1 to 7, counted from mating, or 0 if not known (days? day 8 is in week 2, overdue? call the veterinarian, given birth? Lactation)`)
	jill.Week, jill.Method = 7, energy.NRC2006
	refused(t, jill, "method", `energy: method "nrc_2006": want per_kilogram`)
	jill.Method = 0
	estimate(t, jill)
}

// The bounds between which the weights before mating and now may lie: half as
// much and three quarters more; 0.7 is the gate.
func TestGestationTakesWeightsBeforeMatingUpToTheBounds(t *testing.T) {
	at := func(before units.Mass) error {
		_, err := energy.Gestation{Animal: animal(energy.Dog, 28*kg), WeightBeforeMating: before}.Estimate()
		return err
	}
	for _, before := range []units.Mass{16 * kg, 39.999 * kg} { // 28 / 16 = 1.75
		if err := at(before); err != nil {
			t.Errorf("%v before mating, 28 kg now: %v", before, err)
		}
	}
	if err := at(step(16*kg, 0)); err == nil {
		t.Error("more than 75 % above: no error")
	}
	if err := at(40 * kg); !errors.Is(err, energy.ErrVeterinarian) { // 28 / 40 = 0.7
		t.Errorf("30 %% less than before mating: %v", err)
	}
}

func TestGestationOfAnAnimalThatLostThirtyPercentIsTheVeterinarians(t *testing.T) {
	for _, before := range []units.Mass{30 * kg, 40 * kg} {
		_, err := bitchWith(func(s *energy.Gestation) { s.WeightBeforeMating = before }).Estimate()
		want := `energy: weight before mating "` + before.String() + `": the current 20 kg is 30 % or more below it: too much food too soon can kill (refeeding), or one of the two is wrong` + need
		var refusal *energy.VeterinarianError
		if err == nil || err.Error() != want || !errors.As(err, &refusal) || refusal.Field != "weight before mating" {
			t.Errorf("got  %v\nwant %v", err, want)
		}
	}
}

func TestGatedAnimalGetsNoAmountInGestationAndLactation(t *testing.T) {
	for _, tt := range gated {
		a := animal(energy.Dog, 20*kg)
		tt.change(&a)
		for _, s := range []energy.Stage{energy.Gestation{Animal: a}, energy.Lactation{Animal: a, Young: 4}} {
			e, err := s.Estimate()
			if e != (energy.Estimate{}) || err == nil || err.Error() != tt.want || !errors.Is(err, energy.ErrVeterinarian) {
				t.Errorf("%T: %+v\ngot  %v\nwant %v", s, e, err, tt.want)
			}
		}
	}
}

func TestEveryFaultOfGestationIsReportedAtOnce(t *testing.T) {
	s := energy.Gestation{
		Animal: energy.Animal{Species: energy.Cat, Weight: 44 * kg, Age: 3 * energy.Month, Condition: energy.BCS9(1), Circumstances: energy.Lactating},
		Week:   12, WeightBeforeMating: 1 * kg, Method: energy.RERLinear,
	}
	e, err := s.Estimate()
	var list units.ErrorList
	if e != (energy.Estimate{}) || !errors.As(err, &list) {
		t.Fatalf("%v, %T: want the zero estimate and a units.ErrorList", e, err)
	}
	want := []string{"condition", "weight", "age", "circumstances", "method", "week", "weight before mating"}
	if len(list) != len(want) {
		t.Fatalf("%d faults, want %d: %v", len(list), len(want), err)
	}
	for i, field := range want {
		if !strings.HasPrefix(list[i].Error(), "energy: "+field+` "`) {
			t.Errorf("fault %d is %v, want one of %q", i, list[i], field)
		}
	}
}
