package scoop_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"

	"github.com/google/go-cmp/cmp"
)

const instead = "instead   weigh the food: this holds for this cup, this food, this person and this way of filling\n"

func explains(t *testing.T, got, want string) {
	t.Helper()
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("working (-want +got):\n%s", diff)
	}
}

// NIST/SEMATECH e-Handbook 7.2.2, the counts taken for grams: mean 53.7, SD 6.567, t
// 2.262 (as printed there), on a 1 g scale. By hand: √(6.567²/10 + 1/12) = 2.0965, effective degrees of
// freedom 9 × (2.0965/2.0767)⁴ = 9.35, t between 2.26 and 2.23: 49.0 to 58.4. Next scoop:
// √(6.567² × 1.1 + 1/12) = 6.8936, × 2.262: 38.1 to 69.3. G = (67 - 53.7)/6.567 = 2.03; the
// critical value, 2.29, is in every table for ten (from memory).
func TestWorkingOfACup(t *testing.T) {
	c := must[scoop.Calibration](t)(scoop.Calibrate(masses(50, 48, 44, 56, 61, 52, 53, 55, 67, 51), g))
	explains(t, c.Explain(), ""+
		"given     10 level fills weighed on a 1 g scale\n"+
		"mean      53.7 g a scoop; with 95 % confidence the cup's true mean is 49.0 g to 58.4 g\n"+
		"spread    standard deviation 6.6 g, 12.2 % of the mean (CV)\n"+
		"next      the next scoop is, 19 times in 20, 38.1 g to 69.3 g\n"+
		"outlier   none: weighing 9, 67.0 g, is 2.03 standard deviations from the mean; up to 2.29 is ordinary (Grubbs, 95 %)\n"+
		instead)
}

func TestWorkingOfAnOutlier(t *testing.T) {
	c := calibrate(t, 199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57)
	explains(t, c.Explain(), ""+
		"given     8 level fills weighed\n"+
		"mean      206.4 g a scoop; with 95 % confidence the cup's true mean is 193.2 g to 219.7 g\n"+ // mpmath: 193.18 to 219.69
		"spread    standard deviation 15.9 g, 7.7 % of the mean (CV)\n"+
		"next      the next scoop is, 19 times in 20, 166.7 g to 246.2 g\n"+ // mpmath: 166.67 to 246.19
		"outlier   weighing 8, 245.6 g, is 2.47 standard deviations from the mean; more than 2.13 is odd (Grubbs, 95 %): "+
		"find out why and weigh again; it is still counted above\n"+
		"note      few weighings: the standard deviation itself is uncertain by 27 %; weigh ten fills or more\n"+
		"note      the rounding of the scale is not counted\n"+
		instead)
}

// By hand, all equal on a 1 g scale: 98 ± 1.96 × 0.28868 = ± 0.566 g.
func TestWorkingOfACoarseScale(t *testing.T) {
	c := must[scoop.Calibration](t)(scoop.Calibrate(masses(98, 98, 98, 98), g))
	explains(t, c.Explain(), ""+
		"given     4 level fills weighed on a 1 g scale\n"+
		"mean      98.0 g a scoop; with 95 % confidence the cup's true mean is 97.4 g to 98.6 g\n"+
		"spread    standard deviation 0.0 g, 0.0 % of the mean (CV)\n"+
		"next      the next scoop is, 19 times in 20, 97.4 g to 98.6 g\n"+
		"outlier   none: all weighings are equal\n"+
		"note      few weighings: the standard deviation itself is uncertain by 42 %; weigh ten fills or more\n"+ // Table E.1
		"note      among 4 weighings hardly any can be told to be odd\n"+
		"note      the 1 g scale is too coarse to show how the cup varies: use a finer scale\n"+
		instead)
}

