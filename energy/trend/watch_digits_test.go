package trend_test

import (
	"slices"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// All thresholds here are ours but where a row says otherwise.
func TestFlagsJustInsideAndJustOutside(t *testing.T) {
	const fine = units.Gram
	of := func(s energy.Species) energy.Animal { return energy.Animal{Species: s} }
	aged := func(s energy.Species, a energy.Age) energy.Animal { return energy.Animal{Species: s, Age: a} }
	weighing := func(a energy.Animal, w units.Mass) energy.Animal { a.Weight = w; return a }
	scored := func(first float64, list ...trend.Appetite) (log trend.Appetites) {
		for i, a := range list {
			log = append(log, trend.Scored{Date: on(firstDay) + trend.Date(first) + trend.Date(i), Appetite: a})
		}
		return log
	}
	// fed returns g of a food of 4 kcal/g by day, eaten of 100 g.
	fed := func(dayAndGrams ...float64) (log trend.Intake) {
		for i := 0; i < len(dayAndGrams); i += 2 {
			log = append(log, trend.Served{
				Date: on(firstDay) + trend.Date(dayAndGrams[i]), Meal: 1, Food: "dry",
				Offered: 100, Left: 100 - units.Mass(dayAndGrams[i+1]), Density: 4000,
			})
		}
		return log
	}
	loss := func(ideal units.Mass) trend.Plan {
		return trend.Plan{
			Loss:  energy.WeightLoss{Animal: energy.Animal{Species: energy.Cat, Weight: 6 * kg, Ideal: ideal}},
			Daily: 173, Since: on(firstDay),
		}
	}
	const (
		grow   = ", and it should grow: a veterinarian must see it"
		seeIt  = ": a veterinarian must see it"
		vetNow = ": a cat needs a veterinarian now, never wait it out"
	)
	for _, tt := range []struct {
		name  string
		watch trend.Watch
		today trend.Date // day of the log
		want  []string
	}{
		// 20 of 500 g are 4 %. Six months are 180 days.
		{
			"cat the day before six months",
			trend.Watch{Animal: aged(energy.Cat, 179), Weights: byDay(fine, 0, 0.5, 5, 0.48)},
			5,
			[]string{"quick_loss refer: lost 4 % in 5 days (500 g to 480 g)" + grow},
		},
		{
			"cat of six months",
			trend.Watch{Animal: aged(energy.Cat, 180), Weights: byDay(fine, 0, 0.5, 5, 0.48)},
			5,
			[]string{"rate_of_loss refer: lost 5.6 % of its weight a week since 2026-01-05, more than 2 %: a cat's liver is in danger"},
		},
		{
			"of a day",
			trend.Watch{Animal: aged(energy.Ferret, 1), Weights: byDay(fine, 0, 0.5, 1, 0.48)},
			1,
			[]string{"quick_loss refer: lost 4 % in 1 day (500 g to 480 g)" + grow},
		},
		{
			"nursling of a day, unfed",
			trend.Watch{Animal: aged(energy.Cat, 1), HoursUnfed: 8},
			0,
			[]string{"nothing_eaten refer: nothing eaten for 8 hours: a nursling is in danger after 8 to 12 hours, a veterinarian now"},
		},
		{
			"nursling of four weeks, unfed",
			trend.Watch{Animal: aged(energy.Cat, 28), HoursUnfed: 8},
			0,
			[]string{"nothing_eaten refer: nothing eaten for 8 hours: a nursling is in danger after 8 to 12 hours, a veterinarian now"},
		},
		{
			"older, unfed",
			trend.Watch{Animal: aged(energy.Cat, 29), HoursUnfed: 8},
			0,
			[]string{"nothing_eaten warn: nothing eaten for 8 hours: a kitten can't wait, call the veterinarian"},
		},
		{
			"kitten, 11 hours",
			trend.Watch{Animal: aged(energy.Cat, 60), HoursUnfed: 11},
			0,
			[]string{"nothing_eaten warn: nothing eaten for 11 hours: a kitten can't wait, call the veterinarian"},
		},
		{
			"kitten, 12 hours",
			trend.Watch{Animal: aged(energy.Cat, 60), HoursUnfed: 12},
			0,
			[]string{"nothing_eaten refer: nothing eaten for 12 hours: a kitten is in danger after 8 to 12 hours, a veterinarian now"},
		},
		{
			"kitten, an hour",
			trend.Watch{Animal: aged(energy.Cat, 60), HoursUnfed: 1},
			0,
			[]string{"nothing_eaten note: nothing eaten for 1 hour: watch; at 8 to 12 hours call the veterinarian"},
		},
		{
			"cat, an hour",
			trend.Watch{Animal: of(energy.Cat), HoursUnfed: 1},
			0,
			[]string{"nothing_eaten note: nothing eaten for 1 hour: watch; at 24 hours call the veterinarian"},
		},
		{"cat that eats", trend.Watch{Animal: of(energy.Cat)}, 0, nil},
		{
			"dog, a day",
			trend.Watch{Animal: energy.Animal{Species: energy.Dog, DaysUnfed: 1}},
			0,
			[]string{"nothing_eaten warn: nothing eaten for 24 hours: call the veterinarian"},
		},
		{
			"cat, nothing yesterday",
			trend.Watch{Animal: of(energy.Cat), Appetites: scored(0, trend.NotEating)},
			1,
			[]string{"nothing_eaten refer: nothing eaten for 1 day" + vetNow},
		},
		{
			"cat, nothing the day before yesterday",
			trend.Watch{Animal: of(energy.Cat), Appetites: scored(0, trend.NotEating)},
			2,
			[]string{"nothing_eaten refer: nothing eaten on 2026-01-05, nothing written down since" + vetNow},
		},
		{
			"cat, nothing for two days, and then nobody wrote",
			trend.Watch{Animal: of(energy.Cat), Appetites: scored(0, trend.NotEating, trend.NotEating)},
			3,
			[]string{"nothing_eaten refer: nothing eaten from 2026-01-05 to 2026-01-06, nothing written down since" + vetNow},
		},
		{
			"dog, nothing today",
			trend.Watch{Animal: of(energy.Dog), Appetites: scored(0, trend.NotEating)},
			0,
			[]string{"nothing_eaten note: nothing eaten on 2026-01-05: watch; at 24 hours call the veterinarian"},
		},
		{"dog, half a gram yesterday", trend.Watch{Animal: of(energy.Dog), Intake: fed(0, 0.5)}, 1, nil},
		{
			"dog, nothing yesterday",
			trend.Watch{Animal: of(energy.Dog), Intake: fed(0, 0)},
			1,
			[]string{"nothing_eaten warn: nothing eaten for 1 day: call the veterinarian"},
		},

		// Under 4 kg by the newest weight.
		{
			"puppy of 3 kg now",
			trend.Watch{Animal: weighing(aged(energy.Dog, 60), 10*kg), Weights: byDay(fine, 0, 3), HoursUnfed: 8},
			0,
			[]string{"nothing_eaten warn: nothing eaten for 8 hours: a puppy that may be of a toy breed can't wait, call the veterinarian"},
		},
		{"puppy of 10 kg now", trend.Watch{Animal: weighing(aged(energy.Dog, 60), 3*kg), Weights: byDay(fine, 0, 10), HoursUnfed: 8}, 0, nil},

		{
			"cat, under half of a small order",
			trend.Watch{Animal: of(energy.Cat), Daily: 1, Plan: loss(4.5 * kg), Intake: fed(0, 0.1, 1, 0.1)},
			1,
			[]string{"under_half refer: under half of its 1 kcal a day for 2 days: a cat is in danger, give the old food back and call a veterinarian"},
		},
		{
			"cat, under half of its plan", trend.Watch{Animal: of(energy.Cat), Plan: loss(4.5 * kg), Intake: fed(0, 21, 1, 21)}, 1, // 84 of 173 kcal
			[]string{"under_half refer: under half of its 173 kcal a day for 2 days: a cat is in danger, give the old food back and call a veterinarian"},
		},
		{"cat on no order", trend.Watch{Animal: of(energy.Cat), Intake: fed(0, 21, 1, 21)}, 1, nil},
		{"cat, under half with a gap", trend.Watch{Animal: of(energy.Cat), Daily: 200, Intake: fed(0, 21, 2, 21)}, 2, nil},
		{
			"cat, under half before and after a gap",
			trend.Watch{Animal: of(energy.Cat), Daily: 200, Intake: fed(0, 21, 2, 21, 3, 21)},
			3,
			[]string{"under_half refer: under half of its 200 kcal a day for 2 days: a cat is in danger, give the old food back and call a veterinarian"},
		},
		{ // SACN: a third of 70 × 4^0.75 = 198.0 kcal
			"dog, under a third",
			trend.Watch{Animal: weighing(of(energy.Dog), 4*kg), Intake: fed(0, 16, 1, 16, 2, 16)},
			2,
			[]string{"under_third refer: a third of the resting energy (66 kcal) or less for 3 days: assisted feeding is a veterinarian's decision, now"},
		},

		// The heaviest of the last 7 and 30 days.
		{
			"5 % in 7 days, weighed between",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 0, 1, 5, 0.98, 7, 0.95)},
			7,
			[]string{"quick_loss refer: lost 5 % in 7 days (1 kg to 950 g)" + seeIt},
		},
		{"5 % in 8 days, weighed between", trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 0, 1, 6, 0.98, 8, 0.95)}, 8, nil},
		{
			"4 % in 30 days, reduced",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 0, 1, 20, 0.97, 30, 0.96), Appetites: scored(30, trend.Reduced)},
			30,
			[]string{"quick_loss refer: lost 4 % since 2026-01-05 (1 kg to 960 g) and its appetite is reduced" + seeIt},
		},
		{"4 % in 31 days, reduced", trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 0, 1, 20, 0.97, 31, 0.96), Appetites: scored(31, trend.Reduced)}, 31, nil},

		{ // 30 g less each, of which 60 are shown: 2.306 × √2 × 18.0 g = 58.7 g. 1 % in 4 days, of which 1.3 g are
			"cat weighed three times in a week",
			trend.Watch{Animal: of(energy.Cat), Weights: byDay(fine, 0, 6, 2, 5.97, 4, 5.94)},
			4,
			[]string{"rate_of_loss warn: lost 1.75 % of its weight a week since 2026-01-05, more than 1 %, though the scale can't tell it from that: give more, and call"},
		},
		{ // 60 g are 1 %, and √(324.1 + 311.3) × 2.306 = 58.1 g more are shown to be
			"cat, 118 g in a week",
			trend.Watch{Animal: of(energy.Cat), Weights: byDay(fine, 0, 6, 7, 5.882)},
			7,
			[]string{"rate_of_loss warn: lost 1.97 % of its weight a week since 2026-01-05, more than 1 %, though the scale can't tell it from that: give more, and call"},
		},
		{
			"cat, 119 g in a week",
			trend.Watch{Animal: of(energy.Cat), Weights: byDay(fine, 0, 6, 7, 5.881)},
			7,
			[]string{"rate_of_loss warn: lost 1.98 % of its weight a week since 2026-01-05, more than 1 %: give more, and call"},
		},

		// What lies exactly on a bound: 2 and 1 % of a cat, 3 % in a shelter, 5 % a week, 0.5 % of a plan.
		{
			"cat, 2 % a week",
			trend.Watch{Animal: of(energy.Cat), Weights: byDay(fine, 0, 6, 7, 5.88)},
			7,
			[]string{"rate_of_loss warn: lost 2 % of its weight a week since 2026-01-05, more than 1 %: give more, and call"},
		},
		{"cat, 1 % a week", trend.Watch{Animal: of(energy.Cat), Weights: byDay(fine, 0, 6, 7, 5.94)}, 7, nil},
		{"shelter dog, 3 % up", trend.Watch{Animal: of(energy.Dog), Shelter: true, Weights: byDay(fine, 0, 20, 60, 20.6)}, 60, nil},
		{
			"ferret, 10 % in 14 days",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 0, 1, 14, 0.9)},
			14,
			[]string{
				"quick_loss refer: lost 10 % in 14 days (1 kg to 900 g)" + seeIt,
				"tenth_lost refer: lost 10 % since 2026-01-05 (1 kg to 900 g)" + seeIt,
			},
		},
		{ // of two that are as heavy the older
			"ferret, 10 % after a rest",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 0, 1, 7, 1, 90, 0.9)},
			90,
			[]string{"tenth_lost refer: lost 10 % since 2026-01-05 (1 kg to 900 g)" + seeIt},
		},
		{
			"scored a week before it was weighed",
			trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 0, 1, 7, 0.96), Appetites: scored(0, trend.Reduced)},
			7,
			[]string{"quick_loss refer: lost 4 % since 2026-01-05 (1 kg to 960 g) and its appetite is reduced" + seeIt},
		},
		{"scored before that", trend.Watch{Animal: of(energy.Ferret), Weights: byDay(fine, 1, 1, 8, 0.96), Appetites: scored(0, trend.Reduced)}, 8, nil},
		{"plan, 0.5 % a week", trend.Watch{Animal: of(energy.Cat), Plan: loss(4.5 * kg), Weights: byDay(fine, 0, 6, 14, 5.94)}, 14, nil},
		{
			"plan, nothing lost",
			trend.Watch{Animal: of(energy.Cat), Plan: loss(4.5 * kg), Weights: byDay(fine, 0, 6, 14, 6)},
			14,
			[]string{"slow_loss note: lost 0 % of its initial weight a week since 2026-01-05, below the target of 0.5 %: ask about treats and measuring before cutting"},
		},
		{ // 50 g of 6 kg in 14 days are 0.42 %
			"plan, a gain",
			trend.Watch{Animal: of(energy.Cat), Plan: loss(4.5 * kg), Weights: byDay(fine, 0, 6, 14, 6.05)},
			14,
			[]string{"slow_loss note: gained 0.42 % of its initial weight a week since 2026-01-05, below the target of 0.5 %: ask about treats and measuring before cutting"},
		},
		{ // of 8 kg 40 % in 8 days, of 6 kg 20 % in 4: 35 % a week both, said of the last days
			"as fast in the last days as in the week",
			trend.Watch{Animal: of(energy.Dog), Weights: byDay(fine, 0, 8, 4, 6, 8, 4.8)},
			8,
			[]string{
				"quick_loss refer: lost 20 % in 4 days (6 kg to 4.8 kg)" + seeIt,
				"tenth_lost refer: lost 40 % since 2026-01-05 (8 kg to 4.8 kg)" + seeIt,
				"rate_of_loss warn: lost 35 % of its weight a week since 2026-01-09, more than 2 %: give more, and call",
			},
		},
		{
			"cat, a day by both logs",
			trend.Watch{Animal: of(energy.Cat), Appetites: scored(0, trend.NotEating), HoursUnfed: 24},
			1,
			[]string{"nothing_eaten refer: nothing eaten for 24 hours" + vetNow},
		},

		// At its goal a planned loss is not slow. 40 g of 6 kg in 14 days are 0.33 %.
		{
			"10 g above the goal",
			trend.Watch{Animal: of(energy.Cat), Plan: loss(5.95 * kg), Weights: byDay(10, 0, 6, 14, 5.96)},
			14,
			[]string{"slow_loss note: lost 0.33 % of its initial weight a week since 2026-01-05, below the target of 0.5 %: ask about treats and measuring before cutting"},
		},
		{"at the goal", trend.Watch{Animal: of(energy.Cat), Plan: loss(5.96 * kg), Weights: byDay(10, 0, 6, 14, 5.96)}, 14, nil},
		{"one weighing on this energy", trend.Watch{Animal: of(energy.Cat), Plan: with(loss(4.5*kg), func(p *trend.Plan) { p.Since += 14 }), Weights: byDay(10, 0, 6, 14, 5.96)}, 14, nil},
		{"none on this energy", trend.Watch{Animal: of(energy.Cat), Plan: with(loss(4.5*kg), func(p *trend.Plan) { p.Since += 15 }), Weights: byDay(10, 0, 6, 14, 5.96)}, 15, nil},

		{
			"an order of a day",
			trend.Watch{Animal: of(energy.Dog), Order: trend.Order{Written: on(firstDay), Reweigh: 1}},
			2,
			[]string{"old_order warn: the order of 2026-01-05 was to be looked at again on 2026-01-06: weigh, and write a new one"},
		},
		{"an order of a day, on the day", trend.Watch{Animal: of(energy.Dog), Order: trend.Order{Written: on(firstDay), Reweigh: 1}}, 1, nil},
		{"an order of a year", trend.Watch{Animal: of(energy.Dog), Order: trend.Order{Written: on(firstDay), Reweigh: 365}}, 365, nil},
	} {
		tt.watch.Today = on(firstDay) + tt.today
		if got := flagged(t, tt.watch); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestOrderIsOfADayToAYear(t *testing.T) {
	for reweigh, want := range map[energy.Age]string{
		0: `trend: order reweigh "0 d": want 1 d to 365 d`, -1: `trend: order reweigh "-1 d": want 1 d to 365 d`,
		1: "", 365: "", 366: `trend: order reweigh "366 d": want 1 d to 365 d`,
	} {
		w := trend.Watch{Animal: energy.Animal{Species: energy.Dog}, Today: on(firstDay), Order: trend.Order{Written: on(firstDay), Reweigh: reweigh}}
		_, err := w.Flags()
		if got := ""; err != nil {
			if got = err.Error(); got != want {
				t.Errorf("%d: %s, want %s", reweigh, got, want)
			}
		} else if want != "" {
			t.Errorf("%d is taken", reweigh)
		}
	}
}

func TestFlagOfAWeightIsOfItsDay(t *testing.T) {
	w := trend.Watch{
		Animal: energy.Animal{Species: energy.Cat}, Today: on(firstDay) + 9, Shelter: true, HoursUnfed: 3,
		Weights: byDay(1, 0, 5, 3, 4.9, 8, 4.4),
	}
	flags, err := w.Flags()
	if err != nil || len(flags) < 4 {
		t.Fatal(flags, err)
	}
	for _, f := range flags {
		want := on(firstDay) + 8
		if f.Kind == trend.NothingEaten {
			want++ // of the hours up to today
		}
		if f.Date != want {
			t.Errorf("%v: want %v", f, want)
		}
	}
}
