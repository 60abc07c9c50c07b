package csvrow

import "testing"

func TestNamesThatLookTheSameAreTheSame(t *testing.T) {
	for _, same := range [][]string{
		{"Rex", "rex", "REX", "Re\u200bx", "Rex \u200b", "\u200b Rex", "Re\ufe0fx", "Re\u034fx"},
		{"Rex 2", "rex  2", "Rex\u00a02", "Rex \u00a0 2"},
		{"Élan", "élan", "ÉLAN"},
		{"a é", "a  É", "A\u00a0é"},
	} {
		want := string(AppendKey(nil, same[0]))
		for _, name := range same {
			if got := string(AppendKey(nil, name)); got != want {
				t.Errorf("key of %q is %q, want %q", name, got, want)
			}
		}
	}
	keys := map[string]string{}
	for _, name := range []string{"Rex", "Rex 2", "Rex2", "Réx", "Ré x", "R éx", "é", "e"} {
		key := string(AppendKey(nil, name))
		if other, ok := keys[key]; ok {
			t.Errorf("%q and %q have one key", name, other)
		}
		keys[key] = name
	}
}
