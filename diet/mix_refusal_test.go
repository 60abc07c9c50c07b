package diet_test

import (
	"errors"
	"math"
	"reflect"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

func TestRefusedMixes(t *testing.T) {
	with := func(change func(m *diet.Mix)) diet.Mix {
		m := bottle()
		change(&m)
		return m
	}
	amount := func(a diet.Amount) diet.Mix { return with(func(m *diet.Mix) { m.Parts[0].Amount = a }) }
	water := func(v units.Volume) diet.Mix { return with(func(m *diet.Mix) { m.Water, m.Made = v, 0 }) }
	made := func(v units.Volume) diet.Mix { return with(func(m *diet.Mix) { m.Made = v }) }
	const massOrCount = `want a mass or a count of "Finnimore Orphan Milk Powder", as in 30 g or 1 can`
	for _, tt := range []struct {
		name string
		mix  diet.Mix
		want string
	}{
		{"nothing", diet.Mix{}, `diet: mix.parts "0 foods": want 1 to 8 foods`},
		{"water alone", diet.Mix{Water: 125}, `diet: mix.parts "0 foods": want 1 to 8 foods`},
		{"too many", with(func(m *diet.Mix) {
			for range diet.MaxItems {
				m.Parts = append(m.Parts, m.Parts[0])
			}
			m.Made = 0
		}), `diet: mix.parts "9 foods": want 1 to 8 foods`},
		{"no amount", amount(diet.Amount{}), `diet: mix.parts[0].amount "": ` + massOrCount},
		{"a share", amount(diet.Share(50)), `diet: mix.parts[0].amount "50 %": ` + massOrCount},
		{"a rest", amount(diet.Rest()), `diet: mix.parts[0].amount "rest": ` + massOrCount},
		{"no mass", amount(diet.Fixed(0)), `diet: mix.parts[0].amount "0 g": want above 0 g and at most 1e9`},
		{"less than none", amount(diet.Fixed(-30)), `diet: mix.parts[0].amount "-30 g": want above 0 g and at most 1e9`},
		{"too many units", amount(diet.Count(1001, "scoop")), `diet: mix.parts[0].amount "1001 scoop": want above 0 and at most 1000 of them`},
		{"an unknown unit", amount(diet.Count(2, "scoop")), `diet: mix.parts[0].amount "2 scoop": want a mass: the label of "Finnimore Orphan Milk Powder" names no unit to count`},
		{"a unit without figures", with(func(m *diet.Mix) {
			m.Parts[0].Food.Label.Others[0].Name = "scoop"
			m.Parts[0].Amount = diet.Count(2, "scoop")
		}), `diet: label.others "scoop": want the grams or the kcal of one scoop`},
		{"a food without energy", with(func(m *diet.Mix) { m.Parts[0].Food.Label = diet.Label{} }), `diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed, or name the equation that predicts it from the analysis: Predictor)`},
		{"less than no water", water(-1), `diet: mix.water "-1 mL": want above 0 mL and at most 1e9, or none`},
		{"water that is no number", water(units.Volume(math.NaN())), `diet: mix.water "NaN mL": want above 0 mL and at most 1e9, or none`},
		{"less than no volume", made(-1), `diet: mix.made "-1 mL": want above 0 mL and at most 1e9, or none if not known`},
		{"endless volume", made(units.Volume(math.Inf(1))), `diet: mix.made "+Inf mL": want above 0 mL and at most 1e9, or none if not known`},
		{"less than the water", made(120), `diet: mix.made "120 mL": want at least the 126.2 mL of water in it, and room for what is not water (measure it again in a jug)`},
		{"two litres typed as 2 mL", with(func(m *diet.Mix) { m.Water, m.Made = 0, 2 }), `diet: mix.made "2 mL": want 20 mL to 60 mL for 30 g (it would weigh 15 g/mL: measure it again in a jug)`},
		{"ten times the volume", made(1500), `diet: mix.made "1500 mL": want 129.2 mL to 163.2 mL for 155 g (it would weigh 0.103 g/mL: measure it again in a jug)`},
		{"an unknown form", with(func(m *diet.Mix) { m.Form = 99 }), `diet: mix.form "out of range": want a form of food, or none`},
		{"water and a trace of food", diet.Mix{Parts: []diet.Part{{diet.Food{Name: "broth", Label: diet.Label{Energy: 5000}}, diet.Fixed(1)}}, Water: 1000}, `diet: label of "broth + water": 5 kcal/kg (5 kcal in 1001 g) is below 10 kcal/kg, the least that is plausible; check the label`},
		{
			"everything",
			diet.Mix{Form: 99, Parts: []diet.Part{{Food: diet.Food{Name: "a"}}, {Food: milkPowder(), Amount: diet.Rest()}}, Water: -1, Made: -2},
			`diet: mix.form "out of range": want a form of food, or none; ` +
				`diet: mix.parts[0].amount "": want a mass or a count of "a", as in 30 g or 1 can; ` +
				`diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed); ` +
				`diet: mix.parts[1].amount "rest": ` + massOrCount + `; ` +
				`diet: mix.water "-1 mL": want above 0 mL and at most 1e9, or none; ` +
				`diet: mix.made "-2 mL": want above 0 mL and at most 1e9, or none if not known`,
		},
	} {
		f, err := tt.mix.Food()
		if err == nil || err.Error() != tt.want || f != (diet.Food{}) {
			t.Errorf("%s: %q, %v\nwant %s", tt.name, f.Name, err, tt.want)
		}
		var field *units.FieldError
		var label *diet.LabelError
		if !errors.As(err, &field) && !errors.As(err, &label) {
			t.Errorf("%s: %T", tt.name, err)
		}
	}
}

// What fills just as much as a mix can, and what doesn't. The two that are
// published pass: 30 g of powder and 125 mL of water make 150 mL, and 150 g of a
// can with 32 mL 177 mL.
func TestMadeVolumeAtItsEnds(t *testing.T) {
	milk := func(made units.Volume) diet.Mix { m := bottle(); m.Made = made; return m }
	can := func(water, made units.Volume) diet.Mix {
		m := slurry()
		m.Water, m.Made = water, made
		return m
	}
	powder := func(made units.Volume) diet.Mix { m := milk(made); m.Water = 0; return m }
	form := func(f diet.Form, made units.Volume) diet.Mix { m := milk(made); m.Form = f; return m }
	unknown := milk(126)
	unknown.Parts[0].Food.Analysis = diet.Analysis{}
	wet := can(50, 166.9)
	wet.Parts[0].Food.Analysis.Moisture = 78
	for _, tt := range []struct {
		name string
		mix  diet.Mix
		ok   bool
	}{
		{"published", milk(150), true},
		{"published", can(32, 177), true},
		{"155 g at 1.2 g/mL", milk(129.2), true},
		{"heavier", milk(129.1), false},
		{"155 g at 0.95 g/mL", milk(163.1), true},
		{"lighter", milk(163.2), false},
		{"a third foam", milk(200), false},
		{"twice the water", milk(250), false},
		{"less than water and what the powder holds", milk(126), false},
		{"1.23 g/mL, moisture not known", unknown, false},
		{"150 × 0.78 + 50 = 167 mL of water", can(50, 167), true},
		{"less", wet, false},
		{"powder at 1.5 g/mL", powder(20), true},
		{"heavier powder", powder(19.9), false},
		{"powder at 0.5 g/mL", powder(60), true},
		{"lighter powder", powder(60.1), false},
		{"soaked pieces with air between them", form(diet.Dry, 310), true},
		{"stew is as heavy as what is poured", form(diet.Wet, 310), false},
	} {
		f, err := tt.mix.Food()
		if (err == nil) != tt.ok {
			t.Errorf("%s, %v: %v", tt.name, tt.mix.Made, err)
		}
		if f.Form == diet.Liquid && tt.mix.Water == 0 {
			t.Errorf("%s: without water it is %v", tt.name, f.Form)
		}
	}
}

func TestRefusedVolumes(t *testing.T) {
	unknown, endless := bottle(), bottle()
	unknown.Made, endless.Made = 0, units.Volume(math.Inf(1))
	const (
		measured = `want the volume that the mix fills, measured in a jug`
		positive = `want above 0 mL and at most 1e9`
	)
	for _, tt := range []struct {
		mix  diet.Mix
		v    units.Volume
		want string
	}{
		{unknown, 239, `diet: mix.made "0 mL": ` + measured},
		{endless, 239, `diet: mix.made "+Inf mL": ` + measured},
		{bottle(), 0, `diet: volume "0 mL": ` + positive},
		{bottle(), -1, `diet: volume "-1 mL": ` + positive},
		{bottle(), 2e9, `diet: volume "2000000000 mL": ` + positive},
		{unknown, units.Volume(math.NaN()), `diet: mix.made "0 mL": ` + measured + `; diet: volume "NaN mL": ` + positive},
	} {
		m, err := tt.mix.Making(tt.v)
		if err == nil || err.Error() != tt.want || !reflect.ValueOf(m).IsZero() {
			t.Errorf("%v: %+v, %v\nwant %s", tt.v, m, err, tt.want)
		}
	}
	for _, n := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if f, err := bottle().Times(n).Food(); err == nil {
			t.Errorf("%v times: %+v", n, f)
		}
	}
}

