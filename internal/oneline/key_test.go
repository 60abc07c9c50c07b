package oneline_test

import (
	"testing"

	"example.org/bowlgram/internal/oneline"
)

func TestNamesThatLookTheSameAreTheSame(t *testing.T) {
	for _, same := range [][]string{
		{"Rex", "rex", "REX", "Re\u200bx", "Rex \u200b", "\u200b Rex", "Re\ufe0fx", "Re\u034fx"},
		{"Rex 2", "rex  2", "Rex\u00a02", "Rex \u00a0 2"},
		{"Élan", "élan", "ÉLAN"},
		{"a é", "a  É", "A\u00a0é"},
		{"a b", "A\tb", "\ra\r\nB\v\f"},
		{"sk", "\u017fK", "S\u212a"},             // the long s and the Kelvin sign
		{"\u0398", "\u03b8", "\u03d1", "\u03f4"}, // theta has four forms
	} {
		want := string(oneline.AppendKey(nil, same[0]))
		for _, name := range same {
			if got := string(oneline.AppendKey(nil, name)); got != want {
				t.Errorf("key of %q is %q, want %q", name, got, want)
			}
			if got := string(oneline.AppendKey([]byte("before"), name)); got != "before"+want {
				t.Errorf("%q appended is %q", name, got)
			}
		}
	}
	keys := map[string]string{}
	for _, name := range []string{"Rex", "Rex 2", "Rex2", "Réx", "Ré x", "R éx", "é", "e", "r\u00ebx", "Rox", "[", "{", "@", "`", "e\u0301"} {
		key := string(oneline.AppendKey(nil, name))
		if other, ok := keys[key]; ok {
			t.Errorf("%q and %q have one key", name, other)
		}
		keys[key] = name
	}
}
