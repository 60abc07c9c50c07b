package scoop_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// line returns the line of a working with the label.
func line(working, label string) string {
	for l := range strings.Lines(working) {
		if rest, ok := strings.CutPrefix(l, label+" "); ok {
			return strings.TrimSpace(rest)
		}
	}
	return ""
}

// Nine of 100 and one a step away: SD 1/√10 = 0.31623 steps, G = 0.9/0.31623 = 2.846, above the
// 2.29 of any table (from memory). With the rounding √(1/10 + 1/12) = 0.42817: 2.10.
func TestOneStepOfTheScaleIsNoOutlier(t *testing.T) {
	for _, tt := range []struct {
		name      string
		step      units.Mass
		weighings []float64
		outlier   bool
		line      string
	}{
		{
			"nine and a step", 1,
			[]float64{100, 100, 100, 100, 100, 101, 100, 100, 100, 100},
			false,
			"none: weighing 6, 101.0 g, is 2.85 standard deviations from the mean; more than 2.29 would be odd (Grubbs, 95 %), but for the rounding of the 1 g scale",
		},
		{
			"the same on a scale of 10 g", 10,
			[]float64{100, 100, 100, 100, 100, 110, 100, 100, 100, 100},
			false,
			"none: weighing 6, 110.0 g, is 2.85 standard deviations from the mean; more than 2.29 would be odd (Grubbs, 95 %), but for the rounding of the 10 g scale",
		},
		{ // SD 0.63246 steps, with the rounding √(0.4 + 1/12) = 0.69522: 1.8/0.69522 = 2.59
			"nine and two steps", 1,
			[]float64{100, 100, 100, 100, 100, 102, 100, 100, 100, 100},
			true,
			"weighing 6, 102.0 g, is 2.85 standard deviations from the mean; more than 2.29 is odd (Grubbs, 95 %): find out why and weigh again; it is still counted above",
		},
		{ // no rounding counted
			"no step", 0,
			[]float64{100, 100, 100, 100, 100, 101, 100, 100, 100, 100},
			true,
			"weighing 6, 101.0 g, is 2.85 standard deviations from the mean; more than 2.29 is odd (Grubbs, 95 %): find out why and weigh again; it is still counted above",
		},
		{ // G is at its greatest for three, 2/√3 = 1.1547. t of 1 degree, tail 1/120, is cot(π/120) = 38.188: 1.1547 √(38.188²/(1 + 38.188²)) = 1.1543
			"three", 1,
			[]float64{100, 100, 101},
			false,
			"none: weighing 3, 101.0 g, is 1.1547 standard deviations from the mean; more than 1.1543 would be odd (Grubbs, 95 %), but for the rounding of the 1 g scale",
		},
		{
			"three without a step", 0,
			[]float64{100, 100, 101},
			true,
			"weighing 3, 101.0 g, is 1.1547 standard deviations from the mean; more than 1.1543 is odd (Grubbs, 95 %): find out why and weigh again; it is still counted above",
		},
	} {
		c := must[scoop.Calibration](t)(scoop.Calibrate(masses(tt.weighings...), tt.step))
		if o := must[scoop.Grubbs](t)(c.Outlier(95)); o.Outlier != tt.outlier {
			t.Errorf("%s: %+v, want outlier %v", tt.name, o, tt.outlier)
		}
		if got := line(c.Explain(), "outlier"); got != tt.line {
			t.Errorf("%s:\n%s\nwant\n%s", tt.name, got, tt.line)
		}
	}
	// At 50 % the critical value of ten is under 2, and it is one step all the same.
	c := must[scoop.Calibration](t)(scoop.Calibrate(masses(100, 100, 100, 100, 100, 101, 100, 100, 100, 100), 1))
	if o := must[scoop.Grubbs](t)(c.Outlier(50)); o.Outlier || o.Critical >= 2.1 {
		t.Errorf("%+v", o)
	}
}

// One person's ten fills are 100 but for one of 101, another's are all 100: means 100.1 and 100.
// Within 0.9/18 = 0.05, between 10 × 2 × 0.05² = 0.05, the rounding 10 × 1/12 =
// 0.8333: F = 0.05/0.88333 = 0.0566. With all of the other at 101: 10 × 2 × 0.45² = 4.05, F = 4.05/0.88333
// = 4.5849, where without the rounding it was 81. Critical is F 0.95 of 1 and (nearly) ∞, 3.84: as in Compare, whose T² it is.
func TestRoundingCountsBetweenPeopleAsBetweenCups(t *testing.T) {
	a := must[scoop.Calibration](t)(scoop.Calibrate(masses(100, 100, 100, 100, 100, 100, 100, 100, 100, 101), 1))
	for _, tt := range []struct {
		other  float64
		f      float64
		differ bool
	}{{100, 0.0566, false}, {101, 4.5849, true}} {
		other := make([]float64, 10)
		for i := range other {
			other[i] = tt.other
		}
		b := must[scoop.Calibration](t)(scoop.Calibrate(masses(other...), 1))
		p := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{a, b}, 95))
		near(t, "F", p.F, tt.f, 5e-5)
		near(t, "critical F", p.Critical, 3.84, 0.005)
		x := must[scoop.Comparison](t)(scoop.Compare(a, b, 95))
		near(t, "T²", x.T*x.T, p.F, 1e-9)
		if p.Differ != tt.differ || x.Different != tt.differ {
			t.Errorf("%v: people %v, cups %v, want %v", tt.other, p.Differ, x.Different, tt.differ)
		}
		const note = "the 1 g scale is too coarse to show how the cup varies: use a finer scale"
		if got := line(p.Explain(), "note"); got != note {
			t.Errorf("note %q, want %q", got, note)
		}
	}
}

