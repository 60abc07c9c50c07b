package trend

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Plan is a weight loss that runs. It is comparable with ==.
type Plan struct {
	// Loss is the plan of the first day. The weight of its animal is the
	// initial one, which every percentage is of. What else is known of the
	// animal (days unfed, circumstances) is of today, since the gates look at
	// it.
	Loss energy.WeightLoss `json:"loss"`
	// Daily is what is fed now, kcal a day, treats included; Since is the day
	// from which on. The weighing of that day is the first that counts.
	Daily units.Energy `json:"daily"`
	Since Date         `json:"since"`
	// Target is the loss a week to aim for, percent of the initial weight. Zero
	// is TargetRate of the species; any other lies within 0.5 to 2 %.
	Target units.Range[units.Percent] `json:"target,omitzero"`
	// Asked says that treats, table food, other feeders, other animals' bowls
	// and the measuring of the food were asked about at this visit, and that
	// all of it is inside Daily. No cut is proposed before.
	Asked bool `json:"asked,omitzero"`
}

// UnmarshalJSON reads a plan. A member of unknown name, or one that stands
// twice, is an error. A JSON null leaves p as it was.
func (p *Plan) UnmarshalJSON(data []byte) error {
	type plain Plan
	return record(data, "plan", func(v plain) { *p = Plan(v) })
}

// Target rates, percent of the initial weight a week.
const (
	// targetDog: AAHA 2014 has 1 to 2 % in dogs. The high end is that of
	// energy.WeightLoss.Goal.
	targetDog units.Percent = 1
	// referCat: AAHA 2014 has 0.5 to 2 % in cats; SACN 5th ed., p. 529, holds 0.5
	// to 1 % safer, which is what Goal gives and what is aimed for here.
	referCat units.Percent = 2
)

// target returns the loss to aim for, and the least that is of use, from the
// goal of the plan.
func (p Plan) target(g energy.Goal) (aim units.Range[units.Percent], useful units.Percent) {
	aim = g.Rate
	if p.Loss.Animal.Species == energy.Dog {
		aim.Low = targetDog
	}
	if p.Target != (units.Range[units.Percent]{}) {
		aim = p.Target
	}
	return aim, g.Rate.Low
}

// accepted are the targets a plan may have: those of AAHA 2014 and SACN.
var accepted = units.Range[units.Percent]{Low: 0.5, High: 2}

// check returns the plan's own faults; those of Loss are of package energy.
func (p Plan) check(today Date) units.ErrorList {
	var faults units.ErrorList
	// The most a day that energy takes.
	if most := 50000 * units.Kilocalorie; !isPositive(p.Daily) || p.Daily > most {
		faults = append(faults, refuse("daily", p.Daily.String(), "above 0 kcal, up to "+most.String()+" a day", ""))
	}
	if err := checkDate("since", p.Since, 0, today, false); err != nil {
		faults = append(faults, err)
	}
	t := p.Target
	if t != (units.Range[units.Percent]{}) && !(accepted.Low <= t.Low && t.Low < t.High && t.High <= accepted.High) {
		text := t.Low.String() + " to " + t.High.String()
		faults = append(faults, refuse("target", text, "a range within 0.5 % to 2 % a week, or none for that of the species", ""))
	}
	return faults
}

// checkFirst returns the fault of a checked log beside the plan: none, or a first
// weight that can't be of the same animal.
func (p Plan) checkFirst(log Weights) units.ErrorList {
	if len(log) == 0 {
		return units.ErrorList{refuse("weights", "0 weighings", "one or more", "")}
	}
	first, initial := log[0], p.Loss.Animal.Weight
	if !isPositive(initial) || first.Confirmed || follows(first.Weight, initial, initial) {
		return nil // a plan without a weight is refused by its Goal
	}
	return units.ErrorList{refuse("weighing 1 weight", first.Weight.String(), "a weight like the plan's "+readable(initial),
		signed(units.Percent(100*(first.Weight/initial-1)))+hint(first.Weight, initial))}
}

// Next returns the next step: how the loss goes, what is proposed and why. The
// log is the whole one, from the first day of the plan on or earlier.
//
// A loss below the target is cut by 10 % of the energy, the usual published
// step, and by 20 % where the animal is shown to have gained; but only where
// Plan.Asked, and where the log shows that it is below, or has had 28 days to
// reach it. A loss above the target is answered with 10 % more, above twice the
// target and above 2 % a week with 20 %. A cut that WeightLoss would refuse is
// not made: the step then keeps what is fed and refers. At the target weight 10
// % more begin the way to a steady weight, or 20 % as above; an animal that is
// shown to gain there keeps what it is fed, and one that is more than 5 % below
// the target (ours) is referred.
//
// One line over the whole log can hide what began last week. So the last
// weighing is held against the one before it and against the one of a week
// ago: where that is shown to be above the target, whatever the line says, the
// loss is too fast; where a loss is shown and its rate is above the target, or
// above what is safe for the species, nothing is cut; and a cat that is shown
// to lose is referred above 2 % a week, on whichever energy it lost it.
//
// Nothing follows from a weight that is more than 28 days old (ours) but to
// weigh first.
//
// All faults come back at once: those of the log, of the plan, and of
// energy.WeightLoss, whose gates stand.
func (p Plan) Next(log Weights, today Date) (Step, error) {
	faults := log.check(today, growth{})
	if faults == nil {
		faults = p.checkFirst(log)
	}
	if today.isValid() {
		faults = append(faults, p.check(today)...)
	}
	goal, err := p.Loss.Goal()
	if faults = errlist.Add(faults, err); faults != nil {
		return Step{}, faults.Err()
	}
	s := Step{Plan: p, Goal: goal, Today: today, Last: log[len(log)-1]}
	s.Target, s.useful = p.target(goal)
	window := log.Since(p.Since)
	if len(window) > 1 {
		s.Trend = window.trend(p.Loss.Animal.Weight)
	}
	s.look(log, window)
	s.Verdict = s.judge()
	s.propose()
	s.Recheck = s.recheck(log[0].Date)
	return s, nil
}