func TestPerVolume(t *testing.T) {
	for _, tt := range []struct {
		name  string
		label diet.Label
		want  units.EnergyPerVolume // 0: refused
		err   string
	}{
		{"mL", diet.Label{Energy: 1000, Serving: diet.Serving{Name: "mL", Mass: 1.05}}, 1.05, ""},
		{"100 mL", diet.Label{Serving: diet.Serving{Name: "100 mL", Energy: 74, Mass: 103}}, 0.74, ""},
		{"metric cup", diet.Label{Energy: 1000, Serving: diet.Serving{Name: "metric cup", Energy: 250}}, 1, ""},
		{"the first that is one", diet.Label{Energy: 1000, Serving: diet.Serving{Name: "can", Mass: 150}, Others: diet.Servings{{}, {Name: "50 mL", Mass: 52}, {Name: "mL", Mass: 1.06}}}, 1.04, ""},
		{"a bare cup", diet.Label{Energy: 1000, Serving: diet.Serving{Name: "cup", Mass: 100}}, 0, `diet: label.serving "": want a unit of the label of the food that is a volume, as in mL or US cup (weigh what fills a measured volume)`},
		{"a serving", diet.Label{Energy: 1000}, 0, `diet: label.serving "": want a unit of the label of the food that is a volume, as in mL or US cup (weigh what fills a measured volume)`},
		{"no figures", diet.Label{Energy: 1000, Serving: diet.Serving{Name: "mL"}}, 0, `diet: label.serving "": want the grams or the kcal of one mL`},
		{"no energy", diet.Label{Serving: diet.Serving{Name: "can", Mass: 100}}, 0, `diet: label "100 g/can": want kcal/kg as fed, or the kcal of one can, beside it (ask the manufacturer for kcal/kg as fed)`},
		{"no volume", diet.Label{Energy: 1000, Serving: diet.Serving{Name: "0 mL", Mass: 10}}, 0, `diet: label.serving "": want a unit of the label of the food that is a volume, as in mL or US cup (weigh what fills a measured volume)`},
	} {
		got, err := diet.Food{Name: "the food", Label: tt.label}.PerVolume()
		if differ(float64(got), float64(tt.want)) || errorText(err) != tt.err {
			t.Errorf("%s: %v, %v\nwant %v, %s", tt.name, got, err, tt.want, tt.err)
		}
	}
}

