package trend_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// orphan is a litter of one, born on the first day, weighed every morning from
// the day of that age on.
func orphan(s energy.Species, from int, grams ...units.Mass) trend.Litter {
	n := trend.Nursling{Name: "Moth"}
	for i, w := range grams {
		n.Weights = append(n.Weights, trend.Weighing{Date: on(firstDay) + trend.Date(from-1+i), Weight: w, Readability: units.Gram})
	}
	return trend.Litter{Species: s, Born: on(firstDay), Milk: 1.02, Feeds: 6, Nurslings: []trend.Nursling{n}}
}

func TestOneGoodDayDoesNotEndTheAlarm(t *testing.T) {
	for _, tt := range []struct {
		name   string
		litter trend.Litter
		want   string // the start of the last flag, "" for none
	}{
		{"down, then up", orphan(energy.Cat, 10, 200, 190, 180, 187), "refer lost 4.3 g a day (200 g to 187 g in 3 days): it must gain 7 g or more"},
		{"up and down", orphan(energy.Cat, 10, 200, 207, 200, 207), "refer gained only 2.3 g a day (200 g to 207 g in 3 days): it must gain 7 g or more"},
		{"7 g a day at the mean", orphan(energy.Cat, 10, 200, 205, 211, 221), "note gained only 7 g a day (200 g to 221 g in 3 days): less than the 10 g expected"},
		{"two days only", orphan(energy.Cat, 10, 200, 195, 203), ""},
		{"the first 24 hours don't count", orphan(energy.Cat, 1, 100, 91, 98, 105), ""},
		{"the days after them do", orphan(energy.Cat, 1, 100, 98, 104, 105, 112), "refer gained only 4.7 g a day (98 g to 112 g in 3 days)"},
		{"puppy", orphan(energy.Dog, 10, 400, 400, 404, 419), "refer gained only 6.3 g a day (400 g to 419 g in 3 days): it must gain 14 g or more"}, // 3.5 % of 400 g
	} {
		today := tt.litter.Nurslings[0].Weights[len(tt.litter.Nurslings[0].Weights)-1].Date
		reports, err := tt.litter.Reports(today)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		r := reports[0]
		flag := r.Gains[len(r.Gains)-1].Flag
		got := flag.Level.String() + " " + flag.Text
		if flag == (trend.Flag{}) {
			got = ""
		}
		if !strings.HasPrefix(got, tt.want) || (got == "") != (tt.want == "") || r.Alarm() != strings.HasPrefix(tt.want, "refer") {
			t.Errorf("%s: %q, alarm %v; want %q", tt.name, got, r.Alarm(), tt.want)
		}
	}
}

func TestGainIsSourcedByItsSpecies(t *testing.T) {
	for s, want := range map[energy.Species]string{energy.Cat: "Table 23-5, p. 422", energy.Dog: "Table 16-1, p. 297"} {
		reports, err := orphan(s, 10, 300, 301).Reports(on(firstDay) + 10)
		if err != nil {
			t.Fatal(err)
		}
		if got := reports[0].Gains[0].Flag; got.Level != advice.Refer || got.Source.Where != want {
			t.Errorf("%v: %v, want %s", s, got.Source, want)
		}
	}
}

func TestNobodyIsFedByAnOldWeight(t *testing.T) {
	l := orphan(energy.Cat, 10, 200, 210)
	yesterday := on(firstDay) + 11
	if _, err := l.Reports(yesterday); err != nil {
		t.Errorf("a weight of yesterday is refused: %v", err)
	}
	for today, want := range map[trend.Date]string{
		yesterday + 1: `trend: nursling 1 Moth weights "the newest is of 2026-01-15": want a weighing of 2026-01-16 or 2026-01-17 (weigh it before the next feed)`,
		yesterday + 8: `trend: nursling 1 Moth weights "the newest is of 2026-01-15": want a weighing of 2026-01-23 or 2026-01-24 (weigh it before the next feed)`,
	} {
		if r, err := l.Reports(today); r != nil || err == nil || err.Error() != want {
			t.Errorf("%v: %v\nwant %s", today, err, want)
		}
	}
	// Weighed on day 28, which is yesterday.
	l = orphan(energy.Cat, 27, 400, 410)
	const want = `trend: nursling 1 Moth age "29 d": want 1 d (the day of birth) to 4 wk (older by now: energy.Growth)`
	if _, err := l.Reports(on(firstDay) + 28); err == nil || err.Error() != want {
		t.Errorf("%v\nwant %s", err, want)
	}
}
