package portion_test

import (
	"errors"
	"math/big"
	"testing"

	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// markTexts are marks of a syringe, each as the decimal that it is.
var markTexts = []string{"0.01", "0.1", "0.2", "0.5", "1", "2"}

// fewest tries every number of feeds and returns the first of which the largest, in
// whole marks, is not above most. It is false where the last bits decide.
func fewest(count int64, mark, most *big.Rat) (n int64, sure bool) {
	marks, _ := Over(most, mark).Float64()
	if beside := marks - float64(int64(marks)); beside < 1e-7 || beside > 1-1e-7 {
		return 0, false
	}
	for n = 1; n <= portion.MaxMeals; n++ {
		largest := big.NewRat(dealt(count, int(n))[0], 1)
		if Times(largest, mark).Cmp(most) <= 0 {
			return n, true
		}
	}
	return 0, true
}

// The fewest feeds of a bottle: none is more than 4 mL for each 100 g of a kitten
// (Lawler 2008).
func TestFewestFeedsAgainstTrying(t *testing.T) {
	d, decided := NewDraws(8, 3), 0
	for range 500 {
		kitten := energy.Animal{Species: energy.Cat, Weight: Drawn[units.Mass](d, 60, 900), Age: 10}
		text := OneOf(d, markTexts...)
		mark, _ := Decimal(text).Float64()
		b := portion.Bottle{
			Need:   must(energy.Prescribed{Animal: kitten, Daily: units.Energy(Drawn(d, 0.05, 0.3) * kitten.Weight.Grams()), By: "a veterinarian"}),
			Liquid: portion.Liquid{Energy: Drawn[units.EnergyPerVolume](d, 0.7, 1.5)}, Mark: units.Volume(mark),
		}
		count, sure := nearestStep(Over(Fraction(b.Need.Daily), Fraction(b.Liquid.Energy)), Decimal(text))
		want, sure2 := fewest(count, Decimal(text), Times(Decimal("0.04"), Fraction(kitten.Weight)))
		if !sure || !sure2 || count == 0 {
			continue
		}
		decided++
		got, err := b.LeastFeeds()
		if int64(got) != want || (err == nil) != (want > 0) {
			t.Errorf("%d marks of %s mL for %v: %d feeds, %v, want %d", count, text, kitten.Weight, got, err, want)
		}
	}
	if decided < 300 {
		t.Errorf("only %d bottles were compared", decided)
	}
}

// A day through a tube in exact fractions: volume, water, and which feeds are too
// large. The largest difference seen is 2.3e-16 of the figure.
func TestTubesAgainstExactFractions(t *testing.T) {
	d, worst, planned, refused := NewDraws(8, 3), 0.0, 0, 0
	for range 600 {
		cat := energy.Animal{Species: energy.Cat, Weight: Drawn[units.Mass](d, 500, 6000), Age: 700, Circumstances: energy.TubeFed}
		kg := Over(Fraction(cat.Weight), Decimal("1000"))
		text := OneOf(d, markTexts...)
		mark, _ := Decimal(text).Float64()
		p := portion.Tube{
			Need:   must(energy.Prescribed{Animal: cat, Daily: units.Energy(Drawn(d, 0.02, 0.06) * cat.Weight.Grams()), By: "a veterinarian"}),
			Liquid: portion.Liquid{Energy: Drawn[units.EnergyPerVolume](d, 0.7, 1.5), Water: Drawn[units.Percent](d, 50, 95)},
			Feeds:  1 + d.IntN(12), Mark: units.Volume(mark), Flush: units.Volume(OneOf(d, 0, 3, Drawn(d, 0.5, 5.0))),
			Goal: units.Volume(Drawn(d, 20.0, 200) * cat.Weight.Kilograms()), Most: units.Volume(OneOf(d, 0, Drawn(d, 5.0, 30))),
		}
		exact := Over(Fraction(p.Need.Daily), Fraction(p.Liquid.Energy))
		count, sure := nearestStep(exact, Decimal(text))
		if !sure || count < int64(p.Feeds) {
			continue
		}
		most := Decimal("15") // ours
		if p.Most > 0 {
			most = Fraction(p.Most)
		}
		largest := Times(big.NewRat(dealt(count, p.Feeds)[0], 1), Decimal(text))
		above := Minus(Plus(largest, Fraction(p.Flush)), Times(most, kg))
		f, err := p.Plan()
		if above.Sign() > 0 {
			refused++
			if !errors.Is(err, energy.ErrVeterinarian) {
				t.Errorf("%s mL and %v for %v: %v", largest.FloatString(2), p.Flush, cat.Weight, err)
			}
			continue
		}
		if err != nil {
			t.Errorf("%+v: %v", p, err)
			continue
		}
		planned++
		volume := Times(big.NewRat(count, 1), Decimal(text))
		inFeed := Times(volume, Over(Fraction(p.Liquid.Water), Decimal("100")))
		water := Plus(inFeed, Times(big.NewRat(int64(p.Feeds), 1), Fraction(p.Flush)))
		short, ok := f.Shortfall()
		if !ok || f.Count != count || f.Number != p.Feeds {
			t.Errorf("%+v: %d marks, a goal %v", f, count, ok)
		}
		holds := Times(volume, Fraction(p.Liquid.Energy))
		for _, x := range []struct {
			got         float64
			want, whole *big.Rat
		}{
			{f.Exact.Millilitres(), exact, exact},
			{f.Volume.Millilitres(), volume, volume},
			{f.Energy.Kilocalories(), holds, holds},
			{f.Largest().Millilitres(), largest, largest},
			{f.FeedWater().Millilitres(), inFeed, inFeed},
			{f.Water.Millilitres(), water, water},
			{short.Millilitres(), Minus(Fraction(p.Goal), water), Plus(Fraction(p.Goal), water)},
		} {
			off := Off(x.got, x.want, x.whole)
			if worst = max(worst, off); off > slowBound {
				t.Errorf("%+v: %v, want %s, off by %.2g", f, x.got, x.want.FloatString(12), off)
			}
		}
		sum := new(big.Rat)
		for _, feed := range f.All() {
			v := Times(big.NewRat(feed.Count, 1), Decimal(text))
			sum = Plus(sum, v)
			kcal := Times(v, Fraction(p.Liquid.Energy))
			if off := Off(feed.Energy.Kilocalories(), kcal, kcal); off > slowBound {
				t.Errorf("%+v: off by %.2g", feed, off)
			}
		}
		if sum.Cmp(volume) != 0 {
			t.Errorf("the feeds are %s mL, want %s", sum.FloatString(3), volume.FloatString(3))
		}
	}
	if planned < 150 || refused < 50 {
		t.Errorf("only %d plans were compared and %d refused", planned, refused)
	}
	t.Logf("%.2g", worst)
}
