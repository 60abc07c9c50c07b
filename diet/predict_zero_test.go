package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A density that was put together by hand has no Range: it is its Energy alone.
// 3515 kcal/kg is 10 × (3.5 × 26 + 8.5 × 15 + 3.5 × 38), modified Atwater (PF9):
// 3700 is 5.3 % more, within the 6.7 % that it is off on average; 3800 is 8.1 %
// more and 3270 7.0 % less.
func TestPredictionAgainstAFigureAlone(t *testing.T) {
	a := diet.Analysis{Kind: diet.Typical, Protein: 26, Fat: 15, Fibre: 4, Moisture: 10, Ash: 7}
	p, err := a.Predict(diet.ModifiedAtwater, energy.Dog)
	if err != nil {
		t.Fatal(err)
	}
	if p.Energy != 3515 {
		t.Errorf("predicted %v", p.Energy)
	}
	for energy, want := range map[units.EnergyDensity]int{3700: 0, 3800: 1, 3270: 1, 0: 0} {
		if got := p.Against(diet.Density{Energy: energy}); len(got) != want {
			t.Errorf("%v: %v", energy, got)
		}
	}
	var none diet.Prediction
	if got := none.Apart(diet.Density{Energy: 3700}); got != 0 {
		t.Errorf("no prediction: %v apart", got)
	}
	if got := none.Against(diet.Density{Energy: 3700}); got != nil {
		t.Errorf("no prediction: %v", got)
	}
}

// 1 % of NFE is 10 g/kg, of 4 kcal each by atwater.
func TestDefaultOfAtwaterIsWorthItsOwnFactor(t *testing.T) {
	a := diet.Analysis{Kind: diet.Typical, Defaults: diet.Wet, Protein: 10, Fat: 6, Fibre: 1, Moisture: 78}
	for by, want := range map[diet.Predictor]string{
		diet.ModifiedAtwater: "note: ash of the food: not given, a default is taken (by modified_atwater 1 % more would be 35 kcal/kg less)",
		diet.Atwater:         "note: ash of the food: not given, a default is taken (by atwater 1 % more would be 40 kcal/kg less)",
	} {
		p, err := a.Predict(by, energy.Cat)
		if err != nil {
			t.Fatal(err)
		}
		if got := predictionCautions(said(p.Cautions(), "a default")); len(got) != 1 || got[0] != want {
			t.Errorf("%v: %q", by, got)
		}
	}
}

// A mix of foods whose energy one equation predicts is held against that equation
// and no other: by atwater it is what it is.
func TestMixOfPredictedFoods(t *testing.T) {
	chicken := diet.Food{
		Name: "chicken", Form: diet.Wet, For: diet.Purpose{Species: diet.Cats}, Predictor: diet.Atwater,
		Analysis: diet.Analysis{Kind: diet.Typical, Protein: 31, Fat: 4, Moisture: 64, Ash: 1, None: diet.CrudeFibre},
	}
	stated := chicken
	stated.Name, stated.Predictor, stated.Label.Energy = "stated", 0, 1580
	other := chicken
	other.Predictor = diet.ModifiedAtwater
	for _, test := range []struct {
		parts []diet.Food
		want  diet.Predictor
	}{
		{[]diet.Food{chicken}, diet.Atwater},
		{[]diet.Food{chicken, chicken}, diet.Atwater},
		{[]diet.Food{chicken, stated}, 0},
		{[]diet.Food{stated, chicken}, 0},
		{[]diet.Food{chicken, other}, 0},
		{[]diet.Food{stated}, 0},
	} {
		var m diet.Mix
		for _, f := range test.parts {
			m.Parts = append(m.Parts, diet.Part{Food: f, Amount: diet.Fixed(100)})
		}
		f, err := m.Food()
		if err != nil || f.Predictor != test.want {
			t.Errorf("%d parts: %v, %v; want %v", len(test.parts), f.Predictor, err, test.want)
		}
		// 31 × 4 + 4 × 8.5 is 158 kcal/100 g for a cat; by modified Atwater 142.5, and
		// 158 is 10.9 % more.
		if got := said(f.Cautions(energy.Animal{Species: energy.Cat}), "predicts"); test.want == diet.Atwater && len(got) != 0 {
			t.Errorf("%d parts: %v", len(test.parts), got)
		}
	}
}
