package trend_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// A weight is a slip at half of the one before it and at 1.75 times it: ours.
func TestSlipBeginsAtItsThreshold(t *testing.T) {
	for _, tt := range []struct {
		before, now float64
		slip        bool
	}{
		{5, 2.5, true}, {5, 2.51, false}, // 0.502
		{4, 7, true}, {4, 6.98, false}, // 1.745
	} {
		err := byDay(1, 0, tt.before, 7, tt.now).Check(on("2026-01-12"))
		if (err != nil) != tt.slip {
			t.Errorf("%v after %v kg: %v", tt.now, tt.before, err)
		}
	}
}

// Which of the weighings are said to be the slip.
func TestSlipIsTheWeighingThatAgreesWithNone(t *testing.T) {
	confirmed := func(log trend.Weights, i int) trend.Weights {
		log[i].Confirmed = true
		return log
	}
	for _, tt := range []struct {
		name string
		log  trend.Weights
		want []string
	}{
		{"the first", byDay(10, 0, 44, 7, 20, 14, 20.1, 21, 20.2), []string{"weighing 1 "}},
		{"the first, and a later one", byDay(10, 0, 44, 7, 20, 14, 20.1, 21, 44), []string{"weighing 1 ", "weighing 4 "}},
		{"the first is confirmed", confirmed(byDay(10, 0, 44, 7, 20, 14, 20.1), 0), []string{"weighing 2 ", "weighing 3 "}},
		{"the second", byDay(10, 0, 20, 7, 44, 14, 20.1), []string{"weighing 2 "}},
		{"the third agrees with both", byDay(10, 0, 20, 7, 44, 14, 30), []string{"weighing 2 "}},
		{"each is far from the other", byDay(10, 0, 20, 7, 44, 14, 100), []string{"weighing 2 ", "weighing 3 "}},
		{"of two the second", byDay(10, 0, 44, 7, 20), []string{"weighing 2 "}},
		{"the confirmed one counts", confirmed(byDay(10, 0, 20, 7, 44, 14, 45), 1), nil},
		{"three at the end", byDay(10, 0, 20, 7, 20, 14, 44, 21, 44.1), []string{"weighing 3 ", "weighing 4 "}},
	} {
		err := tt.log.Check(on("2026-02-02"))
		var got []string
		if err != nil {
			got = strings.Split(err.Error(), "; trend: ")
		}
		if len(got) != len(tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
			continue
		}
		for i, want := range tt.want {
			if !strings.HasPrefix(strings.TrimPrefix(got[i], "trend: "), want) {
				t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
			}
		}
	}
}

// A slip of unit is named where it puts the weight within 20 % of the other: ours.
// 44.1 lb are 20.0034 kg, a tenth of a kilogram 100 g, 10 oz 283.495 g.
func TestSlipOfUnitIsNamedUpToAFifthOff(t *testing.T) {
	const other = ": another animal, a carrier, the unit?"
	for _, tt := range []struct {
		before, now float64 // kg
		want        string
	}{
		{20, 44.1234, ": pounds? 44.123 lb is 20.01 kg"},
		{20, 52.9, ": pounds? 52.9 lb is 24 kg"}, // 23.995 kg, 19.98 % off
		{20, 53, other},                          // 24.040 kg, 20.2 %
		{20, 9.07, ": kilograms read as pounds? 9.07 kg is 20 lb"},
		{20, 9.98, ": kilograms read as pounds? 9.98 kg is 22 lb"}, // 22.002
		{0.1, 119.9, ": grams? 119.9 g"},
		{0.1, 120.05, other},
		{0.15, 150, ": grams? 150 g"},
		{4, 0.004798, ": kilograms? 4.8 kg"},
		{4, 0.004802, other},
		{4, 0.004252, ": kilograms? 4.25 kg"},
		{4, 47.9, ": the decimal point?"},
		{4, 48.1, other},
		{4, 0.479, ": the decimal point?"},
		{4, 0.481, other},
		{0.35, 0.01234, ": ounces? 12.3 oz is 349.8 g"},
		{0.35, 0.0148, ": ounces? 14.8 oz is 419.6 g"}, // 19.9 % off
		{0.35, 0.0149, other},
	} {
		log := byDay(0.001, 0, tt.before, 7, tt.now)
		err := log.Check(on("2026-01-12"))
		if err == nil || !strings.Contains(err.Error(), " %"+tt.want+"; weigh again") {
			t.Errorf("%v after %v kg: %v\nwant %s", tt.now, tt.before, err, tt.want)
		}
	}
}

func TestStepOfTheScaleIsAtMostHalfTheWeight(t *testing.T) {
	for step, ok := range map[units.Mass]bool{50: true, 51: false, 0.1: true} {
		if err := byDay(step, 0, 0.1).Check(on(firstDay)); (err == nil) != ok {
			t.Errorf("%v: %v", step, err)
		}
	}
}

