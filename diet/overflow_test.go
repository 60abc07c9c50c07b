package diet_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// 45 % of protein and 22 % of fat are those of the dry matter of a can: with its
// 78 % of water they are 145 %, whatever else is known. Up to 5 % more than the
// whole (ours) can be rounding and bounds.
func TestContentsOfDryMatterTypedAsFed(t *testing.T) {
	const text = "diet: analysis: protein 45 + fat 22 + moisture 78 = 145 %, more than the whole: NFE would be -45 %; " +
		"the figures beside the moisture are of dry matter, not as fed, " +
		"or guarantees are summed, which are bounds and not contents (ask for the typical analysis)"
	can := diet.Food{
		Name: "a can", Form: diet.Wet, Label: diet.Label{Energy: 1050},
		Analysis: diet.Analysis{Protein: 45, Fat: 22, Moisture: 78},
	}
	_, nfe := can.Analysis.NFE()
	_, profile := can.Analysis.Profile(1050)
	_, compare := diet.Compare(can)
	_, predict := can.Predict(diet.ModifiedAtwater, energy.Dog)
	for what, err := range map[string]error{"NFE": nfe, "Profile": profile, "Compare": compare, "Predict": predict} {
		want := text
		if what == "Compare" { // which of the foods it is
			want = "diet: foods[0]: " + strings.TrimPrefix(text, "diet: ")
		}
		var over *diet.AnalysisError
		if !errors.As(err, &over) || err.Error() != want || over.Sum != 145 || over.NFE != -45 {
			t.Errorf("%s: %v, want\n%s", what, err, want)
		}
	}
	// The label's energy is fed all the same, and it is said, also where it isn't
	// known for whom the food is and so by which equation to predict.
	can.Predictor = diet.Atwater
	if _, err := can.Density(); err != nil {
		t.Error(err)
	}
	want := "warn: label of a can: " + strings.TrimPrefix(text, "diet: ")
	if got := said(can.Cautions(energy.Animal{Species: energy.Dog}), "more than the whole"); len(got) != 1 || !strings.HasPrefix(got[0].String(), want) {
		t.Errorf("%v, want\n%s", got, want)
	}
}

// The bound from both sides, of three figures: 105 % and 105.5 %.
func TestMostOfAnAnalysisInParts(t *testing.T) {
	for _, test := range []struct {
		protein units.Percent
		ok      bool
	}{{12, true}, {12.5, false}} {
		f := diet.Food{Label: diet.Label{Energy: 1050}, Analysis: diet.Analysis{Protein: test.protein, Fat: 15, Moisture: 78}}
		_, compare := diet.Compare(f)
		_, profile := f.Analysis.Profile(1050)
		if (compare == nil) != test.ok || (profile == nil) != test.ok {
			t.Errorf("protein %v: %v, %v", test.protein, compare, profile)
		}
		if got := said(f.Cautions(energy.Animal{}), "more than the whole"); (len(got) == 0) != test.ok {
			t.Errorf("protein %v: %v", test.protein, got)
		}
	}
}

// A fault of a food is told with its place among those that are compared.
func TestComparedFoodsAreToldApart(t *testing.T) {
	good := diet.Food{Name: "Good", Label: diet.Label{Energy: 3560}}
	_, err := diet.Compare(good, diet.Food{Name: "Bad", Label: diet.Label{Energy: -3, HalfStep: -1, Serving: diet.Serving{Mass: -1}}})
	const want = `diet: foods[1].label.energy "-3 kcal/kg": want above 0 kcal/kg and at most 1e9, or none if not stated; ` +
		`diet: foods[1].label.serving.mass "-1 g": want above 0 g and at most 1e9, or none if not stated`
	if err == nil || err.Error() != want {
		t.Errorf("error\n%v, want\n%s", err, want)
	}
}

// A unit that is called by a mass says how many grams it is.
func TestServingCalledByAMassWithoutGrams(t *testing.T) {
	for name, want := range map[string]string{
		"100 g": `diet: label "356 kcal/100 g": want kcal/kg as fed, or the grams of one 100 g, beside it (100 g means 100 g: give that as its mass)`,
		"oz":    `diet: label "356 kcal/oz": want kcal/kg as fed, or the grams of one oz, beside it (oz means 28.3 g: give that as its mass)`,
		"g":     `diet: label "356 kcal/g": want kcal/kg as fed, or the grams of one g, beside it (g means 1 g: give that as its mass)`,
		"cup":   `diet: label "356 kcal/cup": want kcal/kg as fed, or the grams of one cup, beside it (ask the manufacturer for kcal/kg or for grams per cup, or weigh a level cup several times and take the mean)`,
	} {
		_, err := diet.Food{Label: diet.Label{Serving: diet.Serving{Name: name, Energy: 356}}}.Density()
		if err == nil || err.Error() != want {
			t.Errorf("%s: %v, want\n%s", name, err, want)
		}
	}
}

// Fat and water alone come to 118 %: there is nothing to predict from, and it is
// said all the same.
func TestTooMuchWithoutProtein(t *testing.T) {
	f := diet.Food{Form: diet.Wet, Label: diet.Label{Energy: 1050}, Analysis: diet.Analysis{Fat: 40, Moisture: 78}}
	if got := said(f.Cautions(energy.Animal{}), "fat 40 + moisture 78 = 118 %, more than the whole"); len(got) != 1 {
		t.Errorf("%v", f.Cautions(energy.Animal{}))
	}
}

// An equation is offered where there is an analysis for one: of some protein and
// some fat.
func TestEquationIsOfferedWhereItCanBeUsed(t *testing.T) {
	for _, test := range []struct {
		protein, fat units.Percent
		want         bool
	}{{0, 0, false}, {26, 0, false}, {0, 15, false}, {26, 0.5, true}, {0.5, 15, true}} {
		_, err := diet.Food{Analysis: diet.Analysis{Protein: test.protein, Fat: test.fat}}.Density()
		if err == nil || strings.Contains(err.Error(), "Predictor") != test.want {
			t.Errorf("protein %v and fat %v: %v", test.protein, test.fat, err)
		}
	}
}

// Of a dry food without its moisture the most that is usual is 6500 kcal/kg (ours).
func TestMostOfADryFood(t *testing.T) {
	f := diet.Food{Name: "dry", Form: diet.Dry, Label: diet.Label{Energy: 6510}}
	const want = "label of dry: 6510 kcal/kg is more than foods hold, about 6500 kcal/kg at most, unless it is a fat or an oil: is it as fed?"
	if got := said(f.Cautions(energy.Animal{}), "at most"); len(got) != 1 || got[0].Text != want {
		t.Errorf("%v, want %s", got, want)
	}
}
