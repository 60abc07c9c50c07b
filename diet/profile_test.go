package diet_test

import (
	"encoding/json"
	"errors"
	"maps"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// profileOf returns a profile that must be good.
func profileOf(t testing.TB, contents map[diet.Nutrient]diet.PerMcal) diet.Profile {
	t.Helper()
	p, err := diet.Profile{}.With(contents)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// AAFCO, Example B1: 9 % protein and 7 % fat of 1120 kcal/kg, by hand 80.36 and
// 62.5 g/1000 kcal.
func TestProfileOfAnAnalysis(t *testing.T) {
	p, err := cannedB1.Profile(1120)
	if err != nil {
		t.Fatal(err)
	}
	for n, v := range p.All() {
		if want := map[diet.Nutrient]float64{diet.Protein: 80.36, diet.Fat: 62.5}[n]; !isPrinted(float64(v), want, 0.005) {
			t.Errorf("%v: %v, want %v", n, v, want)
		}
	}
	if _, given := p.Of(diet.Calcium); given || len(maps.Collect(p.All())) != 2 {
		t.Error("more is given than the analysis has")
	}
}

func TestWhatIsNotGivenIsNotNothing(t *testing.T) {
	p, err := diet.Analysis{Protein: 20}.Profile(1000)
	if v, given := p.Of(diet.Fat); given || v != 0 || err != nil {
		t.Errorf("fat: %v, %t, %v", v, given, err)
	}
	p, err = diet.Analysis{Protein: 20, None: diet.CrudeFat}.Profile(1000)
	if v, given := p.Of(diet.Fat); !given || v != 0 || err != nil {
		t.Errorf("no fat: %v, %t, %v", v, given, err)
	}
	if _, given := p.Of(0); given {
		t.Error("the zero nutrient is given")
	}
	if _, given := p.Of(99); given {
		t.Error("a nutrient out of range is given")
	}
	if !(diet.Profile{}).IsZero() || p.IsZero() {
		t.Error("IsZero")
	}
}

func TestProfilesAreComparable(t *testing.T) {
	a := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: 2, diet.Taurine: 0})
	b := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Taurine: diet.PerMcal(math.Copysign(0, -1)), diet.Calcium: 2})
	c := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: 2})
	if a != b || !a.Equal(b) || a == c || a.Equal(c) {
		t.Errorf("%v %v %v", a, b, c)
	}
	d, err := c.With(map[diet.Nutrient]diet.PerMcal{diet.Taurine: 0})
	if d != a || err != nil {
		t.Errorf("%v, %v; want %v", d, err, a)
	}
	if d, err = a.With(map[diet.Nutrient]diet.PerMcal{diet.Calcium: 3}); err != nil {
		t.Fatal(err)
	}
	if v, _ := d.Of(diet.Calcium); v != 3 {
		t.Errorf("calcium is %v after it was replaced by 3", v)
	}
	if v, _ := a.Of(diet.Calcium); v != 2 {
		t.Error("With changed its receiver")
	}
}