// Hahn & Meeker 1991: 48.47 to 51.73 and 46.1 to 54.1 (limits from memory), a
// tenth of it, so that the small masses have more digits.
func TestWorkingOfFiguresAlone(t *testing.T) {
	c := scoop.Calibration{N: 5, Mean: 5.010 * g, SD: 0.131 * g}
	explains(t, c.Explain(), ""+
		"given     5 level fills weighed\n"+
		"mean      5.01 g a scoop; with 95 % confidence the cup's true mean is 4.85 g to 5.17 g\n"+
		"spread    standard deviation 0.13 g, 2.6 % of the mean (CV)\n"+
		"next      the next scoop is, 19 times in 20, 4.61 g to 5.41 g\n"+
		"outlier   not tested: the single weighings are not known\n"+
		"note      few weighings: the standard deviation itself is uncertain by 36 %; weigh ten fills or more\n"+ // Table E.1
		"note      the rounding of the scale is not counted\n"+
		instead)
}

func TestWideSpreadIsSaid(t *testing.T) {
	const note = "note      a wide spread: one person with one cup of dry food varied by 2 to 13 % (German and others 2011)\n"
	for _, tt := range []struct {
		sd   units.Mass
		said bool
	}{{12.99, false}, {13, false}, {13.01, true}} {
		c := scoop.Calibration{N: 12, Mean: 100 * g, SD: tt.sd, Readability: g}
		if got := c.Explain(); strings.Contains(got, note) != tt.said {
			t.Errorf("SD %v:\n%s", tt.sd, got)
		}
	}
}

// NIST/SEMATECH e-Handbook 7.2.2: 53.7 against 50, limits of the difference -0.9976 and, as far on the
// other side of 3.7, 8.3976.
func TestWorkingOfAComparison(t *testing.T) {
	c := calibrate(t, 50, 48, 44, 56, 61, 52, 53, 55, 67, 51)
	explains(t, must[scoop.Comparison](t)(c.Against(50*g, 95)).Explain(), ""+
		"given     50.0 g against 53.7 g\n"+
		"differs   by +3.7 g, +7.4 %; with 95 % confidence the true difference is -1.0 g to +8.4 g\n"+
		"so        a difference isn't shown; that doesn't show the two to be the same\n")
	explains(t, must[scoop.Comparison](t)(c.Against(41*g, 99)).Explain(), ""+
		"given     41.0 g against 53.7 g\n"+
		"differs   by +12.7 g, +31.0 %; with 99 % confidence the true difference is +6.0 g to +19.4 g\n"+ // 3.25 × 2.0766 = 6.749; t from any table, from memory
		"so        the two differ\n")
}

// JCGM 100:2008, H.5, microvolts over 10 V taken for milligrams over 10 g: 85 within,
// 43 between, F 2.26 from the table (printed 2.25), F 0.975 2.45 (as printed there).
func TestWorkingOfPeople(t *testing.T) {
	means := []float64{10.172, 10.116, 10.013, 10.144, 10.106, 10.031, 10.060, 10.125, 10.163, 10.041}
	spreads := []float64{60, 77, 111, 101, 67, 93, 80, 73, 88, 86}
	each := make([]scoop.Calibration, len(means))
	for i := range each {
		each[i] = scoop.Calibration{N: 5, Mean: units.Mass(means[i]) * g, SD: units.Mass(spreads[i]) * units.Milligram}
	}
	p := must[scoop.People](t)(scoop.ComparePeople(each, 97.5))
	near(t, "within", p.Within.Milligrams(), 85, 0.5)
	near(t, "between", p.Between.Milligrams(), 43, 0.5)
	explains(t, p.Explain(), ""+
		"given     10 people, 50 weighings, mean 10.1 g\n"+
		"within    standard deviation of one person's fills 0.1 g, 0.8 %\n"+
		"between   standard deviation of the people's means 0.0 g, 0.4 %; with 10 people itself uncertain by 24 % or more\n"+
		"so        that people differ isn't shown: F = 2.26, up to 2.45 is ordinary (97.5 %)\n"+
		"note      the rounding of the scale is not counted\n"+
		"published 2 to 13 % within, 2 to 28 % between people with cups of dry food (German and others 2011)\n")
	if got := (scoop.People{}).Explain() + (scoop.Comparison{}).Explain() + (scoop.Calibration{}).Explain(); got != "" {
		t.Errorf("zero values: %q", got)
	}
}
