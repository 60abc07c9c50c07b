package scoop_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// simulations is the number of simulated calibrations of a claim; short runs
// take a tenth. The seed is fixed, so that a run never differs from the last.
func simulations() int {
	if testing.Short() {
		return 1000
	}
	return 10000
}

// rate counts how often something happened.
type rate struct{ hits, runs int }

func (r *rate) count(hit bool) {
	r.runs++
	if hit {
		r.hits++
	}
}

func (r rate) is() float64 { return float64(r.hits) / float64(r.runs) }

// band is three standard deviations of a count of that many runs that succeed with
// probability p: at 95 % and 10,000 runs ± 0.65 %. A right interval is outside it
// once in 370 seeds; the normal distribution in the place of Student's is 7 % off at five weighings.
func (r rate) band(p float64) float64 { return 3 * math.Sqrt(p*(1-p)/float64(r.runs)) }

func (r rate) near(t *testing.T, what string, p float64) {
	t.Helper()
	if math.Abs(r.is()-p) > r.band(p) {
		t.Errorf("%s: %.2f %%, want %.2f %% ± %.2f %%", what, 100*r.is(), 100*p, 100*r.band(p))
	}
}

func (r rate) atLeast(t *testing.T, what string, p float64) {
	t.Helper()
	if r.is() < p-r.band(p) {
		t.Errorf("%s: %.2f %%, want at least %.2f %% less %.2f %%", what, 100*r.is(), 100*p, 100*r.band(p))
	}
}

// cup is a cup whose truth is known.
type cup struct {
	mean, sd, step float64 // g
	random         *rand.Rand
}

func newCup(mean, sd, step float64) cup {
	return cup{mean, sd, step, rand.New(rand.NewPCG(1, 2))}
}

func (c cup) fill() units.Mass { return units.Mass(c.mean + c.sd*c.random.NormFloat64()) }

// read returns what the scale shows of m.
func (c cup) read(m units.Mass) units.Mass {
	if c.step == 0 {
		return m
	}
	return units.Mass(math.Round(float64(m)/c.step) * c.step)
}

func (c cup) calibrate(t *testing.T, n int) scoop.Calibration {
	t.Helper()
	w := make([]units.Mass, n)
	for i := range w {
		w[i] = c.read(c.fill())
	}
	return must[scoop.Calibration](t)(scoop.Calibrate(w, units.Mass(c.step)))
}

func TestIntervalsCoverAsOftenAsTheySay(t *testing.T) {
	for _, n := range []int{3, 5, 10, 30} {
		c := newCup(98, 5, 0)
		var mean, next, day, normal rate
		for range simulations() {
			s := c.calibrate(t, n)
			mean.count(must[units.Range[units.Mass]](t)(s.MeanInterval(95)).Contains(98))
			next.count(must[units.Range[units.Mass]](t)(s.NextScoop(95)).Contains(c.fill()))
			day.count(must[units.Range[units.Mass]](t)(s.Day(3, 95)).Contains(c.fill() + c.fill() + c.fill()))
			normal.count(math.Abs(float64(s.Mean)-98) <= 1.96*float64(s.SD)/math.Sqrt(float64(n)))
		}
		mean.near(t, "mean", 0.95)
		next.near(t, "next scoop", 0.95)
		day.near(t, "three scoops", 0.95)
		// What the band is worth: it tells the normal from Student's distribution.
		if n <= 5 && math.Abs(normal.is()-0.95) <= normal.band(0.95) {
			t.Errorf("%d weighings: the band of ± %.2f %% lets the normal distribution pass with %.2f %%", n, 100*normal.band(0.95), 100*normal.is())
		}
	}
}

func TestIntervalsCoverAtOtherLevels(t *testing.T) {
	for _, level := range []units.Percent{50, 80, 99} {
		c := newCup(98, 5, 0)
		var next rate
		for range simulations() {
			s := c.calibrate(t, 8)
			next.count(must[units.Range[units.Mass]](t)(s.NextScoop(level)).Contains(c.fill()))
		}
		next.near(t, "next scoop at "+level.String(), level.Fraction())
	}
}

