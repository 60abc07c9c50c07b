package portion_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// weighedOn is the day of a menu on a scale.
func weighedOn(t testing.TB, need energy.Estimate, menu diet.Menu, step units.Mass) portion.Weighed {
	t.Helper()
	r, err := portion.Weigh(need, menu)
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(step)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

// An uncertainty of up to 50 % is taken (ours), and one below 1 % is one too.
func TestEndsOfAMeasuring(t *testing.T) {
	w := weighedOn(t, prescribed(1180), diet.Only(kibble), units.Gram)
	for _, test := range []struct {
		m  portion.Measuring
		ok bool
	}{
		{portion.Measuring{Scoop: 50}, true},
		{portion.Measuring{Scoop: 50.1}, false},
		{portion.Measuring{Scoop: 49.9}, true},
		{portion.Measuring{Scoop: -0.1}, false},
		// From next to nothing: 3600/√12/3560 is 29.2 %. A width of 6165 kcal/kg is
		// 49.99 %, and one of 6168 is 50.02 %.
		{portion.Measuring{Density: units.Range[units.EnergyDensity]{Low: 0.5, High: 3600}}, true},
		{portion.Measuring{Density: units.Range[units.EnergyDensity]{Low: 0, High: 3600}}, false},
		{portion.Measuring{Density: units.Range[units.EnergyDensity]{Low: 1, High: 6166}}, true},
		{portion.Measuring{Density: units.Range[units.EnergyDensity]{Low: 1, High: 6169}}, false},
	} {
		if _, err := w.Budget(0, test.m); (err == nil) != test.ok {
			t.Errorf("%+v: %v", test.m, err)
		}
	}
	b, err := w.Budget(0, portion.Measuring{Scoop: 0.5})
	if err != nil || b.Scoop != 0.5 || b.Step != 0 || b.Scale != 0 || b.Bowls != 1 {
		t.Errorf("a scoop of 0.5 %% and no number of meals: %+v, %v", b, err)
	}
	const none = `portion: ration "": want a ration from Weigh (its error was not looked at?)`
	_, err = portion.Weighed{}.Budget(0, portion.Measuring{Density: units.Range[units.EnergyDensity]{Low: 3400, High: 3600}})
	if err == nil || err.Error() != none {
		t.Errorf("no ration: %v", err)
	}
	_, err = w.Budget(0, portion.Measuring{Density: units.Range[units.EnergyDensity]{Low: units.EnergyDensity(math.Inf(-1)), High: 3600}})
	if err == nil || !strings.Contains(err.Error(), `density "not finite numbers"`) {
		t.Errorf("from minus infinity: %v", err)
	}
}

// A figure of less than 1 may be half of itself off: 0.3 g of 0.6 g, a width of
// 0.6 g, is 1/√12 = 28.87 %, and 1 kcal of 2 kcal is 14.43 %; together 32.27 %.
func TestRoundingOfASmallServing(t *testing.T) {
	tiny := diet.Food{Name: "a crumb", Label: diet.Label{Serving: diet.Serving{Name: "piece", Energy: 2, Mass: 0.6}}}
	b := budgeted(t, prescribed(200), tiny, 0.1, portion.Measuring{})
	if got := float64(b.Label); math.Abs(got-32.275) > 0.001 {
		t.Errorf("the label is ±%v %%, want 32.275", got)
	}
}

// What is left of a budget with nothing in it, and of one below 1 g and 1 kcal.
func TestSmallAndEmptyBudgets(t *testing.T) {
	small := portion.Budget{Food: "a paste", Bowl: 0.5, Energy: 0.5, Bowls: 1, Label: 1}
	if err := small.Validate(); err != nil {
		t.Errorf("0.5 g of 0.5 kcal: %v", err)
	}
	if got := small.Share(portion.LabelRounding); got != 1 {
		t.Errorf("the one part is %v of the variance", got)
	}
	var none portion.Budget
	for c := range portion.Component(8) {
		if none.Share(c) != 0 || none.Part(c) != 0 {
			t.Errorf("%v of nothing: part %v, share %v", c, none.Part(c), none.Share(c))
		}
	}
	if got := small.Part(99); got != 0 {
		t.Errorf("the part of what is no component: %v", got)
	}
	// √(50² + 50²) is 70.7 %, and twice that more than all.
	// A part may be 50 % and no more, that of the animals too.
	for part, ok := range map[units.Percent]bool{50: true, 50.1: false} {
		for c, b := range map[portion.Component]portion.Budget{
			portion.LabelRounding: {Label: part}, portion.ScoopFill: {Scoop: part}, portion.IndividualNeed: {Individual: part},
		} {
			b.Bowl, b.Energy, b.Bowls = 100, 100, 1
			if err := b.Validate(); (err == nil) != ok {
				t.Errorf("%v of %v: %v", part, c, err)
			}
		}
	}
	wide := portion.Budget{Food: "a food", Bowl: 100, Energy: 100, Bowls: 1, Label: 50, Density: 50}
	if r := wide.EnergyRange(); r.Low != 0 || math.Abs(float64(r.High)-241.42) > 0.01 {
		t.Errorf("100 kcal ± 141 %%: %v to %v", r.Low, r.High)
	}
}

// A measure is worth bettering where the whole gets less by a tenth (ours): with
// 10 % that is left, 10/√(10² + 4.84²) is 0.9001 and 10/√(10² + 4.85²) is 0.8998.
// Known well enough is ±5 %, twice 2.5 %.
func TestEndsOfTheVerdicts(t *testing.T) {
	for _, test := range []struct {
		b    portion.Budget
		want string
	}{
		{portion.Budget{Label: 10, Scale: 4.84}, "weighing more finely won't help: the label is the limit"},
		{portion.Budget{Label: 10, Scale: 4.85}, "the label is the limit; weighing more finely would still make ±22 % at best ±20 %"},
		{portion.Budget{Scale: 2.5}, "known well enough: most of what is left is the step of the scale"},
		{portion.Budget{Scale: 2.51}, "the scale is the limit: use a finer scale"},
		{portion.Budget{Label: 2, Scoop: 0.5}, "weighing instead of the scoop won't help: the label is the limit"},
	} {
		b := test.b
		b.Food, b.Bowl, b.Energy, b.Bowls = "a food", 100, 350, 1
		if got := b.Verdict(); got != test.want {
			t.Errorf("%+v: %q, want %q", test.b, got, test.want)
		}
	}
}

// Of two parts as large the earlier is the limit.
func TestLimitOfEqualParts(t *testing.T) {
	if c, ok := (portion.Budget{Label: 2, Density: 2, Scale: 2, Scoop: 2}).Limit(); c != portion.LabelRounding || !ok {
		t.Errorf("four equal parts: %v", c)
	}
	if c, _ := (portion.Budget{Label: 1, Scale: 2, Scoop: 2}).Limit(); c != portion.ScaleStep {
		t.Errorf("scale and scoop: %v", c)
	}
}

// A bowl known to ±10 % at best (ours) is cautioned, and one that is scooped
// however well is said to be.
func TestEndsOfTheCautionsOfABudget(t *testing.T) {
	for _, test := range []struct {
		scale, scoop units.Percent
		want         int
	}{{5, 0, 0}, {5.01, 0, 1}, {0, 0.5, 1}} {
		b := portion.Budget{Food: "a food", Bowl: 100, Energy: 350, Bowls: 1, Scale: test.scale, Scoop: test.scoop}
		if c := b.Cautions(); len(c) != test.want {
			t.Errorf("scale %v, scoop %v: %v", test.scale, test.scoop, c)
		}
	}
}

// Which lines a budget has, and two significant digits in them, to three
// decimals.
func TestLinesOfABudget(t *testing.T) {
	one := portion.Budget{Food: "a food", Bowl: 100, Energy: 350, Bowls: 1, Label: 2, Individual: 0.5}
	text := one.Explain()
	for _, line := range []string{"together", "smallest", "next "} {
		if strings.Contains(text, line) {
			t.Errorf("one part of one bowl, and an animal known better: %q in\n%s", line, text)
		}
	}
	for _, line := range []string{"\nso ", "\nsource ", "\nanimal    ±0.50 %"} {
		if !strings.Contains(text, line) {
			t.Errorf("no %q in\n%s", line, text)
		}
	}
	tomorrow := portion.Budget{Food: "a food", Bowl: 100, Energy: 350, Bowls: 1, Individual: 20, Reweigh: energy.Day}
	if text := tomorrow.Explain(); !strings.Contains(text, "weigh the animal in 1 day\n") || strings.Contains(text, "\nso ") {
		t.Errorf("nothing in the bowl, weighed every day:\n%s", text)
	}
	// As well known as the bowl is no worse, and without a day to weigh again none is
	// named.
	even := portion.Budget{Food: "a food", Bowl: 100, Energy: 350, Bowls: 1, Scoop: 2, Individual: 2}
	if text := even.Explain(); strings.Contains(text, "\nnext ") || !strings.Contains(text, "\nscoop     ±2.0 %, the fill of the scoop; 100 % of the variance\n") {
		t.Errorf("the animal is known as well:\n%s", text)
	}
	even.Individual = 2.1
	if text := even.Explain(); !strings.HasSuffix(text, ": keep the bowl the same and weigh the animal\n") {
		t.Errorf("no day to weigh again:\n%s", text)
	}
	for _, test := range []struct {
		p    units.Percent
		want string
	}{
		{9.95, "10"}, {9.955, "10"}, {9.945, "9.9"}, {1, "1.0"}, {0.0912, "0.091"}, {0.00123, "0.001"},
	} {
		b := one
		b.Label = test.p
		if text := b.Explain(); !strings.Contains(text, "\nlabel     ±"+test.want+" %,") {
			t.Errorf("±%v %% should be written %s %%:\n%s", float64(test.p), test.want, text)
		}
	}
}
