package trend_test

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// round writes a value and reads it back into a new one of its type.
func roundTrip[T any](t *testing.T, v T, want string) {
	t.Helper()
	b, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	if want != "" && string(b) != want {
		t.Errorf("written %s\nwant    %s", b, want)
	}
	var back T
	if err := json.Unmarshal(b, &back); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(back, v) {
		t.Errorf("read back %v, want %v", back, v)
	}
}

func TestLogsSurviveJSON(t *testing.T) {
	roundTrip(t, custardWeights()[:2],
		`[{"date":"2026-11-02","weight":"4.3 kg","readability":"10 g"},{"date":"2026-11-05","weight":"4.18 kg","readability":"10 g"}]`)
	roundTrip(t, trend.Appetites{{Date: on("2026-11-02"), Appetite: trend.NotEating}}, `[{"date":"2026-11-02","appetite":"none"}]`)
	roundTrip(t, trend.Intake{{Date: on("2026-11-02"), Meal: 1, Food: "dry", Offered: 30, Left: 0.5, Density: 3850}},
		`[{"date":"2026-11-02","meal":1,"food":"dry","offered":"30 g","left":"0.5 g","density":"3850 kcal/kg"}]`)
	roundTrip(t, kittens(), "")
	plan := harbottlePlan()
	plan.Target, plan.Asked = units.Range[units.Percent]{Low: 0.5, High: 1}, true
	roundTrip(t, plan, "")
	w := trend.Watch{Animal: energy.Animal{Species: energy.Cat}, Today: on("2026-11-09"), Weights: custardWeights()[:3], Shelter: true}
	flags, err := w.Flags()
	if err != nil {
		t.Fatal(err)
	}
	roundTrip(t, flags, "")
	roundTrip(t, trend.Order{Written: on("2026-11-02"), Reweigh: energy.Week}, `{"written":"2026-11-02","reweigh":"1 wk"}`)
}

func TestRecordIsReadStrictly(t *testing.T) {
	before := trend.Weighing{Date: on("2026-11-02"), Weight: 4300, Readability: 10}
	for _, tt := range []struct{ text, want string }{
		{`{"date":"2026-11-02","weight":"4.3 kg","readability":"10 g","weigth":"4 kg"}`, `trend: weighing: json: unknown field "weigth": want date, weight, readability or confirmed`},
		{`{"date":"2026-11-02","weight":"4.3 kg","weight":"9.3 kg"}`, `trend: weighing: member "weight" stands twice`},
		{`{"date":"2026-11-02","Weight":"4.3 kg"}`, `trend: weighing: member "Weight": want a name in lower case`},
		{`{"weight":4.3}`, ``},
		{`{"date":"2026-02-29"}`, `trend: date "2026-02-29": ` + wantDay},
		{`{"date":"2.11.2026"}`, `trend: date "2.11.2026": ` + wantDay},
		{`{"date":"0206-11-02"}`, `trend: date "0206-11-02": ` + wantDay},
	} {
		w := before
		err := json.Unmarshal([]byte(tt.text), &w)
		if err == nil || tt.want != "" && err.Error() != tt.want {
			t.Errorf("%s: %v, want %s", tt.text, err, tt.want)
		}
		if w != before {
			t.Errorf("%s: the receiver became %v", tt.text, w)
		}
	}
	w := before
	if err := json.Unmarshal([]byte("null"), &w); err != nil || w != before {
		t.Errorf("null: %v, %v", w, err)
	}
	for name, v := range map[string]any{
		"served": new(trend.Served), "scored": new(trend.Scored), "plan": new(trend.Plan), "litter": new(trend.Litter),
		"nursling": new(trend.Nursling), "order": new(trend.Order), "flag": new(trend.Flag),
	} {
		want := `trend: ` + name + `: json: unknown field "nonsense": want `
		if err := json.Unmarshal([]byte(`{"nonsense":1}`), v); err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%T: %v, want %s", v, err, want)
		}
	}
	for text, v := range map[string]any{
		`{"written":"2026-11-02","written":"2026-11-03"}`: new(trend.Order),
		`{"name":"Pim","name":"Dab"}`:                     new(trend.Nursling),
		`{"date":"2026-11-02","date":"2026-11-03"}`:       new(trend.Flag),
	} {
		if err := json.Unmarshal([]byte(text), v); err == nil || !strings.HasSuffix(err.Error(), "stands twice") {
			t.Errorf("%s: %v", text, err)
		}
	}
}

func TestResultsAreNotStored(t *testing.T) {
	const wantTrend, wantStep = "trend: a Trend isn't stored: keep the Weights", "trend: a Step isn't stored: keep the Plan and the Weights"
	step := next(t, harbottlePlan(), harbottleWeights(), "2026-12-28")
	for _, tt := range []struct {
		value, into any
		want        string
	}{
		{step, new(trend.Step), wantStep},
		{step.Trend, new(trend.Trend), wantTrend},
		{trend.Requirement{}, new(trend.Requirement), wantTrend},
	} {
		if b, err := json.Marshal(tt.value); err == nil || !strings.HasSuffix(err.Error(), tt.want) {
			t.Errorf("%T is written as %s, %v", tt.value, b, err)
		}
		if err := json.Unmarshal([]byte(`{"Trend":{}}`), tt.into); err == nil || err.Error() != tt.want {
			t.Errorf("%T is read: %v", tt.into, err)
		}
	}
}
