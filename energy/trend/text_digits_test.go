package trend_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// Nothing given is no text, and no text is nothing given.
func TestZeroIsNoText(t *testing.T) {
	for name, got := range map[string]string{
		"date":        trend.Date(0).String(),
		"appetite":    trend.Appetite(0).String(),
		"trend":       trend.Trend{}.String(),
		"step":        trend.Step{}.Explain() + trend.Step{}.Sentence(),
		"requirement": trend.Requirement{}.Explain(),
	} {
		if got != "" {
			t.Errorf("no %s is written as %q", name, got)
		}
	}
	if got := trend.Date(1).String(); got != "day 1" {
		t.Errorf("the first day of the year 1 is written as %q", got)
	}
	if c := (trend.Requirement{}).Cautions(); c != nil {
		t.Errorf("no requirement has cautions: %v", c)
	}
	if w, band := (trend.Trend{}).At(on(firstDay)); w != 0 || band != (units.Range[units.Mass]{}) {
		t.Errorf("no trend goes through %v, %v", w, band)
	}
	if got := (trend.Flag{}).String(); got != "" {
		t.Errorf("a flag of nothing: %q", got)
	}
	if (trend.Trend{}).Shown() {
		t.Error("no trend shows a change")
	}
	day, ate := on(firstDay), trend.Normal
	if err := day.UnmarshalText(nil); err != nil || day != 0 {
		t.Errorf("no text is the day %v, %v", day, err)
	}
	if err := ate.UnmarshalText(nil); err != nil || ate != 0 {
		t.Errorf("no text is the appetite %v, %v", ate, err)
	}
	if err := ate.UnmarshalText([]byte("2")); err != nil || ate != trend.Normal {
		t.Errorf("2 is read as %v, %v", ate, err)
	}
	day = on(firstDay)
	if err := day.UnmarshalText([]byte("5")); err == nil || day != on(firstDay) {
		t.Errorf("5 is read as the day %v, %v", day, err)
	}
	if b, err := json.Marshal(trend.Scored{}); err != nil || string(b) != `{"date":"","appetite":""}` {
		t.Errorf("%s, %v", b, err)
	}
}

func TestDayEndsAtMidnight(t *testing.T) {
	for _, at := range []time.Time{
		time.Date(2026, 1, 5, 0, 0, 0, 0, time.UTC), time.Date(2026, 1, 5, 23, 59, 59, 999_999_999, time.UTC),
		time.Date(2026, 1, 5, 0, 0, 0, 0, time.FixedZone("", 14*60*60)),
	} {
		if got := trend.DateOf(at); got != on("2026-01-05") {
			t.Errorf("%v is in %v", at, got)
		}
	}
	if got := trend.DateOf(time.Date(1931, 1, 5, 23, 59, 59, 999_999_999, time.UTC)); got != on("1931-01-05") {
		t.Errorf("the last second of 1931-01-05 is in %v", got)
	}
}

// A percentage has one decimal from 10 on and two below, a mass in kilograms two,
// in grams one.
func TestFigureIsRoundedForReading(t *testing.T) {
	for _, tt := range []struct {
		before, now float64 // kg
		want        string
	}{
		{5, 4.5281, "lost 9.44 % in 7 days (5 kg to 4.53 kg): a veterinarian must see it"}, // 471.9 / 5000 = 9.438 %
		{5, 4.4781, "lost 10.4 % in 7 days (5 kg to 4.48 kg): a veterinarian must see it"}, // 521.9 / 5000 = 10.438 %
		{1, 0.9454, "lost 5.46 % in 7 days (1 kg to 945.4 g): a veterinarian must see it"},
	} {
		w := trend.Watch{Animal: energy.Animal{Species: energy.Ferret}, Today: on(firstDay) + 7, Weights: byDay(1, 0, tt.before, 7, tt.now)}
		flags, err := w.Flags()
		if err != nil || !slices.ContainsFunc(flags, func(f trend.Flag) bool { return f.Text == tt.want }) {
			t.Errorf("%v, %v\nwant %s", flags, err, tt.want)
		}
	}
}

