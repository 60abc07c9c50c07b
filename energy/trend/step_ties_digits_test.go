package trend_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// roundCat is a plan of a cat of 5.6 kg that should weigh 4.5: 1 % a week is 8 g a
// day, so that a rate of 1 % is exactly that. On a scale of 1 g two weighings differ
// by 55 g or more before a change is shown.
func roundCat(change func(*trend.Plan)) trend.Plan {
	p := cat(200)
	p.Loss.Animal.Weight = 5.6 * kg
	if change != nil {
		change(&p)
	}
	return p
}

// toGoal is a plan on a new energy since a day, for a goal in kg.
func toGoal(ideal float64, since trend.Date) func(*trend.Plan) {
	return func(p *trend.Plan) {
		p.Loss.Animal.Ideal = units.Mass(ideal) * kg
		p.Since += since
	}
}

// What lies exactly on a bound belongs to the target, to the goal, to the safe rate.
func TestBoundBelongsToWhatItEnds(t *testing.T) {
	both := func(list ...func(*trend.Plan)) func(*trend.Plan) {
		return func(p *trend.Plan) {
			for _, f := range list {
				f(p)
			}
		}
	}
	for _, tt := range []struct {
		name    string
		plan    trend.Plan
		log     trend.Weights
		verdict trend.Verdict
		change  units.Percent
		refer   bool
		recheck trend.Date // day of the plan
		say     string     // the start of the sentence
	}{
		{"1 % a week", roundCat(nil), byDay(1, 0, 5.6, 14, 5.488), trend.OnTarget, 0, false, 28, "On target: it loses 1 % "},
		{"0.5 % a week", roundCat(nil), byDay(1, 0, 5.6, 14, 5.544), trend.OnTarget, 0, false, 28, "On target: it loses 0.5 % "},
		{ // of a target of its own, which 1 % is below
			"1 % a week is safe to cut", roundCat(aim(1.5, 2)), byDay(1, 0, 5.6, 28, 5.376), trend.TooSlow, -10, false, 42, "Too slow: it loses 1 % ",
		},
		{ // 163 g in the last two weeks are 1.46 %
			"1 % a week, faster now", roundCat(aim(1.5, 2)), byDay(1, 0, 5.6, 14, 5.539, 28, 5.376), trend.TooEarly, 0, false, 35,
			"Too early to tell: it loses 1 % of its initial weight a week, but since 2026-01-19 it loses 1.46 % ",
		},
		{ // on this scale the line allows for 0.45 % more
			"1 % a week on a coarse scale, faster now", roundCat(aim(1.25, 2)), byDay(100, 0, 5.6, 14, 5.539, 28, 5.376), trend.TooEarly, 0, false, 35,
			"Too early to tell: it loses 1 % of its initial weight a week, but since 2026-01-19 it loses 1.46 % ",
		},
		{ // 223 g in the last two weeks are 1.99 %, 168 of them for sure 1.5 %
			"1 % a week, much faster now", roundCat(nil), byDay(1, 0, 5.6, 14, 5.599, 28, 5.376), trend.TooFast, 10, false, 35,
			"Too fast: since 2026-01-19 it loses 1.99 % ",
		},
		{ // 56 g in the last two weeks are 0.5 %
			"0.5 % since the last visit", roundCat(aim(0.75, 1)), byDay(1, 0, 5.6, 14, 5.52, 28, 5.464), trend.TooSlow, -10, false, 42, "Too slow: it loses 0.61 % ",
		},
		{ // 60 of 6000 g in the last week are 1 %; the line falls by 17 g a week
			"1 % in the last week", cat(200), byDay(1, 0, 6, 14, 6, 21, 5.94), trend.TooEarly, 0, false, 35, "Too early to tell: it loses 0.29 % ",
		},
		{"two weeks, and the log allows for the target", cat(200), byDay(100, 0, 6, 14, 5.96), trend.TooEarly, 0, false, 28, "Too early to tell: it loses 0.33 % of its initial weight a week, but the log allows for "},
		{ // 180 g are 1.5 % a week; on a scale of 200 g they are not shown
			"two weeks are enough for too fast", cat(200), byDay(200, 0, 6, 14, 5.82), trend.TooFast, 10, false, 21, "Too fast: it loses 1.5 % ",
		},
		{ // 120 of 6000 g are 2 % a week
			"2 % in a cat", with(cat(200), toGoal(4.5, 7)), byDay(1, 0, 6, 7, 5.88), trend.TooEarly, 0, false, 14, "Too early to tell: one weighing",
		},
		{ // 120 g are 2 % of 6 kg and 2.4 % of 5
			"2 % of the first weight, more of this", with(cat(200), toGoal(4, 77)), byDay(1, 0, 6, 70, 5, 77, 4.88), trend.TooEarly, 0, true, 84, "Too early to tell: one weighing",
		},
		{"at the goal, 2 % in a cat", with(cat(250), toGoal(5.88, 7)), byDay(1, 0, 6, 7, 5.88), trend.AtGoal, 10, false, 14, "At the goal: 5.88 kg"},
		{
			"at the goal, at twice the target", with(cat(250), both(toGoal(5.91, 7), aim(0.5, 0.75))), byDay(1, 0, 6, 7, 5.91), trend.AtGoal, 10, false, 14, "At the goal: 5.91 kg",
		},
		{"at the goal, 1 % in a cat", with(cat(250), toGoal(5.94, 7)), byDay(1, 0, 6, 7, 5.94), trend.AtGoal, 10, false, 21, "At the goal: 5.94 kg"},
		{"at the goal and gaining", dog(1100), byDay(100, 0, 40, 7, 30.8, 21, 31.2, 35, 32), trend.AtGoal, 0, false, 49, "At the goal: 32 kg"},
		{"5 % below the goal", dog(1100), byDay(100, 0, 40, 100, 31, 200, 30.4), trend.AtGoal, 10, false, 214, "At the goal: 30.4 kg"},
		{"a gain", cat(200), losing(-0.5), trend.Stalled, -20, false, 42, "Stalled: it gains 0.5 % of its initial weight a week, since 2026-01-19 it gains 0.5 %, "},
	} {
		s := next(t, tt.plan, tt.log, tt.log[len(tt.log)-1].Date.String())
		if s.Verdict != tt.verdict || s.Change != tt.change || s.Refer != tt.refer || s.Recheck != on(firstDay)+tt.recheck || !strings.HasPrefix(s.Sentence(), tt.say) {
			t.Errorf("%s: %v, %v, refer %v, day %d: %s", tt.name, s.Verdict, s.Change, s.Refer, s.Recheck-on(firstDay), s.Sentence())
		}
	}
}

