package diet_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Figures below 1 are figures like any other: of these foods nothing is left out,
// and nothing is refused.
func TestCompareOfSmallFigures(t *testing.T) {
	for name, a := range map[string]diet.Analysis{"protein": {Kind: diet.Typical, Protein: 0.01}, "fat": {Kind: diet.Typical, Fat: 0.01}} {
		rows, err := diet.Compare(diet.Food{
			Label: diet.Label{
				Energy: 4000, Serving: diet.Serving{Name: "drop", Mass: 0.5},
				Packs: diet.Packs{{Net: 0.5, Price: usd(1)}},
			},
			Analysis: a,
		})
		if err != nil {
			t.Fatal(err)
		}
		r := rows[0]
		// 0.01 × 10000 / 4000 g; 2 kcal; 250 g at 1 USD for half a gram.
		if r.Protein+r.Fat != 0.025 || (r.Protein > 0) != (name == "protein") || r.Kind != diet.Typical ||
			r.Serving != (diet.Serving{Name: "drop", Energy: 2, Mass: 0.5}) || r.Cost != usd(500) {
			t.Errorf("%s: %+v", name, r)
		}
	}
	if rows, err := diet.Compare(diet.Food{}); rows != nil || err == nil {
		t.Errorf("one label that says nothing: %v, %v", rows, err)
	}
	light := diet.Packs{{Net: 0.25, Price: usd(1)}, {Net: 0.5, Price: usd(1.5)}}
	if p, n := light.Choose(0.6); p != light[1] || n != 2 { // 3 USD either way: the larger
		t.Errorf("%d of %+v", n, p)
	}
}

// A figure alone asks for its fellow, however small it is.
func TestAServingLacksItsFellow(t *testing.T) {
	for serving, want := range map[diet.Serving]string{
		{Name: "drop", Energy: 0.5}: `diet: label "0.5 kcal/drop": want kcal/kg as fed, or the grams of one drop, beside it`,
		{Name: "drop", Mass: 0.5}:   `diet: label "0.5 g/drop": want kcal/kg as fed, or the kcal of one drop, beside it`,
	} {
		if _, err := (diet.Food{Label: diet.Label{Serving: serving}}).Density(); !strings.HasPrefix(errorText(err), want) {
			t.Errorf("%v\nwant %s", err, want)
		}
	}
}

// A half-step lies below its figure, whatever the size of both.
func TestHalfStepsOfSmallFigures(t *testing.T) {
	for serving, want := range map[diet.Serving]string{
		{Energy: 1, EnergyHalfStep: 2}:     `diet: label.serving.energy_half_step "2 kcal": want above 0 kcal and below the figure, 1 kcal`,
		{Energy: 0.5, EnergyHalfStep: 0.7}: `diet: label.serving.energy_half_step "0.7 kcal": want above 0 kcal and below the figure, 0.5 kcal`,
		{Energy: 0.5, EnergyHalfStep: 0.5}: `diet: label.serving.energy_half_step "0.5 kcal": want above 0 kcal and below the figure, 0.5 kcal`,
		{Mass: 1e9, Name: "silo"}:          "",
		{Mass: 1.1e9, Name: "silo"}:        `diet: label.serving.mass "1100000000 g": want above 0 g and at most 1e9, or none if not stated`,
	} {
		if _, err := (diet.Food{Label: diet.Label{Energy: 3500, Serving: serving}}).Density(); errorText(err) != want {
			t.Errorf("%+v: %v\nwant %s", serving, err, want)
		}
	}
}

// A serving that is called by a mass below a gram has it.
func TestServingsNamedByMilligrams(t *testing.T) {
	for mass, want := range map[units.Mass]string{0.5: "", 0.9: `diet: label.serving.mass "0.9 g": want 0.5 g, what 500 mg means`} {
		f := diet.Food{Label: diet.Label{Energy: 3500, Serving: diet.Serving{Name: "500 mg", Mass: mass, MassHalfStep: 0.01}}}
		if _, err := f.Density(); errorText(err) != want {
			t.Errorf("%v: %v\nwant %s", mass, err, want)
		}
	}
}

// Shares that miss 100 % by 1e-9 (ours) make it.
func TestSharesAtTheirEnds(t *testing.T) {
	food := diet.Food{Name: "dry", Label: diet.Label{Energy: 3500}}
	for _, tt := range []struct {
		shares []units.Percent
		rest   bool
		want   string
	}{
		{[]units.Percent{50, 50.0000000009}, false, ""},
		{[]units.Percent{50, 49.9999999991}, false, ""},
		{[]units.Percent{50, 50.0000000014}, false, `diet: menu "50 % + 50.0000000014 % = 100.000000001 %": want shares of 100 %, or less and a rest`},
		{[]units.Percent{50, 50.0000000186}, false, `diet: menu "50 % + 50.0000000186 % = 100.000000019 %": want shares of 100 %, or less and a rest`},
		{[]units.Percent{50, 50.5}, false, `diet: menu "50 % + 50.5 % = 100.5 %": want shares of 100 %, or less and a rest`},
		{[]units.Percent{50, 49.5}, false, `diet: menu "50 % + 49.5 % = 99.5 % and no rest": want a rest, or shares of 100 %`},
		{[]units.Percent{50, 50.5}, true, `diet: menu "50 % + 50.5 % = 100.5 % and a rest": want shares of less than 100 % beside a rest, or no rest`},
		{[]units.Percent{50, 50.0000000009}, true, `diet: menu "50 % + 50.0000000009 % = 100.000000001 % and a rest": want shares of less than 100 % beside a rest, or no rest`},
		{[]units.Percent{50, 49.5}, true, ""},
		{[]units.Percent{0.5, 99.5}, false, ""},
		{[]units.Percent{20, 80.000000001}, false, ""},
		{[]units.Percent{99.999999999}, false, ""},
		{[]units.Percent{99.999999999}, true, `diet: menu "99.999999999 % and a rest": want shares of less than 100 % beside a rest, or no rest`},
	} {
		var m diet.Menu
		for _, p := range tt.shares {
			m = append(m, diet.Item{Food: food, Amount: diet.Share(p)})
		}
		if tt.rest {
			m = append(m, diet.Item{Food: food, Amount: diet.Rest()})
		}
		if err := m.Validate(); errorText(err) != tt.want {
			t.Errorf("%v, rest %t: %v\nwant %s", tt.shares, tt.rest, err, tt.want)
		}
	}
}

