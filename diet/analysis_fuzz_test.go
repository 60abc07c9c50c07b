package diet_test

import (
	"encoding/json"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
)

// FuzzAnalysisJSON reads any text as an analysis: no panic, a receiver left
// alone on error, what was read is written and read back the same, and what is
// predicted from it is a figure that its dry matter can hold.
func FuzzAnalysisJSON(f *testing.F) {
	for _, s := range []string{
		fullAnalysisText, `{}`, `null`, `{"moisture":"9 %"}`,
		`{"protein":"25 %","fat":"14 %","fibre":"3 %","moisture":"9 %","ash":"7 %"}`,
		`{"protein":"40 %","fat":"30 %","fibre":"3 %","moisture":"78 %","ash":"8 %"}`,
		`{"fat":"99.9 %","defaults":"fat_or_oil"}`, `{"protein":"0.25 %","none":"fat fibre ash moisture"}`,
		`{"protein":25}`, `{"kind":"typical"`, `{} {}`, `[]`, `{"ash":"-1 %"}`, `{"fibre":"1e300 %"}`,
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		a := fullAnalysis
		if err := a.UnmarshalJSON(data); err != nil {
			if a != fullAnalysis {
				t.Fatalf("%q: error %v, but the receiver became %+v", data, err, a)
			}
			return
		}
		text, err := json.Marshal(a)
		if err != nil {
			t.Fatalf("%q was read as %+v, but not written: %v", data, a, err)
		}
		var back diet.Analysis
		if err := json.Unmarshal(text, &back); err != nil || back != a {
			t.Fatalf("%q: %s was read back as %+v, %v", data, text, back, err)
		}
		for _, by := range []diet.Predictor{diet.ModifiedAtwater, diet.Atwater, diet.FourStep} {
			for _, s := range []energy.Species{energy.Dog, energy.Cat} {
				p, err := a.Predict(by, s)
				if err != nil {
					if p != (diet.Prediction{}) || err.Error() == "" {
						t.Fatalf("%s: %+v beside %v", text, p, err)
					}
					continue
				}
				if !(p.Energy > 0 && p.DryEnergy <= 9400) || math.IsNaN(float64(p.NFE)) || p.Explain() == "" {
					t.Fatalf("%s: %+v", text, p)
				}
			}
		}
		_, _ = a.DryMatter(1)
		_, _ = a.EnergyShares()
	})
}

// FuzzBases reads any text as each basis, and writes it back.
func FuzzBases(f *testing.F) {
	for _, s := range []string{"36 % DM", "4480 kcal/kg DM", "62.5 g/1000 kcal", "14.94 g/MJ", "24.75 % ME", "36 %", "1e308 kg/Mcal", "", "DM", "/MJ"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		again(t, s, diet.ParseDryMatter)
		again(t, s, diet.ParseDryEnergy)
		again(t, s, diet.ParsePerMcal)
		again(t, s, diet.ParsePerMJ)
		again(t, s, diet.ParseEnergyShare)
		again(t, s, diet.ParseConstituents)
		again(t, s, diet.ParseAnalysisKind)
		again(t, s, diet.ParsePredictor)
	})
}
