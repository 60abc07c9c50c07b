package trend_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"
)

// cat is a plan of a cat of 6 kg that should weigh 4.5: 0.8 × 70 × 4.5^0.75 =
// 173.0 kcal, and 129.8 kcal at the gate of 0.6.
func cat(daily units.Energy) trend.Plan {
	a := energy.Animal{Species: energy.Cat, Weight: 6 * kg, Ideal: 4.5 * kg}
	return trend.Plan{Loss: energy.WeightLoss{Animal: a}, Daily: daily, Since: on("2026-01-05"), Asked: true}
}

// losing returns five weeks' weighings of 6 kg, at so many percent of it a week,
// without noise.
func losing(percent float64) trend.Weights {
	var log trend.Weights
	for week := range 5 {
		log = append(log, trend.Weighing{
			Date: on("2026-01-05") + trend.Date(7*week), Weight: units.Mass(6-0.06*percent*float64(week)) * kg, Readability: units.Gram,
		})
	}
	return log
}

func TestStepFollowsTheVerdict(t *testing.T) {
	for _, tt := range []struct {
		name    string
		rate    float64 // percent of 6 kg a week
		daily   units.Energy
		verdict trend.Verdict
		change  units.Percent
		refer   bool
		recheck string
	}{
		{"gains", -0.5, 173, trend.Stalled, -20, false, "2026-02-16"},
		{"nothing", 0, 173, trend.Stalled, -10, false, "2026-02-16"},
		{"slow", 0.35, 173, trend.Stalled, -10, false, "2026-02-16"},
		{"0.5 %", 0.501, 173, trend.OnTarget, 0, false, "2026-02-16"},
		{"1 %", 0.999, 173, trend.OnTarget, 0, false, "2026-02-16"},
		{"fast", 1.2, 173, trend.TooFast, 10, false, "2026-02-09"},
		{"fast for any", 2.2, 173, trend.TooFast, 20, true, "2026-02-09"},
		{"a cut through the gate", 0.35, 140, trend.Stalled, 0, true, "2026-02-16"},
		{"a large cut through the gate", -0.5, 150, trend.Stalled, 0, true, "2026-02-16"},
		{"below the gate already", 0.7, 120, trend.OnTarget, 0, true, "2026-02-16"},
		{"at the goal, far too fast", 6.5, 173, trend.AtGoal, 20, true, "2026-02-09"},
	} {
		s := next(t, cat(tt.daily), losing(tt.rate), "2026-02-02")
		if s.Verdict != tt.verdict || s.Change != tt.change || s.Refer != tt.refer {
			t.Errorf("%s: %v, %v, refer %v; want %v, %v, %v", tt.name, s.Verdict, s.Change, s.Refer, tt.verdict, tt.change, tt.refer)
		}
		within(t, tt.name+" kcal", s.Daily.Kilocalories(), tt.daily.Kilocalories()*(1+float64(tt.change)/100), 1e-9)
		if s.Recheck != on(tt.recheck) {
			t.Errorf("%s: weigh again on %v, want %s", tt.name, s.Recheck, tt.recheck)
		}
		referred := false
		for _, c := range s.Cautions() {
			if c.Source.Seen == 0 {
				t.Errorf("%s: no source: %s", tt.name, c)
			}
			// The stage of a cat always has one, on eating less than half.
			referred = referred || c.Level == advice.Refer && !strings.Contains(c.Text, "half of its plan")
			if strings.HasPrefix(c.Text, "it eats ") {
				t.Errorf("%s: the proposal is taken for the present intake: %s", tt.name, c)
			}
		}
		if referred != tt.refer {
			t.Errorf("%s: refer-level caution %v, want %v: %v", tt.name, referred, tt.refer, s.Cautions())
		}
	}
}

