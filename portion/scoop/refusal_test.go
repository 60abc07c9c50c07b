package scoop_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

var (
	nan = units.Mass(math.NaN())
	inf = units.Mass(math.Inf(1))
)

// refused fails unless err is made of FieldErrors of the package and has the text.
func refused(t *testing.T, err error, want string) {
	t.Helper()
	var f *units.FieldError
	if !errors.As(err, &f) || f.Package != "scoop" {
		t.Errorf("error %v (%T), want a *units.FieldError of scoop", err, err)
		return
	}
	if err.Error() != want {
		t.Errorf("error\n%s\nwant\n%s", err, want)
	}
}

func TestCalibrateRefuses(t *testing.T) {
	for _, tt := range []struct {
		weighings   []units.Mass
		readability units.Mass
		want        string
	}{
		{nil, g, `scoop: weighings "0": want 3 to 1000000`},
		{masses(98, 99), g, `scoop: weighings "2": want 3 to 1000000`},
		{masses(98, 0, 99), g, `scoop: weighing 2 "0 g": want 1 mg to 25 kg`},
		{masses(-98, 98, 25001), 0, `scoop: weighing 1 "-98 g": want 1 mg to 25 kg; scoop: weighing 3 "25.001 kg": want 1 mg to 25 kg`},
		{[]units.Mass{nan, inf, 98, 1e-300}, 0, `scoop: weighing 1 "NaN g": want 1 mg to 25 kg; ` +
			`scoop: weighing 2 "+Inf g": want 1 mg to 25 kg; scoop: weighing 4 "` + units.Mass(1e-300).String() + `": want 1 mg to 25 kg`},
		{masses(98, 99, 97), -1, `scoop: readability "-1 g": want the step of the scale, 1 mg to 1 kg, or 0 g to leave it out`},
		{masses(98, 99, 97), nan, `scoop: readability "NaN g": want the step of the scale, 1 mg to 1 kg, or 0 g to leave it out`},
		{masses(98, 99.5, 97.5), g, `scoop: readability "1 g": want a step of which every weighing is a whole number (weighing 2 is 99.5 g)`},
		{masses(98, 98, 98), 0, `scoop: readability "0 g": want the step of the scale (all weighings are equal, and it hides their spread)`},
		{masses(98, -1), inf, `scoop: weighings "2": want 3 to 1000000; scoop: weighing 2 "-1 g": want 1 mg to 25 kg; ` +
			`scoop: readability "+Inf g": want the step of the scale, 1 mg to 1 kg, or 0 g to leave it out`},
	} {
		c, err := scoop.Calibrate(tt.weighings, tt.readability)
		refused(t, err, tt.want)
		if c != (scoop.Calibration{}) {
			t.Errorf("%v: beside the error %+v", tt.weighings, c)
		}
	}
}

func TestReadabilityMayBeInOunces(t *testing.T) {
	oz := units.Ounce
	if _, err := scoop.Calibrate([]units.Mass{3.45 * oz, 3.5 * oz, 3.6 * oz}, 0.05*oz); err != nil {
		t.Error(err)
	}
}

