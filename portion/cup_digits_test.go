package portion_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// A fill that is off by more than 10 % is a warning, and up to it a note (ours).
func TestEndsOfTheCautionOfACup(t *testing.T) {
	for _, test := range []struct {
		off   units.Energy
		level advice.Level
	}{{9.95, advice.Note}, {10, advice.Note}, {10.05, advice.Warn}, {-9.95, advice.Note}, {-10.05, advice.Warn}} {
		x := portion.Cupped{Food: "a food", Meals: 1, Energy: 100, Error: test.off, Dry: true}
		if c, ok := x.Caution(); !ok || c.Level != test.level {
			t.Errorf("%v of 100 kcal: %v", test.off, c)
		}
	}
}

// What is left of a cup of nothing, and of a day of a kilocalorie or less.
func TestSmallAndEmptyCups(t *testing.T) {
	var none portion.Cupped
	if got := none.Off(); got != 0 {
		t.Errorf("nothing is off by %v", got)
	}
	if got := (portion.Mark{}).Measures(); got != 0 {
		t.Errorf("no mark is %v measures", got)
	}
	if text := (portion.Cupped{Food: "a food"}).String(); !strings.HasPrefix(text, "about 0 cup of a food ") {
		t.Errorf("no mark: %q", text)
	}
	if r, ok := (portion.Cupped{Food: "a food", Dry: true}).Published(portion.Studies()[0]); ok {
		t.Errorf("no energy: %v", r)
	}
	if text := (portion.Cupped{Food: "a food", Energy: 100}).String(); !strings.Contains(text, " would be 0.0 kcal a day (0.0 %)") {
		t.Errorf("no error: %q", text)
	}
	small := portion.Cupped{Food: "a food", Meals: 1, Energy: 1, Error: 0.5, Dry: true, Mark: portion.Mark{Parts: 2, Of: 1}, Mass: 10, Weigh: 20}
	if got := small.Off(); got != 50 {
		t.Errorf("0.5 of 1 kcal: off by %v", got)
	}
	if got, want := small.String(), "about 2 cup of a food would be +0.5 kcal a day (+50.0 %), level: weigh 20 g a day instead"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	// −18 % to +80 % (German and others 2011) of 1.5 kcal.
	r, ok := small.Published(portion.Studies()[0])
	if !ok || math.Abs(float64(r.Low)-1.23) > 1e-12 || math.Abs(float64(r.High)-2.7) > 1e-12 {
		t.Errorf("published: %v, %v", r, ok)
	}
}

// A cup holds 1 mg to 1 kg (ours).
func TestEndsOfACup(t *testing.T) {
	for mass, ok := range map[units.Mass]bool{0.001: true, 0.0009: false, 1000: true, 1000.1: false} {
		if _, err := inCups(356, cupOf(0), 1, portion.Cup{Mass: mass}); (err == nil) != ok {
			t.Errorf("%v g: %v", float64(mass), err)
		}
	}
}

// A day given at once is no meal, and isn't multiplied.
func TestExplainOfACupADay(t *testing.T) {
	x, err := inCups(356, cupOf(0), 1, portion.Cup{Mass: 90})
	if err != nil {
		t.Fatal(err)
	}
	text := x.Explain()
	if !strings.Contains(text, "\nday       100.00 g ÷ 90.00 g = 1.11; the nearest mark is 1, 90.00 g\nerror     90.00 g a day for 100.00 g: -35.6 kcal a day, -10.0 %, ") {
		t.Errorf("the day at once:\n%s", text)
	}
}

// A cup may be stored with its marks, which are numbers there.
func TestNumbersOfMarks(t *testing.T) {
	for m, want := range map[portion.Marks]uint8{portion.Halves: 1, portion.Thirds: 2, portion.Quarters: 4, portion.Eighths: 8} {
		if uint8(m) != want {
			t.Errorf("a mark is stored as %d, want %d", uint8(m), want)
		}
	}
}
