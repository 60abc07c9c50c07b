package portion_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// slurry is a can of 177 kcal and 150 g at 78 % moisture, taken as 145 mL, with
// 32 mL of water: 177 mL, 1.00 kcal/mL, 117 + 32 = 149 mL of water in it.
var slurry = portion.Liquid{Name: "Ostlehouse Convalescent slurry", Energy: 1, Water: 149.0 / 177 * 100}

// tubeDay is Mudge, 4.2 kg, on a day of the ladder of thirds.
func tubeDay(day, feeds int) portion.Tube {
	cat := energy.Animal{Species: energy.Cat, Weight: 4.2 * units.Kilogram, Condition: energy.BCS9(4), DaysUnfed: 3, Circumstances: energy.TubeFed}
	return portion.Tube{
		Need:   must(energy.Refeeding{Animal: cat, Ladder: energy.ThreeDayLadder(), Day: day, By: "Dr Ysolde Crake"}),
		Liquid: slurry, Feeds: feeds, Flush: 10 * units.Millilitre, Goal: 60 * 4.2 * units.Millilitre,
	}
}

// The table of the demo ward, computed by hand: 70 × 4.2^0.75 = 205.4 kcal.
func TestTubeDaysOfTheDemoWard(t *testing.T) {
	for _, day := range []struct {
		day, feeds                    int
		kcal, each, perKilogram       string
		inFeed, total, short, largest string
	}{
		{1, 6, "68.5", "11.4", "2.7", "57.6", "117.6", "134", "11.5 mL"},
		{2, 6, "136.9", "22.8", "5.4", "115.3", "175.3", "77", "23 mL"},
		{3, 5, "205.4", "41.1", "9.8", "172.9", "222.9", "29", "41.5 mL"},
	} {
		plan := tubeDay(day.day, day.feeds)
		f, err := plan.Plan()
		if err != nil {
			t.Fatal(err)
		}
		same := func(what, got, want string) {
			t.Helper()
			if got != want {
				t.Errorf("day %d: %s %s, want %s", day.day, what, got, want)
			}
		}
		one := func(x float64) string { return fmt.Sprintf("%.1f", x) }
		each := f.Exact.Millilitres() / float64(f.Number)
		same("kcal", one(plan.Need.Daily.Kilocalories()), day.kcal)
		same("mL", one(f.Exact.Millilitres()), day.kcal)
		same("mL a feed", one(each), day.each)
		same("mL/kg a feed", one(each/4.2), day.perKilogram)
		same("largest feed", f.Largest().String(), day.largest)
		// The table has unrounded millilitres; half a mark of water lies between.
		exact := f.Exact.Millilitres() * f.Liquid.Water.Fraction()
		same("water in the feed", one(exact), day.inFeed)
		same("water", one(exact+float64(f.Number)*10), day.total)
		if math.Abs(f.FeedWater().Millilitres()-exact) > 0.25 {
			t.Errorf("day %d: water in the weighed feed %v, exact %v", day.day, f.FeedWater(), exact)
		}
		short, ok := f.Shortfall()
		same("shortfall", fmt.Sprintf("%.0f", short.Millilitres()), day.short)
		if !ok {
			t.Errorf("day %d: no shortfall", day.day)
		}
	}
}

// The same slurry as a mix of the can and the water.
func TestLiquidOfAMix(t *testing.T) {
	can := diet.Food{
		Name: "Ostlehouse Convalescent Wet", Form: diet.Wet, Analysis: diet.Analysis{Moisture: 78},
		Label: diet.Label{Energy: 1180, Serving: diet.Serving{Name: "can", Energy: 177, Mass: 150}},
	}
	f, err := diet.Mix{Name: slurry.Name, Parts: []diet.Part{{Food: can, Amount: diet.Count(1, "can")}}, Water: 32, Made: 177}.Food()
	if err != nil {
		t.Fatal(err)
	}
	l, err := portion.LiquidFood(f)
	if err != nil {
		t.Fatal(err)
	}
	if l.Name != slurry.Name || math.Abs(float64(l.Energy-1)) > 1e-12 || math.Abs(float64(l.Water-slurry.Water)) > 1e-9 || l.Food != f {
		t.Errorf("%+v, want %+v", l, slurry)
	}
}

