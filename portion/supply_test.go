package portion_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// euros is a pack of so many kilograms at a price.
func euros(kg, amount float64) diet.Pack {
	p, err := diet.NewPrice(amount, "EUR")
	if err != nil {
		panic(err)
	}
	return diet.Pack{Net: units.Mass(kg) * units.Kilogram, Price: p}
}

// inPacks is the food sold so.
func inPacks(f diet.Food, packs ...diet.Pack) diet.Food {
	copy(f.Label.Packs[:], packs)
	return f
}

// demoSupply is the dogs and the cats of the demo shelter: 332 + 150 + 159 = 641 g
// of one food with 24 g of biscuits, and 65 + 45 + 61 + 70 = 241 g of the other.
func demoSupply(t testing.TB) portion.Supply {
	t.Helper()
	dogFood, catFood := inPacks(kibble, euros(15, 42)), inPacks(catDry, euros(7.5, 33.75))
	s := portion.Supply{Days: 28, Waste: 5}
	for _, x := range []struct {
		name     string
		kcal     units.Energy
		food     diet.Food
		biscuits float64
	}{
		{"Bolster", 1237.1, dogFood, 2},
		{"Pippet", 562.3, dogFood, 1},
		{"Gantry", 565.2, dogFood, 0},
		{"Custard", 250.8, catFood, 0},
		{"Larkin", 171.9, catFood, 0},
		{"Nettle", 233.1, catFood, 0},
		{"Sorrel", 268.1, catFood, 0},
	} {
		menu := diet.Only(x.food)
		if x.biscuits > 0 {
			menu = append(menu, diet.Item{Food: biscuit, Amount: diet.Count(x.biscuits, "biscuit"), Treat: true})
		}
		w, err := fed(energy.Prescribed{Daily: x.kcal, By: "Dr Ysolde Crake"}, menu)
		if err != nil {
			t.Fatal(err)
		}
		s.Plans = append(s.Plans, portion.Plan{Animal: x.name, Weighed: w})
	}
	s.Store = []portion.Stock{{Food: dogFood, Mass: 42.5 * units.Kilogram}, {Food: catFood, Mass: 6 * units.Kilogram}}
	return s
}

