package portion_test

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// perCup is a food whose label gives only kcal and grams of a cup.
var perCup = diet.Food{
	Name: "a dry food", Form: diet.Dry,
	Label: diet.Label{Serving: diet.Serving{Name: "cup", Energy: 356 * units.Kilocalorie, Mass: 100 * units.Gram}},
}

// budgeted is the budget of the one food of a day.
func budgeted(t *testing.T, need energy.Estimate, food diet.Food, step units.Mass, m portion.Measuring) portion.Budget {
	t.Helper()
	ration, err := portion.Weigh(need, diet.Only(food))
	if err != nil {
		t.Fatal(err)
	}
	w, err := ration.On(step)
	if err != nil {
		t.Fatal(err)
	}
	b, err := w.Budget(0, m)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// The quotient rule of JCGM 100:2008, 5.1.6, against printed examples: Z = V/I of
// its Table H.5 without correlation (V 4.999 V, u 0.0032; I 19.661 mA, u 0.0095;
// Z 254.260 Ω, u 0.204 Ω) and Example A1 of EURACHEM/CITAC, mass × purity ÷ volume
// (0.0005, 0.000058, 0.0007; 1002.7 mg/L, u 0.9 mg/L).
func TestQuotientRuleOfPrintedExamples(t *testing.T) {
	z := portion.Budget{Label: 100 * 0.0032 / 4.999, Density: 100 * 0.0095 / 19.661}
	if got := fmt.Sprintf("%.3f", 254.260*z.InBowl().Fraction()); got != "0.204" {
		t.Errorf("u(Z) = %s Ω, want 0.204", got)
	}
	a1 := portion.Budget{Label: 0.0058, Scale: 100 * 0.05 / 100.28, Scoop: 100 * 0.07 / 100.0}
	if got := fmt.Sprintf("%.1f", 1002.7*a1.InBowl().Fraction()); got != "0.9" {
		t.Errorf("u(c) = %s mg/L, want 0.9", got)
	}
}

// With a pencil: 5/√3/3560 = 0.0811 %; 0.5/√3/356 = 0.0811 % and 0.5/√3/100 =
// 0.2887 % are 0.2998 %; 1/√12/165 = 0.1750 %; 300/√12/3560 = 2.4327 %; the dog's
// ±30 % is 0.3/√3 = 17.32 %; 100/√12/3500 = 0.825 %.
func TestPartsOfABudget(t *testing.T) {
	dogs, err := energy.Adult{Animal: dog, Status: energy.Neutered}.Estimate()
	if err != nil {
		t.Fatal(err)
	}
	contradicted := diet.Food{Name: "a dry food", Label: diet.Label{
		Energy: 3500 * units.KilocaloriePerKilogram, Serving: diet.Serving{Name: "cup", Energy: 360, Mass: 100},
	}}
	given := prescribed(1180)
	for _, test := range []struct {
		name string
		got  portion.Budget
		want string // label, density, scale, scoop, individual
	}{
		{"label", budgeted(t, given, kibble, 1, portion.Measuring{Meals: 2}), "0.0811 0.0000 0.1750 0.0000 0.0000"},
		{"serving", budgeted(t, given, perCup, 1, portion.Measuring{Meals: 2}), "0.2998 0.0000 0.1750 0.0000 0.0000"},
		{"interval", budgeted(t, given, kibble, 1, portion.Measuring{Meals: 2, Density: units.Range[units.EnergyDensity]{Low: 3400, High: 3700}}), "0.0811 2.4327 0.1750 0.0000 0.0000"},
		{"contradicted", budgeted(t, given, contradicted, 1, portion.Measuring{Meals: 2, Scoop: 5}), "0.0825 0.8248 0.0000 5.0000 0.0000"},
		{"individual", budgeted(t, dogs, kibble, 1, portion.Measuring{Scoop: 8}), "0.0811 0.0000 0.0000 8.0000 17.3205"},
	} {
		b := test.got
		if got := fmt.Sprintf("%.4f %.4f %.4f %.4f %.4f", b.Label, b.Density, b.Scale, b.Scoop, b.Individual); got != test.want {
			t.Errorf("%s: %s, want %s", test.name, got, test.want)
		}
	}
}

func TestVerdictNamesTheLimit(t *testing.T) {
	one := portion.Budget{Bowl: 100, Energy: 356, Bowls: 1}
	for _, test := range []struct {
		b    portion.Budget
		want string
	}{
		{portion.Budget{Label: 2, Scale: 0.1}, "weighing more finely won't help: the label is the limit"},
		{portion.Budget{Density: 4, Label: 1, Scale: 0.1}, "weighing more finely won't help: the food's energy density is the limit, ask the manufacturer for the typical kcal/kg as fed"},
		{portion.Budget{Label: 2, Scale: 1.5}, "the label is the limit; weighing more finely would still make ±5.0 % at best ±4.0 %"},
		{portion.Budget{Scale: 14, Label: 1}, "the scale is the limit: use a finer scale"},
		{portion.Budget{Scale: 3, Label: 1, DayOnce: true}, "the scale is the limit: use a finer scale, or weigh the day once and divide it"},
		{portion.Budget{Scale: 2.4, Label: 0.1}, "known well enough: most of what is left is the step of the scale"},
		{portion.Budget{Scoop: 8, Label: 2}, "the scoop is the limit: weigh instead"},
		{portion.Budget{Scoop: 2, Density: 8}, "weighing instead of the scoop won't help: the food's energy density is the limit, ask the manufacturer for the typical kcal/kg as fed"},
		{portion.Budget{Individual: 17}, "nothing in the bowl is counted as uncertain"},
	} {
		b := test.b
		b.Bowl, b.Energy, b.Bowls = one.Bowl, one.Energy, one.Bowls
		if got := b.Verdict(); got != test.want {
			t.Errorf("%+v: %q, want %q", test.b, got, test.want)
		}
	}
	if got := (portion.Budget{}).Verdict(); got != "" {
		t.Errorf("the zero Budget says %q", got)
	}
}

// With a pencil: the ferret's 240 to 360 kcal are 120/√12/300 =
// 11.5 %; 5/√3/4150 = 0.0696 %; 5/√12/10 = 14.4 %; √(0.07² + 14.4²) = 14.4 %, twice
// is 28.9 %, 12.0 of 41.5 kcal; √(14.4² + 11.5²) = 18.5 %.
func TestExplainOfABudgetCanBeRedoneByHand(t *testing.T) {
	b, err := ferretDay(5*units.Gram).Budget(0, portion.Measuring{Meals: 6})
	if err != nil {
		t.Fatal(err)
	}
	const want = `bowl      10 g of Tarnwick Kitten Dry, 41.5 kcal by the label, the smallest of 6 a day
label     ±0.070 %, the rounding of the label's figures; 0 % of the variance
scale     ±14 %, 5 g ÷ √12 in 10 g; 100 % of the variance
together  √(0.070² + 14²) % = 14 %
so        twice that, about 19 times in 20: 29.5 kcal to 53.5 kcal in the bowl
source    JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.6, 4.3.7, F.2.2.1
known     the step makes the day -3.2 %: a change, not counted as uncertain
limit     the scale is the limit: use a finer scale
animal    ±12 %, the spread of animals around the equation; with the bowl √(14² + 12²) % = 18 %
`
	if d := cmp.Diff(want, b.Explain()); d != "" {
		t.Errorf("working (-want +got):\n%s", d)
	}
	if c := b.Cautions(); len(c) != 1 || c[0].Text != "the energy in a bowl of Tarnwick Kitten Dry is known to ±29 % only: the scale is the limit: use a finer scale" {
		t.Errorf("cautions %v", c)
	}
}

func TestTheAnimalIsKnownLessWellThanTheBowl(t *testing.T) {
	dogs, err := energy.Adult{Animal: dog, Status: energy.Neutered}.Estimate()
	if err != nil {
		t.Fatal(err)
	}
	text := budgeted(t, dogs, kibble, 1, portion.Measuring{}).Explain()
	const want = "next      what this animal needs is known less well than what is in the bowl: keep the bowl the same and weigh the animal in 28 days\n"
	if !strings.Contains(text, want) {
		t.Errorf("%q is not in\n%s", want, text)
	}
}

func TestBudgetRefuses(t *testing.T) {
	nan := math.NaN()
	guessed := diet.Food{
		Name: "a bag without calories", Form: diet.Dry, For: diet.Purpose{Species: diet.Dogs}, Predictor: diet.ModifiedAtwater,
		Analysis: diet.Analysis{Kind: diet.Typical, Protein: 25, Fat: 14, Fibre: 3, Moisture: 9, Ash: 7},
	}
	type densities = units.Range[units.EnergyDensity]
	for _, test := range []struct {
		food diet.Food
		m    portion.Measuring
		want string
	}{
		{kibble, portion.Measuring{Meals: -1}, `portion: meals "-1": want 1 to 24 a day`},
		{kibble, portion.Measuring{Meals: 25, Scoop: -1}, `portion: meals "25": want 1 to 24 a day; portion: scoop "-1 %": want 0 % to 50 % (a relative standard uncertainty, one standard deviation in percent)`},
		{kibble, portion.Measuring{Scoop: units.Percent(nan)}, `portion: scoop "not a finite number": want 0 % to 50 % (a relative standard uncertainty, one standard deviation in percent)`},
		{kibble, portion.Measuring{Density: densities{Low: 3600, High: 3700}}, `portion: density "3600 kcal/kg to 3700 kcal/kg": want an interval of kcal/kg that holds the food's 3560 kcal/kg`},
		{kibble, portion.Measuring{Density: densities{Low: 3600, High: 3500}}, `portion: density "3600 kcal/kg to 3500 kcal/kg": want an interval of kcal/kg that holds the food's 3560 kcal/kg`},
		{kibble, portion.Measuring{Density: densities{High: units.EnergyDensity(math.Inf(1))}}, `portion: density "not finite numbers": want an interval of kcal/kg that holds the food's 3560 kcal/kg`},
		{kibble, portion.Measuring{Density: densities{Low: -1, High: 5000}}, `portion: density "-1 kcal/kg to 5000 kcal/kg": want an interval of kcal/kg that holds the food's 3560 kcal/kg`},
		{guessed, portion.Measuring{}, `portion: density "": want an interval of kcal/kg around the predicted 3535 kcal/kg (a prediction is not a label: nothing bounds it; predictions are off by 5 to 7 % on average)`},
	} {
		ration, err := portion.Weigh(prescribed(1180), diet.Only(test.food))
		if err != nil {
			t.Fatal(err)
		}
		w, err := ration.On(units.Gram)
		if err != nil {
			t.Fatal(err)
		}
		b, err := w.Budget(0, test.m)
		if err == nil || err.Error() != test.want || b != (portion.Budget{}) {
			t.Errorf("%+v: %v, %v; want %q", test.m, b, err, test.want)
		}
	}
	if _, err := (portion.Weighed{}).Budget(0, portion.Measuring{}); err == nil || err.Error() != `portion: ration "": want a ration from Weigh (its error was not looked at?)` {
		t.Errorf("zero Weighed: %v", err)
	}
	bad := portion.Budget{Label: -1, Scale: 51, Scoop: units.Percent(nan)}
	const all = `portion: label "-1 %": want 0 % to 50 %; portion: scale "51 %": want 0 % to 50 %; portion: scoop "not a finite number": want 0 % to 50 %; ` +
		`portion: bowl "0 g": want above 0 g; portion: energy "0 kcal": want above 0 kcal; portion: bowls "0": want 1 to 24 a day`
	if err := bad.Validate(); err == nil || err.Error() != all {
		t.Errorf("Validate: %v, want %s", err, all)
	}
	if bad.Explain() != "" || bad.Cautions() != nil {
		t.Error("a budget that is none explains itself")
	}
}

// Bowls are drawn as the model says: every figure even within its interval,
// the scoop normal. Of 20,000 the spread of the energy must be that of the
// budget: the standard deviation of so many is itself known to 0.5 %, so that 3 %
// leaves room for six of it. An interval of twice the uncertainty holds
// 95 % of normal errors and more of even ones.
func TestBudgetHoldsOnSimulatedBowls(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 2))
	even := func(u units.Percent) float64 { return 1 + math.Sqrt(3)*u.Fraction()*(2*r.Float64()-1) }
	for _, b := range []portion.Budget{
		{Label: 0.3, Density: 2.4, Scale: 1.2},
		{Label: 0.3, Scale: 2.4},
		{Label: 1, Density: 3, Scoop: 8},
		{Label: 0.1, Scale: 0.2, Individual: 17.3},
	} {
		b.Bowl, b.Energy, b.Bowls = 100, 356, 1
		const n = 20000
		var sum, squares float64
		held := 0
		within := b.EnergyRange()
		for range n {
			x := even(b.Label) * even(b.Density) * even(b.Scale) * (1 + b.Scoop.Fraction()*r.NormFloat64())
			if within.Contains(b.Energy * units.Energy(x)) {
				held++
			}
			x *= even(b.Individual)
			sum += x
			squares += x * x
		}
		mean := sum / n
		sd := 100 * math.Sqrt(squares/n-mean*mean)
		if want := float64(b.Combined()); math.Abs(sd/want-1) > 0.03 {
			t.Errorf("%+v: simulated %.3f %%, the budget has %.3f %%", b, sd, want)
		}
		// 19 times in 20, less five standard deviations of the count.
		if part := float64(held) / n; part < 0.942 {
			t.Errorf("%+v: EnergyRange held %.2f %%", b, 100*part)
		}
	}
}

