package portion_test

import (
	"math/big"
	"testing"

	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// drawnMoisture is a moisture that a food of so many kcal/kg can have: its dry
// matter is of 1500 to 7000 kcal/kg.
func drawnMoisture(d Draws, perKilogram float64) units.Percent {
	return Drawn(d, units.Percent(max(1, 100*(1-perKilogram/1500))), units.Percent(100*(1-perKilogram/7000)))
}

// The water of a day in exact fractions: Merck Veterinary Manual, Nutritional
// Requirements of Small Animals, as quoted elsewhere, has 44 to 66 mL/kg, 1
// mL/kcal and 2 to 3 times the dry matter; off them goes the water in the food,
// at 1 g/mL. The largest difference seen is 3.6e-16 of the water of the day.
func TestWaterAgainstExactFractions(t *testing.T) {
	d, worst, dry := NewDraws(8, 3), 0.0, 0
	for range 500 {
		daily, menu, parts := drawnDay(d)
		food, solid := new(big.Rat), new(big.Rat)
		for i := range menu {
			a := &menu[i].Food.Analysis
			a.Moisture = drawnMoisture(d, float64(menu[i].Food.Label.Energy))
			wet := Times(parts[i].mass, Over(Fraction(a.Moisture), Decimal("100")))
			food, solid = Plus(food, wet), Plus(solid, Minus(parts[i].mass, wet))
		}
		need := ofLargeDog(daily)
		r, err := portion.Weigh(need, menu)
		if err != nil {
			t.Fatal(err)
		}
		kg := Over(Fraction(need.Animal.Weight), Decimal("1000"))
		for basis, day := range map[portion.WaterBasis][2]*big.Rat{
			portion.ByWeight:    {Times(Decimal("44"), kg), Times(Decimal("66"), kg)},
			portion.ByEnergy:    {Fraction(daily), Fraction(daily)},
			portion.ByDryMatter: {Times(Decimal("2"), solid), Times(Decimal("3"), solid)},
		} {
			w, err := r.Water(basis)
			if err != nil {
				t.Fatal(err)
			}
			whole := Plus(day[1], food)
			compare := func(what string, got units.Volume, want *big.Rat) {
				if want.Sign() < 0 {
					want = new(big.Rat)
					dry++
				}
				off := Off(got.Millilitres(), want, whole)
				if worst = max(worst, off); off > slowBound {
					t.Errorf("%s by %v: %v, want %s mL", what, basis, got, want.FloatString(15))
				}
			}
			compare("food", w.Food, food)
			compare("total, low", w.Total.Low, day[0])
			compare("total, high", w.Total.High, day[1])
			compare("drink, low", w.Drink.Low, Minus(day[0], food))
			compare("drink, high", w.Drink.High, Minus(day[1], food))
		}
	}
	if dry == 0 {
		t.Error("no food held all the water")
	}
	t.Logf("%.2g", worst)
}
