package main

import (
	"strings"
	"testing"
)

// One line for each animal, by its species and stage. A cat's 24 h is from the
// sources, and half its plan: 0.8 × 70 × 4^0.75 = 158.4 kcal, / 4.148 = 38 g. The
// gain is the kitten's, and the loss a week 1 % or 2 % of the weight.
func TestCallIf(t *testing.T) {
	for _, test := range []struct{ cells, want string }{
		{"species: cat; weight: 4 kg; stage: adult; status: neutered", "nothing eaten for 24 h (never wait it out), or weak, wobbly or dull"},
		{"species: dog; weight: 16 kg; stage: adult; status: neutered", "nothing eaten for 24 h, or weak, wobbly or dull"},
		{"species: dog; weight: 16 kg; stage: work; exercise: light", "nothing eaten for 24 h, or weak, wobbly or dull"},
		{"species: ferret; weight: 1.2 kg", "nothing eaten for 12 h, or weak, drooling, pawing at the mouth (at once)"},
		{"species: other; weight: 2 kg; stage: prescribed; energy: 180 kcal; by: Dr Crake", "nothing eaten for 12 h, no droppings for 12 h, or weak or dull"},
		{"species: cat; weight: 1 kg; stage: growth; age: 10 wk", "nothing eaten for 12 h, or weak, wobbly or dull"},
		{"species: cat; weight: 1 kg; stage: prescribed; energy: 200 kcal; by: Dr Crake; age: 10 wk", "nothing eaten for 12 h, or weak, wobbly or dull"},
		{"species: dog; weight: 6.4 kg; stage: growth; adult weight: 22 kg", "nothing eaten for 12 h, or weak, wobbly or dull"},
		{"species: dog; weight: 1.6 kg; stage: growth; adult weight: 3.9 kg", "a meal left, or weak, wobbly, a seizure (at once): low blood sugar"},
		{"species: dog; weight: 1.6 kg; stage: growth; adult weight: 4 kg", "nothing eaten for 12 h, or weak, wobbly or dull"},
		{"species: dog; weight: 1.9 kg; stage: growth; age: 12 wk", "a meal left, or weak, wobbly, a seizure (at once): low blood sugar"},
		{"species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 8", "gains less than 7 g by tomorrow, or is cold, limp or won't suck (at once)"},
		{"species: dog; weight: 400 g; stage: nursling; age: 10 d; meals: 8", "gains less than 14 g by tomorrow, or is cold, limp or won't suck (at once)"}, // 3.5 %
		{"species: cat; weight: 100 g; stage: nursling; age: 1 d; meals: 8", "loses more than 10 g in its first day, or is cold, limp or won't suck (at once)"},
		{"species: dog; weight: 400 g; stage: prescribed; energy: 60 kcal; by: Dr Crake; age: 10 d; meals: 8", "no gain in a day, or is cold, limp or won't suck (at once)"},
		{"species: dog; weight: 16 kg; stage: gestation; week: 6", "nothing eaten for 24 h, weak or dull, or week 9 is over"},
		{"species: cat; weight: 4 kg; stage: lactation; young: 4", "nothing eaten for 24 h, trembling, stiff or wobbly (at once), or young that don't gain"},
		{"species: cat; weight: 5 kg; ideal weight: 4 kg; stage: weight loss", "less than 19 g eaten in a day, half its plan, or more than 50 g lost in a week"},
		{"species: dog; weight: 20 kg; ideal weight: 16 kg; stage: weight loss", "nothing eaten for 24 h, or more than 400 g lost in a week"},
		{"species: cat; weight: 4 kg; stage: weight loss", "less than half its plan eaten in a day, nothing eaten for 24 h"}, // no score, no amount
		{"species: dog; weight: 15 kg; ideal weight: 16 kg; stage: weight gain", "nothing eaten for 24 h, weak, wobbly or dull, or no gain at the next weighing"},
		{"species: dog; weight: 16 kg; stage: refeeding; condition: 1/9; by: Dr Crake; ladder: 25/50 %; day: 1; meals: 4", "weak, wobbly, dull, a seizure, collapse (stop feeding, at once), or nothing eaten for 12 h"},
		{"species: cat; weight: 3 kg; stage: prescribed; energy: 60 kcal; by: Dr Crake; days unfed: 5", "weak, wobbly, dull, a seizure, collapse (stop feeding, at once), or nothing eaten for 12 h"},
		{"species: cat; weight: 4 kg; stage: adult; status: neutered; hold: surgery", "nobody has ended the hold by its hour, or weak, wobbly or dull"},
	} {
		out := textOf(t, testFoods, test.cells)
		var got []string
		for line := range strings.Lines(out) {
			if text, ok := strings.CutPrefix(line, "    CALL IF  "); ok {
				got = append(got, strings.TrimSpace(text))
			}
		}
		if len(got) != 1 || got[0] != test.want {
			t.Errorf("%s:\ngot  %q\nwant %q", test.cells, got, test.want)
		}
	}
}

func TestCallIfIsSilentWhereTheAnimalIsNotKnown(t *testing.T) {
	if out := textOf(t, testFoods, "species: cow; weight: 400 kg; stage: adult"); strings.Contains(out, "CALL IF  ") {
		t.Errorf("a cow:\n%s", out)
	}
}