func TestMethodsRefuse(t *testing.T) {
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 5 * g}
	coarse := scoop.Calibration{N: 10, Mean: 100 * g, SD: 0.01 * g, Readability: 5 * g}
	for _, tt := range []struct {
		err  error
		want string
	}{
		{second(c.MeanInterval(0.95)), `scoop: level "0.95 %": want 50 % to 99.999 % (95 %?)`},
		{second(c.NextScoop(100)), `scoop: level "100 %": want 50 % to 99.999 %`},
		{second(c.Day(0, 95)), `scoop: scoops "0": want 1 to 1000`},
		{second(c.Day(1001, 49)), `scoop: level "49 %": want 50 % to 99.999 %; scoop: scoops "1001": want 1 to 1000`},
		{second(c.RelativeUncertainty(-1)), `scoop: scoops "-1": want 1 to 1000`},
		{second(c.Outlier(95)), `scoop: lowest and highest weighing "not known": want the weighings, by Calibrate`},
		{second(c.Enough(0, 95)), `scoop: within "0 %": want above 0 % to less than 100 %`},
		{second(c.Enough(100, 5)), `scoop: level "5 %": want 50 % to 99.999 %; scoop: within "100 %": want above 0 % to less than 100 %`},
		// 1.96 × 5/√10000 = 0.098 %; 1.96 × 5/√12 = 2.829 %.
		{second(c.Enough(0.05, 95)), `scoop: within "0.05 %": want 0.099 % or more, which 10000 weighings reach (the spread of the cup is too wide)`},
		{second(coarse.Enough(2, 95)), `scoop: within "2 %": want 2.829 % or more, which 10000 weighings reach (the steps of the scale are too coarse)`},
		{second(c.Against(-1, 95)), `scoop: label "-1 g": want 1 mg to 25 kg`},
		{second(c.Against(nan, 95)), `scoop: label "NaN g": want 1 mg to 25 kg`},
		{second(scoop.Compare(scoop.Calibration{}, c, 1)), `scoop: first weighings "0": want 3 to 1000000; scoop: first mean "0 g": want 1 mg to 25 kg; ` +
			`scoop: level "1 %": want 50 % to 99.999 %`},
		{second(scoop.Compare(c, scoop.Calibration{N: 5, Mean: 100, SD: -1}, 95)), `scoop: second SD "-1 g": want 0 g to √n times the mean`},
		{second(scoop.ComparePeople(nil, 95)), `scoop: people "0": want 2 to 1000`},
		{second(scoop.ComparePeople([]scoop.Calibration{c}, 95)), `scoop: people "1": want 2 to 1000`},
		{second(scoop.ComparePeople(make([]scoop.Calibration, 1001), 95)), `scoop: people "1001": want 2 to 1000`},
		{second(scoop.ComparePeople([]scoop.Calibration{c, {N: 2, Mean: 1, SD: 1}}, 95)), `scoop: person 2: weighings "2": want 3 to 1000000`},
		{
			second(scoop.ComparePeople([]scoop.Calibration{{N: 3, Mean: 5, Readability: 1}, {N: 3, Mean: 9, Readability: 1}}, 95)),
			`scoop: spread "0 g": want weighings that differ (a finer scale)`,
		},
		{second(scoop.People{}.RelativeUncertainty(0)), `scoop: scoops "0": want 1 to 1000; scoop: people "0": want a result of ComparePeople`},
	} {
		refused(t, tt.err, tt.want)
	}
}

func second[T any](_ T, err error) error { return err }

