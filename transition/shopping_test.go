package transition_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// By hand from the table of the demo: 2 × (225 + 150 + 75) = 900 g of the old, and
// 2 × (90 + 179 + 269) + 358 = 1434 g of the new.
func TestShoppingForOakum(t *testing.T) {
	const kg = units.Kilogram
	for _, tt := range []struct {
		packs diet.Packs
		have  units.Mass
		want  transition.Purchase
	}{
		{diet.Packs{}, 0, transition.Purchase{Need: 1434, Buy: 1434}},
		{diet.Packs{}, 2000, transition.Purchase{Need: 1434, Have: 2000, Over: 566}},
		{diet.Packs{}, 1434, transition.Purchase{Need: 1434, Have: 1434}},
		{diet.Packs{{Net: 2 * kg}}, 0, transition.Purchase{Need: 1434, Buy: 1434, Pack: diet.Pack{Net: 2 * kg}, Packs: 1, Over: 566}},
		{diet.Packs{{Net: 2 * kg}}, 2000, transition.Purchase{Need: 1434, Have: 2000, Over: 566}},
		// Two of 717 g leave nothing, one of 300 g is more than 1 g.
		{diet.Packs{{Net: 717}}, 0, transition.Purchase{Need: 1434, Buy: 1434, Pack: diet.Pack{Net: 717}, Packs: 2}},
		{diet.Packs{{Net: 300}}, 1433, transition.Purchase{Need: 1434, Have: 1433, Buy: 1, Out: 7, Pack: diet.Pack{Net: 300}, Packs: 1, Over: 299}},
		// Half a gram is eaten on the first day.
		{diet.Packs{}, 0.5, transition.Purchase{Need: 1434, Have: 0.5, Buy: 1433.5, Out: 1}},
		// Four of 400 g leave 166 g, one of 2 kg 566 g.
		{diet.Packs{{Net: 2 * kg}, {Net: 400}}, 0, transition.Purchase{Need: 1434, Buy: 1434, Pack: diet.Pack{Net: 400}, Packs: 4, Over: 166}},
		// The same left over from fewer packs.
		{diet.Packs{{Net: 400}, {Net: 1600}}, 0, transition.Purchase{Need: 1434, Buy: 1434, Pack: diet.Pack{Net: 1600}, Packs: 1, Over: 166}},
		// The cheapest, where all have a price: 4 × 3 against 1 × 11.
		{diet.Packs{{Net: 2 * kg, Price: price("11 EUR")}, {Net: 400, Price: price("3 EUR")}}, 0, transition.Purchase{Need: 1434, Buy: 1434, Pack: diet.Pack{Net: 2 * kg, Price: price("11 EUR")}, Packs: 1, Over: 566}},
		{diet.Packs{{Net: 2 * kg, Price: price("11 EUR")}, {Net: 400, Price: price("3 USD")}}, 0, transition.Purchase{Need: 1434, Buy: 1434, Pack: diet.Pack{Net: 400, Price: price("3 USD")}, Packs: 4, Over: 166}},
		// 90 + 90 + 179 + 179 = 538 on day 4, 807 on day 5.
		{diet.Packs{{Net: 400}}, 800, transition.Purchase{Need: 1434, Have: 800, Buy: 634, Out: 5, Pack: diet.Pack{Net: 400}, Packs: 2, Over: 166}},
		{diet.Packs{{Net: 400}}, 807, transition.Purchase{Need: 1434, Have: 807, Buy: 627, Out: 6, Pack: diet.Pack{Net: 400}, Packs: 2, Over: 173}},
	} {
		p := toSlim()
		p.To[0].Food.Label.Packs = tt.packs
		days := mustDays(t, p, oakum())
		stock := []portion.Stock{inStore(p.To[0].Food, tt.have)}
		list, err := p.Shopping(days, stock...)
		if err != nil || len(list) != 2 || list[0] != (transition.Purchase{Food: houseDry.Name, Need: 900, Buy: 900}) {
			t.Fatalf("%+v, %v", list, err)
		}
		tt.want.Food = slimDry.Name
		if list[1] != tt.want {
			t.Errorf("got  %+v\nwant %+v", list[1], tt.want)
		}
	}
}

