package trend

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Step is the proposal at a visit, for a person to accept. It is comparable
// with ==; the zero value is none. It isn't stored: keep the Plan and the
// Weights, from which Next makes it again. encoding/json gets an error for it.
type Step struct {
	Plan  Plan
	Goal  energy.Goal // of the plan's first day
	Today Date
	Last  Weighing // the newest

	Trend   Trend                      // since Plan.Since; zero with fewer than two weighings
	Target  units.Range[units.Percent] // the loss aimed for, a week, of the initial weight
	Verdict Verdict

	Daily  units.Energy  // proposed, kcal a day
	Change units.Percent // against Plan.Daily; below zero is a cut
	Ask    bool          // ask about treats and measuring first
	// Refer says that a veterinarian decides: Reasons and Cautions say why.
	Refer   bool
	Recheck Date // weigh again on this day, never after the last that Date takes

	useful units.Percent
	gated  bool // a cut would be below the gates
	below  bool // what is proposed is below them, since what is fed is
	held   bool // a cut would be an answer to a loss that isn't safe

	now    stretch       // the fastest loss of the last days that is shown
	sure   units.Percent // the least that they show, on this energy
	visit  stretch       // the last 14 days or more, on this energy
	rising bool          // a gain is shown
}

// Steps of the energy in percent. AAHA 2014 (from memory) has 5 to 20, usually
// 10; the case of SACN 5th ed., p. 540, cuts 920 kcal to 725 after a gain, which it
// calls approximately 80 %.
const (
	usualStep units.Percent = 10
	bigStep   units.Percent = 20
)

// propose sets what follows from the verdict.
func (s *Step) propose() {
	s.Daily = s.Plan.Daily
	rate, interval := s.loss()
	switch s.Verdict {
	case AtGoal, TooFast:
		if s.Verdict == AtGoal && s.rising {
			break
		}
		s.change(usualStep)
		if pace := s.pace(); pace > 2*s.Target.High || pace > referCat {
			s.change(bigStep)
		}
	case TooSlow, Stalled:
		if rate > s.safest() {
			s.held = true
			break
		}
		if !s.Plan.Asked {
			s.Ask = true
			break
		}
		s.change(-usualStep)
		if interval.High < 0 {
			s.change(-bigStep)
		}
		if s.isGated() {
			s.Daily, s.Change = s.Plan.Daily, 0
			s.gated, s.Refer = true, true
		}
	}
	if s.isDangerous() || s.isBelowGoal() {
		s.Refer = true
	}
	if s.isGated() {
		s.below, s.Refer = true, true
	}
}

// isGated reports whether WeightLoss refuses the amount.
func (s Step) isGated() bool {
	_, err := s.Stage().Estimate()
	return err != nil
}

func (s *Step) change(by units.Percent) {
	s.Change = by
	s.Daily = s.Plan.Daily * units.Energy(100+by) / 100
}

// Stage returns the proposal as a stage, to be weighed out: the plan with its
// target as the recorded ideal weight, on all of Daily. Its animal keeps the
// weight of the first day, which percentages and grams a week are of. Once the
// goal is reached it is energy.Observed or Adult that go on.
func (s Step) Stage() energy.WeightLoss {
	l := s.Plan.Loss
	l.Animal.Ideal = s.Goal.Target.Weight
	l.Method, l.Intake, l.Share, l.Rate = energy.ShareOfIntake, s.Daily, 100, 0
	return l
}

// recheck returns the day of the next weighing, after today: the next one where
// the newest weight is too old, a week on where the loss is too fast or not
// safe, else two weeks, and four where it is on target and the plan is more than
// two months old.
func (s Step) recheck(start Date) Date { return min(s.nextVisit(start), lastDate) }

func (s Step) nextVisit(start Date) Date {
	const twoMonths = 60
	next := Date(firstVisit)
	switch {
	case s.isStale():
		return s.Today + 1
	case s.isFast():
		next = daysPerWeek
	case s.Verdict == OnTarget && s.Today-start > twoMonths:
		next = oneMonth
	case s.Verdict == TooEarly && s.Plan.Since+firstVisit > s.Last.Date:
		return max(s.Plan.Since+firstVisit, s.Today+1)
	}
	return max(s.Last.Date+next, s.Today+1)
}

// isFast reports whether the loss is too fast for its target or for the species.
func (s Step) isFast() bool {
	return s.Verdict == TooFast || s.isFastNow() || s.pace() > s.Goal.Rate.High
}

// recheckSource says where the interval is from.
func (s Step) recheckSource() advice.Source {
	switch {
	case s.isStale():
		return ours
	case s.isFast():
		return advice.Source{Work: cote, Where: "p. 3088: every 1 to 2 weeks", Seen: advice.Primary}
	case s.Verdict == AtGoal:
		return sourceAfter
	case s.Recheck == s.Last.Date+oneMonth:
		return sourceMonthly
	}
	return sourceRecheck
}