func TestDoubtSaysOnWhichSideOfTheLine(t *testing.T) {
	const same = " the line of the other weighings; the same scale, empty carrier, same hour?"
	for off, want := range map[units.Mass]string{0: "0 g above", 0.5: "0.5 g above", -0.5: "0.5 g below", 40: "40 g above"} {
		d := trend.Doubt{Weighing: trend.Weighing{Date: on(firstDay), Weight: 100}, Off: off}
		if got := d.String(); got != "2026-01-05: 100 g is "+want+same {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

// 100 g on a scale of 1 g: √(1/12 + 0.3²) = 0.416 g; 2.306 × √2 × 0.416 = 1.36 g in a week.
func TestTrendOfLessThanAGramHasItsSign(t *testing.T) {
	for _, tt := range []struct {
		kg    float64
		shown bool
		want  string
	}{
		{0.1005, false, "gains 0.5 g a week (-0.9 g to 1.9 g), 0.5 % of 100 g at the start, 0.5 % of 100.5 g now: a change can't be told from none"},
		{0.0995, false, "loses 0.5 g a week (-0.9 g to 1.9 g), 0.5 % of 100 g at the start, 0.5 % of 99.5 g now: a change can't be told from none"},
		{0.0990, false, "loses 1 g a week (-0.4 g to 2.4 g), 1 % of 100 g at the start, 1.01 % of 99 g now: a change can't be told from none"},
		{0.1020, true, "gains 2 g a week (0.6 g to 3.4 g), 2 % of 100 g at the start, 1.96 % of 102 g now"},
		{0.0980, true, "loses 2 g a week (0.6 g to 3.4 g), 2 % of 100 g at the start, 2.04 % of 98 g now"},
	} {
		got, err := byDay(1, 0, 0.1, 7, tt.kg).Trend(on("2026-01-12"))
		if err != nil || got.String() != tt.want || got.Shown() != tt.shown {
			t.Errorf("%v: shown %v\n%s\nwant\n%s", err, got.Shown(), got, tt.want)
		}
	}
}

// 100 g of 5 kg in a day are 2 %, seven times that a week.
func TestChangeOfADay(t *testing.T) {
	got, err := byDay(10, 0, 5, 1, 4.9).Trend(on("2026-01-06"))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []trend.Change{got.SinceStart, got.SinceLast} {
		within(t, "percent", float64(c.Percent), -2, 1e-12)
		within(t, "percent a week", float64(c.PerWeek), -14, 1e-12)
		within(t, "g", c.Mass.Grams(), -100, 1e-9)
		if c.Days != 1 {
			t.Errorf("%d days", c.Days)
		}
	}
}

// By hand: 240 kcal eaten; 7 g gained in 14 days are 0.5 g a day, 3.96 kcal. The
// weighings are off by √(8.33 + 144) = 12.3 g, the rate by 2.306 × √2 × 12.3 / 14 =
// 2.87 g a day, 22.8 kcal; the tissue by 2920 kcal/kg × 0.5 g = 1.5 kcal upwards.
func TestSmallGainIsExplainedAsOne(t *testing.T) {
	weights := weighings(10, "2026-11-02", 4.0, "2026-11-16", 4.007)
	var intake trend.Intake
	for d := on("2026-11-02"); d < on("2026-11-16"); d++ {
		intake = append(intake, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 60, Density: 4000})
	}
	r, err := trend.NewRequirement(weights, intake, on("2026-11-16"))
	if err != nil {
		t.Fatal(err)
	}
	const want = `eaten     240 kcal a day over 14 days
weights   gains 3.5 g a week (-16.6 g to 23.6 g), 0.09 % of 4 kg at the start, 0.09 % of 4.01 kg now: a change can't be told from none
formula   eaten - 7920 kcal for each kg gained
          = 240 kcal - 7.92 × 0.5 g a day = 236 kcal
source    Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010, Table 27-15, p. 528: 7,920 kcal/kg
uncertain 213 kcal to 259 kcal a day: by the interval of the weights, and tissue of 5000 to 8230 kcal/kg
`
	if got := r.Explain(); got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
}

// A dog of 40 kg that should weigh 32 on 330 kcal; 0.6 × 70 × 32^0.75 is 565. The one
// caution is for a veterinarian, and stands first.
//
// The weighings lie on a line, and are expected to be off by √(833 + 13695) = 120.5 g,
// √(8/9) of which count, 113.6 g. 2.262 × 113.6 / √392 is 12.98 g a day, 90.9 g a week.
func TestProposalIsReadFromTheGravestDown(t *testing.T) {
	s := next(t, dog(330), byDay(100, 0, 40, 14, 39, 28, 38), "2026-02-02")
	const want = `caution   refer: 330 kcal a day is less than WeightLoss gives without a veterinarian: only on a veterinarian's figure [ours, not published]
verdict   On target: it loses 1.25 % of its initial weight a week, and the target is 1 % to 2 % a week.
proposal  330 kcal a day, weigh again on 2026-02-16
goal      32 kg, from 40 kg
weights   loses 500 g a week (409.1 g to 590.9 g), 1.25 % of 40 kg at the start, 1.32 % of 38 kg now
reason    330 kcal a day stay as they are.
reason    Weigh again on 2026-02-16, on the same scale. (Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010, Box 27-12, p. 532: every 2 weeks for the first 2 months)
`
	if got := s.Explain(); got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
	if c := s.Cautions(); len(c) != 1 || c[0].Level != advice.Refer {
		t.Errorf("%v: want one, for a veterinarian", c)
	}
	// Of one weighing there is no line.
	if got := next(t, dog(1100), byDay(100, 0, 40), firstDay).Explain(); strings.Contains(got, "\nweights ") {
		t.Errorf("one weighing has a trend:\n%s", got)
	}
}
