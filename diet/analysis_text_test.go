package diet_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestTextOfAnalysisWords(t *testing.T) {
	checkText(t, diet.Guaranteed, "guaranteed", diet.ParseAnalysisKind)
	checkText(t, diet.Typical, "typical", diet.ParseAnalysisKind)
	checkText(t, diet.ModifiedAtwater, "modified_atwater", diet.ParsePredictor)
	checkText(t, diet.Atwater, "atwater", diet.ParsePredictor)
	checkText(t, diet.FourStep, "four_step", diet.ParsePredictor)
	for v, want := range map[diet.Constituents]string{
		diet.CrudeProtein: "protein", diet.CrudeFat: "fat", diet.CrudeFibre: "fibre", diet.Moisture: "moisture", diet.CrudeAsh: "ash",
		diet.CrudeFibre | diet.CrudeAsh: "fibre ash",
		diet.CrudeProtein | diet.CrudeFat | diet.CrudeFibre | diet.Moisture | diet.CrudeAsh: "protein fat fibre moisture ash",
	} {
		checkText(t, v, want, diet.ParseConstituents)
	}
	for _, tt := range []struct {
		err  func() error
		want string
	}{
		{func() error { _, err := diet.ParseAnalysisKind("average"); return err }, `diet: kind "average": want guaranteed or typical`},
		{func() error { _, err := diet.ParsePredictor("nrc"); return err }, `diet: predictor "nrc": want modified_atwater, atwater or four_step`},
		{func() error { _, err := diet.ParseConstituents("carbs"); return err }, `diet: constituents "carbs": want protein, fat, fibre, moisture or ash`},
		{func() error { _, err := diet.Constituents(32).MarshalText(); return err }, `diet: constituents "unknown bits": want protein, fat, fibre, moisture or ash`},
		{func() error { _, err := diet.Predictor(4).MarshalText(); return err }, `diet: predictor "out of range": want modified_atwater, atwater or four_step`},
		{func() error { _, err := diet.AnalysisKind(3).MarshalText(); return err }, `diet: kind "out of range": want guaranteed or typical`},
	} {
		if err := tt.err(); errorText(err) != tt.want {
			t.Errorf("%v\nwant %s", err, tt.want)
		}
	}
}

func TestTextOfBases(t *testing.T) {
	checkBasis(t, diet.DryMatter(36), "36 % DM", diet.ParseDryMatter, "36% dm", "36 % dry matter", "36 percent DM")
	checkBasis(t, diet.DryEnergy(4480), "4480 kcal/kg DM", diet.ParseDryEnergy, "4.48 kcal/g DM", "448 kcal/100 g dry matter")
	checkBasis(t, diet.PerMcal(62.5), "62.5 g/1000 kcal", diet.ParsePerMcal, "62.5 g/Mcal", "62500 mg/1000 kcal", " 62.5g/1000kcal ")
	checkBasis(t, diet.PerMJ(14.94), "14.94 g/MJ", diet.ParsePerMJ, "14940 mg/MJ")
	checkBasis(t, diet.EnergyShare(24.75), "24.75 % ME", diet.ParseEnergyShare, "24.75% of energy")
	for _, tt := range []struct {
		err  func() error
		want string
	}{
		// A figure on another basis is no figure of this one.
		{func() error { _, err := diet.ParseDryMatter("36 %"); return err }, `diet: content of dry matter "36 %": want percent and DM, as in "36 % DM"`},
		{func() error { _, err := diet.ParseDryEnergy("4480 kcal/kg"); return err }, `diet: energy of dry matter "4480 kcal/kg": want an energy density and DM, as in "4480 kcal/kg DM"`},
		{func() error { _, err := diet.ParsePerMcal("6.25 g/100 kcal"); return err }, `diet: content per 1000 kcal "6.25 g/100 kcal": want a mass for 1000 kcal, as in "66.8 g/1000 kcal"`},
		{func() error { _, err := diet.ParsePerMJ("62.5 g/1000 kcal"); return err }, `diet: content per MJ "62.5 g/1000 kcal": want a mass for a megajoule, as in "14.94 g/MJ"`},
		{func() error { _, err := diet.ParseEnergyShare("24.75 %"); return err }, `diet: share of energy "24.75 %": want percent and ME, as in "24.75 % ME"`},
		{func() error { _, err := diet.ParseDryMatter("-1 % DM"); return err }, `diet: content of dry matter "-1 % DM": want 0 or more`},
		{func() error { _, err := diet.ParseDryEnergy("-1 kcal/kg DM"); return err }, `diet: energy of dry matter "-1 kcal/kg DM": want 0 or more`},
		{func() error { _, err := diet.ParsePerMcal("-1 g/1000 kcal"); return err }, `diet: content per 1000 kcal "-1 g/1000 kcal": want 0 or more`},
		{func() error { _, err := diet.ParsePerMJ("-0.5 g/MJ"); return err }, `diet: content per MJ "-0.5 g/MJ": want 0 or more`},
		{func() error { _, err := diet.ParseEnergyShare("-1 % ME"); return err }, `diet: share of energy "-1 % ME": want 0 or more`},
		{func() error { _, err := diet.ParseDryMatter(""); return err }, `diet: content of dry matter "": want percent and DM, as in "36 % DM"`},
		{func() error { _, err := diet.ParseDryMatter("36 DM"); return err }, `units: percentage "36 ": no unit: want %`},
		{func() error { _, err := diet.DryMatter(math.NaN()).MarshalText(); return err }, `units: percentage "NaN %": want a finite number`},
		{func() error { _, err := diet.PerMcal(math.Inf(1)).MarshalText(); return err }, `units: mass "+Inf g": want a finite number`},
	} {
		if err := tt.err(); errorText(err) != tt.want {
			t.Errorf("%v\nwant %s", err, tt.want)
		}
	}
}

