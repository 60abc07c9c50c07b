package trend_test

import (
	"slices"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// kinds returns what was flagged, with its level.
func kinds(t *testing.T, w trend.Watch) []string {
	t.Helper()
	flags, err := w.Flags()
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, f := range flags {
		got = append(got, f.Kind.String()+" "+f.Level.String())
	}
	return got
}

// A shelter cat, made up by hand, with the flags that its keepers would set: the
// rate on the 5th and the 9th, more than 3 % since intake from the 9th on. Where
// a rule here is stricter the comment says so.
func TestShelterCatIsFlaggedDayByDay(t *testing.T) {
	log := custardWeights()
	appetites := trend.Appetites{
		{Date: on("2026-11-02"), Appetite: trend.NotEating},
		{Date: on("2026-11-05"), Appetite: trend.Reduced},
		{Date: on("2026-11-09"), Appetite: trend.Reduced},
		{Date: on("2026-11-12"), Appetite: trend.Reduced},
		{Date: on("2026-11-16"), Appetite: trend.Normal},
		{Date: on("2026-11-23"), Appetite: trend.Normal},
	}
	for i, want := range [][]string{
		{"nothing_eaten note"},
		{"rate_of_loss refer"}, // stricter: a cat above 2 % a week
		{"quick_loss refer", "rate_of_loss refer", "shelter_shift warn"}, // stricter: 6.5 % in 7 days
		{"quick_loss refer", "rate_of_loss refer", "shelter_shift warn"}, // stricter: 5.3 % in 7 days
		{"rate_of_loss refer", "shelter_shift warn"},                     // stricter: 4.02 to 3.92 kg in 7 days are 2.49 %
		{"shelter_shift warn"},
	} {
		w := trend.Watch{
			Animal: energy.Animal{Species: energy.Cat}, Today: log[i].Date, Shelter: true,
			Weights: log[:i+1], Appetites: appetites[:i+1],
		}
		if got := kinds(t, w); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", log[i].Date, got, want)
		}
	}
}

// A clinic dog, made up by hand: under 1 % a week at the second, third and fifth
// visit, stalled at the last.
func TestClinicDogIsAskedAboutTreatsBeforeACut(t *testing.T) {
	log, plan := harbottleWeights(), harbottlePlan()
	for i, want := range []struct {
		perWeek float64 // of the last weight, as the visits' table has it
		verdict trend.Verdict
		flags   []string
	}{
		{0, trend.TooEarly, nil},
		{0.78, trend.TooEarly, []string{"slow_loss note"}},
		{0.92, trend.TooSlow, []string{"slow_loss note"}},
		{1.08, trend.TooSlow, nil},
		{0.27, trend.Stalled, []string{"slow_loss note"}},
	} {
		today := log[i].Date
		s := next(t, plan, log[:i+1], today.String())
		if s.Verdict != want.verdict || s.Change != 0 {
			t.Errorf("%s: %v, change %v, want %v and no change", today, s.Verdict, s.Change, want.verdict)
		}
		if i > 0 {
			within(t, today.String()+" percent a week", -float64(s.Trend.SinceLast.PerWeek), want.perWeek, 0.005)
		}
		if slow := want.verdict >= trend.TooSlow; s.Ask != slow {
			t.Errorf("%s: asks %v, want %v", today, s.Ask, slow)
		}
		w := trend.Watch{Animal: energy.Animal{Species: energy.Dog}, Today: today, Weights: log[:i+1], Plan: plan}
		if got := kinds(t, w); !slices.Equal(got, want.flags) {
			t.Errorf("%s: %q, want %q", today, got, want.flags)
		}
	}
	plan.Asked = true
	if s := next(t, plan, log, "2026-12-28"); s.Change != -10 {
		t.Errorf("asked, the change is %v, want -10 %%", s.Change)
	}
}

// Four kittens, made up by hand, weighed every morning, and which of them are
// under 7 g a day.
func kittens() trend.Litter {
	l := trend.Litter{Species: energy.Cat, Born: on("2026-10-26"), Milk: 1.02, Feeds: 6}
	for _, k := range []struct {
		name  string
		grams []float64
	}{
		{"Pim", []float64{212, 223, 235, 246, 259, 271, 284}},
		{"Dab", []float64{198, 209, 219, 231, 242, 254, 265}},
		{"Fig", []float64{240, 252, 265, 277, 290, 303, 316}},
		{"Moth", []float64{176, 184, 189, 191, 190, 193, 199}},
	} {
		n := trend.Nursling{Name: k.name}
		for i, g := range k.grams {
			n.Weights = append(n.Weights, trend.Weighing{
				Date: on("2026-11-02") + trend.Date(i), Weight: units.Mass(g), Readability: units.Gram,
			})
		}
		l.Nurslings = append(l.Nurslings, n)
	}
	return l
}

func TestLitterIsReportedAsByHand(t *testing.T) {
	reports, err := kittens().Reports(on("2026-11-08"))
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []struct {
		mean   float64 // g a day, to half of the last digit by hand
		alarms []int   // days of the log
		milk   float64 // at 22.5 kcal/100 g by hand: 284 × 0.225 / 1.02
	}{
		{12.0, nil, 62.6},
		{11.2, nil, 58.5},
		{12.7, nil, 69.7},
		{3.8, []int{2, 3, 4, 5, 6}, 43.9},
	} {
		r := reports[i]
		within(t, r.Name+" mean", r.Mean.Grams(), want.mean, 0.05)
		within(t, r.Name+" milk", r.Milk.Millilitres(), want.milk, 0.05)
		within(t, r.Name+" feed", r.Feed.Millilitres(), r.Milk.Millilitres()/6, 1e-12)
		var alarms []int
		for d, g := range r.Gains {
			if g.Flag.Level == advice.Refer {
				alarms = append(alarms, d+1)
			}
		}
		if !slices.Equal(alarms, want.alarms) {
			t.Errorf("%s: alarms on days %v, want %v", r.Name, alarms, want.alarms)
		}
		if r.Alarm() != (want.alarms != nil) {
			t.Errorf("%s: Alarm() = %v", r.Name, r.Alarm())
		}
		if r.Feeds != 6 || r.Feed > r.Stomach {
			t.Errorf("%s: %d feeds of %v, stomach %v", r.Name, r.Feeds, r.Feed, r.Stomach)
		}
	}
}