// By hand: 641 g × 28 × 1.05 = 18.85 kg, 42.5 / (0.641 × 1.05) = 63.1 days; 241 g ×
// 28 × 1.05 = 7.09 kg, 6 / (0.241 × 1.05) = 23.7 days, one bag of 7.5 kg.
func TestSupplyOfTheDemoShelter(t *testing.T) {
	lines, err := demoSupply(t).Lines()
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, l := range lines {
		got = append(got, fmt.Sprintf("%s: %d animals, %v a day, need %.2f kg, short %.2f kg, %d of %v, %.1f days, %.4f %s a day",
			l.Food.Name, l.Animals, l.Daily, l.Need.Kilograms(), l.Short.Kilograms(), l.Packs, l.Pack.Net, l.DaysLeft, l.Cost.Amount(), l.Cost.Currency()))
	}
	want := []string{
		"Tarnwick House Dog Dry: 3 animals, 641 g a day, need 18.85 kg, short 0.00 kg, 0 of 0 g, 63.1 days, 1.8845 EUR a day", // 0.67305 × 42 / 15
		"House biscuit: 2 animals, 24 g a day, need 0.71 kg, short 0.71 kg, 0 of 0 g, 0.0 days, 0.0000  a day",
		"Tarnwick House Cat Dry: 4 animals, 241 g a day, need 7.09 kg, short 1.09 kg, 1 of 7.5 kg, 23.7 days, 1.1387 EUR a day", // 0.25305 × 4.5
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
}

func TestRunOut(t *testing.T) {
	lines, err := demoSupply(t).Lines()
	if err != nil {
		t.Fatal(err)
	}
	monday := time.Date(2026, time.November, 2, 0, 0, 0, 0, time.UTC)
	// 23 whole days from the second: the last is the 24th.
	if day, ok := lines[2].RunsOut(monday); !ok || day.Format(time.DateOnly) != "2026-11-25" {
		t.Errorf("%v, %t", day, ok)
	}
	// The clock changes in between; the day does not.
	here := time.FixedZone("here", 3600)
	if day, ok := lines[0].RunsOut(time.Date(2026, time.November, 2, 0, 0, 0, 0, here)); !ok || day.Format(time.DateOnly) != "2027-01-04" {
		t.Errorf("%v, %t", day, ok)
	}
	exact := portion.Supply{Days: 1, Plans: []portion.Plan{{Animal: "a", Weighed: onGrams(t, 100)}}, Store: []portion.Stock{{Food: kibble, Mass: 300}}}
	lines, err = exact.Lines()
	if err != nil {
		t.Fatal(err)
	}
	if day, ok := lines[0].RunsOut(monday); !ok || day.Format(time.DateOnly) != "2026-11-05" || lines[0].DaysLeft != 3 {
		t.Errorf("three days: %v, %t", day, ok)
	}
	for _, l := range []portion.SupplyLine{{}, {Used: 1, DaysLeft: 40000}, {Used: 1, DaysLeft: math.NaN()}} {
		if day, ok := l.RunsOut(monday); ok || !day.IsZero() {
			t.Errorf("%+v: %v", l, day)
		}
	}
}

func TestWhichPackIsOrdered(t *testing.T) {
	dollars, err := diet.NewPrice(1, "USD")
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		name  string
		packs []diet.Pack
		short float64 // kg
		want  string
	}{
		{"the least left over", []diet.Pack{{Net: 15000}, {Net: 4000}}, 7.5, "2 × 4 kg"},
		{"the larger of two equal", []diet.Pack{{Net: 4000}, {Net: 8000}}, 7.5, "1 × 8 kg"},
		{"the cheapest, all priced", []diet.Pack{euros(15, 40), euros(4, 21)}, 7.5, "1 × 15 kg"},
		{"one without a price", []diet.Pack{euros(15, 40), {Net: 4000}}, 7.5, "2 × 4 kg"},
		{"two currencies", []diet.Pack{euros(15, 40), {Net: 4000, Price: dollars}}, 7.5, "2 × 4 kg"},
		{"exactly whole packs", []diet.Pack{{Net: 2500}}, 7.5, "3 × 2.5 kg"},
		{"a gap before it", []diet.Pack{{}, {Net: 5000}}, 7.5, "2 × 5 kg"},
		{"no packs", nil, 7.5, "0 × 0 g"},
		{"nothing short", []diet.Pack{{Net: 15000}}, 0, "0 × 0 g"},
	} {
		food := inPacks(kibble, test.packs...)
		w, err := fed(given(890), diet.Only(food)) // 250 g
		if err != nil {
			t.Fatal(err)
		}
		s := portion.Supply{Plans: []portion.Plan{{Animal: "Bolster", Weighed: w}}, Days: 40}
		s.Store = []portion.Stock{{Food: food, Mass: units.Mass(10-test.short) * units.Kilogram}}
		lines, err := s.Lines()
		if err != nil {
			t.Fatal(err)
		}
		if got := fmt.Sprintf("%d × %v", lines[0].Packs, lines[0].Pack.Net); got != test.want {
			t.Errorf("%s: %s, want %s", test.name, got, test.want)
		}
	}
}

// Where nothing is to be ordered the day is priced by the largest pack with a
// price.
func TestPriceOfADayWithNothingToOrder(t *testing.T) {
	food := inPacks(kibble, euros(3, 12), euros(15, 45), diet.Pack{Net: 20000})
	w, err := fed(given(890), diet.Only(food))
	if err != nil {
		t.Fatal(err)
	}
	s := portion.Supply{Plans: []portion.Plan{{Animal: "Bolster", Weighed: w}}, Days: 4, Store: []portion.Stock{{Food: food, Mass: 1000}}}
	lines, err := s.Lines()
	if err != nil || math.Abs(lines[0].Cost.Amount()-0.75) > 1e-12 || lines[0].Packs != 0 || lines[0].Short != 0 {
		t.Errorf("%+v, %v", lines, err)
	}
	// Food in store that nobody eats has no days and no cost.
	other := inPacks(catDry, euros(7.5, 33))
	s.Store = append(s.Store, portion.Stock{Food: other, Mass: 5000})
	lines, err = s.Lines()
	if err != nil || len(lines) != 2 || lines[1].Animals != 0 || lines[1].DaysLeft != 0 || !lines[1].Cost.IsZero() || lines[1].Packs != 0 {
		t.Errorf("%+v, %v", lines, err)
	}
}