// The litter on the sixth day: 22 kcal/100 g, 1.02 kcal/mL, six feeds.
func TestBottlesOfTheDemoLitter(t *testing.T) {
	for _, k := range []struct {
		name             string
		grams            float64
		day, each, holds string
	}{
		{"Pim", 284, "61.3", "10.2", "11.4"},
		{"Dab", 265, "57.2", "9.5", "10.6"},
		{"Fig", 316, "68.2", "11.4", "12.6"},
		{"Moth", 199, "42.9", "7.2", "8.0"},
	} {
		kitten := energy.Animal{Species: energy.Cat, Weight: units.Mass(k.grams), Age: 14}
		need := must(energy.Prescribed{Animal: kitten, Daily: units.Energy(0.22 * k.grams), By: "the demo"})
		b := portion.Bottle{Need: need, Liquid: portion.Liquid{Energy: 1.02}, Feeds: 6}
		f, err := b.Plan()
		if err != nil {
			t.Fatalf("%s: %v", k.name, err)
		}
		got := [...]string{
			fmt.Sprintf("%.1f", f.Exact.Millilitres()), fmt.Sprintf("%.1f", f.Exact.Millilitres()/6),
			fmt.Sprintf("%.1f", energy.StomachCapacity(kitten.Weight).Millilitres()),
		}
		if want := [...]string{k.day, k.each, k.holds}; got != want {
			t.Errorf("%s: %v, want %v", k.name, got, want)
		}
	}
}

func TestTubeNeedsAVeterinariansPlan(t *testing.T) {
	p := tubeDay(3, 5)
	p.Need = must(energy.Adult{Animal: energy.Animal{Species: energy.Cat, Weight: 4200, Condition: energy.BCS9(5)}, Status: energy.Neutered})
	f, err := p.Plan()
	const want = `energy: need "factor_on_rer": no tube feed is computed from an equation; needed: a veterinarian's ladder, or kcal a day, with the name: Refeeding{Ladder, By} or Prescribed{Daily, By}`
	if !errors.Is(err, energy.ErrVeterinarian) || err.Error() != want || f != (portion.Feeds{}) {
		t.Errorf("%+v, error %q\nwant %q", f, err, want)
	}
	// One put together by hand is none either.
	p.Need = energy.Estimate{Stage: energy.Prescribed{Daily: 200}, Animal: p.Need.Animal, Daily: 200}
	if _, err := p.Plan(); err == nil {
		t.Error("a need with no name was taken")
	}
	p.Need = tubeDay(1, 6).Need
	p.Need.Daily = 205
	const hand = `portion: need "205 kcal": want the estimate of its own stage, 68.4` // the figure goes on
	if _, err := p.Plan(); err == nil || err.Error()[:len(hand)] != hand {
		t.Errorf("a changed need: %v", err)
	}
}

// kittenAt is the bottle of a kitten of so many grams on 0.74 kcal/mL.
func kittenAt(grams float64, feeds int) portion.Bottle {
	need := must(energy.Prescribed{Animal: energy.Animal{Species: energy.Cat, Weight: units.Mass(grams), Age: 14}, Daily: units.Energy(0.2 * grams), By: "a veterinarian"})
	return portion.Bottle{Need: need, Liquid: portion.Liquid{Energy: 0.74}, Feeds: feeds}
}

