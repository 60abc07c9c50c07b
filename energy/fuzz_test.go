package energy_test

import (
	"encoding"
	"encoding/json"
	"testing"

	"example.org/bowlgram/energy"
)

// fuzzText checks that what parse takes is printed, and read back as the same.
func fuzzText[T interface {
	comparable
	encoding.TextMarshaler
}](f *testing.F, parse func(string) (T, error), seeds ...string,
) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		v, err := parse(s)
		if err != nil {
			if v != *new(T) {
				t.Errorf("%q: %v beside an error", s, v)
			}
			return
		}
		b, err := v.MarshalText()
		if err != nil {
			t.Fatalf("%q was taken and can't be printed: %v", s, err)
		}
		if back, err := parse(string(b)); back != v || err != nil {
			t.Errorf("%q is %v, printed %q, read back %v, %v", s, v, b, back, err)
		}
	})
}

func FuzzParseCondition(f *testing.F) {
	fuzzText(f, energy.ParseCondition, "5/9", " 3 / 5 ", "5", "0/9", "10/9", "+4/9", "")
}

func FuzzParseAge(f *testing.F) {
	fuzzText(f, energy.ParseAge, "10 d", "12wk", "6 months", "4 y", "40 y", "14601 d", "12", "-1 d", "")
}

func FuzzParseCircumstances(f *testing.F) {
	fuzzText(f, energy.ParseCircumstances, "", "growing ill", "ILL\tgrowing", "tube_fed liver_disease", "sick")
}

func FuzzStoredJSON(f *testing.F) {
	for _, s := range goldenStages {
		f.Add([]byte(s))
	}
	f.Add([]byte(`{"stage":"adult"}`))
	f.Add([]byte(`null`))
	f.Add([]byte(`{"stage":"adult","stage":"resting","Animal":{"age":"3 d"}}`))
	f.Fuzz(func(t *testing.T, in []byte) {
		var s energy.Stored
		if json.Unmarshal(in, &s) != nil {
			if s != (energy.Stored{}) {
				t.Errorf("%s: refused, and the receiver became %+v", in, s)
			}
			return
		}
		out, err := json.Marshal(s)
		if err != nil {
			t.Fatalf("%s was taken and can't be written: %v", in, err)
		}
		var back energy.Stored
		if err := json.Unmarshal(out, &back); err != nil || back != s {
			t.Fatalf("%s was written as %s and read back as %+v, %v; want %+v", in, out, back, err, s)
		}
		if s.Stage == nil {
			return
		}
		if e, err := s.Stage.Estimate(); err == nil && !(0 < e.Low && e.Low <= e.Daily && e.Daily <= e.High) {
			t.Errorf("%s: %v from %v to %v", in, e.Daily, e.Low, e.High)
		}
	})
}

func FuzzEstimateJSON(f *testing.F) {
	for _, s := range stages() {
		b, err := json.Marshal(estimate(f, s))
		if err != nil {
			f.Fatal(err)
		}
		f.Add(b)
	}
	f.Add([]byte(`null`))
	f.Add([]byte(`{"stage":{"stage":"adult"},"method":"fediaf","daily":"1 kcal","low":"1 kcal","high":"1 kcal","reweigh":"1 d"}`))
	f.Fuzz(func(t *testing.T, in []byte) {
		var e energy.Estimate
		if json.Unmarshal(in, &e) != nil {
			if e != (energy.Estimate{}) {
				t.Errorf("%s: refused, and the receiver became %+v", in, e)
			}
			return
		}
		if e == (energy.Estimate{}) {
			return // null
		}
		out, err := json.Marshal(e)
		if err != nil {
			t.Fatalf("%s was taken and can't be written: %v", in, err)
		}
		var back energy.Estimate
		if err := json.Unmarshal(out, &back); err != nil || back != e {
			t.Fatalf("%s was written as %s and read back as %+v, %v; want %+v", in, out, back, err, e)
		}
		// What was stored may be of any stage and method: no panic.
		if e.Explain() == "" {
			t.Errorf("%s: no working", in)
		}
	})
}
