package units_test

import (
	"encoding/json"
	"errors"
	"flag"
	"testing"

	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
)

// record has each quantity once and ranges of two.
type record struct {
	Weight   units.Mass                       `json:"weight"`
	Daily    units.Energy                     `json:"daily"`
	Water    units.Volume                     `json:"water"`
	Density  units.EnergyDensity              `json:"density"`
	Liquid   units.EnergyPerVolume            `json:"liquid"`
	Bulk     units.BulkDensity                `json:"bulk"`
	Moisture units.Percent                    `json:"moisture"`
	Run      units.Length                     `json:"run"`
	Span     units.Range[units.EnergyDensity] `json:"span"`
	Range    units.Range[units.Mass]          `json:"range"`
}

func TestJSONRoundTrip(t *testing.T) {
	in := record{
		24.9 * units.Kilogram, 1248, 1.2 * units.Litre, 3560, 1.02, 0.42, 9, 12 * units.Kilometre,
		units.Range[units.EnergyDensity]{Low: 3555, High: 3565},
		units.Range[units.Mass]{Low: -0.1, High: 1500},
	}
	const want = `{"weight":"24.9 kg","daily":"1248 kcal","water":"1.2 L","density":"3560 kcal/kg",` +
		`"liquid":"1.02 kcal/mL","bulk":"0.42 g/mL","moisture":"9 %","run":"12 km",` +
		`"span":{"low":"3555 kcal/kg","high":"3565 kcal/kg"},"range":{"low":"-0.1 g","high":"1.5 kg"}}`
	b, err := json.Marshal(in)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, string(b)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	var out record
	if err := json.Unmarshal(b, &out); err != nil {
		t.Fatal(err)
	}
	if out != in {
		t.Errorf("got %+v, want %+v", out, in)
	}
}

func TestJSONRefusesABareNumber(t *testing.T) {
	for _, text := range []string{`{"weight":24.9}`, `{"weight":0}`, `{"weight":true}`, `{"weight":{}}`} {
		r := record{Weight: 7}
		if err := json.Unmarshal([]byte(text), &r); err == nil || r.Weight != 7 {
			t.Errorf("%s: error %v, weight %v; want an error and 7 g", text, err, r.Weight)
		}
	}
}

func TestJSONNeedsTheUnitInTheString(t *testing.T) {
	r := record{Weight: 7}
	err := json.Unmarshal([]byte(`{"weight":"24.9"}`), &r)
	var pe *units.ParseError
	if !errors.As(err, &pe) || pe.Reason != "no unit" || r.Weight != 7 {
		t.Errorf("error %v, weight %v; want a ParseError and 7 g", err, r.Weight)
	}
}

// The documented rule of encoding/json for a type that reads itself from text.
func TestJSONNullLeavesTheValue(t *testing.T) {
	r := record{Weight: 7, Span: units.Range[units.EnergyDensity]{Low: 1, High: 2}}
	want := r
	if err := json.Unmarshal([]byte(`{"weight":null,"span":{"low":null,"high":null}}`), &r); err != nil || r != want {
		t.Errorf("got %+v, %v; want %+v", r, err, want)
	}
}

func TestJSONMapKeys(t *testing.T) {
	b, err := json.Marshal(map[units.Mass]int{units.Kilogram: 2})
	if err != nil || string(b) != `{"1 kg":2}` {
		t.Fatalf("got %s, %v", b, err)
	}
	var m map[units.Mass]int
	if err := json.Unmarshal([]byte(`{"1000 g":2}`), &m); err != nil || m[units.Kilogram] != 2 {
		t.Errorf("got %v, %v", m, err)
	}
}

func TestFlag(t *testing.T) {
	var m units.Mass
	fs := flag.NewFlagSet("scale", flag.ContinueOnError)
	fs.TextVar(&m, "scale", units.Gram, "step of the scale")
	if m != units.Gram {
		t.Errorf("default %v, want 1 g", m)
	}
	if err := fs.Parse([]string{"-scale", "5 g"}); err != nil || m != 5 {
		t.Errorf("got %v, %v; want 5 g", m, err)
	}
}
