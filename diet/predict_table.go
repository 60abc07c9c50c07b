package diet

import (
	"slices"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// The works that the equations rest on.
const (
	workSACN   = "Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010"
	workFEDIAF = "FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs"
	workJewell = "Jewell and Jackson, Front Vet Sci 2023;10:1104695"
)

var (
	sourcePF9 = advice.Source{
		Work: "AAFCO Model Regulation PF9, Statements of Calorie Content (Official Publication 2014)", Where: "PF9(a)(3)A", Seen: advice.Primary,
	}
	sourceNatural  = advice.Source{Work: workFEDIAF, Where: "Annex 1, 2.2.2 b)", Seen: advice.Primary}
	sourceFourStep = advice.Source{Work: workFEDIAF, Where: "Annex 1, 2.2.2 a), after NRC 2006", Seen: advice.Primary}
)

// factors are the kcal that a gram supplies.
type factors struct{ protein, fat, nfe float64 }

var (
	// PF9(a)(3)A.
	modifiedAtwater = factors{3.5, 8.5, 3.5}
	// FEDIAF Annex 1, 2.2.2 b). The cat's fat has 8.5 there, where other texts
	// have 9 for both.
	atwaterDog = factors{4, 9, 4}
	atwaterCat = factors{4, 8.5, 4}
)

// grossEnergy are the kcal that a gram burns with, FEDIAF Annex 1, Table VII-5;
// fibre burns as NFE does.
var grossEnergy = factors{5.7, 9.4, 4.1}

// fourStep are the coefficients of one species, FEDIAF Annex 1, 2.2.2 a):
// digestibility of the energy in percent, most - slope × fibre in % of dry
// matter, and the kcal lost in the urine for a gram of crude protein.
type fourStep struct{ most, slope, urine float64 }

var (
	fourStepDog = fourStep{91.2, 1.43, 1.04}
	fourStepCat = fourStep{87.9, 0.88, 0.77}
)

// Published mean absolute difference between predicted and measured
// metabolizable energy, in percent: 1028 foods for dogs and 847 for cats.
const (
	missModifiedAtwater = 6.7
	missFourStep        = 5.1
)

var sourceMiss = advice.Source{Work: workJewell, Where: "abstract", Seen: advice.Primary}

// Formula is what [Predictors] says of an equation.
type Formula struct {
	Predictor Predictor
	Species   energy.Species // zero: every species
	Text      string         // constituents in % as fed, energy in kcal/100 g as fed
	For       string         // the foods it is made for
	Not       string         // the foods that its source leaves out; "" for none
	Source    advice.Source
}

const (
	prepared = "prepared foods for dogs and cats"
	natural  = "foods in their natural state, fresh or preserved, and very digestible ones: meat, offal, milk products, cooked starch, milk substitutes, enteral diets"
)

var formulas = []Formula{
	{
		ModifiedAtwater, 0, "3.5 × protein + 8.5 × fat + 3.5 × NFE", prepared + ": the calorie content on labels in the United States", "", sourcePF9,
	},
	{Atwater, energy.Dog, "4 × protein + 9 × fat + 4 × NFE", natural, prepared, sourceNatural},
	{Atwater, energy.Cat, "4 × protein + 8.5 × fat + 4 × NFE", natural, prepared, sourceNatural},
	{
		FourStep, energy.Dog, "(5.7 × protein + 9.4 × fat + 4.1 × (NFE + fibre)) × (91.2 - 1.43 × fibre in % of dry matter) / 100 - 1.04 × protein",
		prepared, natural + "; it can be low above 8 % of fibre in dry matter, much of it fermentable", sourceFourStep,
	},
	{
		FourStep, energy.Cat, "(5.7 × protein + 9.4 × fat + 4.1 × (NFE + fibre)) × (87.9 - 0.88 × fibre in % of dry matter) / 100 - 0.77 × protein",
		prepared, natural, sourceFourStep,
	},
}

// Predictors returns every equation of the package, the default first. The
// slice is the caller's.
//
// The sources disagree on which is less biased. The four-step equation comes
// out 4 to 7 % above modified Atwater for most foods and below it for a dog food
// rich in fibre (our arithmetic on thirteen compositions), so that two foods are
// compared by one and the same. Modified Atwater is the default, since a label
// marked "calculated" was made with it.
func Predictors() []Formula { return slices.Clone(formulas) }
