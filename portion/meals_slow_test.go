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

// dealt deals the steps of a day out one by one, the first meal first.
func dealt(count int64, meals int) []int64 {
	counts := make([]int64, meals)
	for k := range count {
		counts[k%int64(meals)]++
	}
	return counts
}

func TestMealsAgainstDealing(t *testing.T) {
	d := NewDraws(8, 3)
	for range 300 {
		daily, menu, _ := drawnDay(d)
		r, err := portion.Weigh(ofLargeDog(daily), menu)
		if err != nil {
			t.Fatal(err)
		}
		step := OneOf(d, 0.1, 0.5, units.Gram, 5*units.Gram)
		w, err := r.On(step)
		if err != nil {
			continue
		}
		n := 1 + d.IntN(portion.MaxMeals)
		meals, err := w.Meals(n)
		if err != nil {
			t.Fatal(err)
		}
		rows := 0
		for i := range menu {
			if menu[i].Treat {
				continue
			}
			var got []int64
			for _, m := range meals {
				if m.Food == menu[i].Food.Name {
					got = append(got, m.Count)
				}
			}
			rows += n
			if want := dealt(w.Count(i), n); !slices.Equal(got, want) {
				t.Errorf("%d steps in %d meals: %v, want %v", w.Count(i), n, got, want)
			}
		}
		if len(meals) != rows {
			t.Errorf("%d rows, want %d", len(meals), rows)
		}
	}
}

// byHamilton apportions steps by parts: the whole steps of each exact share,
// then one each to the largest remainders, the earlier of two equal ones first.
func byHamilton(count int64, parts []int) []int64 {
	var total int64
	for _, p := range parts {
		total += int64(p)
	}
	counts := make([]int64, len(parts))
	remainders := make([]*big.Rat, len(parts))
	order := make([]int, len(parts))
	left := count
	for i, p := range parts {
		share := Times(new(big.Rat).SetInt64(count), big.NewRat(int64(p), total))
		whole := new(big.Int).Quo(share.Num(), share.Denom())
		counts[i], order[i] = whole.Int64(), i
		remainders[i] = Minus(share, new(big.Rat).SetInt(whole))
		left -= counts[i]
	}
	slices.SortStableFunc(order, func(i, j int) int { return remainders[j].Cmp(remainders[i]) })
	for _, i := range order[:left] {
		counts[i]++
	}
	return counts
}

func TestTimetableAgainstExactFractions(t *testing.T) {
	d := NewDraws(8, 3)
	for range 500 {
		w, err := unfailing(portion.Weigh(ofLargeDog(Drawn[units.Energy](d, 400, 4000)), diet.Only(asFed("food", Drawn[float64](d, 700, 6000))))).On(OneOf(d, 0.1, units.Gram, 5*units.Gram))
		if err != nil {
			t.Fatal(err)
		}
		var table portion.Timetable
		var parts []int
		for range 1 + d.IntN(portion.MaxMeals) {
			p := OneOf(d, 1, 2, 3, 1+d.IntN(1_000_000), 1_000_000)
			table = append(table, portion.Mealtime{Parts: p})
			parts = append(parts, p)
		}
		meals, err := w.Serve(table)
		if err != nil {
			t.Fatal(err)
		}
		var got []int64
		for _, m := range meals {
			got = append(got, m.Count)
		}
		if want := byHamilton(w.Count(0), parts); !slices.Equal(got, want) {
			t.Errorf("%d steps by %v: %v, want %v", w.Count(0), parts, got, want)
		}
	}
}

func unfailing[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// The day of a bottle is its energy over the kcal/mL, to the nearest mark, and
// dealt out to the feeds.
func TestFeedsAgainstExactFractions(t *testing.T) {
	d, decided := NewDraws(8, 3), 0
	for range 500 {
		kitten := energy.Animal{Species: energy.Cat, Weight: Drawn[units.Mass](d, 80, 450), Age: 10}
		b := portion.Bottle{
			Need:   must(energy.Nursling{Animal: kitten}),
			Liquid: portion.Liquid{Name: "milk", Energy: Drawn[units.EnergyPerVolume](d, 0.7, 1.5)},
			Mark:   units.Volume(OneOf(d, 0.01, 0.1, 0.5)),
		}
		n, err := b.LeastFeeds()
		if err != nil {
			continue // a mark too coarse for the stomach
		}
		b.Feeds = n
		f, err := b.Plan()
		if err != nil {
			t.Fatal(err)
		}
		exact := Over(Fraction(b.Need.Daily), Fraction(b.Liquid.Energy))
		if off := Off(float64(f.Exact), exact, exact); off > slowBound {
			t.Errorf("%v mL, off by %.2g", f.Exact, off)
		}
		mark := map[units.Volume]*big.Rat{0.01: Decimal("0.01"), 0.1: Decimal("0.1"), 0.5: Decimal("0.5")}[b.Mark]
		if want, sure := nearestStep(exact, mark); sure {
			decided++
			if f.Count != want {
				t.Errorf("%s mL are %d marks of %v, want %d", exact.FloatString(12), f.Count, b.Mark, want)
			}
		}
		var got []int64
		for _, feed := range f.All() {
			got = append(got, feed.Count)
			if nearest, _ := Times(mark, new(big.Rat).SetInt64(feed.Count)).Float64(); feed.Volume.Millilitres() != nearest {
				t.Errorf("%d marks of %v are %v", feed.Count, b.Mark, feed.Volume)
			}
		}
		if want := dealt(f.Count, n); !slices.Equal(got, want) {
			t.Errorf("%d marks in %d feeds: %v, want %v", f.Count, n, got, want)
		}
	}
	if decided < 300 {
		t.Errorf("only %d days were compared", decided)
	}
}