// At 20 kcal/100 g and 0.74 kcal/mL a day is 6.76 times what a stomach holds, at any
// weight: 7 feeds, where the syringe is fine enough.
func TestFewestFeedsOfAStomach(t *testing.T) {
	for _, test := range []struct {
		grams float64
		mark  units.Volume
		want  int
	}{
		{125, 0.5, 7},  // 34 mL in marks, 5 mL a feed
		{200, 0.5, 7},  // 54 mL, 8 mL
		{500, 1, 7},    // 135 mL, 20 mL
		{57, 0.1, 7},   // 15.4 mL, 2.2 mL
		{57, 0.5, 8},   // 15.5 mL, 2.0 mL: the marks cost a feed
		{57, 1, 8},     // 15 mL, 2 mL
		{100, 2, 7},    // 28 mL of 2, 4 mL
		{100, 0.01, 7}, // 27.03 mL, 4 mL
	} {
		b := kittenAt(test.grams, 0)
		b.Mark = test.mark
		if n, err := b.LeastFeeds(); n != test.want || err != nil {
			t.Errorf("%v g in marks of %v: %d, %v; want %d", test.grams, test.mark, n, err, test.want)
		}
		b.Feeds = test.want
		if _, err := b.Plan(); err != nil {
			t.Errorf("%v g: %d feeds: %v", test.grams, b.Feeds, err)
		}
		b.Feeds--
		if f, err := b.Plan(); err == nil || f != (portion.Feeds{}) {
			t.Errorf("%v g: %d feeds: %+v", test.grams, b.Feeds, f)
		}
	}
}

func TestBottlesRefused(t *testing.T) {
	const stomach = " (4 mL for each 100 g)"
	for _, test := range []struct {
		name string
		do   func(*portion.Bottle)
		want string
	}{
		{"too few feeds", func(b *portion.Bottle) { b.Feeds = 4 }, `portion: feeds "4": want 7 or more: 13.5 mL is too much for a stomach that takes 8 mL` + stomach},
		{"no feeds", func(b *portion.Bottle) { b.Feeds = 0 }, `portion: feeds "0": want 7 or more` + stomach},
		{"too many feeds", func(b *portion.Bottle) { b.Feeds = 25 }, `portion: feeds "25": want 1 to 24 a day`},
		{"a coarse syringe", func(b *portion.Bottle) { b.Mark = 10 }, `portion: mark "10 mL": want a finer syringe, or a richer liquid: no number of feeds up to 24 divides 50 mL into feeds of at most 8 mL` + stomach},
		{"no mark", func(b *portion.Bottle) { b.Mark = 0.001 }, `portion: mark "0.001 mL": want 0.01 mL to 10 mL, as in 0.1 mL, 0.5 mL or 1 mL`},
		{"NaN mark", func(b *portion.Bottle) { b.Mark = units.Volume(math.NaN()) }, `portion: mark "not a finite number": want 0.01 mL to 10 mL, as in 0.1 mL, 0.5 mL or 1 mL`},
		{"the powder", func(b *portion.Bottle) { b.Liquid.Energy = 5.1 }, `portion: liquid.energy "5.1 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL (of the powder? give that of the made-up liquid)`},
		{"no energy", func(b *portion.Bottle) { b.Liquid.Energy = 0 }, `portion: liquid.energy "0 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL`},
		{"a fraction", func(b *portion.Bottle) { b.Liquid.Water = 0.84 }, `portion: liquid.water "0.84 %": want 30 % to 100 % of the volume, or none if not known (a fraction for a percentage?)`},
		{"water of a powder", func(b *portion.Bottle) { b.Liquid.Water = 1.9 }, `portion: liquid.water "1.9 %": want 30 % to 100 % of the volume, or none if not known (it is fed made up with water: Mix)`},
		{"no need, no age, no energy", func(b *portion.Bottle) { *b = portion.Bottle{Feeds: 7} }, `portion: need "0 kcal": want an estimate of more than 0 kcal a day; portion: weight "": want the animal's weight, for what a feed may be; portion: liquid.energy "0 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL; portion: age "": want 1 d to 8 wk for a bottle (others are not fed by bottle or syringe; a tube needs a veterinarian's plan: Tube)`},
		{"grown", func(b *portion.Bottle) { b.Need.Animal.Age = 57 }, `portion: age "57 d": want 1 d to 8 wk for a bottle (others are not fed by bottle or syringe; a tube needs a veterinarian's plan: Tube)`},
		{"half the body", func(b *portion.Bottle) { b.Need.Daily = 75 }, `portion: volume "101.35 mL a day": want at most 100 mL, half the body weight in mL (is the energy that of the made-up liquid?)`},
		{"next to nothing", func(b *portion.Bottle) { b.Need.Daily = 0.1 }, `portion: mark "0.5 mL": want a finer syringe for 0.14 mL a day`},
		{"empty feeds", func(b *portion.Bottle) { b.Need.Daily, b.Feeds = 2, 6 }, `portion: feeds "6": want at most 5 of a mark or more, or a finer syringe`},
	} {
		b := kittenAt(200, 7)
		test.do(&b)
		f, err := b.Plan()
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != test.want || f != (portion.Feeds{}) {
			t.Errorf("%s: %+v, error\n%v\nwant\n%s", test.name, f, err, test.want)
		}
		if b.Cautions() != nil || b.Explain() != "" {
			t.Errorf("%s: cautions %v, working %q", test.name, b.Cautions(), b.Explain())
		}
	}
	b := kittenAt(200, 7)
	b.Mark = 10
	if n, err := b.LeastFeeds(); n != 0 || err == nil {
		t.Errorf("a coarse syringe: %d, %v", n, err)
	}
	b.Mark = -1
	if n, err := b.LeastFeeds(); n != 0 || err == nil {
		t.Errorf("no syringe: %d, %v", n, err)
	}
}