func TestCostsOfAnimals(t *testing.T) {
	s := demoSupply(t)
	costs, err := s.Costs()
	if err != nil {
		t.Fatal(err)
	}
	// 332 g × 1.05 × 2.80 EUR/kg and 65 g × 1.05 × 4.50 EUR/kg.
	if c := costs[0]; c.Animal != "Bolster" || math.Abs(c.Cost.Amount()-0.97608) > 1e-9 || !slices.Equal(c.Unpriced, []string{"House biscuit"}) {
		t.Errorf("%+v", c)
	}
	if c := costs[3]; c.Animal != "Custard" || math.Abs(c.Cost.Amount()-0.307125) > 1e-9 || c.Unpriced != nil || c.Cost.Currency() != "EUR" {
		t.Errorf("%+v", c)
	}
	var sum float64
	for _, c := range costs {
		sum += c.Cost.Amount()
	}
	lines, err := s.Lines()
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range lines {
		sum -= l.Cost.Amount()
	}
	if math.Abs(sum) > 1e-12 {
		t.Errorf("the animals and the foods are %v apart", sum)
	}
	pound, err := diet.NewPrice(3, "GBP")
	if err != nil {
		t.Fatal(err)
	}
	menu := diet.Menu{{Food: inPacks(catWet, euros(1, 3)), Amount: diet.Share(50)}, {Food: inPacks(catDry, diet.Pack{Net: 1000, Price: pound}), Amount: diet.Rest()}}
	w, err := fed(givenCat(263.8), menu)
	if err != nil {
		t.Fatal(err)
	}
	s = portion.Supply{Plans: []portion.Plan{{Animal: "Tansy", Weighed: w}}, Days: 1}
	const want = `portion: plans[0].weighed "Tarnwick House Cat Dry in GBP": want prices in EUR, as of its other foods (nothing is converted)`
	if c, err := s.Costs(); err == nil || err.Error() != want || c != nil {
		t.Errorf("%v, %v; want %s", c, err, want)
	}
	s.Days = 0
	if c, err := s.Costs(); err == nil || c != nil {
		t.Errorf("no days: %v, %v", c, err)
	}
}

