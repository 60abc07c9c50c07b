package diet_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A dog is put on a weight loss with the dry food it always had: 70
// kcal/kg^0.75 of its ideal weight. For 1000 kcal the food has all that the
// label's standard asks for; at this intake it is short of protein and calcium.
func ExampleAdequacy() {
	dog := energy.Animal{Species: energy.Dog, Weight: 31 * units.Kilogram, Condition: energy.BCS9(8), Ideal: 24 * units.Kilogram}
	need, err := energy.WeightLoss{Animal: dog}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	kibble := diet.Food{
		Name:     "Tarnwick House Dog Dry",
		Form:     diet.Dry,
		Label:    diet.Label{Energy: 3560},
		Analysis: diet.Analysis{Kind: diet.Typical, Protein: 22, Fat: 12, Fibre: 3, Moisture: 10, Ash: 6},
	}
	profile, err := kibble.Analysis.Profile(kibble.Label.Energy)
	if err != nil {
		fmt.Println(err)
		return
	}
	profile, err = profile.With(map[diet.Nutrient]diet.PerMcal{
		diet.Calcium:    diet.GramsPerMcal(0.65, kibble.Label.Energy),
		diet.Phosphorus: diet.GramsPerMcal(0.6, kibble.Label.Energy),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, standard := range []diet.Standard{diet.AAFCO, diet.FEDIAF} {
		check := diet.Adequacy{
			Profile: profile, Form: kibble.Form, Standard: standard, Stage: diet.Maintenance, Animal: need.Animal, Daily: need.Daily,
		}
		findings, err := check.Check()
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(standard)
		for _, f := range findings {
			if f.Rule == diet.Minimum {
				fmt.Printf("%-10v has %5.2f, needs %5.2f, margin %6.2f g/1000 kcal (%v)\n", f.Nutrient, f.Have, f.Need, f.Margin, f.Source.Seen)
			}
		}
		for _, c := range check.Cautions() {
			fmt.Println(c.Level, c.Text)
		}
	}
	// Output:
	// aafco
	// protein    has 61.80, needs 45.00, margin  16.80 g/1000 kcal (secondary)
	// fat        has 33.71, needs 13.75, margin  19.96 g/1000 kcal (secondary)
	// calcium    has  1.83, needs  1.25, margin   0.58 g/1000 kcal (primary)
	// phosphorus has  1.69, needs  1.00, margin   0.69 g/1000 kcal (secondary)
	// warn AAFCO: the figures are tied to no intake and compared as printed, so that a shortfall of an animal that eats little is not seen; this one gets 70 kcal/kg^0.75: check by FEDIAF or NRC 2006 too
	// note not judged, since the profile doesn't give it: linoleic acid, potassium, sodium, chloride, magnesium, iron, copper, manganese; nor are the vitamins and trace elements that no figure is held of
	// fediaf
	// protein    has 61.80, needs 70.71, margin  -8.92 g/1000 kcal (memory)
	// fat        has 33.71, needs 13.75, margin  19.96 g/1000 kcal (memory)
	// calcium    has  1.83, needs  1.96, margin  -0.14 g/1000 kcal (memory)
	// phosphorus has  1.69, needs  1.57, margin   0.11 g/1000 kcal (memory)
	// warn FEDIAF: protein is short: 61.8 g/1000 kcal of at least 70.71 g/1000 kcal, which is the printed 45 g/1000 kcal at an intake of 70 instead of 110 kcal/kg^0.75: choose a food made to be fed in smaller amounts
	// warn FEDIAF: calcium is short: 1.83 g/1000 kcal of at least 1.96 g/1000 kcal, which is the printed 1.25 g/1000 kcal at an intake of 70 instead of 110 kcal/kg^0.75: choose a food made to be fed in smaller amounts
}

// The working for a cat that gets about 75 kcal/kg^0.67. At 75 FEDIAF prints
// 33.30 % of dry matter for the protein, 83.25 g/1000 kcal at 4000 kcal/kg.
func ExampleAdequacy_Explain() {
	profile, err := diet.Profile{}.With(map[diet.Nutrient]diet.PerMcal{diet.Protein: 80, diet.Fat: 30})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(diet.Adequacy{
		Profile: profile, Form: diet.Wet, Standard: diet.FEDIAF, Stage: diet.Maintenance,
		Animal: energy.Animal{Species: energy.Cat, Weight: 4 * units.Kilogram, Condition: energy.BCS9(5)},
		Daily:  190 * units.Kilocalorie,
	}.Explain())
	// Output:
	// standard  FEDIAF, cat, maintenance
	// given     190 kcal a day, ideal weight 4 kg
	// formula   intake = kcal a day ÷ ideal kg^0.67
	//           = 190 ÷ 4^0.67 = 190 ÷ 2.532 = 75.054 kcal/kg^0.67
	// formula   needed = printed × 100 ÷ intake; fat as printed
	// source    FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs, units/1000 kcal = requirement per kg of metabolic weight × 1000 / energy per kg of it
	// source    FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs, 2.1: 75 and 100 kcal/kg^0.67 in cats
	// finding   protein, 80 g/1000 kcal; needed 62.5 g/1000 kcal × 100 ÷ 75.054 = 83.27 g/1000 kcal: short by 3.27 g/1000 kcal
	// source    FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs, Table VII-19 b, adult cats at 100 kcal/kg^0.67
	// finding   fat, 30 g/1000 kcal; needed 22.5 g/1000 kcal: met
	// source    FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs, Table III-4, per 100 g of dry matter
	// caution   warn: FEDIAF: protein is short: 80 g/1000 kcal of at least 83.27 g/1000 kcal, which is the printed 62.5 g/1000 kcal at an intake of 75.1 instead of 100 kcal/kg^0.67: choose a food made to be fed in smaller amounts [FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs, Table VII-19 b, adult cats at 100 kcal/kg^0.67]
	// caution   note: not judged, since the profile doesn't give it: arginine, histidine, isoleucine, lysine, methionine, methionine and cystine, phenylalanine, threonine, tryptophan, valine, taurine, calcium, phosphorus; nor are the vitamins and trace elements that no figure is held of [ours, not published]
}
