package diet_test

import (
	"encoding/json"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
)

// A list that is full is read, and one more is refused: four units, four packs,
// eight foods.
func TestListsAreReadUntilTheyAreFull(t *testing.T) {
	list := func(n int) []byte { return []byte("[" + strings.TrimSuffix(strings.Repeat("{},", n), ",") + "]") }
	for _, tt := range []struct {
		most int
		read func([]byte) error
		want string
	}{
		{4, new(diet.Servings).UnmarshalJSON, `diet: label.others "5 units": want at most 4`},
		{4, new(diet.Packs).UnmarshalJSON, `diet: label.packs "5 packs": want at most 4`},
		{8, new(diet.Menu).UnmarshalJSON, `diet: menu "9 foods": want at most 8`},
	} {
		if err := tt.read(list(tt.most)); err != nil {
			t.Error(err)
		}
		if err := tt.read(list(tt.most + 1)); errorText(err) != tt.want {
			t.Errorf("%v\nwant %s", err, tt.want)
		}
	}
}

// All of a profile are all of its nutrients, from the first to the last.
func TestAllOfAProfile(t *testing.T) {
	contents := make(map[diet.Nutrient]diet.PerMcal)
	for n := diet.Protein; n <= diet.Manganese; n++ {
		contents[n] = 0.5
	}
	p := profileOf(t, contents)
	if got := maps.Collect(p.All()); !maps.Equal(got, contents) || got[diet.Manganese] != 0.5 {
		t.Errorf("%v", slices.Sorted(maps.Keys(got)))
	}
	if text, err := json.Marshal(p); err != nil || !strings.HasPrefix(string(text), `{"protein":"0.5 g/1000 kcal",`) || !strings.HasSuffix(string(text), `,"manganese":"0.5 g/1000 kcal"}`) {
		t.Errorf("%s, %v", text, err)
	}
}

// None of a nutrient is zero, and no negative one: profiles that say the same are
// equal, and so is the text of a finding about it.
func TestNoneOfANutrientHasNoSign(t *testing.T) {
	none := diet.PerMcal(math.Copysign(0, -1))
	if p, q := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Fat: none}), profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Fat: 0}); p != q {
		t.Errorf("%v and %v", p, q)
	} else if v, _ := p.Of(diet.Fat); math.Signbit(float64(v)) {
		t.Errorf("%v", v)
	}
	a := growingDog(t, diet.AAFCO, 0, 0)
	a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: 0, diet.Phosphorus: 0})
	if f := findingOf(t, a, diet.Calcium, diet.RatioMaximum); math.Signbit(float64(f.Margin)) || f.Short() {
		t.Errorf("%+v", f)
	}
}
