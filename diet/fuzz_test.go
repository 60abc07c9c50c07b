package diet_test

import (
	"encoding/json"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// FuzzFoodJSON reads any text as a food: no panic, a receiver left alone on
// error, and what was read is written and read back the same.
func FuzzFoodJSON(f *testing.F) {
	for _, s := range []string{
		fullText, `{}`, `null`, `{"label":{"serving":{"name":"can","energy":"170 kcal","mass":"5.5 oz"}}}`,
		`{"label":{"energy":"1490 kJ/100 g"},"form":"wet"}`, `{"for":{"species":"cat, dog","stages":""}}`,
		`{"label":` + unitsText + `}`, `{"label":{"energy":3560}}`, `{"label":null}`, `{"form":"semi_moist"`, `{} {}`, `[]`,
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		food := full
		if err := food.UnmarshalJSON(data); err != nil {
			if food != full {
				t.Fatalf("%q: error %v, but the receiver became %+v", data, err, food)
			}
			return
		}
		text, err := json.Marshal(food)
		if err != nil {
			t.Fatalf("%q was read as %+v, but not written: %v", data, food, err)
		}
		var back diet.Food
		if err := json.Unmarshal(text, &back); err != nil || back != food {
			t.Fatalf("%q: %s was read back as %+v, %v", data, text, back, err)
		}
		if d, err := food.Density(); err == nil && !(d.Energy > 0 && d.Range.Contains(d.Energy)) {
			t.Fatalf("%s: %+v", text, d)
		}
		food.Cautions(energy.Animal{Species: energy.Cat})
	})
}

// FuzzMenuJSON is FuzzFoodJSON for menus.
func FuzzMenuJSON(f *testing.F) {
	for _, s := range []string{`[{"food":` + fullText + `,"amount":"rest"}]`, `[]`, `null`, `[null]`, `[{"treat":true}]`, `[{"amount":""}]`, `[{"amount":"50 %"},{"amount":"45 g"},{"amount":"2 biscuit"}]`, `{}`} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var menu diet.Menu
		if err := menu.UnmarshalJSON(data); err != nil {
			if menu != nil {
				t.Fatalf("%q: error %v, but the receiver became %+v", data, err, menu)
			}
			return
		}
		text, err := json.Marshal(menu)
		if err != nil {
			t.Fatalf("%q was read as %+v, but not written: %v", data, menu, err)
		}
		var back diet.Menu
		if err := json.Unmarshal(text, &back); err != nil || len(back) != len(menu) {
			t.Fatalf("%q: %s was read back as %+v, %v", data, text, back, err)
		}
		for i := range menu {
			if back[i] != menu[i] {
				t.Fatalf("%q: item %d was read back as %+v", data, i, back[i])
			}
		}
		_ = menu.Validate()
	})
}

// FuzzPrinted reads any text as a figure of a label: the value is that of the
// quantity's own parser, and the half-step a positive number.
func FuzzPrinted(f *testing.F) {
	for _, s := range []string{"3560 kcal/kg", "356 kcal/100 g", "1490 kJ/100 g", "3.50 kcal/g", "356 kcal", "5.5 oz", "100 g", "12 lb 4 oz", "0 g", "-5 kcal", "1e3 g", "3560"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		e, half, err := diet.ParseLabelEnergy(s)
		want, _ := units.ParseEnergyDensity(s)
		checkPrinted(t, s, e, want, half, err)
		kcal, kcalHalf, err := diet.ParseServingEnergy(s)
		wantKcal, _ := units.ParseEnergy(s)
		checkPrinted(t, s, kcal, wantKcal, kcalHalf, err)
		g, gHalf, err := diet.ParseServingMass(s)
		wantG, _ := units.ParseMass(s)
		checkPrinted(t, s, g, wantG, gHalf, err)
	})
}

func checkPrinted[Q units.Quantity](t *testing.T, s string, value, want, half Q, err error) {
	t.Helper()
	if err != nil {
		if value != 0 || half != 0 {
			t.Fatalf("%q: %v and %v beside %v", s, value, half, err)
		}
		return
	}
	if value != want || !(half >= 0) || math.IsInf(float64(half), 0) {
		t.Fatalf("%q: %v and %v, want %v", s, value, half, want)
	}
}

// FuzzNames reads any text as each enumeration and set, and writes it back.
func FuzzNames(f *testing.F) {
	for _, s := range []string{"dry", "semi_moist", "Fat_Or_Oil", "complete", "derived", "rest", "50 %", "45 g", "2 biscuit", "0.5 US cup", "1.52 USD", "dog, cat", "growth maintenance", "", " ", ","} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		again(t, s, diet.ParseForm)
		again(t, s, diet.ParseRole)
		again(t, s, diet.ParseOrigin)
		again(t, s, diet.ParseAmount)
		again(t, s, diet.ParsePrice)
		again(t, s, diet.ParseSpeciesSet)
		again(t, s, diet.ParseStages)
	})
}

func again[T text](t *testing.T, s string, parse func(string) (T, error)) {
	t.Helper()
	v, err := parse(s)
	if err != nil {
		return
	}
	if back, err := parse(v.String()); back != v || err != nil {
		t.Fatalf("%q: %v was read back as %v, %v", s, v, back, err)
	}
}