func TestSuppliesRefused(t *testing.T) {
	good := demoSupply(t)
	changed := kibble
	changed.Label.Energy, changed.Label.Serving = 3400, diet.Serving{}
	bad := kibble
	bad.Label.Serving.Energy = 412
	bad.Name = "Donated"
	for _, test := range []struct {
		name string
		do   func(*portion.Supply)
		want string
	}{
		{"days and waste", func(s *portion.Supply) { s.Days, s.Waste = 0, 51 }, `portion: days "0": want 1 to 366; portion: waste "51 %": want 0 % to 50 %`},
		{"too many days", func(s *portion.Supply) { s.Days = 367 }, `portion: days "367": want 1 to 366`},
		{"NaN", func(s *portion.Supply) { s.Waste = units.Percent(math.NaN()) }, `portion: waste "not a finite number": want 0 % to 50 %`},
		{"negative waste", func(s *portion.Supply) { s.Waste = -1 }, `portion: waste "-1 %": want 0 % to 50 %`},
		{"a plan twice", func(s *portion.Supply) { s.Plans[1].Animal = "Bolster" }, `portion: plans[1].animal "Bolster": want each animal once (it is plans[0] too)`},
		{"who is who", func(s *portion.Supply) { s.Plans[1].Animal = "BOLSTER" }, `portion: plans[1].animal "BOLSTER": want each animal once (who tells it from "Bolster", plans[0]?)`},
		{"no plan", func(s *portion.Supply) { s.Plans[1] = portion.Plan{Animal: "Pippet"} }, `portion: plans[1].weighed "": want a ration from Weigh and On (its error was not looked at?)`},
		{"negative store", func(s *portion.Supply) { s.Store[0].Mass = -5 }, `portion: store[0].mass "-5 g": want 0 kg to 1000000 kg`},
		{"infinite store", func(s *portion.Supply) { s.Store[0].Mass = units.Mass(math.Inf(1)) }, `portion: store[0].mass "not a finite number": want 0 kg to 1000000 kg`},
		{"store twice", func(s *portion.Supply) { s.Store[1] = s.Store[0] }, `portion: store[1].food "Tarnwick House Dog Dry": want each food once (it is store[0] too)`},
		{"another record", func(s *portion.Supply) { s.Store[0].Food = changed }, `portion: store[0].food "Tarnwick House Dog Dry": want one record of a food for every plan and the store (the label was changed? weigh the plans that use it again)`},
		{"another record in a plan", func(s *portion.Supply) {
			s.Plans[1].Weighed = weighedOn(t, prescribed(400), diet.Only(changed), units.Gram)
		}, `portion: plans[1].weighed "Tarnwick House Dog Dry": want one record of a food for every plan and the store (the label was changed? weigh the plans that use it again)`},
		{"no name", func(s *portion.Supply) { s.Store[0].Food.Name = "" }, `portion: store[0].food "": want a name`},
	} {
		s := good
		s.Plans, s.Store = slices.Clone(good.Plans), slices.Clone(good.Store)
		test.do(&s)
		lines, err := s.Lines()
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != test.want || lines != nil {
			t.Errorf("%s: %v lines, error\n%v\nwant\n%s", test.name, len(lines), err, test.want)
		}
		if c := s.Cautions(); c != nil {
			t.Errorf("%s: %v", test.name, c)
		}
	}
	good.Store = append(good.Store, portion.Stock{Food: bad})
	var label *diet.LabelError
	if _, err := good.Lines(); !errors.As(err, &label) {
		t.Errorf("a label that contradicts itself: %v", err)
	}
}

// A food that stands twice in a menu is one animal's and one plan's.
func TestSupplyOfAFoodThatIsFedTwice(t *testing.T) {
	food := inPacks(kibble, euros(15, 42))
	w, err := fed(given(890), diet.Menu{{Food: food, Amount: diet.Fixed(50)}, {Food: food, Amount: diet.Rest()}, {Food: biscuit, Amount: diet.Fixed(8)}, {Food: biscuit, Amount: diet.Fixed(16)}})
	if err != nil {
		t.Fatal(err)
	}
	s := portion.Supply{Plans: []portion.Plan{{Animal: "Bolster", Weighed: w}}, Days: 1}
	lines, err := s.Lines()
	if err != nil || len(lines) != 2 || lines[0].Animals != 1 || lines[0].Daily != 226 || lines[1].Animals != 1 || lines[1].Daily != 24 {
		t.Errorf("%+v, %v", lines, err) // (890 − 24 × 3.5) / 3.56 = 226.4
	}
	costs, err := s.Costs()
	if err != nil || len(costs) != 1 || !slices.Equal(costs[0].Unpriced, []string{biscuit.Name}) || math.Abs(costs[0].Cost.Amount()-0.226*2.8) > 1e-12 {
		t.Errorf("%+v, %v", costs, err)
	}
	if using := portion.Using(s.Plans, kibble.Name); len(using) != 1 {
		t.Errorf("%d plans use it", len(using))
	}
}

func TestPlansUsingAFood(t *testing.T) {
	plans := demoSupply(t).Plans
	names := func(plans []portion.Plan) (names []string) {
		for _, p := range plans {
			names = append(names, p.Animal)
		}
		return names
	}
	for food, want := range map[string][]string{
		kibble.Name: {"Bolster", "Pippet", "Gantry"}, catDry.Name: {"Custard", "Larkin", "Nettle", "Sorrel"},
		biscuit.Name: {"Bolster", "Pippet"}, "stew": nil, "": nil,
	} {
		if d := cmp.Diff(want, names(portion.Using(plans, food))); d != "" {
			t.Errorf("%s (-want +got):\n%s", food, d)
		}
	}
}