func TestTubesRefused(t *testing.T) {
	for _, test := range []struct {
		name string
		do   func(*portion.Tube)
		vet  bool
		want string
	}{
		{
			"a large feed", func(p *portion.Tube) { p.Feeds = 3 }, true,
			`energy: feeds "3": 68.5 mL with a flush of 10 mL is 18.7 mL/kg a feed, above 15 mL/kg; needed: 4 feeds or more, or the veterinarian's own limit, in mL for each kg: Tube{Most}`,
		},
		{
			"above the plan's own limit", func(p *portion.Tube) { p.Most = 8 }, true,
			`energy: feeds "5": 41.5 mL with a flush of 10 mL is 12.3 mL/kg a feed, above the 8 mL/kg of the plan; needed: 9 feeds or more, or a smaller flush, or a richer liquid`,
		},
		{
			"no number is enough", func(p *portion.Tube) { p.Most = 1 }, true,
			`energy: feeds "5": 41.5 mL with a flush of 10 mL is 12.3 mL/kg a feed, above the 1 mL/kg of the plan; needed: a smaller flush, or a richer liquid`,
		},
		{
			"above the plan's own limit without a flush", func(p *portion.Tube) { p.Most, p.Flush = 8, 0 }, true,
			`energy: feeds "5": 41.5 mL is 9.9 mL/kg a feed, above the 8 mL/kg of the plan; needed: 7 feeds or more, or a richer liquid`,
		},
		// 308 × 149 / 177 + 24 × 42 = 259.28 + 1008 mL of water, 302 mL/kg.
		{"drowned in flushes", func(p *portion.Tube) {
			p.Need = must(energy.Prescribed{Animal: p.Need.Animal, Daily: 308, By: "Dr Ysolde Crake"})
			p.Feeds, p.Flush, p.Goal, p.Most = 24, 42, 0, 15
		}, false, `portion: water "1267.28 mL a day": want at most 1260 mL in the feeds and the flushes, 300 mL/kg (fewer or smaller flushes, or a richer liquid)`},
		{"drowned, its water not known", func(p *portion.Tube) {
			p.Need = must(energy.Prescribed{Animal: p.Need.Animal, Daily: 308, By: "Dr Ysolde Crake"})
			p.Feeds, p.Flush, p.Goal, p.Liquid.Water = 24, 42, 0, 0
		}, false, `portion: water "1316 mL a day": want at most 1260 mL in the feeds and the flushes, 300 mL/kg (fewer or smaller flushes, or a richer liquid)`},
		{"no feeds", func(p *portion.Tube) { p.Feeds = 0 }, false, `portion: feeds "0": want 1 to 24 a day`},
		{"a limit that is none", func(p *portion.Tube) { p.Most = -1 }, false, `portion: most "-1 mL": want what the plan allows for one feed, in mL for each kg of body weight, or none`},
		{"a large flush", func(p *portion.Tube) { p.Feeds, p.Flush, p.Most = 10, 43, 20 }, false, `portion: flush "43 mL": want 0 mL to 42 mL after a feed, 10 mL/kg`},
		{"NaN flush", func(p *portion.Tube) { p.Flush = units.Volume(math.NaN()) }, false, `portion: flush "not a finite number": want 0 mL to 42 mL after a feed, 10 mL/kg`},
		{"a goal in mL/kg", func(p *portion.Tube) { p.Goal = 30 }, false, `portion: goal "30 mL": want 42 mL to 1260 mL a day, 10 to 300 mL/kg, or none`},
		{"a goal and no water", func(p *portion.Tube) { p.Liquid.Water = 0 }, false, `portion: liquid.water "": want the water in the liquid, mL in 100 mL, to hold it against the goal`},
		{"no weight", func(p *portion.Tube) {
			p.Need = must(energy.Prescribed{Daily: 200, By: "Dr Ysolde Crake"})
			p.Goal, p.Flush = 0, 0
		}, false, `portion: weight "": want the animal's weight, for what a feed may be`},
	} {
		p := tubeDay(3, 5)
		test.do(&p)
		f, err := p.Plan()
		if err == nil || err.Error() != test.want || errors.Is(err, energy.ErrVeterinarian) != test.vet || f != (portion.Feeds{}) {
			t.Errorf("%s: %+v, error\n%v\nwant\n%s", test.name, f, err, test.want)
		}
		if p.Cautions() != nil || p.Explain() != "" {
			t.Errorf("%s: cautions %v, working %q", test.name, p.Cautions(), p.Explain())
		}
	}
}

