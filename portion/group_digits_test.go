package portion_test

import (
	"strconv"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// One bowl is weighed for all: the scale is judged by the day of each, not by its
// meals. 19 g a day are 19 steps, a note that an order doesn't carry; in two meals
// the smaller is 9 steps, which would be a warning.
func TestOneBowlJudgesTheScaleByTheDay(t *testing.T) {
	var g portion.Group
	for _, name := range []string{"Nettle", "Sorrel"} {
		g = append(g, portion.Plan{Animal: name, Weighed: weighedOn(t, prescribedCat(76), diet.Only(asFed("dry", 4000)), units.Gram)})
	}
	b, err := g.OneBowl(2)
	if err != nil {
		t.Fatal(err)
	}
	if got := said(b.Cautions(), "scale"); got != "" {
		t.Errorf("19 g each: %s", got)
	}
}

// The number of meals is that of the last row, and none where the rows are gone.
// Two meals are too few for a kitten: Small Animal Clinical Nutrition, 5th ed.,
// Table 20-5, p. 385, has three and more.
func TestFrequencyOfOneBowl(t *testing.T) {
	var g portion.Group
	for _, name := range []string{"Pim", "Fig"} {
		kitten := energy.Prescribed{Animal: animalOf(energy.Cat, 2, 160), Daily: 240, By: "a veterinarian"}
		g = append(g, portion.Plan{Animal: name, Weighed: weighedOn(t, must(kitten), diet.Only(asFed("dry", 4000)), units.Gram)})
	}
	for meals, want := range map[int]string{
		1: "warn: Pim, Fig: 1 meal a day: 3 or more are recommended for a kitten",
		2: "warn: Pim, Fig: 2 meals a day: 3 or more are recommended for a kitten",
		3: "",
	} {
		b, err := g.OneBowl(meals)
		if err != nil {
			t.Fatal(err)
		}
		if got := said(b.Cautions(), "recommended"); got != want {
			t.Errorf("%d meals: %q, want %q", meals, got, want)
		}
		b.Meals = nil
		if got := said(b.Cautions(), "recommended"); got != "" {
			t.Errorf("the rows are gone: %q", got)
		}
	}
}

// A place has up to 100 animals (ours), and a day 24 meals.
func TestEndsOfAGroup(t *testing.T) {
	w := weighedOn(t, prescribedCat(240), diet.Only(catDry), units.Gram)
	for _, test := range []struct {
		animals, meals int
		ok             bool
	}{{2, 1, true}, {2, 24, true}, {2, 25, false}, {2, 0, false}, {100, 2, true}, {101, 2, false}} {
		var g portion.Group
		for i := range test.animals {
			g = append(g, portion.Plan{Animal: "cat " + strconv.Itoa(i), Weighed: w})
		}
		bowls, err := g.Bowls(test.meals)
		if (err == nil) != test.ok || test.ok && len(bowls) != test.animals*test.meals {
			t.Errorf("%d animals, %d meals: %d bowls, %v", test.animals, test.meals, len(bowls), err)
		}
		b, err := g.OneBowl(test.meals)
		if (err == nil) != test.ok || test.ok && len(b.Meals) != test.meals {
			t.Errorf("%d animals, %d meals: one bowl in %d, %v", test.animals, test.meals, len(b.Meals), err)
		}
	}
}
