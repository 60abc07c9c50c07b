package portion_test

import (
	"testing"
	"time"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// A store is of 0 kg to 1000 t, days are 1 to 366 and the waste is up to 50 %
// (ours).
func TestEndsOfASupply(t *testing.T) {
	const tonne = 1000 * units.Kilogram
	for _, test := range []struct {
		name string
		do   func(*portion.Supply)
		ok   bool
	}{
		{"as it is", func(s *portion.Supply) {}, true},
		{"nothing in store", func(s *portion.Supply) { s.Store[0].Mass = 0 }, true},
		{"half a gram", func(s *portion.Supply) { s.Store[0].Mass = 0.5 }, true},
		{"less than nothing", func(s *portion.Supply) { s.Store[0].Mass = -0.5 }, false},
		{"1000 t", func(s *portion.Supply) { s.Store[0].Mass = 1000 * tonne }, true},
		{"1001 t", func(s *portion.Supply) { s.Store[0].Mass = 1001 * tonne }, false},
		{"no days", func(s *portion.Supply) { s.Days = 0 }, false},
		{"a day", func(s *portion.Supply) { s.Days = 1 }, true},
		{"a leap year", func(s *portion.Supply) { s.Days = 366 }, true},
		{"more than a year", func(s *portion.Supply) { s.Days = 367 }, false},
		{"half is thrown away", func(s *portion.Supply) { s.Waste = 50 }, true},
		{"more than half is", func(s *portion.Supply) { s.Waste = 50.1 }, false},
		{"waste below nothing", func(s *portion.Supply) { s.Waste = -0.1 }, false},
	} {
		s := portion.Supply{
			Plans: []portion.Plan{{Animal: "Bolster", Weighed: weighedOn(t, prescribed(890), diet.Only(kibble), units.Gram)}},
			Days:  7, Store: []portion.Stock{{Food: kibble, Mass: 1000}},
		}
		test.do(&s)
		if lines, err := s.Lines(); (err == nil) != test.ok || (len(lines) == 1) != test.ok {
			t.Errorf("%s: %v", test.name, err)
		}
	}
}

// Half a gram a day lasts too: 3 g of it 6 days.
func TestSupplyOfHalfAGram(t *testing.T) {
	food := asFed("paste", 4000)
	w := weighedOn(t, prescribed(2), diet.Only(food), 0.1)
	lines, err := portion.Supply{Plans: []portion.Plan{{Animal: "Bolster", Weighed: w}}, Days: 7, Store: []portion.Stock{{Food: food, Mass: 3}}}.Lines()
	if err != nil || lines[0].DaysLeft != 6 || lines[0].Short != 0.5 {
		t.Errorf("%+v, %v", lines, err)
	}
}

// A day is fed in full where no more than its last bits are missing, a
// thousand-millionth of it (ours), and what lasts a century (36525 days) is not
// dated.
func TestEndsOfRunningOut(t *testing.T) {
	start := time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC)
	for _, test := range []struct {
		left float64
		want int // days from the start, or -1
	}{
		{3, 3},
		{3 - 0.5e-9, 3},
		{3 - 1.5e-9, 2},
		{0, 0},
		{0.4, 0},
		{36524.5, 36524},
		{36525, -1},
		{36525.5, -1},
	} {
		day, ok := portion.SupplyLine{Used: 0.5, DaysLeft: test.left}.RunsOut(start)
		if ok != (test.want >= 0) || ok && !day.Equal(start.AddDate(0, 0, test.want)) {
			t.Errorf("%v days: %v, %v", test.left, day, ok)
		}
	}
}

// A growing animal's ration is for the days to its next weighing, and not a day
// more.
func TestDaysOfAGrowingAnimal(t *testing.T) {
	puppy := must(energy.Growth{Animal: animalOf(energy.Dog, 10, 0), AdultWeight: 25 * units.Kilogram})
	s := portion.Supply{Plans: []portion.Plan{{Animal: "Pip", Weighed: weighedOn(t, puppy, diet.Only(kibble), units.Gram)}}}
	for days, want := range map[int]int{int(puppy.Reweigh): 0, int(puppy.Reweigh) + 1: 1} {
		s.Days = days
		if c := s.Cautions(); len(c) != want {
			t.Errorf("%d days of %v: %v", days, puppy.Reweigh, c)
		}
	}
}
