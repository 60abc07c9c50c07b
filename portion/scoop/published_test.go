package scoop_test

import (
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// The table of statistics in internal/reftable holds some three hundred published
// figures against this package. Here are those that its rows can't say.

// NIST StRD, SiRstv: resistivity of silicon wafers, five instruments of five measurements.
// Data and certified values from memory; that data and values recalled apart
// agree in fourteen digits confirms both.
func TestComponentsOfVarianceAreTheCertifiedOnes(t *testing.T) {
	instruments := []scoop.Calibration{
		calibrate(t, 196.3052, 196.1240, 196.1890, 196.2569, 196.3403),
		calibrate(t, 196.3042, 196.3825, 196.1669, 196.3257, 196.0422),
		calibrate(t, 196.1303, 196.2005, 196.2889, 196.0343, 196.1811),
		calibrate(t, 196.2795, 196.1748, 196.1494, 196.1485, 195.9885),
		calibrate(t, 196.2119, 196.1051, 196.1850, 196.0052, 196.2090),
	}
	p := must[scoop.People](t)(scoop.ComparePeople(instruments, 95))
	near(t, "F", p.F, 1.18046237440255, 1e-10) // data of seven digits, squared differences of three
	near(t, "residual standard deviation", p.Within, 0.104076068334656, 1e-12)
	// By hand from the certified mean squares 1.27865654E-02 and 1.083182780E-02:
	// √((0.0127865654 - 0.0108318278) / 5) = 0.019772. F 0.95 of 4 and 20 is 2.87 in
	// every table (from memory).
	near(t, "between", p.Between, 0.019772, 5e-7)
	near(t, "critical F", p.Critical, 2.87, 0.005)
	if p.Differ || p.Count != 5 || p.Weighings != 25 {
		t.Errorf("%+v", p)
	}
}

// By hand, three fills of 100 g and five of 110 g, both with SD 2 g: mean of all 106.25;
// between 3 × 6.25² + 5 × 3.75² = 187.5, within 4; weighings a person 8 - 34/8 = 3.75.
// One scale of two has steps of 1 g: 3.75 × (1/12)/2 = 0.15625, F = 187.5/4.15625 = 45.1128, and
// between is √(183.34375/3.75) = 6.99226 g. The mean of the people's means is 105 g,
// uncertain by half their difference, 5 g.
func TestPeopleWhoWeighedDifferentlyOften(t *testing.T) {
	p := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{
		{N: 3, Mean: 100 * g, SD: 2 * g}, {N: 5, Mean: 110 * g, SD: 2 * g, Readability: 1 * g},
	}, 95))
	near(t, "F", p.F, 45.1128, 5e-5)
	near(t, "within", p.Within, 2, 1e-12)
	near(t, "between", p.Between, 6.99226, 5e-6)
	near(t, "mean", p.Mean, 105, 1e-12)
	near(t, "uncertainty of the mean", p.Uncertainty, 5, 1e-9)
	// One scoop by anybody: √(183.34375/3.75 + 4 + 25 + 1/12) = 8.83034 g of 105.
	near(t, "relative", must[units.Percent](t)(p.RelativeUncertainty(1)), 8.40985, 5e-6)
	// Of four: √(183.34375/3.75 + 4/4 + 25 + 1/12) = 8.65881 g.
	near(t, "relative of four", must[units.Percent](t)(p.RelativeUncertainty(4)), 8.24649, 5e-6)
}