// What is neither eaten nor there stands on no list, but half a gram of either does.
func TestFoodsOnTheShoppingList(t *testing.T) {
	atOnce := toSlim()
	atOnce.Steps = transition.Immediate
	pinch := toSlim()
	pinch.To = append(diet.Menu{{Food: catDry, Amount: diet.Fixed(0.5 * units.Gram)}}, pinch.To...)
	pinch.Steps, pinch.Scale = transition.Immediate, 0.1*units.Gram
	for _, tt := range []struct {
		plan  transition.Plan
		stock []portion.Stock
		want  []string
	}{
		{atOnce, nil, []string{slimDry.Name}},
		{atOnce, []portion.Stock{inStore(houseDry, 0)}, []string{slimDry.Name}},
		{atOnce, []portion.Stock{inStore(houseDry, 0.5)}, []string{houseDry.Name, slimDry.Name}},
		{pinch, nil, []string{catDry.Name, slimDry.Name}},
	} {
		list, err := tt.plan.Shopping(mustDays(t, tt.plan, oakum()), tt.stock...)
		var names []string
		for _, x := range list {
			names = append(names, x.Food)
		}
		if err != nil || !slices.Equal(names, tt.want) {
			t.Errorf("%v: %q, want %q, %v", tt.stock, names, tt.want, err)
		}
	}
}

func inStore(f diet.Food, m units.Mass) portion.Stock { return portion.Stock{Food: f, Mass: m} }

func price(s string) diet.Price {
	p, err := diet.ParsePrice(s)
	if err != nil {
		panic(err)
	}
	return p
}

