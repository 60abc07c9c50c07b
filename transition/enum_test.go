package transition_test

import (
	"encoding"
	"testing"

	"example.org/bowlgram/transition"
)

func TestEnumerationsAreReadBack(t *testing.T) {
	for i, want := range []string{"", "energy", "mass", "old_total", "amount_fed"} {
		b := transition.Basis(i)
		text, err := b.MarshalText()
		back := transition.Basis(99)
		if string(text) != want || b.String() != want || err != nil || back.UnmarshalText(text) != nil || back != b {
			t.Errorf("%d: %q, %v, %d", i, text, err, back)
		}
	}
	for i, want := range []string{"", "hold", "step_back", "missed", "stop"} {
		k := transition.EventKind(i)
		text, err := k.MarshalText()
		back := transition.EventKind(99)
		if string(text) != want || k.String() != want || err != nil || back.UnmarshalText(text) != nil || back != k {
			t.Errorf("%d: %q, %v, %d", i, text, err, back)
		}
	}
	for i, want := range []string{"", "if_lasting", "today", "now"} {
		c := transition.Call(i)
		text, err := c.MarshalText()
		back := transition.Call(99)
		if string(text) != want || c.String() != want || err != nil || back.UnmarshalText(text) != nil || back != c {
			t.Errorf("%d: %q, %v, %d", i, text, err, back)
		}
	}
	for _, v := range []encoding.TextMarshaler{transition.Basis(5), transition.EventKind(5), transition.Call(4)} {
		if b, err := v.MarshalText(); err == nil || b != nil {
			t.Errorf("%#v is written as %q", v, b)
		}
	}
	if b, err := transition.ParseBasis("Mass"); b != transition.ByMass || err != nil {
		t.Errorf("%v, %v", b, err)
	}
	if _, err := transition.ParseEventKind("wait"); err == nil || err.Error() != `transition: event "wait": want hold, step_back, missed or stop` {
		t.Errorf("%v", err)
	}
}
