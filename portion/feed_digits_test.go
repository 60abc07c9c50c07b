package portion_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// What a liquid may be: 0.2 to 3 kcal/mL, and 30 to 100 % of water where it is
// known (ours).
func TestEndsOfALiquid(t *testing.T) {
	for _, test := range []struct {
		energy units.EnergyPerVolume
		water  units.Percent
		want   string // of the error
	}{
		{0.2, 0, ""},
		{0.19, 0, "want 0.2 kcal/mL to 3 kcal/mL"},
		{3, 0, ""},
		{3.01, 0, "(of the powder? give that of the made-up liquid)"},
		{units.EnergyPerVolume(math.Inf(-1)), 0, `liquid.energy "not a finite number"`},
		{1, 30, ""},
		{1, 29.9, "(it is fed made up with water: Mix)"},
		{1, 1, "(it is fed made up with water: Mix)"},
		{1, 0.99, "(a fraction for a percentage?)"},
		{1, 100, ""},
		{1, 100.1, "want 30 % to 100 % of the volume, or none if not known"},
		{1, -0.5, "want 30 % to 100 % of the volume, or none if not known"},
	} {
		b := kittenAt(400, 24)
		// A day of 40 mL whatever the liquid: 10 % of the weight.
		b.Need.Daily, b.Mark = 40*units.Energy(max(test.energy, 0.1)), 0.1
		b.Liquid.Energy, b.Liquid.Water = test.energy, test.water
		_, err := b.Plan()
		if test.want == "" && err != nil || test.want != "" && (err == nil || !strings.Contains(err.Error(), test.want)) {
			t.Errorf("%v, %v: error %v, want %q", test.energy, test.water, err, test.want)
		}
	}
}

// The water of a food is at most its volume, or 2 % more by the reading of a jug
// (ours), and 30 % at least. 92 % of 110.8 g is 101.9 mL in 100 mL, of 111 g 102.1
// mL, and 85 % of 120 g 102 mL.
func TestWaterByTheReadingOfAJug(t *testing.T) {
	for _, test := range []struct {
		energy         units.EnergyDensity
		moisture, want units.Percent // 0: refused
		grams          units.Mass
	}{
		{500, 92, 100, 110.8}, {500, 92, 0, 111}, {500, 85, 100, 120}, // 102 mL
		{3000, 30, 30, 100}, {3000, 29.9, 0, 100},
	} {
		broth := diet.Food{
			Name: "broth", Form: diet.Liquid, Analysis: diet.Analysis{Moisture: test.moisture},
			Label: diet.Label{Energy: test.energy, Serving: diet.Serving{Name: "100 mL", Mass: test.grams}},
		}
		if l, err := portion.LiquidFood(broth); (err == nil) != (test.want > 0) || l.Water != test.want {
			t.Errorf("%v of water in %v, 100 mL: %v, %v", test.moisture, test.grams, l.Water, err)
		}
	}
}

// A label without the moisture doesn't contradict what is known of the water.
func TestWaterThatTheLabelDoesNotState(t *testing.T) {
	f := milk()
	f.Analysis = diet.Analysis{}
	l, err := portion.LiquidFood(f)
	if err != nil || l.Water != 0 {
		t.Fatal(l.Water, err)
	}
	b := kittenAt(300, 8)
	b.Liquid, b.Liquid.Water = l, 84
	if _, err := b.Plan(); err != nil {
		t.Error(err)
	}
}