func TestCautionOfAPaceBeginsAboveTheSafeRate(t *testing.T) {
	const more, noLess = "more than 1 %: give more", "more than 1 %: no less food"
	for _, tt := range []struct {
		name string
		plan trend.Plan
		log  trend.Weights
		want string // in a caution; "" for none of a pace
		from string
	}{
		{"1 % in the last week", cat(200), byDay(1, 0, 6, 14, 6, 21, 5.94), "", ""},
		{"at the goal, 1 %", with(cat(250), toGoal(5.94, 7)), byDay(1, 0, 6, 7, 5.94), "", ""},
		{"at the goal and gaining", dog(1100), byDay(100, 0, 40, 7, 30.8, 21, 31.2, 35, 32), "", ""},
		{"two weeks, not shown", cat(200), byDay(200, 0, 6, 14, 5.82), "warn it loses 1.5 % of its initial weight a week, " + more, "p. 529"},
		{"2 % in a cat", with(cat(200), toGoal(4.5, 7)), byDay(1, 0, 6, 7, 5.88), "warn it loses 2 % of its initial weight a week since 2026-01-05, " + noLess, "p. 529"},
		{
			"2 % of the first weight, more of this", with(cat(200), toGoal(4, 77)), byDay(1, 0, 6, 70, 5, 77, 4.88),
			"refer the cat loses 2.4 % a week of what it weighed on 2026-03-16, more than 2 %, though the scale can't tell it from that: a veterinarian today", "1 to 2 % a week in dogs, 0.5 to 2 % in cats",
		},
		{ // of 120 g all but √(144.1 + 135.6) × 2.306 = 38.6 g are shown, 2.04 % of 4 kg
			"the same for sure", with(cat(200), toGoal(4, 77)), byDay(1, 0, 6, 70, 4, 77, 3.88),
			"refer the cat loses 3 % a week of what it weighed on 2026-03-16, more than 2 %: a veterinarian today", "1 to 2 % a week in dogs, 0.5 to 2 % in cats",
		},
		{"dog", dog(1100), byDay(100, 0, 40, 14, 38.2, 28, 36.4), "warn it loses 2.25 % of its initial weight a week, more than 2 %: give more", "p. 522 and Box 27-12, p. 532"},
	} {
		s := next(t, tt.plan, tt.log, tt.log[len(tt.log)-1].Date.String())
		got, from := "", ""
		for _, c := range s.Cautions() {
			if strings.Contains(c.Text, "loses") && strings.Contains(c.Text, " more than ") && !strings.HasPrefix(c.Text, "if ") {
				got, from = c.Level.String()+" "+c.Text, c.Source.Where
			}
		}
		if !strings.HasPrefix(got, tt.want) || (got == "") != (tt.want == "") || from != tt.from {
			t.Errorf("%s: %q [%s], want %q [%s]", tt.name, got, from, tt.want, tt.from)
		}
	}
}

