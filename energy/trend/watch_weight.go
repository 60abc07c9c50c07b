package trend

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Thresholds of a change of weight, in percent. That of a shelter adult is
// Cornell's, a tenth that of a critical-care chapter and of Tanaka 2012; the
// others are ours.
const (
	shelterShift units.Percent = 3
	quickLoss    units.Percent = 5 // in a week
	hungryLoss   units.Percent = 3 // with little appetite, in a month or since the weighing before
	youngLoss    units.Percent = 3 // in a week, of one that should grow
	tenthLost    units.Percent = 10

	quickDays  = 7
	hungryDays = 30
)

// weightFlags returns what the last weighing says against the ones before it.
func (w Watch) weightFlags() []Flag {
	n := len(w.Weights)
	if n < 2 || w.Animal.Species == 0 {
		return nil
	}
	flags := w.quickFlags()
	first, last := w.Weights[0], w.Weights[n-1]
	planned := w.Plan != (Plan{})
	ferret := w.Animal.Species == energy.Ferret // its weight swings with the season

	if flag := w.tenthFlag(); flag != (Flag{}) {
		flags = append(flags, flag)
	}
	start := change(first, last).Percent
	if w.Shelter && !ferret && !planned && w.isGrown() && (start < -shelterShift || shelterShift < start) {
		flags = append(flags, w.weightFlag(ShelterShift, advice.Warn,
			signed(start)+" since intake ("+fromTo(first, last)+"), more than 3 %: look for the cause, and score the condition", sourceShelter))
	}
	if w.isGrown() && !ferret {
		flags = append(flags, w.rateFlags()...)
	}
	return flags
}

// weightFlag returns a flag that rests on the last weighing.
func (w Watch) weightFlag(k FlagKind, l advice.Level, text string, s advice.Source) Flag {
	last := w.Weights[len(w.Weights)-1]
	return Flag{k, last.Date, advice.Caution{Level: l, Text: text, Source: s}}
}

func fromTo(a, b Weighing) string { return readable(a.Weight) + " to " + readable(b.Weight) }

// quickFlags returns what was lost in a week, or with little appetite in a month.
func (w Watch) quickFlags() []Flag {
	n := len(w.Weights)
	before, last := w.Weights[n-2], w.Weights[n-1]
	lost := func(a Weighing, since, text string) []Flag {
		return []Flag{w.weightFlag(QuickLoss, advice.Refer,
			"lost "+percent(-change(a, last).Percent)+since+" ("+fromTo(a, last)+")"+text+": a veterinarian must see it", ours)}
	}
	// Over a longer gap nobody knows when it was lost: at the mean of a week.
	week := w.heaviestSince(last.Date - quickDays)
	if change(before, last).PerWeek <= -quickLoss && before.Date < last.Date-quickDays {
		week = before
	}
	quick := change(week, last)
	since := " in " + days(quick.Days)
	if quick.Percent <= -quickLoss {
		return lost(week, since, "")
	}
	if w.isYoung() && quick.Percent < -youngLoss && (stretch{week, last}).isLoss() {
		return lost(week, since, ", and it should grow")
	}
	base := week // of a planned loss, which is meant since its first day
	if w.Plan == (Plan{}) {
		base = w.heaviestSince(min(last.Date-hungryDays, before.Date))
	}
	appetite := w.appetiteSince(last.Date - quickDays)
	if change(base, last).Percent < -hungryLoss && (appetite == Reduced || appetite == NotEating) {
		return lost(base, " since "+base.Date.String(), " and its appetite is "+appetite.String())
	}
	return nil
}

// tenthFlag returns the flag of a tenth lost: since the heaviest weighing, or,
// where the loss is meant, of the goal. The plan of one whose gates are shut
// counts no more.
func (w Watch) tenthFlag() Flag {
	last := w.Weights[len(w.Weights)-1]
	if w.Plan != (Plan{}) {
		if goal, err := w.Plan.Loss.Goal(); err == nil {
			target := goal.Target.Weight
			below := units.Percent(100 * ((target - last.Weight) / target))
			if below < tenthLost {
				return Flag{}
			}
			return w.weightFlag(TenthLost, advice.Refer,
				readable(last.Weight)+" is "+percent(below)+" below its goal of "+readable(target)+": a veterinarian must see it", sourceTenth)
		}
	}
	peak := w.heaviestSince(firstDate)
	lost := change(peak, last).Percent
	if lost > -tenthLost {
		return Flag{}
	}
	return w.weightFlag(TenthLost, advice.Refer,
		"lost "+percent(-lost)+" since "+peak.Date.String()+" ("+fromTo(peak, last)+"): a veterinarian must see it", sourceTenth)
}

// rateFlags holds the loss of the last days against the safe rate. Of a planned one
// it says what the plan's next step says, and holds it against its target too.
func (w Watch) rateFlags() []Flag {
	if w.Plan != (Plan{}) {
		if step, err := w.Plan.Next(w.Weights, w.Today); err == nil {
			return w.planFlags(step)
		} // a plan whose gates are shut counts no more
	}
	// Of a ferret and others no rate is published: the dog's is taken.
	safe, source := energy.SafeLossRate(energy.Dog).High, sourceRate
	if w.Animal.Species == energy.Cat {
		safe, source = energy.SafeLossRate(energy.Cat).High, sourceRateCat
	}
	fast := fastestLoss(w.Weights.lately())
	lost := -fast.change().PerWeek
	text := "lost " + percent(lost) + " of its weight a week since " + fast.from.Date.String()
	more := func(limit units.Percent) string { return moreThan(limit, fast.surely(fast.from.Weight) > limit) }
	switch {
	case lost > referCat && w.Animal.Species == energy.Cat:
		return []Flag{w.weightFlag(RateOfLoss, advice.Refer, text+more(referCat)+": a cat's liver is in danger", sourceTarget)}
	case lost > safe:
		return []Flag{w.weightFlag(RateOfLoss, advice.Warn, text+more(safe)+": give more, and call", source)}
	}
	return nil
}

// planFlags returns what a step says of a loss above what is safe, and else whether
// it was below its target over the last 14 days or more on this energy.
func (w Watch) planFlags(s Step) []Flag {
	if c := s.rateCaution(); c != (advice.Caution{}) {
		return []Flag{{RateOfLoss, s.Last.Date, c}}
	}
	lost := s.lastVisit()
	if s.visit == (stretch{}) || s.Verdict == TooFast || s.Last.Weight <= s.Goal.Target.Weight || lost >= s.Target.Low {
		return nil
	}
	text := "lost " + percent(lost)
	if lost < 0 {
		text = "gained " + percent(-lost)
	}
	text += " of its initial weight a week since " + s.visit.from.Date.String() + ", below the target of " + percent(s.Target.Low)
	if !s.Plan.Asked {
		text += ": ask about treats and measuring before cutting"
	}
	return []Flag{w.weightFlag(SlowLoss, advice.Note, text, sourceTarget)}
}

// heaviestSince returns the heaviest weighing from that day on; the last itself
// where none before it is heavier.
func (w Watch) heaviestSince(d Date) Weighing {
	log := w.Weights.Since(d)
	heaviest := log[len(log)-1]
	for _, x := range log {
		if x.Weight > heaviest.Weight {
			heaviest = x
		}
	}
	return heaviest
}

// appetiteSince returns the newest score from that day on.
func (w Watch) appetiteSince(d Date) Appetite {
	if n := len(w.Appetites); n > 0 && w.Appetites[n-1].Date >= d {
		return w.Appetites[n-1].Appetite
	}
	return 0
}