// Marks are of 0.01 to 10 mL, and a feed may be one of them.
func TestEndsOfASyringe(t *testing.T) {
	for mark, ok := range map[units.Volume]bool{0.01: true, 0.009: false, 10: true, 10.5: false} {
		b := kittenAt(500, 0) // 100 kcal, 135 mL; a stomach of 20 mL
		b.Mark = mark
		if _, err := b.LeastFeeds(); (err == nil) != ok {
			t.Errorf("marks of %v: %v", mark, err)
		}
	}
	one := portion.Feeds{Liquid: portion.Liquid{Energy: 2}, Number: 1, Mark: 0.5, Count: 3}
	want := portion.Feed{Number: 1, Count: 3, Volume: 1.5, Energy: 3}
	if all := one.All(); len(all) != 1 || all[0] != want || one.Largest() != 1.5 {
		t.Errorf("one feed: %+v, largest %v", all, one.Largest())
	}
	if all := (portion.Feeds{Mark: 0.5, Count: 3}).All(); all != nil {
		t.Errorf("no feeds: %v", all)
	}
	if all := (portion.Feeds{Number: 24, Mark: 0.5, Count: 24}).All(); len(all) != 24 {
		t.Errorf("24 feeds: %v", all)
	}
	if all := (portion.Feeds{Number: 25, Mark: 0.5, Count: 25}).All(); all != nil {
		t.Errorf("25 feeds: %v", all)
	}
	two := portion.Feeds{Number: 2, Mark: 0.5, Count: 3}
	if all := two.All(); len(all) != 2 || all[0].Number != 1 || all[1].Number != 2 {
		t.Errorf("two feeds: %+v", all)
	}
}

// What is not known is not 0 mL, and 1 mL is known.
func TestShortfallOfLittle(t *testing.T) {
	for _, test := range []struct {
		f     portion.Feeds
		short units.Volume
		ok    bool
	}{
		{portion.Feeds{Goal: 1, Water: 0.25, Liquid: portion.Liquid{Water: 80}}, 0.75, true},
		{portion.Feeds{Goal: 1, Water: 0.25, Liquid: portion.Liquid{Water: 1}}, 0.75, true},
		{portion.Feeds{Water: 0.25, Liquid: portion.Liquid{Water: 80}}, 0, false},
		{portion.Feeds{Goal: 1, Water: 0.25}, 0, false},
	} {
		if short, ok := test.f.Shortfall(); short != test.short || ok != test.ok {
			t.Errorf("%+v: %v, %v", test.f, short, ok)
		}
	}
}

// A bottle is for the first eight weeks (ours), from the first day.
func TestAgesOfABottle(t *testing.T) {
	for age, ok := range map[energy.Age]bool{0: false, 1: true, 50: true, 56: true, 57: false} {
		b := kittenAt(300, 8)
		b.Need.Animal.Age = age
		if _, err := b.Plan(); (err == nil) != ok {
			t.Errorf("%d days: %v", age, err)
		}
	}
}

// How many feeds a bottle asks for. A kitten of 200 g holds 8 mL.
func TestEndsOfTheFeedsOfABottle(t *testing.T) {
	const stomach = " (4 mL for each 100 g)"
	for _, test := range []struct {
		name string
		do   func(*portion.Bottle)
		want string
	}{
		// 5 kcal at 0.74 kcal/mL are 6.76 mL, 7 mL in marks of half a millilitre.
		{"one is enough", func(b *portion.Bottle) { b.Need.Daily, b.Feeds = 5, 1 }, ""},
		{"one would be enough", func(b *portion.Bottle) { b.Need.Daily, b.Feeds = 5, 0 }, `portion: feeds "0": want 1 or more` + stomach},
		{"one is too few", func(b *portion.Bottle) { b.Feeds = 1 }, `portion: feeds "1": want 7 or more: 54 mL is too much for a stomach that takes 8 mL` + stomach},
		{"none, and a fault besides", func(b *portion.Bottle) { b.Liquid.Energy, b.Feeds = 9, 0 }, `portion: liquid.energy "9 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL (of the powder? give that of the made-up liquid); portion: feeds "0": want 1 to 24 a day`},
		{"less than none, and a fault besides", func(b *portion.Bottle) { b.Liquid.Energy, b.Feeds = 0.1, -1 }, `portion: liquid.energy "0.1 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL; portion: feeds "-1": want 1 to 24 a day`},
		// Half the body weight in millilitres, in 13 feeds of 8 mL.
		{"half the body", func(b *portion.Bottle) { b.Need.Daily, b.Liquid.Energy, b.Feeds = 100, 1, 13 }, ""},
		// 8 kcal at 0.8 kcal/mL are one mark of 10 mL, and more than the stomach takes.
		{"one mark", func(b *portion.Bottle) { b.Need.Daily, b.Liquid.Energy, b.Mark, b.Feeds = 8, 0.8, 10, 1 }, `portion: mark "10 mL": want a finer syringe, or a richer liquid: no number of feeds up to 24 divides 10 mL into feeds of at most 8 mL` + stomach},
		// 6 kcal at 1 kcal/mL are one mark of 6 mL.
		{"one mark in two", func(b *portion.Bottle) { b.Need.Daily, b.Liquid.Energy, b.Mark, b.Feeds = 6, 1, 6, 2 }, `portion: feeds "2": want at most 1 of a mark or more, or a finer syringe`},
		// 12 marks of half a millilitre.
		{"more feeds than marks", func(b *portion.Bottle) { b.Need.Daily, b.Liquid.Energy, b.Feeds = 6, 1, 20 }, `portion: feeds "20": want at most 12 of a mark or more, or a finer syringe`},
		// 40 kcal at 1 kcal/mL are 5 marks of 8 mL.
		{"a mark a feed", func(b *portion.Bottle) { b.Liquid.Energy, b.Mark, b.Feeds = 1, 8, 5 }, ""},
	} {
		b := kittenAt(200, 7)
		test.do(&b)
		text := ""
		if _, err := b.Plan(); err != nil {
			text = err.Error()
		}
		if text != test.want {
			t.Errorf("%s:\n%s\nwant\n%s", test.name, text, test.want)
		}
	}
	b := kittenAt(200, 0)
	b.Liquid.Energy = 9
	if n, err := b.LeastFeeds(); n != 0 || err == nil {
		t.Errorf("one fault: %d, %v", n, err)
	}
}

