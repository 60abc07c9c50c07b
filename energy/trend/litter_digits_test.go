package trend_test

import (
	"strconv"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// report returns the page of a litter of one.
func report(t *testing.T, l trend.Litter) trend.Report {
	t.Helper()
	w := l.Nurslings[0].Weights
	reports, err := l.Reports(w[len(w)-1].Date)
	if err != nil {
		t.Fatal(err)
	}
	return reports[0]
}

func TestOneWeighingIsFedWithoutAGain(t *testing.T) {
	r := report(t, orphan(energy.Cat, 10, 200))
	if len(r.Gains) != 0 || r.Mean != 0 || r.Days != 0 || r.Alarm() {
		t.Errorf("%v, %v a day in %d days, alarm %v", r.Gains, r.Mean, r.Days, r.Alarm())
	}
	// A mean of nothing is another thing.
	if r := report(t, orphan(energy.Cat, 10, 200, 190, 200)); r.Mean != 0 || r.Days != 2 {
		t.Errorf("%v a day in %d days", r.Mean, r.Days)
	}
	within(t, "kcal", r.Need.Daily.Kilocalories(), 45, 1e-9) // 22.5 kcal for each 100 g
	l := orphan(energy.Cat, 10)
	const want = `trend: nursling 1 Moth weights "0 weighings": want one or more`
	if _, err := l.Reports(on(firstDay) + 9); err == nil || err.Error() != want {
		t.Errorf("%v, want %s", err, want)
	}
}

func TestGainOfADayCounts(t *testing.T) {
	r := report(t, orphan(energy.Cat, 10, 200, 206))
	if len(r.Gains) != 1 || r.Gains[0].Days != 1 || !r.Alarm() {
		t.Errorf("%v, alarm %v: want 6 g and an alarm", r.Gains, r.Alarm())
	}
	within(t, "g a day", r.Mean.Grams(), 6, 1e-12)
	if r := report(t, orphan(energy.Cat, 10, 200, 207)); r.Alarm() {
		t.Error("7 g are an alarm")
	}
	// The last weighing counts, not the ones before it.
	if r := report(t, orphan(energy.Cat, 10, 200, 204, 215)); r.Alarm() || r.Gains[0].Flag == (trend.Flag{}) {
		t.Errorf("%v, alarm %v: want one on the first gain only", r.Gains, r.Alarm())
	}
}

// The need of the day looks at the weighing of the day before, and at no other.
func TestNeedKnowsTheDayBefore(t *testing.T) {
	for _, tt := range []struct {
		name  string
		grams []units.Mass
		gap   trend.Date // days from the last but one to the last
		want  bool
	}{
		{"one", []units.Mass{200}, 1, false},
		{"two, 5 g", []units.Mass{200, 205}, 1, true},
		{"two, 12 g", []units.Mass{200, 212}, 1, false},
		{"three, 5 g", []units.Mass{190, 200, 205}, 1, true},
		{"three, 12 g", []units.Mass{199, 200, 212}, 1, false},
		{"5 g in two days", []units.Mass{200, 205}, 2, false},
		{"5 g in three days", []units.Mass{200, 205}, 3, false},
	} {
		l := orphan(energy.Cat, 10, tt.grams...)
		w := l.Nurslings[0].Weights
		w[len(w)-1].Date += tt.gap - 1
		found := false
		for _, c := range report(t, l).Need.Cautions() {
			found = found || strings.HasPrefix(c.Text, "gained only 5 g")
		}
		if found != tt.want {
			t.Errorf("%s: %v", tt.name, report(t, l).Need.Cautions())
		}
	}
}

func TestFeedsAreOneToTwentyFour(t *testing.T) {
	for feeds, want := range map[int]string{0: `trend: feeds "0": want 1 to 24 a day`, 1: "", 24: "", 25: `trend: feeds "25": want 1 to 24 a day`} {
		l := orphan(energy.Cat, 10, 200)
		l.Feeds = feeds
		reports, err := l.Reports(on(firstDay) + 9)
		if got := ""; err != nil {
			got = err.Error()
			if got != want {
				t.Errorf("%d feeds: %s, want %s", feeds, got, want)
			}
			continue
		}
		// 45 kcal of 1.02 kcal/mL are 44.1 mL, 8 mL a feed or less: 6 feeds.
		if got := reports[0].Feeds; want != "" || got != max(feeds, 6) {
			t.Errorf("%d feeds: %d", feeds, got)
		}
	}
	// 200 g take 8 mL a feed, 192 mL in 24: 45 kcal in that are 0.2344 kcal/mL.
	for milk, want := range map[units.EnergyPerVolume]int{0.235: 24, 0.2343: 0, 0.2446: 23, 0.2445: 24, 3: 6} {
		l := orphan(energy.Cat, 10, 200)
		l.Milk = milk
		reports, err := l.Reports(on(firstDay) + 9)
		got := 0
		if err == nil {
			got = reports[0].Feeds
		} else if !strings.HasSuffix(err.Error(), "(too thin)") {
			t.Error(err)
		}
		if got != want {
			t.Errorf("milk of %v: %d feeds, %v; want %d", milk, got, err, want)
		}
	}
}

func TestGainIsSaidAsItIs(t *testing.T) {
	for _, tt := range []struct {
		name   string
		litter trend.Litter
		gap    trend.Date
		want   string
	}{
		{"nothing", orphan(energy.Cat, 10, 200, 200), 1, "refer gained nothing (200 g to 200 g in 1 day): it must gain 7 g"},
		{"a gram", orphan(energy.Cat, 10, 200, 201), 1, "refer gained only 1 g a day (200 g to 201 g in 1 day): it must gain 7 g"},
		{"half a gram", orphan(energy.Cat, 10, 200, 201), 2, "refer gained only 0.5 g a day (200 g to 201 g in 2 days): it must gain 7 g"},
		{"half a gram less", orphan(energy.Cat, 10, 200, 199), 2, "refer lost 0.5 g a day (200 g to 199 g in 2 days): it must gain 7 g"},
		{"a gram less", orphan(energy.Cat, 10, 200, 199), 1, "refer lost 1 g a day (200 g to 199 g in 1 day): it must gain 7 g"},
		{"the first 24 hours, a slight loss", orphan(energy.Cat, 1, 100, 95), 1, "note lost 5 g a day (100 g to 95 g in 1 day): a slight loss is usual in the first 24 hours"},
		{"the first 24 hours, nothing", orphan(energy.Cat, 1, 100, 100), 1, "note gained nothing (100 g to 100 g in 1 day): a slight loss is usual in the first 24 hours"},
		{"the first 24 hours, a gram", orphan(energy.Cat, 1, 100, 101), 1, ""},
		{"the first 24 hours, a tenth", orphan(energy.Cat, 1, 100, 90), 1, "note lost 10 g a day (100 g to 90 g in 1 day): a slight loss is usual in the first 24 hours"},
		{"the first 24 hours, more", orphan(energy.Cat, 1, 100, 89), 1, "refer lost 11 g a day (100 g to 89 g in 1 day): more than the slight loss of the first 24 hours"},
		{"the second 24 hours", orphan(energy.Cat, 2, 100, 95), 1, "refer lost 5 g a day (100 g to 95 g in 1 day): it must gain 7 g"},
	} {
		w := tt.litter.Nurslings[0].Weights
		w[1].Date += tt.gap - 1
		flag := report(t, tt.litter).Gains[0].Flag
		got := flag.Level.String() + " " + flag.Text
		if flag == (trend.Flag{}) {
			got = ""
		}
		if !strings.HasPrefix(got, tt.want) || (got == "") != (tt.want == "") {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// A day is 1 on that of the birth.
func TestNurslingIsWeighedFromItsBirthOn(t *testing.T) {
	l := orphan(energy.Cat, 1, 100)
	if r := report(t, l); r.Need.Animal.Age != 1 {
		t.Errorf("%v old on the day of its birth", r.Need.Animal.Age)
	}
	l.Born++
	const want = `trend: born "2026-01-06": want a day up to 2026-01-05 (in the future); trend: nursling 1 Moth weighing 1 date "2026-01-05": want the day of birth, 2026-01-06, or later`
	if _, err := l.Reports(on(firstDay)); err == nil || err.Error() != want {
		t.Errorf("%v, want %s", err, want)
	}
	for i := range 2 { // the age is that of the newest weighing
		r, err := orphan(energy.Cat, 5, 130, 141).Reports(on(firstDay) + 5 + trend.Date(i))
		if err != nil || r[0].Need.Animal.Age != 6 || r[0].Gains[0].Age != 6 {
			t.Errorf("%s days after: %v, %v", strconv.Itoa(i), r, err)
		}
	}
	// Of day 28 there is a page, also where it was weighed the day before.
	if _, err := orphan(energy.Cat, 26, 400, 412).Reports(on(firstDay) + 27); err != nil {
		t.Error(err)
	}
	// Half as much again in a day is doubted, a little less is not.
	if _, err := orphan(energy.Dog, 20, 400, 590).Reports(on(firstDay) + 20); err != nil {
		t.Error(err)
	}
}