func TestTubeCautions(t *testing.T) {
	said := func(p portion.Tube, part string) string {
		t.Helper()
		for _, c := range p.Cautions() {
			if strings.Contains(c.Text, part) {
				return c.String()
			}
		}
		return ""
	}
	p := tubeDay(3, 5)
	// (41.5 + 10) / 4.2
	if got, want := said(p, "largest feed"), "note: the largest feed with its flush is 12.3 mL/kg: give it slowly, and look for vomiting and drooling [ours, not published]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	p.Flush = 0 // 41.5 / 4.2 = 9.9
	if got := said(p, "largest feed"); got != "" {
		t.Errorf("9.9 mL/kg: %s", got)
	}
	p.Flush = 11
	if got, want := said(p, "a flush of"), "warn: a flush of 11 mL is more than the published 3 to 10 mL: is it that of one feed? [Veterinary Medicine, Incorporating enteral nutrition into your practice, p. 5: 3 to 10 mL four times a day, also when the tube isn't used]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	p.Flush = 10
	if got := said(p, "a flush of"); got != "" {
		t.Errorf("10 mL: %s", got)
	}
	if got, want := said(p, "water is"), "warn: the water is 29 mL short of the day's 252 mL (173 mL in the feed and 50 mL in flushes): the veterinarian says how it is given [ours, not published]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	p.Goal = 200 * units.Millilitre
	if got, want := said(p, "water is"), "warn: the water is 23 mL above the day's 200 mL (173 mL in the feed and 50 mL in flushes): ask the veterinarian [ours, not published]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	p.Goal = 223 * units.Millilitre
	if got := said(p, "water is"); got != "" {
		t.Errorf("to the millilitre: %s", got)
	}
	p.Goal, p.Flush = 0, 0
	if got, want := said(p, "flush"), "warn: no flush is planned: a tube is flushed with water after each feed, 3 to 10 mL [Veterinary Medicine, Incorporating enteral nutrition into your practice, p. 5: 3 to 10 mL four times a day, also when the tube isn't used]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	p.Feeds = 4
	if got, want := said(p, "largest feed"), "note: the largest feed is 12.3 mL/kg: give it slowly, and look for vomiting and drooling [ours, not published]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	p.Feeds, p.Most = 2, 25
	if got, want := said(p, "largest feed"), "refer: the largest feed is 24.5 mL/kg, above the published 20: as the plan states [Veterinary Medicine, Incorporating enteral nutrition into your practice, p. 3: most patients bear 5 to 20 mL/kg a feed]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	p.Feeds, p.Most = 5, 21
	if got, want := said(p, "a feed, above"), "refer: the plan allows 21 mL/kg a feed, above the published 20: ask whether that is meant [Veterinary Medicine, Incorporating enteral nutrition into your practice, p. 3: most patients bear 5 to 20 mL/kg a feed]"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	// What is to be said of the animal comes with it.
	if len(p.Cautions()) <= len(p.Need.Cautions()) {
		t.Error("the cautions of the need are not there")
	}
}

