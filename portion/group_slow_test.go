package portion_test

import (
	"math/big"
	"slices"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Bowls are the days of the animals dealt out to the meals, and one bowl is their
// sum dealt out. The largest difference of an energy seen is 2.7e-16 of it.
func TestGroupsAgainstExactFractions(t *testing.T) {
	d, worst := NewDraws(8, 3), 0.0
	for range 60 {
		foods := []diet.Food{asFed("dry", Drawn[float64](d, 2500, 4500)), asFed("wet", Drawn[float64](d, 700, 1300)), asFed("stew", Drawn[float64](d, 700, 1300))}
		text := OneOf(d, "0.1", "0.5", "1", "28.349523125")
		step, _ := Decimal(text).Float64()
		var g portion.Group
		days := make(map[string]map[string]int64) // steps by animal and food
		sums := make(map[string]int64)
		for i := range 2 + d.IntN(4) {
			i1 := d.IntN(3)
			menu := diet.Menu{{Food: foods[i1], Amount: diet.Share(units.Percent(20 + d.IntN(60)))}, {Food: foods[(i1+1)%3], Amount: diet.Rest()}}
			need := must(energy.Prescribed{Daily: Drawn[units.Energy](d, 500, 2000), By: "a veterinarian"})
			name := string(rune('a' + i))
			w := weighedOn(t, need, menu, units.Mass(step))
			g = append(g, portion.Plan{Animal: name, Weighed: w})
			days[name] = make(map[string]int64)
			for k := range menu {
				days[name][menu[k].Food.Name] = w.Count(k)
				sums[menu[k].Food.Name] += w.Count(k)
			}
		}
		density := func(food string) *big.Rat {
			at := slices.IndexFunc(foods, func(f diet.Food) bool { return f.Name == food })
			return Fraction(foods[at].Label.Energy)
		}
		compare := func(m portion.Meal, count int64) {
			t.Helper()
			grams := Times(Decimal(text), big.NewRat(count, 1))
			if nearest, _ := grams.Float64(); m.Count != count || m.Mass.Grams() != nearest {
				t.Errorf("%+v: want %d steps of %s g", m, count, text)
				return
			}
			kcal := Over(Times(grams, density(m.Food)), Decimal("1000"))
			if kcal.Sign() == 0 {
				if m.Energy != 0 {
					t.Errorf("%+v: energy in nothing", m)
				}
				return
			}
			off := Off(m.Energy.Kilocalories(), kcal, kcal)
			if worst = max(worst, off); off > slowBound {
				t.Errorf("%+v: off by %.2g", m, off)
			}
		}
		n := 1 + d.IntN(portion.MaxMeals)
		bowls, err := g.Bowls(n)
		if err != nil {
			t.Fatal(err)
		}
		if len(bowls) != 2*len(g)*n {
			t.Errorf("%d bowls, want %d", len(bowls), 2*len(g)*n)
		}
		for at, b := range bowls {
			if want := at/(2*len(g)) + 1; b.Number != want || b.Animal != g[at/2%len(g)].Animal {
				t.Errorf("bowl %d is that of %s in meal %d", at, b.Animal, b.Number)
			}
			compare(b.Meal, dealt(days[b.Animal][b.Food], n)[b.Number-1])
		}
		one, err := g.OneBowl(n)
		if err != nil {
			t.Fatal(err)
		}
		if len(one.Foods) != len(sums) || len(one.Meals) != len(sums)*n {
			t.Errorf("%d foods in %d rows, want %d in %d meals", len(one.Foods), len(one.Meals), len(sums), n)
		}
		all := new(big.Rat)
		for _, f := range one.Foods {
			compare(f, sums[f.Food])
			all = Plus(all, Over(Times(Times(Decimal(text), big.NewRat(sums[f.Food], 1)), density(f.Food)), Decimal("1000")))
		}
		if off := Off(one.Energy.Kilocalories(), all, all); off > slowBound {
			t.Errorf("the bowl holds %v, off by %.2g", one.Energy, off)
		}
		for _, m := range one.Meals {
			compare(m, dealt(sums[m.Food], n)[m.Number-1])
		}
	}
	t.Logf("%.2g", worst)
}
