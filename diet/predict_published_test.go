package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
)

var (
	// SACN 5th ed., Box 1-6, Table 3, p. 16; fibre and ash are estimates there.
	boxFood = diet.Analysis{Kind: diet.Typical, Protein: 22, Fat: 9, Fibre: 3, Moisture: 10, Ash: 5}
	// Modified Atwater Formula, a veterinary teaching sheet: dry dog food, with
	// the sheet's ash of 6 %.
	sheetFood = diet.Analysis{Kind: diet.Typical, Protein: 27, Fat: 14, Fibre: 2, Moisture: 10, Ash: 6}
	// AAFCO, Methods for Substantiating Nutritional Adequacy (2014 Official
	// Publication), Example B1: canned cat food.
	cannedB1 = diet.Analysis{Kind: diet.Guaranteed, Protein: 9, Fat: 7, Fibre: 1, Moisture: 75, Ash: 2}
)

func TestModifiedAtwaterOfPublishedExamples(t *testing.T) {
	for _, tt := range []struct {
		where         string
		analysis      diet.Analysis
		of            func(diet.Prediction) float64
		printed, half float64
	}{
		// The line under the table has 3.33, which adds the rounded parts.
		{"SACN Box 1-6, kcal/g", boxFood, func(p diet.Prediction) float64 { return p.Energy.KilocaloriesPerGram() }, 3.32, 0.005},
		{"SACN Box 1-6, kJ/g", boxFood, func(p diet.Prediction) float64 { return p.Energy.KilojoulesPerGram() }, 13.89, 0.005},
		{"teaching sheet, kcal/100 g", sheetFood, func(p diet.Prediction) float64 { return p.Energy.KilocaloriesPer100Grams() }, 357, 0.5},
		{"AAFCO B1, kcal/kg as fed", cannedB1, func(p diet.Prediction) float64 { return float64(p.Energy) }, 1120, 0.5},
		{"AAFCO B1, kcal/kg of dry matter", cannedB1, func(p diet.Prediction) float64 { return float64(p.DryEnergy) }, 4480, 0.5},
	} {
		for _, by := range []diet.Predictor{0, diet.ModifiedAtwater} { // the default is the label's formula
			for _, s := range []energy.Species{0, energy.Dog, energy.Cat, energy.Ferret} {
				p, err := tt.analysis.Predict(by, s)
				if got := tt.of(p); !isPrinted(got, tt.printed, tt.half) || err != nil {
					t.Errorf("%s, %v: %v, %v; printed %v", tt.where, s, got, err, tt.printed)
				}
				if p.Origin != diet.Predicted || p.Predictor != diet.ModifiedAtwater || p.Species != s {
					t.Errorf("%s: %v by %v for %v", tt.where, p.Origin, p.Predictor, p.Species)
				}
			}
		}
	}
}

// What each constituent supplies: SACN Box 1-6, kcal and kJ a gram of food, and
// the teaching sheet, kcal in 100 g.
func TestPartsOfModifiedAtwaterOfPublishedExamples(t *testing.T) {
	for _, tt := range []struct {
		where              string
		analysis           diet.Analysis
		per                float64 // kcal/kg to the unit printed
		protein, fat, nfe  float64
		pHalf, fHalf, nHlf float64
	}{
		{"SACN Box 1-6, kcal/g", boxFood, 1e-3, 0.77, 0.77, 1.79, 0.005, 0.005, 0.005},
		{"teaching sheet, kcal/100 g", sheetFood, 0.1, 94.5, 119, 143.5, 0.05, 0.5, 0.05},
	} {
		p, err := tt.analysis.Predict(diet.ModifiedAtwater, 0)
		shares, serr := tt.analysis.EnergyShares()
		if err != nil || serr != nil {
			t.Fatal(err, serr)
		}
		part := func(s diet.EnergyShare) float64 { return float64(p.Energy) * float64(s) / 100 * tt.per }
		if !isPrinted(part(shares.Protein), tt.protein, tt.pHalf) || !isPrinted(part(shares.Fat), tt.fat, tt.fHalf) || !isPrinted(part(shares.NFE), tt.nfe, tt.nHlf) {
			t.Errorf("%s: %v %v %v", tt.where, part(shares.Protein), part(shares.Fat), part(shares.NFE))
		}
	}
}

