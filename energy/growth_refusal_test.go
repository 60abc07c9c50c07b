package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// grows returns a puppy of 6 kg, 24 kg when grown, after change.
func grows(change func(*energy.Growth)) energy.Growth {
	s := energy.Growth{Animal: energy.Animal{Species: energy.Dog, Weight: 6 * kg, Age: 3 * energy.Month}, AdultWeight: 24 * kg}
	change(&s)
	return s
}

func TestGrowthRefuses(t *testing.T) {
	const (
		prescribed = ", or Prescribed with a veterinarian's figure)"
		unpub      = " (no energy is published for its young: Prescribed takes a veterinarian's figure)"
		alone      = "want an animal that is growing, not pregnant or lactating (it needs more than maintenance: "
		methodsDog = "want fediaf, nrc_2006, klein_2019 or factor_on_rer"
		methodsCat = "want nrc_2006, fediaf, factor_on_rer or per_kilogram"
		ended      = " (its table ends there: Adult, if grown; else the expected adult weight and method nrc_2006)"
	)
	for _, tt := range []struct {
		field  string
		change func(*energy.Growth)
		want   string
	}{
		{"species", func(s *energy.Growth) { s.Animal.Species = 0 }, `energy: species "": want dog or cat (not given)`},
		{"species", func(s *energy.Growth) { s.Animal.Species = 5 }, `energy: species "5": want dog, cat, ferret or other`},
		{"species", func(s *energy.Growth) { s.Animal.Species = energy.Ferret }, `energy: species "ferret": want dog or cat` + unpub},
		{"species", func(s *energy.Growth) { s.Animal.Species = energy.Other }, `energy: species "other": want dog or cat` + unpub},
		{"weight", func(s *energy.Growth) { s.Animal.Weight = 0 }, `energy: weight "": want 350 g to 27 kg for a 3 mo old dog (not given)`},
		{"weight", func(s *energy.Growth) { s.Animal.Weight = -1 }, `energy: weight "-1 g": want 350 g to 27 kg for a 3 mo old dog`},
		{
			"weight", func(s *energy.Growth) { s.Animal.Weight = 6 * units.Gram },
			`energy: weight "6 g": want 350 g to 27 kg for a 3 mo old dog (kilograms? 6 kg is in range)`,
		},
		{
			"weight", func(s *energy.Growth) { s.Animal.Weight = 24.1 * kg },
			`energy: weight "24.1 kg": want at most the expected adult weight of 24 kg (grown: Adult; or one of the two is in other units)`,
		},
		{
			"weight", func(s *energy.Growth) { s.Animal.Weight = 479 * units.Gram },
			`energy: weight "479 g": want at least a fiftieth of the expected adult weight of 24 kg (one of the two is in other units, or it is still nursing: Nursling)`,
		},
		{"adult weight", func(s *energy.Growth) { s.AdultWeight = -1 }, `energy: adult weight "-1 g": want 800 g to 120 kg for a dog`},
		{"adult weight", func(s *energy.Growth) { s.AdultWeight = units.Mass(math.NaN()) }, `energy: adult weight "NaN g": want 800 g to 120 kg for a dog`},
		{
			"adult weight", func(s *energy.Growth) { s.AdultWeight = 24000 * kg },
			`energy: adult weight "24000 kg": want 800 g to 120 kg for a dog (grams? 24000 g is 24 kg)`,
		},
		{
			"adult weight", func(s *energy.Growth) { s.Animal.Species, s.Animal.Weight, s.AdultWeight = energy.Cat, 3*kg, 44*kg },
			`energy: adult weight "44 kg": want 1.5 kg to 20 kg for a cat (pounds? 44 lb is 19.96 kg)`,
		},
		{
			"adult weight", func(s *energy.Growth) { s.AdultWeight, s.Method = 0, energy.NRC2006 },
			`energy: adult weight "": want the expected adult weight for method nrc_2006 (not given; without it: factor_on_rer)`,
		},
		{
			"adult weight", func(s *energy.Growth) { s.AdultWeight, s.Method = 0, energy.FEDIAF },
			`energy: adult weight "": want the expected adult weight for method fediaf (not given; without it: factor_on_rer)`,
		},
		{
			"adult weight", func(s *energy.Growth) { s.AdultWeight, s.Method = 0, energy.Klein2019 },
			`energy: adult weight "": want the expected adult weight for method klein_2019 (not given; without it: factor_on_rer)`,
		},
		{
			"adult weight",
			func(s *energy.Growth) {
				s.Animal.Species, s.Animal.Weight, s.AdultWeight, s.Method = energy.Cat, 3*kg, 0, energy.NRC2006
			},
			`energy: adult weight "": want the expected adult weight for method nrc_2006 (not given; without it: per_kilogram, fediaf or factor_on_rer)`,
		},
		{
			"ideal weight", func(s *energy.Growth) { s.Animal.Ideal = 24 * kg },
			`energy: ideal weight "24 kg": want none in growth (the expected adult weight goes in AdultWeight)`,
		},
		{
			"ideal weight", func(s *energy.Growth) { s.Animal.Ideal = 9 * kg },
			`energy: ideal weight "9 kg": want none in growth (the expected adult weight goes in AdultWeight)`,
		},
		{"age", func(s *energy.Growth) { s.Animal.Age = 1 }, `energy: age "1 d": want 4 wk to 2 y in growth (still nursing: Nursling)`},
		{"age", func(s *energy.Growth) { s.Animal.Age = 27 }, `energy: age "27 d": want 4 wk to 2 y in growth (still nursing: Nursling)`},
		{"age", func(s *energy.Growth) { s.Animal.Age = 731 }, `energy: age "731 d": want 4 wk to 2 y in growth (grown: Adult)`},
		{"age", func(s *energy.Growth) { s.Animal.Age = -1 }, `energy: age "-1 d": want 0 (not given) to 40 y`},
		{"age", func(s *energy.Growth) { s.Animal.Age = 41 * energy.Year }, `energy: age "14965 d": want 0 (not given) to 40 y`},
		{
			"age", func(s *energy.Growth) { s.Animal.Age, s.AdultWeight = 0, 0 },
			`energy: age "": want 4 wk to 2 y, or the expected adult weight (neither is given)`,
		},
		{
			"age", func(s *energy.Growth) { s.Animal.Species, s.Animal.Age, s.AdultWeight = energy.Cat, 0, 0 },
			`energy: age "": want 4 wk to 1 y, or the expected adult weight (neither is given)`,
		},
		{
			"age", func(s *energy.Growth) { s.Animal.Age, s.Method = 0, energy.FactorOnRER },
			`energy: age "": want 4 wk to 2 y for method factor_on_rer (not given)`,
		},
		{
			"age",
			func(s *energy.Growth) {
				s.Animal.Species, s.Animal.Age, s.Method = energy.Cat, 0, energy.PerKilogram
				s.AdultWeight = 7 * kg
			},
			`energy: age "": want 4 wk to 1 y for method per_kilogram (not given)`,
		},
		{
			"age",
			func(s *energy.Growth) {
				s.Animal.Species, s.Animal.Age, s.AdultWeight, s.Method = energy.Cat, 0, 0, energy.FactorOnRER
			},
			`energy: age "": want 4 wk to 2 y for method factor_on_rer (not given)`,
		},
		{
			"age", func(s *energy.Growth) { s.Animal.Species, s.Animal.Age, s.AdultWeight = energy.Cat, 366, 0 },
			`energy: age "366 d": want 4 wk to 1 y for method per_kilogram` + ended,
		},
		{
			"age",
			func(s *energy.Growth) {
				s.Animal.Species, s.Animal.Age, s.AdultWeight, s.Method = energy.Cat, 366, 0, energy.FEDIAF
			},
			`energy: age "366 d": want 4 wk to 1 y for method fediaf` + ended,
		},
		{"circumstances", func(s *energy.Growth) { s.Animal.Circumstances = energy.Pregnant }, `energy: circumstances "pregnant": ` + alone + "Gestation" + prescribed},
		{"circumstances", func(s *energy.Growth) { s.Animal.Circumstances = energy.Lactating }, `energy: circumstances "lactating": ` + alone + "Lactation" + prescribed},
		{"method", func(s *energy.Growth) { s.Method = energy.PerKilogram }, `energy: method "per_kilogram": ` + methodsDog},
		{"method", func(s *energy.Growth) { s.Method = 99 }, `energy: method "99": ` + methodsDog},
		{"method", func(s *energy.Growth) {
			s.Animal.Species, s.Animal.Weight, s.AdultWeight, s.Method = energy.Cat, 3*kg, 7*kg, energy.Klein2019
		}, `energy: method "klein_2019": ` + methodsCat},
	} {
		t.Run(tt.want, func(t *testing.T) { refused(t, grows(tt.change), tt.field, tt.want) })
	}
}

