package portion_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Less than a kilocalorie is weighed as any other energy: a day of it, and what
// treats leave of a day. 0.5 kcal of 3560 kcal/kg are 0.14 g.
func TestLessThanAKilocalorie(t *testing.T) {
	const half = 500.0 / 3560
	r, err := portion.Weigh(prescribed(0.5), diet.Only(kibble))
	if err != nil || math.Abs(r.Portion(0).Mass.Grams()-half) > 1e-12 {
		t.Errorf("a day of 0.5 kcal: %+v, %v", r, err)
	}
	r, err = portion.Weigh(prescribed(100.5), diet.Menu{
		{Food: asFed("liver", 1000), Amount: diet.Fixed(100), Treat: true}, {Food: kibble, Amount: diet.Rest()},
	})
	if err != nil || math.Abs(r.Portion(1).Mass.Grams()-half) > 1e-12 {
		t.Errorf("0.5 kcal are left: %v", err)
	}
	_, err = portion.Weigh(prescribed(100), diet.Menu{
		{Food: asFed("liver", 1000), Amount: diet.Fixed(100), Treat: true}, {Food: kibble, Amount: diet.Rest()},
	})
	if err == nil {
		t.Error("nothing is left, and was divided")
	}
}

// A day is at most half the body weight and 20 kg (ours).
func TestEndsOfADay(t *testing.T) {
	wet := asFed("wet", 1000) // as many grams as kilocalories
	for _, test := range []struct {
		name  string
		kg    units.Mass
		daily units.Energy
		want  string // of the error
	}{
		{"half", 1, 500, ""},
		{"above half", 1, 500.1, `"500.10 g a day": want at most 500.00 g (half`},
		{"half a gram", 0.001, 0.5, ""},
		{"above half a gram", 0.001, 0.6, `"0.60 g a day": want at most 0.50 g (half`},
		{"20 kg", 70, 20000, ""},
		{"above 20 kg", 70, 20001, `"20001.00 g a day": want at most 20000.00 g (half`},
		{"no weight", 0, 20000, ""},
		{"no weight, above 20 kg", 0, 20001, `"20001.00 g a day": want at most 20000.00 g (half`},
	} {
		need := energy.Estimate{Animal: energy.Animal{Species: energy.Dog, Weight: test.kg * units.Kilogram}, Daily: test.daily}
		_, err := portion.Weigh(need, diet.Only(wet))
		if test.want == "" && err != nil || test.want != "" && (err == nil || !strings.Contains(err.Error(), test.want)) {
			t.Errorf("%s: %v, want %q", test.name, err, test.want)
		}
	}
}

