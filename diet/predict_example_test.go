package diet_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
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
	// diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed)
	// 3465 kcal/kg predicted <nil>
	// the energy is predicted from guarantees, which are bounds: the food usually holds more, so that the grams come out too many; ask for the typical analysis <nil>
}
