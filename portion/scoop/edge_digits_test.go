package scoop_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// What holds for a figure that is exactly at its limit. The figures are chosen so that their
// differences and quotients are exact in binary.

func next[Q ~float64](x Q) Q { return Q(math.Nextafter(float64(x), math.Inf(1))) }

// By hand: of 3 weighings with SD 2 g the mean is known to ± 4.303 × 2/√3 = 4.97 g. The label is
// that much below the mean of 5 g: the interval begins at 0 g and holds it.
func TestADifferenceAsWideAsItsIntervalIsNotShown(t *testing.T) {
	c := scoop.Calibration{N: 3, Mean: 5 * g, SD: 2 * g}
	half := must[scoop.Comparison](t)(c.Against(5*g, 95)).Interval.High
	near(t, "half width", half, 4.97, 5e-3)
	x := must[scoop.Comparison](t)(c.Against(5*g-half, 95))
	if x.Difference != half || x.Interval.Low != 0 || x.Different {
		t.Errorf("%+v", x)
	}
	x = must[scoop.Comparison](t)(c.Against(5*g-next(half), 95))
	if !x.Different {
		t.Errorf("%+v", x)
	}
}

func TestEnoughIsWhatReachesItExactly(t *testing.T) {
	for _, n := range []int{3, 7, 10000} {
		c := scoop.Calibration{N: n, Mean: 64 * g, SD: 5 * g}
		half := must[scoop.Comparison](t)(c.Against(64*g, 95)).Interval.High
		within := units.Percent(100 * half / 64)
		if got := must[int](t)(c.Enough(within, 95)); got != n {
			t.Errorf("± %v: %d weighings, want %d", within, got, n)
		}
		within = units.Percent(math.Nextafter(float64(within), 0))
		if got, err := c.Enough(within, 95); n < 10000 && got != n+1 || n == 10000 && err == nil {
			t.Errorf("± %v: %d weighings, %v", within, got, err)
		}
	}
}

// All but two are 100 g, those 1 g off: 28 and two have SD √(2/29) = 0.2626, G = 3.81, and with the
// rounding √(2/29 + 1/12) = 0.3902, G = 2.56, above the critical value at 50 %. But
// it is one step.
func TestAWeighingAStepFromTheMeanIsNoOutlier(t *testing.T) {
	w := append(masses(99, 101), masses(make([]float64, 28)...)...)
	for i := range w[2:] {
		w[2+i] = 100 * g
	}
	c := must[scoop.Calibration](t)(scoop.Calibrate(w, g))
	o := must[scoop.Grubbs](t)(c.Outlier(50))
	near(t, "G", o.G, 3.81, 5e-3)
	if o.Outlier || o.Critical > 2.5 || c.Mean != 100 {
		t.Errorf("%+v of %+v", o, c)
	}
	if o.Suspect != c.Lowest {
		t.Errorf("the suspect is %+v; both are as far, and the lowest is named", o.Suspect)
	}
}

// SD 0.5 g and steps of 3 g: √(0.25 + 9/12) = 1 g. The highest weighing is as far from the mean as
// the mean is from zero, by the critical value in grams.
func TestAnOutlierIsAboveTheCriticalValueWithTheRoundingInIt(t *testing.T) {
	at := func(far units.Mass) scoop.Grubbs {
		c := scoop.Calibration{
			N: 100, Mean: far, SD: 0.5 * g, Readability: 3 * g,
			Lowest: scoop.Weighing{Number: 1, Mass: far - 1}, Highest: scoop.Weighing{Number: 2, Mass: 2 * far},
		}
		return must[scoop.Grubbs](t)(c.Outlier(95))
	}
	critical := units.Mass(at(3.5).Critical)
	near(t, "critical", critical, 3.384, 5e-4) // TestCriticalValuesOfGrubbs
	if o := at(critical); o.Outlier {
		t.Errorf("%+v", o)
	}
	if o := at(next(critical)); !o.Outlier {
		t.Errorf("%+v", o)
	}
}

