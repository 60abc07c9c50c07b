package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// with returns an adult cat of 4 kg after change.
func with(change func(*energy.Adult)) energy.Stage {
	s := energy.Adult{Animal: animal(energy.Cat, 4*kg), Status: energy.Neutered}
	change(&s)
	return s
}

const (
	wantCat    = "1.5 kg to 20 kg for an adult cat"
	wantStatus = "neutered, intact, inactive, senior or unknown"
	wantScore  = `1/9 to 9/9 or 1/5 to 5/5`
)

// weights that no adult cat has.
var refusedWeights = []struct {
	name   string
	weight units.Mass
	want   string
}{
	{"44 lb as kg", 44 * kg, `energy: weight "44 kg": want ` + wantCat + ` (pounds? 44 lb is 19.96 kg)`},
	{"grams as kg", 4300 * kg, `energy: weight "4300 kg": want ` + wantCat + ` (grams? 4300 g is 4.3 kg)`},
	{"kg as grams", 4.3 * units.Gram, `energy: weight "4.3 g": want ` + wantCat + ` (kilograms? 4.3 kg is in range)`},
	{"kitten", 0.9 * kg, `energy: weight "900 g": want ` + wantCat + ` (a kitten? growth has equations of its own: Growth)`},
	{"none", 0, `energy: weight "": want ` + wantCat + ` (not given)`},
	{"negative", -4 * kg, `energy: weight "-4 kg": want ` + wantCat},
	{"NaN", units.Mass(math.NaN()), `energy: weight "NaN g": want ` + wantCat},
	{"infinite", units.Mass(math.Inf(1)), `energy: weight "+Inf g": want ` + wantCat},
	{"minus infinite", units.Mass(math.Inf(-1)), `energy: weight "-Inf g": want ` + wantCat},
}

func TestWeightOutOfBoundsIsRefusedWithTheSlip(t *testing.T) {
	for _, tt := range refusedWeights {
		t.Run(tt.name, func(t *testing.T) {
			refused(t, with(func(s *energy.Adult) { s.Animal.Weight = tt.weight }), "weight", tt.want)
		})
	}
}

// refused checks that the stage has one fault, in the field, of this text.
func refused(t *testing.T, s energy.Stage, field, want string) {
	t.Helper()
	e, err := s.Estimate()
	if e != (energy.Estimate{}) {
		t.Errorf("estimate %+v, want the zero value", e)
	}
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %v", err, want)
	}
	var fault *units.FieldError
	if !errors.As(err, &fault) || fault.Field != field || fault.Package != "energy" {
		t.Errorf("%T %+v, want a *units.FieldError of %s", err, fault, field)
	}
	if errors.Is(err, energy.ErrVeterinarian) {
		t.Error("bad input must not read as a call for a veterinarian")
	}
}

