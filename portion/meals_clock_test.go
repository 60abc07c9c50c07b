package portion_test

import (
	"encoding/json"
	"testing"

	"example.org/bowlgram/portion"
)

func TestClockText(t *testing.T) {
	for in, want := range map[string]string{"07:30": "07:30", "7:30": "07:30", " 00:00 ": "00:00", "23:59": "23:59", "12:05": "12:05"} {
		c, err := portion.ParseClock(in)
		if err != nil || c.String() != want {
			t.Errorf("%q: %q, %v; want %q", in, c, err, want)
		}
		if back, err := portion.ParseClock(c.String()); err != nil || !back.Equal(c) {
			t.Errorf("%q read back: %v, %v", c, back, err)
		}
	}
	if m, ok := portion.At(7, 30).Minutes(); m != 450 || !ok {
		t.Errorf("07:30: %d, %t", m, ok)
	}
	if midnight := portion.At(0, 0); midnight.IsZero() || midnight.String() != "00:00" {
		t.Errorf("midnight is not given: %q", midnight)
	}
	var none portion.Clock
	if _, ok := none.Minutes(); ok || none.String() != "" || !none.IsZero() {
		t.Error("the zero clock is a time")
	}
}

func TestClockRefused(t *testing.T) {
	const form = `: want hours and minutes of a 24-hour clock, as in "07:30"`
	for in, want := range map[string]string{
		"":       `portion: time ""` + form,
		"7":      `portion: time "7"` + form,
		"7:5":    `portion: time "7:5"` + form,
		"24:00":  `portion: time "24:00"` + form,
		"12:60":  `portion: time "12:60"` + form,
		"-1:00":  `portion: time "-1:00"` + form,
		"007:00": `portion: time "007:00"` + form,
		"7:30pm": `portion: time "7:30pm"` + form + ` (6 pm is 18:00)`,
	} {
		c := portion.At(1, 2)
		if got, err := portion.ParseClock(in); err == nil || err.Error() != want || !got.IsZero() {
			t.Errorf("%q: %v, %v; want %s", in, got, err, want)
		}
		if in == "" {
			continue
		}
		if err := c.UnmarshalText([]byte(in)); err == nil || c != portion.At(1, 2) {
			t.Errorf("%q: %v, receiver %v", in, err, c)
		}
	}
	for _, c := range []portion.Clock{portion.At(24, 0), portion.At(0, 60), portion.At(-1, 0), portion.At(0, -1)} {
		if b, err := json.Marshal(c); err == nil {
			t.Errorf("written as %s", b)
		}
		if c.IsZero() || c.String() != "" {
			t.Errorf("%q", c)
		}
	}
	c := portion.At(1, 2)
	if err := c.UnmarshalText(nil); err != nil || !c.IsZero() {
		t.Errorf("empty text: %v, %v", c, err)
	}
}

func FuzzClock(f *testing.F) {
	for _, s := range []string{"07:30", "7:30", "24:00", "00:00", "7:30 pm", ":", "9:9"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		c, err := portion.ParseClock(s)
		if err != nil {
			if !c.IsZero() {
				t.Fatalf("%q: %v came back with the error", s, c)
			}
			return
		}
		if back, err := portion.ParseClock(c.String()); err != nil || back != c {
			t.Fatalf("%q is written %q, which is read as %v, %v", s, c, back, err)
		}
	})
}
