package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Eight foods make a mix, and nine don't: 8 × 10 g.
func TestAMixOfEightFoods(t *testing.T) {
	var m diet.Mix
	for range 8 {
		m.Parts = append(m.Parts, diet.Part{Food: milkPowder(), Amount: diet.Fixed(10)})
	}
	if f, err := m.Food(); err != nil || differ(float64(f.Label.Serving.Mass), 80) {
		t.Errorf("%+v, %v", f.Label.Serving, err)
	}
}

// The last form there is, and the number behind it.
func TestFormsOfAMix(t *testing.T) {
	m := diet.Mix{Form: diet.FatOrOil, Parts: []diet.Part{{Food: diet.Food{Name: "oil", Label: diet.Label{Energy: 8800}}, Amount: diet.Fixed(10)}}}
	if f, err := m.Food(); err != nil || f.Form != diet.FatOrOil {
		t.Errorf("%v, %v", f.Form, err)
	}
	m.Form++
	const want = `diet: mix.form "out of range": want a form of food, or none`
	if _, err := m.Food(); errorText(err) != want {
		t.Errorf("%v\nwant %s", err, want)
	}
}

// Volumes are taken up to 1e9 mL (ours), though what 30 g of powder and so much
// water weigh is no serving, and little of it food.
func TestVolumesOfAMixAtTheirEnds(t *testing.T) {
	const mass = `diet: label.serving.mass "1000000030 g": want above 0 g and at most 1e9, or none if not stated`
	for _, tt := range []struct {
		water, made units.Volume
		want        string
	}{
		{1e9, 0, mass},
		{1e9 + 1, 0, `diet: mix.water "1000000001 mL": want above 0 mL and at most 1e9, or none`},
		{125, 1e9, `diet: mix.made "1000000000 mL": want 129.2 mL to 163.2 mL for 155 g (it would weigh 0.000000155 g/mL: measure it again in a jug)`},
		{125, 1e9 + 1, `diet: mix.made "1000000001 mL": want above 0 mL and at most 1e9, or none if not known`},
	} {
		m := bottle()
		m.Water, m.Made = tt.water, tt.made
		if _, err := m.Food(); errorText(err) != tt.want {
			t.Errorf("%v in %v: %v\nwant %s", tt.water, tt.made, err, tt.want)
		}
	}
	for _, tt := range []struct {
		made, want units.Volume
		ok         bool
	}{{150, 1e9, true}, {150, 1e9 + 1, false}, {1e9, 150, true}, {1e9 + 1, 150, false}, {0, 150, false}, {150, 0, false}} {
		m := bottle()
		m.Made = tt.made
		if n, err := m.Making(tt.want); (err == nil) != tt.ok || tt.ok && n.Made != tt.want {
			t.Errorf("%v of %v: %v, %v", tt.want, tt.made, n.Made, err)
		}
	}
}

// A mix has no less room than the water in it, to 1e-12 of it (ours): 100 mL, with
// 10 g of which no moisture is known.
func TestAMixHoldsItsWater(t *testing.T) {
	for made, want := range map[units.Volume]bool{100: true, 99.9999999999: true, 99.9999999997: false} {
		m := bottle()
		m.Parts[0].Food.Analysis, m.Parts[0].Amount = diet.Analysis{}, diet.Fixed(10)
		m.Water, m.Made = 100, made
		if _, err := m.Food(); (err == nil) != want {
			t.Errorf("%v: %v", float64(made), err)
		}
	}
}

// Bounds have a mean, and so have averages, and either with a food of which it is
// not stated; of both together there is none. 10 g of 38 % of protein and 10 g of
// 28 % have 33 %.
func TestKindsThatHaveAMean(t *testing.T) {
	for _, tt := range []struct {
		kinds [2]diet.AnalysisKind
		want  units.Percent
		kind  diet.AnalysisKind
	}{
		{[2]diet.AnalysisKind{diet.Guaranteed, diet.Guaranteed}, 33, diet.Guaranteed},
		{[2]diet.AnalysisKind{diet.Typical, diet.Typical}, 33, diet.Typical},
		{[2]diet.AnalysisKind{diet.Guaranteed, 0}, 33, 0},
		{[2]diet.AnalysisKind{0, diet.Typical}, 33, 0},
		{[2]diet.AnalysisKind{0, 0}, 33, 0},
		{[2]diet.AnalysisKind{diet.Guaranteed, diet.Typical}, 0, 0},
		{[2]diet.AnalysisKind{diet.Typical, diet.Guaranteed}, 0, 0},
	} {
		a, b := milkPowder(), milkPowder()
		a.Analysis.Kind, b.Analysis.Kind, b.Analysis.Protein = tt.kinds[0], tt.kinds[1], 28
		m := diet.Mix{Parts: []diet.Part{{Food: a, Amount: diet.Fixed(10)}, {Food: b, Amount: diet.Fixed(10)}}}
		f, err := m.Food()
		if err != nil || f.Analysis.Protein != tt.want || f.Analysis.Kind != tt.kind {
			t.Errorf("%v: %+v, %v; want %v of protein, %v", tt.kinds, f.Analysis, err, tt.want, tt.kind)
		}
		if list := said(m.Cautions(energy.Animal{Species: energy.Cat}), "some of its foods have guaranteed figures and some typical ones"); (len(list) == 1) != (tt.want == 0) {
			t.Errorf("%v: %v", tt.kinds, list)
		}
	}
}

// What water is stirred into weighs what a liquid does, 0.95 to 1.2 g/mL (ours),
// however little the water is: 0.6 g and half a millilitre are 1.1 g. Without it
// 0.5 to 1.5 g/mL will do (ours).
func TestALittleWaterInAMix(t *testing.T) {
	powder := diet.Food{Name: "powder", Form: diet.Powder, Label: diet.Label{Energy: 5000}}
	for _, tt := range []struct {
		grams units.Mass
		water units.Volume
		made  units.Volume
		want  bool
	}{
		{0.6, 0.5, 1, true},
		{0.6, 0.5, 0.85, false},
		{1.1, 0, 0.85, true},
	} {
		m := diet.Mix{Form: diet.Wet, Parts: []diet.Part{{Food: powder, Amount: diet.Fixed(tt.grams)}}, Water: tt.water, Made: tt.made}
		f, err := m.Food()
		if (err == nil) != tt.want {
			t.Errorf("%v and %v in %v: %v", tt.grams, tt.water, tt.made, err)
		}
		if tt.want && f.Label.Others[0].Name != "mL" { // first of the units, so that no empty one is written
			t.Errorf("%+v", f.Label.Others)
		}
	}
}