func TestBudgetProperties(t *testing.T) {
	part := gen.Float64Range(0, 30)
	proptest.Check(t, "the whole is between its largest part and their sum", prop.ForAll(func(a, b, c, d float64) bool {
		x := portion.Budget{Label: units.Percent(a), Density: units.Percent(b), Scale: units.Percent(c), Individual: units.Percent(d)}
		whole := float64(x.Combined())
		return max(a, b, c, d) <= whole*(1+1e-12) && whole <= (a+b+c+d)*(1+1e-12)
	}, part, part, part, part))

	proptest.Check(t, "shares add up to one and the limit has the largest", prop.ForAll(func(a, b, c, d float64) bool {
		x := portion.Budget{Label: units.Percent(a), Density: units.Percent(b), Scale: units.Percent(c), Scoop: units.Percent(d)}
		limit, ok := x.Limit()
		if !ok {
			return a+b+c+d == 0
		}
		sum := 0.0
		for y := portion.LabelRounding; y <= portion.ScoopFill; y++ {
			if sum += x.Share(y); x.Share(y) > x.Share(limit) {
				return false
			}
		}
		return math.Abs(sum-1) < 1e-12
	}, part, part, part, part))

	proptest.Check(t, "more food is never less well known", prop.ForAll(func(e units.Energy, more float64, meals int) bool {
		part := func(e units.Energy) units.Percent {
			r, err := portion.Weigh(prescribed(e), diet.Only(kibble))
			if err != nil {
				panic(err)
			}
			w, err := r.On(units.Gram)
			if err != nil {
				panic(err)
			}
			b, err := w.Budget(0, portion.Measuring{Meals: meals})
			if err != nil {
				panic(err)
			}
			return b.InBowl()
		}
		return part(min(e*units.Energy(more), 5000)) <= part(e)
	}, proptest.Quantity[units.Energy](20, 5000), gen.Float64Range(1, 2), gen.IntRange(1, 24)))
}