// The most that an amount may be: 1e9 g, 1000 units, a name of 64 bytes: ours.
func TestAmountsAtTheirEnds(t *testing.T) {
	long := strings.Repeat("b", 64)
	for text, want := range map[string]bool{
		"0.5 %": true, "1000000 kg": true, "1000001 kg": false, "1000 biscuit": true, "1000.1 biscuit": false,
		"2 " + long: true, "2 " + long + "b": false,
	} {
		if _, err := diet.ParseAmount(text); (err == nil) != want {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// The third letter of a currency is one.
func TestCurrenciesOfThreeCapitals(t *testing.T) {
	for _, text := range []string{"1 USd", "1 US1", "1 US[", "1 US@", "1 uSD", "1 @SD", "1 [SD"} {
		if p, err := diet.ParsePrice(text); err == nil {
			t.Errorf("%s: %v", text, p)
		}
	}
	for _, text := range []string{"1 AAA", "1 ZZZ"} {
		if _, err := diet.ParsePrice(text); err != nil {
			t.Error(err)
		}
	}
}

// What is nothing at the end of a list isn't written, and what stands before it
// is.
func TestListsWithoutTheirEnds(t *testing.T) {
	for want, packs := range map[string]diet.Packs{
		`[]`:                            {},
		`[{"net":"1 g"}]`:               {{Net: 1}},
		`[{},{"net":"1 g"}]`:            {{}, {Net: 1}},
		`[{"net":"1 g"},{"net":"2 g"}]`: {{Net: 1}, {Net: 2}},
	} {
		if text, err := json.Marshal(packs); err != nil || string(text) != want {
			t.Errorf("%s, %v; want %s", text, err, want)
		}
	}
}

// A fat with half a percent of water and little energy is doubted at its
// moisture.
func TestLittleEnergyAtALittleMoisture(t *testing.T) {
	f := diet.Food{Form: diet.FatOrOil, Label: diet.Label{Energy: 2400}, Analysis: diet.Analysis{Moisture: 0.5}}
	if list := f.Cautions(energy.Animal{Species: energy.Dog}); len(said(list, "is little at 0.5 % moisture, where foods hold 2487.5 kcal/kg or more")) != 1 {
		t.Errorf("%v", list)
	}
}

// FEDIAF: above 8 % of fibre in the dry matter of dog food four_step is doubted.
func TestFibreThatIsMuch(t *testing.T) {
	for fibre, want := range map[units.Percent]int{7.1: 0, 7.2: 0, 7.3: 1, 7.6: 1, 8.2: 1} { // of 90 % of dry matter
		a := diet.Analysis{Kind: diet.Typical, Protein: 25, Fat: 15, Fibre: fibre, Moisture: 10, Ash: 6}
		p, err := a.Predict(diet.FourStep, energy.Dog)
		if err != nil {
			t.Fatal(err)
		}
		if got := said(p.Cautions(), "crude fibre is"); len(got) != want {
			t.Errorf("%v: %v", fibre, got)
		}
	}
}

// Half a millilitre is a volume: of a mix that was made, and of the water in it.
func TestMixesOfHalfAMillilitre(t *testing.T) {
	powder := diet.Food{Name: "powder", Form: diet.Powder, Label: diet.Label{Energy: 5000}}
	m := diet.Mix{Parts: []diet.Part{{Food: powder, Amount: diet.Fixed(0.1)}}, Water: 0.45, Made: 0.5}
	f, err := m.Food()
	if err != nil || f.Name != "powder + water" || f.Form != diet.Liquid {
		t.Fatalf("%+v, %v", f, err)
	}
	if v, err := f.PerVolume(); err != nil || differ(float64(v), 1) { // 0.5 kcal in 0.5 mL
		t.Errorf("%v, %v", v, err)
	}
	if _, err := m.Making(0.25); err != nil {
		t.Error(err)
	}
	m.Made = 10
	if _, err := m.Food(); err == nil {
		t.Error("0.55 g in 10 mL is no liquid")
	}
	m.Made = 0.4
	if _, err := m.Food(); err == nil {
		t.Error("0.45 mL of water don't fit into 0.4 mL")
	}
	m.Made = 0
	if list := m.Cautions(energy.Animal{Species: energy.Dog}); len(said(list, "the volume it fills is not given")) != 1 {
		t.Errorf("%v", list)
	}
}
