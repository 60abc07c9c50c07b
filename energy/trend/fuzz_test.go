package trend_test

import (
	"encoding/json"
	"slices"
	"testing"

	"example.org/bowlgram/energy/trend"
)

func FuzzParseDate(f *testing.F) {
	for _, s := range []string{"2026-11-02", "2028-02-29", "1900-01-01", "2199-12-31", "2026-02-29", "", "0000-00-00"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		d, err := trend.ParseDate(s)
		if err != nil {
			if d != 0 {
				t.Errorf("%q: %v beside an error", s, d)
			}
			return
		}
		if d.String() != s {
			t.Errorf("%q is written as %q", s, d)
		}
	})
}

// FuzzWeights: any log that is read and taken gives a trend or an error, and is
// written and read back as the same.
func FuzzWeights(f *testing.F) {
	f.Add([]byte(`[{"date":"2026-11-02","weight":"4.3 kg","readability":"10 g"},{"date":"2026-11-09","weight":"4.2 kg","readability":"10 g"}]`))
	f.Add([]byte(`[{"date":"2026-11-02","weight":"44 lb","readability":"0.1 kg","confirmed":true}]`))
	f.Add([]byte(`[null]`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var log trend.Weights
		if json.Unmarshal(data, &log) != nil {
			return
		}
		today := on("2199-12-31")
		got, err := log.Trend(today)
		if err != nil {
			return
		}
		if !got.Interval.Contains(got.Rate) || got.String() == "" {
			t.Errorf("%s: %v outside %v", data, got.Rate, got.Interval)
		}
		b, err := json.Marshal(log)
		if err != nil {
			t.Fatal(err)
		}
		var back trend.Weights
		if err := json.Unmarshal(b, &back); err != nil || !slices.Equal(back, log) {
			t.Errorf("%s is read back as %v, %v", b, back, err)
		}
	})
}