// 10 of 6000 g in the last two weeks are 0.08 % a week; the line falls by 0.61 % and is
// sure to 2.228 × 22.2 g / √980 a day, 0.18 % a week.
func TestTargetThatIsNotSureIsNoted(t *testing.T) {
	const settled, little = "one more weighing before this counts as settled", "little was lost since the last visit ("
	for _, tt := range []struct {
		name string
		log  trend.Weights
		want []string
	}{
		{"on target, little lately", byDay(1, 0, 6, 14, 5.9, 28, 5.8, 42, 5.79), []string{settled, little + "it loses 0.08 % of its initial weight a week)"}},
		{"on target, on a coarse scale", byDay(100, 0, 6, 14, 5.93), []string{settled}},
		{"on target, for sure", losing(0.75), nil},
		{"stalled", losing(0.2), nil},
		{"too early", byDay(100, 0, 6, 14, 5.96), nil},
	} {
		s := next(t, cat(200), tt.log, tt.log[len(tt.log)-1].Date.String())
		var got []string
		for _, text := range []string{settled, little} {
			got = append(got, warned(s, text)...)
		}
		if !slices.EqualFunc(got, tt.want, strings.Contains) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestReasonNamesItsSource(t *testing.T) {
	monthly := byDay(1, 0, 6.1, 63, 6, 77, 5.916, 91, 5.832)
	for _, tt := range []struct {
		name       string
		plan       trend.Plan
		log        trend.Weights
		change     string // the second reason
		weighAgain string // in the last
	}{
		{"on target after two months", with(cat(200), toGoal(4.5, 63)), monthly, "200 kcal a day stay", "every 2 weeks until the rate is established, then monthly"},
		{"on target", cat(200), losing(0.75), "200 kcal a day stay", "every 2 weeks for the first 2 months"},
		{"a gain", cat(200), losing(-0.5), "It is shown to have gained, and what else it gets was asked: 200 kcal to 160 kcal a day, -20 %.", "every 2 weeks for the first 2 months"},
		{"at the goal", cat(200), byDay(1, 0, 6, 100, 5, 200, 4.45), "The way to a steady weight", "p. 907"},
		{"too fast", cat(200), losing(1.2), "More food, never less", "p. 3088: every 1 to 2 weeks"},
	} {
		s := next(t, tt.plan, tt.log, tt.log[len(tt.log)-1].Date.String())
		got := s.Reasons()
		if last := got[len(got)-1]; len(got) != 3 || !strings.HasPrefix(got[1], tt.change) || !strings.Contains(last, tt.weighAgain) {
			t.Errorf("%s: %q", tt.name, got)
		}
	}
}

func TestEndOfARangeIsTaken(t *testing.T) {
	for name, change := range map[string]func(*trend.Plan){
		"50,000 kcal": func(p *trend.Plan) { p.Daily = 50000 },
	} {
		if _, err := with(dog(1100), change).Next(byDay(100, 0, 40), on(firstDay)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	const want = `trend: target "1 % to 1 %": want a range within 0.5 % to 2 % a week, or none for that of the species`
	if _, err := with(dog(1100), aim(1, 1)).Next(byDay(100, 0, 40), on(firstDay)); err == nil || err.Error() != want {
		t.Errorf("%v, want %s", err, want)
	}
	if err := byDay(100, 0, 200).Check(on(firstDay)); err != nil {
		t.Error(err)
	}
	served := func(s trend.Served) trend.Intake {
		s.Date, s.Food = on(firstDay), "dry"
		return trend.Intake{s}
	}
	for _, s := range []trend.Served{
		{Meal: 99, Offered: 30, Density: 3850},
		{Meal: 1, Offered: 20 * kg, Density: 3850},
		{Meal: 1, Offered: 30, Left: 30, Density: 9400},
	} {
		if err := served(s).Check(on(firstDay)); err != nil {
			t.Errorf("%+v: %v", s, err)
		}
	}
	if err := served(trend.Served{Meal: 100, Offered: 30, Density: 3850}).Check(on(firstDay)); err == nil {
		t.Error("a hundredth meal is taken")
	}
	// 70 × 81^0.75 = 1890 kcal, a third of which are 630.
	got, err := served(trend.Served{Meal: 1, Offered: 630, Density: 1000}).UnderThird(energy.Animal{Species: energy.Dog, Weight: 81 * kg}, on(firstDay))
	if err != nil || len(got) != 1 {
		t.Errorf("%v, %v: want the day of a third", got, err)
	}
}

func TestEquationAtTheEndOfTheRangeDoesNotDiffer(t *testing.T) {
	weights := weighings(10, "2026-11-02", 4.0, "2026-11-16", 4.0)
	var intake trend.Intake
	for d := on("2026-11-02"); d < on("2026-11-16"); d++ {
		intake = append(intake, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 60, Density: 4000})
	}
	r, err := trend.NewRequirement(weights, intake, on("2026-11-16"))
	if err != nil {
		t.Fatal(err)
	}
	for daily, want := range map[units.Energy]bool{r.Low: false, r.High: false, r.Daily: false, r.Low - 1: true, r.High + 1: true} {
		if _, differs := r.Against(energy.Estimate{Daily: daily}); differs != want {
			t.Errorf("%v of %v to %v: %v", daily, r.Low, r.High, differs)
		}
	}
	if got := r.Explain(); !strings.Contains(got, "eaten + 7920 kcal for each kg lost\n          = 240 kcal + 7.92 × 0 g a day = 240 kcal\n") &&
		!strings.Contains(got, "eaten + 7920 kcal for each kg lost\n          = 240 kcal + 7.92 × 0.0 g a day = 240 kcal\n") {
		t.Errorf("a steady weight:\n%s", got)
	}
}
