package trend_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// firstDay is that of the plans here.
const firstDay = "2026-01-05"

// byDay returns a log on one scale: day of the plan, weight in kg.
func byDay(step units.Mass, dayAndKg ...float64) trend.Weights {
	var log trend.Weights
	for i := 0; i < len(dayAndKg); i += 2 {
		log = append(log, trend.Weighing{
			Date: on(firstDay) + trend.Date(dayAndKg[i]), Weight: units.Mass(dayAndKg[i+1]) * kg, Readability: step,
		})
	}
	return log
}

// dog is a plan of a dog of 40 kg that should weigh 32; 0.6 × 70 × 32^0.75 =
// 565 kcal at the gate.
func dog(daily units.Energy) trend.Plan {
	a := energy.Animal{Species: energy.Dog, Weight: 40 * kg, Ideal: 32 * kg}
	return trend.Plan{Loss: energy.WeightLoss{Animal: a}, Daily: daily, Since: on(firstDay), Asked: true}
}

func with(p trend.Plan, change func(*trend.Plan)) trend.Plan {
	change(&p)
	return p
}

// By hand, on a scale of 10 g: two weighings of 6 kg differ by 2.306 × √2 × 18.2 =
// 59 g or more before a change is shown; on one of 100 g two of 40 kg by 0.40 kg.
func TestLastDaysCountWhateverTheLineSays(t *testing.T) {
	const fine, coarse = 10 * units.Gram, 100 * units.Gram
	to4 := func(p *trend.Plan) { p.Loss.Animal.Ideal = 4 * kg }
	aim := func(low, high units.Percent) func(*trend.Plan) {
		return func(p *trend.Plan) { p.Target = units.Range[units.Percent]{Low: low, High: high} }
	}
	for _, tt := range []struct {
		name    string
		plan    trend.Plan
		log     trend.Weights
		later   trend.Date // days from the last weighing to the visit
		verdict trend.Verdict
		change  units.Percent
		refer   bool
		say     string // the sentence
		caution string // the start of one, with its level
	}{
		{ // 430 g in a week are 7.17 % of 6 kg
			"cat stands still, then crashes", cat(200), byDay(fine, 0, 6, 14, 6.02, 28, 6.04, 42, 6.02, 56, 6.03, 63, 5.60), 0,
			trend.TooFast, 20, true, "Too fast: since 2026-03-02 it loses 7.17 % of its initial weight a week, and the target is 0.5 % to 1 % a week.",
			"refer: the cat loses 7.17 % of its initial weight a week since 2026-03-02, more than 2 %",
		},
		{ // 160 g are 2.67 %; 160 - 59 g are 1.68 %, still above 1 %
			"cat stands still, then loses 160 g", cat(200), byDay(fine, 0, 6, 14, 6.02, 28, 6.04, 42, 6.02, 56, 6.03, 63, 5.87), 0,
			trend.TooFast, 20, true, "Too fast: since 2026-03-02 it loses 2.67 % of its initial weight a week, and the target is 0.5 % to 1 % a week.",
			"refer: the cat loses 2.67 % of its initial weight a week since 2026-03-02, more than 2 %",
		},
		{ // 350 g are 5.83 %
			"cat gained, then loses", cat(200), byDay(fine, 0, 6, 14, 6.02, 28, 6.04, 42, 6.02, 56, 6.8, 63, 6.45), 0,
			trend.TooFast, 20, true, "Too fast: since 2026-03-02 it loses 5.83 % of its initial weight a week, and the target is 0.5 % to 1 % a week.",
			"refer: the cat loses 5.83 % of its initial weight a week since 2026-03-02, more than 2 %",
		},
		{ // 1.6 kg are 4 %
			"dog stands still, then loses 1.6 kg in a week", dog(1100), byDay(coarse, 0, 40, 14, 40.1, 28, 40.2, 42, 40.1, 56, 40.2, 63, 38.6), 0,
			trend.TooFast, 20, false, "Too fast: since 2026-03-02 it loses 4 % of its initial weight a week, and the target is 1 % to 2 % a week.",
			"warn: it loses 4 % of its initial weight a week since 2026-03-02, more than 2 %: give more, and call",
		},
		{ // 1.8 kg in two weeks are 2.25 % a week; 1.8 - 0.4 kg only 1.76 %. The line: -47.6 / 1960 kg a day, 0.43 %
			"dog loses more than 2 %, perhaps", dog(1100), byDay(coarse, 0, 40, 14, 40.1, 28, 40.2, 42, 40.1, 56, 38.3), 0,
			trend.TooEarly, 0, false, "Too early to tell: it loses 0.43 % of its initial weight a week, but since 2026-02-16 it loses 2.25 % of its initial weight a week, and the target is 1 % to 2 % a week.",
			"note: it loses 2.25 % of its initial weight a week since 2026-02-16, more than 2 %, though the scale can't tell it from that: no less food, and weigh again in a week",
		},
		{ // 250 g are 4.17 % of 6 kg, 4.5 % of 5.55 kg
			"on target, then a crash", with(cat(200), to4), byDay(fine, 0, 6, 28, 5.82, 56, 5.64, 70, 5.55, 77, 5.30), 0,
			trend.TooFast, 20, true, "Too fast: since 2026-03-16 it loses 4.17 % of its initial weight a week, and the target is 0.5 % to 1 % a week.",
			"refer: the cat loses 4.17 % of its initial weight a week since 2026-03-16, more than 2 %",
		},
		{ // 105 g are 1.75 % of 6 kg, 2.08 % of 5.04 kg; 105 - 50 g only 0.9 %. The line: -83.71 / 10130.75 kg a day, 0.96 %
			"cat loses more than 2 % of what it weighed", with(cat(200), to4), byDay(fine, 0, 6, 70, 5.4, 119, 5.04, 126, 4.935), 0,
			trend.OnTarget, 0, true, "On target: it loses 0.96 % of its initial weight a week, and the target is 0.5 % to 1 % a week.",
			"refer: the cat loses 2.08 % a week of what it weighed on 2026-05-04, more than 2 %",
		},
		{ // weighed every day: 1 % of 6 kg in 7 days is 60 g a week, 30 g a day are seven times that
			"cat crashes by the day", cat(200), byDay(fine, 0, 6, 14, 6, 28, 6, 29, 5.97, 30, 5.94, 31, 5.91, 32, 5.88, 33, 5.85, 34, 5.82, 35, 5.79), 0,
			trend.TooFast, 20, true, "Too fast: since 2026-02-02 it loses 3.5 % of its initial weight a week, and the target is 0.5 % to 1 % a week.",
			"refer: the cat loses 3.5 % of its initial weight a week since 2026-02-02, more than 2 %",
		},
		{ // 150 g of 6 kg; on this scale a change is shown from 111 g on
			"a week, and too fast already", cat(200), byDay(coarse, 0, 6, 7, 5.85), 0,
			trend.TooEarly, 0, true, "Too early to tell: 7 days on this energy, and two weeks are needed.",
			"refer: the cat loses 2.5 % of its initial weight a week, more than 2 %",
		},
		{
			"a crash before the energy was changed", with(cat(200), func(p *trend.Plan) { p.Since += 63 }), byDay(fine, 0, 6, 56, 6.03, 63, 5.6), 0,
			trend.TooEarly, 0, true, "Too early to tell: one weighing on this energy says nothing of a trend.",
			"refer: the cat loses 7.17 % of its initial weight a week since 2026-03-02, more than 2 %",
		},
		{
			"cat above 1 % and below a target of its own", with(cat(200), aim(1.5, 2)), byDay(fine, 0, 6, 14, 5.856, 28, 5.712), 0,
			trend.TooSlow, 0, false, "Too slow: it loses 1.2 % of its initial weight a week, and the target is 1.5 % to 2 % a week.",
			"warn: it loses 1.2 % of its initial weight a week, more than 1 %: no less food",
		},
		{
			"cat above 1 % within a target of its own", with(cat(200), aim(0.5, 2)), byDay(fine, 0, 6, 14, 5.784, 28, 5.568), 0,
			trend.OnTarget, 0, false, "On target: it loses 1.8 % of its initial weight a week, and the target is 0.5 % to 2 % a week.",
			"warn: it loses 1.8 % of its initial weight a week, more than 1 %: no less food",
		},
		{ // 0.7 of 4.5 kg are 15.6 %
			"cat far below its goal", cat(200), byDay(fine, 0, 6, 56, 5.6, 200, 4.3, 256, 3.8), 0,
			trend.AtGoal, 10, true, "Below the goal: 3.8 kg, and the target was 4.5 kg.",
			"refer: 3.8 kg is 15.6 % below its goal of 4.5 kg: it must not lose more",
		},
		{ // 4.28 kg is 4.9 % below
			"cat a little below its goal", cat(200), byDay(fine, 0, 6, 56, 5.6, 200, 4.5, 256, 4.28), 0,
			trend.AtGoal, 10, false, "At the goal: 4.28 kg, and the target was 4.5 kg.", "warn: nearly half of the cats regained",
		},
		{ // 4 kg in two weeks are 5 % a week of 40 kg; 28 is 12.5 % below 32
			"dog below its goal and falling", dog(1100), byDay(coarse, 0, 40, 14, 38, 28, 36, 42, 34, 56, 32, 70, 28), 0,
			trend.AtGoal, 20, true, "Below the goal: 28 kg, and the target was 32 kg.", "refer: 28 kg is 12.5 % below its goal of 32 kg",
		},
		{
			"dog at its goal and gaining", dog(1100), byDay(coarse, 0, 40, 7, 30.8, 21, 31.2, 35, 31.9), 0,
			trend.AtGoal, 0, false, "At the goal: 31.9 kg, and the target was 32 kg.", "warn: nearly half of the cats regained",
		},
		{ // 363 kcal, the gate is at 565
			"dog at its goal on next to nothing", dog(330), byDay(coarse, 0, 40, 140, 31.9), 0,
			trend.AtGoal, 10, true, "At the goal: 31.9 kg, and the target was 32 kg.",
			"refer: 363 kcal a day is less than WeightLoss gives without a veterinarian",
		},
		{
			"dog not weighed for 28 days", dog(1100), byDay(coarse, 0, 40, 28, 40), 28,
			trend.Stalled, -10, false, "Stalled: it loses 0 % of its initial weight a week, since the last visit it loses 0 %, and the target is 1 % to 2 % a week.",
			"note: ",
		},
		{
			"dog not weighed for 172 days", dog(1100), byDay(coarse, 0, 40, 28, 40), 172,
			trend.TooEarly, 0, false, "Too early to tell: the newest weight is 172 days old, weigh first.", "note: ",
		},
		{ // 20 g in two weeks; the line falls by 0.35 / 17.5 kg a week
			"cat stands still by the week", cat(200), byDay(fine, 0, 6, 7, 5.97, 14, 5.94, 21, 5.92, 28, 5.91, 35, 5.90), 0,
			trend.Stalled, -10, false, "Stalled: it loses 0.33 % of its initial weight a week, since 2026-01-26 it loses 0.17 %, and the target is 0.5 % to 1 % a week.",
			"note: ",
		},
	} {
		today := tt.log[len(tt.log)-1].Date + tt.later
		s := next(t, tt.plan, tt.log, today.String())
		if s.Verdict != tt.verdict || s.Change != tt.change || s.Refer != tt.refer || s.Ask {
			t.Errorf("%s: %v, %v, refer %v, ask %v; want %v, %v, %v", tt.name, s.Verdict, s.Change, s.Refer, s.Ask, tt.verdict, tt.change, tt.refer)
		}
		if got := s.Sentence(); got != tt.say {
			t.Errorf("%s:\n%s\nwant\n%s", tt.name, got, tt.say)
		}
		if !slices.ContainsFunc(s.Cautions(), func(c advice.Caution) bool { return strings.HasPrefix(c.Level.String()+": "+c.Text, tt.caution) }) {
			t.Errorf("%s: want %q in\n%s", tt.name, tt.caution, s.Explain())
		}
	}
}

