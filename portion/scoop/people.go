package scoop

import (
	"math"
	"strconv"

	"example.org/bowlgram/units"
)

// People is the spread of a cup in several hands, split into that of one
// person's fills and that between people.
type People struct {
	Count     int        // of people
	Weighings int        // of all of them
	Mean      units.Mass // of the people's means, each counted once
	// Uncertainty is the standard uncertainty of Mean, where it is taken for what
	// anybody's fills come to on average.
	Uncertainty units.Mass
	// Within is the standard deviation of one person's fills, pooled; Between that of the people's
	// true means, 0 g where the means scatter no more than the fills explain.
	Within, Between units.Mass
	// F is the mean square between over that within and of the scales' rounding,
	// and Critical what it must be above for people to Differ at the Level.
	F, Critical float64
	Level       units.Percent
	Differ      bool
	Readability units.Mass // the coarsest of the scales
}

// ComparePeople splits the spread of the calibrations that 2 to 1000 people made
// of one cup with one food, by one-way analysis of variance; they may have weighed differently
// often. Their spreads are taken to be alike. What is between people may as well be
// between days, bags or cups.
//
// As in [Compare], a scale that shows steps of d adds d²/12 to the square of what
// each person's mean is off, which more weighings don't take away: people that
// differ by the step of a scale aren't shown to differ. The degrees of freedom below
// are then those of Welch and Satterthwaite.
//
// Where nobody's weighings differ at all the scale is too coarse, and that is an
// error.
func ComparePeople(each []Calibration, level units.Percent) (People, error) {
	var errs units.ErrorList
	if n := len(each); n < 2 || n > mostPeople {
		return People{}, fault("people", strconv.Itoa(n), "2 to 1000", "")
	}
	for i, c := range each {
		errs = append(errs, prefixed("person "+strconv.Itoa(i+1)+": ", c.faults())...)
	}
	if errs = checkLevel(errs, level); len(errs) > 0 {
		return People{}, errs.Err()
	}
	return components(each, level)
}

// components is the analysis of variance.
func components(each []Calibration, level units.Percent) (People, error) {
	p := People{Count: len(each), Level: level}
	var sum, squares, within, rounding float64
	for _, c := range each {
		n := float64(c.N)
		p.Weighings += c.N
		p.Readability = max(p.Readability, c.Readability)
		sum += float64(n * c.Mean.Grams())
		squares += float64(n * n)
		within += c.fromScatter(n - 1).square
		rounding += fromScale(c.Readability).square
	}
	people, weighings := float64(p.Count), float64(p.Weighings)
	freedom := weighings - people
	within /= freedom
	rounding /= people
	if within == 0 {
		return People{}, fault("spread", "0 g", "weighings that differ", "a finer scale")
	}
	var between, means, fills float64
	for _, c := range each {
		d := c.Mean.Grams() - sum/weighings
		between += float64(float64(c.N) * d * d)
		means += c.Mean.Grams()
		fills += within / float64(c.N)
	}
	between /= people - 1
	// The number of weighings a person, as it counts where they differ.
	often := (weighings - squares/weighings) / (people - 1)
	below := uncertainty{within, freedom}.plus(certain(often * rounding))
	variance := math.Max(0, (between-below.square)/often)
	p.Mean = units.Mass(means / people)
	p.Uncertainty = units.Mass(math.Sqrt((variance + rounding + fills/people) / people))
	p.Within, p.Between = units.Mass(math.Sqrt(within)), units.Mass(math.Sqrt(variance))
	p.F = between / below.square
	p.Critical = quantileF(level.Fraction(), people-1, below.freedom)
	p.Differ = p.F > p.Critical
	return p, nil
}

// isResult reports whether p may come from ComparePeople, so that its figures can be
// computed with.
func (p People) isResult() bool {
	return p.Count >= 2 && isMass(p.Mean) && isStep(p.Readability) && 0 < p.Within && p.Within <= mostSpread &&
		0 <= p.Between && p.Between <= mostSpread && 0 < p.Uncertainty && p.Uncertainty <= mostSpread
}

// mostF is the greatest F that is written out, ours. No critical value is as great.
const mostF = 1000000

// isTested reports whether the test of p may come from ComparePeople too.
func (p People) isTested() bool {
	return p.isResult() && p.Count <= mostPeople && leastWeighings*p.Count <= p.Weighings &&
		0 <= p.F && p.F <= math.MaxFloat64 && 0 < p.Critical && p.Critical <= mostF && len(checkLevel(nil, p.Level)) == 0
}

// WithinCV returns Within in percent of the mean, 0 for what can't come from ComparePeople.
func (p People) WithinCV() units.Percent { return p.relative(p.Within) }

// BetweenCV returns Between in percent of the mean, 0 for what can't come from ComparePeople.
func (p People) BetweenCV() units.Percent { return p.relative(p.Between) }

func (p People) relative(m units.Mass) units.Percent {
	if !p.isResult() {
		return 0
	}
	return units.Percent(100 * m / p.Mean)
}

// RelativeUncertainty returns the relative standard uncertainty, one standard deviation in percent, of
// the mass in so many scoops, 1 to 1000, that one person fills who may be
// anybody, counted with the mean of all.
func (p People) RelativeUncertainty(scoops int) (units.Percent, error) {
	errs := checkScoops(nil, scoops)
	if !p.isResult() {
		errs = append(errs, fault("people", strconv.Itoa(p.Count), "a result of ComparePeople", ""))
	}
	if len(errs) > 0 {
		return 0, errs.Err()
	}
	b, w, u := p.Between.Grams(), p.Within.Grams(), p.Uncertainty.Grams()
	square := float64(b*b) + float64(w*w)/float64(scoops) + float64(u*u) + fromScale(p.Readability).square
	return p.relative(units.Mass(math.Sqrt(square))), nil
}
