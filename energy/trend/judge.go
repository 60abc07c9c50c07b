package trend

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// How long an energy is tried before a loss is called slow.
const (
	// firstVisit: SACN 5th ed., Box 27-12, p. 532: every two weeks.
	firstVisit = 14
	// oneMonth: the client handout cuts after a month without response. A
	// weight that is older says nothing of today: ours.
	oneMonth = 28
)

// overshoot is how far below its goal an animal must not get: ours.
const overshoot units.Percent = 5

// look sets what the log says of the last days.
func (s *Step) look(log, window Weights) {
	initial := s.Plan.Loss.Animal.Weight
	s.now = fastestLoss(log.lately())
	for _, x := range log.lately() {
		s.rising = s.rising || x.isGain()
	}
	s.rising = (s.rising || s.Trend.Interval.Low > 0) && s.now == (stretch{})
	for _, x := range window.lately() {
		s.sure = max(s.sure, x.surely(initial))
	}
	s.visit = window.since(firstVisit)
}

// loss returns the loss a week in percent of the initial weight, with its
// interval: the trend's with the sign turned.
func (s Step) loss() (rate units.Percent, interval units.Range[units.Percent]) {
	return -s.Trend.OfInitial, units.Range[units.Percent]{Low: -s.Trend.OfInitialInterval.High, High: -s.Trend.OfInitialInterval.Low}
}

// recent returns the loss a week of the last days in percent of the initial
// weight, zero where none is shown.
func (s Step) recent() units.Percent { return s.now.loss(s.Plan.Loss.Animal.Weight) }

// pace returns the loss a week that counts against what is safe, percent of the
// initial weight: the trend's where it was measured over 14 days or is shown,
// or that of the last days where it is more. At the goal a gain of the last days
// ends what the trend says.
func (s Step) pace() units.Percent {
	rate, interval := s.loss()
	atGoal := s.Last.Weight <= s.Goal.Target.Weight
	if s.Trend.Days < firstVisit && interval.Low <= 0 || atGoal && s.rising {
		rate = 0
	}
	return max(rate, s.recent())
}

// isFastNow reports whether the last days are shown to be a loss, above the
// target or above what is safe.
func (s Step) isFastNow() bool { return s.recent() > s.safest() }

// safest returns the loss above which nothing is cut.
func (s Step) safest() units.Percent { return min(s.Target.High, s.Goal.Rate.High) }

// isStale reports whether the newest weight says nothing of today.
func (s Step) isStale() bool { return s.Today-s.Last.Date > oneMonth }

// isBelowGoal reports whether the goal is clearly passed.
func (s Step) isBelowGoal() bool {
	goal, last := s.Goal.Target.Weight, s.Last
	most := max(goal*units.Mass(overshoot)/100, SmallestChange(last.Weight, last.Readability))
	return goal-last.Weight > most
}

// isDangerous reports whether a cat loses more than any source allows. AAHA 2014
// has its percentage of the weight at the visit before.
func (s Step) isDangerous() bool {
	return s.Plan.Loss.Animal.Species == energy.Cat && max(s.pace(), -s.now.change().PerWeek) > referCat
}

// judge returns the verdict on the trend and on the last days. It must be found
// before a proposal.
func (s Step) judge() Verdict {
	aim, long := s.Target, s.Trend.Days >= firstVisit
	rate, interval := s.loss()
	switch {
	case s.isStale():
		return TooEarly
	case s.Last.Weight <= s.Goal.Target.Weight:
		return AtGoal
	case s.shows(aim.High, s.sure):
		return TooFast
	case !long:
		return TooEarly
	case rate >= aim.Low:
		return OnTarget
	case interval.High >= aim.Low && s.Trend.Days < oneMonth, s.isFastNow() && rate <= s.safest():
		return TooEarly
	case interval.Low <= 0, s.stoodStill():
		return Stalled
	}
	return TooSlow
}

// shows reports whether a loss above a limit is shown: by the trend, which is taken
// as it is from 14 days on, or by the least that the last days show.
func (s Step) shows(limit, lately units.Percent) bool {
	rate, interval := s.loss()
	return interval.Low > limit || s.Trend.Days >= firstVisit && rate > limit || lately > limit
}

// lastVisit returns the loss a week since the last visit, two weeks ago or more, in
// percent of the initial weight; zero where there was none.
func (s Step) lastVisit() units.Percent { return s.visit.loss(s.Plan.Loss.Animal.Weight) }

// stoodStill reports whether less than the least useful loss was made since the
// last visit.
func (s Step) stoodStill() bool { return s.visit != (stretch{}) && s.lastVisit() < s.useful }
