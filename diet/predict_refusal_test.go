package diet_test

import (
	"errors"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestPredictRefuses(t *testing.T) {
	const (
		noEquation = `: want dog, cat or ferret (no equation is published for the food of other animals)`
		noAsh      = `diet: analysis.ash "": want the crude ash as fed, in % (not on every label: ask the manufacturer, or set defaults to the form of the food)`
	)
	ashless := boxFood
	ashless.Ash = 0
	ashless.Fat = 101
	// In dog food 91.2 / 1.43 = 63.8 % of fibre in dry matter leaves nothing to digest.
	bran := diet.Analysis{Protein: 3, Fat: 1, Fibre: 80, Moisture: 8, Ash: 4}
	mineral := diet.Analysis{Moisture: 10, Ash: 90, None: diet.CrudeProtein | diet.CrudeFat | diet.CrudeFibre}
	for _, tt := range []struct {
		why      string
		analysis diet.Analysis
		by       diet.Predictor
		s        energy.Species
		want     string
	}{
		{"other species", boxFood, diet.ModifiedAtwater, energy.Other, `diet: species "other"` + noEquation},
		{"other species, by default", boxFood, 0, energy.Other, `diet: species "other"` + noEquation},
		{"no species", boxFood, diet.FourStep, 0, `diet: species ""` + noEquation},
		{"no species, natural", boxFood, diet.Atwater, 0, `diet: species ""` + noEquation},
		{"no such species", boxFood, diet.FourStep, 9, `diet: species ""` + noEquation},
		{"no such equation", boxFood, 4, energy.Dog, `diet: predictor "out of range": want modified_atwater, atwater or four_step`},
		{
			"all at once", ashless, diet.FourStep, energy.Other,
			`diet: species "other"` + noEquation + `; diet: analysis.fat "101 %": want above 0 % and at most 100 %, or none if not known; ` + noAsh,
		},
		{"nothing digestible", bran, diet.FourStep, energy.Dog, `diet: analysis "protein, fat and NFE 8 %, fibre 80 %": want a food from which four_step leaves energy`},
		{"nothing at all", mineral, diet.ModifiedAtwater, 0, `diet: analysis "protein, fat and NFE 0 %, fibre 0 %": want a food from which modified_atwater leaves energy`},
	} {
		p, err := tt.analysis.Predict(tt.by, tt.s)
		if errorText(err) != tt.want || p != (diet.Prediction{}) {
			t.Errorf("%s: %+v, %v\nwant %s", tt.why, p, err, tt.want)
		}
		var field *units.FieldError
		if !errors.As(err, &field) {
			t.Errorf("%s: %v is no FieldError", tt.why, err)
		}
	}
}

func TestNothingIsPredictedUnlessAsked(t *testing.T) {
	f := diet.Food{Analysis: boxFood}
	if d, err := f.Density(); err == nil {
		t.Errorf("predicted without being asked: %+v", d)
	}
	f.Predictor = diet.ModifiedAtwater
	d, err := f.Density()
	if d.Energy != 3320 || d.Range != (units.Range[units.EnergyDensity]{Low: 3320, High: 3320}) || d.Origin != diet.Predicted || d.Gap != 0 || err != nil {
		t.Errorf("%+v, %v", d, err)
	}
	// The label wins, by kcal/kg or by a serving.
	f.Label.Energy = 3500
	if d, err := f.Density(); d.Energy != 3500 || d.Origin != diet.Stated || err != nil {
		t.Errorf("%+v, %v", d, err)
	}
	f.Label = diet.Label{Serving: diet.Serving{Name: "cup", Energy: 350, Mass: 100}}
	if d, err := f.Density(); d.Energy != 3500 || d.Origin != diet.Derived || err != nil {
		t.Errorf("%+v, %v", d, err)
	}
	// Half a serving is completed by the prediction: 332 kcal are 100 g.
	f.Label = diet.Label{Serving: diet.Serving{Name: "cup", Energy: 332}}
	if d, err := f.Density(); d.Serving.Mass != 100 || d.Origin != diet.Predicted || err != nil {
		t.Errorf("%+v, %v", d, err)
	}
	f.Label = diet.Label{Serving: diet.Serving{Name: "cup", Mass: 100}}
	if d, err := f.Density(); d.Serving.Energy != 332 || d.Origin != diet.Predicted || err != nil {
		t.Errorf("%+v, %v", d, err)
	}
}

func TestAFoodIsPredictedForWhomItIsMade(t *testing.T) {
	const ask = `: want dog or cat (four_step differs between them)`
	for _, tt := range []struct {
		species diet.SpeciesSet
		by      diet.Predictor
		as      energy.Species // of the prediction that Density has to agree with
		want    string
	}{
		{diet.Dogs, diet.FourStep, energy.Dog, ""},
		{diet.Cats, diet.FourStep, energy.Cat, ""},
		{diet.Ferrets, diet.FourStep, energy.Ferret, ""},
		{diet.Cats | diet.Ferrets, diet.FourStep, energy.Cat, ""},
		{diet.Cats, diet.Atwater, energy.Cat, ""},
		{0, diet.ModifiedAtwater, 0, ""},
		{diet.Dogs | diet.Cats, diet.ModifiedAtwater, 0, ""},
		{0, diet.FourStep, 0, `diet: for.species ""` + ask},
		{diet.Dogs | diet.Cats, diet.FourStep, 0, `diet: for.species "dog cat"` + ask},
		{diet.OtherSpecies, diet.ModifiedAtwater, 0, `diet: species "other": want dog, cat or ferret (no equation is published for the food of other animals)`},
	} {
		f := diet.Food{For: diet.Purpose{Species: tt.species}, Analysis: boxFood, Predictor: tt.by}
		d, err := f.Density()
		if errorText(err) != tt.want {
			t.Errorf("%v by %v: %v\nwant %s", tt.species, tt.by, err, tt.want)
			continue
		}
		if err != nil {
			if d != (diet.Density{}) {
				t.Errorf("%+v beside %v", d, err)
			}
			continue
		}
		p, err := boxFood.Predict(tt.by, tt.as)
		if d.Energy != p.Energy || err != nil {
			t.Errorf("%v by %v: %v, want %v, %v", tt.species, tt.by, d.Energy, p.Energy, err)
		}
	}
}

// Protein and fat typed as fractions of the food would give the energy of starch:
// 3.5 × (100 - 0.43 - 9 - ash), a fifth too little.
func TestFractionsAreNoPercentages(t *testing.T) {
	const wanted = `: want above 1 % together, in a food that has both and is no fat or oil (a fraction? 0.26 is 26 %; of a starch or a sugar give the lesser as none)`
	dry := diet.Analysis{Protein: 0.26, Fat: 0.14, Fibre: 0.03, Moisture: 9, Ash: 0.06}
	byDefault := dry
	byDefault.Moisture, byDefault.Defaults = 0, diet.Dry
	for _, tt := range []struct {
		name string
		a    diet.Analysis
		form diet.Form
		want string
	}{
		{"kibble", dry, diet.Dry, `diet: analysis.protein "protein 0.26 %, fat 0.14 %, 0.44 % of the dry matter"` + wanted},
		{"moisture by default", byDefault, diet.Dry, `diet: analysis.protein "protein 0.26 %, fat 0.14 %, 0.444 % of the dry matter"` + wanted},
		{"a can", diet.Analysis{Protein: 0.11, Fat: 0.07, Fibre: 0.01, Moisture: 78, Ash: 0.02}, diet.Wet, `diet: analysis.protein "protein 0.11 %, fat 0.07 %, 0.818 % of the dry matter"` + wanted},
		{"nothing else in it", diet.Analysis{Protein: 0.5, Fat: 0.4, Fibre: 0.01, Moisture: 10, Ash: 0.02}, 0, `diet: analysis.protein "protein 0.5 %, fat 0.4 %, 1 % of the dry matter"` + wanted},
		{"percentages", diet.Analysis{Protein: 26, Fat: 14, Fibre: 3, Moisture: 9, Ash: 6}, diet.Dry, ""},
		{"broth", diet.Analysis{Protein: 0.8, Fat: 0.1, Fibre: 0.01, Moisture: 98, Ash: 0.5}, diet.Liquid, ""},
		{"fruit", diet.Analysis{Protein: 0.3, Fat: 0.2, Fibre: 1, Moisture: 85, Ash: 0.3}, 0, ""},
		{"starch", diet.Analysis{Protein: 0.3, Moisture: 12, Ash: 0.1, None: diet.CrudeFat | diet.CrudeFibre}, diet.Powder, ""},
		{"an oil in much water", diet.Analysis{Protein: 0.02, Fat: 0.9, Moisture: 90, Ash: 0.1, None: diet.CrudeFibre}, diet.FatOrOil, ""},
	} {
		f := diet.Food{Name: tt.name, Form: tt.form, Analysis: tt.a, Predictor: diet.ModifiedAtwater}
		if tt.form == diet.FatOrOil {
			f.Label.Energy = 900
		}
		if _, err := f.Predict(diet.ModifiedAtwater, 0); errorText(err) != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.name, err, tt.want)
		}
		if _, err := f.Density(); errorText(err) != tt.want {
			t.Errorf("%s, its label: %v\nwant %s", tt.name, err, tt.want)
		}
		if tt.form != diet.FatOrOil {
			if _, err := tt.a.NFE(); errorText(err) != tt.want {
				t.Errorf("%s: NFE: %v\nwant %s", tt.name, err, tt.want)
			}
		}
	}
	// Without the moisture it may be thin broth: nothing is known.
	f := diet.Food{Label: diet.Label{Energy: 900}, Analysis: diet.Analysis{Protein: 0.6, Fat: 0.1}}
	if _, err := f.Density(); err != nil {
		t.Error(err)
	}
}