// What is no number is said to be none, below nothing too.
func TestMinusInfinity(t *testing.T) {
	below := math.Inf(-1)
	_, err := portion.Weigh(energy.Estimate{Daily: units.Energy(below)}, diet.Only(kibble))
	if err == nil || !strings.Contains(err.Error(), `need "not a finite number"`) {
		t.Errorf("an energy: %v", err)
	}
	r, err := portion.Weigh(prescribed(890), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := r.On(units.Mass(below)); err == nil || !strings.Contains(err.Error(), `scale step "not a finite number"`) {
		t.Errorf("a step: %v", err)
	}
}

// The working of a menu of two foods has what one food doesn't need: the energy to
// two decimals, what is left for the rest, and the day. 890 kcal less 106.8 kcal of
// 30 g leave 783.2 kcal, 220 g.
func TestExplainOfTwoFoods(t *testing.T) {
	w := weighedOn(t, prescribed(890), diet.Menu{
		{Food: asFed("stew", 3560), Amount: diet.Fixed(30)}, {Food: kibble, Amount: diet.Rest()},
	}, units.Gram)
	text, err := w.Explain(2)
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range []string{
		"\nenergy    30.00 g × 3560 kcal/kg ÷ 1000 = 106.80 kcal\n",
		"\nrest      890.00 kcal − 106.80 kcal = 783.20 kcal\n",
		"\ngrams     783.20 kcal ÷ 3560 kcal/kg × 1000 = 220.00 g\n",
		"\nday       890.00 kcal of 890.00 kcal\n",
	} {
		if !strings.Contains(text, line) {
			t.Errorf("no %q in\n%s", line, text)
		}
	}
	one, err := weighedOn(t, prescribed(890), diet.Only(kibble), units.Gram).Explain(2)
	if err != nil || strings.Contains(one, "\nrest ") || strings.Contains(one, "\nday ") {
		t.Errorf("one food: %v\n%s", err, one)
	}
}

// A day is told in cups from a sixteenth on, to the nearest eighth: it is for
// recognising an amount. A cup of 1 kg, and one spoon of half a gram.
func TestEndsOfAHouseholdUnit(t *testing.T) {
	for _, test := range []struct {
		grams float64
		unit  diet.Serving
		about float64
		name  string
		ok    bool
	}{
		{64, diet.Serving{Name: "cup", Mass: 1000}, 0.125, "cup", true},
		{61, diet.Serving{Name: "cup", Mass: 1000}, 0, "cup", false},
		{62.5, diet.Serving{Name: "cup", Mass: 1000}, 0.125, "cup", true},
		{10, diet.Serving{Name: "pinch", Mass: 0.5}, 20, "pinch", true},
		{10, diet.Serving{}, 0, "", false},
		{10, diet.Serving{Name: "handful"}, 0, "", false},
	} {
		food := asFed("dry", 4000)
		food.Label.Serving = test.unit
		w := weighedOn(t, prescribed(units.Energy(4*test.grams)), diet.Only(food), 0.5)
		if about, name, ok := w.Household(0); about != test.about || name != test.name || ok != test.ok {
			t.Errorf("%v g in %+v: %v %q, %v", test.grams, test.unit, about, name, ok)
		}
	}
}

// No number of meals, and one below, is the day at once: 20 g are 20 steps, and
// fit.
func TestCautionsOfNoMeals(t *testing.T) {
	w := weighedOn(t, prescribed(80), diet.Only(asFed("dry", 4000)), units.Gram)
	for _, meals := range []int{-1, 0, 1} {
		if got := said(w.Cautions(meals), "scale"); got != "" {
			t.Errorf("%d meals: %s", meals, got)
		}
	}
	if got := said(w.Cautions(2), "scale"); got == "" {
		t.Error("two meals of 10 steps are no coarse ones")
	}
}

// The working has every caution once: what the energy's own working says isn't
// said again, what refers stands before all of it, and the rest after.
func TestExplainHasEveryCautionOnce(t *testing.T) {
	young := energy.Prescribed{Animal: energy.Animal{Species: energy.Cat, Weight: 1500, Age: 100}, Daily: 200, By: "a veterinarian"}
	wrong := asFed("stew for dogs", 1000)
	wrong.For, wrong.Role = diet.Purpose{Species: diet.Dogs}, diet.Complete
	w := weighedOn(t, must(young), diet.Only(wrong), 20*units.Gram)
	text, err := w.Explain(1)
	if err != nil {
		t.Fatal(err)
	}
	needs := w.Ration().Need().Cautions()
	start, end := strings.Index(text, w.Ration().Need().Explain()), strings.Index(text, "\nmeals ")
	levels := make(map[advice.Level]int)
	for _, c := range w.Cautions(1) {
		if n := strings.Count(text, c.String()+"\n"); n != 1 {
			t.Errorf("%d times: %v in\n%s", n, c, text)
		}
		if slices.Contains(needs, c) {
			continue
		}
		levels[c.Level]++
		switch at := strings.Index(text, c.String()); {
		case c.Level == advice.Refer && at > start, c.Level != advice.Refer && at < end:
			t.Errorf("%v stands at %d in\n%s", c, at, text)
		}
	}
	if len(needs) == 0 || levels[advice.Refer] == 0 || levels[advice.Warn]+levels[advice.Note] == 0 {
		t.Errorf("%d of the need, and of the food %v", len(needs), levels)
	}
}
