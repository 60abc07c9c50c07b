package scoop_test

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"testing"

	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// cups generates calibrations by their figures: any mean, a CV of 0.01 to 50 %.
func cups() gopter.Gen {
	return gopter.CombineGens(
		proptest.Quantity[units.Mass](1, 5000), proptest.Quantity[float64](1e-4, 0.5), gen.IntRange(3, 200),
		gen.OneConstOf(units.Mass(0), units.Mass(0.1), units.Mass(1), units.Mass(5)),
	).Map(func(v []any) scoop.Calibration {
		mean := v[0].(units.Mass)
		return scoop.Calibration{N: v[2].(int), Mean: mean, SD: mean * units.Mass(v[1].(float64)), Readability: v[3].(units.Mass)}
	})
}

func TestIntervalProperties(t *testing.T) {
	interval := must[units.Range[units.Mass]](t)
	level := proptest.Quantity[units.Percent](50, 99.9)
	proptest.Check(t, "the mean's interval lies in the next scoop's, both hold the mean", prop.ForAll(func(c scoop.Calibration, l units.Percent) string {
		mean, next := interval(c.MeanInterval(l)), interval(c.NextScoop(l))
		if !mean.Contains(c.Mean) || next.Low > mean.Low || next.High < mean.High || next.Low < 0 {
			return fmt.Sprint(mean, next)
		}
		return ""
	}, cups(), level))
	proptest.Check(t, "a higher level is wider", prop.ForAll(func(c scoop.Calibration, l units.Percent) bool {
		return interval(c.NextScoop(l)).High < interval(c.NextScoop(l+0.05)).High
	}, cups(), level))
	proptest.Check(t, "a day of more scoops is more, relatively no less certain, and within as many single ones", prop.ForAll(func(c scoop.Calibration, n int) string {
		one, day, more := interval(c.NextScoop(95)), interval(c.Day(n, 95)), interval(c.Day(n+1, 95))
		k := units.Mass(n)
		a, b := must[units.Percent](t)(c.RelativeUncertainty(n)), must[units.Percent](t)(c.RelativeUncertainty(n+1))
		if day.High >= more.High || b > a || day.High > k*one.High*(1+1e-12) && c.Readability == 0 {
			return fmt.Sprint(one, day, more, a, b)
		}
		return ""
	}, cups(), gen.IntRange(1, 50)))
	proptest.Check(t, "a scale of coarser steps is never more certain", prop.ForAll(func(c scoop.Calibration) bool {
		coarse := c
		coarse.Readability += 10
		a, b := must[units.Percent](t)(c.RelativeUncertainty(1)), must[units.Percent](t)(coarse.RelativeUncertainty(1))
		return a < b
	}, cups()))
	proptest.Check(t, "enough weighings reach what was wanted, one fewer doesn't", prop.ForAll(func(c scoop.Calibration, within units.Percent) string {
		n, err := c.Enough(within, 95)
		if err != nil {
			return "" // more than 10,000
		}
		half := func(n int) float64 {
			d := c
			d.N = n
			i := interval(d.MeanInterval(95))
			return 100 * float64((i.High-d.Mean)/d.Mean)
		}
		if half(n) > float64(within)*(1+1e-9) || n > 3 && half(n-1) < float64(within)*(1-1e-9) {
			return fmt.Sprint(n, half(n))
		}
		return ""
	}, cups(), proptest.Quantity[units.Percent](0.5, 60)))
}

func TestCalibrateProperties(t *testing.T) {
	list := gen.SliceOf(proptest.Quantity[units.Mass](50, 150)).SuchThat(func(w []units.Mass) bool { return len(w) >= 3 })
	calibrated := must[scoop.Calibration](t)
	proptest.Check(t, "the order of weighings doesn't matter, and they stay as they were", prop.ForAll(func(w []units.Mass) string {
		before := slices.Clone(w)
		c, err := scoop.Calibrate(w, 0)
		if !slices.Equal(before, w) {
			return "changed"
		}
		slices.Reverse(w)
		d, err2 := scoop.Calibrate(w, 0)
		if (err == nil) != (err2 == nil) {
			return fmt.Sprint(err, err2)
		}
		if err == nil && (c.Lowest.Mass != d.Lowest.Mass || c.Highest.Mass != d.Highest.Mass || math.Abs(float64(c.Mean-d.Mean)) > 1e-9 || math.Abs(float64(c.SD-d.SD)) > 1e-9) {
			return fmt.Sprint(c, d)
		}
		return ""
	}, list))
	proptest.Check(t, "twice the masses have twice the mean and the spread, and one CV", prop.ForAll(func(w []units.Mass) string {
		c, err := scoop.Calibrate(w, 0)
		if err != nil {
			return "" // all are equal
		}
		for i := range w {
			w[i] *= 2
		}
		if d := calibrated(scoop.Calibrate(w, 0)); d.Mean != 2*c.Mean || d.SD != 2*c.SD || d.CV() != c.CV() {
			return fmt.Sprint(c, d)
		}
		return ""
	}, list))
	proptest.Check(t, "G is at most (n - 1)/√n, and the suspect is a weighing", prop.ForAll(func(w []units.Mass) string {
		c, err := scoop.Calibrate(w, 0)
		if err != nil {
			return ""
		}
		o := must[scoop.Grubbs](t)(c.Outlier(95))
		n := float64(c.N)
		if o.G > (n-1)/math.Sqrt(n)*(1+1e-9) || o.Critical >= (n-1)/math.Sqrt(n) || w[o.Suspect.Number-1] != o.Suspect.Mass {
			return fmt.Sprint(o)
		}
		return ""
	}, list))
	proptest.Check(t, "a record is read back as it was written", prop.ForAll(func(w []units.Mass) string {
		c, err := scoop.Calibrate(w, 0)
		if err != nil {
			return ""
		}
		b, err := json.Marshal(c)
		var d scoop.Calibration
		if err != nil || json.Unmarshal(b, &d) != nil || c != d {
			return fmt.Sprintf("%s, %v: %+v", b, err, d)
		}
		return ""
	}, list))
}

func TestComparisonProperties(t *testing.T) {
	proptest.Check(t, "two people by variance and by Welch differ alike where they weighed equally often and scatter alike", prop.ForAll(
		func(c scoop.Calibration, ratio float64) string {
			c.Readability = 0
			d := c
			d.Mean = units.Mass(float64(c.Mean) * ratio)
			p, err := scoop.ComparePeople([]scoop.Calibration{c, d}, 95)
			x, err2 := scoop.Compare(c, d, 95)
			if err != nil || err2 != nil {
				return fmt.Sprint(err, err2)
			}
			// F of one degree of freedom is the square of t.
			if math.Abs(p.F-x.T*x.T) > 1e-6*p.F+1e-9 {
				return fmt.Sprint(p, x)
			}
			if p.Differ != x.Different && math.Abs(p.F/p.Critical-1) > 1e-6 {
				return fmt.Sprint(p, x)
			}
			return ""
		}, cups(), gen.Float64Range(0.8, 1.25)))
}
