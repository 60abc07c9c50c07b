package trend_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy/trend"
)

// A name stands in a list, a cell or an error: each of them is a line.
func TestNameIsOneLine(t *testing.T) {
	for _, name := range []string{"dry\n", "dry\r\nwet", "dry\tadult", "dry\x00", "dry\x7f", "dry\u2028wet", strings.Repeat("d", 257)} {
		log := trend.Intake{{Date: on(firstDay), Meal: 1, Food: name, Offered: 30, Density: 3850}}
		err := log.Check(on(firstDay))
		if err == nil || !strings.HasSuffix(err.Error(), "want a name of at most 256 bytes on one line, without control characters") {
			t.Errorf("food %q: %v", name, err)
		}
		l := kittens()
		l.Nurslings = l.Nurslings[:1]
		l.Nurslings[0].Name = name
		l.Nurslings[0].Weights = nil
		_, err = l.Reports(on("2026-11-08"))
		const want = `want a name of at most 256 bytes on one line, without control characters; trend: nursling 1 weights "0 weighings": want one or more`
		if err == nil || !strings.HasSuffix(err.Error(), want) || strings.ContainsAny(err.Error(), "\n\r\t\x00\x7f") {
			t.Errorf("nursling %q: %v", name, err)
		}
	}
	l := kittens()
	l.Nurslings[0].Name, l.Nurslings[0].Weights = "", nil
	const want = `trend: nursling 1 name "": want a name (not given); trend: nursling 1 weights "0 weighings": want one or more`
	if _, err := l.Reports(on("2026-11-08")); err == nil || err.Error() != want {
		t.Errorf("no name: %v", err)
	}
	log := trend.Intake{{Date: on(firstDay), Meal: 1, Food: "Huhn & Reis, für Kätzchen", Offered: 30, Density: 3850}}
	if err := log.Check(on(firstDay)); err != nil {
		t.Error(err)
	}
}
