package trend_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// aim sets the target of a plan.
func aim(low, high units.Percent) func(*trend.Plan) {
	return func(p *trend.Plan) { p.Target = units.Range[units.Percent]{Low: low, High: high} }
}

// warned returns the texts of the cautions that hold a text, each with its level.
func warned(s trend.Step, text string) (list []string) {
	for _, c := range s.Cautions() {
		if strings.Contains(c.Text, text) {
			list = append(list, c.Level.String()+" "+c.Text)
		}
	}
	return list
}

// 5 % of 4.5 kg are 225 g: ours.
func TestGoalIsPassedByFivePercent(t *testing.T) {
	for last, refer := range map[float64]bool{4.276: false, 4.274: true} {
		s := next(t, cat(200), byDay(1, 0, 6, 100, 5, 200, 4.4, 300, last), "2026-11-01")
		if s.Verdict != trend.AtGoal || s.Refer != refer {
			t.Errorf("%v kg: %v, refer %v", last, s.Verdict, s.Refer)
		}
	}
}

// Twice the target is 1.6 % of 6 kg, 96 g a week.
func TestBigStepBeginsAtTwiceTheTarget(t *testing.T) {
	for _, tt := range []struct {
		rate   float64 // percent of 6 kg a week
		change units.Percent
	}{{1.55, 10}, {1.65, 20}, {1.95, 20}} {
		s := next(t, with(cat(200), aim(0.5, 0.8)), losing(tt.rate), "2026-02-02")
		if s.Verdict != trend.TooFast || s.Change != tt.change {
			t.Errorf("%v %%: %v, %v", tt.rate, s.Verdict, s.Change)
		}
	}
	// Of a usual target twice is 2 % in a cat, and 4 % in a dog: there 2 % are enough.
	s := next(t, dog(1100), byDay(100, 0, 40, 14, 38.2, 28, 36.4), "2026-02-02") // 0.9 kg of 40 a week are 2.25 %
	if s.Change != 20 {
		t.Errorf("a dog that loses 2.25 %%: %v", s.Change)
	}
}

// Nothing lost is nothing, also for a target that ends below 1 %: it is cut.
func TestStandingStillIsNoFastLoss(t *testing.T) {
	s := next(t, with(cat(200), aim(0.5, 0.8)), losing(0), "2026-02-02")
	if s.Verdict != trend.Stalled || s.Change != -10 || len(warned(s, "of its initial weight a week")) > 0 {
		t.Errorf("%v, %v: %v", s.Verdict, s.Change, s.Cautions())
	}
	for _, days := range []trend.Date{0, 13} {
		s := next(t, with(cat(200), aim(0.5, 0.8)), byDay(1, 0, 6, 13, 6), (on("2026-01-18") + days).String())
		if s.Verdict != trend.TooEarly || len(warned(s, "of its initial weight a week")) > 0 {
			t.Errorf("%v: %v", s.Verdict, s.Cautions())
		}
	}
}

func TestProposalIsFedWhole(t *testing.T) {
	s := next(t, cat(200), losing(1.2), "2026-02-02")
	e, err := s.Stage().Estimate()
	if err != nil {
		t.Fatal(err)
	}
	within(t, "kcal proposed", s.Daily.Kilocalories(), 220, 1e-9)
	within(t, "kcal fed", e.Daily.Kilocalories(), 220, 1e-9)
	if e.Weight != 4.5*kg {
		t.Errorf("at %v", e.Weight)
	}
}

// On target it is weighed every two weeks for two months, taken as 60 days, and
// then every four.
func TestVisitsAreMonthlyAfterSixtyDays(t *testing.T) {
	for first, want := range map[float64]string{31: "2026-04-20", 30: "2026-05-04"} {
		log := byDay(1, first, 6.1, 63, 6, 77, 5.916, 91, 5.832) // 84 of 6000 g in two weeks are 0.7 % a week
		p := cat(200)
		p.Since += 63
		if s := next(t, p, log, "2026-04-06"); s.Verdict != trend.OnTarget || s.Recheck != on(want) {
			t.Errorf("from day %v, on day 91: %v, weigh again on %v", first, s.Verdict, s.Recheck)
		}
	}
}

