package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// allNutrients gives so much of every nutrient.
func allNutrients(t testing.TB, v diet.PerMcal) diet.Profile {
	t.Helper()
	contents := make(map[diet.Nutrient]diet.PerMcal)
	for n := diet.Protein; n <= diet.Manganese; n++ {
		contents[n] = v
	}
	return profileOf(t, contents)
}

// A dog of 16 kg has 8 kg^0.75, so that eating 8 × 70 kcal it gets 70
// kcal/kg^0.75. The cat's 1 kg^0.67 would be that of no cat; 2 kg has 1.59107,
// by hand 2^0.67 = e^(0.67 × 0.693147).
func fedDog(t testing.TB, s diet.Standard, intake float64) diet.Adequacy {
	t.Helper()
	return diet.Adequacy{
		Profile: allNutrients(t, 1), Form: diet.Dry, Standard: s, Stage: diet.Maintenance,
		Animal: energy.Animal{Species: energy.Dog, Weight: 20 * units.Kilogram, Ideal: 16 * units.Kilogram},
		Daily:  units.Energy(8*intake) * units.Kilocalorie,
	}
}

func fedCat(t testing.TB, s diet.Standard, intake float64) diet.Adequacy {
	t.Helper()
	return diet.Adequacy{
		Profile: allNutrients(t, 1), Form: diet.Wet, Standard: s, Stage: diet.Maintenance,
		Animal: energy.Animal{Species: energy.Cat, Weight: 2 * units.Kilogram, Condition: energy.BCS9(5)},
		Daily:  units.Energy(1.591073*intake) * units.Kilocalorie,
	}
}

// findingOf returns the one finding of n by the rule.
func findingOf(t testing.TB, a diet.Adequacy, n diet.Nutrient, rule diet.Rule) diet.Finding {
	t.Helper()
	list, err := a.Check()
	if err != nil {
		t.Fatal(err)
	}
	var found []diet.Finding
	for _, f := range list {
		if f.Nutrient == n && f.Rule == rule {
			found = append(found, f)
		}
	}
	if len(found) != 1 {
		t.Fatalf("%d findings of %v %v: %v", len(found), n, rule, found)
	}
	return found[0]
}

// The minimum at another intake: units/1000 kcal = daily requirement × 1000 /
// energy, both per kg of metabolic weight (FEDIAF). All are computed with the
// equation, from minima of which the dog's and NRC's, but for its protein, are
// from memory. FEDIAF itself prints the cat's protein at 75 as 33.30 g/100 g of
// dry matter, 83.25 g/1000 kcal, rounded from 25.00 × 100 / 75 = 33.33.
func TestMinimaAreScaledToTheIntake(t *testing.T) {
	dry := fedCat(t, diet.FEDIAF, 60)
	dry.Form = diet.Dry
	for _, tt := range []struct {
		name       string
		a          diet.Adequacy
		of         diet.Nutrient
		need, half float64
	}{
		{"dog at 85", fedDog(t, diet.FEDIAF, 85), diet.Protein, 58.24, 0.005},
		{"dog at 70", fedDog(t, diet.FEDIAF, 70), diet.Protein, 70.7, 0.05},
		{"dog at 70", fedDog(t, diet.FEDIAF, 70), diet.Calcium, 1.964, 0.0005},
		{"dog at 70", fedDog(t, diet.FEDIAF, 70), diet.Phosphorus, 1.57, 0.005},
		{"dog at 70, fat", fedDog(t, diet.FEDIAF, 70), diet.Fat, 13.75, 0},
		{"cat at 75", fedCat(t, diet.FEDIAF, 75), diet.Protein, 83.33, 0.005},
		{"cat at 75", fedCat(t, diet.FEDIAF, 75), diet.Taurine, 0.6667, 0.00005},
		{"cat at 60", dry, diet.Taurine, 0.4167, 0.00005},
		{"cat at 75, fat", fedCat(t, diet.FEDIAF, 75), diet.Fat, 22.5, 0},
		// 0.85 g/1000 kcal is printed at 100, and at 75 0.45 g/100 g of dry matter,
		// 1.125 g/1000 kcal, rounded from 0.85 × 0.4 × 100 / 75 = 0.4533.
		{"cat at 130, methionine and cystine", fedCat(t, diet.FEDIAF, 130), diet.MethionineCystine, 0.85, 0},
		{"cat at 100, methionine and cystine", fedCat(t, diet.FEDIAF, 100), diet.MethionineCystine, 0.85, 0},
		{"cat at 85, methionine and cystine", fedCat(t, diet.FEDIAF, 85), diet.MethionineCystine, 1, 0.000001},
		{"cat at 75, methionine and cystine", fedCat(t, diet.FEDIAF, 75), diet.MethionineCystine, 1.125, 0.0125},
		// 25 × 130 / 79 and 1.0 × 130 / 79.
		{"dog at 79, NRC", fedDog(t, diet.NRC2006, 79), diet.Protein, 41.139, 0.0005},
		{"dog at 79, NRC", fedDog(t, diet.NRC2006, 79), diet.Calcium, 1.6456, 0.00005},
		// 50 × 100 / 60, from memory.
		{"cat at 60, NRC", fedCat(t, diet.NRC2006, 60), diet.Protein, 83.333, 0.0005},
		// No intake is published with it.
		{"dog at 70, AAFCO", fedDog(t, diet.AAFCO, 70), diet.Protein, 45, 0},
		{"cat at 60, AAFCO", fedCat(t, diet.AAFCO, 60), diet.Protein, 65, 0},
	} {
		if f := findingOf(t, tt.a, tt.of, diet.Minimum); !isPrinted(float64(f.Need), tt.need, tt.half+1e-6) {
			t.Errorf("%s: %v %v, want %v", tt.name, tt.of, f.Need, tt.need)
		}
	}
}

