package trend_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

const wantDay = `want a day of the calendar, as in "2026-11-02", from 1900 to 2199`

func TestLogOfWeightsIsRefused(t *testing.T) {
	weigh := func(day string, w units.Mass) trend.Weighing {
		return trend.Weighing{Date: on(day), Weight: w, Readability: 10 * units.Gram}
	}
	a, b := weigh("2026-11-02", 4.3*kg), weigh("2026-11-05", 4.18*kg)
	const confirm = "; weigh again, and set Confirmed where it is right)"
	for _, tt := range []struct {
		name string
		log  trend.Weights
		want string
	}{
		{"twice a day", trend.Weights{a, a}, `trend: weighing 2 date "2026-11-02": want one entry a day (stands twice)`},
		{"unordered", trend.Weights{b, a}, `trend: weighing 2 date "2026-11-02": want the days in their order (after 2026-11-05)`},
		{"future", trend.Weights{a, weigh("2026-11-10", 4*kg)}, `trend: weighing 2 date "2026-11-10": want a day up to 2026-11-09 (in the future)`},
		{"no day", trend.Weights{{Weight: 4 * kg, Readability: 1}}, `trend: weighing 1 date "": ` + wantDay + ` (not given)`},
		{"no such day", trend.Weights{{Date: -5, Weight: 4 * kg, Readability: 1}}, `trend: weighing 1 date "day -5": ` + wantDay},
		{"no weight", trend.Weights{weigh("2026-11-02", 0)}, `trend: weighing 1 weight "0 g": want above 0 g, up to 200 kg`},
		{"NaN", trend.Weights{weigh("2026-11-02", units.Mass(math.NaN()))}, `trend: weighing 1 weight "NaN g": want above 0 g, up to 200 kg`},
		{"infinite", trend.Weights{weigh("2026-11-02", units.Mass(math.Inf(1)))}, `trend: weighing 1 weight "+Inf g": want above 0 g, up to 200 kg`},
		{"no scale", trend.Weights{{Date: a.Date, Weight: 4 * kg}}, `trend: weighing 1 readability "0 g": want the step of the scale, above 0 g and at most half the weight`},
		{"all at once", trend.Weights{b, {Date: a.Date}}, `trend: weighing 2 date "2026-11-02": want the days in their order (after 2026-11-05); ` +
			`trend: weighing 2 weight "0 g": want above 0 g, up to 200 kg`},
		{
			"pounds",
			trend.Weights{weigh("2026-10-02", 19.4*kg), weigh("2026-11-02", 44*kg)},
			`trend: weighing 2 weight "44 kg": want a weight like the 19.4 kg of 2026-10-02 (+126.8 %: pounds? 44 lb is 19.96 kg` + confirm,
		},
		{
			"pounds first",
			trend.Weights{weigh("2026-10-02", 44*kg), weigh("2026-10-16", 19.4*kg), weigh("2026-11-02", 19.6*kg)},
			`trend: weighing 1 weight "44 kg": want a weight like the 19.4 kg of 2026-10-16 (+126.8 %: pounds? 44 lb is 19.96 kg` + confirm,
		},
		{
			"pounds between",
			trend.Weights{weigh("2026-10-02", 19.4*kg), weigh("2026-10-16", 44*kg), weigh("2026-11-02", 19.6*kg)},
			`trend: weighing 2 weight "44 kg": want a weight like the 19.4 kg of 2026-10-02 (+126.8 %: pounds? 44 lb is 19.96 kg` + confirm,
		},
		{
			"kilograms for pounds",
			trend.Weights{weigh("2026-10-02", 20*kg), weigh("2026-10-16", 9.07*kg)},
			`trend: weighing 2 weight "9.07 kg": want a weight like the 20 kg of 2026-10-02 (-54.6 %: kilograms read as pounds? 9.07 kg is 20 lb` + confirm,
		},
		{
			"kilograms as grams",
			trend.Weights{weigh("2026-10-02", 4.3*kg), {Date: on("2026-10-16"), Weight: 4.2 * units.Gram, Readability: units.Gram}},
			`trend: weighing 2 weight "4.2 g": want a weight like the 4.3 kg of 2026-10-02 (-99.9 %: kilograms? 4.2 kg` + confirm,
		},
		{
			"point",
			trend.Weights{weigh("2026-10-02", 4.3*kg), weigh("2026-10-16", 42*kg)},
			`trend: weighing 2 weight "42 kg": want a weight like the 4.3 kg of 2026-10-02 (+876.7 %: the decimal point?` + confirm,
		},
		{
			"another animal",
			trend.Weights{weigh("2026-10-02", 4.3*kg), weigh("2026-10-16", 26*kg)},
			`trend: weighing 2 weight "26 kg": want a weight like the 4.3 kg of 2026-10-02 (+504.7 %: another animal, a carrier, the unit?` + confirm,
		},
	} {
		err := tt.log.Check(on("2026-11-09"))
		if err == nil || err.Error() != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.name, err, tt.want)
		}
		var field *units.FieldError
		if !errors.As(err, &field) {
			t.Errorf("%s: %T is no FieldError", tt.name, err)
		}
		if got, err := tt.log.Trend(on("2026-11-09")); err == nil || got != (trend.Trend{}) {
			t.Errorf("%s: a trend all the same: %v, %v", tt.name, got, err)
		}
	}
}

