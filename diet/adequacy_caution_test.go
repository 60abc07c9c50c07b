package diet_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// saidOf returns the level and the text of each caution, a line each, without
// what was not judged.
func saidOf(a diet.Adequacy) string {
	var b strings.Builder
	for _, c := range a.Cautions() {
		if !strings.HasPrefix(c.Text, "not judged") {
			b.WriteString(c.Level.String() + " " + c.Text + "\n")
		}
	}
	return b.String()
}

func TestAdequacyCautions(t *testing.T) {
	const (
		asPrinted = "note AAFCO: in growth and reproduction the figures are compared as printed, whatever the intake\n"
		noIntake  = "AAFCO: the figures are tied to no intake and compared as printed, so that a shortfall of an animal that eats little is not seen"
	)
	kitten := catIn(t, diet.AAFCO, diet.Growth, 0)
	formless := fedCat(t, diet.FEDIAF, 100)
	formless.Form = 0
	nrcCat := fedCat(t, diet.NRC2006, 100)
	nrcCat.Form = 0
	for _, tt := range []struct {
		name    string
		a       diet.Adequacy
		profile map[diet.Nutrient]diet.PerMcal
		want    string
	}{
		{
			"short at the intake only", fedDog(t, diet.FEDIAF, 70),
			map[diet.Nutrient]diet.PerMcal{diet.Protein: 60, diet.Fat: 20},
			"warn FEDIAF: protein is short: 60 g/1000 kcal of at least 70.71 g/1000 kcal, which is the printed 45 g/1000 kcal at an intake of 70 " +
				"instead of 110 kcal/kg^0.75: choose a food made to be fed in smaller amounts\n",
		},
		{
			"short of what is printed", fedDog(t, diet.NRC2006, 140),
			map[diet.Nutrient]diet.PerMcal{diet.Protein: 20},
			"warn NRC 2006: protein is short: 20 g/1000 kcal of at least 25 g/1000 kcal\n",
		},
		{"nothing", fedDog(t, diet.FEDIAF, 70), map[diet.Nutrient]diet.PerMcal{diet.Protein: 71}, ""},
		{
			"AAFCO, enough eaten", fedDog(t, diet.AAFCO, 95),
			map[diet.Nutrient]diet.PerMcal{diet.Iron: 0.01, diet.Copper: 0.001},
			"warn AAFCO: copper is short: 1 mg/1000 kcal of at least 1.83 mg/1000 kcal\nnote " + noIntake + "\n",
		},
		{
			"AAFCO, a dog that eats little", fedDog(t, diet.AAFCO, 94), nil,
			"warn " + noIntake + "; this one gets 94 kcal/kg^0.75: check by FEDIAF or NRC 2006 too\n",
		},
		{
			"AAFCO, a cat that eats little", fedCat(t, diet.AAFCO, 74), nil,
			"warn " + noIntake + "; this one gets 74 kcal/kg^0.67: check by FEDIAF or NRC 2006 too\n",
		},
		{"AAFCO, a cat that eats enough", fedCat(t, diet.AAFCO, 76), nil, "note " + noIntake + "\n"},
		{
			"taurine of a cat", formless,
			map[diet.Nutrient]diet.PerMcal{diet.Taurine: 0.3},
			"refer FEDIAF: taurine is short: 0.3 g/1000 kcal of at least 0.5 g/1000 kcal\n" +
				"note FEDIAF: the form of the food is not given: the taurine of canned food is asked, which is more than that of dry food\n",
		},
		{
			"taurine by NRC, whatever the form", nrcCat,
			map[diet.Nutrient]diet.PerMcal{diet.Taurine: 0.05},
			"refer NRC 2006: taurine is short: 0.05 g/1000 kcal of at least 0.1 g/1000 kcal\n",
		},
		{
			"kitten", kitten,
			map[diet.Nutrient]diet.PerMcal{diet.Calcium: 2.232},
			"refer AAFCO: calcium is short: 2.23 g/1000 kcal of at least 2.5 g/1000 kcal\n" + asPrinted,
		},
		{
			"large puppy", growingDog(t, diet.AAFCO, 0, 40*units.Kilogram),
			map[diet.Nutrient]diet.PerMcal{diet.Calcium: 5, diet.Phosphorus: 2.4},
			"refer AAFCO: calcium is above the maximum: 5 g/1000 kcal of at most 4.5 g/1000 kcal\n" +
				"refer AAFCO: calcium is too much for the phosphorus: 5 g/1000 kcal of at most 4.8 g/1000 kcal, 2 × the phosphorus\n" +
				"refer AAFCO: phosphorus is short: 2.4 g/1000 kcal of at least 2.5 g/1000 kcal\n" + asPrinted,
		},
		{
			"puppy of unknown size and age", growingDog(t, diet.FEDIAF, 0, 0),
			map[diet.Nutrient]diet.PerMcal{diet.Calcium: 2.6, diet.Phosphorus: 2.7},
			"refer FEDIAF: calcium is too little for the phosphorus: 2.6 g/1000 kcal of at least 2.7 g/1000 kcal, 1 × the phosphorus\n" +
				"note FEDIAF: in growth and reproduction the figures are compared as printed, whatever the intake\n" +
				"note FEDIAF: the adult weight is not given: where calcium depends on it, the figures for large dogs are taken\n" +
				"note FEDIAF: the age is not given: the figures for early growth are taken\n",
		},
	} {
		tt.a.Profile = profileOf(t, tt.profile)
		if got := saidOf(tt.a); got != tt.want {
			t.Errorf("%s:\n%swant\n%s", tt.name, got, tt.want)
		}
	}
}

func TestWhatIsNotJudgedIsSaid(t *testing.T) {
	const others = "; nor are the vitamins and trace elements that no figure is held of"
	a := fedDog(t, diet.FEDIAF, 110)
	a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Protein: 60, diet.Calcium: 2, diet.LinoleicAcid: 3})
	want := advice.Caution{
		Level: advice.Note, Text: "not judged, since the profile doesn't give it: fat, phosphorus" + others, Source: advice.Source{Seen: advice.Ours},
	}
	if c := a.Cautions(); len(c) != 1 || c[0] != want {
		t.Errorf("%v, want %v", c, want)
	}
}

func TestCautionsOfAdequacyNameTheirSource(t *testing.T) {
	for name, a := range everyCheck(t) {
		a.Profile = allNutrients(t, 0.001)
		for _, c := range a.Cautions() {
			if c.Source == (advice.Source{}) || c.Level == 0 || c.Text == "" {
				t.Errorf("%s: %+v", name, c)
			}
		}
	}
}
