package trend_test

import (
	"slices"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// weekly returns a log of weights in g, a week apart.
func weekly(step units.Mass, grams ...units.Mass) (log trend.Weights) {
	for i, w := range grams {
		log = append(log, trend.Weighing{Date: on(firstDay) + trend.Date(7*i), Weight: w, Readability: step})
	}
	return log
}

// A running plan is told of in one voice: the flag says what the step says.
//
// On a scale of 10 g two weighings of 4.6 kg differ by 2.306 × √2 × 14.1 = 46 g before
// a change is shown, two of 5.8 kg by 2.306 × √2 × 17.6 = 58 g. 1 % of 4.8 kg is 48 g.
func TestFlagOfAPlanSaysWhatTheStepSays(t *testing.T) {
	losing := func(weight, ideal units.Mass) trend.Plan {
		a := energy.Animal{Species: energy.Cat, Weight: weight, Ideal: ideal}
		return trend.Plan{Loss: energy.WeightLoss{Animal: a}, Daily: 160, Since: on(firstDay), Asked: true}
	}
	narrow := func(p *trend.Plan) { p.Target = units.Range[units.Percent]{Low: 0.5, High: 0.6} }
	for _, tt := range []struct {
		name    string
		plan    trend.Plan
		log     trend.Weights
		verdict trend.Verdict
		want    []string
	}{
		{ // 50 g of 4.8 kg are 1.04 %, of 4.62 kg 1.08 %
			"2 g more than the target in the last week", losing(4800, 4000), weekly(10, 4800, 4755, 4710, 4665, 4620, 4570),
			trend.OnTarget,
			[]string{"rate_of_loss note: it loses 1.04 % of its initial weight a week since 2026-02-02, more than 1 %, though the scale can't tell it from that: no less food, and weigh again in a week"},
		},
		{ // 48 g are 1 %
			"the target in the last week", losing(4800, 4000), weekly(1, 4800, 4755, 4710, 4665, 4620, 4572),
			trend.OnTarget, nil,
		},
		{ // 1.5 % for four weeks
			"too fast all the time", losing(4800, 4000), weekly(10, 4800, 4728, 4656, 4584, 4512),
			trend.TooFast,
			[]string{"rate_of_loss warn: it loses 1.5 % of its initial weight a week, more than 1 %: give more, and call"},
		},
		{ // 110 g of 6 kg are 1.83 %, 52 of which or less are more than what the scale does
			"a jump that may be one", losing(6000, 4500), weekly(10, 6000, 5955, 5910, 5865, 5820, 5710),
			trend.OnTarget,
			[]string{"rate_of_loss note: it loses 1.83 % of its initial weight a week since 2026-02-02, more than 1 %, though the scale can't tell it from that: no less food, and weigh again in a week"},
		},
		{ // 10 g of 6 kg in two weeks are 0.08 %; the line falls by 255 / 10 g a week
			"slow in the last two weeks", losing(6000, 4500), weekly(10, 6000, 5955, 5910, 5900, 5900),
			trend.Stalled,
			[]string{"slow_loss note: lost 0.08 % of its initial weight a week since 2026-01-19, below the target of 0.5 %"},
		},
		{
			"the same, and nobody asked yet", with(losing(6000, 4500), func(p *trend.Plan) { p.Asked = false }), weekly(10, 6000, 5955, 5910, 5900, 5900),
			trend.Stalled,
			[]string{"slow_loss note: lost 0.08 % of its initial weight a week since 2026-01-19, below the target of 0.5 %: ask about treats and measuring before cutting"},
		},
		{ // the line falls by 375 / 10 g a week, 0.625 %: above a target of its own, so that the step gives more
			"too fast by the line, slow in the last two weeks", with(losing(6000, 4500), narrow), weekly(10, 6000, 5930, 5860, 5855, 5850),
			trend.TooFast, nil,
		},
	} {
		today := tt.log[len(tt.log)-1].Date
		step := next(t, tt.plan, tt.log, today.String())
		if step.Verdict != tt.verdict {
			t.Errorf("%s: %v, want %v", tt.name, step.Verdict, tt.verdict)
		}
		w := trend.Watch{Animal: tt.plan.Loss.Animal, Today: today, Plan: tt.plan, Weights: tt.log}
		if got := flagged(t, w); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q\nwant %q", tt.name, got, tt.want)
		}
		flags, err := w.Flags()
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range flags {
			if f.Date != today || f.Kind == trend.RateOfLoss && !slices.Contains(step.Cautions(), f.Caution) {
				t.Errorf("%s: %v isn't among\n%s", tt.name, f, step.Explain())
			}
		}
	}
}
