package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// AAFCO, Methods for Substantiating Nutritional Adequacy (2014 Official
// Publication), Example A2: a dry dog food of 10 % moisture, the minima of the
// profile moved to it.
func TestProfileMovedToTheMoistureOfAFood(t *testing.T) {
	dry := diet.Analysis{Moisture: 10}
	for _, tt := range []struct {
		nutrient      string
		profile       diet.DryMatter
		printed, half float64
	}{
		{"protein", 22.5, 20.25, 0.005},
		{"fat", 8.5, 7.65, 0.005},
		{"calcium", 1.2, 1.08, 0.005},
		{"phosphorus", 1.0, 0.9, 0.05},
	} {
		got, err := dry.AsFed(tt.profile)
		if !isPrinted(float64(got), tt.printed, tt.half) || err != nil {
			t.Errorf("%s: %v, %v; printed %v", tt.nutrient, got, err, tt.printed)
		}
	}
}

// The same document, Example B1: a canned cat food of 75 % moisture and 1120
// kcal/kg, moved to dry matter and from there to 4000 kcal/kg, below which
// calcium and phosphorus fall short.
func TestCannedFoodMovedToDryMatterAndToItsEnergy(t *testing.T) {
	rich, err := cannedB1.DryEnergy(1120)
	if rich != 4480 || err != nil {
		t.Errorf("energy of dry matter: %v, %v; printed 4480", rich, err)
	}
	for _, tt := range []struct {
		nutrient     string
		asFed        units.Percent
		dry, dryHalf float64
		at4000, half float64
	}{
		{"protein", 9, 36, 0.5, 32.1, 0.05},
		{"fat", 7, 28, 0.5, 25.0, 0.05},
		{"calcium", 0.25, 1.0, 0.05, 0.89, 0.005},
		{"phosphorus", 0.2, 0.8, 0.05, 0.71, 0.005},
	} {
		d, err := cannedB1.DryMatter(tt.asFed)
		if !isPrinted(float64(d), tt.dry, tt.dryHalf) || err != nil {
			t.Errorf("%s: %v of dry matter, %v; printed %v", tt.nutrient, d, err, tt.dry)
		}
		if got := d.PerMcal(rich).DryMatter(4000); !isPrinted(float64(got), tt.at4000, tt.half) {
			t.Errorf("%s: %v at 4000 kcal/kg; printed %v", tt.nutrient, got, tt.at4000)
		}
		if got := diet.GramsPerMcal(tt.asFed, 1120).DryMatter(4000); !isPrinted(float64(got), tt.at4000, tt.half) {
			t.Errorf("%s, straight from as fed: %v at 4000 kcal/kg; printed %v", tt.nutrient, got, tt.at4000)
		}
	}
}

// Linder, Nutrition Math 101, Petfoodology, Cummings School of Veterinary
// Medicine, Tufts University, 11 Nov 2016: 8.0 % of protein at 1,198 kcal/kg is
// 6.7 g/100 kcal.
func TestProteinPerCalorie(t *testing.T) {
	if got := float64(diet.GramsPerMcal(8.0, 1198)) / 10; !isPrinted(got, 6.7, 0.05) {
		t.Errorf("%v g/100 kcal; printed 6.7", got)
	}
}

// SACN 5th ed., Case 1-1, step 4, p. 20: 3.6 kcal/g as fed at 90 % of dry
// matter is 4 kcal/g of dry matter.
func TestEnergyOfDryMatter(t *testing.T) {
	got, err := diet.Analysis{Moisture: 10}.DryEnergy(3.6 * units.KilocaloriePerGram)
	if !isPrinted(float64(got)/1000, 4, 0.5) || !isPrinted(float64(got), 4000, 1e-9) || err != nil {
		t.Errorf("%v, %v; printed 4 kcal/g", got, err)
	}
}

// FEDIAF, Table VII-19 b: adult cats at 100 kcal/kg^0.67, three columns of one
// row each. The printed figures are rounded; methionine for a megajoule and the
// others agree within that.
func TestCatTableFromOneBasisToTheNext(t *testing.T) {
	for _, tt := range []struct {
		nutrient    string
		perMcal     diet.PerMcal
		perMJ       float64 // 0: not seen
		per100gDry  float64
		half, mjHlf float64
	}{
		{"protein", 62.50, 14.94, 25.00, 0.005, 0.005},
		{"arginine", 2.50, 0, 1.00, 0.005, 0},
		{"histidine", 0.65, 0.16, 0.26, 0.005, 0.005},
		{"isoleucine", 1.08, 0.26, 0.43, 0.005, 0.005},
		{"lysine", 0.85, 0, 0.34, 0.005, 0},
		{"methionine", 0.43, 0.10, 0.17, 0.005, 0.005},
		{"methionine + cystine", 0.85, 0, 0.34, 0.005, 0},
		{"phenylalanine", 1.00, 0, 0.40, 0.005, 0},
		{"phenylalanine + tyrosine", 3.83, 0, 1.53, 0.005, 0},
		{"threonine", 1.30, 0, 0.52, 0.005, 0},
		{"tryptophan", 0.33, 0.08, 0.13, 0.005, 0.005},
		{"valine", 1.28, 0, 0.51, 0.005, 0},
	} {
		if got := tt.perMcal.DryMatter(4000); !isPrinted(float64(got), tt.per100gDry, tt.half) {
			t.Errorf("%s: %v; printed %v g/100 g of dry matter", tt.nutrient, got, tt.per100gDry)
		}
		if got := tt.perMcal.PerMJ(); tt.perMJ != 0 && !isPrinted(float64(got), tt.perMJ, tt.mjHlf) {
			t.Errorf("%s: %v; printed %v", tt.nutrient, got, tt.perMJ)
		}
	}
}

