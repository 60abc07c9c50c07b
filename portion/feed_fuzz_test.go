package portion_test

import (
	"encoding/json"
	"testing"

	"example.org/bowlgram/portion"
)

// fuzzRecord decodes text into a T: an error leaves it as it was, and what is
// taken is written and read back as the same text.
func fuzzRecord[T any](t *testing.T, text []byte, before T) {
	t.Helper()
	written := func(v T) string {
		b, err := json.Marshal(v)
		if err != nil {
			return "not written" // a hand-made value out of range
		}
		return string(b)
	}
	v, was := before, written(before)
	if err := json.Unmarshal(text, &v); err != nil {
		if written(v) != was {
			t.Fatalf("%s: %v changed the receiver", text, err)
		}
		return
	}
	first := written(v)
	var back T
	if err := json.Unmarshal([]byte(first), &back); err != nil || written(back) != first {
		t.Fatalf("%s is written %s, which is read with %v as %s", text, first, err, written(back))
	}
}

func FuzzFeedJSON(f *testing.F) {
	for _, v := range []any{kittenAt(200, 7), tubeDay(2, 6)} {
		b, err := json.Marshal(v)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(b)
	}
	f.Add([]byte(`{"liquid":{"energy":"1 kcal/mL","water":"84 %"},"feeds":5,"flush":"10 mL"}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		fuzzRecord(t, text, portion.Bottle{Feeds: 3})
		fuzzRecord(t, text, portion.Tube{Feeds: 3})
		// Whatever was read is planned or refused.
		var b portion.Bottle
		if json.Unmarshal(text, &b) == nil {
			if f, err := b.Plan(); err == nil && len(f.All()) != b.Feeds {
				t.Fatalf("%d feeds of %d", len(f.All()), b.Feeds)
			}
		}
		var p portion.Tube
		if json.Unmarshal(text, &p) == nil {
			if f, err := p.Plan(); err == nil && len(f.All()) != p.Feeds {
				t.Fatalf("%d feeds of %d", len(f.All()), p.Feeds)
			}
		}
	})
}

func FuzzTimetableJSON(f *testing.F) {
	f.Add([]byte(`[{"at":"07:30","parts":2,"foods":["Tarnwick House Dog Dry"]},{"at":"18:00"}]`))
	f.Add([]byte(`[{},{"parts":1000000}]`))
	f.Fuzz(func(t *testing.T, text []byte) {
		fuzzRecord(t, text, portion.Mealtime{Parts: 3})
		var table portion.Timetable
		if json.Unmarshal(text, &table) != nil {
			return
		}
		w := onGrams(t, 351)
		meals, err := w.Serve(table)
		var sum int64
		for _, m := range meals {
			sum += m.Count
		}
		if err == nil && sum != w.Count(0) {
			t.Fatalf("%s: %d of %d", text, sum, w.Count(0))
		}
	})
}

func FuzzSupplyJSON(f *testing.F) {
	b, err := json.Marshal(demoSupply(f))
	if err != nil {
		f.Fatal(err)
	}
	f.Add(b)
	f.Add([]byte(`{"plans":[],"days":28,"waste":"5 %","store":[{"food":{"name":"dry"},"mass":"5 kg"}]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		fuzzRecord(t, text, portion.Supply{Days: 3})
		var s portion.Supply
		if json.Unmarshal(text, &s) == nil {
			if lines, err := s.Lines(); err != nil && lines != nil {
				t.Fatalf("lines came back with %v", err)
			}
		}
	})
}
