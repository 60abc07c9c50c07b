package portion_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// squareOf is the square, in percent², of the part of an x that lies anywhere in
// an interval of some width: width²/12 (JCGM 100:2008, 4.3.7) over x². Squares are
// compared, since they are fractions where roots aren't.
func squareOf(width, x *big.Rat) *big.Rat {
	part := Over(Times(Decimal("100"), width), x)
	return Over(Times(part, part), Decimal("12"))
}

// The parts of a budget in exact fractions. The largest difference of a square
// seen is 8e-16 of it.
func TestBudgetsAgainstExactFractions(t *testing.T) {
	d, worst := NewDraws(8, 3), 0.0
	for range 500 {
		food := diet.Food{Name: "food"}
		var density, label *big.Rat
		between := new(big.Rat)
		serving := diet.Serving{
			Name: "cup", Mass: Drawn[units.Mass](d, 20, 200), EnergyHalfStep: OneOf[units.Energy](d, 0.05, 0.5, 2.5), MassHalfStep: OneOf[units.Mass](d, 0.05, 0.5, 5),
		}
		switch d.IntN(2) {
		case 0: // the label's figure alone
			food.Label.Energy = Drawn[units.EnergyDensity](d, 700, 6000)
			food.Label.HalfStep = OneOf[units.EnergyDensity](d, 0.5, 5, 50)
			density = Fraction(food.Label.Energy)
			label = squareOf(Times(Decimal("2"), Fraction(food.Label.HalfStep)), density)
		case 1: // kcal over grams of a serving
			serving.Energy = Drawn[units.Energy](d, 4, 5) * units.Energy(serving.Mass)
			food.Label.Serving = serving
			density = Over(Times(Decimal("1000"), Fraction(serving.Energy)), Fraction(serving.Mass))
			label = Plus(squareOf(Times(Decimal("2"), Fraction(serving.EnergyHalfStep)), Fraction(serving.Energy)),
				squareOf(Times(Decimal("2"), Fraction(serving.MassHalfStep)), Fraction(serving.Mass)))
		}
		var m portion.Measuring
		m.Meals = 1 + d.IntN(4)
		if d.IntN(2) == 0 {
			near, _ := density.Float64()
			m.Density = units.Range[units.EnergyDensity]{Low: units.EnergyDensity(near * (1 - Drawn(d, 0.01, 0.3))), High: units.EnergyDensity(near * (1 + Drawn(d, 0.01, 0.3)))}
			between = squareOf(Minus(Fraction(m.Density.High), Fraction(m.Density.Low)), density)
		}
		if d.IntN(2) == 0 {
			m.Scoop = Drawn[units.Percent](d, 0.5, 30)
		}
		dogs := must(energy.Adult{Animal: dog, Status: energy.Neutered})
		text := OneOf(d, "0.1", "0.5", "1")
		step, _ := Decimal(text).Float64()
		w := weighedOn(t, dogs, diet.Only(food), units.Mass(step))
		b, err := w.Budget(0, m)
		if err != nil {
			t.Fatalf("%+v of %+v: %v", m, food, err)
		}
		bowl := Times(Decimal(text), big.NewRat(w.Count(0)/int64(m.Meals), 1))
		scale, scoop := squareOf(Decimal(text), bowl), new(big.Rat)
		if m.Scoop > 0 {
			scale, scoop = new(big.Rat), Times(Fraction(m.Scoop), Fraction(m.Scoop))
		}
		individual := squareOf(Minus(Fraction(dogs.High), Fraction(dogs.Low)), Fraction(dogs.Daily))
		within := Plus(Plus(label, between), Plus(scale, scoop))
		holds := Over(Times(density, bowl), Decimal("1000"))
		compare := func(what string, got float64, want *big.Rat) {
			t.Helper()
			if want.Sign() == 0 {
				if got != 0 {
					t.Errorf("%s of %+v: %v, want none", what, b, got)
				}
				return
			}
			off := Off(got, want, want)
			if worst = max(worst, off); off > slowBound {
				t.Errorf("%s of %+v: %v, off by %.2g", what, b, got, off)
			}
		}
		square := func(p units.Percent) float64 { return float64(p) * float64(p) }
		compare("label", square(b.Label), label)
		compare("density", square(b.Density), between)
		compare("scale", square(b.Scale), scale)
		compare("scoop", square(b.Scoop), scoop)
		compare("individual", square(b.Individual), individual)
		compare("bowl", square(b.InBowl()), within)
		compare("all", square(b.Combined()), Plus(within, individual))
		compare("grams", b.Bowl.Grams(), bowl)
		compare("energy", b.Energy.Kilocalories(), holds)
		for c, part := range map[portion.Component]*big.Rat{
			portion.LabelRounding: label, portion.EnergyInterval: between, portion.ScaleStep: scale, portion.ScoopFill: scoop,
		} {
			compare("share", b.Share(c), Over(part, within))
		}
		// Twice the uncertainty to either side: (4 u E)² = (high − low)².
		r := b.EnergyRange()
		if r.Low > 0 {
			ends := float64(r.High) - float64(r.Low)
			want := Over(Times(Times(Decimal("16"), within), Times(holds, holds)), Decimal("10000"))
			// A difference of two energies has their last bits.
			if off := Off(ends*ends, want, Times(holds, holds)); off > slowBound {
				t.Errorf("%v to %v, off by %.2g", r.Low, r.High, off)
			}
		}
	}
	t.Logf("%.2g", worst)
}

// A label that contradicts itself leaves open what lies between its two figures:
// 3500 kcal/kg, and 360 kcal in 100 g.
func TestContradictedBudgetAgainstExactFractions(t *testing.T) {
	d, contradicted := NewDraws(8, 3), 0
	for range 100 {
		stated := Drawn[units.EnergyDensity](d, 3000, 3800)
		serving := diet.Serving{Name: "cup", Energy: 365, Mass: Drawn[units.Mass](d, 97, 103)}
		food := diet.Food{Name: "food", Label: diet.Label{Energy: stated, Serving: serving}}
		r, err := portion.Weigh(prescribed(1000), diet.Only(food))
		if err != nil {
			continue // too far apart for one food
		}
		w, err := r.On(units.Gram)
		if err != nil {
			t.Fatal(err)
		}
		b, err := w.Budget(0, portion.Measuring{})
		if err != nil {
			t.Fatal(err)
		}
		want := new(big.Rat)
		if r.Density(0).Gap != 0 { // beyond what the roundings explain
			implied := Over(Times(Decimal("1000"), Fraction(serving.Energy)), Fraction(serving.Mass))
			want = squareOf(Minus(implied, Fraction(stated)), Fraction(stated))
			contradicted++
		}
		if off := Off(float64(b.Density)*float64(b.Density), want, Decimal("1")); off > slowBound*100 {
			t.Errorf("%v and %v: %v, off by %.2g", stated, serving, b.Density, off)
		}
	}
	if contradicted < 50 {
		t.Errorf("only %d labels were contradicted", contradicted)
	}
}
