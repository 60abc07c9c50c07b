package transition_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// The days of a rise: each menu is divided anew by the day's own energy.
func TestRampAgainstExactFractions(t *testing.T) {
	d, decided, worst := draws{rand.New(rand.NewPCG(6, 5))}, 0, 0.0
	for range 60 {
		c := d.change(transition.ByEnergy)
		var daily []units.Energy
		for range 1 + d.IntN(6) {
			daily = append(daily, units.Energy(d.between(400, 4000)))
		}
		r := transition.Ramp{Menu: c.To, Meals: c.Meals, Scale: c.Scale}
		days, err := r.DaysWith(len(daily), func(day int) energy.Estimate { return prescribed(daily[day-1]) })
		tooSmall := false
		for i, kcal := range daily {
			day := slowWeigh(slowMenu(c.To, fraction(kcal), c.densities), c.step)
			if tooSmall = tooSmall || day.small || !day.clear; err != nil || !day.clear {
				continue
			}
			for food, want := range day.grams {
				decided++
				if got := days[i].Mass(food).Grams(); got != nearest(want) {
					t.Errorf("day %d: %v g of %s, want %s g", i+1, got, food, want.FloatString(9))
				}
			}
			off := math.Abs(nearest(over(minus(fraction(days[i].Energy), day.kcal), day.kcal)))
			if worst = max(worst, off); off > slowBound || days[i].Target != kcal || days[i].Number != i+1 {
				t.Errorf("day %d holds %v for %v, off by %.2g", days[i].Number, days[i].Energy, days[i].Target, off)
			}
		}
		if err != nil && !tooSmall {
			t.Errorf("%+v: %v", r, err)
		}
	}
	if decided < 200 {
		t.Errorf("only %d masses were compared", decided)
	}
	t.Logf("%d masses, %.2g", decided, worst)
}