// Each with the least and the greatest SD that n, mean and ends allow, by hand.
func TestEndsMustGoWithTheSpread(t *testing.T) {
	w := func(number int, mass units.Mass) scoop.Weighing { return scoop.Weighing{Number: number, Mass: mass} }
	c := func(n int, mean, sd, low, high units.Mass) scoop.Calibration {
		return scoop.Calibration{N: n, Mean: mean, SD: sd, Lowest: w(1, low), Highest: w(2, high), Readability: 0.1}
	}
	for _, tt := range []struct {
		c  scoop.Calibration
		ok bool
	}{
		// Two at the ends, two in the middle: 10/√6 = 4.0825. All at the ends: √(5 × 5 × 4/3) = 5.7735.
		{c(4, 100, 4.08, 95, 105), false},
		{c(4, 100, 4.09, 95, 105), true},
		{c(4, 100, 5.77, 95, 105), true},
		{c(4, 100, 5.78, 95, 105), false},
		// One 9 above, nine 1 below: 9 √10/9 = 3.1623, where G is (10 - 1)/√10 = 2.846.
		{c(10, 100, 3.1622, 99, 109), false},
		{c(10, 100, units.Mass(math.Sqrt(10)), 99, 109), true},
		{c(10, 100, 3.1624, 99, 109), false}, // the lowest is that of all others
		{c(3, 100, 0.1, 1, 20000), false},
		{c(3, 100, 50, 100, 100), false},
		{c(3, 100, 0, 100, 100), true},
		{c(3, 100, 0, 99, 101), false},
	} {
		if err := tt.c.Validate(); (err == nil) != tt.ok {
			t.Errorf("%+v: %v, want it taken: %v", tt.c, err, tt.ok)
		}
	}
	// To a thousand millionth of the mean and a nanogram: 10/√6 - 1.01e-7 = 4.082482803639 and (5 + 1e-7) √(4/3) =
	// 5.773502807366. Of 64 g the ends may be 6.4e-8 g on the other side.
	const above, below units.Mass = 64 * (1 + 1e-9), 64 * (1 - 1e-9)
	for _, tt := range []struct {
		c  scoop.Calibration
		ok bool
	}{
		{c(4, 100, 4.0824828036, 95, 105), false},
		{c(4, 100, 4.0824828037, 95, 105), true},
		{c(4, 100, 5.7735028073, 95, 105), true},
		{c(4, 100, 5.7735028074, 95, 105), false},
		{c(4, 64, 0, above, above), true},
		{c(4, 64, 0, next(above), next(above)), false},
		{c(4, 64, 0, below, below), true},
		{c(4, 64, 0, below, units.Mass(math.Nextafter(float64(below), 0))), false},
	} {
		if err := tt.c.Validate(); (err == nil) != tt.ok {
			t.Errorf("%+v: %v, want it taken: %v", tt.c, err, tt.ok)
		}
	}
	refused(t, c(4, 100, 5.78, 95, 105).Validate(), `scoop: SD "5.78 g": want one that goes with n, the mean, and 95 g to 105 g`)
	one := c(4, 100, 5, 95, 105)
	one.Highest.Number = 1
	refused(t, one.Validate(), `scoop: highest weighing "105 g, number 1": want another than the lowest`)
}

func TestWhatNoComparisonGivesIsNotExplained(t *testing.T) {
	a, b := calibrate(t, 98, 99, 100, 101), calibrate(t, 104, 105, 106, 108)
	good := must[scoop.Comparison](t)(scoop.Compare(a, b, 95))
	if good.Explain() == "" {
		t.Fatal("a comparison isn't explained")
	}
	for name, change := range map[string]func(*scoop.Comparison){
		"NaN":               func(c *scoop.Comparison) { c.Difference = nan },
		"another":           func(c *scoop.Comparison) { c.Difference++ },
		"no level":          func(c *scoop.Comparison) { c.Level = 0 },
		"interval":          func(c *scoop.Comparison) { c.Interval.Low = c.Difference + 1; c.Interval.High = c.Difference + 2 },
		"infinite interval": func(c *scoop.Comparison) { c.Interval.High = inf },
	} {
		c := good
		change(&c)
		if got := c.Explain(); got != "" {
			t.Errorf("%s: explained as %s", name, got)
		}
	}
	people := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{a, b}, 95))
	for name, change := range map[string]func(*scoop.People){
		"NaN":           func(p *scoop.People) { p.F = math.NaN() },
		"infinite F":    func(p *scoop.People) { p.F = math.Inf(1) },
		"below zero":    func(p *scoop.People) { p.F = -1 },
		"no critical":   func(p *scoop.People) { p.Critical = 0 },
		"NaN critical":  func(p *scoop.People) { p.Critical = math.NaN() },
		"no level":      func(p *scoop.People) { p.Level = 0 },
		"too many":      func(p *scoop.People) { p.Count = math.MaxInt },
		"few weighings": func(p *scoop.People) { p.Weighings = 5 },
	} {
		p := people
		change(&p)
		if got := p.Explain(); got != "" {
			t.Errorf("%s: explained as %s", name, got)
		}
	}
	people.F = 1e38
	if got, want := line(people.Explain(), "so"), "people differ: F is above 1000000, more than 5.99 (95 %)"; !strings.HasPrefix(got, want) { // F of 1 and 6, any table, from memory
		t.Errorf("%s, want %s", got, want)
	}
}

// 0.01 lb are 4.5359237 g.
func TestStepInPoundsIsReadable(t *testing.T) {
	lb := units.Pound
	c := must[scoop.Calibration](t)(scoop.Calibrate([]units.Mass{0.2 * lb, 0.21 * lb, 0.2 * lb, 0.22 * lb}, 0.01*lb))
	if got, want := line(c.Explain(), "given"), "4 level fills weighed on a 4.53592 g scale"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}
