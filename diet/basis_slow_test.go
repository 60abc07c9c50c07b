package diet_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// The equations of the bases are those of the package comment; 4.184 J are a
// thermochemical calorie.
func TestBasesAgainstExactFractions(t *testing.T) {
	s, d := slowly{t: t}, newDraws()
	hold := func(name string, got float64, want *big.Rat) { s.hold(name, got, want, want) }
	for range slowDraws() {
		a := diet.Analysis{Moisture: drawn[units.Percent](d, 1, 90)}
		content, e := drawn[units.Percent](d, 0.0001, 60), drawn[units.EnergyDensity](d, 10, 9400)
		factor := []units.EnergyDensity{3.5 * units.KilocaloriePerGram, 8.5 * units.KilocaloriePerGram}[d.IntN(2)]
		dm := dryPart(a)

		inDry, err := a.DryMatter(content)
		if err != nil {
			t.Fatal(err)
		}
		hold("% of dry matter", float64(inDry), over(fraction(content), dm))
		back, err := a.AsFed(inDry)
		if err != nil {
			t.Fatal(err)
		}
		hold("% as fed", float64(back), times(fraction(inDry), dm))
		dryEnergy, err := a.DryEnergy(e)
		if err != nil {
			t.Fatal(err)
		}
		hold("kcal/kg of dry matter", float64(dryEnergy), over(fraction(e), dm))
		asFed, err := a.AsFedEnergy(dryEnergy)
		if err != nil {
			t.Fatal(err)
		}
		hold("kcal/kg as fed", float64(asFed), times(fraction(dryEnergy), dm))

		tenThousand := decimal("10000")
		perMcal := diet.GramsPerMcal(content, e)
		hold("g/1000 kcal", float64(perMcal), over(times(fraction(content), tenThousand), fraction(e)))
		hold("% as fed of g/1000 kcal", float64(perMcal.AsFed(e)), over(times(fraction(perMcal), fraction(e)), tenThousand))
		hold("g/1000 kcal of % of dry matter", float64(inDry.PerMcal(dryEnergy)), over(times(fraction(inDry), tenThousand), fraction(dryEnergy)))
		hold("% of dry matter of g/1000 kcal", float64(perMcal.DryMatter(dryEnergy)), over(times(fraction(perMcal), fraction(dryEnergy)), tenThousand))
		hold("g/MJ", float64(perMcal.PerMJ()), over(fraction(perMcal), decimal("4.184")))
		hold("g/1000 kcal of g/MJ", float64(perMcal.PerMJ().PerMcal()), times(fraction(perMcal.PerMJ()), decimal("4.184")))

		perGram := over(fraction(factor), decimal("1000"))
		share := perMcal.EnergyShare(factor)
		hold("% of energy", float64(share), over(times(fraction(perMcal), perGram), decimal("10")))
		hold("g/1000 kcal of % of energy", float64(share.PerMcal(factor)), over(times(fraction(share), decimal("10")), perGram))
	}
	s.log()
}