func TestBudgetThroughJSON(t *testing.T) {
	b := budgeted(t, prescribed(1180), kibble, 1, portion.Measuring{Meals: 2})
	data, err := json.Marshal(b)
	if err != nil {
		t.Fatal(err)
	}
	var back portion.Budget
	if err := json.Unmarshal(data, &back); err != nil || back != b {
		t.Errorf("%s: back %+v, %v", data, back, err)
	}
	for _, bad := range []string{`{}`, strings.Replace(string(data), `"label":"`, `"label":"-`, 1), strings.Replace(string(data), `"label"`, `"labels"`, 1)} {
		if err := json.Unmarshal([]byte(bad), &back); err == nil || back != b {
			t.Errorf("%s: %v", bad, err)
		}
	}
	var m portion.Measuring
	if err := json.Unmarshal([]byte(`{"meals":2,"scoop":"8 %","density":{"low":"3400 kcal/kg","high":"3700 kcal/kg"}}`), &m); err != nil ||
		m != (portion.Measuring{Meals: 2, Scoop: 8, Density: units.Range[units.EnergyDensity]{Low: 3400, High: 3700}}) {
		t.Errorf("%+v, %v", m, err)
	}
	if err := json.Unmarshal([]byte(`{"scoops":"8 %"}`), &m); err == nil {
		t.Error("an unknown member is read")
	}
}

