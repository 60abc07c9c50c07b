package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A kitten of 212 g on day 10 that the tests change.
func orphan(change func(*energy.Nursling)) energy.Nursling {
	s := nursling(energy.Cat, 212*units.Gram, 10)
	change(&s)
	return s
}

func TestNurslingWeightIsRefusedWithTheSlip(t *testing.T) {
	const want = "want 40 g to 500 g for a week-2 nursling cat"
	for _, tt := range []struct {
		name   string
		weight units.Mass
		want   string
	}{
		{"grams as kg", 212 * kg, `energy: weight "212 kg": ` + want + ` (grams? 212 g is 0.212 kg)`},
		{"kg as grams", 0.212 * units.Gram, `energy: weight "0.212 g": ` + want + ` (kilograms? 0.212 kg is in range)`},
		// An ounce is 28.349523125 g: 7.5 oz are 212.6 g.
		{"ounces as kg", 7.5 * kg, `energy: weight "7.5 kg": ` + want + ` (ounces? 7.5 oz is 212.6 g)`},
		{"ounces as grams", 7.5 * units.Gram, `energy: weight "7.5 g": ` + want + ` (ounces? 7.5 oz is 212.6 g)`},
		{"grams as ounces", 212 * units.Ounce, `energy: weight "6.0100989025 kg": ` + want + ` (grams for ounces? 212 g is in range)`},
		// 0.45359237 × 0.9 = 0.408.
		{"pounds as kg", 0.9 * kg, `energy: weight "900 g": ` + want + ` (pounds? 0.9 lb is 0.41 kg)`},
		{"a grown cat", 4.2 * kg, `energy: weight "4.2 kg": ` + want + ` (ounces? 4.2 oz is 119.1 g)`},
		{"none", 0, `energy: weight "": ` + want + ` (not given)`},
		{"negative", -212, `energy: weight "-212 g": ` + want},
		{"NaN", units.Mass(math.NaN()), `energy: weight "NaN g": ` + want},
		{"infinite", units.Mass(math.Inf(1)), `energy: weight "+Inf g": ` + want},
		{"minus infinite", units.Mass(math.Inf(-1)), `energy: weight "-Inf g": ` + want},
	} {
		t.Run(tt.name, func(t *testing.T) {
			refused(t, orphan(func(s *energy.Nursling) { s.Animal.Weight = tt.weight }), "weight", tt.want)
		})
	}
}

// The heaviest weight is that of week 4 where the age doesn't name a week.
func TestNurslingWeightIsHeldAgainstItsWeek(t *testing.T) {
	for age, want := range map[energy.Age]string{
		1:  `energy: weight "4.2 g": want 40 g to 350 g for a week-1 nursling cat (ounces? 4.2 oz is 119.1 g)`,
		28: `energy: weight "4.2 g": want 40 g to 900 g for a week-4 nursling cat (ounces? 4.2 oz is 119.1 g)`,
	} {
		refused(t, nursling(energy.Cat, 4.2*units.Gram, age), "weight", want)
	}
	for _, age := range []energy.Age{0, 29} {
		_, err := nursling(energy.Cat, 4.2*units.Gram, age).Estimate()
		const want = `energy: weight "4.2 g": want 40 g to 900 g for a nursling cat (ounces? 4.2 oz is 119.1 g)`
		var faults units.ErrorList
		if !errors.As(err, &faults) || len(faults) != 2 || faults[0].Error() != want {
			t.Errorf("day %d: %v\nwant %s and the age", age, err, want)
		}
	}
}

func TestDayBeforeIsNotHeldAgainstAWeightThatIsNone(t *testing.T) {
	for _, w := range []units.Mass{0, -1, units.Mass(math.NaN()), units.Mass(math.Inf(1))} {
		s := nursling(energy.Cat, w, 10)
		s.DayBefore = 205
		var fault *units.FieldError
		if _, err := s.Estimate(); !errors.As(err, &fault) || error(fault) != err || fault.Field != "weight" {
			t.Errorf("%v: %v, want only the weight refused", float64(w), err)
		}
	}
}

