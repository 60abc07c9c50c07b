package transition_test

import (
	"cmp"
	"math/big"
	"slices"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// slowTotals adds up what a plan needs of each food, day by day; false where a day
// can't be weighed, and clear as for a day.
func (c *drawnChange) slowTotals(steps transition.Steps) (totals map[string]*big.Rat, weighed, clear bool) {
	totals, clear = make(map[string]*big.Rat), true
	for _, s := range steps.All() {
		day := c.slowDay(s.Share)
		if clear = clear && day.clear; day.small {
			return nil, false, clear
		}
		for food, g := range day.grams {
			if totals[food] == nil {
				totals[food] = new(big.Rat)
			}
			totals[food] = Plus(totals[food], Times(g, new(big.Rat).SetInt64(int64(s.Days))))
		}
	}
	return totals, true, clear
}

// What is needed is the sum of the days, to the last bit, and what is to be bought
// that less the stock.
func TestShoppingAgainstExactFractions(t *testing.T) {
	d, lists := NewDraws(4, 1), 0
	for range 80 {
		c := drawChange(d, OneOf(d, transition.ByEnergy, transition.ByMass, transition.ByOldTotal))
		totals, weighed, clear := c.slowTotals(c.Steps)
		if !weighed || !clear {
			continue
		}
		if totals[c.From[0].Food.Name] == nil { // all new from day 1
			totals[c.From[0].Food.Name] = new(big.Rat)
		}
		have := units.Mass(float64(int(Drawn[float64](d, 1, 1e5))) / 10)
		list, err := c.Shopping(mustDays(t, c.Plan, c.need), inStore(c.From[0].Food, have))
		if err != nil || len(list) != len(totals) {
			t.Fatalf("%+v, %v, want %v", list, err, totals)
		}
		lists++
		for i, x := range list {
			want := totals[x.Food]
			missing := new(big.Rat).Set(want)
			if i == 0 {
				missing = Minus(want, new(big.Rat).SetFrac64(int64(float64(have)*10+0.5), 10))
			}
			buy, over := missing, new(big.Rat)
			if missing.Sign() < 0 {
				buy, over = new(big.Rat), Minus(new(big.Rat), missing)
			}
			if x.Need.Grams() != nearest(want) || x.Buy.Grams() != nearest(buy) || x.Over.Grams() != nearest(over) {
				t.Errorf("%+v, want %s g, to buy %s g, over %s g", x, want.FloatString(9), buy.FloatString(9), over.FloatString(9))
			}
		}
	}
	if lists < 60 {
		t.Errorf("only %d lists were compared", lists)
	}
}

// The longest of all schedules that last, found by trying every one: the plan's own
// with at most so many days a step, and the published ones of no more days.
func TestLongestStepsAgainstExactFractions(t *testing.T) {
	d, found, none := NewDraws(2, 9), 0, 0
	for range 80 {
		c := drawChange(d, transition.ByEnergy)
		c.Steps = OneOf(d, c.Steps, drawnSteps(d), transition.FourStages, transition.TenSteps, transition.Slow, transition.FourDays)
		if c.need = prescribed(c.need.Daily); d.IntN(4) == 0 {
			c.need.Animal.Species = energy.Ferret
		}
		tries := []transition.Steps{c.Steps}
		for most := 60; most > 0; most-- {
			shorter := c.Steps.All()
			for i := range shorter {
				shorter[i].Days = min(shorter[i].Days, most)
			}
			s, err := transition.NewSteps(shorter...)
			if err != nil {
				t.Fatal(err)
			}
			tries = append(tries, s)
		}
		tries = append(tries, transition.TenSteps, transition.FourStages, transition.FourDays)
		slices.SortStableFunc(tries, func(a, b transition.Steps) int { return cmp.Compare(b.Days(), a.Days()) })
		food := c.From[0].Food
		goesOn := slices.ContainsFunc(c.To, func(i diet.Item) bool { return i.Food.Name == food.Name })
		all, weighed, clear := c.slowTotals(c.Steps)
		if !weighed || all[food.Name] == nil {
			continue
		}
		have := units.Mass(nearest(all[food.Name]) * Drawn[float64](d, 0.1, 1.2))
		var want []transition.Step
		for _, s := range tries {
			own := slices.Equal(s.All(), c.Steps.All())
			if s.Days() > c.Steps.Days() || !own && c.need.Animal.Species == energy.Ferret && s.Len() < 10 {
				continue
			}
			totals, weighed, sure := c.slowTotals(s)
			clear = clear && sure
			if lasts := weighed && (goesOn || totals[food.Name] == nil || totals[food.Name].Cmp(Fraction(have)) <= 0); lasts {
				want = s.All()
				break
			}
		}
		if !clear {
			continue
		}
		got, err := c.LongestSteps(c.need, inStore(food, have))
		if found++; want == nil {
			none++
		}
		if (err != nil) != (want == nil) || !slices.Equal(got.All(), want) {
			t.Errorf("%v with %v of %v: %v, %v, want %v", c.Steps, have, all[food.Name].FloatString(9), got, err, want)
		}
	}
	if found < 50 || none < 10 || none > 35 {
		t.Errorf("%d plans were compared, %d of them with too little", found, none)
	}
}
