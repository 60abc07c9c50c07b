package diet_test

import (
	"encoding/json"
	"testing"

	"example.org/bowlgram/diet"
)

func TestDensityRefusesAnImpossibleAnalysisAndClaim(t *testing.T) {
	_, err := diet.Food{Label: diet.Label{Energy: 3500, Claim: 3}, Analysis: diet.Analysis{Protein: 250, Moisture: 0.09}}.Density()
	const want = `diet: label.claim "out of range": want calculated or fed; ` +
		`diet: analysis.protein "250 %": want above 0 % and at most 100 %, or none if not known; ` +
		`diet: analysis.moisture "0.09 %": want 1 % or more and below 100 %, or none if not known`
	if errorText(err) != want {
		t.Errorf("%v\nwant %s", err, want)
	}
	// Averages may come to a little more than the whole: that is no fault of the label.
	if _, err := (diet.Food{Label: diet.Label{Energy: 900}, Analysis: diet.Analysis{Protein: 10.5, Fat: 5.5, Fibre: 0.5, Moisture: 82, Ash: 2.2}}).Density(); err != nil {
		t.Error(err)
	}
}

func TestClaimIsAMemberOfTheLabel(t *testing.T) {
	const text = `{"energy":"3560 kcal/kg","claim":"calculated"}`
	var l diet.Label
	if err := json.Unmarshal([]byte(text), &l); l.Claim != diet.Calculated || err != nil {
		t.Errorf("%+v, %v", l, err)
	}
	if got, err := json.Marshal(l); string(got) != text || err != nil {
		t.Errorf("%s, %v", got, err)
	}
}