// computed are foods of made-up composition, and what the equations give for
// them as worked by hand: arithmetic, printed nowhere. They stand in for
// published examples of the four-step equation, of which none was found. The
// half-steps are those of the figures as written.
var computed = []struct {
	name                          string
	species                       energy.Species
	analysis                      diet.Analysis
	nfe, atwater, fibre, gross    float64
	digestibility, digestible     float64
	fourStep, above               float64
	nfeHalf, atwHalf, fibHalf     float64
	grossHalf, digHalf, deHalf    float64
	fourHalf, aboveHalf           float64
	naturalPer100, naturalPerHalf float64 // 4/9/4 or 4/8.5/4, where it was worked
}{
	{
		"dry-dog-adult", energy.Dog,
		diet.Analysis{Protein: 25, Fat: 14, Fibre: 3, Moisture: 9, Ash: 7},
		42.00, 3535, 3.297, 458.6, 86.49, 396.6, 3706, 4.844, 0.005, 0.5, 0.0005, 0.05, 0.005, 0.05, 0.5, 0.0005, 0, 0,
	},
	{
		"dry-dog-weight", energy.Dog,
		diet.Analysis{Protein: 26, Fat: 9, Fibre: 10, Moisture: 9, Ash: 6},
		40.00, 3075, 10.99, 437.8, 75.49, 330.5, 3034, -1.321, 0.005, 0.5, 0.005, 0.05, 0.005, 0.05, 0.5, 0.0005, 0, 0,
	},
	{
		"dry-dog-active", energy.Dog,
		diet.Analysis{Protein: 30, Fat: 20, Fibre: 2.5, Moisture: 8, Ash: 7},
		32.50, 3887.5, 2.717, 502.5, 87.31, 438.8, 4076, 4.837, 0.005, 0.05, 0.0005, 0.05, 0.005, 0.05, 0.5, 0.0005, 430.0, 0.05,
	},
	{
		"dry-puppy", energy.Dog,
		diet.Analysis{Protein: 28, Fat: 17, Fibre: 2.5, Moisture: 9, Ash: 7.5},
		36.00, 3685, 2.747, 477.25, 87.27, 416.5, 3874, 5.124, 0.005, 0.5, 0.0005, 0.005, 0.005, 0.05, 0.5, 0.0005, 409.0, 0.05,
	},
	{
		"canned-dog", energy.Dog,
		diet.Analysis{Protein: 8, Fat: 6, Fibre: 0.7, Moisture: 78, Ash: 2},
		5.300, 975.5, 3.182, 126.6, 86.65, 109.7, 1014, 3.925, 0.0005, 0.05, 0.0005, 0.05, 0.005, 0.05, 0.5, 0.0005, 107.2, 0.05,
	},
	{
		"dry-cat-adult", energy.Cat,
		diet.Analysis{Protein: 33, Fat: 15, Fibre: 2.5, Moisture: 7.5, Ash: 7},
		35.00, 3655, 2.703, 482.85, 85.52, 412.9, 3875, 6.028, 0.005, 0.5, 0.0005, 0.005, 0.005, 0.05, 0.5, 0.0005, 399.5, 0.05,
	},
	{
		"dry-kitten", energy.Cat,
		diet.Analysis{Protein: 38, Fat: 21, Fibre: 2, Moisture: 7, Ash: 7.5},
		24.50, 3972.5, 2.151, 522.65, 86.01, 449.5, 4203, 5.792, 0.005, 0.05, 0.0005, 0.005, 0.005, 0.05, 0.5, 0.0005, 428.5, 0.05,
	},
	{
		"dry-cat-weight", energy.Cat,
		diet.Analysis{Protein: 37, Fat: 9.5, Fibre: 8, Moisture: 7, Ash: 6.5},
		32.00, 3222.5, 8.602, 464.2, 80.33, 372.9, 3444, 6.874, 0.005, 0.05, 0.0005, 0.05, 0.005, 0.05, 0.5, 0.0005, 0, 0,
	},
	{
		"canned-cat", energy.Cat,
		diet.Analysis{Protein: 10.5, Fat: 5.5, Fibre: 0.5, Moisture: 79, Ash: 2.2},
		2.300, 915.5, 2.381, 123.0, 85.80, 105.6, 974.8, 6.478, 0.0005, 0.05, 0.0005, 0.05, 0.005, 0.05, 0.05, 0.0005, 0, 0,
	},
	{ // as the food of a cat
		"dry-ferret", energy.Ferret,
		diet.Analysis{Protein: 40, Fat: 20, Fibre: 1.5, Moisture: 8, Ash: 8.5},
		22.00, 3870, 1.630, 512.35, 86.47, 443.0, 4122, 6.513, 0.005, 0.5, 0.0005, 0.005, 0.005, 0.05, 0.5, 0.0005, 0, 0,
	},
	{
		"semimoist-dog", energy.Dog,
		diet.Analysis{Protein: 20, Fat: 9, Fibre: 2, Moisture: 28, Ash: 5},
		36.00, 2725, 2.778, 354.4, 87.23, 309.1, 2883, 5.811, 0.005, 0.5, 0.0005, 0.05, 0.005, 0.05, 0.5, 0.0005, 0, 0,
	},
	{
		"biscuit-dog", energy.Dog,
		diet.Analysis{Protein: 15, Fat: 7, Fibre: 3, Moisture: 10, Ash: 6},
		59.00, 3185, 3.333, 405.5, 86.43, 350.5, 3349, 5.145, 0.005, 0.5, 0.0005, 0.05, 0.005, 0.05, 0.5, 0.0005, 359.0, 0.05,
	},
	{
		"canned-loaf-cat", energy.Cat,
		diet.Analysis{Protein: 11, Fat: 8, Fibre: 0.6, Moisture: 76, Ash: 2.4},
		2.000, 1135, 2.500, 148.6, 85.70, 127.3, 1188, 4.710, 0.0005, 0.5, 0.0005, 0.05, 0.005, 0.05, 0.5, 0.0005, 120.0, 0.05,
	},
}

