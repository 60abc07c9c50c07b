package portion_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
)

const rationGolden = `{"need":{"stage":{"stage":"prescribed","animal":{"species":"dog","weight":"24.9 kg","condition":"5/9"},"daily":"890 kcal","by":"a veterinarian"},"method":"prescription","daily":"890 kcal","low":"890 kcal","high":"890 kcal","reweigh":"1 wk"},"menu":[{"food":{"name":"Tarnwick House Dog Dry","for":{"species":"dog"},"role":"complete","label":{"energy":"3560 kcal/kg","serving":{"name":"cup","energy":"356 kcal","mass":"100 g"}}},"amount":"rest"}],"foods":[{"food":"Tarnwick House Dog Dry","mass":"250 g","energy":"890 kcal"}]}`

func TestRationJSON(t *testing.T) {
	r, err := portion.Weigh(prescribed(890), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	b, err := json.Marshal(r)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(rationGolden, string(b)); d != "" {
		t.Errorf("JSON of a ration (-want +got):\n%s", d)
	}
	var back portion.Ration
	if err := json.Unmarshal(b, &back); err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(r, back); d != "" {
		t.Errorf("a ration through JSON (-want +got):\n%s", d)
	}
}

func TestRationJSONRefusesChangedGrams(t *testing.T) {
	for _, change := range [][2]string{
		{`"mass":"250 g","energy"`, `"mass":"251 g","energy"`},
		{`"energy":"890 kcal"}]`, `"energy":"900 kcal"}]`},
		{`"food":"Tarnwick House Dog Dry","mass"`, `"food":"another","mass"`},
		{`"foods":[`, `"foods":[{"food":"another","mass":"1 g","energy":"1 kcal"},`},
		{`"menu":`, `"extra":1,"menu":`},
		{`"250 g"`, `250`},
	} {
		if !strings.Contains(rationGolden, change[0]) {
			t.Fatalf("%s is not in the record", change[0])
		}
		r, err := portion.Weigh(prescribed(500), diet.Only(kibble))
		if err != nil {
			t.Fatal(err)
		}
		before := r
		if err := json.Unmarshal([]byte(strings.Replace(rationGolden, change[0], change[1], 1)), &r); err == nil {
			t.Errorf("%s: no error", change[1])
		}
		if !r.Equal(before) {
			t.Errorf("%s: the receiver was changed", change[1])
		}
	}
}

func TestWeighedJSON(t *testing.T) {
	r, err := portion.Weigh(prescribed(891), diet.Only(kibble)) // 250.28 g
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	b, err := json.Marshal(w)
	if err != nil {
		t.Fatal(err)
	}
	const tail = `"step":"1 g","foods":[{"food":"Tarnwick House Dog Dry","mass":"250 g","energy":"890 kcal"}]}`
	if !strings.HasSuffix(string(b), tail) {
		t.Errorf("JSON %s, want it to end in %s", b, tail)
	}
	var back portion.Weighed
	if err := json.Unmarshal(b, &back); err != nil || !back.Equal(w) {
		t.Errorf("%s doesn't come back: %v", b, err)
	}
	for _, change := range [][2]string{
		{`"step":"1 g"`, `"step":"100 g"`},
		{`"step":"1 g"`, `"step":"0 g"`},
		{`"mass":"250 g","energy":"890`, `"mass":"251 g","energy":"890`},
	} {
		before := back
		if err := json.Unmarshal([]byte(strings.Replace(string(b), change[0], change[1], 1)), &back); err == nil || !back.Equal(before) {
			t.Errorf("%s: error %v, or the receiver was changed", change[1], err)
		}
	}
	if b, err := json.Marshal(portion.Weighed{}); err != nil || string(b) != "null" {
		t.Errorf("the zero Weighed = %s, %v", b, err)
	}
}

func TestRationJSONNull(t *testing.T) {
	b, err := json.Marshal(portion.Ration{})
	if err != nil || string(b) != "null" {
		t.Errorf("the zero ration = %s, %v, want null", b, err)
	}
	var r portion.Ration
	if err := json.Unmarshal([]byte("null"), &r); err != nil || r.Len() != 0 {
		t.Errorf("null: %v, %d foods, want none", err, r.Len())
	}
}

func FuzzRationJSON(f *testing.F) {
	f.Add([]byte(rationGolden))
	f.Add([]byte("null"))
	f.Add([]byte(`{"need":{},"menu":[],"foods":[]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var r portion.Ration
		if err := json.Unmarshal(data, &r); err != nil {
			if r.Len() != 0 {
				t.Fatalf("a ration came back with %v", err)
			}
			return
		}
		b, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		var back portion.Ration
		if err := json.Unmarshal(b, &back); err != nil || !back.Equal(r) {
			t.Fatalf("%s doesn't come back: %v", b, err)
		}
		if _, err := r.Meals(3, units.Gram); err != nil && !errors.As(err, new(*portion.ScaleError)) && !errors.As(err, new(*units.FieldError)) {
			t.Fatal(err)
		}
	})
}

func FuzzWeighedJSON(f *testing.F) {
	f.Add([]byte(`{"ration":` + rationGolden + `,"step":"1 g","foods":[{"food":"Tarnwick House Dog Dry","mass":"250 g","energy":"890 kcal"}]}`))
	f.Add([]byte(menuGolden))
	f.Add([]byte("null"))
	f.Fuzz(func(t *testing.T, data []byte) {
		var w portion.Weighed
		if err := json.Unmarshal(data, &w); err != nil {
			if w.Len() != 0 {
				t.Fatalf("a weighed ration came back with %v", err)
			}
			return
		}
		b, err := json.Marshal(w)
		if err != nil {
			t.Fatal(err)
		}
		var back portion.Weighed
		if err := json.Unmarshal(b, &back); err != nil || !back.Equal(w) {
			t.Fatalf("%s doesn't come back: %v", b, err)
		}
	})
}
