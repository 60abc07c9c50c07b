package trend_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// slowAlarm is the gain a day under which a nursling goes to a veterinarian: 7 g
// of a kitten (SACN 5th ed., Table 23-5), 3.5 % of a puppy's weight before (Table
// 16-1); up to the age of two days the loss of a tenth of it (from memory).
func slowAlarm(s energy.Species, age int, before units.Mass) *big.Float {
	switch {
	case age <= 2:
		return Mul(Dec("-0.1"), Exact(before))
	case s == energy.Dog:
		return Mul(Dec("0.035"), Exact(before))
	}
	return Dec("7")
}

// slowGain is the gain a day from one weighing to another.
func slowGain(a, b trend.Weighing) *big.Float {
	return Quo(Sub(Exact(b.Weight), Exact(a.Weight)), Exact(b.Date-a.Date))
}

// slowMilk is kcal for each 100 g: a puppy's is 60, 70, 80 and 90 kcal/lb by week
// (Dog Owner's Home Veterinary Handbook, 4th ed., 2007, p. 499), a pound being
// 453.59237 g; a kitten's SACN 5th ed., Table 23-4, p. 420, of 20 to 25 the middle.
func slowMilk(s energy.Species, age int) *big.Float {
	if s == energy.Dog {
		return Quo(Exact(60+10*((age-1)/7)), Dec("4.5359237"))
	}
	switch {
	case age <= 3:
		return Dec("15")
	case age <= 6:
		return Dec("20")
	}
	return Dec("22.5")
}

// Largest difference seen: 2.8e-16; of a gain, a part of the weight.
func TestLitterIsThatOfTheSlowReference(t *testing.T) {
	d := NewDraws(5, 12)
	worst, alarms, more := 0.0, 0, 0
	for range 1000 {
		species := energy.Cat
		if d.IntN(2) == 0 {
			species = energy.Dog
		}
		log := drawnLog(d, 1+d.IntN(6), 3, DrawnBeside(d, 110*units.Gram, 300*units.Gram), DrawnBeside(d, 1e-3, 0.04), DrawnBeside(d, 1e-3, 0.05), 0.1)
		n := len(log)
		last := log[n-1]
		first := 1 + d.IntN(4) // the age at the first weighing
		age := first + int(last.Date-log[0].Date)
		l := trend.Litter{
			Species: species, Born: log[0].Date - trend.Date(first-1), Feeds: 1 + d.IntN(10),
			Milk: DrawnBeside[units.EnergyPerVolume](d, 0.5, 1.5), Nurslings: []trend.Nursling{{Name: "Moth", Weights: log}},
		}
		reports, err := l.Reports(last.Date + trend.Date(d.IntN(2)))
		if err != nil {
			t.Fatalf("%v: %v", l, err)
		}
		got := reports[0]
		check := func(name string, got, want, scale *big.Float) {
			x, _ := Quo(Sub(got, want), scale).Float64()
			x = max(x, -x)
			worst = max(worst, x)
			if !(x <= 1e-13) {
				t.Errorf("%s of %v: off by %.3g", name, l, x)
			}
		}
		alarm := false
		for i, g := range got.Gains {
			a, b := log[i], log[i+1]
			check("gain", Exact(g.Gain), slowGain(a, b), Exact(b.Weight))
			ageThen := first + int(b.Date-log[0].Date)
			limit := slowAlarm(species, ageThen, a.Weight)
			check("alarm", Exact(g.Expected.Alarm), limit, Exact(a.Weight))
			if g.Weight != b.Weight || g.Date != b.Date || g.Days != int(b.Date-a.Date) || int(g.Age) != ageThen {
				t.Errorf("%+v of %v", g, l)
			}
			alarm = above(limit, slowGain(a, b))
			if mean := slowSince(log[:i+2], 3); mean != nil && ageThen-int(b.Date-mean.from.Date) >= 2 {
				alarm = alarm || above(slowAlarm(species, ageThen, mean.from.Weight), slowGain(mean.from, b))
			}
			if (g.Flag.Level == advice.Refer) != alarm {
				t.Errorf("%+v of %v: alarm %v", g, l, alarm)
			}
		}
		if len(got.Gains) != n-1 || got.Alarm() != alarm {
			t.Errorf("%d gains, alarm %v; want %d, %v", len(got.Gains), got.Alarm(), n-1, alarm)
		}
		if alarm {
			alarms++
		}
		mean := Zero()
		if n > 1 {
			mean = slowGain(log[0], last)
		}
		check("mean", Exact(got.Mean), mean, Exact(last.Weight))
		need := Mul(slowMilk(species, age), Quo(Exact(last.Weight), Dec("100")))
		milk, stomach := Quo(need, Exact(l.Milk)), Mul(Dec("0.04"), Exact(last.Weight)) // 4 mL for each 100 g
		feeds := l.Feeds
		for above(milk, Mul(Exact(feeds), stomach)) {
			feeds++
		}
		if feeds > l.Feeds {
			more++
		}
		check("need", Exact(got.Need.Daily), need, need)
		check("milk", Exact(got.Milk), milk, milk)
		check("stomach", Exact(got.Stomach), stomach, stomach)
		check("feed", Exact(got.Feed), Quo(milk, Exact(feeds)), stomach)
		if got.Feeds != feeds {
			t.Errorf("%d feeds, want %d", got.Feeds, feeds)
		}
	}
	t.Logf("largest difference %.2g; %d alarms, %d with more feeds", worst, alarms, more)
	if alarms < 200 || more < 200 {
		t.Errorf("%d alarms, %d with more feeds", alarms, more)
	}
}
