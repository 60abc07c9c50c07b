package portion_test

import (
	"math/big"
	"slices"
	"testing"

	"example.org/bowlgram/diet"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Foods that are not in every meal are apportioned to those that have them, by
// their parts alone. The longest time between meals is found by walking through
// two days minute by minute. The largest difference of an energy seen is 2.3e-16
// of it.
func TestTimetablesOfSeveralFoodsAgainstExactFractions(t *testing.T) {
	d, worst := NewDraws(8, 3), 0.0
	for range 300 {
		names := []string{"dry", "wet", "stew"}
		var menu diet.Menu
		for i, name := range names {
			menu = append(menu, diet.Item{Food: asFed(name, Drawn[float64](d, 700, 4500)), Amount: OneOf(d, diet.Share(30), diet.Share(15))})
			if i == 2 {
				menu[i].Amount = diet.Rest()
			}
		}
		text := OneOf(d, "0.1", "1", "5")
		step, _ := Decimal(text).Float64()
		w := weighedOn(t, ofLargeDog(Drawn[units.Energy](d, 800, 4000)), menu, units.Mass(step))
		minutes := make(map[int]bool)
		var table portion.Timetable
		for len(minutes) < 1+d.IntN(portion.MaxMeals) {
			minutes[d.IntN(24*60)] = true
		}
		for m := range 24 * 60 {
			if minutes[m] {
				table = append(table, portion.Mealtime{At: portion.At(m/60, m%60), Parts: OneOf(d, 0, 1, 2, 3, 1+d.IntN(1_000_000))})
			}
		}
		for j := range table {
			for _, name := range names {
				if j == 0 || d.IntN(2) == 0 { // the first has them all
					table[j].Foods = append(table[j].Foods, name)
				}
			}
		}
		meals, err := w.Serve(table)
		if err != nil {
			t.Fatal(err)
		}
		rows := 0
		for k, name := range names {
			var in, parts []int
			for j := range table {
				// No list is a meal of every food.
				if len(table[j].Foods) > 0 && !slices.Contains(table[j].Foods, name) {
					continue
				}
				in, parts = append(in, j), append(parts, max(table[j].Parts, 1))
			}
			want := byHamilton(w.Count(k), parts)
			var got []int64
			for _, m := range meals {
				if m.Food != name {
					continue
				}
				rows++
				if at := len(got); at >= len(in) || m.Number != in[at]+1 || m.At != table[in[at]].At {
					t.Fatalf("%s: %+v of %v", name, m, in)
				}
				got = append(got, m.Count)
				kcal := Over(Times(Times(Decimal(text), big.NewRat(m.Count, 1)), Fraction(menu[k].Food.Label.Energy)), Decimal("1000"))
				if kcal.Sign() > 0 {
					off := Off(m.Energy.Kilocalories(), kcal, kcal)
					if worst = max(worst, off); off > slowBound {
						t.Errorf("%+v: off by %.2g", m, off)
					}
				}
			}
			if !slices.Equal(got, want) {
				t.Errorf("%d steps of %s by %v: %v, want %v", w.Count(k), name, parts, got, want)
			}
		}
		if rows != len(meals) {
			t.Errorf("%d rows, want %d", len(meals), rows)
		}
		last, longest := -1, 0
		for m := range 2 * 24 * 60 {
			if !minutes[m%(24*60)] {
				continue
			}
			if last >= 0 {
				longest = max(longest, m-last)
			}
			last = m
		}
		if gap, ok := table.LongestGap(); !ok || gap != longest {
			t.Errorf("%v: %d minutes, %v, want %d", table, gap, ok, longest)
		}
	}
	t.Logf("%.2g", worst)
}
