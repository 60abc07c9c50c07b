package trend_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
)

// By hand 1.14^5 = 1.925, 1.14^6 = 2.195, 1.14^7 = 2.502, 1.14^17 = 9.276,
// 1.14^18 = 10.575; a pound for a kilogram is 2.2046 times.
func TestGrowthIsNoSlip(t *testing.T) {
	for _, tt := range []struct {
		name        string
		days        float64
		before, now float64 // kg
		slip        bool
	}{
		// True logs.
		{"kitten, 10 g a day (SACN 5th ed., Table 23-1)", 10, 0.1, 0.2, false},
		{"kitten, 13 g a day (the same)", 20, 0.1, 0.36, false},
		{"puppy that doubles in 7 days (University of Minnesota)", 7, 0.3, 0.6, false},
		{"fastest puppy, 2.31 times in 7 days (Alves 2020)", 7, 0.4, 0.924, false},
		{"fastest puppy, 3.15 times in 10 days (the same)", 10, 0.4, 1.26, false},
		{"fastest puppy, 4.55 times in 14 days (the same)", 14, 0.4, 1.82, false},
		{"giant puppy, 200 g a day", 28, 5, 10.6, false},

		// The bound: 1.75 times, then 14 % a day, then 300 g a day.
		{"4 days", 4, 0.1, 0.1749, false},
		{"4 days, more", 4, 0.1, 0.1751, true},
		{"5 days", 5, 0.1, 0.1925, false},
		{"5 days, more", 5, 0.1, 0.1926, true},
		{"7 days", 7, 0.1, 0.2502, false},
		{"7 days, more", 7, 0.1, 0.2503, true},
		{"28 days, 8.4 kg", 28, 5, 13.39, false},
		{"28 days, 8.4 kg and more", 28, 5, 13.41, true},

		// Slips.
		{"pounds of a nursling within 6 days", 6, 0.25, 0.55116, true},
		{"pounds of a cat within 17 days", 17, 4.3, 9.48, true}, // 4.3 + 5.1
		{"pounds of a dog within 80 days", 80, 20, 44.1, true},  // 20 + 24
		{"tenfold in 17 days", 17, 0.138, 1.38, true},
		{"tenfold of a cat in 100 days", 100, 4.3, 43, true}, // 4.3 + 30

		// Nothing loses half but by a slip.
		{"half", 90, 4, 2, true},
		{"more than half", 90, 4, 2.01, false},
	} {
		err := byDay(0.1, 0, tt.before, tt.days, tt.now).Check(on(firstDay) + 100)
		if (err != nil) != tt.slip {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
}

// The same in a litter and in a watch of a nursling and of a young cat.
func TestYoungAreReportedThoughTheyDouble(t *testing.T) {
	l := orphan(energy.Cat, 10, 100, 200)
	l.Nurslings[0].Weights[1].Date += 9
	r := report(t, l)
	within(t, "g a day", r.Mean.Grams(), 10, 1e-12)
	for _, age := range []energy.Age{20, 60} {
		w := trend.Watch{
			Animal: energy.Animal{Species: energy.Cat, Age: age}, Today: on(firstDay) + 10,
			Weights: byDay(1, 0, 0.1, 10, 0.2),
		}
		if flags, err := w.Flags(); err != nil || len(flags) != 0 {
			t.Errorf("of %v: %v, %v", age, flags, err)
		}
	}
}

// 4.3 + 18 × 0.3 kg are 9.7: without an age 9.48 kg may be grown in 18 days. A cat
// of a year and 18 days was a year old on the first of them.
func TestGrownAnimalsDoNotGrow(t *testing.T) {
	log := byDay(10, 0, 4.3, 18, 9.48)
	today := on(firstDay) + 18
	cat := func(a energy.Age, c energy.Circumstances) energy.Animal {
		return energy.Animal{Species: energy.Cat, Age: a, Circumstances: c}
	}
	runs := func(since trend.Date) trend.Plan {
		return trend.Plan{
			Loss:  energy.WeightLoss{Animal: energy.Animal{Species: energy.Cat, Weight: 4.3 * kg, Ideal: 3.9 * kg}},
			Daily: 173, Since: on(firstDay) + since,
		}
	}
	const want = `trend: weighing 2 weight "9.48 kg": want a weight like the 4.3 kg of 2026-01-05 (+120.5 %: pounds? 9.48 lb is 4.3 kg; weigh again, and set Confirmed where it is right)`
	for _, tt := range []struct {
		name  string
		watch trend.Watch
		slip  bool
	}{
		{"age not known", trend.Watch{Animal: cat(0, 0)}, false},
		{"a year and 18 days", trend.Watch{Animal: cat(383, 0)}, true},
		{"a year and 17 days", trend.Watch{Animal: cat(382, 0)}, false},
		{"of any age", trend.Watch{Animal: cat(1<<40, 0)}, true},
		{"it grows", trend.Watch{Animal: cat(383, energy.Growing)}, false},
		{"a plan since the first day", trend.Watch{Animal: cat(0, 0), Plan: runs(0)}, true},
		{"a plan since the next day", trend.Watch{Animal: cat(0, 0), Plan: runs(1)}, false},
		{"that plan, and the age", trend.Watch{Animal: cat(383, 0), Plan: runs(1)}, true},
		{"the first plan, and the age of a year", trend.Watch{Animal: cat(365, 0), Plan: runs(0)}, true},
	} {
		tt.watch.Today, tt.watch.Weights = today, log
		_, err := tt.watch.Flags()
		if tt.slip != (err != nil && err.Error() == want) || err != nil && !tt.slip {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
	if err := log.Check(today); err != nil {
		t.Errorf("a log without an animal: %v", err)
	}
	for since, slip := range map[trend.Date]bool{0: true, 1: false} {
		if _, err := runs(since).Next(log, today); (err != nil && err.Error() == want) != slip {
			t.Errorf("plan since day %d: %v", since, err)
		}
	}
}

// A rise that only weeks of growth explain, and that the next weighing takes back,
// is the slip itself: 9.48 lb every 28 days in a log of 4.3 kg.
func TestRiseThatIsTakenBackIsTheSlip(t *testing.T) {
	for _, tt := range []struct {
		name string
		log  trend.Weights
		want []string
	}{
		{"the third of four", byDay(10, 0, 4.3, 28, 4.35, 56, 9.48, 84, 4.4), []string{"3"}},
		{"the second of three", byDay(10, 0, 4.3, 28, 9.48, 56, 4.4), []string{"2"}},
		{"it grew on", byDay(10, 0, 4.3, 28, 9.48, 56, 14), nil},
		{"then lost half of it, and of all", byDay(10, 0, 4.3, 28, 9.48, 56, 2.1), []string{"3"}},
		{"a fall below a small rise", byDay(10, 0, 4.3, 28, 5, 56, 2.4), []string{"3"}},
		{"a rise of 1.75 times", byDay(10, 0, 4, 28, 7, 56, 3.4), []string{"2"}},
		{"one of less", byDay(10, 0, 4, 28, 6.99, 56, 3.4), []string{"3"}},
		{"a rise on top of it", byDay(1, 0, 0.1, 10, 0.2, 11, 0.38), []string{"3"}},
	} {
		err := tt.log.Check(on(firstDay) + 84)
		var got []string
		if err != nil {
			for text := range strings.SplitSeq(err.Error(), "; trend: ") {
				got = append(got, strings.Fields(strings.TrimPrefix(text, "trend: weighing "))[0])
			}
		}
		if strings.Join(got, " ") != strings.Join(tt.want, " ") {
			t.Errorf("%s: %v, want %v", tt.name, err, tt.want)
		}
	}
	log := byDay(10, 0, 4.3, 28, 9.48, 56, 4.4)
	log[1].Confirmed = true
	if err := log.Check(on(firstDay) + 84); err == nil || !strings.Contains(err.Error(), "weighing 3 ") || strings.Contains(err.Error(), "weighing 2 ") {
		t.Errorf("confirmed: %v", err)
	}
}