func TestStaleWeightIsWeighedAgainFirst(t *testing.T) {
	s := next(t, dog(1100), byDay(100, 0, 40, 28, 40), "2026-07-24")
	if s.Recheck != on("2026-07-25") {
		t.Errorf("weigh again on %v, want the next day", s.Recheck)
	}
}

// 40 to 30.8 kg in the first week, of which the line still falls; then it gains 0.4 and 0.7 kg.
func TestGainAtTheGoalIsNoLoss(t *testing.T) {
	s := next(t, dog(1100), byDay(100, 0, 40, 7, 30.8, 21, 31.2, 35, 31.9), "2026-02-09")
	for _, c := range s.Cautions() {
		if strings.Contains(c.Text, "loses") {
			t.Errorf("it gains: %s", c)
		}
	}
	if got := strings.Join(s.Reasons(), " "); !strings.Contains(got, "It gains: 1100 kcal a day stay as they are.") || s.Recheck != on("2026-02-23") {
		t.Errorf("weigh again on %v\n%s", s.Recheck, got)
	}
}

func TestNextVisitIsADay(t *testing.T) {
	p := dog(1100)
	p.Since = on("2199-12-03")
	log := weighings(100, "2199-12-03", 40.0, "2199-12-31", 39.0)
	if s := next(t, p, log, "2199-12-31"); s.Recheck != on("2199-12-31") {
		t.Errorf("weigh again on %v", s.Recheck)
	}
}

func TestNoCutIsExplainedWhereALossIsNotSafe(t *testing.T) {
	p := with(cat(200), func(p *trend.Plan) { p.Target = units.Range[units.Percent]{Low: 1.5, High: 2} })
	s := next(t, p, byDay(10, 0, 6, 14, 5.856, 28, 5.712), "2026-02-02")
	const want = "It loses more than 1 % a week: never cut there, whatever the target; 200 kcal a day stay."
	if got := strings.Join(s.Reasons(), " "); !strings.Contains(got, want) || s.Recheck != on("2026-02-09") {
		t.Errorf("weigh again on %v\n%s\nwant %s", s.Recheck, got, want)
	}
}
