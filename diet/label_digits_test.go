package diet_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// What a label may say, up to its ends (ours): the last claim, figures of 1e9, a
// pack that holds something.
func TestLabelsAtTheirEnds(t *testing.T) {
	const figure = ` and at most 1e9, or none if not stated`
	for _, tt := range []struct {
		label diet.Label
		want  string
	}{
		{diet.Label{Energy: 3500, Claim: diet.Fed}, ""},
		{diet.Label{Energy: 3500, Claim: diet.Fed + 1}, `diet: label.claim "out of range": want calculated or fed`},
		{diet.Label{Energy: 3500, Serving: diet.Serving{EnergyHalfStep: 1e9}}, ""},
		{diet.Label{Energy: 3500, Serving: diet.Serving{EnergyHalfStep: 1.1e9}}, `diet: label.serving.energy_half_step "1100000000 kcal": want above 0 kcal`},
		{diet.Label{Energy: 3500, Serving: diet.Serving{Name: "silo", Mass: 1e9}}, ""},
		{diet.Label{Energy: 3500, Serving: diet.Serving{Name: "silo", Mass: 1e9 + 1}}, `diet: label.serving.mass "1000000001 g": want above 0 g` + figure},
		{diet.Label{Energy: 3500, Packs: diet.Packs{{Net: 1e9, Price: usd(1)}}}, ""},
		{diet.Label{Energy: 3500, Packs: diet.Packs{{Net: 1e9 + 1}}}, `diet: label.packs[0].net "1000000001 g": want above 0 g and at most 1e9`},
		{diet.Label{Energy: 3500, Packs: diet.Packs{{Price: usd(1)}}}, `diet: label.packs[0].net "0 g": want above 0 g and at most 1e9`},
	} {
		if _, err := (diet.Food{Label: tt.label}).Density(); errorText(err) != tt.want {
			t.Errorf("%+v: %v\nwant %s", tt.label, err, tt.want)
		}
	}
}

// A label whose figures are 10 % apart (ours) is not refused for that, and the
// error of one that is refused for more says to weigh.
func TestFiguresATenthApart(t *testing.T) {
	for gap, want := range map[float64]bool{0.10: false, 0.101: true} {
		e := diet.LabelError{Serving: "cup", Stated: 3500, PerServing: 400, ServingMass: 100, Implied: 4000, Gap: gap}
		text := e.Error()
		if strings.Contains(text, "disagree") != want || strings.Contains(text, "weigh one cup") != want {
			t.Errorf("%v: %s", gap, text)
		}
	}
}

// What a serving makes is said however little it weighs: 5 kcal in half a gram are
// 10000 kcal/kg.
func TestWhatAHalfGramImplies(t *testing.T) {
	f := diet.Food{Label: diet.Label{Energy: 3500, Serving: diet.Serving{Name: "drop", Energy: 5, Mass: 0.5, EnergyHalfStep: 0.01, MassHalfStep: 0.01}}}
	if _, err := f.Density(); !strings.Contains(errorText(err), "the drop makes 10000 kcal/kg, 185.7 % apart") {
		t.Error(err)
	}
	f.Label.Serving.Energy = 0.5 // 1000 kcal/kg
	if _, err := f.Density(); !strings.Contains(errorText(err), "the drop makes 1000 kcal/kg, 250 % apart") {
		t.Error(err)
	}
}

// A unit of one gram is held against the label like any other: 36 kcal/g is no
// 3.5. One that has an energy alone contradicts nothing.
func TestAUnitOfAGram(t *testing.T) {
	for unit, want := range map[diet.Serving]int{
		{Name: "piece", Energy: 36, Mass: 1}:                        1,
		{Name: "piece", Energy: 3.5, Mass: 1, EnergyHalfStep: 0.05}: 0,
		{Name: "piece", Energy: 36}:                                 0,
	} {
		f := diet.Food{Label: diet.Label{Energy: 3500, Others: diet.Servings{unit}}}
		if got := said(f.Cautions(energy.Animal{Species: energy.Dog}), "the figures of one piece don't fit 3500 kcal/kg"); len(got) != want {
			t.Errorf("%+v: %v", unit, got)
		}
	}
}

// The energy of an oil that is predicted is said to be, though there is truly no
// protein in it.
func TestThePredictionOfAnOilIsSaid(t *testing.T) {
	oil := diet.Food{
		Name: "oil", Form: diet.FatOrOil, Predictor: diet.Atwater, For: diet.Purpose{Species: diet.Dogs},
		Analysis: diet.Analysis{Kind: diet.Typical, Fat: 100, Defaults: diet.FatOrOil},
	}
	for range 2 {
		if got := said(oil.Cautions(energy.Animal{Species: energy.Dog}), "the energy is predicted (atwater), not stated"); len(got) != 1 {
			t.Errorf("%+v: %v", oil.Analysis, got)
		}
		oil.Analysis = diet.Analysis{Kind: diet.Typical, Protein: 90, Moisture: 5, Ash: 5, None: diet.CrudeFat | diet.CrudeFibre} // gelatine
	}
}

// A serving called by a mass has it to half of its last digit, whatever the case of
// the name.
func TestServingsNamedByAMass(t *testing.T) {
	for _, tt := range []struct {
		name string
		mass units.Mass
		want bool
	}{
		{"100 g", 100.5, true},
		{"100 g", 100.6, false},
		{"100 g", 99.5, true},
		{"100 g", 99.4, false},
		{"9 g", 9, true},
		{"9 g", 5, false},
		{"GRAM", 1, true},
		{"GRAM", 5, false},
		{"OZ", 28, true},
		{"OZ", 5, false},
		{"0 g", 5, true},  // no mass: any name
		{"-5 g", 5, true}, // likewise
	} {
		f := diet.Food{Label: diet.Label{Energy: 3500, Serving: diet.Serving{Name: tt.name, Mass: tt.mass}}}
		if _, err := f.Density(); (err == nil) != tt.want {
			t.Errorf("%s of %v: %v", tt.name, tt.mass, err)
		}
	}
}

// A volume of a liquid weighs 0.95 to 1.2 g/mL (ours), to the half-step of its
// mass.
func TestALiquidInAVolume(t *testing.T) {
	for _, tt := range []struct {
		mass, half units.Mass
		want       bool
	}{
		{120.25, 0.25, true},
		{120.26, 0.25, false},
		{94.75, 0.25, true},
		{94.74, 0.25, false},
		{120, 0, true},
		{121, 0, false},
		{95, 0, true},
		{94, 0, false},
	} {
		f := diet.Food{Form: diet.Liquid, Label: diet.Label{Energy: 1000, Serving: diet.Serving{Name: "100 mL", Mass: tt.mass, MassHalfStep: tt.half}}}
		if _, err := f.PerVolume(); (err == nil) != tt.want {
			t.Errorf("%v ± %v: %v", tt.mass, tt.half, err)
		}
	}
	nothing := diet.Food{Label: diet.Label{Energy: 1000, Serving: diet.Serving{Name: "0 mL", Mass: 5}}}
	if v, err := nothing.PerVolume(); v != 0 || err == nil {
		t.Errorf("0 mL: %v, %v", v, err)
	}
}
