package diet_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
)

// slowNFE is what protein, fat, fibre, moisture and ash leave of 100 %.
func slowNFE(a diet.Analysis) *big.Rat {
	return Minus(Decimal("100"), Plus(Fraction(a.Protein), Fraction(a.Fat), Fraction(a.Fibre), Fraction(a.Moisture), Fraction(a.Ash)))
}

// dryPart is the fraction that isn't water.
func dryPart(a diet.Analysis) *big.Rat {
	return Minus(Decimal("1"), Over(Fraction(a.Moisture), Decimal("100")))
}

// slowSum is kcal/kg of three constituents in percent, each with its kcal/g.
func slowSum(protein, fat, rest string, a diet.Analysis, third *big.Rat) *big.Rat {
	sum := Plus(Times(Decimal(protein), Fraction(a.Protein)), Times(Decimal(fat), Fraction(a.Fat)), Times(Decimal(rest), third))
	return Times(Decimal("10"), sum)
}

type slowPredictor struct {
	predictor diet.Predictor
	species   energy.Species // zero: every species
}

// slowPredictors have kcal/kg, from AAFCO PF9(a)(3)A and FEDIAF, Annex 1, 2.2.2.
var slowPredictors = map[slowPredictor]func(a diet.Analysis) *big.Rat{
	{diet.ModifiedAtwater, 0}:   func(a diet.Analysis) *big.Rat { return slowSum("3.5", "8.5", "3.5", a, slowNFE(a)) },
	{diet.Atwater, energy.Dog}:  func(a diet.Analysis) *big.Rat { return slowSum("4", "9", "4", a, slowNFE(a)) },
	{diet.Atwater, energy.Cat}:  func(a diet.Analysis) *big.Rat { return slowSum("4", "8.5", "4", a, slowNFE(a)) },
	{diet.FourStep, energy.Dog}: func(a diet.Analysis) *big.Rat { return slowFourStep(a, "91.2", "1.43", "1.04") },
	{diet.FourStep, energy.Cat}: func(a diet.Analysis) *big.Rat { return slowFourStep(a, "87.9", "0.88", "0.77") },
}

// slowFourStep is gross energy × digestibility, less what is lost in the urine.
func slowFourStep(a diet.Analysis, most, slope, urine string) *big.Rat {
	gross := slowSum("5.7", "9.4", "4.1", a, Plus(slowNFE(a), Fraction(a.Fibre)))
	fibre := Over(Fraction(a.Fibre), dryPart(a))
	digestible := Times(gross, Minus(Decimal(most), Times(Decimal(slope), fibre)), Decimal("0.01"))
	return Minus(digestible, Times(Decimal("10"), Decimal(urine), Fraction(a.Protein)))
}

func TestPredictionsAgainstExactFractions(t *testing.T) {
	s := slowly{t: t}
	// NFE is a difference of 100 %, so that its rounding is that of 100 %, which
	// burns with 4.1 kcal/g.
	allNFE := Decimal("4100")
	seen := 0
	for _, f := range diet.Predictors() {
		reference := slowPredictors[slowPredictor{f.Predictor, f.Species}]
		if reference == nil {
			t.Errorf("%v of %v has no slow reference", f.Predictor, f.Species)
			continue
		}
		seen++
		species := []energy.Species{f.Species}
		switch f.Species {
		case 0:
			species = []energy.Species{energy.Dog, energy.Cat, energy.Ferret}
		case energy.Cat: // a ferret gets what a cat would
			species = []energy.Species{energy.Cat, energy.Ferret}
		}
		d := NewDraws(8, 3)
		for range slowDraws() {
			a := drawnAnalysis(d)
			want := reference(a)
			for _, animal := range species {
				p, err := a.Predict(f.Predictor, animal)
				if err != nil {
					t.Fatalf("%+v: %v", a, err)
				}
				s.hold(f.Predictor.String()+" kcal/kg", float64(p.Energy), want, allNFE)
				s.hold(f.Predictor.String()+" kcal/kg of dry matter", float64(p.DryEnergy), Over(want, dryPart(a)), Over(allNFE, dryPart(a)))
				s.hold("NFE", float64(p.NFE), slowNFE(a), Decimal("100"))
			}
		}
	}
	if seen != len(slowPredictors) {
		t.Errorf("%d equations are listed, %d have a slow reference", seen, len(slowPredictors))
	}
	s.log()
}

// Protein and NFE have 3.5 kcal/g, fat 8.5: PF9(a)(3)A.
func TestEnergySharesAgainstExactFractions(t *testing.T) {
	s, d := slowly{t: t}, NewDraws(8, 3)
	for range slowDraws() {
		a := drawnAnalysis(d)
		shares, err := a.EnergyShares()
		if err != nil {
			t.Fatal(err)
		}
		all := slowPredictors[slowPredictor{diet.ModifiedAtwater, 0}](a)
		share := func(kcal string, content *big.Rat) *big.Rat {
			return Over(Times(Decimal(kcal), Decimal("1000"), content), all)
		}
		hundred := Decimal("100")
		s.hold("protein", float64(shares.Protein), share("3.5", Fraction(a.Protein)), hundred)
		s.hold("fat", float64(shares.Fat), share("8.5", Fraction(a.Fat)), hundred)
		s.hold("NFE", float64(shares.NFE), share("3.5", slowNFE(a)), hundred)
	}
	s.log()
}
