package trend

import (
	"math"
	"testing"
)

// digits returns to how many digits got agrees with a certified value, the
// measure of the NIST Statistical Reference Datasets.
func digits(got, certified float64) float64 {
	if got == certified {
		return 16
	}
	return -math.Log10(math.Abs((got - certified) / certified))
}

// NIST StRD, Norris.dat, linear regression of low difficulty: 36 pairs.
var (
	norrisY = []float64{
		0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
		557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
	}
	norrisX = []float64{
		0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6,
		556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
	}
)

func TestNorrisIsReproducedToTwelveDigits(t *testing.T) {
	l := fit(norrisX, norrisY)
	s := math.Sqrt(l.squares / l.free)
	for _, tt := range []struct {
		name           string
		got, certified float64
	}{
		{"B0", l.intercept, -0.262323073774029},
		{"B1", l.slope, 1.00211681802045}, // from memory of Norris.dat; the others typed from it
		{"residual standard deviation", s, 0.884796396144373},
		{"standard deviation of B0", l.heightError(0, s), 0.232818234301152},
		{"standard deviation of B1", l.slopeError(s), 0.429796848199937e-03},
		{"residual sum of squares", l.squares, 26.6173985294224},
		{"regression sum of squares", l.slope * l.slope * l.spread, 4255954.13232369},
		{"F", l.slope * l.slope * l.spread / (s * s), 5436385.54079785},
	} {
		// Doubles can't give the 15 certified digits after the sums.
		if d := digits(tt.got, tt.certified); d < 12 {
			t.Errorf("%s = %v, want %v: %.1f digits agree", tt.name, tt.got, tt.certified, d)
		}
	}
	if l.free != 34 {
		t.Errorf("degrees of freedom = %v, want 34", l.free)
	}
}

// JCGM 100:2008, H.3, Table H.6: the correction b of a thermometer at t, fitted
// against t - 20 °C. Tolerances are half of the last printed digit.
func TestThermometerOfTheGUM(t *testing.T) {
	at := []float64{21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511}
	b := []float64{-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160}
	x := make([]float64, len(at))
	for i := range at {
		x[i] = at[i] - 20
	}
	l := fit(x, b)
	s := math.Sqrt(l.squares / l.free)
	for _, tt := range []struct {
		name              string
		got, want, within float64
	}{
		{"y1", l.intercept, -0.1712, 5e-5},
		{"y2", l.slope, 0.00218, 5e-6},
		{"s(y2)", l.slopeError(s), 0.00067, 5e-6},
		{"s", s, 0.0035, 5e-5},
		{"b(30)", l.at(10), -0.1494, 5e-5},
		{"u(b(30))", l.heightError(10, s), 0.0041, 5e-5},
		{"mean t", l.meanX + 20, 24.0085, 5e-5},
		{"y1 at the mean", l.at(l.meanX), -0.1625, 5e-5},
	} {
		if math.Abs(tt.got-tt.want) > tt.within {
			t.Errorf("%s = %v, want %v ± %v", tt.name, tt.got, tt.want, tt.within)
		}
	}
	if l.free != 9 {
		t.Errorf("degrees of freedom = %v, want 9", l.free)
	}
}

// NIST/SEMATECH e-Handbook 1.3.5.2, confidence limits of ZARR13: Student's t
// with 194 degrees of freedom, to half of the last printed digit.
func TestQuantileIsThatOfTheHandbook(t *testing.T) {
	for _, tt := range []struct{ confidence, want float64 }{
		{0.50, 0.675756},
		{0.75, 1.153804},
		{0.90, 1.652746},
		{0.95, 1.972268},
		{0.99, 2.601409},
		{0.999, 3.341382},
		{0.9999, 3.973014},
		{0.99999, 4.536689},
	} {
		if got := quantile(tt.confidence, 194); math.Abs(got-tt.want) > 5e-7 {
			t.Errorf("quantile(%v, 194) = %.7f, want %v", tt.confidence, got, tt.want)
		}
	}
}
