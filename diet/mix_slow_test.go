package diet_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// A mix is the sum of its parts and of its water, 1 g/mL; a content is their mean
// by mass, of which water has 100 % of moisture and nothing else.
func TestMixAgainstExactFractions(t *testing.T) {
	s, d := slowly{t: t}, NewDraws(8, 3)
	hold := func(name string, got float64, want *big.Rat) { s.hold(name, got, want, want) }
	for range slowDraws() {
		m := diet.Mix{Name: "mix", Water: Drawn[units.Volume](d, 20, 400)}
		kcal, grams := new(big.Rat), Fraction(m.Water)
		moisture, protein := Times(Decimal("100"), grams), new(big.Rat)
		for range 1 + d.IntN(4) {
			food := diet.Food{
				Name:  "part",
				Label: diet.Label{Energy: Drawn[units.EnergyDensity](d, 2000, 5000), Serving: diet.Serving{Name: "scoop", Mass: Drawn[units.Mass](d, 5, 50)}},
				Analysis: diet.Analysis{
					Kind: diet.Typical, Protein: Drawn[units.Percent](d, 5, 40), Moisture: Drawn[units.Percent](d, 2, 20),
				},
			}
			mass := Drawn[units.Mass](d, 5, 200)
			exact := Fraction(mass)
			amount := diet.Fixed(mass)
			if d.IntN(2) == 0 {
				n := Drawn(d, 0.5, 4)
				amount, exact = diet.Count(n, "scoop"), Times(Fraction(n), Fraction(food.Label.Serving.Mass))
			}
			m.Parts = append(m.Parts, diet.Part{Food: food, Amount: amount})
			kcal = Plus(kcal, Over(Times(Fraction(food.Label.Energy), exact), Decimal("1000")))
			grams = Plus(grams, exact)
			moisture = Plus(moisture, Times(Fraction(food.Analysis.Moisture), exact))
			protein = Plus(protein, Times(Fraction(food.Analysis.Protein), exact))
		}
		about, _ := grams.Float64()
		m.Made = units.Volume(about) // it weighs 1 g/mL
		made := Fraction(m.Made)

		f, err := m.Food()
		if err != nil {
			t.Fatalf("%+v: %v", m, err)
		}
		batch, err := f.Unit("batch")
		if err != nil {
			t.Fatal(err)
		}
		hold("grams", float64(batch.Mass), grams)
		hold("kcal", float64(batch.Energy), kcal)
		density, err := f.Density()
		if err != nil {
			t.Fatal(err)
		}
		hold("kcal/kg", float64(density.Energy), Over(Times(kcal, Decimal("1000")), grams))
		hold("moisture", float64(f.Analysis.Moisture), Over(moisture, grams))
		hold("protein", float64(f.Analysis.Protein), Over(protein, grams))
		perVolume, err := f.PerVolume()
		if err != nil {
			t.Fatal(err)
		}
		hold("kcal/mL", float64(perVolume), Over(kcal, made))

		// As much of it as fills another volume holds as much of each part.
		v := Drawn[units.Volume](d, 10, 1000)
		other, err := m.Making(v)
		if err != nil {
			t.Fatal(err)
		}
		ratio := Over(Fraction(v), made)
		hold("water", float64(other.Water), Times(Fraction(m.Water), ratio))
		for i, p := range other.Parts {
			n, _, counted := p.Amount.Count()
			before, _, _ := m.Parts[i].Amount.Count()
			if !counted {
				now, _ := p.Amount.Fixed()
				then, _ := m.Parts[i].Amount.Fixed()
				n, before = now.Grams(), then.Grams()
			}
			hold("part", n, Times(Fraction(before), ratio))
		}
	}
	s.log()
}
