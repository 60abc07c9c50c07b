package scoop_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// Ten fills are what package doc asks for; of three or four hardly any can be told to be odd.
func TestNotesOnFewWeighings(t *testing.T) {
	for _, tt := range []struct {
		n         int
		few, none bool
	}{{3, true, true}, {4, true, true}, {5, true, false}, {9, true, false}, {10, false, false}} {
		w := make([]float64, tt.n)
		for i := range w {
			w[i] = 98 + float64(i%2)
		}
		text := calibrate(t, w...).Explain()
		few, none := strings.Contains(text, "note      few weighings:"), strings.Contains(text, " weighings hardly any can be told to be odd\n")
		if few != tt.few || none != tt.none {
			t.Errorf("%d weighings: few %v, none odd %v\n%s", tt.n, few, none, text)
		}
	}
}

// From 10 g on a mass has one decimal, below as many as give three digits.
func TestDigitsOfAMass(t *testing.T) {
	for mean, want := range map[units.Mass]string{
		25000: "25000.0 g", 100: "100.0 g", 12.34: "12.3 g", 10: "10.0 g", 9.876: "9.88 g", 1: "1.00 g",
		0.9876: "0.988 g", 0.1: "0.100 g", 0.09876: "0.0988 g", 0.009876: "0.00988 g", 0.001: "0.00100 g",
	} {
		c := scoop.Calibration{N: 10, Mean: mean, SD: mean / 100}
		if got := line(c.Explain(), "mean"); !strings.HasPrefix(got, want+" a scoop") {
			t.Errorf("%v: %s, want %s", mean, got, want)
		}
	}
}

// A change has its sign, a zero has none. The interval is by hand: t of 9 degrees of freedom is 2.262
// (JCGM 100:2008, Table G.2), times 1/√10 is 0.7153.
func TestSignsOfAChange(t *testing.T) {
	for label, want := range map[units.Mass]string{
		99.5:   "by +0.5 g, +0.5 %; with 95 % confidence the true difference is -0.2 g to +1.2 g",
		100.5:  "by -0.5 g, -0.5 %; with 95 % confidence the true difference is -1.2 g to +0.2 g",
		100:    "by 0.0 g, 0.0 %; with 95 % confidence the true difference is -0.7 g to +0.7 g",
		99.96:  "by 0.0 g, 0.0 %; with 95 % confidence the true difference is -0.7 g to +0.8 g",
		100.04: "by 0.0 g, 0.0 %; with 95 % confidence the true difference is -0.8 g to +0.7 g",
		50:     "by +50.0 g, +100.0 %; with 95 % confidence the true difference is +49.3 g to +50.7 g",
	} {
		c := must[scoop.Comparison](t)(scoop.Calibration{N: 10, Mean: 100 * g, SD: 1 * g}.Against(label, 95))
		if got := line(c.Explain(), "differs"); got != want {
			t.Errorf("%v: %s\nwant %s", label, got, want)
		}
	}
}

func TestStepOfAScaleInWords(t *testing.T) {
	for step, want := range map[units.Mass]string{
		0.001: "0.001 g scale", 0.5: "0.5 g scale", 1: "1 g scale", 20: "20 g scale", 1000: "1000 g scale",
		units.Ounce / 8: "3.54369 g scale", // of 28.349523125 g
	} {
		c := scoop.Calibration{N: 10, Mean: 5000 * g, SD: 50 * g, Readability: step}
		if got := line(c.Explain(), "given"); got != "10 level fills weighed on a "+want {
			t.Errorf("%v: %s, want %s", step, got, want)
		}
	}
}

// F 0.5 of 1 and 18 degrees of freedom is the square of t 0.75 of 18, 0.688 (any table, from
// memory): 0.473. A level as low as this has a critical value below 1.
func TestPeopleAreExplainedAtALowLevel(t *testing.T) {
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 5 * g}
	p := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{c, c}, 50))
	const want = "that people differ isn't shown: F = 0.00, up to 0.47 is ordinary (50 %)"
	if got := line(p.Explain(), "so"); got != want {
		t.Errorf("%s, want %s", got, want)
	}
	p.F = 1000000 // the most that is written out, ours
	if got := line(p.Explain(), "so"); !strings.Contains(got, "F = 1000000.00, ") {
		t.Error(got)
	}
	p.F = math.MaxFloat64
	if got := line(p.Explain(), "so"); !strings.Contains(got, "F is above 1000000, ") {
		t.Error(got)
	}
	p.F = 1000000.5
	if got := line(p.Explain(), "so"); !strings.Contains(got, "F is above 1000000, ") {
		t.Error(got)
	}
}

// What only a hand could have written is not explained.
func TestFiguresOfNoPeopleAreNotExplained(t *testing.T) {
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 5 * g}
	good := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{c, c}, 95))
	for name, change := range map[string]func(*scoop.People){
		"one":         func(p *scoop.People) { p.Count = 1 },
		"1001":        func(p *scoop.People) { p.Count, p.Weighings = 1001, 10000 },
		"critical":    func(p *scoop.People) { p.Critical *= -1 },
		"no mean":     func(p *scoop.People) { p.Mean = 0 },
		"within":      func(p *scoop.People) { p.Within *= -1 },
		"between":     func(p *scoop.People) { p.Between = -1 },
		"uncertainty": func(p *scoop.People) { p.Uncertainty *= -1 },
		"a scale":     func(p *scoop.People) { p.Readability = -1 },
		"too great":   func(p *scoop.People) { p.Within = inf },
	} {
		p := good
		change(&p)
		if text := p.Explain(); text != "" {
			t.Errorf("%s: explained as %s", name, text)
		}
	}
	good.Count, good.Weighings, good.Critical = 1000, 3000, 1000000
	if good.Explain() == "" {
		t.Error("1000 people with three fills each aren't explained")
	}
	good.Critical = next(good.Critical)
	if good.Explain() != "" {
		t.Error("a critical F above a million is explained")
	}
}
