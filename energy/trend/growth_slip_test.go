package trend_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// watchOf returns a watch of a log on its last day.
func watchOf(a energy.Animal, log trend.Weights) trend.Watch {
	return trend.Watch{Animal: a, Today: log[len(log)-1].Date, Weights: log}
}

// By hand 1.15^4 = 1.7490, 1.15^5 = 2.0114, 1.15^7 = 2.6600; a pound for a kilogram is
// 2.2046 times. The animals are 60 days old where nothing else is said.
func TestGrowthIsNoSlip(t *testing.T) {
	const cat, dog, ferret, other = energy.Cat, energy.Dog, energy.Ferret, energy.Other
	for _, tt := range []struct {
		name        string
		species     energy.Species
		adult       units.Mass
		days        float64
		before, now float64 // kg
		slip        bool
	}{
		// True logs.
		{"10 g a day (SACN 5th ed., Table 23-1)", cat, 0, 10, 0.1, 0.2, false},
		{"13 g a day (the same)", cat, 0, 20, 0.1, 0.36, false},
		{"doubles in 7 days (University of Minnesota)", dog, 0, 7, 0.3, 0.6, false},
		{"fastest puppy, 2.31 times in 7 days (Alves 2020)", dog, 0, 7, 0.4, 0.924, false},
		{"fastest puppy, 3.15 times in 10 days (the same)", dog, 0, 10, 0.4, 1.26, false},
		{"fastest puppy, 4.55 times in 14 days (the same)", dog, 0, 14, 0.4, 1.82, false},
		{"giant puppy, 200 g a day", dog, 80 * kg, 28, 5, 10.6, false},
		{"4 g a day for each kg (SACN 5th ed., Table 16-1)", dog, 30 * kg, 28, 3, 6.36, false},
		{"kit that doubles in 5 days (from memory)", ferret, 0, 5, 0.01, 0.02, false},
		{"another's that doubles in 5 days", other, 0, 5, 0.05, 0.1, false},

		// The bound: 1.75 times, then 15 % a day, then the grams a day: ours.
		{"4 days", dog, 0, 4, 0.1, 0.1749, false},
		{"4 days, more", dog, 0, 4, 0.1, 0.1751, true},
		{"5 days", dog, 0, 5, 0.1, 0.2011, false},
		{"5 days, more", dog, 0, 5, 0.1, 0.2012, true},
		{"7 days", dog, 0, 7, 0.1, 0.2660, false},
		{"7 days, more", dog, 0, 7, 0.1, 0.2661, true},
		{"28 days, 8.4 kg", dog, 0, 28, 5, 13.39, false},
		{"28 days, 8.4 kg and more", dog, 0, 28, 5, 13.41, true},
		{"28 days of 160 g", dog, 20 * kg, 28, 5, 9.479, false},
		{"28 days of 160 g and more", dog, 20 * kg, 28, 5, 9.481, true},
		{"28 days of a giant", dog, 60 * kg, 28, 5, 13.39, false},
		{"28 days of a giant, more", dog, 60 * kg, 28, 5, 13.41, true},
		{"28 days of 50 g", cat, 0, 28, 1, 2.399, false},
		{"28 days of 50 g and more", cat, 0, 28, 1, 2.401, true},
		{"28 days of 20 g", ferret, 0, 28, 0.5, 1.059, false},
		{"28 days of 20 g and more", ferret, 0, 28, 0.5, 1.061, true},
		{"another's 28 days of 20 g", other, 0, 28, 0.5, 1.059, false},
		{"another's 28 days of 20 g and more", other, 0, 28, 0.5, 1.061, true},

		// Slips.
		{"pounds within 6 days", cat, 0, 6, 0.25, 0.55116, true},
		{"pounds in 14 days", cat, 0, 14, 4, 7.94, true},
		{"pounds within 80 days", dog, 0, 80, 20, 44.1, true}, // 20 + 24
		{"tenfold in 14 days", cat, 0, 14, 0.138, 1.38, true}, // 0.138 + 0.7
		{"tenfold in 100 days", dog, 0, 100, 4.3, 43, true},   // 4.3 + 30

		// Nothing loses half but by a slip.
		{"half", cat, 0, 90, 4, 2, true},
	} {
		w := watchOf(energy.Animal{Species: tt.species, Age: 60}, byDay(0.001, 0, tt.before, tt.days, tt.now))
		w.AdultWeight = tt.adult
		if _, err := w.Flags(); (err != nil) != tt.slip {
			t.Errorf("%v, %s: %v", tt.species, tt.name, err)
		}
	}
	for now, slip := range map[float64]bool{2: true, 2.01: false} {
		if err := byDay(10, 0, 4, 90, now).Check(on(firstDay) + 90); (err != nil) != slip {
			t.Errorf("4 kg, then %v: %v", now, err)
		}
	}
}

