package transition_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// The days of a rise: each menu is divided anew by the day's own energy.
func TestRampAgainstExactFractions(t *testing.T) {
	d, decided, worst := NewDraws(6, 5), 0, 0.0
	for range 60 {
		c := drawChange(d, transition.ByEnergy)
		var daily []units.Energy
		for range 1 + d.IntN(6) {
			daily = append(daily, units.Energy(Drawn[float64](d, 400, 4000)))
		}
		r := transition.Ramp{Menu: c.To, Meals: c.Meals, Scale: c.Scale}
		days, err := r.DaysWith(len(daily), func(day int) energy.Estimate { return prescribed(daily[day-1]) })
		tooSmall := false
		for i, kcal := range daily {
			day := slowWeigh(slowMenu(c.To, Fraction(kcal), c.densities), c.step)
			if tooSmall = tooSmall || day.small || !day.clear; err != nil || !day.clear {
				continue
			}
			for food, want := range day.grams {
				decided++
				if got := days[i].Mass(food).Grams(); got != nearest(want) {
					t.Errorf("day %d: %v g of %s, want %s g", i+1, got, food, want.FloatString(9))
				}
			}
			off := Off(days[i].Energy, day.kcal, day.kcal)
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

// The days of a ladder are percents of the resting energy, 70 × kg^0.75: of 16 kg
// 70 × 8 = 560 kcal, of 81 kg 70 × 27 = 1890 kcal.
func TestLadderAgainstExactFractions(t *testing.T) {
	const ladder = "25/33.3/50/62.5/100 %"
	for weight, resting := range map[units.Mass]string{16 * units.Kilogram: "560", 81 * units.Kilogram: "1890"} {
		s := starved(ladder)
		s.Animal.Weight = weight
		r := transition.Ramp{Menu: diet.Only(houseDry), Meals: 5, Scale: 0.1 * units.Gram}
		days, err := r.Refeeding(s)
		if err != nil || len(days) != 5 {
			t.Fatal(days, err)
		}
		for i, percent := range []string{"25", "33.3", "50", "62.5", "100"} {
			kcal := Over(Times(Decimal(resting), Decimal(percent)), Decimal("100"))
			off := Off(days[i].Target, kcal, kcal)
			day := slowWeigh([]slowPart{{rest: true, density: Decimal("3560"), energy: kcal}}, Decimal("0.1"))
			if grams := nearest(day.grams[""]); off > slowBound || !day.clear || days[i].Mass(houseDry.Name).Grams() != grams {
				t.Errorf("%v, day %d: %v for %v, want %v g for %s kcal", weight, i+1, days[i].Mass(houseDry.Name), days[i].Target, grams, kcal.FloatString(4))
			}
		}
	}
}
