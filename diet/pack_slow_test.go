package diet_test

import (
	"fmt"
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// slowPack is a pack of so many tenths of a gram and so many cents; below zero:
// no price.
type slowPack struct {
	net, cents int64
	currency   string
}

func (p slowPack) pack() diet.Pack {
	x := diet.Pack{Net: units.Mass(float64(p.net) / 10)}
	if p.cents >= 0 {
		var err error
		if x.Price, err = diet.ParsePrice(fmt.Sprintf("%d.%02d %s", p.cents/100, p.cents%100, p.currency)); err != nil {
			panic(err)
		}
	}
	return x
}

// slowChoice is the place of the size to order, and how many, in whole tenths of
// a gram and cents: the least cost where all have a price in one currency, else
// the least left over, and of two equal ones the larger.
func slowChoice(packs []slowPack, short int64) (best int, count int64) {
	priced := true
	for _, p := range packs {
		priced = priced && p.cents >= 0 && p.currency == packs[0].currency
	}
	var least int64
	for i, p := range packs {
		n := (short + p.net - 1) / p.net
		measure := n * p.net
		if priced {
			measure = n * p.cents
		}
		if i == 0 || measure < least || measure == least && p.net > packs[best].net {
			best, count, least = i, n, measure
		}
	}
	return best, count
}

func TestChoiceAgainstWholeCents(t *testing.T) {
	d := NewDraws(8, 3)
	several := 0
	for range 20 * slowDraws() {
		var packs diet.Packs
		var slow []slowPack
		for i := range 1 + d.IntN(len(packs)) {
			// Few sizes and prices, so that there are equal costs and whole packs.
			p := slowPack{int64(1+d.IntN(20)) * []int64{1, 7, 1000, 5000}[d.IntN(4)], int64(1+d.IntN(12)) * []int64{10, 205}[d.IntN(2)], "EUR"}
			if d.IntN(8) == 0 {
				p.cents = -1
			}
			if d.IntN(12) == 0 {
				p.currency = "USD"
			}
			slow = append(slow, p)
			packs[i] = p.pack()
		}
		short := int64(1 + d.IntN(100)*d.IntN(1000))
		best, n := slowChoice(slow, short)
		got, count := packs.Choose(units.Mass(float64(short) / 10))
		if got != packs[best] || int64(count) != n {
			t.Errorf("%d tenths of a gram of %+v: %d of %+v, want %d of %+v", short, slow, count, got, n, packs[best])
		}
		if best > 0 {
			several++
		}
	}
	if several < 5*slowDraws() {
		t.Errorf("only %d times another than the first", several)
	}
}

// A price is the float64 nearest to its decimal, and a cost the mass as a part
// of the pack, of its price.
func TestPricesAgainstExactFractions(t *testing.T) {
	s, d := slowly{t: t}, NewDraws(8, 3)
	for range slowDraws() {
		cents := int64(d.IntN(1e7))
		exact := big.NewRat(cents, 100)
		pack := slowPack{int64(1 + d.IntN(200000)), cents, "EUR"}
		p := pack.pack()
		if nearest, _ := exact.Float64(); p.Price.Amount() != nearest || p.Price.Currency() != "EUR" {
			t.Errorf("%d cents: %v", cents, p.Price)
		}
		m := Drawn[units.Mass](d, 0.1, 1e6)
		got, ok := p.Cost(m)
		if !ok || got.Currency() != "EUR" {
			t.Errorf("%+v: %v, %t", p, got, ok)
		}
		want := Over(Times(Fraction(m), exact), big.NewRat(pack.net, 10))
		s.hold("cost", got.Amount(), want, Plus(want, Decimal("1e-300")))
	}
	s.log()
}

// A row of Compare: 10000 × % / (kcal/kg) are grams in 1000 kcal, dry matter has
// the energy of what is not water, and 1000 kcal cost what their grams do in the
// cheapest pack of the first currency.
func TestCompareAgainstExactFractions(t *testing.T) {
	s, d := slowly{t: t}, NewDraws(8, 3)
	hold := func(name string, got float64, want *big.Rat) { s.hold(name, got, want, want) }
	for range slowDraws() {
		e := Drawn[units.EnergyDensity](d, 3000, 4000)
		f := diet.Food{
			Label: diet.Label{Energy: e},
			Analysis: diet.Analysis{
				Kind: diet.Typical, Protein: Drawn[units.Percent](d, 5, 40), Fat: Drawn[units.Percent](d, 5, 30), Moisture: Drawn[units.Percent](d, 2, 20),
			},
		}
		mcal := Over(Decimal("1000000"), Fraction(e)) // in grams
		var least *big.Rat
		for i := range f.Label.Packs {
			p := slowPack{int64(1 + d.IntN(200000)), int64(1 + d.IntN(10000)), "EUR"}
			if i > 0 && d.IntN(4) == 0 {
				p.currency = "USD"
			}
			f.Label.Packs[i] = p.pack()
			cost := Over(Times(mcal, big.NewRat(p.cents, 100)), big.NewRat(p.net, 10))
			if p.currency == "EUR" && (least == nil || cost.Cmp(least) < 0) {
				least = cost
			}
		}
		rows, err := diet.Compare(f)
		if err != nil {
			t.Fatal(err)
		}
		r := rows[0]
		hold("kcal/kg", float64(r.Energy), Fraction(e))
		hold("kcal/kg of dry matter", float64(r.DryEnergy), Over(Fraction(e), dryPart(f.Analysis)))
		hold("protein", float64(r.Protein), Over(Times(Fraction(f.Analysis.Protein), Decimal("10000")), Fraction(e)))
		hold("fat", float64(r.Fat), Over(Times(Fraction(f.Analysis.Fat), Decimal("10000")), Fraction(e)))
		hold("cost", r.Cost.Amount(), least)
		if r.Cost.Currency() != "EUR" {
			t.Errorf("cost %v", r.Cost)
		}
	}
	s.log()
}