// The longest log is 7500 days: ours, twenty years and a half of every day.
func TestLogIsAtMostTwentyYears(t *testing.T) {
	var weights trend.Weights
	var appetites trend.Appetites
	for i := range 7501 {
		d := on("2000-01-01") + trend.Date(i)
		weights = append(weights, trend.Weighing{Date: d, Weight: 4000, Readability: 10})
		appetites = append(appetites, trend.Scored{Date: d, Appetite: trend.Normal})
	}
	today := on("2026-01-01")
	// 99 meals on each day.
	intake := make(trend.Intake, 0, 99*7500+1)
	for i := range cap(intake) {
		intake = append(intake, trend.Served{Date: on("2000-01-01") + trend.Date(i/99), Meal: 1 + i%99, Food: "dry", Offered: 9, Density: 3850})
	}
	for _, tt := range []struct {
		got  error
		want string
	}{
		{weights[:7500].Check(today), ""},
		{weights.Check(today), `trend: weights "7501 weighings": want at most 7500`},
		{appetites[:7500].Check(today), ""},
		{appetites.Check(today), `trend: appetites "7501 days": want at most 7500`},
		{intake[:99*7500].Check(today), ""},
		{intake.Check(today), `trend: intake "742501 lines": want at most 742500`},
	} {
		if tt.got == nil && tt.want != "" || tt.got != nil && tt.got.Error() != tt.want {
			t.Errorf("%.200v, want %s", tt.got, tt.want)
		}
	}
}

// A row of 3 has no doubts, however far they lie off; a row of 4 has: ours.
func TestDoubtNeedsFourWeighings(t *testing.T) {
	log := byDay(1, 0, 4, 7, 5, 14, 4, 21, 4)
	for n, want := range map[int]bool{1: false, 3: false, 4: true} {
		got, err := log[:n].Doubts(on("2026-02-02"))
		if err != nil || (len(got) > 0) != want {
			t.Errorf("%d weighings: %v, %v", n, got, err)
		}
	}
}

// Four weighings of 4 kg on a scale of 10 g, each expected to be off by √(8.33 + 144)
// = 12.342 g, and one between them: 8 of 10 degrees of freedom count, and the line
// there adds a quarter, √(0.8 × 1.25) = 1. One case in 500 of Student's t with 10
// degrees of freedom is 4.144 (NIST/SEMATECH e-Handbook, 1.3.6.7.2, from memory):
// 51.15 g.
//
// Of 100 g on a scale of 1 g it is √(0.0833 + 0.09) = 0.4163 g, 1.73 g.
func TestDoubtBeginsAtOneLogInAHundred(t *testing.T) {
	for _, tt := range []struct {
		step            units.Mass
		others, between float64
		want            int
	}{
		{10, 4, 4.051, 0},
		{10, 4, 4.0513, 1},
		{10, 4, 3.949, 0},
		{10, 4, 3.9487, 1},
		{1, 0.1, 0.1017, 0},
		{1, 0.1, 0.1018, 1},
	} {
		log := byDay(tt.step, 0, tt.others, 7, tt.others, 14, tt.between, 21, tt.others, 28, tt.others)
		got, err := log.Doubts(on("2026-02-02"))
		if err != nil || len(got) != tt.want {
			t.Errorf("%v kg between %v: %v, %v, want %d", tt.between, tt.others, got, err, tt.want)
		}
	}
}

// 132 of 264 kcal are a half.
func TestShareOfTheGoalIsAPercentage(t *testing.T) {
	log := trend.Intake{{Date: on(firstDay), Meal: 1, Food: "dry", Offered: 33, Density: 4000}}
	got, err := log.Days(264, on(firstDay))
	if err != nil || len(got) != 1 {
		t.Fatal(got, err)
	}
	within(t, "percent of the goal", float64(got[0].OfGoal), 50, 1e-12)
}

