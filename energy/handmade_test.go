package energy_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// An Estimate is a plain struct: whatever is put into it, asking for its
// working and its cautions never panics.
func TestHandmadeEstimatesNeverPanic(t *testing.T) {
	for _, e := range []energy.Estimate{
		{Animal: energy.Animal{Species: 200, Weight: 4000}},
		{Stage: energy.Adult{Status: 9}, Method: energy.FactorOnRER},
		{Stage: energy.Adult{}, Animal: energy.Animal{Species: 99}, Method: 77},
		{Stage: energy.Adult{Animal: energy.Animal{Species: energy.Dog}}, Animal: energy.Animal{Species: energy.Dog}, Method: energy.NRC2006},
		{Stage: energy.Resting{}, Method: energy.RERLinear},
		{Stage: energy.Prescribed{}, Method: energy.Prescription, Daily: 1},
	} {
		if e.Explain() == "" {
			t.Errorf("%+v: no working", e)
		}
		e.Cautions()
	}
}

func TestStoredEstimateOfAnotherMethodIsRefused(t *testing.T) {
	e, err := energy.Adult{
		Animal: energy.Animal{Species: energy.Dog, Weight: 10 * units.Kilogram}, Status: energy.Neutered,
	}.Estimate()
	if err != nil {
		t.Fatal(err)
	}
	b, err := json.Marshal(e)
	if err != nil {
		t.Fatal(err)
	}
	for _, change := range [][2]string{
		{`"method":"factor_on_rer"`, `"method":"prescription"`},
		{`"method":"factor_on_rer"`, `"method":"per_kilogram"`},
		{`,"status":"neutered"`, ``},
		{`"weight":"10 kg","basis"`, `"weight":"1000 kg","basis"`},
		{`"reweigh":"4 wk"`, `"reweigh":""`},
	} {
		text := strings.Replace(string(b), change[0], change[1], 1)
		if text == string(b) {
			t.Fatalf("%s is not in %s", change[0], b)
		}
		got := e
		if err := json.Unmarshal([]byte(text), &got); err == nil {
			t.Errorf("%s: no error", change[1])
		}
		if got != e {
			t.Errorf("%s: the receiver was changed", change[1])
		}
	}
}

func TestIdealWeightOfAnAdultIsAnAdultWeight(t *testing.T) {
	_, err := energy.Adult{
		Animal: energy.Animal{Species: energy.Cat, Weight: 1500 * units.Gram, Ideal: 800 * units.Gram}, Status: energy.Neutered,
	}.Estimate()
	const want = `energy: ideal weight "800 g": want 1.5 kg or more for an adult cat`
	if err == nil || err.Error() != want {
		t.Errorf("error %v, want %s", err, want)
	}
}