func TestFeedsOfTheZeroValue(t *testing.T) {
	var f portion.Feeds
	if f.All() != nil || f.Largest() != 0 {
		t.Errorf("%v, %v", f.All(), f.Largest())
	}
	if short, ok := f.Shortfall(); ok || short != 0 {
		t.Errorf("%v", short)
	}
	if f := (portion.Feeds{Number: math.MaxInt, Count: 3, Mark: 1}); f.All() != nil {
		t.Error("more feeds than a day has")
	}
	if f := (portion.Feeds{Number: 2, Count: 3}); f.All() != nil {
		t.Errorf("no mark: %v", f.All())
	}
}

func TestFeedProperties(t *testing.T) {
	proptest.Check(t, "the feeds add up to the day, the day is within half a mark, no feed is too large", prop.ForAll(func(grams, perGram, density float64, mark units.Volume, more int) string {
		b := kittenAt(grams, 0)
		b.Need.Daily = units.Energy(grams * perGram)
		b.Liquid.Energy, b.Mark = units.EnergyPerVolume(density), mark
		least, err := b.LeastFeeds()
		if err != nil {
			return "" // a syringe too coarse
		}
		if b.Feeds = least + more; b.Feeds > portion.MaxMeals {
			return ""
		}
		f, err := b.Plan()
		var field *units.FieldError
		if errors.As(err, &field) && strings.Contains(field.Accepted, "of a mark or more") {
			return ""
		}
		if err != nil {
			return err.Error()
		}
		var count int64
		for _, x := range f.All() {
			count += x.Count
			exact := float64(f.Count) / float64(f.Number)
			if math.Abs(float64(x.Count)-exact) >= 1 || x.Count < 1 {
				return fmt.Sprintf("feed %d of %v: %d marks, exactly %v", x.Number, f, x.Count, exact)
			}
			if x.Volume > energy.StomachCapacity(b.Need.Animal.Weight)*(1+1e-9) {
				return fmt.Sprintf("%v is too much for %v g", x.Volume, grams)
			}
		}
		switch off := math.Abs(float64(f.Volume - f.Exact)); {
		case count != f.Count:
			return fmt.Sprintf("%d of %d marks", count, f.Count)
		case off > float64(mark)/2*(1+1e-9):
			return fmt.Sprintf("%v of %v", f.Volume, f.Exact)
		case math.Abs(float64(f.Energy)-float64(f.Volume)*density) > 1e-9:
			return f.Energy.String()
		}
		return ""
	}, proptest.Quantity[float64](60, 900), gen.Float64Range(0.13, 0.26), gen.Float64Range(0.7, 1.4),
		gen.OneConstOf(units.Volume(0.1), units.Volume(0.2), units.Volume(0.5), units.Volume(1)), gen.IntRange(0, 4)))
}

