package diet_test

import (
	"encoding/json"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

const unitsText = `{"energy":"1090 kcal/kg","serving":{"name":"cup","mass":"230 g"},` +
	`"others":[{"name":"can","energy":"170 kcal","mass":"156 g"},{},{"name":"piece","mass":"5 g","mass_half_step":"0.5 g"}],` +
	`"packs":[{"net":"3.744 kg","price":"31.2 EUR"},{"net":"156 g"}]}`

func unitsLabel(t *testing.T) diet.Label {
	t.Helper()
	price, err := diet.NewPrice(31.20, "EUR")
	if err != nil {
		t.Fatal(err)
	}
	return diet.Label{
		Energy:  1090,
		Serving: diet.Serving{Name: "cup", Mass: 230},
		Others:  diet.Servings{{Name: "can", Energy: 170, Mass: 156}, {}, {Name: "piece", Mass: 5, MassHalfStep: 0.5}},
		Packs:   diet.Packs{{Net: 24 * 156 * units.Gram, Price: price}, {Net: 156}},
	}
}

func TestUnitsAndPacksThroughJSON(t *testing.T) {
	l := unitsLabel(t)
	b, err := json.Marshal(l)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(unitsText, string(b)); diff != "" {
		t.Errorf("written (-want +got):\n%s", diff)
	}
	var back diet.Label
	if err := json.Unmarshal([]byte(unitsText), &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(l, back); diff != "" {
		t.Errorf("read (-want +got):\n%s", diff)
	}
	if back != l {
		t.Error("two equal labels are not the same by ==")
	}
	for _, text := range []string{`{"others":[],"packs":[]}`, `{"others":null,"packs":null}`, `{"others":[{}],"packs":[{}]}`, `{"others":[null]}`} {
		var got diet.Label
		if err := json.Unmarshal([]byte(text), &got); err != nil || got != (diet.Label{}) {
			t.Errorf("%s: %+v, %v; want none", text, got, err)
		}
	}
}

func TestRefusedUnitsAndPacksInJSONLeaveTheReceiver(t *testing.T) {
	for text, want := range map[string]string{
		`{"others":{}}`:                        `diet: others "object": want an array`,
		`{"others":[{},{},{},{},{}]}`:          `diet: label.others "5 units": want at most 4`,
		`{"others":[{"mass":8}]}`:              `diet: serving.mass "number": want text with a unit, as in "100 g"`,
		`{"packs":"7.5 kg"}`:                   `diet: packs "string": want an array`,
		`{"packs":[{},{},{},{},{}]}`:           `diet: label.packs "5 packs": want at most 4`,
		`{"packs":[{"net":7500}]}`:             `diet: pack.net "number": want text with a unit, as in "100 g"`,
		`{"packs":[{"price":31.2}]}`:           `diet: pack.price "number": want text: a number and a currency of three capital letters, as in 1.52 USD`,
		`{"packs":[{"price":"31.2"}]}`:         `diet: price "31.2": want a number and a currency of three capital letters, as in 1.52 USD`,
		`{"packs":[{"net":"1 kg","size":"L"}]`: ``,
		`{"packs":[{"net":"1 kg","size":1}]}`:  ``,
	} {
		l := unitsLabel(t)
		err := json.Unmarshal([]byte(text), &l)
		if err == nil || want != "" && err.Error() != want {
			t.Errorf("%s: %v\nwant %s", text, err, want)
		}
		if l != unitsLabel(t) {
			t.Errorf("%s: the receiver changed", text)
		}
	}
}

// Decoded by themselves, the arrays stay as they were at null and on error.
func TestUnitsAndPacksAlone(t *testing.T) {
	l := unitsLabel(t)
	others, packs := l.Others, l.Packs
	for text, fails := range map[string]bool{`null`: false, `[1]`: true, `[{},{},{},{},{}]`: true} {
		if err := json.Unmarshal([]byte(text), &others); (err != nil) != fails || others != l.Others {
			t.Errorf("others from %s: %v, %+v", text, err, others)
		}
		if err := json.Unmarshal([]byte(text), &packs); (err != nil) != fails || packs != l.Packs {
			t.Errorf("packs from %s: %v, %+v", text, err, packs)
		}
	}
	if err := json.Unmarshal([]byte(`[]`), &others); err != nil || others != (diet.Servings{}) {
		t.Errorf("no others: %v, %+v", err, others)
	}
}