func TestRequirementSaysWhatItLacks(t *testing.T) {
	intake := func(from, to trend.Date) (log trend.Intake) {
		for d := on(firstDay) + from; d < on(firstDay)+to; d++ {
			log = append(log, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 60, Density: 4000})
		}
		return log
	}
	for _, tt := range []struct {
		name    string
		weights trend.Weights
		intake  trend.Intake
		want    string
	}{
		{"no weighing", nil, intake(0, 14), `trend: weights "0 weighings": want two weighings or more`},
		{"one weighing", byDay(10, 0, 4), intake(0, 14), `trend: weights "1 weighings": want two weighings or more`},
		{
			"the first day", byDay(10, 0, 4, 14, 4), intake(1, 14),
			`trend: intake "no line for 2026-01-05": want every day from 2026-01-05 to 2026-01-18 (weigh in, and weigh back, every day)`,
		},
		{
			"the last day", byDay(10, 0, 4, 14, 4), intake(0, 13),
			`trend: intake "no line for 2026-01-18": want every day from 2026-01-05 to 2026-01-18 (weigh in, and weigh back, every day)`,
		},
		{
			"three days", byDay(10, 0, 4, 14, 4), intake(3, 14),
			`trend: intake "no line for 2026-01-05, 2026-01-06, 2026-01-07": want every day from 2026-01-05 to 2026-01-18 (weigh in, and weigh back, every day)`,
		},
	} {
		if _, err := trend.NewRequirement(tt.weights, tt.intake, on("2026-01-19")); err == nil || err.Error() != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.name, err, tt.want)
		}
	}
	if _, err := trend.NewRequirement(byDay(10, 0, 4, 14, 4), intake(0, 14), on("2026-01-19")); err != nil {
		t.Error(err)
	}
}

// Two weighings of 4 kg 14 days apart, on a scale of 1 g: off by √(0.08 + 144) =
// 12.0 g, the rate by 2.306 × √2 × 12.0 / 14 = 2.796 g a day, 22.145 kcal: 44.3 kcal
// from Low to High. Half of what is eaten is more than that from 88.6 kcal on, and
// Low is nothing up to 22.145.
func TestUnsureRequirementSaysSo(t *testing.T) {
	for _, tt := range []struct {
		daily  units.Mass // g of 1 kcal
		low    float64
		unsure bool
	}{
		{89, 66.855, false},
		{88, 65.855, true},
		{22, 0, true},
	} {
		var intake trend.Intake
		for d := on(firstDay); d < on(firstDay)+14; d++ {
			intake = append(intake, trend.Served{Date: d, Meal: 1, Food: "wet", Offered: tt.daily, Density: 1000})
		}
		r, err := trend.NewRequirement(byDay(1, 0, 4, 14, 4), intake, on("2026-01-19"))
		if err != nil {
			t.Fatal(err)
		}
		within(t, "kcal at least", r.Low.Kilocalories(), tt.low, 0.0005)
		unsure := false
		for _, c := range r.Cautions() {
			unsure = unsure || strings.HasPrefix(c.Text, "the weights say little yet")
		}
		if unsure != tt.unsure {
			t.Errorf("%v: %v", tt.daily, r.Cautions())
		}
	}
}

// A plan's faults come together with those of its log.
func TestPlanIsHeldAgainstItsLog(t *testing.T) {
	const (
		noEnergy = `trend: daily "0 kcal": want above 0 kcal, up to 50000 kcal a day`
		none     = `trend: weights "0 weighings": want one or more`
		other    = `trend: weighing 1 weight "40 kg": want a weight like the plan's 18.14 kg (+120.5 %: pounds? 40 lb is 18.14 kg)`
	)
	fed := func(p *trend.Plan) { p.Daily = 0 }
	light := func(p *trend.Plan) { p.Loss.Animal.Weight, p.Loss.Animal.Ideal = 18.14*kg, 15*kg }
	nothing := func(p *trend.Plan) { p.Loss.Animal.Weight = 0 }
	log := byDay(100, 0, 40, 14, 39.5)
	sure := byDay(100, 0, 40, 14, 39.5)
	sure[0].Confirmed = true
	for _, tt := range []struct {
		name string
		plan trend.Plan
		log  trend.Weights
		want string
	}{
		{"no log", dog(1100), nil, none},
		{"no log, no energy", with(dog(1100), fed), nil, none + "; " + noEnergy},
		{"another weight", with(dog(500), light), log, other},
		{"another weight, no energy", with(with(dog(500), light), fed), log, other + "; " + noEnergy},
		{"confirmed", with(dog(500), light), sure, ""},
		{"no weight", with(dog(1100), nothing), log, `energy: weight "": want `},
		{"a target below 0.5 %", with(dog(1100), func(p *trend.Plan) { p.Target = units.Range[units.Percent]{Low: 0.45, High: 1} }), log, `trend: target "0.45 % to 1 %": want `},
		{"a target from 0.5 to 2 %", with(dog(1100), func(p *trend.Plan) { p.Target = units.Range[units.Percent]{Low: 0.5, High: 2} }), log, ""},
	} {
		_, err := tt.plan.Next(tt.log, on("2026-01-19"))
		got := ""
		if err != nil {
			got = err.Error()
		}
		if got != tt.want && (!strings.HasSuffix(tt.want, "want ") || !strings.HasPrefix(got, tt.want)) {
			t.Errorf("%s: %s\nwant %s", tt.name, got, tt.want)
		}
	}
}