func TestStockThatIsRefused(t *testing.T) {
	p := toSlim()
	days := mustDays(t, p, oakum())
	if _, err := p.Shopping(days, inStore(slimDry, units.Mass(math.Inf(-1)))); err == nil ||
		err.Error() != `transition: stock[0].mass "not a finite number": want 0 g or more` {
		t.Errorf("%v", err)
	}
	list, err := p.Shopping(days, inStore(asFed("hay", 2000), 1), inStore(slimDry, -1),
		inStore(slimDry, units.Mass(math.NaN())), inStore(houseDry, units.Mass(math.Inf(1))), inStore(asFed(houseDry.Name, 3500), 1))
	const want = `transition: stock[0].food "hay": want a food of the plan; transition: stock[1].mass "-1 g": want 0 g or more; ` +
		`transition: stock[2].food "Ostlehouse Slim Dog Dry": want each food once; transition: stock[2].mass "not a finite number": want 0 g or more; ` +
		`transition: stock[3].mass "not a finite number": want 0 g or more; ` +
		`transition: stock[4].food "Tarnwick House Dog Dry": want the record of the food that the plan has (the label was changed?)`
	if err == nil || err.Error() != want || list != nil {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

// The old food that each schedule takes, in days' worth of 300 g: four_stages 3,
// four_days 1.5, ten_steps 4.5, slow 18, and slow with 3, 2 days a step 13.5, 9.
func TestLongestScheduleThatTheBagAllows(t *testing.T) {
	for _, tt := range []struct {
		steps transition.Steps
		have  units.Mass
		want  string
	}{
		{transition.FourStages, 900, "four_stages"},
		{transition.FourStages, 899, "four_days"},
		{transition.FourStages, 450, "four_days"},
		{transition.Slow, 5400, "slow"},
		{transition.Slow, 5399, "10 % 3 d, 20 % 3 d, 30 % 3 d, 40 % 3 d, 50 % 3 d, 60 % 3 d, 70 % 3 d, 80 % 3 d, 90 % 3 d, 100 %"},
		{transition.Slow, 1400, "ten_steps"},
		{transition.Slow, 1000, "four_stages"},
		{transition.TenSteps, 1000, "four_stages"},
		{transition.TenSteps, 500, "four_days"},
		{transition.Steps{}, 500, "four_days"}, // the default of dogs
		{transition.Immediate, 0, "immediate"},
		{mustSteps("20 % 9 d, 60 % 3 d, 100 %"), 2000, "20 % 6 d, 60 % 3 d, 100 %"}, // 6 × 240 + 3 × 120 = 1800
	} {
		p := toSlim()
		p.Steps = tt.steps
		s, err := p.LongestSteps(oakum(), inStore(houseDry, tt.have))
		if err != nil || s.String() != tt.want {
			t.Errorf("%v with %v: %v, %v, want %s", tt.steps, tt.have, s, err, tt.want)
		}
	}
}

func TestBagThatAllowsNoSchedule(t *testing.T) {
	p := toSlim()
	s, err := p.LongestSteps(oakum(), inStore(houseDry, 449))
	const want = `transition: 449 g of Tarnwick House Dog Dry is too little for a change by steps: four_days needs 450 g: want more of it`
	var short *transition.StockError
	if err == nil || err.Error() != want || !s.IsZero() || !errors.As(err, &short) || short.Steps != transition.FourDays {
		t.Errorf("got  %v, %v\nwant %s", s, err, want)
	}
	// Ten steps at least for a ferret: 4.5 days' worth of 300 kcal / 4.15 kcal/g.
	ferret := estimate(energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}})
	p = transition.Plan{From: diet.Only(kittenDry), To: diet.Only(catDry), Meals: 4, Scale: 0.1 * units.Gram}
	if s, err := p.LongestSteps(ferret, inStore(kittenDry, 326)); err != nil || s != transition.TenSteps {
		t.Errorf("%v, %v", s, err)
	}
	if _, err := p.LongestSteps(ferret, inStore(kittenDry, 320)); !errors.As(err, &short) || short.Steps != transition.TenSteps {
		t.Errorf("%v", err)
	}
	// A food that goes on, and one of which no stock is told, is bought.
	p = toSlim()
	p.To = diet.Menu{{Food: houseDry, Amount: diet.Share(20)}, {Food: slimDry, Amount: diet.Rest()}}
	for _, stock := range [][]portion.Stock{nil, {inStore(houseDry, 0)}, {inStore(slimDry, 0)}} {
		if s, err := p.LongestSteps(oakum(), stock...); err != nil || s != transition.FourStages {
			t.Errorf("%v: %v, %v", stock, s, err)
		}
	}
	p = toSlim()
	p.Meals, p.Events = 0, []transition.Event{{3, transition.Hold, 1}}
	const faults = `transition: stock[0].food "hay": want a food of the plan; transition: events "hold on day 3": want a plan that hasn't begun; portion: meals "0": want 1 to 24 a day`
	if _, err := p.LongestSteps(oakum(), inStore(asFed("hay", 2000), 1)); err == nil || err.Error() != faults {
		t.Errorf("got  %v\nwant %s", err, faults)
	}
}

// The four steps of the plan last for no bag of 250 g; four steps in as many days
// are for no ferret, and nor is all at once.
func TestFerretIsPutOnNoFewSteps(t *testing.T) {
	ferret := estimate(energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}})
	p := transition.Plan{
		From: diet.Only(kittenDry), To: diet.Only(catDry), Steps: mustSteps("25 % 10 d, 50 % 10 d, 75 % 10 d, 100 %"),
		Meals: 4, Scale: 0.1 * units.Gram,
	}
	steps, err := p.LongestSteps(ferret, portion.Stock{Food: kittenDry, Mass: 250 * units.Gram})
	if err == nil || !steps.IsZero() || strings.Contains(err.Error(), "immediate") || !strings.Contains(err.Error(), "ten_steps needs") {
		t.Errorf("%v, %v", steps, err)
	}
	if steps, err = p.LongestSteps(ferret, portion.Stock{Food: kittenDry, Mass: 350 * units.Gram}); err != nil || steps != transition.TenSteps {
		t.Errorf("%v, %v", steps, err)
	}
}