// All are ours.
func TestNurslingWeightBoundsAreClosedAndExact(t *testing.T) {
	for _, tt := range []struct {
		species   energy.Species
		days      [2]energy.Age
		low, high units.Mass
	}{
		{energy.Dog, [2]energy.Age{1, 7}, 50, 2000},
		{energy.Dog, [2]energy.Age{8, 14}, 50, 3500},
		{energy.Dog, [2]energy.Age{15, 21}, 50, 5000},
		{energy.Dog, [2]energy.Age{22, 28}, 50, 7000},
		{energy.Cat, [2]energy.Age{1, 7}, 40, 350},
		{energy.Cat, [2]energy.Age{8, 14}, 40, 500},
		{energy.Cat, [2]energy.Age{15, 21}, 40, 700},
		{energy.Cat, [2]energy.Age{22, 28}, 40, 900},
	} {
		for _, age := range tt.days {
			estimate(t, nursling(tt.species, tt.low, age))
			estimate(t, nursling(tt.species, tt.high, age))
			for _, w := range []units.Mass{step(tt.low, 0), step(tt.high, math.Inf(1))} {
				var fault *units.FieldError
				if _, err := nursling(tt.species, w, age).Estimate(); !errors.As(err, &fault) || fault.Field != "weight" {
					t.Errorf("%v, day %d, %v: %v, want the weight refused", tt.species, age, w, err)
				}
			}
		}
	}
}

func TestNurslingFieldIsRefused(t *testing.T) {
	const days = "want 1 d (the day of birth) to 28 d for a nursling"
	const species = " (no energy is published for its young: Prescribed takes a veterinarian's figure)"
	const circumstances = "want a nursling (it needs more than maintenance: "
	const before = "want a weight above 0 g, or none if it was not weighed"
	const nearby = `want a weight from two thirds to one and a half times the current 212 g` +
		` (another animal, or grams, kilograms and ounces mixed?)`
	for _, tt := range []struct {
		field  string
		change func(*energy.Nursling)
		want   string
	}{
		{"species", func(s *energy.Nursling) { s.Animal.Species = 0 }, `energy: species "": want dog or cat (not given)`},
		{"species", func(s *energy.Nursling) { s.Animal.Species = energy.Ferret }, `energy: species "ferret": want dog or cat` + species},
		{"species", func(s *energy.Nursling) { s.Animal.Species = energy.Other }, `energy: species "other": want dog or cat` + species},
		{"species", func(s *energy.Nursling) { s.Animal.Species = 5 }, `energy: species "5": want dog, cat, ferret or other`},
		{"age", func(s *energy.Nursling) { s.Animal.Age = 0 }, `energy: age "": ` + days + ` (not given)`},
		{"age", func(s *energy.Nursling) { s.Animal.Age = 29 }, `energy: age "29 d": ` + days + ` (from 4 wk on: Growth)`},
		{"age", func(s *energy.Nursling) { s.Animal.Age = 40 * energy.Year }, `energy: age "40 y": ` + days + ` (from 4 wk on: Growth)`},
		{"age", func(s *energy.Nursling) { s.Animal.Age = -1 }, `energy: age "-1 d": want 0 (not given) to 40 y`},
		{"age", func(s *energy.Nursling) { s.Animal.Age = 40*energy.Year + 1 }, `energy: age "14601 d": want 0 (not given) to 40 y`},
		{
			"condition", func(s *energy.Nursling) { s.Animal.Condition = energy.BCS9(3) },
			`energy: condition "3/9": want none for a nursling (the scales are made for grown animals; weigh it every day)`,
		},
		{
			"condition", func(s *energy.Nursling) { s.Animal.Condition = energy.BCS5(3) },
			`energy: condition "3/5": want none for a nursling (the scales are made for grown animals; weigh it every day)`,
		},
		{"condition", func(s *energy.Nursling) { s.Animal.Condition = energy.BCS9(10) }, `energy: condition "10/9": want ` + wantScore},
		{
			"ideal weight", func(s *energy.Nursling) { s.Animal.Ideal = 220 },
			`energy: ideal weight "220 g": want none for a nursling (its daily gain says how it does)`,
		},
		{
			"circumstances", func(s *energy.Nursling) { s.Animal.Circumstances = energy.Pregnant },
			`energy: circumstances "pregnant": ` + circumstances + `Gestation, or Prescribed with a veterinarian's figure)`,
		},
		{
			"circumstances", func(s *energy.Nursling) { s.Animal.Circumstances = energy.Lactating },
			`energy: circumstances "lactating": ` + circumstances + `Lactation, or Prescribed with a veterinarian's figure)`,
		},
		{"day before", func(s *energy.Nursling) { s.DayBefore = -1 }, `energy: day before "-1 g": ` + before},
		{"day before", func(s *energy.Nursling) { s.DayBefore = units.Mass(math.NaN()) }, `energy: day before "NaN g": ` + before},
		{"day before", func(s *energy.Nursling) { s.DayBefore = units.Mass(math.Inf(1)) }, `energy: day before "+Inf g": ` + before},
		{"day before", func(s *energy.Nursling) { s.DayBefore = 205 * kg }, `energy: day before "205 kg": ` + nearby},
		{"day before", func(s *energy.Nursling) { s.DayBefore = 0.205 }, `energy: day before "0.205 g": ` + nearby},
		{"day before", func(s *energy.Nursling) { s.DayBefore = 7.2 }, `energy: day before "7.2 g": ` + nearby},
		{
			"day before", func(s *energy.Nursling) { s.Animal.Age, s.DayBefore = 1, 205 },
			`energy: day before "205 g": want none on the day of birth`,
		},
		{"method", func(s *energy.Nursling) { s.Method = energy.FEDIAF }, `energy: method "fediaf": want per_kilogram or nrc_2006`},
		{"method", func(s *energy.Nursling) { s.Method = 99 }, `energy: method "99": want per_kilogram or nrc_2006`},
	} {
		t.Run(tt.want, func(t *testing.T) {
			s := orphan(tt.change)
			refused(t, s, tt.field, tt.want)
			if g, err := s.DailyGain(); g != (energy.Gain{}) || err == nil || err.Error() != tt.want {
				t.Errorf("gain %+v, %v, want the same error", g, err)
			}
		})
	}
}