func TestConfirmedWeightIsTakenHoweverUnlikely(t *testing.T) {
	log := weighings(10*units.Gram, "2026-10-02", 5.0, "2026-10-23", 2.4)
	if log.Check(on("2026-10-23")) == nil {
		t.Fatal("taken before it is confirmed")
	}
	log[1].Confirmed = true
	if err := log.Check(on("2026-10-23")); err != nil {
		t.Error(err)
	}
	w := trend.Watch{Animal: energy.Animal{Species: energy.Cat}, Today: on("2026-10-23"), Weights: log}
	if got, want := kinds(t, w), []string{"quick_loss refer", "tenth_lost refer", "rate_of_loss refer"}; !slices.Equal(got, want) {
		t.Errorf("%q", got)
	}
}

func TestTodayIsNeeded(t *testing.T) {
	const want = `trend: today "": ` + wantDay + ` (not given: the clock is never read)`
	log := custardWeights()
	_, errTrend := log.Trend(0)
	_, errNext := harbottlePlan().Next(harbottleWeights(), 0)
	_, errFlags := trend.Watch{Animal: energy.Animal{Species: energy.Cat}}.Flags()
	_, errDays := trend.Intake{}.Days(200, 0)
	_, errLitter := kittens().Reports(0)
	for i, err := range []error{log.Check(0), errTrend, errNext, errFlags, errDays, trend.Appetites{}.Check(0)} {
		if err == nil || err.Error() != want {
			t.Errorf("%d: %v, want %s", i, err, want)
		}
	}
	if errLitter == nil {
		t.Error("a litter is reported without a day")
	}
}

func TestIntakeIsRefused(t *testing.T) {
	good := trend.Served{Date: on("2026-11-02"), Meal: 1, Food: "dry", Offered: 30, Left: 5, Density: 3850}
	with := func(change func(*trend.Served)) trend.Intake {
		s := good
		change(&s)
		return trend.Intake{s}
	}
	for _, tt := range []struct {
		name string
		log  trend.Intake
		want string
	}{
		{"twice", trend.Intake{good, good}, `trend: intake 2 food "dry": want each food once a meal (stands twice in meal 1)`},
		{"no meal", with(func(s *trend.Served) { s.Meal = 0 }), `trend: intake 1 meal "0": want 1 to 99`},
		{"no food", with(func(s *trend.Served) { s.Food = "" }), `trend: intake 1 food "": want the food's name (not given)`},
		{"nothing offered", with(func(s *trend.Served) { s.Offered = 0 }), `trend: intake 1 offered "0 g": want above 0 g, up to 20 kg`},
		{"more left", with(func(s *trend.Served) { s.Left = 31 }), `trend: intake 1 left "31 g": want 0 g to the 30 g offered (weighed with the bowl, or the two exchanged?)`},
		{"less than none left", with(func(s *trend.Served) { s.Left = -1 }), `trend: intake 1 left "-1 g": want 0 g to the 30 g offered (weighed with the bowl, or the two exchanged?)`},
		{"no density", with(func(s *trend.Served) { s.Density = 0 }), `trend: intake 1 density "0 kcal/kg": want above 0 kcal/kg, up to 9400 kcal/kg, as fed`},
		{"future", with(func(s *trend.Served) { s.Date += 2 }), `trend: intake 1 date "2026-11-04": want a day up to 2026-11-03 (in the future)`},
	} {
		if err := tt.log.Check(on("2026-11-03")); err == nil || err.Error() != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.name, err, tt.want)
		}
	}
	if _, err := (trend.Intake{good}).Days(0, on("2026-11-03")); err == nil || err.Error() != `trend: goal "0 kcal": want above 0 kcal a day` {
		t.Error(err)
	}
}

