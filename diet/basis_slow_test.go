package diet_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// The equations of the bases are those of the package comment; 4.184 J are a
// thermochemical calorie.
func TestBasesAgainstExactFractions(t *testing.T) {
	s, d := slowly{t: t}, NewDraws(8, 3)
	hold := func(name string, got float64, want *big.Rat) { s.hold(name, got, want, want) }
	for range slowDraws() {
		a := diet.Analysis{Moisture: Drawn[units.Percent](d, 1, 90)}
		content, e := Drawn[units.Percent](d, 0.0001, 60), Drawn[units.EnergyDensity](d, 10, 9400)
		factor := []units.EnergyDensity{3.5 * units.KilocaloriePerGram, 8.5 * units.KilocaloriePerGram}[d.IntN(2)]
		dm := dryPart(a)

		inDry, err := a.DryMatter(content)
		if err != nil {
			t.Fatal(err)
		}
		hold("% of dry matter", float64(inDry), Over(Fraction(content), dm))
		back, err := a.AsFed(inDry)
		if err != nil {
			t.Fatal(err)
		}
		hold("% as fed", float64(back), Times(Fraction(inDry), dm))
		dryEnergy, err := a.DryEnergy(e)
		if err != nil {
			t.Fatal(err)
		}
		hold("kcal/kg of dry matter", float64(dryEnergy), Over(Fraction(e), dm))
		asFed, err := a.AsFedEnergy(dryEnergy)
		if err != nil {
			t.Fatal(err)
		}
		hold("kcal/kg as fed", float64(asFed), Times(Fraction(dryEnergy), dm))

		tenThousand := Decimal("10000")
		perMcal := diet.GramsPerMcal(content, e)
		hold("g/1000 kcal", float64(perMcal), Over(Times(Fraction(content), tenThousand), Fraction(e)))
		hold("% as fed of g/1000 kcal", float64(perMcal.AsFed(e)), Over(Times(Fraction(perMcal), Fraction(e)), tenThousand))
		hold("g/1000 kcal of % of dry matter", float64(inDry.PerMcal(dryEnergy)), Over(Times(Fraction(inDry), tenThousand), Fraction(dryEnergy)))
		hold("% of dry matter of g/1000 kcal", float64(perMcal.DryMatter(dryEnergy)), Over(Times(Fraction(perMcal), Fraction(dryEnergy)), tenThousand))
		hold("g/MJ", float64(perMcal.PerMJ()), Over(Fraction(perMcal), Decimal("4.184")))
		hold("g/1000 kcal of g/MJ", float64(perMcal.PerMJ().PerMcal()), Times(Fraction(perMcal.PerMJ()), Decimal("4.184")))

		perGram := Over(Fraction(factor), Decimal("1000"))
		share := perMcal.EnergyShare(factor)
		hold("% of energy", float64(share), Over(Times(Fraction(perMcal), perGram), Decimal("10")))
		hold("g/1000 kcal of % of energy", float64(share.PerMcal(factor)), Over(Times(Fraction(share), Decimal("10")), perGram))
	}
	s.log()
}