// A stomach that takes a whole number of marks but for the last bits takes them:
// up to a thousand-millionth of a mark (ours). 100 g take 4 mL. Below a gram the
// rules are the same: 0.04 mL of 0.4 mL are ten feeds.
func TestMarksThatFillTheStomachExactly(t *testing.T) {
	for _, test := range []struct {
		grams, daily float64
		mark         units.Volume
		want         int
	}{
		{100, 40, 1, 10},
		{100 - 25*0.5e-9, 40, 1, 10},
		{100 - 25*1.5e-9, 40, 1, 14}, // 40 mL by 3 mL
		// 7.5 g take 0.3 mL, which divided by 0.1 mL is 2.9999999999999996.
		{7.5, 3, 0.1, 10},
		{1, 0.4, 0.01, 10},
		{100, 49.2, 2.05, 24}, // as many as a day may have
	} {
		b := portion.Bottle{
			Need:   energy.Estimate{Animal: energy.Animal{Species: energy.Cat, Weight: units.Mass(test.grams), Age: 9}, Daily: units.Energy(test.daily)},
			Liquid: portion.Liquid{Energy: 1}, Mark: test.mark,
		}
		if n, err := b.LeastFeeds(); n != test.want || err != nil {
			t.Errorf("%v g, %v mL in marks of %v: %d, %v, want %d", test.grams, test.daily, test.mark, n, err, test.want)
		}
	}
}

// smallTube is a kitten of half a kilogram on 20 kcal, without a flush.
func smallTube(feeds int) portion.Tube {
	kitten := energy.Animal{Species: energy.Cat, Weight: 500, Age: 60, Circumstances: energy.TubeFed}
	return portion.Tube{
		Need:   must(energy.Prescribed{Animal: kitten, Daily: 20, By: "Dr Ysolde Crake"}),
		Liquid: portion.Liquid{Name: "slurry", Energy: 1, Water: 80}, Feeds: feeds,
	}
}