func TestProfileRefuses(t *testing.T) {
	_, err := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: 2}).With(map[diet.Nutrient]diet.PerMcal{
		0: 1, diet.Protein: -1, diet.Fat: diet.PerMcal(math.NaN()), diet.Calcium: diet.PerMcal(math.Inf(1)), diet.Sodium: 300,
		diet.Iron: 22, diet.Copper: 1, 24: 1,
	})
	const want = `diet: nutrient "out of range": want ` + nutrientList +
		`; diet: profile.protein "-1 g/1000 kcal": want 0 to 300 g/1000 kcal` +
		`; diet: profile.fat "NaN g/1000 kcal": want 0 to 300 g/1000 kcal` +
		`; diet: profile.calcium "+Inf g/1000 kcal": want 0 to 300 g/1000 kcal` +
		`; diet: profile.iron "22 g/1000 kcal": want 0 to 1 g/1000 kcal (milligrams taken for grams?)` +
		`; diet: nutrient "out of range": want ` + nutrientList
	if errorText(err) != want {
		t.Errorf("%v\nwant %s", err, want)
	}
	// kcal/100 g taken for kcal/kg.
	p, err := diet.Analysis{Protein: 26, Fat: 16}.Profile(360)
	if want := `diet: profile.protein "722.2 g/1000 kcal": want 0 to 300 g/1000 kcal; diet: profile.fat "444.4 g/1000 kcal": want 0 to 300 g/1000 kcal`; errorText(err) != want || !p.IsZero() {
		t.Errorf("%v\nwant %s", err, want)
	}
	for _, e := range []units.EnergyDensity{0, -1, units.EnergyDensity(math.NaN()), units.EnergyDensity(math.Inf(1))} {
		p, err := diet.Analysis{Protein: 101}.Profile(e)
		want := `diet: analysis.protein "101 %": want above 0 % and at most 100 %, or none if not known; ` +
			`diet: energy "` + map[bool]string{true: "0 kcal/kg"}[e == 0]
		var field *units.FieldError
		if !p.IsZero() || !errors.As(err, &field) || len(err.Error()) < len(want) || err.Error()[:len(want)] != want {
			t.Errorf("%v: %v, %v\nwant %s", e, p, err, want)
		}
	}
}

func TestProfileJSON(t *testing.T) {
	p := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Iron: 0.022, diet.Protein: 66.8, diet.Taurine: 0})
	const want = `{"protein":"66.8 g/1000 kcal","taurine":"0 g/1000 kcal","iron":"0.022 g/1000 kcal"}`
	if text, err := json.Marshal(p); string(text) != want || err != nil {
		t.Errorf("%s, %v; want %s", text, err, want)
	}
	for _, s := range []string{want, `{"iron":"22 mg/1000 kcal","protein":"66.8 g/Mcal","fat":null,"taurine":"0 g/1000 kcal"}`} {
		var got diet.Profile
		if err := json.Unmarshal([]byte(s), &got); got != p || err != nil {
			t.Errorf("%s: %v, %v", s, got, err)
		}
	}
	for s, want := range map[string]string{
		`{"zinc":"1 g/1000 kcal","protein":"9 g/1000 kcal"}`:           `diet: nutrient "zinc": want ` + nutrientList,
		`{"protein":66.8,"fat":[1]}`:                                   `diet: profile.fat "[1]": want text with a unit, as in "66.8 g/1000 kcal"; diet: profile.protein "66.8": want text with a unit, as in "66.8 g/1000 kcal"`,
		`{"protein":"66.8 g"}`:                                         `diet: content per 1000 kcal "66.8 g": want a mass for 1000 kcal, as in "66.8 g/1000 kcal"`,
		`{"protein":"-1 g/1000 kcal"}`:                                 `diet: profile.protein "-1 g/1000 kcal": want 0 to 300 g/1000 kcal`,
		`{"protein":"1 g/1000 kcal","protein":"2 g/1000 kcal"}`:        `diet: profile: member "protein" stands twice`,
		`{" fat":"1 g/Mcal","fat":"9 g/Mcal"}`:                         `diet: nutrient " fat": want ` + nutrientList,
		`[]`:                                                           `diet: profile "array": want an object`,
		`{"a":"1 g/Mcal","Fat":"1 g/Mcal"}`:                            `diet: profile: member "Fat": want a name in lower case`,
		`{"zinc":"1 g/Mcal","b":null,"a":"2 g/Mcal","fat":"3 g/Mcal"}`: `diet: nutrient "a": want ` + nutrientList + `; diet: nutrient "b": want ` + nutrientList + `; diet: nutrient "zinc": want ` + nutrientList,
	} {
		got := p
		if err := json.Unmarshal([]byte(s), &got); errorText(err) != want || got != p {
			t.Errorf("%s: %v, %v\nwant %s", s, got, err, want)
		}
	}
	got := p
	if err := json.Unmarshal([]byte(`null`), &got); got != p || err != nil {
		t.Errorf("null: %v, %v", got, err)
	}
}