// NIST/SEMATECH e-Handbook, 1.3.5.3, miles per gallon of US and Japanese cars, as
// printed, from memory: 249 values of mean 20.14458 and SD 6.414700, 79 of 30.48101 and
// 6.107710; unequal variances: T = -12.94627, 136.8750 degrees of freedom. The printed SD of the
// difference, 0.7984100, agrees with both.
func TestTwoMeansOfUnequalSpread(t *testing.T) {
	us := scoop.Calibration{N: 249, Mean: 20.14458 * g, SD: 6.414700 * g}
	japan := scoop.Calibration{N: 79, Mean: 30.48101 * g, SD: 6.107710 * g}
	c := must[scoop.Comparison](t)(scoop.Compare(us, japan, 95))
	near(t, "T", c.T, 12.94627, 5e-5) // from means of seven digits
	near(t, "degrees of freedom", c.Freedom, 136.8750, 5e-4)
	near(t, "difference", c.Difference, 10.33643, 5e-6)
	// By hand: t 0.975 of 136.875 is 1.9775 (Table G.2 of JCGM 100:2008 has 1.984 of 100).
	near(t, "low", c.Interval.Low, 10.33643-1.9775*0.79841, 5e-4)
	near(t, "high", c.Interval.High, 10.33643+1.9775*0.79841, 5e-4)
	if !c.Different {
		t.Error("not told to differ")
	}
	back := must[scoop.Comparison](t)(scoop.Compare(japan, us, 95))
	if back.Difference != -c.Difference || back.T != -c.T || back.Interval.Low != -c.Interval.High {
		t.Errorf("the other way round: %+v", back)
	}
}

// JCGM 100:2008, G.4.1 and F.2.2.1, by hand: five weighings of SD 0.4 g on a 1 g
// scale. Scatter 0.16/5 = 0.032 g², rounding 1/12 = 0.083333 g², together
// 0.115333; effective degrees of freedom 4 × (0.115333/0.032)² = 51.96; t 0.975
// of it is 2.0067, between 2.01 of 45 and 2.01 of 50 as Table G.2 prints them; half width
// 2.0067 × √0.115333 = 0.6815.
func TestRoundingOfTheScaleByHand(t *testing.T) {
	c := scoop.Calibration{N: 5, Mean: 98 * g, SD: 0.4 * g, Readability: 1 * g}
	i := must[units.Range[units.Mass]](t)(c.MeanInterval(95))
	near(t, "half width", i.Width()/2, 0.6815, 5e-5)
	x := must[scoop.Comparison](t)(c.Against(98*g, 95))
	near(t, "degrees of freedom", x.Freedom, 51.96, 0.01)
	// Next scoop: 0.16 × 1.2 = 0.192, together 0.275333: relative 0.52472/98 = 0.5354 %.
	near(t, "relative", must[units.Percent](t)(c.RelativeUncertainty(1)), 0.5354, 5e-5)
}

// By hand, on the next scoops of a cup of 100 g with SD 5 g, ten weighings:
// √(25 × (1 + 0.1)) = 5.2440 %, of four scoops √(25 × (0.25 + 0.1)) = 2.9580 %.
func TestRelativeUncertaintyByHand(t *testing.T) {
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 5 * g}
	near(t, "one scoop", must[units.Percent](t)(c.RelativeUncertainty(1)), 5.2440, 5e-5)
	near(t, "four scoops", must[units.Percent](t)(c.RelativeUncertainty(4)), 2.9580, 5e-5)
}

// By hand, CV 5 %: with t of Table G.2 of JCGM 100:2008, 27 weighings give
// 2.056 × 5/√27 = 1.978 %, 26 give 2.060 × 5/√26 = 2.020 %; for ± 10 % four give
// 3.182 × 5/2 = 7.96 and three 4.303 × 5/√3 = 12.4. (t of 2, 3 and 26 from any table, from memory.)
func TestEnoughWeighingsByHand(t *testing.T) {
	c := scoop.Calibration{N: 10, Mean: 100 * g, SD: 5 * g}
	for within, want := range map[units.Percent]int{2: 27, 10: 4, 12: 4, 13: 3, 99: 3} {
		if n := must[int](t)(c.Enough(within, 95)); n != want {
			t.Errorf("± %v: %d weighings, want %d", within, n, want)
		}
	}
}

