package portion_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
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
	if l.Name != slurry.Name || math.Abs(float64(l.Energy-1)) > 1e-12 || math.Abs(float64(l.Water-slurry.Water)) > 1e-9 {
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