func TestFeedPlansThroughJSON(t *testing.T) {
	bottle, tube := kittenAt(200, 7), tubeDay(2, 6)
	roundTrip := func(in, out any) {
		t.Helper()
		b, err := json.Marshal(in)
		if err == nil {
			err = json.Unmarshal(b, out)
		}
		if err != nil {
			t.Errorf("%s: %v", b, err)
		}
	}
	var b portion.Bottle
	var p portion.Tube
	roundTrip(bottle, &b)
	roundTrip(tube, &p)
	if b != bottle || p != tube {
		t.Errorf("%+v\n%+v", b, p)
	}
	for in, want := range map[string]string{
		`{"feeds":"7"}`:               `portion: bottle.feeds "string": want a whole number`,
		`{"mark":0.5}`:                `portion: bottle.mark "number": want text with a unit, as in "100 mL"`,
		`{"syringe":"0.5 mL"}`:        `portion: bottle: json: unknown field "syringe"`,
		`{"liquid":{"kcal":1}}`:       `portion: liquid: json: unknown field "kcal"`,
		`{"liquid":{"energy":"1.0"}}`: `units: energy per volume "1.0": no unit`,
	} {
		if err := json.Unmarshal([]byte(in), &b); err == nil || !strings.Contains(err.Error(), want) || b != bottle {
			t.Errorf("%s: %v; want %s", in, err, want)
		}
	}
	for in, want := range map[string]string{
		`{"most":20}`:                    `portion: tube.most "number": want text with a unit, as in "100 mL"`,
		`{"flush":"10 mL","flush":"20"}`: `portion: tube: `,
		`{"by":"me"}`:                    `portion: tube: json: unknown field "by"`,
	} {
		if err := json.Unmarshal([]byte(in), &p); err == nil || !strings.Contains(err.Error(), want) || p != tube {
			t.Errorf("%s: %v; want %s", in, err, want)
		}
	}
	for _, v := range []any{&b, &p} {
		if err := json.Unmarshal([]byte("null"), v); err != nil {
			t.Errorf("null: %v", err)
		}
	}
	if b != bottle || p != tube {
		t.Error("null changed the receiver")
	}
}

// A tablespoon is 14.787 mL: 14 g of powder with 4 % of water hold 0.56 g, 3.79 %
// of it. Of a can in a cup of 236.6 mL, 240 g at 78 %, 79.1 % is water.
func TestFoodThatIsNoLiquid(t *testing.T) {
	const mix = " (it is fed made up with water: Mix)"
	of := func(form diet.Form, moisture units.Percent, unit string, grams units.Mass) diet.Food {
		return diet.Food{
			Name: "food", Form: form, Analysis: diet.Analysis{Moisture: moisture},
			Label: diet.Label{Energy: 1200, Serving: diet.Serving{Name: unit, Mass: grams}},
		}
	}
	thin := func(grams units.Mass) diet.Food {
		f := of(diet.Liquid, 92, "100 mL", grams)
		f.Label.Energy = 500
		return f
	}
	oil := of(0, 0, "mL", 1)
	oil.Analysis.None = diet.Moisture
	for _, test := range []struct {
		name string
		food diet.Food
		want string
	}{
		{"powder", of(diet.Powder, 4, "tbsp", 7), `portion: form "powder": want a liquid, or wet food thinned with water` + mix},
		{"kibble", of(diet.Dry, 9, "US cup", 100), `portion: form "dry": want a liquid, or wet food thinned with water` + mix},
		{"soft", of(diet.SemiMoist, 25, "US cup", 120), `portion: form "semi_moist": want a liquid, or wet food thinned with water` + mix},
		{"oil", of(diet.FatOrOil, 0, "tbsp", 13.6), `portion: form "fat_or_oil": want a liquid, or wet food thinned with water` + mix},
		{"powder of no form", of(0, 4, "tbsp", 14), `portion: water of food "3.79 % of the volume": want 30 % or more in a liquid` + mix},
		{"said to be without water", oil, `portion: water of food "0 % of the volume": want 30 % or more in a liquid` + mix},
		{"more water than room", thin(112), `portion: water of food "103.04 % of the volume": want at most 100 % (measure again in a jug what its grams fill)`},
	} {
		l, err := portion.LiquidFood(test.food)
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != test.want || l != (portion.Liquid{}) {
			t.Errorf("%s: %+v, error\n%v\nwant\n%s", test.name, l, err, test.want)
		}
	}
	if l, err := portion.LiquidFood(of(diet.Wet, 78, "US cup", 240)); err != nil || math.Abs(float64(l.Water)-79.1) > 0.05 {
		t.Errorf("a can: %v, %v", l.Water, err)
	}
	// 92 % in 1.1 g/mL is 101.2 %: the reading of the jug.
	if l, err := portion.LiquidFood(thin(110)); err != nil || l.Water != 100 {
		t.Errorf("broth: %v, %v", l.Water, err)
	}
	if l, err := portion.LiquidFood(kibble); err == nil || l != (portion.Liquid{}) {
		t.Errorf("no volume: %+v, %v", l, err)
	}
	if l, err := portion.LiquidFood(diet.Food{Name: "a can without a label"}); err == nil || l != (portion.Liquid{}) {
		t.Errorf("%+v, %v", l, err)
	}
}

