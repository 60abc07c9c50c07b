package portion_test

import (
	"math/big"
	"testing"
	"time"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// supplied is what a food of a supply should be, in grams and euros a day.
type supplied struct {
	daily, store, cost *big.Rat
	animals            int
}

// upwards returns the least whole number not below x, and false where the last
// bits decide.
func upwards(x *big.Rat) (int64, bool) {
	n := new(big.Int).Quo(x.Num(), x.Denom())
	over, _ := Minus(x, new(big.Rat).SetInt(n)).Float64()
	if over > 0 {
		return n.Int64() + 1, 1e-7 < over && over < 1-1e-7
	}
	return n.Int64(), true
}

// Supplies in exact fractions: the grams of a day are whole steps, and everything
// else is made of them. The largest difference seen is 3.6e-16 of the figure.
func TestSuppliesAgainstExactFractions(t *testing.T) {
	d, worst, ordered, short := NewDraws(8, 3), 0.0, 0, 0
	start := time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC)
	for range 300 {
		var foods []diet.Food
		for _, name := range []string{"dry", "wet", "stew"} {
			f := asFed(name, Drawn[float64](d, 700, 4500))
			foods = append(foods, inPacks(f, euros(Drawn(d, 0.4, 15.0), Drawn(d, 1.0, 90))))
		}
		s := portion.Supply{Days: 1 + d.IntN(366), Waste: OneOf[units.Percent](d, 0, 5, Drawn[units.Percent](d, 0.1, 50))}
		want := make(map[string]*supplied)
		of := func(f *diet.Food) *supplied {
			if want[f.Name] == nil {
				want[f.Name] = &supplied{daily: new(big.Rat), store: new(big.Rat)}
			}
			return want[f.Name]
		}
		fed := make([]map[string]*big.Rat, 1+d.IntN(4)) // of each animal, by food
		for i := range fed {
			i1 := d.IntN(3)
			menu := diet.Menu{{Food: foods[i1], Amount: diet.Share(units.Percent(20 + d.IntN(60)))}, {Food: foods[(i1+1)%3], Amount: diet.Rest()}}
			text := OneOf(d, "0.1", "1", "5")
			step, _ := Decimal(text).Float64()
			need := must(energy.Prescribed{Daily: Drawn[units.Energy](d, 300, 2000), By: "a veterinarian"})
			w := weighedOn(t, need, menu, units.Mass(step))
			s.Plans = append(s.Plans, portion.Plan{Animal: string(rune('a' + i)), Weighed: w})
			fed[i] = make(map[string]*big.Rat)
			for k := range menu {
				grams := Times(Decimal(text), big.NewRat(w.Count(k), 1))
				fed[i][menu[k].Food.Name] = grams
				x := of(&menu[k].Food)
				x.daily = Plus(x.daily, grams)
				x.animals++
			}
		}
		for i := range foods {
			if d.IntN(2) == 0 {
				mass := Drawn[units.Mass](d, 100, 300000)
				s.Store = append(s.Store, portion.Stock{Food: foods[i], Mass: mass})
				of(&foods[i]).store = Fraction(mass)
			}
		}
		lines, err := s.Lines()
		if err != nil {
			t.Fatal(err)
		}
		if len(lines) != len(want) {
			t.Fatalf("%d foods, want %d", len(lines), len(want))
		}
		compare := func(what string, got float64, want, whole *big.Rat) {
			t.Helper()
			if whole.Sign() == 0 {
				if got != 0 {
					t.Errorf("%s: %v, want none", what, got)
				}
				return
			}
			off := Off(got, want, whole)
			if worst = max(worst, off); off > slowBound {
				t.Errorf("%s: %v, want %s, off by %.2g", what, got, want.FloatString(12), off)
			}
		}
		for _, l := range lines {
			x := want[l.Food.Name]
			used := Times(x.daily, Plus(Decimal("1"), Over(Fraction(s.Waste), Decimal("100"))))
			need := Times(used, big.NewRat(int64(s.Days), 1))
			missing := Minus(need, x.store)
			if missing.Sign() < 0 {
				missing = new(big.Rat)
			}
			pack := l.Food.Label.Packs[0]
			x.cost = Times(Over(used, Fraction(pack.Net)), Fraction(pack.Price.Amount()))
			compare("daily", l.Daily.Grams(), x.daily, x.daily)
			compare("used", l.Used.Grams(), used, used)
			compare("need", l.Need.Grams(), need, need)
			compare("store", l.Store.Grams(), x.store, x.store)
			compare("short", l.Short.Grams(), missing, Plus(need, x.store))
			compare("cost", l.Cost.Amount(), x.cost, x.cost)
			if l.Animals != x.animals {
				t.Errorf("%s is fed to %d, want %d", l.Food.Name, l.Animals, x.animals)
			}
			if n, sure := upwards(Over(missing, Fraction(pack.Net))); sure {
				ordered++
				if n > 0 {
					short++
				}
				if int64(l.Packs) != n {
					t.Errorf("%s g in packs of %v: %d, want %d", missing.FloatString(3), pack.Net, l.Packs, n)
				}
			}
			if used.Sign() == 0 {
				if _, ok := l.RunsOut(start); ok || l.DaysLeft != 0 {
					t.Errorf("%s is not fed, and lasts %v days", l.Food.Name, l.DaysLeft)
				}
				continue
			}
			lasts := Over(x.store, used)
			compare("days", l.DaysLeft, lasts, lasts)
			if n, sure := upwards(lasts); sure {
				day, ok := l.RunsOut(start)
				if n--; n < 0 {
					n = 0 // nothing is in store
				}
				if want := start.AddDate(0, 0, int(n)); n < 36500 && (!ok || !day.Equal(want)) {
					t.Errorf("%s days: until %v, want %v", lasts.FloatString(3), day, want)
				}
			}
		}
		costs, err := s.Costs()
		if err != nil {
			t.Fatal(err)
		}
		for i, c := range costs {
			sum := new(big.Rat)
			for name, grams := range fed[i] {
				sum = Plus(sum, Times(want[name].cost, Over(grams, want[name].daily)))
			}
			compare("the cost of an animal", c.Cost.Amount(), sum, sum)
		}
	}
	if ordered < 300 || short < 100 {
		t.Errorf("only %d orders were compared, %d of them of anything", ordered, short)
	}
	t.Logf("%.2g", worst)
}