// A liquid weighs about what water does: a tablespoon of 30 g is two of them, and
// a cup of 100 g one of kibble.
func TestPerVolumeOfALiquid(t *testing.T) {
	const hint = ": weigh what fills a measured volume)"
	for _, tt := range []struct {
		serving diet.Serving
		want    units.EnergyPerVolume // 0: refused
		err     string
	}{
		{diet.Serving{Name: "tbsp", Mass: 30}, 0, `diet: label "30 g/tbsp": want 14 g to 17.7 g of a liquid in it (it would weigh 2.03 g/mL` + hint},
		{diet.Serving{Name: "US cup", Mass: 100}, 0, `diet: label "100 g/US cup": want 224.8 g to 283.9 g of a liquid in it (it would weigh 0.423 g/mL` + hint},
		{diet.Serving{Name: "mL", Energy: 1.5}, 0, `diet: label "1.5 g/mL": want 0.95 g to 1.2 g of a liquid in it (it would weigh 1.5 g/mL` + hint},
		{diet.Serving{Name: "100 mL", Mass: 103}, 1.03, ""},
		{diet.Serving{Name: "100 mL", Mass: 94.4}, 0, `diet: label "94.4 g/100 mL": want 95 g to 120 g of a liquid in it (it would weigh 0.944 g/mL` + hint},
		{diet.Serving{Name: "100 mL", Mass: 94.9, MassHalfStep: 0.1}, 0.949, ""},
		{diet.Serving{Name: "5 mL", Mass: 6}, 1.2, ""}, // 5.5 to 6.5 g
		{diet.Serving{Name: "mL", Mass: 1}, 1, ""},
		{diet.Serving{Name: "mL", Mass: 2}, 0, `diet: label "2 g/mL": want 0.95 g to 1.2 g of a liquid in it (it would weigh 2 g/mL` + hint},
	} {
		f := diet.Food{Form: diet.Liquid, Label: diet.Label{Energy: 1000, Serving: tt.serving}, Analysis: diet.Analysis{Moisture: 80}}
		got, err := f.PerVolume()
		if differ(float64(got), float64(tt.want)) || errorText(err) != tt.err {
			t.Errorf("%+v: %v, %v\nwant %v, %s", tt.serving, got, err, tt.want, tt.err)
		}
		f.Form = diet.Dry
		if _, err := f.PerVolume(); err != nil {
			t.Errorf("%+v of dry food: %v", tt.serving, err)
		}
	}
}