// What one feed may be: 15 mL/kg where the plan states nothing (ours), to a
// thousand-millionth of a mark. A refusal never asks for the number that was
// given.
func TestEndsOfATubeFeed(t *testing.T) {
	const above15 = " mL/kg a feed, above 15 mL/kg; needed: "
	const most = ", or the veterinarian's own limit, in mL for each kg: Tube{Most}"
	for _, test := range []struct {
		name string
		do   func(*portion.Tube)
		want string
	}{
		// 20 mL in 3 feeds are 7 mL, 14 mL/kg; in 2, 10 mL, 20 mL/kg, and 7.5 mL are
		// allowed.
		{"three", func(p *portion.Tube) {}, ""},
		{"two", func(p *portion.Tube) { p.Feeds = 2 }, `energy: feeds "2": 10 mL is 20.0` + above15 + "3 feeds or more" + most},
		{"to the last bits", func(p *portion.Tube) { p.Flush = 0.5 + 0.5*0.5e-9 }, ""},
		{"above the last bits", func(p *portion.Tube) { p.Flush = 0.5 + 0.5*1.5e-9 }, `energy: feeds "3": 7 mL with a flush of 0.5 mL is 15.0` + above15 + "4 feeds or more" + most},
		// 22.5 mL in feeds of 7.5 mL are three, to the last of it.
		{"just enough", func(p *portion.Tube) {
			p.Need, p.Feeds = must(energy.Prescribed{Animal: p.Need.Animal, Daily: 22.5, By: "Dr Ysolde Crake"}), 2
		}, `energy: feeds "2": 11.5 mL is 23.0` + above15 + "3 feeds or more" + most},
		{"a flush of half a millilitre", func(p *portion.Tube) { p.Flush, p.Most = 0.5, 10 }, `energy: feeds "3": 7 mL with a flush of 0.5 mL is 15.0 mL/kg a feed, above the 10 mL/kg of the plan; needed: 5 feeds or more, or a smaller flush, or a richer liquid`},
		{"a limit of less than 1 mL/kg", func(p *portion.Tube) { p.Most = 0.5 }, `energy: feeds "3": 7 mL is 14.0 mL/kg a feed, above the 0.5 mL/kg of the plan; needed: a richer liquid`},
		{"the largest limit", func(p *portion.Tube) { p.Feeds, p.Most = 1, 100 }, ""},
		{"above the largest limit", func(p *portion.Tube) { p.Most = 100.5 }, `portion: most "100.5 mL": want what the plan allows for one feed, in mL for each kg of body weight, or none`},
		{"one mark", func(p *portion.Tube) {
			p.Liquid.Energy, p.Mark, p.Feeds = 2, 10, 1
		}, `energy: feeds "1": 10 mL is 20.0` + above15 + "the veterinarian's own limit, in mL for each kg: Tube{Most}"},
		{"another fault", func(p *portion.Tube) { p.Liquid.Energy, p.Flush = 9, 8 }, `portion: liquid.energy "9 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL (of the powder? give that of the made-up liquid); portion: flush "8 mL": want 0 mL to 5 mL after a feed, 10 mL/kg`},
		// 50 mL hold 40 mL of water, and 22 flushes of 5 mL make 150 mL, 300 mL/kg.
		{"300 mL/kg of water", func(p *portion.Tube) {
			p.Need, p.Feeds, p.Flush = must(energy.Prescribed{Animal: p.Need.Animal, Daily: 50, By: "Dr Ysolde Crake"}), 22, 5
		}, ""},
		{"a flush of 10 mL/kg", func(p *portion.Tube) { p.Feeds, p.Flush = 10, 5 }, ""},
		{"a flush of 12 mL/kg", func(p *portion.Tube) { p.Feeds, p.Flush, p.Most = 10, 6, 20 }, `portion: flush "6 mL": want 0 mL to 5 mL after a feed, 10 mL/kg`},
		{"a goal of 10 mL/kg", func(p *portion.Tube) { p.Goal = 5 }, ""},
		{"a goal of 9.8 mL/kg", func(p *portion.Tube) { p.Goal = 4.9 }, `portion: goal "4.9 mL": want 5 mL to 150 mL a day, 10 to 300 mL/kg, or none`},
		{"a goal of 300 mL/kg", func(p *portion.Tube) { p.Goal = 150 }, ""},
		{"a goal of 302 mL/kg", func(p *portion.Tube) { p.Goal = 151 }, `portion: goal "151 mL": want 5 mL to 150 mL a day, 10 to 300 mL/kg, or none`},
	} {
		p := smallTube(3)
		test.do(&p)
		text := ""
		if _, err := p.Plan(); err != nil {
			text = err.Error()
		}
		if text != test.want {
			t.Errorf("%s:\n%s\nwant\n%s", test.name, text, test.want)
		}
	}
	// Without a weight a flush is held against that of one kilogram.
	p := smallTube(3)
	p.Need = must(energy.Prescribed{Daily: 20, By: "Dr Ysolde Crake"})
	p.Flush = 10.5
	const want = `portion: weight "": want the animal's weight, for what a feed may be; portion: flush "10.5 mL": want 0 mL to 10 mL after a feed, 10 mL/kg`
	if _, err := p.Plan(); err == nil || err.Error() != want {
		t.Errorf("no weight:\n%v\nwant\n%s", err, want)
	}
	p.Need.Animal.Weight = -500
	if _, err := p.Plan(); errors.Is(err, energy.ErrVeterinarian) || err == nil {
		t.Errorf("a weight below nothing: %v", err)
	}
}

