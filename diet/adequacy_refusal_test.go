package diet_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestCheckRefuses(t *testing.T) {
	const (
		standard = `want aafco, fediaf or nrc_2006`
		stage    = `want one of growth, reproduction or maintenance`
		others   = `want dog or cat (no minima are held for other animals)`
		daily    = `want the kcal of a day, above 0`
		adult    = `want 800 g to 120 kg, or none if not known`
	)
	for _, tt := range []struct {
		why    string
		change func(a *diet.Adequacy)
		want   string
	}{
		{"no standard", func(a *diet.Adequacy) { a.Standard = 0 }, `diet: standard "": ` + standard},
		{"no such standard", func(a *diet.Adequacy) { a.Standard = 4 }, `diet: standard "out of range": ` + standard},
		{"no stage", func(a *diet.Adequacy) { a.Stage = 0 }, `diet: stage "": ` + stage},
		{"several stages", func(a *diet.Adequacy) { a.Stage = diet.AllStages }, `diet: stage "growth reproduction maintenance": ` + stage},
		{"ferret", func(a *diet.Adequacy) { a.Animal.Species = energy.Ferret }, `diet: animal.species "ferret": ` + others},
		{"no species", func(a *diet.Adequacy) { a.Animal.Species = 0 }, `diet: animal.species "": ` + others},
		{"NRC growth", func(a *diet.Adequacy) { a.Standard, a.Stage = diet.NRC2006, diet.Growth }, `diet: stage "growth": want maintenance for nrc_2006`},
		{"no energy", func(a *diet.Adequacy) { a.Daily = 0 }, `diet: daily "0 kcal": ` + daily},
		{"negative energy", func(a *diet.Adequacy) { a.Daily = -1 }, `diet: daily "-1 kcal": ` + daily},
		{"NaN energy", func(a *diet.Adequacy) { a.Daily = units.Energy(math.NaN()) }, `diet: daily "NaN kcal": ` + daily},
		{"endless energy", func(a *diet.Adequacy) { a.Daily = units.Energy(math.Inf(1)) }, `diet: daily "+Inf kcal": ` + daily},
		{"no such form", func(a *diet.Adequacy) { a.Form = 7 }, `diet: form "out of range": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{"grams for kilograms", func(a *diet.Adequacy) { a.AdultWeight = 30 }, `diet: adult_weight "30 g": ` + adult},
		{"NaN adult weight", func(a *diet.Adequacy) { a.AdultWeight = units.Mass(math.NaN()) }, `diet: adult_weight "NaN g": ` + adult},
		{"too heavy", func(a *diet.Adequacy) { a.AdultWeight = 121 * units.Kilogram }, `diet: adult_weight "121 kg": ` + adult},
		{
			"growing at maintenance", func(a *diet.Adequacy) { a.Animal.Age = 5 * energy.Month },
			`diet: stage "maintenance": want growth or reproduction for this animal (it is growing)`,
		},
		{
			"lactating at maintenance", func(a *diet.Adequacy) { a.Animal.Circumstances = energy.Lactating | energy.Ill },
			`diet: stage "maintenance": want growth or reproduction for this animal (it is lactating)`,
		},
		{
			"all at once", func(a *diet.Adequacy) { *a = diet.Adequacy{Form: 9, Stage: diet.Maintenance, AdultWeight: -1} },
			`diet: form "out of range": want dry, semi_moist, wet, liquid, powder or fat_or_oil; diet: standard "": ` + standard +
				`; diet: animal.species "": ` + others + `; diet: adult_weight "-1 g": ` + adult + `; diet: daily "0 kcal": ` + daily,
		},
	} {
		a := fedDog(t, diet.FEDIAF, 70)
		tt.change(&a)
		list, err := a.Check()
		if errorText(err) != tt.want || list != nil {
			t.Errorf("%s: %v, %v\nwant %s", tt.why, list, err, tt.want)
		}
		var field *units.FieldError
		if !errors.As(err, &field) {
			t.Errorf("%s: %v is no FieldError", tt.why, err)
		}
		if a.Cautions() != nil || a.Explain() != "" {
			t.Errorf("%s: something is said of what is refused", tt.why)
		}
	}
}

// Without an ideal weight there is no intake: an animal that isn't scored is
// never taken for one in ideal condition.
func TestCheckNeedsTheIdealWeight(t *testing.T) {
	a := fedDog(t, diet.NRC2006, 70)
	a.Animal.Ideal, a.Daily = 0, 0
	_, err := a.Check()
	var field *units.FieldError
	var list units.ErrorList
	if !errors.As(err, &list) || len(list) != 2 || !errors.As(list[1], &field) || field.Package != "energy" || field.Field != "condition" {
		t.Errorf("%v", err)
	}
}

// In growth neither the intake nor the weight is looked at.
func TestGrowthNeedsNoEnergy(t *testing.T) {
	a := growingDog(t, diet.FEDIAF, 0, 0)
	want, err := a.Check()
	if err != nil {
		t.Fatal(err)
	}
	a.Daily = -1
	got, err := a.Check()
	if len(got) != len(want) || err != nil {
		t.Errorf("%v, %v", got, err)
	}
}

func TestAdequacyJSON(t *testing.T) {
	a := diet.Adequacy{
		Profile: profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Protein: 62}), Form: diet.Dry, Standard: diet.FEDIAF,
		Stage: diet.Maintenance, Animal: energy.Animal{Species: energy.Dog, Weight: 20000, Ideal: 16000}, AdultWeight: 16000, Daily: 560,
	}
	const want = `{"profile":{"protein":"62 g/1000 kcal"},"form":"dry","standard":"fediaf","stage":"maintenance",` +
		`"animal":{"species":"dog","weight":"20 kg","ideal":"16 kg"},"adult_weight":"16 kg","daily":"560 kcal"}`
	if text, err := json.Marshal(a); string(text) != want || err != nil {
		t.Errorf("%s, %v\nwant %s", text, err, want)
	}
	var got diet.Adequacy
	if err := json.Unmarshal([]byte(want), &got); got != a || err != nil {
		t.Errorf("%+v, %v", got, err)
	}
	for s, want := range map[string]string{
		`{"standard":"nrc"}`:        `diet: standard "nrc": want aafco, fediaf or nrc_2006`,
		`{"daily":560}`:             `diet: adequacy.daily "number": want text with a unit, as in "100 kcal"`,
		`{"profile":{"zinc":"1"}}`:  `diet: nutrient "zinc": want ` + nutrientList,
		`{"intake":"70"}`:           `diet: adequacy: json: unknown field "intake": want profile, form, standard, stage, animal, adult_weight or daily`,
		`{"animal":{"mass":"1 g"}}`: `energy: animal: json: unknown field "mass": want species, weight, age, condition, ideal, days_unfed or circumstances`,
	} {
		if err := json.Unmarshal([]byte(s), &got); errorText(err) != want || got != a {
			t.Errorf("%s: %v\nwant %s", s, err, want)
		}
	}
}
