package diet_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// 60 + 50 + 3 + 9 + 7 = 129 %: no food is more than all of itself.
func ExampleAnalysisError() {
	a := diet.Analysis{Kind: diet.Typical, Protein: 60, Fat: 50, Fibre: 3, Moisture: 9, Ash: 7}
	_, err := a.NFE()
	var wrong *diet.AnalysisError
	if errors.As(err, &wrong) {
		fmt.Println("the five come to", wrong.Sum, "and leave", wrong.NFE)
	}
	// Output: the five come to 129 % and leave -29 %
}

func ExampleAnalysisKind() {
	a, err := diet.ParseAnalysis("Guaranteed analysis: Crude Protein (min) 28%, Crude Fat (min) 18%")
	fmt.Println(a.Kind, err)
	// Output: guaranteed <nil>
}

func ExampleClaim() {
	c, err := diet.ParseClaim("calculated")
	fmt.Println(c == diet.Calculated, err)
	// Output: true <nil>
}

func ExampleConstituents() {
	missing := diet.CrudeFibre | diet.CrudeAsh
	fmt.Println(missing, missing.Has(diet.CrudeFat))
	// Output: fibre ash false
}

// 3560 kcal/kg as fed with 11 % of moisture are 3560 / 0.89 = 4000 kcal/kg of dry
// matter.
func ExampleDryEnergy() {
	e, err := diet.Analysis{Moisture: 11}.DryEnergy(3560 * units.KilocaloriePerKilogram)
	fmt.Printf("%.0f kcal/kg of dry matter %v\n", float64(e), err)
	// Output: 4000 kcal/kg of dry matter <nil>
}

// A fifth of the energy from protein at 3.5 kcal/g is 200 / 3.5 = 57.1 g in 1000 kcal.
func ExampleEnergyShare() {
	fmt.Printf("%.1f g in 1000 kcal\n", float64(diet.EnergyShare(20).PerMcal(3500*units.KilocaloriePerKilogram)))
	// Output: 57.1 g in 1000 kcal
}

// By 3.5, 8.5 and 3.5 kcal/g: 24 × 3.5 = 84, 14 × 8.5 = 119 and 43 × 3.5 = 150.5 of
// 353.5 kcal in 100 g.
func ExampleEnergyShares() {
	a := diet.Analysis{Kind: diet.Typical, Protein: 24, Fat: 14, Fibre: 3, Moisture: 9, Ash: 7}
	s, err := a.EnergyShares()
	fmt.Printf("protein %.1f %%, fat %.1f %%, NFE %.1f %% %v\n", float64(s.Protein), float64(s.Fat), float64(s.NFE), err)
	// Output: protein 23.8 %, fat 33.7 %, NFE 42.6 % <nil>
}

// AAFCO's least for adult dogs is 45 g of protein in 1000 kcal (AAFCO Dog Food Nutrient
// Profiles, adult maintenance): 40 g are 5 too few.
func ExampleFinding() {
	profile, err := diet.Profile{}.With(map[diet.Nutrient]diet.PerMcal{diet.Protein: 40})
	if err != nil {
		fmt.Println(err)
		return
	}
	dog := energy.Animal{Species: energy.Dog, Weight: 20 * units.Kilogram, Condition: energy.BCS9(5)}
	findings, err := diet.Adequacy{
		Profile: profile, Form: diet.Dry, Standard: diet.AAFCO, Stage: diet.Maintenance, Animal: dog, Daily: 1200 * units.Kilocalorie,
	}.Check()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, f := range findings {
		fmt.Println(f.Nutrient, f.Rule, "printed:", f.Printed, "short:", f.Short())
	}
	// Output: protein minimum printed: 45 g/1000 kcal short: true
}

func ExampleNutrient() {
	n, err := diet.ParseNutrient("linoleic_acid")
	fmt.Println(n == diet.LinoleicAcid, err)
	// Output: true <nil>
}

// 3.85 kg are missing: two bags of 2 kg, or one of 7.5 kg?
func ExamplePacks() {
	packs := diet.Packs{{Net: 2 * units.Kilogram}, {Net: 7.5 * units.Kilogram}}
	pack, n := packs.Choose(3.85 * units.Kilogram)
	fmt.Println(n, "×", pack.Net)
	// Output: 2 × 2 kg
}

func ExamplePart() {
	powder := diet.Food{Name: "milk powder", Label: diet.Label{Energy: 5100 * units.KilocaloriePerKilogram}}
	text, err := json.Marshal(diet.Part{Food: powder, Amount: diet.Fixed(30 * units.Gram)})
	fmt.Println(string(text), err)
	// Output: {"food":{"name":"milk powder","label":{"energy":"5100 kcal/kg"}},"amount":"30 g"} <nil>
}

// 1000 kcal are 4.184 MJ: 10.76 g in a megajoule are 45.0 g in 1000 kcal.
func ExamplePerMJ() {
	fmt.Printf("%.1f g in 1000 kcal\n", float64(diet.PerMJ(10.76).PerMcal()))
	// Output: 45.0 g in 1000 kcal
}

func ExamplePredictor() {
	p, err := diet.ParsePredictor("modified_atwater")
	fmt.Println(p == diet.ModifiedAtwater, err)
	// Output: true <nil>
}

// A price has a currency, and is read in one form only.
func ExamplePrice() {
	p, err := diet.NewPrice(45.9, "EUR")
	fmt.Println(p.Amount(), p.Currency(), err)
	_, err = diet.ParsePrice("45,90 €")
	fmt.Println(err)
	// Output:
	// 45.9 EUR <nil>
	// diet: price "45,90 €": want a number and a currency of three capital letters, as in 1.52 USD
}

// What isn't given is not known, which is not none of it.
func ExampleProfile() {
	profile, err := diet.Profile{}.With(map[diet.Nutrient]diet.PerMcal{diet.Protein: 66.8})
	if err != nil {
		fmt.Println(err)
		return
	}
	protein, known := profile.Of(diet.Protein)
	fmt.Println(protein, known)
	_, known = profile.Of(diet.Taurine)
	fmt.Println("taurine known:", known)
	// Output:
	// 66.8 g/1000 kcal true
	// taurine known: false
}

func ExampleRule() {
	r, err := diet.ParseRule("maximum")
	fmt.Println(r == diet.Maximum, err)
	// Output: true <nil>
}

func ExampleStandard() {
	_, err := diet.ParseStandard("usda")
	fmt.Println(err)
	// Output: diet: standard "usda": want aafco, fediaf or nrc_2006
}