func TestAnIntakeAboveTheReferenceLowersNothing(t *testing.T) {
	for _, tt := range []struct {
		a         diet.Adequacy
		want, ref float64
	}{
		{fedDog(t, diet.FEDIAF, 110), 45, 110},
		{fedDog(t, diet.FEDIAF, 300), 45, 110},
		{fedDog(t, diet.NRC2006, 131), 25, 130},
		{fedCat(t, diet.FEDIAF, 130), 62.5, 100},
	} {
		f := findingOf(t, tt.a, diet.Protein, diet.Minimum)
		if !isPrinted(float64(f.Need), tt.want, 1e-6) || f.Reference != tt.ref || f.Printed != diet.PerMcal(tt.want) {
			t.Errorf("%+v, want %v at %v", f, tt.want, tt.ref)
		}
	}
}

// Linder et al., Vet Q 2012;32:123-129: no diet was below NRC's allowances for
// 1000 kcal, and each short of something at 79 kcal/kg^0.75 of ideal weight.
// The diet here is invented.
func TestAFoodFineForAThousandKilocaloriesCanBeShort(t *testing.T) {
	profile := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Protein: 60, diet.Fat: 25, diet.Calcium: 1.6, diet.Phosphorus: 1.3})
	for intake, want := range map[float64]int{130: 0, 79: 1} {
		a := fedDog(t, diet.NRC2006, intake)
		a.Profile = profile
		list, err := a.Check()
		short := 0
		for _, f := range list {
			if f.Short() {
				short++
			}
		}
		if short != want || len(list) != 4 || err != nil {
			t.Errorf("at %v: %d short of %d, %v; want %d", intake, short, len(list), err, want)
		}
	}
}

// AAFCO, Example B1, canned cat food for growth: its calcium is 1.0 % of dry
// matter, the minimum, and 0.89 % when corrected to 4000 kcal/kg; its
// phosphorus 0.8 % and 0.71 %. Both fail.
func TestCalciumAtTheMinimumFailsWithItsEnergy(t *testing.T) {
	p, err := cannedB1.Profile(1120)
	if err != nil {
		t.Fatal(err)
	}
	p, err = p.With(map[diet.Nutrient]diet.PerMcal{
		diet.Calcium: diet.GramsPerMcal(0.25, 1120), diet.Phosphorus: diet.GramsPerMcal(0.20, 1120),
	})
	if err != nil {
		t.Fatal(err)
	}
	a := diet.Adequacy{Profile: p, Form: diet.Wet, Standard: diet.AAFCO, Stage: diet.Growth, Animal: energy.Animal{Species: energy.Cat}}
	for _, tt := range []struct {
		of         diet.Nutrient
		have, need float64
		half       float64
		short      bool
	}{
		{diet.Protein, 32.1, 30.0, 0.05, false},
		{diet.Fat, 25.0, 9.0, 0.05, false},
		{diet.Calcium, 0.89, 1.0, 0.005, true},
		{diet.Phosphorus, 0.71, 0.8, 0.005, true},
	} {
		f := findingOf(t, a, tt.of, diet.Minimum)
		if !isPrinted(float64(f.Have.DryMatter(4000)), tt.have, tt.half) || !isPrinted(float64(f.Need.DryMatter(4000)), tt.need, 1e-9) || f.Short() != tt.short {
			t.Errorf("%v: %v of %v %% DM, short %t", tt.of, f.Have.DryMatter(4000), f.Need.DryMatter(4000), f.Short())
		}
	}
	a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: diet.DryMatter(1.0).PerMcal(4000)})
	if f := findingOf(t, a, diet.Calcium, diet.Minimum); f.Short() || f.Margin != 0 {
		t.Errorf("at 4000 kcal/kg: %+v, want the minimum met exactly", f)
	}
}

// A figure that is met but for the last bits is met: 1.1 × 50 is above 55 in
// binary.
func TestLastBitsMakeNoShortfall(t *testing.T) {
	for _, intake := range []float64{70, 73, 79, 83, 61.7} {
		a := fedDog(t, diet.FEDIAF, intake)
		a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Protein: diet.PerMcal(45 / intake * 110)})
		if f := findingOf(t, a, diet.Protein, diet.Minimum); f.Margin != 0 || f.Short() {
			t.Errorf("at %v: %+v", intake, f)
		}
	}
}

// What a pencil makes of the fields of a finding is its need, whatever the
// nutrient and the intake, and never less than what is printed.
func TestAFindingCanBeRedoneFromItsFields(t *testing.T) {
	full := map[diet.Nutrient]diet.PerMcal{}
	for n := diet.Protein; n <= diet.Manganese; n++ {
		full[n] = 1
	}
	for _, intake := range []float64{50, 75, 76, 99, 100, 110, 130, 200} {
		for _, s := range []diet.Standard{diet.AAFCO, diet.FEDIAF, diet.NRC2006} {
			for _, a := range []diet.Adequacy{fedDog(t, s, intake), fedCat(t, s, intake)} {
				a.Profile = profileOf(t, full)
				list, err := a.Check()
				if err != nil || len(list) < 4 {
					t.Fatal(list, err)
				}
				for _, f := range list {
					want := float64(f.Printed)
					switch {
					case f.Ratio > 0:
						want = f.Ratio // of 1 g of phosphorus
					case f.Reference > 0:
						want *= max(1, f.Reference/f.Intake)
					}
					if far(float64(f.Need), want) {
						t.Errorf("%v %v at %v: need %v, and by its fields %v: %+v", s, f.Nutrient, intake, f.Need, want, f)
					}
				}
			}
		}
	}
}
