package portion_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// day is a menu of every kind of amount: a treat in pieces, a fixed mass, a share,
// a second share, and a rest or a third share.
func day(share, second float64, pieces int, grams units.Mass, rest bool) diet.Menu {
	menu := diet.Menu{
		{Food: catWet, Amount: diet.Share(units.Percent(share))},
		{Food: biscuit, Amount: diet.Count(float64(pieces), "biscuit"), Treat: true},
		{Food: catDry, Amount: diet.Share(units.Percent(second))},
		{Food: asFed("broth", 800), Amount: diet.Fixed(grams)},
		{Food: kibble, Amount: diet.Rest()},
	}
	if !rest {
		menu[4].Amount = diet.Share(units.Percent(100 - share - second))
	}
	return menu
}

// days hands check every case of a day, exact and weighed.
func days(check func(r portion.Ration, w portion.Weighed) string) gopter.Prop {
	return prop.ForAll(func(daily units.Energy, share, second float64, pieces int, grams, step units.Mass, rest bool) string {
		r, err := portion.Weigh(prescribed(daily), day(share, second, pieces, grams, rest))
		if err != nil {
			return err.Error()
		}
		w, err := r.On(step)
		if err != nil {
			return err.Error()
		}
		return check(r, w)
	}, proptest.Quantity[units.Energy](700, 2300), gen.Float64Range(10, 40), gen.Float64Range(10, 40), gen.IntRange(1, 3),
		proptest.Quantity[units.Mass](20, 200), gen.OneConstOf(units.Mass(0.1), units.Gram, 5*units.Gram), gen.Bool())
}

func TestMenuProperties(t *testing.T) {
	proptest.Check(t, "the foods add up to the day's energy", days(func(r portion.Ration, _ portion.Weighed) string {
		var sum units.Energy
		for i := range r.Len() {
			sum += r.Portion(i).Energy
		}
		if daily := r.Need().Daily; math.Abs(float64(sum-daily)) > 1e-12*float64(daily) {
			return fmt.Sprintf("%v of %v", sum, daily)
		}
		return ""
	}))

	proptest.Check(t, "a share is of what the fixed amounts leave", days(func(r portion.Ration, _ portion.Weighed) string {
		left := r.Need().Daily
		for i, item := range r.Menu() {
			if _, ok := item.Amount.Share(); !ok && !item.Amount.IsRest() {
				left -= r.Portion(i).Energy
			}
		}
		for i, item := range r.Menu() {
			s, ok := item.Amount.Share()
			if got := 100 * float64(r.Portion(i).Energy/left); ok && math.Abs(got-float64(s)) > 1e-9 {
				return fmt.Sprintf("%v %% for %v", got, s)
			}
		}
		return ""
	}))

	proptest.Check(t, "each food is within half a step, the rest of what the others leave", days(func(r portion.Ration, w portion.Weighed) string {
		half := w.Step() / 2 * (1 + 1e-12)
		left := w.Target()
		for i, item := range r.Menu() {
			if item.Amount.IsRest() {
				continue
			}
			left -= w.Portion(i).Energy
			off := w.Portion(i).Mass - r.Portion(i).Mass
			if _, _, counted := item.Amount.Count(); counted && off != 0 || math.Abs(float64(off)) > float64(half) {
				return fmt.Sprintf("%v for %v of %s", w.Portion(i).Mass, r.Portion(i).Mass, w.Portion(i).Food)
			}
		}
		for i, item := range r.Menu() {
			off := w.Portion(i).Mass - r.Density(i).Energy.Mass(left)
			if item.Amount.IsRest() && math.Abs(float64(off)) > float64(half)+1e-9 {
				return fmt.Sprintf("a rest of %v where %v are left", w.Portion(i).Mass, left)
			}
		}
		return ""
	}))

	proptest.Check(t, "delivered energy is within half a step of every weighed food, or of the rest alone", days(func(r portion.Ration, w portion.Weighed) string {
		var all, rest units.Energy
		for i, item := range r.Menu() {
			half := r.Density(i).Energy.Energy(w.Step() / 2)
			if item.Amount.IsRest() {
				rest = half
			}
			if w.Count(i) > 0 {
				all += half
			}
		}
		if rest > 0 { // it takes up the rounding of the others
			all = rest
		}
		if off := math.Abs(float64(w.Energy() - w.Target())); off > float64(all)+1e-9 {
			return fmt.Sprintf("%v for %v, with %v in half a step", w.Energy(), w.Target(), all)
		}
		return ""
	}))

	proptest.Check(t, "the meals add up to the day, as counts, without the treats", days(func(r portion.Ration, w portion.Weighed) string {
		for n := 1; n <= 5; n++ {
			meals, err := w.Meals(n)
			if err != nil {
				return err.Error()
			}
			sums := map[string]int64{}
			for _, m := range meals {
				sums[m.Food] += m.Count
			}
			for i, item := range r.Menu() {
				if want := w.Count(i); !item.Treat && sums[item.Food.Name] != want || item.Treat && sums[item.Food.Name] != 0 {
					return fmt.Sprintf("%d steps of %s in %d meals, want %d", sums[item.Food.Name], item.Food.Name, n, want)
				}
			}
		}
		return ""
	}))

	proptest.Check(t, "the order of the foods doesn't matter", prop.ForAll(func(daily units.Energy, share float64, turn int) string {
		menu := day(share, 20, 2, 50, true)
		turned := append(append(diet.Menu{}, menu[turn:]...), menu[:turn]...)
		a, errA := portion.Weigh(prescribed(daily), menu)
		b, errB := portion.Weigh(prescribed(daily), turned)
		if errA != nil || errB != nil {
			return fmt.Sprint(errA, errB)
		}
		for i := range menu {
			x, y := a.Portion(i), b.Portion((i-turn+len(menu))%len(menu))
			// Sums in another order differ in the last bits.
			if x.Food != y.Food || math.Abs(float64(x.Mass-y.Mass)) > 1e-9 {
				return fmt.Sprintf("%+v, then %+v", x, y)
			}
		}
		return ""
	}, proptest.Quantity[units.Energy](700, 2300), gen.Float64Range(10, 40), gen.IntRange(0, 4)))
}