// On a scale of 1 g the true masses are still held at least as often as said,
// whatever the scatter of the cup is beside the step; where all weighings are
// equal too.
func TestRoundingOfTheScaleIsCovered(t *testing.T) {
	for _, sd := range []float64{0.01, 0.1, 0.3, 0.6, 1, 5} {
		c := newCup(0, sd, 1)
		var mean, next, day rate
		for range simulations() {
			c.mean = 98 + c.random.Float64() // anywhere between two steps
			s := c.calibrate(t, 6)
			mean.count(must[units.Range[units.Mass]](t)(s.MeanInterval(95)).Contains(units.Mass(c.mean)))
			next.count(must[units.Range[units.Mass]](t)(s.NextScoop(95)).Contains(c.fill()))
			day.count(must[units.Range[units.Mass]](t)(s.Day(2, 95)).Contains(c.fill() + c.fill()))
		}
		mean.atLeast(t, "mean", 0.95)
		next.atLeast(t, "next scoop", 0.95)
		day.atLeast(t, "two scoops", 0.95)
		if sd == 5 { // the step is small beside the scatter: no more than needed
			mean.near(t, "mean", 0.95)
		}
	}
}

func TestGrubbsFindsAnOutlierWhereThereIsNoneAsOftenAsItSays(t *testing.T) {
	for _, n := range []int{5, 10} {
		c := newCup(98, 5, 0)
		var alarms rate
		for range simulations() {
			alarms.count(must[scoop.Grubbs](t)(c.calibrate(t, n).Outlier(95)).Outlier)
		}
		alarms.near(t, "false alarms", 0.05)
	}
}

// Ten fills, one of them spilt by 30 g, six times the scatter: that is found nearly
// always, and it is that one.
func TestGrubbsFindsASpiltScoop(t *testing.T) {
	c := newCup(98, 5, 0)
	var found rate
	for range simulations() {
		w := make([]units.Mass, 10)
		for i := range w {
			w[i] = c.fill()
		}
		w[6] -= 30
		s := must[scoop.Calibration](t)(scoop.Calibrate(w, 0))
		o := must[scoop.Grubbs](t)(s.Outlier(95))
		found.count(o.Outlier && o.Suspect.Number == 7)
	}
	found.atLeast(t, "found", 0.9)
}

func TestDifferenceOfTwoCupsIsCovered(t *testing.T) {
	a, b := newCup(98, 5, 0), newCup(104, 2, 0)
	b.random = a.random
	var covered, different rate
	for range simulations() {
		x := a.calibrate(t, 12)
		covered.count(must[scoop.Comparison](t)(scoop.Compare(x, b.calibrate(t, 6), 95)).Interval.Contains(6))
		different.count(must[scoop.Comparison](t)(scoop.Compare(x, a.calibrate(t, 9), 95)).Different)
	}
	covered.near(t, "true difference", 0.95)
	different.near(t, "equal cups told to differ", 0.05)
}

func TestPeopleWhoFillAlikeAreToldToDifferAsOftenAsSaid(t *testing.T) {
	c := newCup(98, 5, 0)
	var differ rate
	for range simulations() {
		each := []scoop.Calibration{c.calibrate(t, 4), c.calibrate(t, 6), c.calibrate(t, 5)}
		differ.count(must[scoop.People](t)(scoop.ComparePeople(each, 95)).Differ)
	}
	differ.near(t, "told to differ", 0.05)
}

// Eight people with 5 g within and 10 g between: the estimates of the variances
// are right on the average, and the scoop of a ninth is as far from the mean as the relative
// uncertainty says. The band is three standard deviations of the average, which
// for a variance of ν degrees of freedom is √(2/ν) of it for one run.
func TestComponentsOfVarianceAreRightOnTheAverage(t *testing.T) {
	const people, fills, within, between = 8, 6, 5, 10
	random := rand.New(rand.NewPCG(3, 4))
	person := func() cup { return cup{200 + between*random.NormFloat64(), within, 0, random} }
	var w, b, u, off float64
	runs := float64(simulations())
	for range simulations() {
		each := make([]scoop.Calibration, people)
		for i := range each {
			each[i] = person().calibrate(t, fills)
		}
		p := must[scoop.People](t)(scoop.ComparePeople(each, 95))
		w += float64(p.Within * p.Within)
		b += float64(p.Between * p.Between)
		r := must[units.Percent](t)(p.RelativeUncertainty(1))
		u += math.Pow(r.Fraction()*float64(p.Mean), 2)
		off += math.Pow(float64(person().fill()-p.Mean), 2)
	}
	near(t, "within", w/runs, 25, 3*25*math.Sqrt(2.0/40/runs))
	near(t, "between", b/runs, 100, 3*(100+25.0/6)*math.Sqrt(2.0/7/runs))
	near(t, "of a ninth person", off/runs, u/runs, 3*(125+105.0/8)*math.Sqrt(2/runs))
}