func TestValidate(t *testing.T) {
	good := scoop.Calibration{N: 3, Mean: 98 * g, SD: 1 * g}
	ends := func(low, high scoop.Weighing) scoop.Calibration {
		c := good
		c.Lowest, c.Highest = low, high
		return c
	}
	for _, tt := range []struct {
		c    scoop.Calibration
		want string
	}{
		{scoop.Calibration{}, `scoop: weighings "0": want 3 to 1000000; scoop: mean "0 g": want 1 mg to 25 kg`},
		{scoop.Calibration{N: 1000001, Mean: 98, SD: 1}, `scoop: weighings "1000001": want 3 to 1000000`},
		{scoop.Calibration{N: 3, Mean: nan, SD: nan, Readability: 2000}, `scoop: mean "NaN g": want 1 mg to 25 kg; ` +
			`scoop: SD "NaN g": want 0 g to √n times the mean; scoop: readability "2 kg": want the step of the scale, 1 mg to 1 kg, or 0 g to leave it out`},
		{scoop.Calibration{N: 4, Mean: 98, SD: 196.1}, `scoop: SD "196.1 g": want 0 g to √n times the mean`},
		{scoop.Calibration{N: 4, Mean: 98, SD: inf}, `scoop: SD "+Inf g": want 0 g to √n times the mean`},
		{scoop.Calibration{N: 4, Mean: 98}, `scoop: readability "0 g": want the step of the scale (all weighings are equal, and it hides their spread)`},
		{ends(scoop.Weighing{Number: 1, Mass: 99}, scoop.Weighing{}), `scoop: lowest weighing "99 g, number 1": want one of the n, not above the mean; ` +
			`scoop: highest weighing "0 g, number 0": want one of the n, not below the mean`},
		{ends(scoop.Weighing{Number: 1, Mass: 97}, scoop.Weighing{Number: 4, Mass: 99}), `scoop: highest weighing "99 g, number 4": want one of the n, not below the mean`},
	} {
		refused(t, tt.c.Validate(), tt.want)
	}
	for _, c := range []scoop.Calibration{
		good, ends(scoop.Weighing{Number: 3, Mass: 97}, scoop.Weighing{Number: 1, Mass: 99}),
		{N: 4, Mean: 98, Readability: 1},
		{N: 1000000, Mean: 25000, SD: 25},
		{N: 4, Mean: 98, SD: 196},
	} {
		if err := c.Validate(); err != nil {
			t.Error(err)
		}
	}
}

// A Calibration and the results are plain structs: whatever is put into them,
// nothing panics and no NaN comes back without an error.
func TestHandmadeValuesNeverPanic(t *testing.T) {
	odd := []units.Mass{0, nan, inf, -inf, -1, 5e-324, 1e-15, 1e-3, 98, 25000, math.MaxFloat64}
	counts := []int{math.MinInt, -1, 0, 2, 3, 10, 1000000, math.MaxInt}
	levels := []units.Percent{0, 50, 95, 99.999, 100, units.Percent(math.NaN())}
	sound := func(err error, xs ...float64) {
		t.Helper()
		for _, x := range xs {
			if err == nil && (math.IsNaN(x) || math.IsInf(x, 0)) {
				t.Errorf("%v without an error", xs)
			}
		}
	}
	for _, mean := range odd {
		for _, sd := range odd {
			for _, n := range counts {
				for i, step := range odd {
					level := levels[i%len(levels)]
					c := scoop.Calibration{N: n, Mean: mean, SD: sd, Readability: step, Highest: scoop.Weighing{Number: i % 3, Mass: mean}}
					c.Lowest = c.Highest
					r, err := c.MeanInterval(level)
					sound(err, float64(r.Low), float64(r.High))
					r, err = c.Day(n, level)
					sound(err, float64(r.Low), float64(r.High))
					u, err := c.RelativeUncertainty(3)
					sound(err, float64(u))
					o, err := c.Outlier(level)
					sound(err, o.G, o.Critical)
					x, err := c.Against(step, level)
					sound(err, x.T, float64(x.Interval.Low), float64(x.Interval.High))
					_, _ = c.Enough(5, level)
					p, err := scoop.ComparePeople([]scoop.Calibration{c, {N: 3, Mean: 98, SD: 1}, c}, level)
					sound(err, p.F, p.Critical, float64(p.Mean), float64(p.Within), float64(p.Between))
					sound(nil, float64(c.CV()), float64(c.SDUncertainty()))
					if (c.Explain() == "") != (c.Validate() != nil) {
						t.Errorf("%+v explained as %q", c, c.Explain())
					}
					h := scoop.People{Count: n, Mean: mean, Within: sd, Between: step, Readability: step}
					u, err = h.RelativeUncertainty(2)
					sound(err, float64(u))
					sound(nil, float64(h.WithinCV()), float64(h.BetweenCV()))
					h.Explain()
					_ = scoop.Comparison{From: mean, To: sd, Interval: units.Range[units.Mass]{Low: step, High: mean}}.Explain()
				}
			}
		}
	}
}