func TestComputedFoodsStepByStep(t *testing.T) {
	for _, tt := range computed {
		ma, err := tt.analysis.Predict(diet.ModifiedAtwater, tt.species)
		four, ferr := tt.analysis.Predict(diet.FourStep, tt.species)
		if err != nil || ferr != nil {
			t.Errorf("%s: %v, %v", tt.name, err, ferr)
			continue
		}
		for _, step := range []struct {
			of              string
			got, want, half float64
		}{
			{"NFE, %", float64(four.NFE), tt.nfe, tt.nfeHalf},
			{"modified Atwater, kcal/kg", float64(ma.Energy), tt.atwater, tt.atwHalf},
			{"fibre, % of dry matter", float64(four.Fibre), tt.fibre, tt.fibHalf},
			{"gross energy, kcal/100 g", float64(four.Gross) / 10, tt.gross, tt.grossHalf},
			{"digestibility, %", float64(four.Digestibility), tt.digestibility, tt.digHalf},
			{"digestible energy, kcal/100 g", float64(four.Digestible) / 10, tt.digestible, tt.deHalf},
			{"four-step, kcal/kg", float64(four.Energy), tt.fourStep, tt.fourHalf},
			{"four-step above modified Atwater, %", 100 * (float64(four.Energy/ma.Energy) - 1), tt.above, tt.aboveHalf},
		} {
			if !isPrinted(step.got, step.want, step.half) {
				t.Errorf("%s: %s: %v, worked by hand %v", tt.name, step.of, step.got, step.want)
			}
		}
		if ma.Gross != 0 || ma.Fibre != 0 || ma.Digestibility != 0 || ma.Digestible != 0 {
			t.Errorf("%s: modified Atwater has the steps of another equation: %+v", tt.name, ma)
		}
		if tt.naturalPer100 == 0 {
			continue
		}
		p, err := tt.analysis.Predict(diet.Atwater, tt.species)
		if got := p.Energy.KilocaloriesPer100Grams(); !isPrinted(got, tt.naturalPer100, tt.naturalPerHalf) || err != nil {
			t.Errorf("%s: Atwater: %v, %v; worked by hand %v", tt.name, got, err, tt.naturalPer100)
		}
	}
	if len(computed) != 13 {
		t.Errorf("%d foods", len(computed))
	}
}

// Computed too: natural foods by the Atwater factors, protein, fat and NFE
// given; the water and the ash are set so that the NFE comes out.
func TestComputedNaturalFoods(t *testing.T) {
	for _, tt := range []struct {
		name     string
		species  energy.Species
		analysis diet.Analysis
		per100   float64
		half     float64
	}{
		{"cooked lean meat, dog", energy.Dog, diet.Analysis{Protein: 28, Fat: 6, Moisture: 65, Ash: 1, None: diet.CrudeFibre}, 166.0, 0.05},
		{"cooked lean meat, cat", energy.Cat, diet.Analysis{Protein: 28, Fat: 6, Moisture: 65, Ash: 1, None: diet.CrudeFibre}, 163.0, 0.05},
		{"cooked rice, dog", energy.Dog, diet.Analysis{Protein: 2.7, Fat: 0.3, Fibre: 0.5, Moisture: 68, Ash: 0.5}, 125.5, 0.05},
		{"milk substitute, cat", energy.Cat, diet.Analysis{Protein: 7.5, Fat: 5, Moisture: 83, Ash: 1, None: diet.CrudeFibre}, 86.50, 0.005},
	} {
		p, err := tt.analysis.Predict(diet.Atwater, tt.species)
		if got := p.Energy.KilocaloriesPer100Grams(); !isPrinted(got, tt.per100, tt.half) || err != nil {
			t.Errorf("%s: %v, %v; worked by hand %v", tt.name, got, err, tt.per100)
		}
	}
}

// Computed: guarantees understate the energy of the same food by modified
// Atwater, 3465 against 3636.5 kcal/kg.
func TestGuaranteesUnderstate(t *testing.T) {
	for want, a := range map[float64]diet.Analysis{
		3465:   {Kind: diet.Guaranteed, Protein: 26, Fat: 14, Fibre: 4, Moisture: 10, Ash: 7},
		3636.5: {Kind: diet.Typical, Protein: 27.6, Fat: 15.4, Fibre: 2.9, Moisture: 8.2, Ash: 7},
	} {
		p, err := a.Predict(diet.ModifiedAtwater, 0)
		if !isPrinted(float64(p.Energy), want, 0.05) || err != nil {
			t.Errorf("%v: %v, %v; want %v", a.Kind, p.Energy, err, want)
		}
	}
}
