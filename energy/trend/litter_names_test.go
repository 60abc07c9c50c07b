package trend_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// Names that people can't tell apart are one, and none of those has a report. The long s
// and the Kelvin sign are the small s and k of Unicode's folding, and theta has four forms.
func TestNamesThatNobodyTellsApart(t *testing.T) {
	log := []units.Mass{150, 162}
	for _, tt := range []struct {
		names []string
		want  string // whose reports
		err   string
	}{
		{[]string{"A", "B"}, "A,B", ""},
		{[]string{"A", "AA", "A A", "Ä"}, "A,AA,A A,Ä", ""},
		{
			[]string{"A", "a", "B", "A "},
			"B",
			`trend: nursling 2 name "a": want each name once (who tells it from "A"?); ` +
				`trend: nursling 4 name "A ": want each name once (who tells it from "A"?)`,
		},
		{[]string{"B", "Big  Bo", " big bo"}, "B", `trend: nursling 3 name " big bo": want each name once (who tells it from "Big  Bo"?)`},
		{[]string{"Äsk", "ä\u017f\u212a", "B"}, "B", "trend: nursling 2 name \"äſ\u212a\": want each name once (who tells it from \"Äsk\"?)"},
		{[]string{"\u0398", "B", "\u03b8"}, "B", `trend: nursling 3 name "θ": want each name once (who tells it from "Θ"?)`},
		{[]string{"A", "A", "B"}, "B", `trend: nursling 2 name "A": want each name once (stands twice)`},
		{[]string{"  ", "B"}, "B", `trend: nursling 1 name "  ": want a name (not given)`},
	} {
		logs := make(map[string][]units.Mass)
		for _, name := range tt.names {
			logs[name] = log
		}
		reports, err := box(logs, tt.names...).Reports(on(firstDay) + 10)
		var names []string
		for _, r := range reports {
			names = append(names, r.Name)
		}
		got := strings.Join(names, ",")
		if got != tt.want || faultText(err) != tt.err {
			t.Errorf("%q: %s %s\nwant %s %s", tt.names, got, faultText(err), tt.want, tt.err)
		}
	}
}

// A day that is none is said once, and not once more for each nursling.
func TestFaultOfTodayIsSaidOnce(t *testing.T) {
	l := box(map[string][]units.Mass{"A": {150, 162}, "B": {150, 162}}, "A", "B", "A")
	for today, want := range map[trend.Date]string{
		0:  `trend: today "": want a day of the calendar, as in "2026-11-02", from 1900 to 2199 (not given: the clock is never read)`,
		-1: `trend: today "day -1": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`,
	} {
		if reports, err := l.Reports(today); reports != nil || faultText(err) != want {
			t.Errorf("%d: %v, %v", today, reports, err)
		}
	}
}
