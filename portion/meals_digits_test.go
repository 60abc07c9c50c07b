package portion_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// The first and the last minute of a day and of an hour, and what lies beside
// them.
func TestEndsOfAClock(t *testing.T) {
	for _, test := range []struct {
		hour, minute, want int // minutes since midnight, or -1
	}{
		{0, 0, 0},
		{0, 1, 1},
		{0, 59, 59},
		{1, 0, 60},
		{23, 59, 1439},
		{24, 0, -1},
		{23, 60, -1},
		{-1, 59, -1},
		{0, -1, -1},
		{0, 60, -1},
	} {
		m, ok := portion.At(test.hour, test.minute).Minutes()
		if ok != (test.want >= 0) || m != max(test.want, 0) {
			t.Errorf("%d h %d min: %d, %v", test.hour, test.minute, m, ok)
		}
	}
	if m, ok := (portion.Clock{}).Minutes(); m != 0 || ok {
		t.Errorf("no time: %d, %v", m, ok)
	}
}

// Meals may follow on one another by a minute, and last to a minute before the
// first.
func TestMealsAMinuteApart(t *testing.T) {
	for _, test := range []struct {
		times []portion.Clock
		gap   int // 0: refused
	}{
		{[]portion.Clock{portion.At(7, 0), portion.At(7, 1)}, 1439},
		{[]portion.Clock{portion.At(7, 0), portion.At(6, 59)}, 1439},
		{[]portion.Clock{portion.At(7, 0), portion.At(7, 0)}, 0},
		{[]portion.Clock{portion.At(7, 0), portion.At(19, 0)}, 720},
	} {
		var table portion.Timetable
		for _, c := range test.times {
			table = append(table, portion.Mealtime{At: c})
		}
		_, err := onGrams(t, 100).Serve(table)
		gap, ok := table.LongestGap()
		if (err == nil) != (test.gap > 0) || ok != (test.gap > 0) || gap != test.gap {
			t.Errorf("%v: %v; %d min, %v", test.times, err, gap, ok)
		}
	}
	_, err := (portion.Weighed{}).Serve(portion.Timetable{{}})
	if err == nil || !strings.Contains(err.Error(), "a ration from Weigh") {
		t.Errorf("no ration: %v", err)
	}
}

// The ages at which a recommendation changes: none to four weeks, for a puppy six
// months (Best Friends), for a kitten free choice to five months and fewer meals
// from six (Small Animal Clinical Nutrition, 5th ed., p. 434).
func TestAgesOfARecommendation(t *testing.T) {
	for _, test := range []struct {
		species   energy.Species
		age       energy.Age
		low, high int // 0: none
		free      bool
	}{
		{energy.Cat, 1, 0, 0, false},
		{energy.Cat, 28, 0, 0, false},
		{energy.Cat, 29, 3, 0, true},
		{energy.Cat, 149, 3, 0, true},
		{energy.Cat, 150, 3, 0, false},
		{energy.Cat, 179, 3, 0, false},
		{energy.Dog, 1, 0, 0, false},
		{energy.Dog, 28, 0, 0, false},
		{energy.Dog, 29, 3, 4, false},
		{energy.Dog, 179, 3, 4, false},
		{energy.Dog, 180, 2, 0, false}, // of no stage that says it grows
		{energy.Ferret, 28, 0, 0, false},
		{energy.Ferret, 29, 4, 0, true},
	} {
		need := must(energy.Prescribed{Animal: animalOf(test.species, 1, test.age), Daily: 100, By: "a veterinarian"})
		f, ok := portion.MealsFor(need)
		if f.Low != test.low || f.High != test.high || f.FreeChoice != test.free || ok != (test.low > 0) {
			t.Errorf("%v of %d days: %+v, %v", test.species, test.age, f, ok)
		}
	}
}

// Of a stage that says it grows, without an age and at six months; and whom a
// recommendation in weight loss is for.
func TestWhomARecommendationIsFor(t *testing.T) {
	growing := func(s energy.Species, age energy.Age) energy.Stage {
		a := animalOf(s, 1, age)
		a.Circumstances = energy.Growing
		return energy.Prescribed{Animal: a, Daily: 100, By: "a veterinarian"}
	}
	fat := func(s energy.Species) energy.Stage {
		return energy.WeightLoss{Animal: energy.Animal{Species: s, Weight: 6000, Ideal: 5000, Condition: energy.BCS9(7)}}
	}
	for _, test := range []struct {
		stage     energy.Stage
		low, high int
		free      bool
		whom      string
	}{
		{growing(energy.Dog, 180), 2, 4, false, "a growing dog"},
		{growing(energy.Dog, 179), 3, 4, false, "a puppy under six months"},
		{growing(energy.Dog, 0), 2, 4, false, "a growing dog"},
		{growing(energy.Cat, 180), 2, 0, false, "a kitten from six months"},
		{growing(energy.Cat, 179), 3, 0, false, "a kitten"},
		{growing(energy.Cat, 0), 3, 0, false, "a kitten"},
		{fat(energy.Cat), 2, 0, false, "a cat in weight loss"},
		{fat(energy.Dog), 2, 0, false, "a dog in weight loss"},
	} {
		f, ok := portion.MealsFor(must(test.stage))
		if !ok || f.Low != test.low || f.High != test.high || f.FreeChoice != test.free || f.For != test.whom {
			t.Errorf("%s: %+v, %v", test.whom, f, ok)
		}
	}
}

// A timetable's smallest meal is by its parts of the sum: two fifths of 100 g, 40 g,
// are 8 steps of 5 g, and would be 40 of 1 g; of 45 g they are 18 g, too little for
// 20 of them.
func TestFinerScaleOfATimetable(t *testing.T) {
	table := portion.Timetable{{Parts: 3}, {Parts: 2}}
	for grams, want := range map[float64]string{
		100: "warn: a 5 g scale is coarse for 40 g of dry: half a step is 6.2 % of it: use a 1 g scale, or weigh the day's 100 g once and divide it",
		45:  "warn: a 5 g scale is coarse for 20 g of dry: half a step is 12.5 % of it: use a 0.1 g scale",
	} {
		w := weighedOn(t, prescribed(units.Energy(4*grams)), diet.Only(asFed("dry", 4000)), 5*units.Gram)
		if got := said(w.TimetableCautions(table), "coarse"); got != want {
			t.Errorf("%v g: %q, want %q", grams, got, want)
		}
	}
}

// The word on bloat is from 25 kg on (ours), and none of it is said of no meals.
func TestEndsOfTheWordOnMeals(t *testing.T) {
	for kg, want := range map[units.Mass]bool{24.9: false, 25: true} {
		need := must(energy.Prescribed{Animal: energy.Animal{Species: energy.Dog, Weight: kg * units.Kilogram}, Daily: 1000, By: "a veterinarian"})
		w := weighedOn(t, need, diet.Only(kibble), units.Gram)
		if got := strings.Contains(said(w.Cautions(1), "recommended"), "can turn on one large meal"); got != want {
			t.Errorf("%v kg: %v", float64(kg), got)
		}
		for _, meals := range []int{0, 2} {
			if got := said(w.Cautions(meals), "recommended"); got != "" {
				t.Errorf("%d meals: %s", meals, got)
			}
		}
	}
}