func TestOnTargetIsCheckedEveryFourWeeksAfterTwoMonths(t *testing.T) {
	plan, log := cat(173), losing(0.75)
	for i := range log {
		log[i].Date += 56 // a plan that began eight weeks before
	}
	log = append(weighings(units.Gram, "2026-01-05", 6.3), log...)
	plan.Since = on("2026-03-02")
	s := next(t, plan, log, "2026-03-30")
	if s.Verdict != trend.OnTarget || s.Recheck != on("2026-04-27") {
		t.Errorf("%v, weigh again on %v, want on_target and 2026-04-27", s.Verdict, s.Recheck)
	}
}

func TestNothingIsCutBeforeItWasAsked(t *testing.T) {
	plan := cat(173)
	plan.Asked = false
	s := next(t, plan, losing(0), "2026-02-02")
	if !s.Ask || s.Change != 0 || s.Daily != 173 {
		t.Errorf("ask %v, change %v, %v: want a question and no cut", s.Ask, s.Change, s.Daily)
	}
	if text := strings.Join(s.Reasons(), " "); !strings.Contains(text, "treats") || !strings.Contains(text, "gram scale") {
		t.Errorf("treats and measuring aren't asked about: %s", text)
	}
}

func TestProposalIsNeverDangerous(t *testing.T) {
	proptest.Check(t, "too fast is never cut, unasked is never cut, no cut is over 20 % or below the gate", prop.ForAll(
		func(daily units.Energy, steps []float64, asked bool, every int) string {
			plan := cat(daily)
			plan.Asked = asked
			log := trend.Weights{{Date: plan.Since, Weight: 6 * kg, Readability: 10}}
			for i, x := range steps {
				w := log[i].Weight * units.Mass(1+x)
				log = append(log, trend.Weighing{Date: log[i].Date + trend.Date(every), Weight: w, Readability: 10, Confirmed: true})
			}
			s, err := plan.Next(log, log[len(log)-1].Date)
			if err != nil {
				return err.Error()
			}
			const gate = 0.6 * 70
			cut := s.Daily < daily
			// The last weighing against the one before it and against that of a week ago.
			fast := false
			last := log[len(log)-1]
			for i, w := range log[:len(log)-1] {
				week := last.Date-w.Date >= 7 && (i == len(log)-2 || last.Date-log[i+1].Date < 7)
				lost := w.Weight - last.Weight
				shown := lost > 1.01*trend.SmallestChange(max(w.Weight, last.Weight), 10)
				rate := 700 * float64(lost/(6*kg)) / float64(last.Date-w.Date)
				fast = fast || (i == len(log)-2 || week) && shown && rate > 1.1
			}
			switch {
			case cut && fast:
				return "cut over a loss of the last days"
			case s.Verdict == 0 || math.IsNaN(float64(s.Daily)) || !(s.Daily > 0):
				return fmt.Sprintf("%v, %v", s.Verdict, s.Daily)
			case cut && s.Verdict != trend.TooSlow && s.Verdict != trend.Stalled:
				return fmt.Sprintf("%v is cut", s.Verdict)
			case cut && !asked:
				return "cut, and nobody asked"
			case float64(s.Daily) < 0.8*float64(daily)*(1-1e-12) || float64(s.Daily) > 1.2*float64(daily)*(1+1e-12):
				return fmt.Sprintf("%v to %v", daily, s.Daily)
			case cut && float64(s.Daily) < gate*math.Pow(4.5, 0.75)*(1-1e-12):
				return fmt.Sprintf("%v is below the gate", s.Daily)
			case s.Recheck <= s.Today:
				return fmt.Sprintf("weigh again on %v", s.Recheck)
			case len(s.Reasons()) < 2 || s.Explain() == "":
				return "no reasons"
			}
			return ""
		},
		proptest.Quantity[units.Energy](50, 500),
		gen.SliceOfN(6, gen.Float64Range(-0.04, 0.03)),
		gen.Bool(),
		gen.IntRange(1, 30),
	))
}