func TestPlanIsRefused(t *testing.T) {
	log := harbottleWeights()
	for _, tt := range []struct {
		name   string
		change func(*trend.Plan)
		want   string
	}{
		{"no energy", func(p *trend.Plan) { p.Daily = 0 }, `trend: daily "0 kcal": want above 0 kcal, up to 50000 kcal a day`},
		{"no day", func(p *trend.Plan) { p.Since = 0 }, `trend: since "": ` + wantDay + ` (not given)`},
		{"3 % a week", func(p *trend.Plan) { p.Target = units.Range[units.Percent]{Low: 1, High: 3} }, `trend: target "1 % to 3 %": want a range within 0.5 % to 2 % a week, or none for that of the species`},
		{"pounds", func(p *trend.Plan) { p.Loss.Animal.Weight = 84.9 * kg }, `trend: weighing 1 weight "38.5 kg": want a weight like the plan's 84.9 kg (-54.7 %: kilograms read as pounds? 38.5 kg is 84.9 lb)`},
	} {
		p := harbottlePlan()
		tt.change(&p)
		got, err := p.Next(log, on("2026-12-28"))
		if err == nil || err.Error() != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.name, err, tt.want)
		}
		if got != (trend.Step{}) {
			t.Errorf("%s: a step all the same", tt.name)
		}
	}
	ill := harbottlePlan()
	ill.Loss.Animal.Circumstances = energy.Ill
	if _, err := ill.Next(log, on("2026-12-28")); !errors.Is(err, energy.ErrVeterinarian) {
		t.Errorf("an ill dog's plan goes on: %v", err)
	}
	if _, err := harbottlePlan().Next(nil, on("2026-12-28")); err == nil || err.Error() != `trend: weights "0 weighings": want one or more` {
		t.Error(err)
	}
}

func TestLitterIsRefused(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(*trend.Litter)
		want   string
	}{
		{"no birthday", func(l *trend.Litter) { l.Born = 0 }, `trend: born "": ` + wantDay + ` (not given)`},
		{"powder", func(l *trend.Litter) { l.Milk = 5.1 }, `trend: milk "5.1 kcal/mL": want above 0 kcal/mL, up to 3 kcal/mL, as made up (of the powder?)`},
		{"no feeds", func(l *trend.Litter) { l.Feeds = 0 }, `trend: feeds "0": want 1 to 24 a day`},
		{"no names", func(l *trend.Litter) { l.Nurslings[1].Name = "Pim" }, `trend: nursling 2 name "Pim": want each name once (stands twice)`},
		{"water", func(l *trend.Litter) { l.Milk, l.Nurslings = 0.1, l.Nurslings[:1] }, `trend: nursling 1 Pim milk "0.1 kcal/mL": want rich enough for 24 feeds a day that the stomach holds (too thin)`},
		{"weighed before birth", func(l *trend.Litter) { l.Born, l.Nurslings = on("2026-11-03"), l.Nurslings[:1] }, `trend: nursling 1 Pim weighing 1 date "2026-11-02": want the day of birth, 2026-11-03, or later`},
		{"ferret kits", func(l *trend.Litter) { l.Species, l.Nurslings = energy.Ferret, l.Nurslings[:1] }, `energy: nursling 1 Pim species "ferret": want dog or cat (no energy is published for its young: Prescribed takes a veterinarian's figure)`},
	} {
		l := kittens()
		tt.change(&l)
		if _, err := l.Reports(on("2026-11-08")); err == nil || err.Error() != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.name, err, tt.want)
		}
	}
}

func TestRequirementNeedsEveryDay(t *testing.T) {
	log := weighings(10*units.Gram, "2026-11-02", 4.3, "2026-11-16", 4.3)
	var intake trend.Intake
	for d := on("2026-11-02"); d < on("2026-11-16"); d++ {
		intake = append(intake, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 60, Density: 3850})
	}
	gap := append(append(trend.Intake{}, intake[:3]...), intake[8:]...)
	_, err := trend.NewRequirement(log, gap, on("2026-11-16"))
	const want = `trend: intake "no line for 2026-11-05, 2026-11-06, 2026-11-07 and 2 more": want every day from 2026-11-02 to 2026-11-15 (weigh in, and weigh back, every day)`
	if err == nil || err.Error() != want {
		t.Errorf("%v\nwant %s", err, want)
	}
	log[1].Date = on("2026-11-15")
	const short = `trend: weights "13 days from the first to the last": want 14 days or more`
	if _, err := trend.NewRequirement(log, intake[:13], on("2026-11-16")); err == nil || err.Error() != short {
		t.Errorf("%v\nwant %s", err, short)
	}
}