// checkBasis checks that v is written as want and read from it and the others.
func checkBasis[T text](t *testing.T, v T, want string, parse func(string) (T, error), others ...string) {
	t.Helper()
	b, err := v.MarshalText()
	if v.String() != want || string(b) != want || err != nil {
		t.Errorf("%q, %q, %v; want %q", v.String(), b, err, want)
	}
	for _, s := range append(others, want) {
		if got, err := parse(s); got != v || err != nil {
			t.Errorf("%q: %v, %v", s, got, err)
		}
	}
	var back T
	if err := json.Unmarshal([]byte(`"`+want+`"`), &back); back != v || err != nil {
		t.Errorf("%s: %v, %v", want, back, err)
	}
	if err := json.Unmarshal([]byte(`"nonsense"`), &back); back != v || err == nil {
		t.Errorf("nonsense: %v, %v", back, err)
	}
	if err := json.Unmarshal([]byte(`36`), &back); back != v || err == nil {
		t.Errorf("a bare number: %v, %v", back, err)
	}
}

// fullAnalysis has every field set, though not to what could be computed with.
var fullAnalysis = diet.Analysis{
	Kind: diet.Guaranteed, Protein: 26, Fat: 14, Fibre: 4, Moisture: 10, Ash: 7, None: diet.CrudeAsh, Defaults: diet.Dry,
}

const fullAnalysisText = `{"kind":"guaranteed","protein":"26 %","fat":"14 %","fibre":"4 %","moisture":"10 %","ash":"7 %","none":"ash","defaults":"dry"}`

