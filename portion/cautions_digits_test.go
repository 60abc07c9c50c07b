package portion_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// sayingAll are the cautions of a list that hold a word.
func sayingAll(c []advice.Caution, word string) []advice.Caution {
	var found []advice.Caution
	for _, x := range c {
		if strings.Contains(x.Text, word) {
			found = append(found, x)
		}
	}
	return found
}

// A tenth of the day in treats is taken (Small Animal Clinical Nutrition, 5th ed.,
// p. 522), with a part in 10^12 more for the last bits (ours): 1000 kcal and a
// treat of 1000 kcal/kg, of which 100 g are the tenth.
func TestExactlyATenthInTreats(t *testing.T) {
	treat := asFed("liver", 1000)
	for _, test := range []struct {
		grams float64
		want  int
	}{
		{100, 0},
		{100 * (1 + 0.5e-12), 0},
		{100.0000000001, 0}, // to the bit
		{100 * (1 + 1.5e-12), 1},
		{100.1, 1},
	} {
		menu := diet.Menu{{Food: treat, Amount: diet.Fixed(units.Mass(test.grams)), Treat: true}, {Food: kibble, Amount: diet.Rest()}}
		r, err := portion.Weigh(prescribed(1000), menu)
		if err != nil {
			t.Fatal(err)
		}
		if c := sayingAll(r.Cautions(), "treats are"); len(c) != test.want {
			t.Errorf("%v g of treats: %v", test.grams, c)
		}
		// By the same reason so much of what is no diet by itself (ours).
		menu[0].Treat, menu[0].Food.Role = false, diet.Complementary
		if r, err = portion.Weigh(prescribed(1000), menu); err != nil {
			t.Fatal(err)
		}
		if c := sayingAll(r.Cautions(), "may lack nutrients"); len(c) != test.want {
			t.Errorf("%v g of a complement: %v", test.grams, c)
		}
	}
}

// However small the treat, a cat in weight loss should have none (p. 542).
func TestATreatOfLessThanAKilocalorie(t *testing.T) {
	cat := energy.Animal{Species: energy.Cat, Weight: 5500, Ideal: 4500, Condition: energy.BCS9(7)}
	menu := diet.Menu{{Food: asFed("a flake", 800), Amount: diet.Fixed(1), Treat: true}, {Food: asFed("dry", 3500), Amount: diet.Rest()}}
	r, err := portion.Weigh(must(energy.WeightLoss{Animal: cat}), menu)
	if err != nil {
		t.Fatal(err)
	}
	if c := sayingAll(r.Cautions(), "a flake, 0.8 kcal a day"); len(c) != 1 || c[0].Level != advice.Warn {
		t.Errorf("0.8 kcal: %v", r.Cautions())
	}
}

// More food than 15 % of the body weight is referred, for the young, for dams and
// for ferrets than 35 % (ours). A food of 1000 kcal/kg is as many grams as kcal.
func TestEndsOfMuchFood(t *testing.T) {
	wet := asFed("wet", 1000)
	adult := energy.Animal{Species: energy.Cat, Weight: 4000, Age: 3 * energy.Year}
	kitten := energy.Animal{Species: energy.Cat, Weight: 1000, Age: energy.Day}
	teenager := energy.Animal{Species: energy.Cat, Weight: 1000, Age: energy.Year - 1}
	grown := energy.Animal{Species: energy.Cat, Weight: 1000, Age: energy.Year}
	ferret := energy.Animal{Species: energy.Ferret, Weight: 1000, Age: 2 * energy.Year}
	for _, test := range []struct {
		name   string
		animal energy.Animal
		daily  units.Energy
		want   string // of the body weight; "" for no word
	}{
		{"adult", adult, 598, ""},
		{"adult", adult, 600, ""},
		{"adult", adult, 602, "15 %"},
		{"adult", adult, 0.456 * 4000, "46 %"},
		{"newborn", kitten, 349, ""},
		{"newborn", kitten, 350, ""},
		{"newborn", kitten, 351, "35 %"},
		{"a day under a year", teenager, 349, ""},
		{"a year", grown, 151, "15 %"},
		{"ferret", ferret, 349, ""},
		{"ferret", ferret, 351, "35 %"},
	} {
		r, err := portion.Weigh(must(energy.Prescribed{Animal: test.animal, Daily: test.daily, By: "a veterinarian"}), diet.Only(wet))
		if err != nil {
			t.Fatal(err)
		}
		c := sayingAll(r.Cautions(), "of the body weight")
		switch {
		case test.want == "" && len(c) > 0, test.want != "" && len(c) != 1:
			t.Errorf("%s on %v: %v", test.name, test.daily, c)
		case len(c) == 1 && (c[0].Level != advice.Refer || !strings.Contains(c[0].Text, " is "+test.want+" of")):
			t.Errorf("%s on %v: %v, want %s", test.name, test.daily, c[0], test.want)
		}
	}
	// One food at the limit, and the two of them above it: 600 and 40 g of 4 kg.
	r, err := portion.Weigh(must(energy.Prescribed{Animal: adult, Daily: 640, By: "a veterinarian"}), diet.Menu{
		{Food: wet, Amount: diet.Fixed(40)}, {Food: asFed("another", 1000), Amount: diet.Rest()},
	})
	if err != nil {
		t.Fatal(err)
	}
	if got, want := said(r.Cautions(), "of the body weight"), "refer: 640.00 g of all the foods a day is 16 % of the body weight: check the label's kcal/kg, the energy and the weight first"; got != want {
		t.Errorf("two foods: %q, want %q", got, want)
	}
	// Without a weight there is nothing to hold it against.
	if r, err = portion.Weigh(energy.Estimate{Daily: 640}, diet.Only(wet)); err != nil || said(r.Cautions(), "of the body weight") != "" {
		t.Errorf("no weight: %v, %v", r.Cautions(), err)
	}
	// No stage takes a weight of a gram; an estimate put together by hand may have
	// it. 0.4 g is 40 % of it.
	if r, err = portion.Weigh(energy.Estimate{Animal: energy.Animal{Weight: 1}, Daily: 0.4}, diet.Only(wet)); err != nil {
		t.Fatal(err)
	}
	if c := sayingAll(r.Cautions(), "40 % of the body weight"); len(c) != 1 {
		t.Errorf("0.4 g for 1 g: %v", r.Cautions())
	}
}

// A day that the scale makes more than 2.5 % more or less is said, and more than
// 10 % is referred (ours). On 5 g: 100 g for 97.60 g are +2.46 %, for 97.53 g
// +2.53 %; 25 g for 22.75 g are +9.9 %, for 22.70 g +10.1 %.
func TestEndsOfAnErrorOfTheDay(t *testing.T) {
	food := asFed("dry", 4000)
	for _, test := range []struct {
		grams float64
		level advice.Level // 0: no word
	}{{97.60, 0}, {97.53, advice.Warn}, {22.75, advice.Warn}, {22.70, advice.Refer}} {
		w := weighedOn(t, prescribedCat(units.Energy(4*test.grams)), diet.Only(food), 5*units.Gram)
		c := sayingAll(w.Cautions(1), "g scale makes")
		if test.level == 0 {
			if len(c) > 0 {
				t.Errorf("%v g on 5 g: %v", test.grams, c)
			}
			continue
		}
		if len(c) != 1 || c[0].Level != test.level {
			t.Errorf("%v g on 5 g: %v, want one of level %v", test.grams, c, test.level)
		}
	}
}
