package trend_test

import (
	"slices"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// flagged returns what was flagged, each with its level and its text.
func flagged(t *testing.T, w trend.Watch) []string {
	t.Helper()
	flags, err := w.Flags()
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, f := range flags {
		got = append(got, f.Kind.String()+" "+f.Level.String()+": "+f.Text)
	}
	return got
}

// daily returns weighings every so many days, at a steady loss of the first
// weight a day.
func daily(first units.Mass, share float64, every, last int, step units.Mass) trend.Weights {
	var log trend.Weights
	for d := 0; d <= last; d += every {
		log = append(log, trend.Weighing{Date: on(firstDay) + trend.Date(d), Weight: first * units.Mass(1-share*float64(d)), Readability: step})
	}
	return log
}

func TestLossIsFlaggedHoweverItWasWeighed(t *testing.T) {
	of := func(s energy.Species) energy.Animal { return energy.Animal{Species: s} }
	young := func(s energy.Species, a energy.Age) energy.Animal { return energy.Animal{Species: s, Age: a} }
	eats := func(day int, a trend.Appetite) trend.Scored {
		return trend.Scored{Date: on(firstDay) + trend.Date(day), Appetite: a}
	}
	lost := func(ideal units.Mass) trend.Plan {
		return trend.Plan{
			Loss:  energy.WeightLoss{Animal: energy.Animal{Species: energy.Cat, Weight: 6 * kg, Ideal: ideal}},
			Daily: 173, Since: on(firstDay),
		}
	}
	for _, tt := range []struct {
		name  string
		watch trend.Watch
		today int // day of the visit
		want  []string
	}{
		// 0.6 % of 5 kg a day, 30 g: on day 7 it weighed 4.79 kg, 210 g more, 4.38 %.
		{
			"cat weighed every day",
			trend.Watch{Animal: of(energy.Cat), Weights: daily(5*kg, 0.006, 1, 14, 10)},
			14,
			[]string{"rate_of_loss refer: lost 4.38 % of its weight a week since 2026-01-12, more than 2 %: a cat's liver is in danger"},
		},
		// 22.5 g a day: 67.5 g of 4.595 kg in the last 3 days are 3.43 % a week; 50 g / √12 = 14.4 g, so that 65 g or more are shown.
		{
			"cat weighed every third day",
			trend.Watch{Animal: of(energy.Cat), Weights: daily(5*kg, 0.0045, 3, 21, 50)},
			21,
			[]string{"rate_of_loss refer: lost 3.43 % of its weight a week since 2026-01-23, more than 2 %, though the scale can't tell it from that: a cat's liver is in danger"},
		},
		// 100 g of 5 kg in a week: on a scale of 100 g, √(28.9² + 15²) = 32.5 g beside √(2.9² + 14.7²) = 15.0 g, × 2.306 = 82.6 g; on
		// two such scales 106 g.
		{
			"a coarse scale first",
			trend.Watch{Animal: of(energy.Cat), Weights: scales(5, 100, 4.89, 10)},
			7,
			[]string{"rate_of_loss refer: lost 2.2 % of its weight a week since 2026-01-05, more than 2 %, though the scale can't tell it from that: a cat's liver is in danger"},
		},
		{"the coarse scale makes it unsure", trend.Watch{Animal: of(energy.Cat), Weights: scales(5, 100, 4.92, 10)}, 7, nil},

		{
			"ferret, 9 % in 8 days",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(5, 0, 1.2, 8, 1.092)},
			8,
			[]string{"quick_loss refer: lost 9 % in 8 days (1.2 kg to 1.09 kg): a veterinarian must see it"},
		},
		{
			"kitten, 9 % in 8 days",
			trend.Watch{Animal: young(energy.Cat, 12*energy.Week), Weights: byDay(5, 0, 1.2, 8, 1.092)},
			8,
			[]string{"quick_loss refer: lost 9 % in 8 days (1.2 kg to 1.09 kg): a veterinarian must see it"},
		},
		{
			"kitten of five weeks, 4 % in 2 days",
			trend.Watch{Animal: young(energy.Cat, 5*energy.Week), Weights: byDay(1, 0, 0.5, 2, 0.48)},
			2,
			[]string{"quick_loss refer: lost 4 % in 2 days (500 g to 480 g), and it should grow: a veterinarian must see it"},
		},
		{"kitten of five weeks, 3 %", trend.Watch{Animal: young(energy.Cat, 5*energy.Week), Weights: byDay(1, 0, 0.5, 2, 0.485)}, 2, nil},
		{"ferret, 4 % in 2 days", trend.Watch{Animal: of(energy.Ferret), Weights: byDay(1, 0, 0.5, 2, 0.48)}, 2, nil},

		{
			"reduced the day after it was weighed",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(5, 0, 1, 7, 0.96), Appetites: trend.Appetites{eats(8, trend.Reduced)}},
			9,
			[]string{"quick_loss refer: lost 4 % since 2026-01-05 (1 kg to 960 g) and its appetite is reduced: a veterinarian must see it"},
		},
		{
			"normal the day after it was weighed", trend.Watch{
				Animal: of(energy.Ferret), Weights: byDay(5, 0, 1, 7, 0.96),
				Appetites: trend.Appetites{eats(7, trend.Reduced), eats(8, trend.Normal)},
			}, 9, nil,
		},
		{ // 70 g of 1.07 kg are 6.54 %, 3.27 % a week
			"gained, then lost",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(1, 0, 1, 14, 1.07, 28, 1.0), Appetites: trend.Appetites{eats(28, trend.Reduced)}},
			28,
			[]string{"quick_loss refer: lost 6.54 % since 2026-01-19 (1.07 kg to 1 kg) and its appetite is reduced: a veterinarian must see it"},
		},
		{ // 4 % of the first day, 1 % in the last month
			"lost long ago", trend.Watch{
				Animal: of(energy.Ferret), Weights: byDay(1, 0, 1, 60, 0.97, 90, 0.97, 110, 0.96),
				Appetites: trend.Appetites{eats(110, trend.Reduced)},
			}, 110, nil,
		},

		{ // 40 g of 6 kg in 14 days are 0.33 % a week
			"plan, weighed every week",
			trend.Watch{Animal: of(energy.Cat), Plan: lost(4.5 * kg), Weights: byDay(10, 0, 6, 7, 5.98, 14, 5.96)},
			14,
			[]string{"slow_loss note: lost 0.33 % of its initial weight a week since 2026-01-05, below the target of 0.5 %: ask about treats and measuring before cutting"},
		},
		{"plan of a week", trend.Watch{Animal: of(energy.Cat), Plan: lost(4.5 * kg), Weights: byDay(10, 0, 6, 7, 5.98)}, 7, nil},
		{ // 4.5 kg less 10 % is 4.05 kg
			"a tenth below the goal",
			trend.Watch{Animal: of(energy.Cat), Plan: lost(4.5 * kg), Weights: byDay(1, 0, 6, 200, 4.3, 300, 4.05)},
			300,
			[]string{"tenth_lost refer: 4.05 kg is 10 % below its goal of 4.5 kg: a veterinarian must see it"},
		},
		{"less than a tenth below it", trend.Watch{Animal: of(energy.Cat), Plan: lost(4.5 * kg), Weights: byDay(1, 0, 6, 200, 4.3, 300, 4.06)}, 300, nil},
	} {
		tt.watch.Today = on(firstDay) + trend.Date(tt.today)
		if got := flagged(t, tt.watch); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// scales returns two weighings in kg a week apart, each with its scale in g.
func scales(a, stepA, b, stepB float64) trend.Weights {
	return trend.Weights{
		{Date: on(firstDay), Weight: units.Mass(a) * kg, Readability: units.Mass(stepA)},
		{Date: on(firstDay) + 7, Weight: units.Mass(b) * kg, Readability: units.Mass(stepB)},
	}
}

func TestDaysOfNothingAreSaidAsTheyWereWritten(t *testing.T) {
	none := func(days ...trend.Date) (log trend.Appetites) {
		for _, d := range days {
			log = append(log, trend.Scored{Date: on(firstDay) + d, Appetite: trend.NotEating})
		}
		return log
	}
	cat, dog := energy.Animal{Species: energy.Cat}, energy.Animal{Species: energy.Dog}
	puppy := energy.Animal{Species: energy.Dog, Age: 10 * energy.Week, Weight: 1.2 * kg}
	large := puppy
	large.Weight = 4 * kg
	for _, tt := range []struct {
		name  string
		watch trend.Watch
		today trend.Date
		want  []string
	}{
		{
			"a log that ended",
			trend.Watch{Animal: cat, Appetites: none(0)},
			30,
			[]string{"nothing_eaten refer: nothing eaten on 2026-01-05, nothing written down since: a cat needs a veterinarian now, never wait it out"},
		},
		{
			"a row that ended",
			trend.Watch{Animal: dog, Appetites: none(0, 1)},
			5,
			[]string{"nothing_eaten refer: nothing eaten from 2026-01-05 to 2026-01-06, nothing written down since: a veterinarian must see it"},
		},
		{
			"yesterday and today",
			trend.Watch{Animal: cat, Appetites: none(0, 1)},
			1,
			[]string{"nothing_eaten refer: nothing eaten for 1 day: a cat needs a veterinarian now, never wait it out"},
		},
		{
			"today",
			trend.Watch{Animal: cat, Appetites: none(1)},
			1,
			[]string{"nothing_eaten note: nothing eaten on 2026-01-06: watch; at 24 hours call the veterinarian"},
		},
		{
			"today, and 24 hours are known",
			trend.Watch{Animal: cat, Appetites: none(1), HoursUnfed: 24},
			1,
			[]string{"nothing_eaten refer: nothing eaten for 24 hours: a cat needs a veterinarian now, never wait it out"},
		},
		{
			"puppy of unknown adult weight",
			trend.Watch{Animal: puppy, HoursUnfed: 8},
			1,
			[]string{"nothing_eaten warn: nothing eaten for 8 hours: a puppy that may be of a toy breed can't wait, call the veterinarian"},
		},
		{"large puppy of unknown adult weight", trend.Watch{Animal: large, HoursUnfed: 8}, 1, nil},
	} {
		tt.watch.Today = on(firstDay) + tt.today
		if got := flagged(t, tt.watch); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestFlagRestsOnTheLastEntry(t *testing.T) {
	w := trend.Watch{Animal: energy.Animal{Species: energy.Cat}, Today: on("2026-02-04"), Appetites: trend.Appetites{{Date: on(firstDay), Appetite: trend.NotEating}}}
	flags, err := w.Flags()
	if err != nil || len(flags) != 1 || flags[0].Date != on(firstDay) {
		t.Errorf("%v, %v: want the day that was written down", flags, err)
	}
}