func TestFieldOfTheAnimalOutOfRangeIsRefused(t *testing.T) {
	for _, tt := range []struct {
		field  string
		change func(*energy.Animal)
		want   string
	}{
		{"species", func(a *energy.Animal) { a.Species = 0 }, `energy: species "": want dog, cat or ferret (not given)`},
		{"species", func(a *energy.Animal) { a.Species = 5 }, `energy: species "5": want dog, cat, ferret or other`},
		{
			"species", func(a *energy.Animal) { a.Species = energy.Other },
			`energy: species "other": want dog, cat or ferret (no equation here is made for it: Prescribed takes a veterinarian's figure)`,
		},
		{"condition", func(a *energy.Animal) { a.Condition = energy.BCS9(0) }, `energy: condition "0/9": want ` + wantScore},
		{"condition", func(a *energy.Animal) { a.Condition = energy.BCS9(10) }, `energy: condition "10/9": want ` + wantScore},
		{"condition", func(a *energy.Animal) { a.Condition = energy.BCS5(0) }, `energy: condition "0/5": want ` + wantScore},
		{"condition", func(a *energy.Animal) { a.Condition = energy.BCS5(6) }, `energy: condition "6/5": want ` + wantScore},
		{"age", func(a *energy.Animal) { a.Age = -1 }, `energy: age "-1 d": want 0 (not given) to 40 y`},
		{"age", func(a *energy.Animal) { a.Age = 40*energy.Year + 1 }, `energy: age "14601 d": want 0 (not given) to 40 y`},
		{"days unfed", func(a *energy.Animal) { a.DaysUnfed = -1 }, `energy: days unfed "-1": want 0 or more whole days`},
		{"circumstances", func(a *energy.Animal) { a.Circumstances = 1 << 15 }, `energy: circumstances "32768": want the named bits`},
		{
			"ideal weight", func(a *energy.Animal) { a.Ideal = 13 * kg },
			`energy: ideal weight "13 kg": want a weight from half to three times the current 4 kg (pounds for kilograms?)`,
		},
		{
			"circumstances", func(a *energy.Animal) { a.Circumstances = energy.Growing },
			`energy: circumstances "growing": want an adult at maintenance (it needs more than maintenance: Growth, or Prescribed with a veterinarian's figure)`,
		},
		{
			"circumstances", func(a *energy.Animal) { a.Circumstances = energy.Pregnant },
			`energy: circumstances "pregnant": want an adult at maintenance (it needs more than maintenance: Gestation, or Prescribed with a veterinarian's figure)`,
		},
		{
			"circumstances", func(a *energy.Animal) { a.Circumstances = energy.Lactating },
			`energy: circumstances "lactating": want an adult at maintenance (it needs more than maintenance: Lactation, or Prescribed with a veterinarian's figure)`,
		},
	} {
		t.Run(tt.want, func(t *testing.T) {
			refused(t, with(func(s *energy.Adult) { tt.change(&s.Animal) }), tt.field, tt.want)
		})
	}
}

func TestIdealWeightThatIsNoWeightIsRefused(t *testing.T) {
	for _, ideal := range []units.Mass{-1, units.Mass(math.NaN()), units.Mass(math.Inf(1)), units.Mass(math.Inf(-1))} {
		_, err := with(func(s *energy.Adult) { s.Animal.Ideal = ideal }).Estimate()
		var fault *units.FieldError
		if !errors.As(err, &fault) || fault.Field != "ideal weight" {
			t.Errorf("%v: %v, want the ideal weight refused", float64(ideal), err)
		}
	}
}

func TestStatusNotGivenOrUnknownIsRefused(t *testing.T) {
	refused(t, with(func(s *energy.Adult) { s.Status = 0 }), "status", `energy: status "": want `+wantStatus+` (not given)`)
	refused(t, with(func(s *energy.Adult) { s.Status = 6 }), "status", `energy: status "6": want `+wantStatus)
}

func TestMethodOfAnotherStageIsRefused(t *testing.T) {
	cat, ferret := animal(energy.Cat, 4*kg), animal(energy.Ferret, 1*kg)
	const adult, resting = "factor_on_rer, nrc_2006, fediaf or bermingham", "rer_power or rer_linear"
	for _, tt := range []struct {
		stage energy.Stage
		want  string
	}{
		{energy.Adult{Animal: cat, Status: energy.Intact, Method: energy.RERPower}, `energy: method "rer_power": want ` + adult},
		{energy.Adult{Animal: cat, Status: energy.Intact, Method: energy.PerKilogram}, `energy: method "per_kilogram": want ` + adult},
		{energy.Adult{Animal: cat, Status: energy.Intact, Method: 99}, `energy: method "99": want ` + adult},
		{energy.Adult{Animal: ferret, Method: energy.FEDIAF}, `energy: method "fediaf": want per_kilogram for a ferret`},
		{energy.Resting{Animal: cat, Method: energy.FactorOnRER}, `energy: method "factor_on_rer": want ` + resting},
		{energy.Resting{Animal: cat, Method: 98}, `energy: method "98": want ` + resting},
	} {
		refused(t, tt.stage, "method", tt.want)
	}
}

