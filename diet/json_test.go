package diet_test

import (
	"encoding/json"
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// full has every field set.
var full = diet.Food{
	Name: "Tarnwick House Dog Dry", Form: diet.Dry, Role: diet.Complete,
	For: diet.Purpose{Species: diet.Dogs | diet.Ferrets, Stages: diet.Maintenance},
	Label: diet.Label{Energy: 3560, HalfStep: 5, Serving: diet.Serving{
		Name: "cup", Energy: 356, EnergyHalfStep: 0.5, Mass: 100, MassHalfStep: 0.05,
	}},
	Analysis: diet.Analysis{Moisture: 9},
}

const fullText = `{"name":"Tarnwick House Dog Dry","form":"dry","for":{"species":"dog ferret","stages":"maintenance"},"role":"complete",` +
	`"label":{"energy":"3560 kcal/kg","half_step":"5 kcal/kg","serving":{"name":"cup","energy":"356 kcal","energy_half_step":"0.5 kcal","mass":"100 g","mass_half_step":"0.05 g"}},` +
	`"analysis":{"moisture":"9 %"}}`

func TestFoodJSON(t *testing.T) {
	for _, tt := range []struct {
		food diet.Food
		text string
	}{
		{full, fullText},
		{diet.Food{Label: diet.Label{Energy: 1090}}, `{"label":{"energy":"1090 kcal/kg"}}`},
		{diet.Food{}, `{}`},
	} {
		got, err := json.Marshal(tt.food)
		if err != nil {
			t.Errorf("%s: %v", tt.text, err)
		}
		if diff := cmp.Diff(tt.text, string(got)); diff != "" {
			t.Errorf("written (-want +got):\n%s", diff)
		}
		var back diet.Food
		if err := json.Unmarshal([]byte(tt.text), &back); err != nil {
			t.Errorf("%s: %v", tt.text, err)
		}
		if diff := cmp.Diff(tt.food, back); diff != "" {
			t.Errorf("read (-want +got):\n%s", diff)
		}
	}
}

func TestMenuJSON(t *testing.T) {
	menu := diet.Menu{{Food: full, Amount: diet.Rest()}, {Food: diet.Food{Name: "x"}, Treat: true}}
	const want = `[{"food":` + fullText + `,"amount":"rest"},{"food":{"name":"x"},"treat":true}]`
	got, err := json.Marshal(menu)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, string(got)); diff != "" {
		t.Errorf("written (-want +got):\n%s", diff)
	}
	var back diet.Menu
	if err := json.Unmarshal([]byte(want), &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(menu, back); diff != "" {
		t.Errorf("read (-want +got):\n%s", diff)
	}
}

func TestRefusedJSONLeavesTheReceiver(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{`{"name":"other","label":{"energy":3560}}`, `diet: label.energy "number": want text with a unit, as in "100 kcal/kg"`},
		{`{"name":"other","label":{"energy":"3560"}}`, `diet: label: units: energy density "3560": no unit: want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
		{`{"name":"other","form":"kibble"}`, `diet: form "kibble": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{`{"name":"other","form":1}`, `diet: food.form "number": want text: dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{`{"name":5}`, `diet: food.name "number": want text`},
		{`{"name":"other","for":{"species":["dog"]}}`, `diet: for.species "array": want text: dog, cat, ferret or other`},
		{`{"name":"other","label":{"serving":{"mass":true}}}`, `diet: serving.mass "bool": want text with a unit, as in "100 g"`},
		{`[]`, `diet: food "array": want an object`},
		{`"F01"`, `diet: food "string": want an object`},
	} {
		f := full
		err := json.Unmarshal([]byte(tt.text), &f)
		if err == nil || err.Error() != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.text, err, tt.want)
		}
		if f != full {
			t.Errorf("%s: the receiver became %v", tt.text, f)
		}
	}
	// The rest of the text is that of encoding/json, which has two versions.
	for _, text := range []string{`{"energy":"3560 kcal/kg"}`, `{"label":{"kcal":"356 kcal"}}`, `{"analysis":{"crude_ash":"7 %"}}`} {
		f := full
		if err := json.Unmarshal([]byte(text), &f); err == nil || f != full {
			t.Errorf("%s: unknown member taken: %v", text, err)
		}
	}
	f := full
	if err := f.UnmarshalJSON([]byte(`{} {}`)); err == nil || err.Error() != "diet: food: more than one JSON value" || f != full {
		t.Errorf("two values: %v, %v", f, err)
	}
	var pe *units.ParseError
	if err := json.Unmarshal([]byte(`{"label":{"energy":"3560"}}`), &f); !errors.As(err, &pe) {
		t.Errorf("%v is no ParseError", err)
	}
	menu := diet.Only(full)
	for text, want := range map[string]string{
		`{}`:                                  `diet: menu "object": want an array`,
		`[{"food":{},"amount":"most"}]`:       `diet: amount "most": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest`,
		`[{"food":{},"amount":1}]`:            `diet: item.amount "number": want text: a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest`,
		`[{"food":{},"treat":"yes"}]`:         `diet: item.treat "string": want true or false`,
		`[{"food":{"role":"x"},"treat":"1"}]`: `diet: role "x": want complete or complementary`,
	} {
		if err := json.Unmarshal([]byte(text), &menu); err == nil || err.Error() != want {
			t.Errorf("%s: %v\nwant %s", text, err, want)
		}
		if diff := cmp.Diff(diet.Only(full), menu); diff != "" {
			t.Errorf("%s: the receiver changed (-want +got):\n%s", text, diff)
		}
	}
}

func TestJSONNullIsNotStated(t *testing.T) {
	f := full
	if err := json.Unmarshal([]byte(`null`), &f); err != nil || f != full {
		t.Errorf("null: %v, %v", f, err)
	}
	menu := diet.Only(full)
	if err := json.Unmarshal([]byte(`null`), &menu); err != nil || !cmp.Equal(menu, diet.Only(full)) {
		t.Errorf("null menu: %v, %v", menu, err)
	}
	if err := json.Unmarshal([]byte(`{"name":null,"form":null,"label":null,"analysis":{"moisture":null}}`), &f); err != nil || f != (diet.Food{}) {
		t.Errorf("null members: %v, %v", f, err)
	}
}