// AAFCO, dog profile by calorie content beside that by dry matter at 4000
// kcal/kg. The proposed text has 0.10 for the magnesium of growth, where 0.06 %
// makes 0.15 as it prints for adults, and rounds sodium and chloride of growth
// (0.80 for 0.75, 1.10 for 1.125): those three are left out.
func TestDogProfilePerCalorie(t *testing.T) {
	for _, tt := range []struct {
		nutrient      string
		dry           diet.DryMatter
		printed, half float64
	}{
		{"fat, growth", 8.5, 21.3, 0.05},
		{"fat, adult", 5.5, 13.8, 0.05},
		{"calcium, most", 1.8, 4.5, 0.05},
		{"phosphorus, adult", 0.4, 1.00, 0.005},
		{"phosphorus, most", 1.6, 4.0, 0.05},
		{"potassium", 0.6, 1.5, 0.05},
		{"sodium, adult", 0.08, 0.20, 0.005},
		{"chloride, adult", 0.12, 0.30, 0.005},
		{"magnesium, adult", 0.06, 0.15, 0.005},
	} {
		if got := tt.dry.PerMcal(4000); !isPrinted(float64(got), tt.printed, tt.half) {
			t.Errorf("%s: %v; printed %v g/1000 kcal", tt.nutrient, got, tt.printed)
		}
	}
}

// Computed, printed nowhere: protein and fat of made-up foods on three bases, by
// the energy of modified Atwater.
func TestComputedFoodsOnTheirBases(t *testing.T) {
	const protein, fat = 3.5 * units.KilocaloriePerGram, 8.5 * units.KilocaloriePerGram
	for _, tt := range []struct {
		name                                 string
		analysis                             diet.Analysis
		e                                    units.EnergyDensity
		proteinMcal, fatMcal, pShare, fShare float64
		mcalHalf                             float64
	}{
		{"dry-dog-adult", computed[0].analysis, 3535, 70.72, 39.60, 24.75, 33.66, 0.005},
		{"canned-dog", computed[4].analysis, 975.5, 82.01, 61.51, 28.70, 52.28, 0.005},
		{"dry-cat-adult", computed[5].analysis, 3655, 90.29, 41.04, 31.60, 34.88, 0.005},
		{"canned-cat", computed[8].analysis, 915.5, 114.7, 60.08, 40.14, 51.065, 0.05},
	} {
		p, f := diet.GramsPerMcal(tt.analysis.Protein, tt.e), diet.GramsPerMcal(tt.analysis.Fat, tt.e)
		if !isPrinted(float64(p), tt.proteinMcal, tt.mcalHalf) || !isPrinted(float64(f), tt.fatMcal, 0.005) {
			t.Errorf("%s: protein %v, fat %v", tt.name, p, f)
		}
		if ps, fs := p.EnergyShare(protein), f.EnergyShare(fat); !isPrinted(float64(ps), tt.pShare, 0.005) || !isPrinted(float64(fs), tt.fShare, 0.005) {
			t.Errorf("%s: of the energy: protein %v, fat %v", tt.name, ps, fs)
		}
		shares, err := tt.analysis.EnergyShares()
		if !isPrinted(float64(shares.Protein), tt.pShare, 0.005) || !isPrinted(float64(shares.Fat), tt.fShare, 0.005) || err != nil {
			t.Errorf("%s: %+v, %v", tt.name, shares, err)
		}
	}
	// SACN 5th ed., Box 1-2, Table 4: the parts are printed, the share is not.
	if shares, err := boxFood.EnergyShares(); !isPrinted(float64(shares.Fat), 23.04, 0.005) || err != nil {
		t.Errorf("%+v, %v", shares, err)
	}
}

func TestBasesNeedTheMoisture(t *testing.T) {
	for _, tt := range []struct {
		analysis diet.Analysis
		want     string
	}{
		{diet.Analysis{Protein: 9}, `diet: analysis.moisture "": want the moisture as fed, in % (ask the manufacturer, or set defaults where the food is dry)`},
		{diet.Analysis{Moisture: 0.75}, `diet: analysis.moisture "0.75 %": want 1 % or more and below 100 %, or none if not known`},
		{diet.Analysis{Moisture: 10, Defaults: diet.Dry}, ""},
		{diet.Analysis{Defaults: diet.Dry}, ""},
	} {
		d, err := tt.analysis.DryMatter(9)
		p, perr := tt.analysis.AsFed(10)
		e, eerr := tt.analysis.DryEnergy(3600)
		f, ferr := tt.analysis.AsFedEnergy(4000)
		for _, err := range []error{err, perr, eerr, ferr} {
			if errorText(err) != tt.want {
				t.Errorf("%+v: %v\nwant %s", tt.analysis, err, tt.want)
			}
		}
		if tt.want != "" && (d != 0 || p != 0 || e != 0 || f != 0) {
			t.Errorf("%+v: %v %v %v %v beside an error", tt.analysis, d, p, e, f)
		}
		if tt.want == "" && (!isPrinted(float64(d), 10, 1e-12) || !isPrinted(float64(p), 9, 1e-12) || !isPrinted(float64(e), 4000, 1e-9) || !isPrinted(float64(f), 3600, 1e-9)) {
			t.Errorf("%+v: %v %v %v %v", tt.analysis, d, p, e, f)
		}
	}
}
