package trend_test

import (
	"encoding/json"
	"strconv"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// Every fault of what is looked through is named, all at once, and what is just
// inside is taken.
func TestFaultsOfAWatch(t *testing.T) {
	today := on("2026-11-23")
	sound := trend.Watch{Animal: energy.Animal{Species: energy.Cat, Weight: 4 * kg}, Today: today}
	for _, test := range []struct {
		change func(*trend.Watch)
		want   string // "" where it is taken
	}{
		{func(w *trend.Watch) { w.Today = 0 }, `trend: today "": want a day of the calendar, as in "2026-11-02", from 1900 to 2199 (not given: the clock is never read)`},
		{func(w *trend.Watch) { w.Animal.Species = 0 }, `trend: species "": want dog, cat, ferret or other`},
		{func(w *trend.Watch) { w.Animal.Species = energy.Other }, ""},
		{func(w *trend.Watch) { w.Animal.Species = energy.Other + 1 }, `trend: species "": want dog, cat, ferret or other`},
		{func(w *trend.Watch) { w.Animal.Age = -1 }, `trend: age "-1 d": want 0 (not given) or more`},
		{func(w *trend.Watch) { w.Animal.Age = 1 }, ""},
		{func(w *trend.Watch) { w.Animal.Weight = -4 }, `trend: weight "-4 g": want above 0 g, or none`},
		{func(w *trend.Watch) { w.Animal.Weight = 0 }, ""},
		{func(w *trend.Watch) { w.AdultWeight = -5 * kg }, `trend: adult weight "-5 kg": want above 0 g, or none`},
		{func(w *trend.Watch) { w.AdultWeight = 5 * kg }, ""},
		{func(w *trend.Watch) { w.Daily = -200 }, `trend: daily "-200 kcal": want above 0 kcal a day, or none`},
		{func(w *trend.Watch) { w.Daily = 200 }, ""},
		{func(w *trend.Watch) { w.HoursUnfed = -1 }, `trend: hours unfed "-1": want 0 or more whole hours`},
		{func(w *trend.Watch) { w.HoursUnfed = 1 }, ""},
		{func(w *trend.Watch) { w.Order = trend.Order{Written: today + 1, Reweigh: 7} }, `trend: order written "2026-11-24": want a day up to 2026-11-23 (in the future)`},
		{func(w *trend.Watch) { w.Order = trend.Order{Written: today, Reweigh: 7} }, ""},
		{func(w *trend.Watch) { w.Order = trend.Order{Written: today} }, `trend: order reweigh "0 d": want 1 d to 365 d`},
		{func(w *trend.Watch) { w.Order = trend.Order{Written: today, Reweigh: 1} }, ""},
		{func(w *trend.Watch) { w.Order = trend.Order{Written: today, Reweigh: 365} }, ""},
		{func(w *trend.Watch) { w.Order = trend.Order{Written: today, Reweigh: 366} }, `trend: order reweigh "366 d": want 1 d to 365 d`},
		{func(w *trend.Watch) { w.Plan = planOf(energy.Dog, today) }, `trend: plan species "dog": want cat, as the animal (the plan of another?)`},
		{func(w *trend.Watch) { w.Plan = planOf(0, today) }, `trend: plan species "": want cat, as the animal (the plan of another?)`},
		{func(w *trend.Watch) { w.Plan = planOf(energy.Cat, today) }, ""},
		{
			func(w *trend.Watch) { w.Plan, w.Animal.Species = planOf(energy.Dog, today), 0 },
			`trend: species "": want dog, cat, ferret or other`,
		},
		{
			func(w *trend.Watch) { w.Animal.Age, w.HoursUnfed, w.Daily = -1, -1, -1 },
			`trend: age "-1 d": want 0 (not given) or more; trend: daily "-1 kcal": want above 0 kcal a day, or none; trend: hours unfed "-1": want 0 or more whole hours`,
		},
	} {
		w := sound
		test.change(&w)
		said := ""
		flags, err := w.Flags()
		if err != nil {
			said = err.Error()
		}
		if said != test.want || err != nil && flags != nil {
			t.Errorf("%+v:\n%v, %q, want\n%q", w, flags, said, test.want)
		}
	}
}

// planOf returns a plan of 200 kcal a day from that day on.
func planOf(s energy.Species, since trend.Date) trend.Plan {
	return trend.Plan{Loss: energy.WeightLoss{Animal: energy.Animal{Species: s, Weight: 5 * kg, Ideal: 4 * kg}}, Daily: 200, Since: since}
}

// A litter has a nursling at least, and a hundred at most.
func TestLitterOfNoneAndOfTooMany(t *testing.T) {
	for n, want := range map[int]string{
		0: `trend: nurslings "0": want 1 to 100`, 100: "", 101: `trend: nurslings "101": want 1 to 100`,
	} {
		l := kittens()
		log := l.Nurslings[0].Weights
		l.Nurslings = nil
		for i := range n {
			l.Nurslings = append(l.Nurslings, trend.Nursling{Name: "N" + strconv.Itoa(i), Weights: log})
		}
		reports, err := l.Reports(on("2026-11-08"))
		switch {
		case want == "" && (err != nil || len(reports) != n):
			t.Errorf("%d: %d reports, error %v", n, len(reports), err)
		case want != "" && (err == nil || err.Error() != want || reports != nil):
			t.Errorf("%d: %d reports, error %v, want %s", n, len(reports), err, want)
		}
	}
}

// The texts of the verdicts are stored, and one that is none is refused.
func TestTextOfAVerdict(t *testing.T) {
	for v, want := range map[trend.Verdict]string{
		0: `""`, trend.TooEarly: `"too_early"`, trend.OnTarget: `"on_target"`, trend.TooFast: `"too_fast"`,
		trend.TooSlow: `"too_slow"`, trend.Stalled: `"stalled"`, trend.AtGoal: `"at_goal"`,
	} {
		text, err := json.Marshal(v)
		if err != nil || string(text) != want {
			t.Errorf("%d: %s, %v; want %s", v, text, err, want)
		}
		back := trend.Stalled
		if err := json.Unmarshal(text, &back); err != nil || back != v {
			t.Errorf("%s: %v, %v", text, back, err)
		}
	}
	if text, err := json.Marshal(trend.AtGoal + 1); err == nil {
		t.Errorf("beyond the last: %s", text)
	}
	v := trend.TooFast
	if err := json.Unmarshal([]byte(`"faster"`), &v); err == nil || v != trend.TooFast {
		t.Errorf("faster: %v, %v", v, err)
	}
}

// A dog of 9/9 has a first target only: the scale ends there (Brooks and others
// 2014, AAHA; the wording is ours).
func TestFirstTargetIsSetAnew(t *testing.T) {
	const text = "score the condition again and set a new one"
	for score, want := range map[int]bool{8: false, 9: true} {
		p := harbottlePlan()
		p.Loss.Animal.Condition = energy.BCS9(score)
		e, err := p.Loss.Estimate()
		if err != nil {
			t.Fatal(err)
		}
		p.Daily = e.Daily
		target, err := energy.IdealWeight(p.Loss.Animal, 0)
		if err != nil {
			t.Fatal(err)
		}
		start := 38.5
		goal := float64(target.Weight/kg) + 0.05
		log := weighings(100*units.Gram, "2026-11-02", start, "2026-12-02", (start+goal)/2, "2027-01-02", goal+0.3, "2027-01-16", goal-0.05)
		s := next(t, p, log, "2027-01-16")
		if s.Verdict != trend.AtGoal {
			t.Fatalf("%d/9: %v at %v of %v", score, s.Verdict, log[3].Weight, target.Weight)
		}
		got := false
		for _, c := range s.Cautions() {
			got = got || strings.HasSuffix(c.Text, text)
		}
		if got != want {
			t.Errorf("%d/9: said %v, want %v: %v", score, got, want, s.Cautions())
		}
	}
}