func TestSupplySaysWhoseNeedChanges(t *testing.T) {
	puppy, err := fed(energy.Growth{Animal: animalOf(energy.Dog, 6.4, 12*energy.Week), AdultWeight: 22 * units.Kilogram}, diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	cat, err := fed(energy.Refeeding{Animal: animalOf(energy.Cat, 4.2, 0), Ladder: energy.FourDayLadder(), Day: 1, By: "Dr Ysolde Crake"}, diet.Only(catDry))
	if err != nil {
		t.Fatal(err)
	}
	queen, err := fed(energy.Lactation{Animal: animalOf(energy.Cat, 4, 0), Young: 3, Week: 3}, diet.Only(catDry))
	if err != nil {
		t.Fatal(err)
	}
	s := portion.Supply{Days: 28, Plans: []portion.Plan{{Animal: "Dunnock", Weighed: puppy}, {Animal: "Mudge", Weighed: cat}, {Animal: "Thistle", Weighed: queen}, {Animal: "Bolster", Weighed: onGrams(t, 332)}}}
	var got []string
	for _, c := range s.Cautions() {
		got = append(got, c.String())
	}
	want := []string{
		"note: Dunnock grows: its ration is for 1 wk, and 28 days of it are a guess [ours, not published]",
		"note: Mudge is on a ladder: its ration is for 1 d, and 28 days of it are a guess [ours, not published]",
		"note: Thistle is in gestation or lactation: its ration is for 1 wk, and 28 days of it are a guess [ours, not published]",
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	if s.Days = 1; len(s.Cautions()) != 0 {
		t.Errorf("a day: %v", s.Cautions())
	}
}

func TestSupplyProperties(t *testing.T) {
	proptest.Check(t, "what is ordered covers the need, and one pack less doesn't", prop.ForAll(func(grams, days int, waste, store, net float64) string {
		food := inPacks(kibble, diet.Pack{Net: units.Mass(net)})
		w, err := fed(given(units.Energy(3.56*float64(grams))), diet.Only(food))
		if err != nil {
			return err.Error()
		}
		s := portion.Supply{Plans: []portion.Plan{{Animal: "a", Weighed: w}}, Days: days, Waste: units.Percent(waste), Store: []portion.Stock{{Food: food, Mass: units.Mass(store)}}}
		lines, err := s.Lines()
		if err != nil {
			return err.Error()
		}
		l := lines[0]
		have := func(packs int) float64 { return store + float64(packs)*net }
		slack := 1e-6 * net
		switch {
		case have(l.Packs) < float64(l.Need)-slack:
			return "too few packs"
		case l.Packs > 0 && have(l.Packs-1) >= float64(l.Need)+slack:
			return "too many packs"
		case l.DaysLeft < 0 || math.Abs(l.DaysLeft*float64(l.Used)-store) > 1e-6*(1+store):
			return "days left"
		}
		return ""
	}, gen.IntRange(20, 900), gen.IntRange(1, 366), gen.Float64Range(0, 50), gen.Float64Range(0, 100_000), proptest.Quantity[float64](100, 20_000)))
}

func TestSupplyJSON(t *testing.T) {
	s := demoSupply(t)
	b, err := json.Marshal(s)
	if err != nil {
		t.Fatal(err)
	}
	var back portion.Supply
	if err := json.Unmarshal(b, &back); err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(s, back); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	for in, want := range map[string]string{
		`{"days":28,"month":1}`:        `portion: supply: json: unknown field "month"`,
		`{"waste":5}`:                  `portion: supply.waste "number": want text with a unit, as in "100 %"`,
		`{"days":"28"}`:                `portion: supply.days "string": want a whole number`,
		`{"store":[{"mass":5}]}`:       `portion: stock.mass "number": want text with a unit, as in "100 g"`,
		`{"store":[{"kilograms":"5"}]`: `unexpected end`,
		`{"store":[{"kilograms":5}]}`:  `portion: stock: json: unknown field "kilograms"`,
	} {
		if err := json.Unmarshal([]byte(in), &back); err == nil || !strings.Contains(err.Error(), want) || back.Days != 28 || len(back.Plans) != 7 {
			t.Errorf("%s: %v; want %s", in, err, want)
		}
	}
}