func TestGrowingIsWhatGrowthIsFor(t *testing.T) {
	plain := estimate(t, grows(func(*energy.Growth) {}))
	said := estimate(t, grows(func(s *energy.Growth) { s.Animal.Circumstances = energy.Growing }))
	if said.Daily != plain.Daily {
		t.Errorf("%v, want %v", said.Daily, plain.Daily)
	}
}

func TestEndsOfGrowthAreTaken(t *testing.T) {
	for _, age := range []energy.Age{28, 730} {
		estimate(t, grows(func(s *energy.Growth) { s.Animal.Age = age }))
	}
	for _, weight := range []units.Mass{24 * kg, 480 * units.Gram} {
		estimate(t, grows(func(s *energy.Growth) { s.Animal.Weight = weight }))
	}
}

func TestGatedPuppyGetsNoComputedAmount(t *testing.T) {
	for _, tt := range gated {
		e, err := grows(func(s *energy.Growth) { tt.change(&s.Animal) }).Estimate()
		if e != (energy.Estimate{}) || err == nil || err.Error() != tt.want || !errors.Is(err, energy.ErrVeterinarian) {
			t.Errorf("%+v\ngot  %v\nwant %v", e, err, tt.want)
		}
	}
}

func TestEveryFaultOfGrowthIsReportedAtOnce(t *testing.T) {
	s := energy.Growth{
		Animal: energy.Animal{
			Species: energy.Cat, Weight: 44 * kg, Age: 3 * energy.Year, Condition: energy.BCS9(1),
			Ideal: 4 * kg, Circumstances: energy.Pregnant,
		},
		AdultWeight: -1, Method: energy.Klein2019,
	}
	_, err := s.Estimate()
	var list units.ErrorList
	if !errors.As(err, &list) || !errors.Is(err, energy.ErrVeterinarian) {
		t.Fatalf("%T %v, want a units.ErrorList with a gate in it", err, err)
	}
	want := []string{"condition", "ideal weight", "circumstances", "age", "weight", "adult weight", "method"}
	if len(list) != len(want) {
		t.Fatalf("%v, want faults of %q", err, want)
	}
	for i, fault := range list {
		var field *units.FieldError
		var vet *energy.VeterinarianError
		switch {
		case errors.As(fault, &field) && field.Field == want[i]:
		case errors.As(fault, &vet) && vet.Field == want[i]:
		default:
			t.Errorf("fault %d: %v, want one of %q", i, fault, want[i])
		}
	}
}
