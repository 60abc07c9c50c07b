package transition_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// Every line of the working can be redone by hand: 25 % of 1068 is 267, divided by
// 2.98 it is 89.60 g, 90 of which hold 268.2 kcal; 799.8 remain.
func TestExplainShowsTheSums(t *testing.T) {
	text, err := toSlim().Explain(oakum())
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"change    from Tarnwick House Dog Dry to Ostlehouse Slim Dog Dry\n" +
			"steps     four_stages, all new on day 7; source: University of Missouri Veterinary Health Center, nutrition FAQ, 25 % on days 1 and 2, 50, 75, all from day 7\n" +
			"shares    of the day's energy, which stays the same\n" +
			"given     dog, 18 kg, condition 5/9\n",
		"\n\ndays 1 to 2: 25 % new\n",
		"share     25 % × (1068.00 kcal) = 267.00 kcal\n" +
			"grams     267.00 kcal ÷ 2980 kcal/kg × 1000 = 89.60 g\n" +
			"scale     90 g a day on a 1 g scale, 268 kcal\n" +
			"meals     45 g + 45 g\n",
		"rest      1068.00 kcal − 268.20 kcal = 799.80 kcal\n" +
			"grams     799.80 kcal ÷ 3560 kcal/kg × 1000 = 224.66 g\n" +
			"scale     225 g a day on a 1 g scale, 801 kcal\n" +
			"meals     113 g + 112 g\n" +
			"day       1069.20 kcal of 1068.00 kcal\n",
		"\n\ndays 3 to 4: 50 % new\n", "\n\ndays 5 to 6: 75 % new\n",
		"\n\nday 7 on: 100 % new\nfood      Ostlehouse Slim Dog Dry, 2980 kcal/kg as fed, as the label states\n" +
			"grams     1068.0 kcal ÷ 2980 kcal/kg × 1000 = 358.39 g\n",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no\n%s\nin\n%s", want, text)
		}
	}
	for _, c := range transition.Cautions(mustDays(t, toSlim(), oakum())) {
		if strings.Count(text, "caution   "+c.String()+"\n") != 1 {
			t.Errorf("not said once: %s", c)
		}
	}
}

func TestExplainOfEveryBasisAndEvent(t *testing.T) {
	p := toSlim()
	p.Events = []transition.Event{{2, transition.Missed, 1}, {5, transition.Stop, 0}}
	for basis, want := range map[transition.Basis]string{
		transition.ByMass:     "shares    of the grams in the bowl; the day's energy stays the same\n",
		transition.ByOldTotal: "shares    of the grams of the old food, whatever they hold\n",
	} {
		p.Basis = basis
		text, err := p.Explain(oakum())
		if err != nil || !strings.Contains(text, want) || !strings.Contains(text, "\n\nday 2: the plan was not followed\n") || !strings.Contains(text, "\n\nday 5 on: 0 % new\n") {
			t.Errorf("%v, %s", err, text)
		}
	}
	if text, err := (transition.Plan{}).Explain(oakum()); err == nil || text != "" {
		t.Errorf("%q, %v", text, err)
	}
}

// A caution of refer level stands before everything else.
func TestExplainRefersFirst(t *testing.T) {
	p := toSlim()
	p.By = "Dr Ysolde Crake"
	need := estimate(energy.Prescribed{
		Animal: energy.Animal{Species: energy.Dog, Weight: 18 * units.Kilogram, Condition: energy.BCS9(5), Circumstances: energy.Diabetic},
		Daily:  1068, By: "Dr Ysolde Crake",
	})
	text, err := p.Explain(need)
	const want = "caution   refer: a change of food in such an animal (diabetic) is by order of Dr Ysolde Crake only: call at any sign of trouble [ours, not published]\n"
	if err != nil || !strings.HasPrefix(text, want) {
		t.Errorf("%v\n%s", err, text)
	}
}

func TestExplainOfWhatHasNoEnd(t *testing.T) {
	p := toSlim()
	p.Events = []transition.Event{{Day: 4, Kind: transition.Stop}}
	text, err := p.Explain(oakum())
	if err != nil || strings.Contains(text, "day 0") || !strings.Contains(text, "steps     four_stages, stopped before all is new; source: ") {
		t.Errorf("stopped: %v\n%s", err, text)
	}
	p = transition.Plan{To: diet.Only(slimDry), Steps: transition.Immediate, Meals: 3, Scale: units.Gram}
	if text, err = p.Explain(oakum()); err != nil || strings.Contains(text, "shares ") || !strings.Contains(text, "steps     immediate, all new on day 1; ") {
		t.Errorf("at once: %v\n%s", err, text)
	}
}

// A share of a mix is computed from energies. By the old total of 300 g, 75 g of
// the new food are 75 × 2.98 = 223.5 kcal of 1024.5, 21.815519… %, and 150 g 447 of
// 981 kcal, 45.565749… %; by hand. With the digits shown the product is right to the
// hundredth: 0.218155 × 1024.5 = 223.4998.
func TestExplainShowsSharesThatCanBeMultiplied(t *testing.T) {
	p := toSlim()
	p.Basis = transition.ByOldTotal
	text, err := p.Explain(oakum())
	for _, want := range []string{
		"\nshare     21.8155 % × (1024.50 kcal) = 223.50 kcal\n",
		"\nshare     45.5657 % × (981.00 kcal) = 447.00 kcal\n",
		"\nshare     28.48 % × (937.50 kcal) = 267.00 kcal\n",
	} {
		if err != nil || !strings.Contains(text, want) {
			t.Errorf("%v: no%sin\n%s", err, want, text)
		}
	}
	// 40 % of what the old menu gives is of 75 % of the day: 30 %, no more digits.
	p = toSlim()
	p.From = diet.Menu{{Food: houseDry, Amount: diet.Share(60)}, {Food: catWet, Amount: diet.Rest()}}
	if text, err = p.Explain(oakum()); err != nil || !strings.Contains(text, "\nshare     30 % × (1068.00 kcal) = 320.40 kcal\n") {
		t.Errorf("%v\n%s", err, text)
	}
}
