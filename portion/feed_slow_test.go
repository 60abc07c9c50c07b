package portion_test

import (
	"errors"
	"math/big"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// markTexts are marks of a syringe, each as the decimal that it is.
var markTexts = []string{"0.01", "0.1", "0.2", "0.5", "1", "2"}

// fewest tries every number of feeds and returns the first of which the largest, in
// whole marks, is not above most. It is false where the last bits decide.
func fewest(count int64, mark, most *big.Rat) (n int64, sure bool) {
	marks, _ := over(most, mark).Float64()
	if beside := marks - float64(int64(marks)); beside < 1e-7 || beside > 1-1e-7 {
		return 0, false
	}
	for n = 1; n <= portion.MaxMeals; n++ {
		largest := big.NewRat(dealt(count, int(n))[0], 1)
		if times(largest, mark).Cmp(most) <= 0 {
			return n, true
		}
	}
	return 0, true
}

// The fewest feeds of a bottle: none is more than 4 mL for each 100 g of a kitten
// (Lawler 2008).
func TestFewestFeedsAgainstTrying(t *testing.T) {
	d, decided := newDraws(), 0
	for range 500 {
		kitten := energy.Animal{Species: energy.Cat, Weight: drawn[units.Mass](d, 60, 900), Age: 10}
		text := oneOf(d, markTexts...)
		mark, _ := decimal(text).Float64()
		b := portion.Bottle{
			Need:   must(energy.Prescribed{Animal: kitten, Daily: units.Energy(drawn(d, 0.05, 0.3) * kitten.Weight.Grams()), By: "a veterinarian"}),
			Liquid: portion.Liquid{Energy: drawn[units.EnergyPerVolume](d, 0.7, 1.5)}, Mark: units.Volume(mark),
		}
		count, sure := nearestStep(over(fraction(b.Need.Daily), fraction(b.Liquid.Energy)), decimal(text))
		want, sure2 := fewest(count, decimal(text), times(decimal("0.04"), fraction(kitten.Weight)))
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
	d, worst, planned, refused := newDraws(), 0.0, 0, 0
	for range 600 {
		cat := energy.Animal{Species: energy.Cat, Weight: drawn[units.Mass](d, 500, 6000), Age: 700, Circumstances: energy.TubeFed}
		kg := over(fraction(cat.Weight), decimal("1000"))
		text := oneOf(d, markTexts...)
		mark, _ := decimal(text).Float64()
		p := portion.Tube{
			Need:   must(energy.Prescribed{Animal: cat, Daily: units.Energy(drawn(d, 0.02, 0.06) * cat.Weight.Grams()), By: "a veterinarian"}),
			Liquid: portion.Liquid{Energy: drawn[units.EnergyPerVolume](d, 0.7, 1.5), Water: drawn[units.Percent](d, 50, 95)},
			Feeds:  1 + d.IntN(12), Mark: units.Volume(mark), Flush: units.Volume(oneOf(d, 0, 3, drawn(d, 0.5, 5.0))),
			Goal: units.Volume(drawn(d, 20.0, 200) * cat.Weight.Kilograms()), Most: units.Volume(oneOf(d, 0, drawn(d, 5.0, 30))),
		}
		exact := over(fraction(p.Need.Daily), fraction(p.Liquid.Energy))
		count, sure := nearestStep(exact, decimal(text))
		if !sure || count < int64(p.Feeds) {
			continue
		}
		most := decimal("15") // ours
		if p.Most > 0 {
			most = fraction(p.Most)
		}
		largest := times(big.NewRat(dealt(count, p.Feeds)[0], 1), decimal(text))
		above := minus(plus(largest, fraction(p.Flush)), times(most, kg))
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
		volume := times(big.NewRat(count, 1), decimal(text))
		inFeed := times(volume, over(fraction(p.Liquid.Water), decimal("100")))
		water := plus(inFeed, times(big.NewRat(int64(p.Feeds), 1), fraction(p.Flush)))
		short, ok := f.Shortfall()
		if !ok || f.Count != count || f.Number != p.Feeds {
			t.Errorf("%+v: %d marks, a goal %v", f, count, ok)
		}
		holds := times(volume, fraction(p.Liquid.Energy))
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
			{short.Millilitres(), minus(fraction(p.Goal), water), plus(fraction(p.Goal), water)},
		} {
			off := apart(x.got, x.want, x.whole)
			if worst = max(worst, off); off > slowBound {
				t.Errorf("%+v: %v, want %s, off by %.2g", f, x.got, x.want.FloatString(12), off)
			}
		}
		sum := new(big.Rat)
		for _, feed := range f.All() {
			v := times(big.NewRat(feed.Count, 1), decimal(text))
			sum = plus(sum, v)
			kcal := times(v, fraction(p.Liquid.Energy))
			if off := apart(feed.Energy.Kilocalories(), kcal, kcal); off > slowBound {
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