func TestNextVisitIsTomorrowAtTheEarliest(t *testing.T) {
	for _, tt := range []struct {
		name  string
		log   trend.Weights
		today trend.Date // day of the plan
		want  trend.Date
	}{
		{"a week on this energy", byDay(10, 0, 6, 7, 5.98), 7, 14},
		{"two weeks, weighed after one", byDay(10, 0, 6, 7, 5.98), 14, 15},
		{"three weeks, weighed after one", byDay(10, 0, 6, 7, 5.98), 21, 22},
		{"the day before two weeks", byDay(10, 0, 6, 7, 5.98), 13, 14},
		{"on target", byDay(10, 0, 6, 14, 5.91, 28, 5.82), 28, 42},
		{"on target, the day before", byDay(10, 0, 6, 14, 5.91, 28, 5.82), 41, 42},
		{"on target, the day itself", byDay(10, 0, 6, 14, 5.91, 28, 5.82), 42, 43},
		{"on target, weeks ago", byDay(10, 0, 6, 14, 5.91, 28, 5.82), 50, 51},
	} {
		if s := next(t, cat(200), tt.log, (on(firstDay) + tt.today).String()); s.Recheck != on(firstDay)+tt.want {
			t.Errorf("%s: weigh again on %v, want day %v", tt.name, s.Recheck, tt.want)
		}
	}
}

func TestReasonIsThatOfTheProposal(t *testing.T) {
	const (
		stays = "200 kcal a day stay as they are."
		month = "What else it gets was asked, and it had a month: 200 kcal to 180 kcal a day, -10 %. ("
		shown = "What else it gets was asked, and the log shows that it is below the target: 200 kcal to 180 kcal a day, -10 %. ("
		more  = "More food, never less: 200 kcal to 220 kcal a day, +10 %. ("
	)
	for _, tt := range []struct {
		name string
		log  trend.Weights
		want string
	}{
		{"on target for a month", losing(0.75), stays},
		{"on target for two weeks", byDay(1, 0, 6, 14, 5.91), stays},
		{"too slow for a month", losing(0.35), month},
		{"too slow after 27 days", byDay(1, 0, 6, 27, 5.97), shown},
		{"too fast", losing(1.2), more},
	} {
		s := next(t, cat(200), tt.log, tt.log[len(tt.log)-1].Date.String())
		if got := s.Reasons(); len(got) != 3 || !strings.HasPrefix(got[1], tt.want) || got[0] != s.Sentence() {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// Three weighings within a week, 30 g less each: 60 g in 4 days are shown on this
// scale (2.306 × √2 × 18.0 = 58.7 g), the last 30 are not. 1.75 % of 6 kg a week; 1 %
// are 34 g in 4 days, and no more than 1.3 g are shown.
func TestShortLogIsTakenFromItsFirstWeighing(t *testing.T) {
	s := next(t, cat(200), byDay(1, 0, 6, 2, 5.97, 4, 5.94), "2026-01-09")
	const want = "note it loses 1.75 % of its initial weight a week, more than 1 %, though the scale can't tell it from that: no less food, and weigh again in a week"
	if got := warned(s, "of its initial weight a week"); len(got) != 1 || got[0] != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// Weighed every day on a scale of 100 g, 10.3 g less each: 0.3 % of 6 kg and 28.9 g
// are 34 g, too much for what two weighings differ by (111 g), and little enough for
// 14 in a row: the line falls by 72 g a week, 1.2 %, and by 41 or more for sure,
// which is less than 1 %.
func TestLineOfManyWeighingsIsEnoughForAPace(t *testing.T) {
	var dayAndKg []float64
	for d := range 14 {
		dayAndKg = append(dayAndKg, float64(d), 6-0.0103*float64(d))
	}
	s := next(t, cat(200), byDay(100, dayAndKg...), "2026-01-18")
	const want = "note it loses 1.2 % of its initial weight a week, more than 1 %, though the scale can't tell it from that: no less food, and weigh again in a week"
	if got := warned(s, "of its initial weight a week"); s.Verdict != trend.TooEarly || len(got) != 1 || got[0] != want {
		t.Errorf("%v, %q, want %q", s.Verdict, got, want)
	}
}

// A cat of 2.5 kg that should weigh 2 kg, at 1.9 kg. Fifteen weighings a week apart on
// a scale of 1 g: the line's slope is known to t × √(8/21) × √(0.08 + 32.5) / √(280) a
// week, 2.080 × 3.52 / 16.73 = 0.438 g.
func TestGainOfLessThanAGramIsAGain(t *testing.T) {
	for _, tt := range []struct {
		grams  float64 // a week
		change units.Percent
	}{{0.3, 10}, {1, 0}} {
		dayAndKg := []float64{}
		for week := range 15 {
			dayAndKg = append(dayAndKg, float64(7*week), 1.9+tt.grams*float64(week)/1000)
		}
		a := energy.Animal{Species: energy.Cat, Weight: 2.5 * kg, Ideal: 2 * kg}
		p := trend.Plan{Loss: energy.WeightLoss{Animal: a}, Daily: 120, Since: on(firstDay)}
		s := next(t, p, byDay(1, dayAndKg...), "2026-04-13")
		if s.Verdict != trend.AtGoal || s.Change != tt.change {
			t.Errorf("%v g a week (%v): %v, %v", tt.grams, s.Trend, s.Verdict, s.Change)
		}
	}
}
