package scoop_test

import (
	"encoding/json"
	"testing"

	"example.org/bowlgram/portion/scoop"
)

const stored = `{"n":3,"mean":"98 g","sd":"2 g","lowest":{"number":2,"mass":"96 g"},"highest":{"number":3,"mass":"100 g"},"readability":"1 g"}`

func TestCalibrationAsJSON(t *testing.T) {
	c := must[scoop.Calibration](t)(scoop.Calibrate(masses(98, 96, 100), g))
	b, err := json.Marshal(c)
	if err != nil || string(b) != stored {
		t.Errorf("%s, %v\nwant %s", b, err, stored)
	}
	var d scoop.Calibration
	if err := json.Unmarshal([]byte(stored), &d); err != nil || d != c {
		t.Errorf("%+v, %v", d, err)
	}
	if b, err := json.Marshal(scoop.Calibration{}); err != nil || string(b) != "null" {
		t.Errorf("zero: %s, %v", b, err)
	}
	if b, err := json.Marshal(scoop.Calibration{N: 3, Mean: 98 * g, SD: 2 * g}); err != nil || string(b) != `{"n":3,"mean":"98 g","sd":"2 g"}` {
		t.Errorf("of the figures alone: %s, %v", b, err)
	}
}

func TestJSONOfAnotherKindIsRefused(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{`{}`, `scoop: weighings "0": want 3 to 1000000; scoop: mean "0 g": want 1 mg to 25 kg`},
		{`{"n":3,"mean":"98 g","sd":"-2 g"}`, `scoop: SD "-2 g": want 0 g to √n times the mean`},
		{`{"n":3,"mean":"98 g"}`, `scoop: readability "0 g": want the step of the scale (all weighings are equal, and it hides their spread)`},
		{`{"n":3,"mean":98,"sd":"2 g"}`, ""},
		{`{"n":3,"mean":"98","sd":"2 g"}`, ""},
		{`{"n":3.5,"mean":"98 g","sd":"2 g"}`, ""},
		{`{"n":3,"mean":"98 g","sd":"2 g","cv":"2 %"}`, ""},
		{`{"n":3,"n":4,"mean":"98 g","sd":"2 g"}`, ""},
		{`{"N":3,"mean":"98 g","sd":"2 g"}`, ""},
		{`[]`, ""},
	} {
		before := scoop.Calibration{N: 7, Mean: 1 * g, SD: 1 * g}
		c := before
		err := json.Unmarshal([]byte(tt.text), &c)
		if err == nil || tt.want != "" && err.Error() != tt.want {
			t.Errorf("%s: error %v, want %s", tt.text, err, tt.want)
		}
		if c != before {
			t.Errorf("%s: the receiver became %+v", tt.text, c)
		}
	}
	c := scoop.Calibration{N: 7}
	if err := json.Unmarshal([]byte("null"), &c); err != nil || c.N != 7 {
		t.Errorf("null: %+v, %v", c, err)
	}
}

func FuzzCalibrationJSON(f *testing.F) {
	f.Add([]byte(stored))
	f.Add([]byte(`{"n":3,"mean":"98 g","sd":"2 g"}`))
	f.Add([]byte(`null`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var c scoop.Calibration
		if json.Unmarshal(data, &c) != nil || c == (scoop.Calibration{}) {
			return
		}
		if err := c.Validate(); err != nil {
			t.Fatalf("read, yet %v", err)
		}
		if c.Explain() == "" {
			t.Fatal("no working")
		}
		b, err := json.Marshal(c)
		var d scoop.Calibration
		if err != nil || json.Unmarshal(b, &d) != nil || d != c {
			t.Fatalf("%s, %v: %+v, want %+v", b, err, d, c)
		}
	})
}
