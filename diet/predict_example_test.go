package diet_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// The dry dog food of a veterinary teaching sheet on the modified Atwater
// formula, whose label gives no ash.
func ExampleAnalysis_Predict() {
	dry := diet.Analysis{
		Kind:    diet.Typical,
		Protein: 27, Fat: 14, Fibre: 2, Moisture: 10,
		Defaults: diet.Dry, // ash 6 %
	}
	p, err := dry.Predict(diet.ModifiedAtwater, energy.Dog)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(p.Explain())
	// Output:
	// given     protein 27 %, fat 14 %, fibre 2 %, moisture 10 %, as fed, typical
	// assumed   ash 6 %, the default for dry food
	// source    Modified Atwater Formula (a veterinary teaching sheet), ash 6 % dry, 4-6 % soft-moist, 2 % moist
	// formula   NFE = 100 - protein - fat - fibre - moisture - ash
	//           = 100 - 27 - 14 - 2 - 10 - 6 = 41 %
	// formula   energy = 3.5 × protein + 8.5 × fat + 3.5 × NFE, kcal/100 g (modified_atwater)
	//           = 3.5 × 27 + 8.5 × 14 + 3.5 × 41 = 94.5 + 119 + 143.5 = 357
	// source    AAFCO Model Regulation PF9, Statements of Calorie Content (Official Publication 2014), PF9(a)(3)A
	// dry       3570 kcal/kg × 100 ÷ (100 - 10) = 3966.7 kcal/kg of dry matter
	// result    3570 kcal/kg as fed, predicted by modified_atwater
	// caution   note: ash of the food: not given, a default is taken (by modified_atwater 1 % more would be 35 kcal/kg less) [ours, not published]
	// caution   note: the energy is predicted (modified_atwater), not stated: over many foods this was off by 6.7 % on average [Jewell and Jackson, Front Vet Sci 2023;10:1104695, abstract]
}

// A prediction asked for: the bag states no energy, only its guarantees.
func ExampleFood_Predict() {
	bag := diet.Food{
		Form:     diet.Dry,
		Analysis: diet.Analysis{Kind: diet.Guaranteed, Protein: 26, Fat: 14, Fibre: 4, Moisture: 10, Ash: 7},
	}
	_, err := bag.Density()
	fmt.Println(err)
	bag.Predictor = diet.ModifiedAtwater
	d, err := bag.Density()
	fmt.Println(d.Energy, d.Origin, err)
	p, err := bag.Predict(bag.Predictor, 0)
	fmt.Println(p.Cautions()[0].Text, err)
	// Output:
	// diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed, or name the equation that predicts it from the analysis: Predictor)
	// 3465 kcal/kg predicted <nil>
	// the energy is predicted from guarantees, which are bounds: the food usually holds more, so that the grams come out too many; ask for the typical analysis <nil>
}

// A label beside what its analysis predicts: the label's energy is of dry
// matter.
func ExamplePrediction_Against() {
	bag := diet.Food{
		Label:    diet.Label{Energy: 4100},
		Analysis: diet.Analysis{Kind: diet.Typical, Protein: 22, Fat: 9, Fibre: 3, Moisture: 10, Ash: 5},
	}
	d, err := bag.Density()
	if err != nil {
		fmt.Println(err)
		return
	}
	p, err := bag.Predict(diet.ModifiedAtwater, 0)
	fmt.Printf("%.1f %% %v\n", 100*p.Apart(d), err)
	for _, c := range p.Against(d) {
		fmt.Println(c.Level, c.Text)
	}
	// Output:
	// 23.3 % <nil>
	// warn 4100 kcal/kg is 23.3 % more than the 3320 kcal/kg that modified_atwater predicts from the analysis: is one of them of dry matter, or mistyped?
}

func ExamplePredictors() {
	for _, f := range diet.Predictors() {
		fmt.Println(f.Predictor, f.Species, f.Text)
	}
	// Output:
	// modified_atwater  3.5 × protein + 8.5 × fat + 3.5 × NFE
	// atwater dog 4 × protein + 9 × fat + 4 × NFE
	// atwater cat 4 × protein + 8.5 × fat + 4 × NFE
	// four_step dog (5.7 × protein + 9.4 × fat + 4.1 × (NFE + fibre)) × (91.2 - 1.43 × fibre in % of dry matter) / 100 - 1.04 × protein
	// four_step cat (5.7 × protein + 9.4 × fat + 4.1 × (NFE + fibre)) × (87.9 - 0.88 × fibre in % of dry matter) / 100 - 0.77 × protein
}

// Calcium at the minimum of the profile falls short once the energy of the food
// is accounted for (AAFCO, Example B1).
func ExampleDryMatter() {
	canned := diet.Analysis{Moisture: 75}
	calcium, err := canned.DryMatter(0.25)
	fmt.Println(calcium, err)
	energy, err := canned.DryEnergy(1120)
	fmt.Println(energy, err)
	fmt.Printf("%.2f\n", float64(calcium.PerMcal(energy).DryMatter(4000)))
	// Output:
	// 1 % DM <nil>
	// 4480 kcal/kg DM <nil>
	// 0.89
}

func ExamplePerMcal() {
	protein := diet.GramsPerMcal(8.0, 1198)
	fmt.Printf("%.1f g/1000 kcal, %.1f g/MJ, %.0f %% of the energy\n",
		float64(protein), float64(protein.PerMJ()), float64(protein.EnergyShare(3.5*units.KilocaloriePerGram)))
	// Output: 66.8 g/1000 kcal, 16.0 g/MJ, 23 % of the energy
}