// Most patients bear 5 to 20 mL/kg (Incorporating enteral nutrition into your
// practice, p. 3); from 10 on it is noted (ours).
func TestEndsOfTheCautionsOfATube(t *testing.T) {
	for _, test := range []struct {
		flush, most units.Volume
		want        string // of a feed of 5 mL, 10 mL/kg
	}{
		{0, 0, ""},
		{0.2, 0, "note: the largest feed with its flush is 10.4 mL/kg: give it slowly, and look for vomiting and drooling"},
		{4.8, 20, "note: the largest feed with its flush is 19.6 mL/kg: give it slowly, and look for vomiting and drooling"},
		{5, 20, "note: the largest feed with its flush is 20.0 mL/kg: give it slowly, and look for vomiting and drooling"},
		{5, 20.5, "refer: the plan allows 20.5 mL/kg a feed, above the published 20: ask whether that is meant"},
		{5, 20.2, "refer: the plan allows 20.2 mL/kg a feed, above the published 20: ask whether that is meant"},
	} {
		p := smallTube(4)
		p.Flush, p.Most = test.flush, test.most
		got := said(p.Cautions(), "the largest feed") + said(p.Cautions(), "the plan allows")
		if got != test.want {
			t.Errorf("a flush of %v, at most %v: %q, want %q", test.flush, test.most, got, test.want)
		}
	}
	// 20 mL hold 16 mL of water: short of 17 mL by 1, of 16.4 mL by nothing to the
	// millilitre.
	p := smallTube(4)
	for goal, want := range map[units.Volume]string{
		17: "warn: the water is 1 mL short of the day's 17 mL (16 mL in the feed and 0 mL in flushes): the veterinarian says how it is given",
		15: "warn: the water is 1 mL above the day's 15 mL (16 mL in the feed and 0 mL in flushes): ask the veterinarian",
		// Nothing is said of less than half a millilitre.
		16.4: "", 15.6: "", 16: "",
	} {
		p.Goal = goal
		if got := said(p.Cautions(), "the water is"); got != want {
			t.Errorf("a goal of %v: %q, want %q", goal, got, want)
		}
	}
	// The working has no line of what there is none of.
	p.Goal = 16
	text := p.Explain()
	if strings.Contains(text, "\nflush ") || !strings.Contains(text, "\nwater     20 mL × 80 % = 16 mL in the feed\ngoal      16 mL of water a day, 0 mL short\n") {
		t.Errorf("no flush:\n%s", text)
	}
	p.Goal, p.Liquid.Water = 0, 0
	if text := p.Explain(); strings.Contains(text, "\nwater ") || strings.Contains(text, "\ngoal ") {
		t.Errorf("no water is known:\n%s", text)
	}
	p.Liquid.Water = 80
	// And the working tells what the cautions don't.
	p.Goal, p.Flush = 18.5, 0.5
	text = p.Explain()
	for _, line := range []string{
		"\n          (5 mL + 0.5 mL) ÷ 0.5 kg = 11.0 mL/kg with the flush\nflush     4 × 0.5 mL = 2 mL of water\n",
		"\nwater     20 mL × 80 % = 16 mL in the feed, 18 mL in all\ngoal      18.5 mL of water a day, 0.5 mL short\n",
	} {
		if !strings.Contains(text, line) {
			t.Errorf("no %q in\n%s", line, text)
		}
	}
}