func TestAnalysisJSON(t *testing.T) {
	for text, a := range map[string]diet.Analysis{
		fullAnalysisText: fullAnalysis, `{}`: {}, `{"moisture":"9 %"}`: {Moisture: 9},
	} {
		got, err := json.Marshal(a)
		if string(got) != text || err != nil {
			t.Errorf("%s, %v; want %s", got, err, text)
		}
		var back diet.Analysis
		if err := json.Unmarshal([]byte(text), &back); back != a || err != nil {
			t.Errorf("%s: %+v, %v", text, back, err)
		}
	}
	var f diet.Food
	const asked = `{"analysis":` + fullAnalysisText + `,"predictor":"four_step"}`
	if err := json.Unmarshal([]byte(asked), &f); f.Predictor != diet.FourStep || f.Analysis != fullAnalysis || err != nil {
		t.Errorf("%+v, %v", f, err)
	}
	if got, err := json.Marshal(f); string(got) != asked || err != nil {
		t.Errorf("%s, %v; want %s", got, err, asked)
	}
	for text, want := range map[string]string{
		`{"protein":26}`:            `diet: analysis.protein "number": want text with a unit, as in "100 %"`,
		`{"protein":"26"}`:          `diet: analysis: units: percentage "26": no unit: want %`,
		`{"protein":"26 % DM"}`:     `diet: analysis: units: percentage "26 % DM": unknown unit "% DM": want %`,
		`{"kind":"average"}`:        `diet: kind "average": want guaranteed or typical`,
		`{"none":["ash"]}`:          `diet: analysis.none "array": want text: protein, fat, fibre, moisture or ash`,
		`{"defaults":"kibble"}`:     `diet: form "kibble": want dry, semi_moist, wet, liquid, powder or fat_or_oil`,
		`{"ash":"7 %","ash":"8 %"}`: `diet: analysis: member "ash" stands twice`,
		`{"Ash":"7 %"}`:             `diet: analysis: member "Ash": want a name in lower case`,
		`[]`:                        `diet: analysis "array": want an object`,
	} {
		a := fullAnalysis
		if err := json.Unmarshal([]byte(text), &a); errorText(err) != want || a != fullAnalysis {
			t.Errorf("%s: %+v, %v\nwant %s", text, a, err, want)
		}
	}
	a := fullAnalysis
	if err := json.Unmarshal([]byte(`{"fibre":"4 %","nfe":"42 %"}`), &a); err == nil || a != fullAnalysis {
		t.Errorf("an unknown member is taken: %+v, %v", a, err)
	}
	if err := json.Unmarshal([]byte(`null`), &a); err != nil || a != fullAnalysis {
		t.Errorf("null: %+v, %v", a, err)
	}
}

func TestPredictionJSON(t *testing.T) {
	p, err := diet.Analysis{Protein: 20, Fat: 10, Fibre: 2, Moisture: 20, Ash: 6}.Predict(diet.FourStep, energy.Dog)
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(p)
	if err != nil {
		t.Fatal(err)
	}
	var back diet.Prediction
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(p, back); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	// 3.5 × 20 + 8.5 × 10 + 3.5 × 42 = 302 kcal/100 g, and 302 / 0.8 = 377.5.
	ma, err := diet.Analysis{Kind: diet.Typical, Protein: 20, Fat: 10, Fibre: 2, Moisture: 20, Ash: 6}.Predict(diet.ModifiedAtwater, 0)
	if err != nil {
		t.Fatal(err)
	}
	const want = `{"energy":"3020 kcal/kg","origin":"predicted","predictor":"modified_atwater",` +
		`"analysis":{"kind":"typical","protein":"20 %","fat":"10 %","fibre":"2 %","moisture":"20 %","ash":"6 %"},"nfe":"42 %","dry_energy":"3775 kcal/kg DM"}`
	if got, err := json.Marshal(ma); string(got) != want || err != nil {
		t.Errorf("%s, %v\nwant %s", got, err, want)
	}
}

// A margin below zero is a content too: what is missing.
func TestAShortfallGoesThroughJSON(t *testing.T) {
	f := findingOf(t, fedDog(t, diet.FEDIAF, 100), diet.Protein, diet.Minimum)
	text, err := json.Marshal(f)
	var back diet.Finding
	if err != nil || f.Margin >= 0 || json.Unmarshal(text, &back) != nil || back != f {
		t.Errorf("%s was read back as %+v, %v", text, back, err)
	}
	for _, s := range []string{"0 g/1000 kcal", "-0 g/1000 kcal"} {
		if p, err := diet.ParsePerMcal(s); p != 0 || err != nil {
			t.Errorf("%s: %v, %v", s, p, err)
		}
	}
	for s, want := range map[string]diet.Analysis{"fat 100 %": {Fat: 100}, "fat 0 %": {None: diet.CrudeFat}} {
		if a, err := diet.ParseAnalysis(s); a != want || err != nil {
			t.Errorf("%s: %+v, %v", s, a, err)
		}
	}
}

// An ending alone is a figure without its number.
func TestAnEndingAlone(t *testing.T) {
	var parse *units.ParseError
	if _, err := diet.ParseDryMatter("DM"); !errors.As(err, &parse) {
		t.Errorf("%v", err)
	}
}
