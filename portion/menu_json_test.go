package portion_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
)

// 946 - 2 × 28 = 890 kcal, 250 g.
const menuGolden = `{"ration":{"need":{"stage":{"stage":"prescribed","animal":{"species":"dog","weight":"24.9 kg","condition":"5/9"},"daily":"946 kcal","by":"a veterinarian"},"method":"prescription","daily":"946 kcal","low":"946 kcal","high":"946 kcal","reweigh":"1 wk"},` +
	`"menu":[{"food":{"name":"Tarnwick House Dog Dry","for":{"species":"dog"},"role":"complete","label":{"energy":"3560 kcal/kg","serving":{"name":"cup","energy":"356 kcal","mass":"100 g"}}},"amount":"rest"},` +
	`{"food":{"name":"House biscuit","form":"dry","role":"complementary","label":{"energy":"3500 kcal/kg","serving":{"name":"biscuit","energy":"28 kcal","mass":"8 g"}}},"amount":"2 biscuit","treat":true}],` +
	`"foods":[{"food":"Tarnwick House Dog Dry","mass":"250 g","energy":"890 kcal"},{"food":"House biscuit","mass":"16 g","energy":"56 kcal","pieces":2,"unit":"biscuit","treat":true}]},` +
	`"step":"1 g","foods":[{"food":"Tarnwick House Dog Dry","mass":"250 g","energy":"890 kcal"},{"food":"House biscuit","mass":"16 g","energy":"56 kcal","pieces":2,"unit":"biscuit","treat":true}]}`

func menuOfJSON(t *testing.T) portion.Weighed {
	t.Helper()
	w, err := fed(given(946), diet.Menu{
		{Food: kibble, Amount: diet.Rest()}, {Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true},
	})
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func TestMenuThroughJSON(t *testing.T) {
	w := menuOfJSON(t)
	b, err := json.Marshal(w)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(menuGolden, string(b)); d != "" {
		t.Errorf("JSON (-want +got):\n%s", d)
	}
	var back portion.Weighed
	if err := json.Unmarshal([]byte(menuGolden), &back); err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(w, back); d != "" {
		t.Errorf("through JSON (-want +got):\n%s", d)
	}
}

func TestMenuJSONRefusesWhatTheMenuDoesNotGive(t *testing.T) {
	w := menuOfJSON(t)
	const piece = `"energy":"56 kcal","pieces":2,"unit":"biscuit","treat":true}]}`
	for change, want := range map[[2]string]string{
		{piece + `,"step"`, strings.Replace(piece, "2", "3", 1) + `,"step"`}:   `portion: ration.foods[1].pieces "3 biscuit, a treat": want 2 biscuit, a treat, as in the menu`,
		{piece, strings.Replace(piece, `"unit":"biscuit"`, `"unit":"can"`, 1)}: `portion: ration.foods[1].pieces "2 can, a treat": want 2 biscuit, a treat, as in the menu`,
		{piece, strings.Replace(piece, `,"treat":true`, ``, 1)}:                `portion: ration.foods[1].pieces "2 biscuit": want 2 biscuit, a treat, as in the menu`,
		{`"2 biscuit"`, `"4 biscuit"`}:                                         `portion: ration.foods[0].mass "250 g": want 234.26966292134833 g of Tarnwick House Dog Dry, by the need and the label`,
		{`"2 biscuit"`, `"2 can"`}:                                             `diet: menu[1].amount "2 can": want a unit on the label of "House biscuit": biscuit`,
		{`"2 biscuit"`, `"50 %"`}:                                              `diet: menu[1].amount "50 %": want a mass or a count for a treat, as in 5 g or 2 biscuit`,
		{`"2 biscuit"`, `2`}:                                                   ``, // the text of encoding/json
	} {
		if !strings.Contains(menuGolden, change[0]) {
			t.Fatalf("%s is not in the record", change[0])
		}
		got := w
		err := json.Unmarshal([]byte(strings.Replace(menuGolden, change[0], change[1], 1)), &got)
		if err == nil || want != "" && !strings.Contains(err.Error(), want) {
			t.Errorf("%s: error %v, want %s", change[1], err, want)
		}
		if !got.Equal(w) {
			t.Errorf("%s: the receiver was changed", change[1])
		}
	}
}

func TestMenusAllocateNothing(t *testing.T) {
	need, menu := prescribed(1237), day(30, 20, 2, 50, true)
	dst := make([]portion.Meal, 0, 3*len(menu))
	if allocs := testing.AllocsPerRun(1000, func() {
		r, err := portion.Weigh(need, menu)
		if err != nil {
			panic(err)
		}
		if _, err := r.AppendMeals(dst, 3, units.Gram); err != nil {
			panic(err)
		}
	}); allocs != 0 {
		t.Errorf("five foods to three meals allocate %v times, want none", allocs)
	}
}