// NIST/SEMATECH e-Handbook, 1.3.5.17.1: G = 2.4687 (truncated in print), the
// critical value one-sided 2.032, so that 245.57, the eighth, is an outlier. One-sided at 5 % is two-sided
// at 10 %.
func TestUraniumHasAnOutlier(t *testing.T) {
	c := calibrate(t, 199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57)
	o := must[scoop.Grubbs](t)(c.Outlier(90))
	near(t, "G", o.G, 2.46876461121, 1e-10) // exact arithmetic
	near(t, "critical", o.Critical, 2.032, 5e-4)
	if !o.Outlier || o.Suspect != (scoop.Weighing{Number: 8, Mass: 245.57 * g}) {
		t.Errorf("%+v", o)
	}
	if c.N != 8 || c.Highest.Mass != 245.57*g {
		t.Errorf("the outlier is not counted any more: %+v", c)
	}
}

// Grubbs 1950 has -1.40 of the Venus semi-diameters under suspicion; with 2 added, so that no
// value is below zero: G = 2.57373707163 in exact arithmetic.
func TestTheLowestCanBeTheSuspect(t *testing.T) {
	c := calibrate(t, 0.60, 1.56, 1.70, 1.76, 1.78, 1.87, 1.95, 2.06, 2.10, 2.18, 2.20, 2.39, 2.48, 2.63, 3.01)
	o := must[scoop.Grubbs](t)(c.Outlier(95))
	near(t, "G", o.G, 2.57373707163, 1e-9)
	if o.Suspect.Number != 1 {
		t.Errorf("%+v", o)
	}
}

// JCGM 100:2008, Table E.1, prints 76, 52, 42, 36, 24, 16 and 10 %; to four
// decimals by the gamma functions. From 1001 weighings on it is (4.3.2)
// 100/√(2 × 1000) = 2.2361 %.
func TestUncertaintyOfTheStandardDeviation(t *testing.T) {
	for n, want := range map[int]float64{
		0: 0, 1: 0, 2: 75.5511, 3: 52.2723, 4: 42.2016, 5: 36.2999, 10: 23.8765, 20: 16.3256, 50: 10.1270, 1001: 2.2361,
	} {
		near(t, "SD", scoop.Calibration{N: n}.SDUncertainty(), want, 5e-5)
	}
}

// By hand: two cups of four fills with SD 1 g on scales of 1 and 2 g: 1/4 + 1/4 + 1/12 + 4/12 =
// 0.916667 g², T = 3/√0.916667 = 3.1334; degrees of freedom
// 0.916667²/(2 × 0.25²/3) = 20.17.
func TestBothScalesOfAComparisonCount(t *testing.T) {
	a := scoop.Calibration{N: 4, Mean: 100 * g, SD: 1 * g, Readability: 1 * g}
	b := scoop.Calibration{N: 4, Mean: 103 * g, SD: 1 * g, Readability: 2 * g}
	c := must[scoop.Comparison](t)(scoop.Compare(a, b, 95))
	near(t, "T", c.T, 3.1334, 5e-5)
	near(t, "degrees of freedom", c.Freedom, 20.17, 5e-3)
}

func TestTheFirstOfEqualWeighingsIsNamed(t *testing.T) {
	for _, tt := range []struct {
		weighings []float64
		low, high int
	}{
		{[]float64{98, 95, 101, 95, 101}, 2, 3},
		{[]float64{95, 95, 101, 101}, 1, 3},
		{[]float64{101, 101, 95, 95}, 3, 1},
	} {
		c := calibrate(t, tt.weighings...)
		if c.Lowest != (scoop.Weighing{Number: tt.low, Mass: 95 * g}) || c.Highest != (scoop.Weighing{Number: tt.high, Mass: 101 * g}) {
			t.Errorf("%v: %+v", tt.weighings, c)
		}
	}
}

func TestTheLimitsOfAWeighingAreTaken(t *testing.T) {
	c := calibrate(t, 0.001, 12000, 25000)
	if c.Lowest.Mass != units.Milligram || c.Highest.Mass != 25*units.Kilogram {
		t.Errorf("%+v", c)
	}
}