// The same in a litter and in a watch of a nursling.
func TestYoungAreReportedThoughTheyDouble(t *testing.T) {
	l := orphan(energy.Cat, 10, 100, 200)
	l.Nurslings[0].Weights[1].Date += 9
	log := l.Nurslings[0].Weights
	r := report(t, l)
	within(t, "g a day", r.Mean.Grams(), 10, 1e-12)
	today := log[1].Date
	if err := l.CheckWeights(log, today); err != nil {
		t.Error(err)
	}
	if log.Check(today) == nil {
		t.Error("a log of nobody knows whom doubles")
	}
	w := trend.Watch{Animal: energy.Animal{Species: energy.Cat, Age: 20}, Today: today, Weights: byDay(1, 9, 0.1, 19, 0.2)}
	if flags, err := w.Flags(); err != nil || len(flags) != 0 {
		t.Errorf("%v, %v", flags, err)
	}
	puppies := orphan(energy.Dog, 10, 300, 600)
	puppies.Nurslings[0].Weights[1].Date += 6
	report(t, puppies)
	// 100 g may be 404.6 g after ten days.
	for weight, slip := range map[units.Mass]bool{299: false, 404: false, 405: true} {
		log[1].Weight = weight // 1.15^10 = 4.046
		if err := l.CheckWeights(log, today); (err != nil) != slip {
			t.Errorf("%v: %v", weight, err)
		}
	}
}

// 7.94 lb are 3.6 kg: the cat lost 10 % in 14 days, and nobody may take it for a gain.
// Nothing but an age below a year, or that it grows, lets a weight grow: a cat of a
// year and 27 days was under a year old on the first of 28 days.
func TestGrownAnimalsDoNotGrow(t *testing.T) {
	const want = `trend: weighing 2 weight "7.94 kg": want a weight like the 4 kg of 2026-01-05 (+98.5 %: pounds? 7.94 lb is 3.6 kg; weigh again, and set Confirmed where it is right)`
	log := byDay(10, 0, 4, 14, 7.94)
	today := on(firstDay) + 14
	cat := func(a energy.Age, c energy.Circumstances) energy.Animal {
		return energy.Animal{Species: energy.Cat, Age: a, Circumstances: c}
	}
	plan := trend.Plan{
		Loss:  energy.WeightLoss{Animal: energy.Animal{Species: energy.Cat, Weight: 4 * kg, Ideal: 3.6 * kg}},
		Daily: 173, Since: on(firstDay),
	}
	later := with(plan, func(p *trend.Plan) { p.Since += 14 })
	of := func(p trend.Plan) error { _, err := p.Next(log, today); return err }
	watch := func(a energy.Animal, p trend.Plan) error {
		w := watchOf(a, log)
		w.Plan = p
		_, err := w.Flags()
		return err
	}
	_, ofTrend := log.Trend(today)
	_, ofDoubts := log.Doubts(today)
	_, ofRequirement := trend.NewRequirement(log, nil, today)
	for name, err := range map[string]error{
		"log": log.Check(today), "trend": ofTrend, "doubts": ofDoubts, "requirement": ofRequirement,
		"plan": of(plan), "plan of the last day": of(later),
		"watch": watch(cat(0, 0), trend.Plan{}), "of a year": watch(cat(365, 0), trend.Plan{}),
		"of two": watch(cat(730, 0), trend.Plan{}), "of any age": watch(cat(math.MaxInt, 0), trend.Plan{}),
		"of 300 days": watch(cat(300, 0), trend.Plan{}), "it grows": watch(cat(0, energy.Growing), trend.Plan{}),
		"with a plan": watch(cat(0, 0), plan), "of the last day": watch(cat(0, 0), later),
	} {
		if faultText(err) != want {
			t.Errorf("%s: %v", name, err)
		}
	}
	// 50 g a day from 1 kg on.
	for _, tt := range []struct {
		animal  energy.Animal
		planned bool
		most    float64
	}{
		{cat(0, 0), false, 1.75},
		{cat(0, energy.Growing), false, 2.4},
		{cat(500, energy.Growing), false, 2.4},
		{cat(364, 0), false, 2.4},
		{cat(365, 0), false, 2.4},
		{cat(366, 0), false, 2.35},
		{cat(375, 0), false, 1.9}, // 18 days
		{cat(392, 0), false, 1.75},
		{cat(393, 0), false, 1.75},
		{cat(394, 0), false, 1.75},
		{cat(100, 0), true, 1.75},
		{cat(0, energy.Growing), true, 1.75},
	} {
		for off, slip := range map[float64]bool{-0.001: false, 0.001: true} {
			w := watchOf(tt.animal, byDay(1, 0, 1, 28, tt.most+off))
			if tt.planned {
				w.Plan = plan
			}
			if _, err := w.Flags(); (err != nil) != slip {
				t.Errorf("%v, plan %v: to %v kg: %v", tt.animal, tt.planned, tt.most+off, err)
			}
		}
	}
}