func TestRestingTakesDogsAndCatsOnly(t *testing.T) {
	const use = " (no resting-energy equation is published for it: Adult for a ferret, Prescribed for any animal)"
	refused(t, energy.Resting{}, "species", `energy: species "": want dog or cat (not given)`)
	refused(t, energy.Resting{Animal: animal(energy.Ferret, 1*kg)}, "species", `energy: species "ferret": want dog or cat`+use)
	refused(t, energy.Resting{Animal: animal(energy.Other, 1*kg)}, "species", `energy: species "other": want dog or cat`+use)
	refused(t, energy.Resting{Animal: animal(9, 1*kg)}, "species", `energy: species "9": want dog, cat, ferret or other`)
}

func TestPrescribedNeedsAFigureAndAName(t *testing.T) {
	const wantEnergy = "want more than 0 kcal and at most 50000 kcal a day"
	for _, tt := range []struct {
		daily units.Energy
		want  string
	}{
		{0, `energy: prescribed energy "0 kcal": ` + wantEnergy},
		{-1, `energy: prescribed energy "-1 kcal": ` + wantEnergy},
		{50001, `energy: prescribed energy "50001 kcal": ` + wantEnergy},
		{units.Energy(math.NaN()), `energy: prescribed energy "NaN kcal": ` + wantEnergy},
		{units.Energy(math.Inf(1)), `energy: prescribed energy "+Inf kcal": ` + wantEnergy},
	} {
		refused(t, energy.Prescribed{Daily: tt.daily, By: "Dr A. Example"}, "prescribed energy", tt.want)
	}
	const wantBy = `want the name of the veterinarian who set the energy, on one line`
	refused(t, energy.Prescribed{Daily: 250}, "by", `energy: by "": `+wantBy)
	refused(t, energy.Prescribed{Daily: 250, By: "\u200b"}, "by", "energy: by \"\\u200b\": "+wantBy)
	refused(t, energy.Prescribed{Daily: 250, By: "Dr A\nresult 9 kcal"}, "by", `energy: by "Dr A\nresult 9 kcal": `+wantBy)
	refused(t, energy.Prescribed{Daily: 250, By: " \t"}, "by", `energy: by " \t": `+wantBy)
}

func TestPrescribedChecksWhatItIsGiven(t *testing.T) {
	refused(t, energy.Prescribed{Animal: animal(energy.Cat, 44*kg), Daily: 250, By: "Dr A. Example"}, "weight",
		`energy: weight "44 kg": want 40 g to 20 kg for a cat (grams? 44 g is 0.044 kg, pounds? 44 lb is 19.96 kg)`)
	refused(t, energy.Prescribed{Animal: animal(0, 201*kg), Daily: 250, By: "Dr A. Example"}, "weight",
		`energy: weight "201 kg": want 5 g to 200 kg for any other animal (grams? 201 g is 0.201 kg, pounds? 201 lb is 91.17 kg)`)
}

func TestEveryFaultIsReportedAtOnce(t *testing.T) {
	s := energy.Adult{
		Animal: energy.Animal{Species: energy.Cat, Weight: 44 * kg, Condition: energy.BCS5(1), DaysUnfed: -1},
		Method: energy.RERLinear,
	}
	e, err := s.Estimate()
	var list units.ErrorList
	if e != (energy.Estimate{}) || !errors.As(err, &list) {
		t.Fatalf("%v, %T: want the zero estimate and a units.ErrorList", e, err)
	}
	var fields []string
	for _, fault := range list {
		switch f := fault.(type) {
		case *units.FieldError:
			fields = append(fields, f.Field)
		case *energy.VeterinarianError:
			fields = append(fields, "veterinarian: "+f.Field)
		}
		if !errors.Is(err, fault) {
			t.Errorf("%v can't be reached with errors.Is", fault)
		}
	}
	want := []string{"days unfed", "veterinarian: condition", "weight", "method", "status"}
	if len(fields) != len(want) {
		t.Fatalf("faults of %q, want %q", fields, want)
	}
	for i := range want {
		if fields[i] != want[i] {
			t.Errorf("fault %d is of %q, want %q", i, fields[i], want[i])
		}
	}
	if !errors.Is(err, energy.ErrVeterinarian) {
		t.Error("the gate can't be reached with errors.Is among other faults")
	}
}
