package scoop_test

import (
	"math"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// Student's quantiles as mpmath has them with 30 digits (inverse of the
// regularised incomplete beta function). With a mean of 100 and an SD of √n the half
// width of the mean's interval is the quantile.
func TestQuantilesOfStudent(t *testing.T) {
	for _, tt := range []struct {
		freedom int
		level   units.Percent
		want    float64
	}{
		{2, 90, 2.91998558035},
		{2, 95, 4.30265272975},
		{2, 99.9, 31.5990545764},
		{4, 90, 2.13184678633},
		{4, 95, 2.7764451052},
		{4, 99.9, 8.61030158138},
		{9, 90, 1.83311293266},
		{9, 95, 2.2621571628},
		{9, 99.9, 4.78091258593},
		{99, 90, 1.66039115602},
		{99, 95, 1.98421695159},
		{99, 99.9, 3.39152883336},
	} {
		n := tt.freedom + 1
		c := scoop.Calibration{N: n, Mean: 100 * g, SD: units.Mass(math.Sqrt(float64(n))) * g}
		i := must[units.Range[units.Mass]](t)(c.MeanInterval(tt.level))
		near(t, "quantile", i.Width()/2, tt.want, 1e-10*tt.want)
	}
}

// Two-sided critical values of Grubbs' test by the e-Handbook's formula, in
// mpmath.
func TestCriticalValuesOfGrubbs(t *testing.T) {
	for _, tt := range []struct {
		n     int
		level units.Percent
		want  float64
	}{
		{3, 95, 1.154304851},
		{3, 99, 1.15468471},
		{8, 95, 2.126645087},
		{8, 99, 2.274365127},
		{10, 95, 2.289954084},
		{10, 99, 2.48208325},
		{38, 95, 3.0141095},
		{38, 99, 3.356072939},
		{100, 95, 3.384082901},
		{100, 99, 3.754004372},
	} {
		c := scoop.Calibration{
			N: tt.n, Mean: 100 * g, SD: 5 * g,
			Lowest: scoop.Weighing{Number: 1, Mass: 95 * g}, Highest: scoop.Weighing{Number: 2, Mass: 105 * g},
		}
		near(t, "critical value", must[scoop.Grubbs](t)(c.Outlier(tt.level)).Critical, tt.want, 5e-9)
	}
}

// Around the numbers where the normal distribution takes Student's place the
// half width has no step that a reader could see.
func TestManyDegreesOfFreedomJoinTheNormalDistribution(t *testing.T) {
	last := math.Inf(1)
	for _, sd := range []units.Mass{0.1, 0.03, 0.01, 0.003, 0.001, 0.0001} {
		c := scoop.Calibration{N: 10, Mean: 100 * g, SD: sd * g, Readability: g}
		i := must[units.Range[units.Mass]](t)(c.MeanInterval(95))
		half := i.Width().Grams() / 2
		if half > last {
			t.Errorf("SD %v: the half width grows to %v from %v", sd, half, last)
		}
		last = half
	}
	near(t, "the last", last, 1.959963984540054/math.Sqrt(12), 1e-7)
}

// NIST StRD, NumAcc4: what the data, a million times their spread, leave of
// the SD of 0.1 in a float64.
func TestStandardDeviationOfNearlyEqualWeighings(t *testing.T) {
	weighings := []float64{9765.625 + 0.2/1024}
	for range 500 {
		weighings = append(weighings, 9765.625+0.1/1024, 9765.625+0.3/1024)
	}
	near(t, "SD", 1024*calibrate(t, weighings...).SD, 0.1, 1e-8)
}
