package scoop_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// The limits are ours. Each is tried just inside and just outside.

// A sum is rounded, as a weight less its tare is: at run time, for constants
// are computed exactly.
func sum(a, b units.Mass) units.Mass { return a + b }

func TestWeighingsApartByLessThanANanogramAreEqual(t *testing.T) {
	apart := func(d units.Mass) []units.Mass { return []units.Mass{0.002, 0.002, 0.002 + d} }
	_, err := scoop.Calibrate(apart(0.9e-9), 0)
	refused(t, err, `scoop: readability "0 g": want the step of the scale (all weighings are equal, and it hides their spread)`)
	// By hand: one of three is d off, SD d/√3 = 0.577 d.
	c := must[scoop.Calibration](t)(scoop.Calibrate(apart(1.1e-9), 0))
	near(t, "SD", c.SD, 1.1e-9/math.Sqrt(3), 1e-15)

	// The mean of equal weighings is the first, to the bit, whatever the others end in.
	third := sum(0.1, 0.2)
	if third == 0.3 {
		t.Fatal("the sum isn't rounded")
	}
	c = must[scoop.Calibration](t)(scoop.Calibrate([]units.Mass{third, 0.3, 0.3}, 0.1))
	if c.Mean != third || c.SD != 0 {
		t.Errorf("mean %v, SD %v", c.Mean, c.SD)
	}
}

func TestWeighingsAreWholeStepsToAMillionth(t *testing.T) {
	w := []units.Mass{98, 99, 100.0000009}
	if _, err := scoop.Calibrate(w, g); err != nil {
		t.Error(err)
	}
	w[2] = 100.0000011
	_, err := scoop.Calibrate(w, g)
	refused(t, err, `scoop: readability "1 g": want a step of which every weighing is a whole number (weighing 3 is 100.0000011 g)`)
}

func TestLimitsOfAStandardDeviation(t *testing.T) {
	at := func(n int, sd units.Mass) error { return scoop.Calibration{N: n, Mean: 98, SD: sd}.Validate() }
	for _, tt := range []struct {
		err  error
		want string
	}{
		{at(3, 1e-15), ""},
		{at(3, 0.9e-15), `scoop: SD "0.0000000000000009 g": want 0 g to √n times the mean`},
		{at(3, 169.7), ""}, // 98 √3 = 169.74
		{at(3, 169.8), `scoop: SD "169.8 g": want 0 g to √n times the mean`},
		// Of a number that is refused itself the least is taken, one.
		{at(0, 97), `scoop: weighings "0": want 3 to 1000000`},
		{at(0, 99), `scoop: weighings "0": want 3 to 1000000; scoop: SD "99 g": want 0 g to √n times the mean`},
		{at(-5, 97), `scoop: weighings "-5": want 3 to 1000000`},
	} {
		if tt.want != "" {
			refused(t, tt.err, tt.want)
		} else if tt.err != nil {
			t.Error(tt.err)
		}
	}
}

// The mean of equal weighings is off by its last bits, so that the lowest may be above it
// by a thousand millionth of it, 1e-7 g of 100 g.
func TestEndsAreBesideTheMeanToItsLastBits(t *testing.T) {
	at := func(low, high scoop.Weighing, sd units.Mass) error {
		return scoop.Calibration{N: 3, Mean: 100, SD: sd, Lowest: low, Highest: high, Readability: 1}.Validate()
	}
	w := func(number int, mass units.Mass) scoop.Weighing { return scoop.Weighing{Number: number, Mass: mass} }
	const least, most = "scoop: lowest weighing ", "scoop: highest weighing "
	const above, below = `: want one of the n, not above the mean`, `: want one of the n, not below the mean`
	for _, tt := range []struct {
		err  error
		want string
	}{
		{at(w(1, 100+0.9e-7), w(1, 100+0.9e-7), 0), ""},
		{at(w(1, 100+1.1e-7), w(1, 100+1.1e-7), 0), least + `"100.00000011 g, number 1"` + above},
		{at(w(1, 100-0.9e-7), w(1, 100-0.9e-7), 0), ""},
		{at(w(1, 100-1.1e-7), w(1, 100-1.1e-7), 0), most + `"99.99999989 g, number 1"` + below},
		// One fault of the ends is enough: no SD goes with them.
		{at(w(1, 101), w(2, 103), 50), least + `"101 g, number 1"` + above},
		{at(w(1, 97), w(2, 99), 50), most + `"99 g, number 2"` + below},
		{at(w(0, 99), w(2, 101), 1), least + `"99 g, number 0"` + above},
		{at(w(1, 99), w(0, 101), 1), most + `"101 g, number 0"` + below},
		{at(w(1, 99), w(1, 101), 1), most + `"101 g, number 1": want another than the lowest`},
		{at(w(4, 99), w(2, 101), 1), least + `"99 g, number 4"` + above},
		{at(w(3, 99), w(1, 101), 1), ""},
	} {
		if tt.want != "" {
			refused(t, tt.err, tt.want)
		} else if tt.err != nil {
			t.Error(tt.err)
		}
	}
}

