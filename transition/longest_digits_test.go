package transition_test

import (
	"errors"
	"testing"

	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// One's own steps of 20 % for 9 days and 60 % for 3 with shorter stays, and the
// published ones between them, the longest first. A day of the old food alone is
// 300 g: with up to 3 days a step it takes 240 + 120 g for each, beyond that 240 g
// for each and 360 g; ten_steps 4.5, four_stages 3 and four_days 1.5 days' worth.
// A gram less, and the next is taken.
func TestNextScheduleWhereAGramIsMissing(t *testing.T) {
	p := toSlim()
	p.Steps = mustSteps("20 % 9 d, 60 % 3 d, 100 %")
	for _, tt := range []struct {
		takes float64
		want  string
	}{
		{2520, "20 % 9 d, 60 % 3 d, 100 %"}, // 13 days
		{2280, "20 % 8 d, 60 % 3 d, 100 %"},
		{2040, "20 % 7 d, 60 % 3 d, 100 %"},
		{1800, "20 % 6 d, 60 % 3 d, 100 %"}, // 10 days
		{1350, "ten_steps"},                 // 10 days; 9 days would take 1560 g
		{1320, "20 % 4 d, 60 % 3 d, 100 %"}, // 8 days
		{1080, "20 % 3 d, 60 % 3 d, 100 %"}, // 7 days
		{900, "four_stages"},                // 7 days
		{720, "20 % 2 d, 60 % 2 d, 100 %"},  // 5 days
		{450, "four_days"},
		{360, "20 %, 60 %, 100 %"}, // 3 days
	} {
		for _, more := range []float64{0, 0.4} {
			s, err := p.LongestSteps(oakum(), inStore(houseDry, units.Mass(tt.takes+more)))
			if err != nil || s.String() != tt.want {
				t.Errorf("%v g: %v, %v, want %s", tt.takes+more, s, err, tt.want)
			}
		}
		if s, err := p.LongestSteps(oakum(), inStore(houseDry, units.Mass(tt.takes-0.6))); err == nil && s.String() == tt.want {
			t.Errorf("%v g: %v", tt.takes-0.6, s)
		}
	}
	// A published one of as many days is better than nine tenths at once after 3 days.
	p.Steps = mustSteps("10 % 6 d, 100 %")
	for takes, want := range map[units.Mass]string{1620: "10 % 6 d, 100 %", 1350: "four_stages", 900: "four_stages", 810: "10 % 3 d, 100 %"} {
		if s, err := p.LongestSteps(oakum(), inStore(houseDry, takes)); err != nil || s.String() != want {
			t.Errorf("%v: %v, %v, want %s", takes, s, err, want)
		}
	}
	p.Steps = mustSteps("20 % 9 d, 60 % 3 d, 100 %")
	// Of what is there two decimals are said.
	_, err := p.LongestSteps(oakum(), inStore(houseDry, 123.456))
	const want = `transition: 123.46 g of Tarnwick House Dog Dry is too little for a change by steps: 20 %, 60 %, 100 % needs 360 g: want more of it`
	var short *transition.StockError
	if err == nil || err.Error() != want || !errors.As(err, &short) || short.Need != 360 {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}
