package diet_test

import (
	"reflect"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func catIn(t testing.TB, s diet.Standard, stage diet.Stages, form diet.Form) diet.Adequacy {
	t.Helper()
	return diet.Adequacy{Profile: allNutrients(t, 1), Form: form, Standard: s, Stage: stage, Animal: energy.Animal{Species: energy.Cat}}
}

// FEDIAF Table III-4, g/100 g of dry matter: growth / reproduction in one cell.
func TestKittensAndQueens(t *testing.T) {
	for _, tt := range []struct {
		of             diet.Nutrient
		growth, queens float64
	}{
		{diet.Protein, 28.00, 30.00},
		{diet.Arginine, 1.07, 1.11},
		{diet.Lysine, 0.85, 0.85},
		{diet.MethionineCystine, 0.88, 0.88},
		{diet.Calcium, 1.00, 1.00}, // from memory
	} {
		for stage, want := range map[diet.Stages]float64{diet.Growth: tt.growth, diet.Reproduction: tt.queens} {
			f := findingOf(t, catIn(t, diet.FEDIAF, stage, diet.Wet), tt.of, diet.Minimum)
			if !isPrinted(float64(f.Need.DryMatter(4000)), want, 1e-9) || f.Reference != 0 {
				t.Errorf("%v, %v: %v %% DM at %v, printed %v", stage, tt.of, f.Need.DryMatter(4000), f.Reference, want)
			}
		}
	}
}

// Canned food must hold more taurine than dry: in g/100 g of dry matter 0.20
// and 0.10 (AAFCO, as copied), and 0.25 and 0.10 for kittens (FEDIAF). Of
// another form, or one that isn't given, the larger is asked.
func TestTaurineByForm(t *testing.T) {
	for form, canned := range map[diet.Form]bool{
		diet.Dry: false, diet.Wet: true, 0: true, diet.SemiMoist: true, diet.Liquid: true, diet.Powder: true, diet.FatOrOil: true,
	} {
		for s, want := range map[diet.Standard]float64{diet.AAFCO: 0.20, diet.FEDIAF: 0.25} {
			if !canned {
				want = 0.10
			}
			f := findingOf(t, catIn(t, s, diet.Growth, form), diet.Taurine, diet.Minimum)
			if !isPrinted(float64(f.Need.DryMatter(4000)), want, 1e-9) {
				t.Errorf("%v, %v: %v %% DM, want %v", s, form, f.Need.DryMatter(4000), want)
			}
		}
	}
}

// everyCheck is one check for each set of figures there is.
func everyCheck(t testing.TB) map[string]diet.Adequacy {
	t.Helper()
	late := growingDog(t, diet.FEDIAF, 5*energy.Month, 0)
	bitch := growingDog(t, diet.FEDIAF, 0, 0)
	bitch.Stage = diet.Reproduction
	return map[string]diet.Adequacy{
		"aafco dog": fedDog(t, diet.AAFCO, 100), "fediaf dog": fedDog(t, diet.FEDIAF, 100), "nrc dog": fedDog(t, diet.NRC2006, 100),
		"aafco cat": fedCat(t, diet.AAFCO, 70), "fediaf cat": fedCat(t, diet.FEDIAF, 70), "nrc cat": fedCat(t, diet.NRC2006, 70),
		"aafco puppy": growingDog(t, diet.AAFCO, 0, 0), "fediaf puppy": growingDog(t, diet.FEDIAF, 0, 0), "fediaf late": late,
		"aafco kitten": catIn(t, diet.AAFCO, diet.Growth, diet.Dry), "fediaf kitten": catIn(t, diet.FEDIAF, diet.Growth, diet.Dry),
		"fediaf bitch": bitch, "aafco queen": catIn(t, diet.AAFCO, diet.Reproduction, 0), "fediaf queen": catIn(t, diet.FEDIAF, diet.Reproduction, 0),
	}
}

// How many figures each has, counted from the tables: a lost row fails.
var findingCounts = map[string]int{
	"aafco dog": 15, "fediaf dog": 7, "nrc dog": 4, "aafco cat": 7, "fediaf cat": 15, "nrc cat": 5,
	"aafco puppy": 13, "fediaf puppy": 7, "fediaf late": 7, "aafco kitten": 8, "fediaf kitten": 9,
	"fediaf bitch": 7, "aafco queen": 8, "fediaf queen": 9,
}

func TestFindingsAreInOrderAndSourced(t *testing.T) {
	for name, a := range everyCheck(t) {
		list, err := a.Check()
		if len(list) != findingCounts[name] || err != nil {
			t.Errorf("%s: %d findings, %v; want %d", name, len(list), err, findingCounts[name])
		}
		for i, f := range list {
			if i > 0 && (f.Nutrient < list[i-1].Nutrient || f.Nutrient == list[i-1].Nutrient && f.Rule <= list[i-1].Rule) {
				t.Errorf("%s: %v %v stands after %v %v", name, f.Nutrient, f.Rule, list[i-1].Nutrient, list[i-1].Rule)
			}
			if f.Source.Work == "" || f.Source.Where == "" || f.Source.Seen < advice.Primary || f.Source.Seen > advice.Memory {
				t.Errorf("%s: %v %v has the source %+v", name, f.Nutrient, f.Rule, f.Source)
			}
			if !(f.Need > 0) || f.Have != 1 || f.Rule == 0 || (f.Ratio == 0) == (f.Printed == 0) {
				t.Errorf("%s: %+v", name, f)
			}
		}
	}
}

func TestNothingGivenIsNotJudged(t *testing.T) {
	for name, a := range everyCheck(t) {
		a.Profile = diet.Profile{}
		if list, err := a.Check(); len(list) != 0 || err != nil {
			t.Errorf("%s: %v, %v", name, list, err)
		}
		if c := a.Cautions(); len(c) == 0 {
			t.Errorf("%s: nothing is said", name)
		}
	}
}

func TestAdequacyIsComparable(t *testing.T) {
	for _, v := range []any{diet.Adequacy{}, diet.Finding{}, diet.Profile{}} {
		if !reflect.ValueOf(v).Comparable() {
			t.Errorf("%T is not", v)
		}
	}
}
