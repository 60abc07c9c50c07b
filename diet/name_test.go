package diet_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
)

// A name with a line break would write a line of its own into the working that
// is shown to a colleague. 256 bytes are ours.
func TestNameStaysOnItsLine(t *testing.T) {
	const want = ": want a name of at most 256 bytes on one line, without control characters"
	long := strings.Repeat("a", 256)
	for _, name := range []string{"", "Ohlmarsh Adult Dry", "Für Kätzchen: Huhn & Reis", long} {
		f := diet.Food{Name: name, Label: diet.Label{Energy: 3560}}
		if _, err := f.Density(); err != nil {
			t.Errorf("food %.20q: %v", name, err)
		}
	}
	for _, name := range []string{"dry\nuse      500 g", "dry\r", "dry\x00", "dry\u2028", "dry\u202ewet", "\xff", long + "a"} {
		label := diet.Label{Energy: 3560}
		_, err := diet.Food{Name: name, Label: label}.Density()
		if err == nil || !strings.HasPrefix(err.Error(), "diet: name ") || !strings.HasSuffix(err.Error(), want) {
			t.Errorf("food %.20q: %v", name, err)
		}
		label.Serving = diet.Serving{Name: name, Mass: 100}
		_, err = diet.Food{Label: label}.Density()
		if err == nil || !strings.HasPrefix(err.Error(), "diet: label.serving.name ") || !strings.HasSuffix(err.Error(), want) {
			t.Errorf("serving %.20q: %v", name, err)
		}
		label.Serving, label.Others[1] = diet.Serving{}, diet.Serving{Name: name, Mass: 5}
		_, err = diet.Food{Label: label}.Density()
		if err == nil || !strings.HasPrefix(err.Error(), "diet: label.others[1].name ") || !strings.HasSuffix(err.Error(), want) {
			t.Errorf("unit %.20q: %v", name, err)
		}
		m := diet.Mix{Name: name, Parts: []diet.Part{{Food: diet.Food{Label: diet.Label{Energy: 3560}}, Amount: diet.Fixed(50)}}}
		_, err = m.Food()
		if err == nil || !strings.HasPrefix(err.Error(), "diet: mix.name ") || !strings.HasSuffix(err.Error(), want) {
			t.Errorf("mix %.20q: %v", name, err)
		}
	}
}

// The names of the parts are that of the mix as far as they fit on a line.
func TestMixOfLongNames(t *testing.T) {
	named := func(n int) diet.Part {
		return diet.Part{Food: diet.Food{Name: strings.Repeat("a", n), Label: diet.Label{Energy: 3560}}, Amount: diet.Fixed(50)}
	}
	for second, want := range map[int]string{ // 100, " + " and the second
		153: strings.Repeat("a", 100) + " + " + strings.Repeat("a", 153),
		154: "a mix of 2 foods",
	} {
		f, err := diet.Mix{Parts: []diet.Part{named(100), named(second)}}.Food()
		if err != nil || f.Name != want {
			t.Errorf("100 and %d bytes: %q, %v", second, f.Name, err)
		}
	}
}
