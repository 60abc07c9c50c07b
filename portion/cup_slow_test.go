package portion_test

import (
	"math/big"
	"testing"

	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// nearestMark tries the marks of a measure around an amount, and returns the
// nearest, the larger of two as near, in the coarsest parts that have it. It is
// false where the last bits decide between two.
func nearestMark(measures *big.Rat, marks portion.Marks) (best portion.Mark, sure bool) {
	amount, _ := measures.Float64()
	var distance, second *big.Rat
	for _, p := range []struct {
		mark portion.Marks
		of   int
	}{{0, 1}, {portion.Halves, 2}, {portion.Thirds, 3}, {portion.Quarters, 4}, {portion.Eighths, 8}} {
		if p.mark != 0 && marks&p.mark == 0 {
			continue
		}
		for n := max(1, int(amount*float64(p.of))-1); n <= int(amount*float64(p.of))+2; n++ {
			m := big.NewRat(int64(n), int64(p.of))
			away := Minus(m, measures)
			away.Abs(away)
			switch {
			case distance == nil || away.Cmp(distance) < 0:
				best, distance, second = portion.Mark{Parts: n, Of: p.of}, away, distance
			case m.Cmp(big.NewRat(int64(best.Parts), int64(best.Of))) != 0 && (second == nil || away.Cmp(second) < 0):
				second = away
			}
		}
	}
	if second == nil {
		return best, true
	}
	between, _ := Minus(second, distance).Float64()
	return best, between > 1e-9
}

// A day in cups in exact fractions. The largest difference seen is 3.2e-16 of the
// day's energy.
func TestCupsAgainstExactFractions(t *testing.T) {
	d, worst, decided := NewDraws(8, 3), 0.0, 0
	for range 200 {
		daily, menu, parts := drawnDay(d)
		r, err := portion.Weigh(ofLargeDog(daily), menu)
		if err != nil {
			t.Fatal(err)
		}
		w, err := r.On(0.01 * units.Gram)
		if err != nil {
			continue
		}
		for i, p := range parts {
			cup := portion.Cup{Mass: Drawn[units.Mass](d, 20, 300), Marks: portion.Marks(d.IntN(16))}
			meals := 1 + d.IntN(4)
			x, err := w.InCups(i, meals, cup)
			if err != nil {
				continue // whole pieces
			}
			if menu[i].Treat {
				meals = 1
			}
			meal := Over(p.mass, big.NewRat(int64(meals), 1))
			mark, sure := nearestMark(Over(meal, Fraction(cup.Mass)), cup.Marks)
			if !sure {
				continue
			}
			decided++
			if x.Mark != mark || x.Meals != meals {
				t.Errorf("%s g in cups of %v: %+v of %d, want %+v", meal.FloatString(6), cup, x.Mark, x.Meals, mark)
				continue
			}
			level := Times(big.NewRat(int64(mark.Parts), int64(mark.Of)), Fraction(cup.Mass))
			filled := p.kcalOf(Times(level, big.NewRat(int64(meals), 1)))
			for _, off := range []float64{
				Off(float64(x.Meal), meal, meal), Off(float64(x.Mass), level, level), Off(float64(x.Energy), p.energy, Fraction(daily)),
				Off(float64(x.Error), Minus(filled, p.energy), Plus(filled, Fraction(daily))),
			} {
				if worst = max(worst, off); off > slowBound {
					t.Errorf("%+v: off by %.2g", x, off)
				}
			}
			percent := Over(Times(Decimal("100"), Minus(filled, p.energy)), p.energy)
			whole := Over(Times(Decimal("100"), Plus(filled, Fraction(daily))), p.energy)
			if off := Off(float64(x.Off()), percent, whole); off > slowBound {
				t.Errorf("%+v: %v %%, off by %.2g", x, x.Off(), off)
			}
		}
	}
	if decided < 300 {
		t.Errorf("only %d cups were compared", decided)
	}
	t.Logf("%.2g", worst)
}
