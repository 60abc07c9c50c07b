package portion_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// The ends of what a stored budget may say are those of what is measured: a step
// of 1 mg to 1 kg and 24 bowls a day, both ours.
func TestEndsOfABudget(t *testing.T) {
	const (
		step = ": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g, or none where the food is scooped"
		off  = ": want -100 % or more"
	)
	for _, test := range []struct {
		change func(*portion.Budget)
		want   string // "" where it is taken
	}{
		{func(b *portion.Budget) {}, ""},
		{func(b *portion.Budget) { b.Food = "" }, ""},
		{func(b *portion.Budget) { b.Food = "dry\nbowl      500 g" }, `portion: food "dry\nbowl      500 g": want a name of at most 256 bytes on one line, without control characters`},
		{func(b *portion.Budget) { b.Food = strings.Repeat("d", 256) }, ""},
		{func(b *portion.Budget) { b.Step = 0.001 }, ""},
		{func(b *portion.Budget) { b.Step = 0.0009 }, `portion: step "0.0009 g"` + step},
		{func(b *portion.Budget) { b.Step = -1 }, `portion: step "-1 g"` + step},
		{func(b *portion.Budget) { b.Step, b.Bowl = 1000, 1000 }, ""},
		{func(b *portion.Budget) { b.Step, b.Bowl = 1001, 1001 }, `portion: step "1.001 kg"` + step},
		{func(b *portion.Budget) { b.Step = 125 }, ""}, // a bowl of one step
		{func(b *portion.Budget) { b.Step = 126 }, `portion: step "126 g": want at most what is in the bowl, 125 g`},
		{func(b *portion.Budget) { b.Step, b.Bowl = 1, -125 }, `portion: bowl "-125 g": want above 0 g`},
		{func(b *portion.Budget) { b.Bowl = 0.5 }, `portion: step "1 g": want at most what is in the bowl, 0.5 g`},
		{func(b *portion.Budget) { b.Bowl = 0 }, `portion: bowl "0 g": want above 0 g`}, // and nothing of the step
		{func(b *portion.Budget) { b.Bowls = 24 }, ""},
		{func(b *portion.Budget) { b.Bowls = 25 }, `portion: bowls "25": want 1 to 24 a day`},
		{func(b *portion.Budget) { b.Off = -100 }, ""},
		{func(b *portion.Budget) { b.Off = -100.1 }, `portion: off "-100.1 %"` + off},
		{func(b *portion.Budget) { b.Off = 300 }, ""}, // the rest of a menu makes up for what the others are off
		{func(b *portion.Budget) { b.Off = math.MaxFloat64 }, ""},
		{func(b *portion.Budget) { b.Off = units.Percent(math.Inf(1)) }, `portion: off "not a finite number"` + off},
		{func(b *portion.Budget) { b.Off = units.Percent(math.NaN()) }, `portion: off "not a finite number"` + off},
		{func(b *portion.Budget) { b.Reweigh = 1 }, ""},
		{func(b *portion.Budget) { b.Reweigh = -1 }, `portion: reweigh "-1 d": want 0 d or more`},
	} {
		b := portion.Budget{Food: "Tarnwick House Dog Dry", Bowl: 125, Energy: 445, Step: 1, Bowls: 2, Scale: 0.23}
		test.change(&b)
		said := ""
		if err := b.Validate(); err != nil {
			said = err.Error()
		}
		if said != test.want {
			t.Errorf("%+v:\n%q, want\n%q", b, said, test.want)
		}
	}
}

// What is open of a food beyond its label says so in the working, and a change of
// less than a twentieth of a percent is none.
func TestWorkingOfABudget(t *testing.T) {
	b := portion.Budget{Food: "a food", Bowl: 125, Energy: 445, Step: 1, Bowls: 1, Density: 2, Off: -0.04}
	if s := b.Explain(); !strings.Contains(s, "density   ±2.0 %, how far the food may be from its label; 100 % of the variance\n") || strings.Contains(s, "known  ") {
		t.Errorf("the working:\n%s", s)
	}
	b.Off = -0.06
	if s := b.Explain(); !strings.Contains(s, "known     the step makes the day -0.1 %: a change, not counted as uncertain\n") {
		t.Errorf("the working:\n%s", s)
	}
}

// 3600 ± 3300 kcal/kg is 6600/√12/3600 = 52.9 %: such a label says nothing.
func TestBudgetOfALabelThatSaysNothing(t *testing.T) {
	for half, want := range map[units.EnergyDensity]string{3100: "", 3300: `portion: label "52.9`} {
		food := diet.Food{Name: "a guess", Label: diet.Label{Energy: 3600, HalfStep: half}}
		b, err := weighedOn(t, prescribed(900), diet.Only(food), units.Gram).Budget(0, portion.Measuring{})
		if want == "" && err != nil || want != "" && (err == nil || !strings.HasPrefix(err.Error(), want) || b != (portion.Budget{})) {
			t.Errorf("±%v: %+v, %v", half, b, err)
		}
	}
}
