package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func growingDog(t testing.TB, s diet.Standard, age energy.Age, adult units.Mass) diet.Adequacy {
	t.Helper()
	return diet.Adequacy{
		Profile: allNutrients(t, 1), Form: diet.Dry, Standard: s, Stage: diet.Growth,
		Animal: energy.Animal{Species: energy.Dog, Age: age}, AdultWeight: adult,
	}
}

// The calcium of growing dogs. The maxima are from memory: AAFCO's 6.25 g, 4.5
// for dogs of 70 lb and more; FEDIAF's 4.0 in early and 4.5 in late growth,
// from 14 weeks. So are FEDIAF's minima and ratios, but 2.00-2.50 in late
// growth is one cell of its table: small and large dogs. AAFCO's minimum and
// 1:1 to 2:1 are in its own table.
func TestCalciumOfGrowth(t *testing.T) {
	const lb = units.Pound
	typed, err := units.ParseMass("70 lb") // an ulp below the product
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name                    string
		a                       diet.Adequacy
		least, most, low, times float64
	}{
		{"adult weight not known", growingDog(t, diet.AAFCO, 0, 0), 3.0, 4.5, 1, 2},
		{"large", growingDog(t, diet.AAFCO, 0, 70*lb), 3.0, 4.5, 1, 2},
		{"large, as it is typed", growingDog(t, diet.AAFCO, 0, typed), 3.0, 4.5, 1, 2},
		{"not large", growingDog(t, diet.AAFCO, 0, 69*lb), 3.0, 6.25, 1, 2},
		{"early", growingDog(t, diet.FEDIAF, 97, 10*units.Kilogram), 2.5, 4.0, 1, 1.6},
		{"age not known", growingDog(t, diet.FEDIAF, 0, 10*units.Kilogram), 2.5, 4.0, 1, 1.6},
		{"late, small", growingDog(t, diet.FEDIAF, 98, 15*units.Kilogram), 2.0, 4.5, 1, 1.8},
		{"late, large", growingDog(t, diet.FEDIAF, 98, 16*units.Kilogram), 2.5, 4.5, 1, 1.6},
		{"late, not known", growingDog(t, diet.FEDIAF, 98, 0), 2.5, 4.5, 1, 1.6},
		{"adult", fedDog(t, diet.AAFCO, 110), 1.25, 6.25, 1, 2},
		{"adult", fedDog(t, diet.FEDIAF, 110), 1.25, 6.25, 1, 2},
	} {
		for rule, want := range map[diet.Rule]float64{
			// All the phosphorus there is is 1 g/1000 kcal.
			diet.Minimum: tt.least, diet.Maximum: tt.most, diet.RatioMinimum: tt.low, diet.RatioMaximum: tt.times,
		} {
			if f := findingOf(t, tt.a, diet.Calcium, rule); !isPrinted(float64(f.Need), want, 1e-9) {
				t.Errorf("%s, %v: %v %v, want %v", tt.name, tt.a.Standard, rule, f.Need, want)
			}
		}
	}
	// Reproduction is not growth of a large dog.
	bitch := growingDog(t, diet.AAFCO, 0, 70*lb)
	bitch.Stage = diet.Reproduction
	if f := findingOf(t, bitch, diet.Calcium, diet.Maximum); f.Need != 6.25 {
		t.Errorf("reproduction: %v", f.Need)
	}
}

func TestMaximaAndRatiosAreNotScaled(t *testing.T) {
	for _, rule := range []diet.Rule{diet.Maximum, diet.RatioMinimum, diet.RatioMaximum} {
		a, b := findingOf(t, fedDog(t, diet.FEDIAF, 50), diet.Calcium, rule), findingOf(t, fedDog(t, diet.FEDIAF, 110), diet.Calcium, rule)
		if a != b || a.Reference != 0 || a.Intake != 0 {
			t.Errorf("%v: %+v and %+v", rule, a, b)
		}
	}
}

func TestMarginsOfCalcium(t *testing.T) {
	a := growingDog(t, diet.AAFCO, 0, 35*units.Kilogram)
	a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: 5, diet.Phosphorus: 2})
	for rule, want := range map[diet.Rule]diet.Finding{
		diet.Minimum:      {Need: 3, Printed: 3, Margin: 2},
		diet.Maximum:      {Need: 4.5, Printed: 4.5, Margin: -0.5},
		diet.RatioMinimum: {Need: 2, Ratio: 1, Margin: 3},
		diet.RatioMaximum: {Need: 4, Ratio: 2, Margin: -1},
	} {
		got := findingOf(t, a, diet.Calcium, rule)
		want.Nutrient, want.Rule, want.Have, want.Source = diet.Calcium, rule, 5, got.Source
		if got != want || got.Short() != (want.Margin < 0) {
			t.Errorf("%+v, want %+v", got, want)
		}
	}
	// Without the phosphorus there is no ratio.
	a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: 5})
	list, err := a.Check()
	if len(list) != 2 || err != nil {
		t.Errorf("%+v, %v", list, err)
	}
}
