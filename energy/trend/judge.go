package trend

import "example.org/bowlgram/units"

// How long an energy is tried before a loss is called slow.
const (
	// firstVisit: SACN 5th ed., Box 27-12, p. 532: every two weeks.
	firstVisit = 14
	// oneMonth: the client handout cuts after a month without response.
	oneMonth = 28
)

// loss returns the loss a week in percent of the initial weight, with its
// interval: the trend's with the sign turned.
func (s Step) loss() (rate units.Percent, interval units.Range[units.Percent]) {
	return -s.Trend.OfInitial, units.Range[units.Percent]{Low: -s.Trend.OfInitialInterval.High, High: -s.Trend.OfInitialInterval.Low}
}

// judge returns the verdict on the trend. It must be found before a proposal.
func (s Step) judge() Verdict {
	if s.Last.Weight <= s.Goal.Target.Weight {
		return AtGoal
	}
	if s.Trend.Weighings == 0 {
		return TooEarly
	}
	rate, interval := s.loss()
	switch aim, long := s.Target, s.Trend.Days >= firstVisit; {
	case interval.Low > aim.High, long && rate > aim.High:
		return TooFast
	case !long:
		return TooEarly
	case rate >= aim.Low:
		return OnTarget
	case interval.High >= aim.Low && s.Trend.Days < oneMonth:
		return TooEarly
	case interval.Low <= 0, s.stoodStill():
		return Stalled
	}
	return TooSlow
}

// stoodStill reports whether less than the least useful loss was made since the
// last visit, two weeks ago or more.
func (s Step) stoodStill() bool {
	last := s.Trend.SinceLast
	perWeek := -100 * last.Mass / s.Plan.Loss.Animal.Weight * daysPerWeek / units.Mass(max(last.Days, 1))
	return last.Days >= firstVisit && units.Percent(perWeek) < s.useful
}
