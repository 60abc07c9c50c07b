package energy

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Stage is a life stage, or another ground, on which a day's energy is
// computed.
type Stage interface {
	// Estimate returns the day's energy, or an error that names every input
	// it can't use and returns the zero Estimate.
	Estimate() (Estimate, error)
}

// Estimate is a day's metabolizable energy and what it was computed from. It
// is comparable with ==. The zero value is no estimate.
type Estimate struct {
	Stage   Stage        // the stage that was asked, with its inputs as given
	Animal  Animal       // the animal, as given
	Weight  units.Mass   // the body weight used; zero for a prescribed figure, which uses none
	Basis   Basis        // the current weight, the ideal or that before mating; zero where Weight is
	Method  Method       // the equation, never zero
	Daily   units.Energy // kcal a day, unrounded
	Low     units.Energy // the published spread of the population around
	High    units.Energy // Daily, from Low to High: never a ration, in WeightLoss no need, in most of Lactation upwards only
	Reweigh Age          // weigh again after so many days
}

// spread of the population around an equation without one of its own.
const (
	spreadDog = 0.30 // AAHA 2010, WSAVA 2011
	spreadCat = 0.50 // SACN 5th ed. p. 377: at least
)

// spread returns Low and High for a daily energy.
func spread(s Species, daily units.Energy) (low, high units.Energy) {
	f := units.Energy(spreadDog)
	if s == Cat {
		f = spreadCat
	}
	return daily * (1 - f), daily * (1 + f)
}

// explainer is what this package's own stages can do besides. The estimate is
// one that the stage made.
type explainer interface {
	Stage
	explain(e Estimate, w *working)
	appendCautions(c []advice.Caution, e Estimate) []advice.Caution
}

// doubter is an explainer of which Low to High is not what animals like this
// one need. It says what the two are for.
type doubter interface {
	uncertain(e Estimate) string
}

// near reports whether two figures are equal but for the last bits, in which
// architectures may differ.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-12*math.Abs(b) }

// plain returns the figure without its last bits: near it, and shorter to read.
func plain(x float64) float64 {
	short, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'e', 12, 64), 64)
	return short
}

// follows reports whether the stage gives e. A caller can put any figures
// together, and a record can hold any.
func (e Estimate) follows() bool {
	x, err := e.Stage.Estimate()
	if err != nil || !near(float64(e.Weight), float64(x.Weight)) ||
		!near(float64(e.Daily), float64(x.Daily)) || !near(float64(e.Low), float64(x.Low)) || !near(float64(e.High), float64(x.High)) {
		return false
	}
	x.Weight, x.Daily, x.Low, x.High = e.Weight, e.Daily, e.Low, e.High
	return x == e
}

// Cautions returns what the figure must be shown with, the gravest first: a
// refer-level caution comes before the grams. The zero Estimate has none.
func (e Estimate) Cautions() []advice.Caution {
	if e == (Estimate{}) {
		return nil
	}
	const usual = 6 // few animals have more
	c := e.Animal.appendCautions(make([]advice.Caution, 0, usual), &e)
	if s, ok := e.Stage.(explainer); ok {
		if e.follows() {
			c = s.appendCautions(c, e)
		} else {
			c = append(c, advice.Caution{
				Level: advice.Refer, Text: "the figures of this estimate are not those its stage gives: estimate again", Source: ours,
			})
		}
	}
	advice.Sort(c)
	return c
}
