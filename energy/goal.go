package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Goal is where a weight loss is to lead, and how fast it may go. Nothing is
// rounded. It is comparable with ==; the zero value is no goal.
type Goal struct {
	Target Target                     // the weight to reach, with its range
	Lose   units.Mass                 // the current weight less the target
	Rate   units.Range[units.Percent] // safe loss a week, in percent of the weight at the start
	Weekly units.Range[units.Mass]    // the same as a mass
	Weeks  Span                       // how long it takes
}

// Span is a span of time in weeks, unrounded. The zero value is none.
type Span struct {
	Soonest float64 // at the fastest safe loss
	Latest  float64 // at the slowest
}

// Safe rates, percent of the initial weight a week. SACN 5th ed., p. 522, 529
// and Box 27-12, p. 532: 0.5 to 2, a ceiling that is taken over from people; in
// obese cats 0.5 to 1 is safer. AAHA 2014 (from memory) has 1 to 2 for dogs and
// 0.5 to 2 for cats; 12 cats of German 2008 lost 0.8 on average.
var (
	rateDog = units.Range[units.Percent]{Low: 0.5, High: 2}
	rateCat = units.Range[units.Percent]{Low: 0.5, High: 1}

	sourceRate    = advice.Source{Work: sacn, Where: "p. 522 and Box 27-12, p. 532", Seen: advice.Primary}
	sourceRateCat = advice.Source{Work: sacn, Where: "p. 529", Seen: advice.Primary}
)

// SafeLossRate returns the weight that a dog or a cat on a plan may lose, percent
// of its initial weight a week: 0.5 to 2 % in dogs, 0.5 to 1 % in cats (SACN 5th
// ed., p. 522, 529). The zero Range is for any other species.
func SafeLossRate(s Species) units.Range[units.Percent] {
	if s != Dog && s != Cat {
		return units.Range[units.Percent]{}
	}
	rate, _ := safeRate(s)
	return rate
}

// safeRate returns the rate of the species and where it is from.
func safeRate(s Species) (units.Range[units.Percent], advice.Source) {
	if s == Cat {
		return rateCat, sourceRateCat
	}
	return rateDog, sourceRate
}

// Goal returns the target weight, the safe rate and the time it takes: 0.5 to
// 2 % of the initial weight a week in a dog, 0.5 to 1 % in a cat. It fails
// where Estimate does.
//
// The weight of Animal is taken for the initial one. While the plan runs, keep
// asking with the weight of the first day: a percentage of the falling weight
// is another plan. Record Target.Weight as Animal.Ideal on that day too, since
// a score that falls with the weight gives a new target at every visit.
func (s WeightLoss) Goal() (Goal, error) {
	if _, err := s.Estimate(); err != nil {
		return Goal{}, err
	}
	return s.goal(), nil
}

// goal returns the goal of a checked stage.
func (s WeightLoss) goal() Goal {
	a := s.Animal
	t := a.target(a.idealMethod(0))
	rate, _ := safeRate(a.Species)
	g := Goal{
		Target: t, Lose: a.Weight - t.Weight, Rate: rate,
		Weekly: units.Range[units.Mass]{
			Low:  a.Weight * units.Mass(rate.Low) / 100,
			High: a.Weight * units.Mass(rate.High) / 100,
		},
	}
	g.Weeks = Span{Soonest: float64(g.Lose / g.Weekly.High), Latest: float64(g.Lose / g.Weekly.Low)}
	return g
}

func (g Goal) explain(w *working, a *Animal) {
	_, source := safeRate(a.Species)
	w.line("goal", readable(a.Weight)+" - "+readable(g.Target.Weight)+" = "+readable(g.Lose)+" to lose")
	w.line("", short(float64(g.Rate.Low))+" to "+short(float64(g.Rate.High))+" % of "+readable(a.Weight)+" a week = "+
		readable(g.Weekly.Low)+" to "+readable(g.Weekly.High)+" a week")
	w.line("", readable(g.Lose)+" at that rate = "+round(g.Weeks.Soonest, 1)+" to "+round(g.Weeks.Latest, 1)+" weeks")
	w.source(source)
}