// A rise of a puppy that only weeks of growth explain, and that the next weighing takes
// back to half or less, is the slip itself: 9.48 lb every 28 days in a log of 4.3 kg.
func TestRiseThatIsTakenBackIsTheSlip(t *testing.T) {
	refused := func(log trend.Weights) (list []string, err error) {
		w := watchOf(energy.Animal{Species: energy.Dog, Age: 150}, log)
		if _, err = w.Flags(); err != nil {
			for text := range strings.SplitSeq(err.Error(), "; trend: ") {
				list = append(list, strings.Fields(strings.TrimPrefix(text, "trend: weighing "))[0])
			}
		}
		return list, err
	}
	for _, tt := range []struct {
		name string
		log  trend.Weights
		want string
	}{
		{"the third of four", byDay(10, 0, 4.3, 28, 4.35, 56, 9.48, 84, 4.4), "3"},
		{"the second of three", byDay(10, 0, 4.3, 28, 9.48, 56, 4.4), "2"},
		{"it grew on", byDay(10, 0, 4.3, 28, 9.48, 56, 14), ""},
		{"then lost less than half", byDay(10, 0, 4.3, 28, 9.48, 56, 4.75), ""},
		{"then lost half of it, and of all", byDay(10, 0, 4.3, 28, 9.48, 56, 2.1), "3"},
		{"a fall below a small rise", byDay(10, 0, 4.3, 28, 5, 56, 2.4), "3"},
		{"a rise of 1.75 times", byDay(10, 0, 4, 28, 7, 56, 3.4), "2"},
		{"one of less", byDay(10, 0, 4, 28, 6.99, 56, 3.4), "3"},
		{"a rise on top of it", byDay(1, 0, 0.1, 10, 0.2, 11, 0.38), "3"},
	} {
		if got, err := refused(tt.log); strings.Join(got, " ") != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, err, tt.want)
		}
	}
	log := byDay(10, 0, 4.3, 28, 9.48, 56, 4.4)
	log[1].Confirmed = true
	if got, err := refused(log); strings.Join(got, " ") != "3" {
		t.Errorf("confirmed: %v", err)
	}
	// Of nobody knows whom the rise is refused whatever comes next.
	log = byDay(10, 0, 4, 20, 8.82, 40, 4.5)
	const want = `trend: weighing 2 weight "8.82 kg": want a weight like the 4 kg of 2026-01-05 (+120.5 %: pounds? 8.82 lb is 4 kg; weigh again, and set Confirmed where it is right)`
	if err := log.Check(on(firstDay) + 40); faultText(err) != want {
		t.Error(err)
	}
}

// The slip is told by the weighing before it or after it, whichever it is the pounds of:
// 6 lb are 2.72 kg, 4.41 lb are 2.
func TestSlipIsToldByTheWeighingItIsThePoundsOf(t *testing.T) {
	for _, tt := range []struct {
		log  trend.Weights
		want string
	}{
		{
			byDay(10, 0, 2, 14, 6, 15, 2.8),
			`trend: weighing 2 weight "6 kg": want a weight like the 2.8 kg of 2026-01-20 (+114.3 %: pounds? 6 lb is 2.72 kg; weigh again, and set Confirmed where it is right)`,
		},
		{
			byDay(10, 0, 2, 14, 4.41, 15, 2.1),
			`trend: weighing 2 weight "4.41 kg": want a weight like the 2 kg of 2026-01-05 (+120.5 %: pounds? 4.41 lb is 2 kg; weigh again, and set Confirmed where it is right)`,
		},
		{
			byDay(10, 0, 2, 14, 6, 15, 2.2),
			`trend: weighing 2 weight "6 kg": want a weight like the 2 kg of 2026-01-05 (+200 %: another animal, a carrier, the unit?; weigh again, and set Confirmed where it is right)`,
		},
	} {
		if _, err := watchOf(energy.Animal{Species: energy.Dog, Age: 100}, tt.log).Flags(); faultText(err) != tt.want {
			t.Errorf("%s\nwant %s", faultText(err), tt.want)
		}
	}
}
