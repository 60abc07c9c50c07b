package diet_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// interval is what rounding leaves possible.
type interval struct{ low, high *big.Rat }

// printed is a figure with its half-step.
func printed(figure, half *big.Rat) interval {
	return interval{Minus(figure, half), Plus(figure, half)}
}

// impliedBy is kcal/kg of a serving: its kcal over its grams.
func impliedBy(kcal, grams interval) interval {
	return interval{Over(Times(kcal.low, Decimal("1000")), grams.high), Over(Times(kcal.high, Decimal("1000")), grams.low)}
}

// A label has two of three figures, or all; the half-steps are those of the
// package comment: 5 kcal/kg where the energy ends in 0, else 0.5, and 0.5 kcal
// and 0.5 g of a serving.
func TestDensityAgainstExactFractions(t *testing.T) {
	s, d := slowly{t: t}, NewDraws(8, 3)
	half := Decimal("0.5")
	gaps := 0
	for i := range slowDraws() {
		e := Drawn[units.EnergyDensity](d, 700, 6000)
		if d.IntN(2) == 0 {
			e = units.EnergyDensity(10 * int(e/10))
		}
		stated := printed(Fraction(e), half)
		if Over(Fraction(e), Decimal("10")).IsInt() {
			stated = printed(Fraction(e), Decimal("5"))
		}
		serving := diet.Serving{Name: "can", Mass: Drawn[units.Mass](d, 20, 500)}
		serving.Energy = e.Energy(serving.Mass) * units.Energy(Drawn(d, 0.93, 1.07))
		implied := impliedBy(printed(Fraction(serving.Energy), half), printed(Fraction(serving.Mass), half))

		f := diet.Food{Name: "can", Label: diet.Label{Energy: e, Serving: serving}}
		want, wantRange, origin := Fraction(e), stated, diet.Stated
		switch i % 4 {
		case 0:
			f.Label.Serving.Mass = 0
			serving.Mass = 0
		case 1:
			f.Label.Serving.Energy = 0
			serving.Energy = 0
		case 2:
			f.Label.Energy = 0
			want, wantRange, origin = Over(Times(Fraction(serving.Energy), Decimal("1000")), Fraction(serving.Mass)), implied, diet.Derived
		}
		density, err := f.Density()
		if err != nil {
			t.Fatalf("%+v: %v", f.Label, err)
		}
		if density.Origin != origin {
			t.Errorf("%+v: %v", f.Label, density.Origin)
		}
		s.hold("kcal/kg", float64(density.Energy), want, want)
		s.hold("low", float64(density.Range.Low), wantRange.low, wantRange.low)
		s.hold("high", float64(density.Range.High), wantRange.high, wantRange.high)

		kcal, grams := Fraction(serving.Energy), Fraction(serving.Mass)
		switch i % 4 {
		case 0:
			grams = Over(Times(kcal, Decimal("1000")), want)
		case 1:
			kcal = Over(Times(want, grams), Decimal("1000"))
		case 3:
			one := Decimal("1")
			gap := new(big.Rat)
			switch {
			case implied.low.Cmp(stated.high) > 0:
				gap = Minus(Over(implied.low, stated.high), one)
			case stated.low.Cmp(implied.high) > 0:
				gap = Minus(Over(stated.low, implied.high), one)
			}
			if gap.Sign() > 0 {
				gaps++
			}
			s.hold("gap", density.Gap, gap, one)
		}
		s.hold("kcal of the serving", float64(density.Serving.Energy), kcal, kcal)
		s.hold("grams of the serving", float64(density.Serving.Mass), grams, grams)
	}
	if gaps < slowDraws()/50 {
		t.Errorf("only %d labels have a gap", gaps)
	}
	s.log()
}