// milk is 153 kcal in 150 mL and 155 g, for kittens.
func milk() diet.Food {
	return diet.Food{
		Name: "Finnimore Orphan Milk", Form: diet.Liquid, Role: diet.Complete,
		For:      diet.Purpose{Species: diet.Cats, Stages: diet.Growth},
		Label:    diet.Label{Serving: diet.Serving{Name: "150 mL", Energy: 153, Mass: 155}},
		Analysis: diet.Analysis{Moisture: 81.4},
	}
}

func TestWhatTheLiquidIsFor(t *testing.T) {
	dogs := milk()
	dogs.Name, dogs.Role, dogs.For = "Pup milk", diet.Complementary, diet.Purpose{Species: diet.Dogs, Stages: diet.Maintenance}
	for _, test := range []struct {
		food diet.Food
		want []string // the beginnings of what is said of it
	}{
		{milk(), nil},
		{dogs, []string{
			"refer: Pup milk is food for dogs, not for cats", "refer: Pup milk is a complementary food",
			"warn: Pup milk is food for maintenance, not for a growing animal",
		}},
	} {
		l, err := portion.LiquidFood(test.food)
		if err != nil {
			t.Fatal(err)
		}
		bottle, tube := kittenAt(300, 8), tubeDay(3, 5)
		bottle.Liquid, tube.Liquid = l, l
		tube.Need = must(energy.Prescribed{Animal: bottle.Need.Animal, Daily: 60, By: "Dr Ysolde Crake"})
		tube.Feeds, tube.Flush, tube.Goal, tube.Most = 24, 0, 0, 0
		for what, c := range map[string][]advice.Caution{"bottle": bottle.Cautions(), "tube": tube.Cautions()} {
			if len(c) == 0 {
				t.Fatalf("%s of %s: no plan", what, test.food.Name)
			}
			var got []string
			for _, x := range c {
				if strings.Contains(x.Text, test.food.Name) {
					got = append(got, x.String())
				}
			}
			if len(got) != len(test.want) {
				t.Fatalf("%s of %s: %q", what, test.food.Name, got)
			}
			for i, want := range test.want {
				if !strings.HasPrefix(got[i], want) {
					t.Errorf("%s of %s: %s, want %s", what, test.food.Name, got[i], want)
				}
			}
		}
		// It is there when the plan is read back.
		text, err := json.Marshal(bottle)
		if err != nil {
			t.Fatal(err)
		}
		var back portion.Bottle
		if err := json.Unmarshal(text, &back); err != nil || back != bottle {
			t.Errorf("read back: %+v, %v", back, err)
		}
		if _, err := back.Plan(); err != nil {
			t.Error(err)
		}
	}
}

func TestLiquidThatIsNotItsFood(t *testing.T) {
	l, err := portion.LiquidFood(milk())
	if err != nil {
		t.Fatal(err)
	}
	b := kittenAt(300, 8)
	b.Liquid = l
	b.Liquid.Energy, b.Liquid.Water = 1.2, 70
	// 153 / 150 kcal/mL, and 155 × 0.814 / 150 of the volume.
	const want = `portion: liquid.energy "1.2 kcal/mL": want that of its food, 1.02 kcal/mL (leave Food out for a liquid of other figures); ` +
		`portion: liquid.water "70 %": want that of its food, 84.11 % (leave Food out for a liquid of other figures)`
	if _, err := b.Plan(); err == nil || err.Error() != want {
		t.Errorf("%v\nwant %s", err, want)
	}
	b.Liquid = l
	b.Liquid.Food.Form = diet.Powder
	if _, err := b.Plan(); err == nil || !strings.HasPrefix(err.Error(), `portion: form "powder": `) {
		t.Errorf("of powder: %v", err)
	}
}
