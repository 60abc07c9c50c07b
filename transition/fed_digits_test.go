package transition_test

import (
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

func fedNow(items ...diet.Item) transition.Plan {
	return transition.Plan{
		From: items, To: diet.Only(slimDry),
		Steps: transition.FourStages, Basis: transition.ByAmountFed, Meals: 2, Scale: units.Milligram,
	}
}

// A tenth of a gram of a food that nobody knows is what is left of 1000 kcal by
// 249.9 g at 4000 kcal/kg: 0.4 kcal. On day 3 half of both is given.
func TestPinchOfAnUnknownFood(t *testing.T) {
	p := fedNow(
		diet.Item{Food: noLabel, Amount: diet.Fixed(0.1 * units.Gram)},
		diet.Item{Food: asFed("old", 4000), Amount: diet.Fixed(249.9 * units.Gram)},
	)
	d := mustDays(t, p, prescribed(1000))[2]
	if a, b := d.Mass(noLabel.Name).Grams(), d.Mass("old").Grams(); math.Abs(a-0.05) > 0.0005 || math.Abs(b-124.95) > 0.0015 {
		t.Errorf("%v g + %v g", a, b)
	}
}

// Nothing is no amount that is fed, and of much too much it is said what it would
// have to hold.
func TestAmountsThatNobodyFeeds(t *testing.T) {
	const enough = `: want the grams fed now, all of the day: for 1068.0 kcal a day they would have to hold `
	for _, tt := range []struct {
		grams units.Mass
		want  string
	}{
		{0, `diet: from: menu[0].amount "0 g": want above 0 g and at most 1e9`},
		{20000, `transition: from "20 kg of loose kibble"` + enough + `53 kcal/kg`},
		{units.Mass(math.Inf(1)), `diet: from: menu[0].amount "+Inf g": want above 0 g and at most 1e9`},
	} {
		if _, err := fedNow(diet.Item{Food: noLabel, Amount: diet.Fixed(tt.grams)}).Days(oakum()); err == nil || err.Error() != tt.want {
			t.Errorf("got  %v\nwant %s", err, tt.want)
		}
	}
	// What is known may hold the whole day: nothing is left then.
	p := fedNow(diet.Item{Food: noLabel, Amount: diet.Fixed(30)}, diet.Item{Food: houseDry, Amount: diet.Fixed(300)})
	if _, err := p.Days(oakum()); err == nil || err.Error() != `transition: from "30 g of loose kibble, 300 g of Tarnwick House Dog Dry"`+enough+`0 kcal/kg` {
		t.Errorf("%v", err)
	}
	// Treats alone are no food.
	p = fedNow(diet.Item{Food: biscuit, Amount: diet.Count(1, "biscuit"), Treat: true})
	if _, err := p.Days(oakum()); err == nil || err.Error() != `diet: from: menu "fixed amounts only": want a rest, or shares of 100 %, for what they leave of the day` {
		t.Errorf("%v", err)
	}
}