// Two thirds of 300 g is 200 g and one and a half times it 450 g.
func TestDayBeforeBoundsAreClosedAndExact(t *testing.T) {
	at := func(before units.Mass) error {
		s := nursling(energy.Cat, 300*units.Gram, 10)
		s.DayBefore = before
		_, err := s.Estimate()
		return err
	}
	for _, before := range []units.Mass{200, 450} {
		if err := at(before); err != nil {
			t.Errorf("%v before 300 g: %v", before, err)
		}
	}
	for _, before := range []units.Mass{199.9, 450.1} {
		if at(before) == nil {
			t.Errorf("%v before 300 g was taken", before)
		}
	}
}

func TestGatedNurslingGetsNoComputedAmount(t *testing.T) {
	for _, tt := range gated {
		s := orphan(func(s *energy.Nursling) { tt.change(&s.Animal) })
		e, err := s.Estimate()
		if e != (energy.Estimate{}) || err == nil || err.Error() != tt.want || !errors.Is(err, energy.ErrVeterinarian) {
			t.Errorf("%+v, %v\nwant %v", e, err, tt.want)
		}
	}
}

func TestEveryFaultOfANurslingIsReportedAtOnce(t *testing.T) {
	s := energy.Nursling{
		Animal:    energy.Animal{Species: energy.Cat, Weight: 212 * kg, Circumstances: energy.Ill | energy.Pregnant, Ideal: 200 * kg, Condition: energy.BCS9(5)},
		DayBefore: -1, Method: energy.Thes,
	}
	_, err := s.Estimate()
	var faults units.ErrorList
	if !errors.As(err, &faults) {
		t.Fatalf("%T %v, want a units.ErrorList", err, err)
	}
	var fields []string
	for _, fault := range faults {
		switch f := fault.(type) {
		case *units.FieldError:
			fields = append(fields, f.Field)
		case *energy.VeterinarianError:
			fields = append(fields, "veterinarian: "+f.Field)
		}
	}
	want := []string{"veterinarian: circumstances", "weight", "age", "condition", "ideal weight", "circumstances", "day before", "method"}
	if len(fields) != len(want) {
		t.Fatalf("faults of %q, want %q", fields, want)
	}
	for i := range want {
		if fields[i] != want[i] {
			t.Errorf("fault %d is of %q, want %q", i, fields[i], want[i])
		}
	}
}
