package trend_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

func TestLogOfTheWrongKindIsRefusedInWords(t *testing.T) {
	for _, tt := range []struct {
		text string
		into any
		want string
	}{
		{`{}`, new(trend.Weights), `trend: weights "object": want an array`},
		{`"4.3 kg"`, new(trend.Weights), `trend: weights "string": want an array`},
		{`5`, new(trend.Intake), `trend: intake "number": want an array`},
		{`{}`, new(trend.Intake), `trend: intake "object": want an array`},
		{`{}`, new(trend.Appetites), `trend: appetites "object": want an array`},
		{`true`, new(trend.Appetites), `trend: appetites "bool": want an array`},
		{`[{}, 5]`, new(trend.Weights), `trend: weighing "number": want an object`},
		{`{"name":"Pim","weights":{}}`, new(trend.Nursling), `trend: weights "object": want an array`},
	} {
		err := json.Unmarshal([]byte(tt.text), tt.into)
		var field *units.FieldError
		if err == nil || err.Error() != tt.want || !errors.As(err, &field) {
			t.Errorf("%T of %s: %v\nwant %s", tt.into, tt.text, err, tt.want)
		}
	}
}

func TestLogIsLeftByAnErrorAndByNull(t *testing.T) {
	weights, intake, appetites := custardWeights(), trend.Intake{{Food: "dry"}}, trend.Appetites{{Appetite: trend.Normal}}
	for _, text := range []string{"null", "{}", `[{"date":"2026-11-02"},{"date":5}]`} {
		for _, v := range []any{&weights, &intake, &appetites} {
			if err := json.Unmarshal([]byte(text), v); (err == nil) != (text == "null") {
				t.Errorf("%T of %s: %v", v, text, err)
			}
		}
	}
	if !slices.Equal(weights, custardWeights()) || intake[0].Food != "dry" || appetites[0].Appetite != trend.Normal {
		t.Errorf("became %v, %v, %v", weights, intake, appetites)
	}
	// An empty array is a log all the same: of nothing.
	if err := json.Unmarshal([]byte("[]"), &weights); err != nil || weights == nil || len(weights) != 0 {
		t.Errorf("[]: %v, %v", weights, err)
	}
}