func TestLimitsOfTheMethods(t *testing.T) {
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 5 * g}
	for _, tt := range []struct {
		name string
		err  error
	}{
		{"1000 scoops", second(c.Day(1000, 95))},
		{"1000 scoops, relative", second(c.RelativeUncertainty(1000))},
		{"50 %", second(c.MeanInterval(50))},
		{"99.999 %", second(c.MeanInterval(99.999))},
		{"two people", second(scoop.ComparePeople([]scoop.Calibration{c, c}, 95))},
		{"1000 people", second(scoop.ComparePeople(many(1000, c), 95))},
	} {
		if tt.err != nil {
			t.Errorf("%s: %v", tt.name, tt.err)
		}
	}
	// A part of one is asked after where it would be taken in percent.
	for level, hint := range map[units.Percent]string{
		0.5: " (50 %?)", 0.49: "", 0.95: " (95 %?)", 0.9999899999999999: " (99.999 %?)", 0.999999: "", 49: "", 99.9991: "",
	} {
		_, err := c.NextScoop(level)
		refused(t, err, `scoop: level "`+level.String()+`": want 50 % to 99.999 %`+hint)
	}
	near(t, "SD of 1000 by the gamma functions", scoop.Calibration{N: 1000}.SDUncertainty(), 2.2375, 5e-5)
}

func many(n int, c scoop.Calibration) []scoop.Calibration {
	each := make([]scoop.Calibration, n)
	for i := range each {
		each[i] = c
	}
	return each
}

// t of 9999 degrees of freedom is z + (z³ + z)/(4 × 9999) = 1.959964 + 0.000237 =
// 1.960201. With a CV of 10 %, 10,000 weighings reach 0.1960201 %, 9999 of them
// 0.1960299 and 10,001 would reach 0.1960103.
func TestTenThousandWeighingsAreTheMost(t *testing.T) {
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 10 * g}
	if n := must[int](t)(c.Enough(0.196025, 95)); n != 10000 {
		t.Errorf("%d weighings, want 10000", n)
	}
	if n := must[int](t)(c.Enough(0.196035, 95)); n != 9999 {
		t.Errorf("%d weighings, want 9999", n)
	}
	_, err := c.Enough(0.196015, 95)
	refused(t, err, `scoop: within "0.196015 %": want 0.197 % or more, which 10000 weighings reach (the spread of the cup is too wide)`)
}

// What hinders is what is left of 10,000 weighings: s/100 of the cup, 1 g/√12 = 0.28868 g of the
// scale. They are alike where s is 28.868 g.
func TestWhatHindersIsTheLargerPart(t *testing.T) {
	for sd, hint := range map[units.Mass]string{28.8: "(the steps of the scale are too coarse)", 28.9: "(the spread of the cup is too wide)"} {
		_, err := scoop.Calibration{N: 10, Mean: 100 * g, SD: sd, Readability: g}.Enough(0.1, 95)
		if err == nil || !strings.HasSuffix(err.Error(), hint) {
			t.Errorf("SD %v: %v, want %s", sd, err, hint)
		}
	}
}

// One of ten is 1.8 g from the mean, SD 0.63246, G = 2.846. At 99.9 % it is still odd,
// where more than 2.64 is (between the 2.48 of 99 % and the greatest G of ten). With the rounding, √(0.4 + 1/12) = 0.69522, it
// is 2.589. Were only the rounding counted, it would be 6.2.
func TestScatterAndRoundingBothKeepAnOutlierIn(t *testing.T) {
	c := must[scoop.Calibration](t)(scoop.Calibrate(masses(100, 100, 100, 100, 100, 102, 100, 100, 100, 100), g))
	o := must[scoop.Grubbs](t)(c.Outlier(99.9))
	near(t, "G", o.G, 2.846, 5e-4)
	if o.Outlier || o.G < o.Critical || o.Critical < 2.6 {
		t.Errorf("%+v", o)
	}
}

func TestNoMassIsBelowZero(t *testing.T) {
	c := scoop.Calibration{N: 3, Mean: 5 * g, SD: 5 * g}
	if i := must[units.Range[units.Mass]](t)(c.NextScoop(95)); i.Low != 0 {
		t.Errorf("%v", i)
	}
	// By hand: t is 0.8165 of 2 degrees of freedom at 50 % (any table, from memory): 5 - 0.8165 × 5/√3.
	near(t, "low", must[units.Range[units.Mass]](t)(c.MeanInterval(50)).Low, 2.643, 5e-4)
}