func TestComponentsThroughText(t *testing.T) {
	for c := portion.LabelRounding; c <= portion.IndividualNeed; c++ {
		text, err := c.MarshalText()
		var back portion.Component
		if err != nil || back.UnmarshalText(text) != nil || back != c {
			t.Errorf("%d: %s, %v, back %v", c, text, err, back)
		}
	}
}

func TestMeasuringAllocatesNothing(t *testing.T) {
	w, err := fed(given(1180), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	for name, call := range map[string]func() error{
		"Fitness": func() error { f, err := w.Fitness(0, 6); fitnessSink = f; return err },
		"Budget":  func() error { b, err := w.Budget(0, portion.Measuring{Meals: 6}); budgetSink = b; return err },
		"InCups": func() error {
			c, err := w.InCups(0, 6, portion.Cup{Mass: 100, Marks: portion.Thirds})
			cuppedSink = c
			return err
		},
	} {
		if allocs := testing.AllocsPerRun(1000, func() {
			if err := call(); err != nil {
				panic(err)
			}
		}); allocs != 0 {
			t.Errorf("%s allocates %v times, want none", name, allocs)
		}
	}
}

var budgetSink portion.Budget

func BenchmarkBudget(b *testing.B) {
	ration, err := portion.Weigh(prescribed(1180), diet.Only(kibble))
	if err != nil {
		b.Fatal(err)
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		x, err := w.Budget(0, portion.Measuring{Meals: 1 + i&7, Scoop: units.Percent(i & 15)})
		if err != nil {
			b.Fatal(err)
		}
		budgetSink = x
	}
}

// BenchmarkBudgetFloor is the bare arithmetic of BenchmarkBudget.
func BenchmarkBudgetFloor(b *testing.B) {
	for i := 0; b.Loop(); i++ {
		bowl := math.Floor(331 / float64(1+i&7))
		label, scale := 10/math.Sqrt(12)/3560, 1/math.Sqrt(12)/bowl
		sink[0], sink[1], sink[2] = label, scale, bowl*3.56
	}
}

// A label that gives only kcal and grams of a cup is known less well than any
// scale weighs.
func ExampleWeighed_Budget() {
	ration, err := portion.Weigh(prescribed(1180), diet.Only(perCup))
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := ration.On(units.Gram / 10)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := w.Budget(0, portion.Measuring{Meals: 2})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(b.Explain())
	// Output:
	// bowl      165.7 g of a dry food, 589.9 kcal by the label, the smallest of 2 a day
	// label     ±0.30 %, the rounding of the label's figures; 100 % of the variance
	// scale     ±0.017 %, 0.1 g ÷ √12 in 165.7 g; 0 % of the variance
	// together  √(0.30² + 0.017²) % = 0.30 %
	// so        twice that, about 19 times in 20: 586.3 kcal to 593.4 kcal in the bowl
	// source    JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.6, 4.3.7, F.2.2.1
	// limit     weighing more finely won't help: the label is the limit
}