// The SD is chosen so that G is exactly the critical value.
func TestGAtItsCriticalValueIsOrdinary(t *testing.T) {
	for far := units.Mass(3); far < 60; far++ {
		at := func(sd units.Mass) (scoop.Grubbs, string) {
			c := scoop.Calibration{
				N: 10, Mean: 100 * g, SD: sd,
				Lowest: scoop.Weighing{Number: 1, Mass: 100 - far/2}, Highest: scoop.Weighing{Number: 2, Mass: 100 + far},
			}
			return must[scoop.Grubbs](t)(c.Outlier(95)), line(c.Explain(), "outlier")
		}
		o, _ := at(far / 2.29)
		o, text := at(far / units.Mass(o.Critical))
		if o.G != o.Critical || float64(far) <= o.Critical*(float64(far)/o.Critical) {
			continue // the second: their product is rounded down, and is no critical value
		}
		const want = " is 2.2900 standard deviations from the mean; up to 2.2900 is ordinary (Grubbs, 95 %)"
		if o.Outlier || !strings.HasPrefix(text, "none: ") || !strings.HasSuffix(text, want) {
			t.Errorf("%+v: %s", o, text)
		}
		return
	}
	t.Error("no G is at the critical value")
}

// Two people with ten fills each, d apart: F = 10 d²/2 / s².
func TestFAtItsCriticalValueIsOrdinary(t *testing.T) {
	at := func(d, sd units.Mass) scoop.People {
		each := []scoop.Calibration{{N: 10, Mean: 100 - d/2, SD: sd}, {N: 10, Mean: 100 + d/2, SD: sd}}
		return must[scoop.People](t)(scoop.ComparePeople(each, 95))
	}
	critical := at(1, 1).Critical
	near(t, "critical", critical, 4.41, 5e-3) // F 0.95 of 1 and 18, any table, from memory
	for d := units.Mass(1); d < 60; d++ {
		p := at(d, d*units.Mass(math.Sqrt(5/critical)))
		if p.F != critical {
			continue
		}
		if p.Differ || !strings.HasPrefix(line(p.Explain(), "so"), "that people differ isn't shown: F = 4.41, up to 4.41 ") {
			t.Errorf("%+v", p)
		}
		return
	}
	t.Error("no F is at the critical value")
}

// 1 g/√12: a scatter of the rounding alone.
func TestAScatterOfTheRoundingAloneIsTooCoarse(t *testing.T) {
	const note = "note      the 1 g scale is too coarse to show how the cup varies: use a finer scale\n"
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: units.Mass(math.Sqrt(1.0 / 12)), Readability: g}
	if text := c.Explain(); !strings.Contains(text, note) {
		t.Error(text)
	}
	c.SD = next(c.SD)
	if text := c.Explain(); strings.Contains(text, note) {
		t.Error(text)
	}
}

func TestAMillionWeighingsAreTaken(t *testing.T) {
	w := make([]units.Mass, 1000001)
	for i := range w {
		w[i] = units.Mass(98 + i%2)
	}
	c := must[scoop.Calibration](t)(scoop.Calibrate(w[:1000000], 0))
	near(t, "mean", c.Mean, 98.5, 1e-9)
	_, err := scoop.Calibrate(w, 0)
	refused(t, err, `scoop: weighings "1000001": want 3 to 1000000`)
}

// 1 mg is a millionth of 1 kg, and no step of it at all.
func TestTheLeastMassIsNoNumberOfTheGreatestStep(t *testing.T) {
	_, err := scoop.Calibrate([]units.Mass{1000, 0.001, 2000}, 1000)
	refused(t, err, `scoop: readability "1 kg": want a step of which every weighing is a whole number (weighing 2 is 0.001 g)`)
}

// 25 kg times a million is more than any spread that is computed here. What a hand has
// written is taken up to that, so that its squares stay in range.
func TestTheGreatestSpread(t *testing.T) {
	const most units.Mass = 25000 * 1e6
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 5 * g}
	good := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{c, c}, 95))
	for name, field := range map[string]func(*scoop.People) *units.Mass{
		"within":      func(p *scoop.People) *units.Mass { return &p.Within },
		"between":     func(p *scoop.People) *units.Mass { return &p.Between },
		"uncertainty": func(p *scoop.People) *units.Mass { return &p.Uncertainty },
	} {
		p := good
		*field(&p) = most
		if _, err := p.RelativeUncertainty(1); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		*field(&p) = next(most)
		_, err := p.RelativeUncertainty(1)
		refused(t, err, `scoop: people "2": want a result of ComparePeople`)
		*field(&p) = 0
		if _, err := p.RelativeUncertainty(1); (err == nil) != (name == "between") {
			t.Errorf("%s of nothing: %v", name, err)
		}
	}
	x := must[scoop.Comparison](t)(scoop.Compare(c, c, 95))
	x.Interval = units.Range[units.Mass]{Low: -most / 2, High: most / 2}
	if x.Explain() == "" {
		t.Error("the widest interval isn't explained")
	}
	x.Interval.High = next(most)
	if text := x.Explain(); text != "" {
		t.Errorf("explained as %s", text)
	}
}
