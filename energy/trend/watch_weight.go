package trend

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Thresholds of a change of weight, in percent. That of a shelter adult is
// Cornell's, a tenth that of a critical-care chapter and of Tanaka 2012; the two
// of a quick loss are ours.
const (
	shelterShift units.Percent = 3
	quickLoss    units.Percent = 5
	hungryLoss   units.Percent = 3 // with little appetite
	tenthLost    units.Percent = 10

	quickDays = 7
)

// weightFlags returns what the last weighing says against the ones before it.
func (w Watch) weightFlags() []Flag {
	n := len(w.Weights)
	if n < 2 || w.Animal.Species == 0 {
		return nil
	}
	var flags []Flag
	first, before, last := w.Weights[0], w.Weights[n-2], w.Weights[n-1]
	planned := w.Plan != (Plan{})
	add := func(k FlagKind, l advice.Level, text string, s advice.Source) {
		flags = append(flags, Flag{k, last.Date, advice.Caution{Level: l, Text: text, Source: s}})
	}
	from := func(a Weighing) string { return readable(a.Weight) + " to " + readable(last.Weight) }
	start := change(first, last)
	ferret := w.Animal.Species == energy.Ferret // its weight swings with the season

	week := w.heaviestSince(last.Date - quickDays)
	quick := change(week, last)
	base := first
	if planned {
		base = week // since the first day a loss is meant
	}
	sick := change(base, last)
	switch appetite := w.appetiteOn(last.Date); {
	case quick.Percent <= -quickLoss:
		add(QuickLoss, advice.Refer, "lost "+percent(-quick.Percent)+" in "+days(quick.Days)+" ("+from(week)+"): a veterinarian must see it", ours)
	case sick.Percent < -hungryLoss && (appetite == Reduced || appetite == NotEating):
		add(QuickLoss, advice.Refer, "lost "+percent(-sick.Percent)+" since "+base.Date.String()+" ("+from(base)+") and its appetite is "+appetite.String()+": a veterinarian must see it", ours)
	}
	peak := w.heaviestSince(firstDate)
	if lost := change(peak, last); lost.Percent <= -tenthLost && !planned {
		add(TenthLost, advice.Refer, "lost "+percent(-lost.Percent)+" since "+peak.Date.String()+" ("+from(peak)+"): a veterinarian must see it", sourceTenth)
	}
	if w.Shelter && !ferret && !planned && w.isGrown() && (start.Percent < -shelterShift || shelterShift < start.Percent) {
		add(ShelterShift, advice.Warn, signed(start.Percent)+" since intake ("+from(first)+"), more than 3 %: look for the cause, and score the condition", sourceShelter)
	}
	if w.isGrown() && !ferret {
		flags = append(flags, w.rateFlags(before, last)...)
	}
	return flags
}

// rateFlags holds the loss since the last weighing against the safe rate and,
// where it is planned, against its target.
func (w Watch) rateFlags(before, last Weighing) []Flag {
	c := change(before, last)
	lost, text := -c.PerWeek, percent(-c.PerWeek)+" of its weight a week since "+before.Date.String()
	// Of a ferret and others no rate is published: the dog's is taken.
	safe, source := energy.SafeLossRate(energy.Dog).High, sourceRate
	if w.Animal.Species == energy.Cat {
		safe, source = energy.SafeLossRate(energy.Cat).High, sourceRateCat
	}
	flag := func(k FlagKind, l advice.Level, text string, s advice.Source) []Flag {
		return []Flag{{k, last.Date, advice.Caution{Level: l, Text: text, Source: s}}}
	}
	shown := -c.Mass > SmallestChange(last.Weight, last.Readability)
	switch planned := w.Plan != (Plan{}); {
	case lost > referCat && w.Animal.Species == energy.Cat && shown:
		return flag(RateOfLoss, advice.Refer, "lost "+text+", more than 2 %: a cat's liver is in danger", sourceTarget)
	case lost > safe && shown:
		return flag(RateOfLoss, advice.Warn, "lost "+text+", more than "+percent(safe)+": give more, and call", source)
	case planned && c.Days >= firstVisit:
		goal, err := w.Plan.Loss.Goal()
		if err != nil || last.Weight <= goal.Target.Weight {
			return nil // a plan whose gates are shut, or that is at its goal
		}
		if aim, _ := w.Plan.target(goal); lost < aim.Low {
			verb := "lost "
			if lost < 0 {
				verb, text = "gained ", percent(-lost)+" of its weight a week since "+before.Date.String()
			}
			return flag(SlowLoss, advice.Note, verb+text+", below the target of "+percent(aim.Low)+": ask about treats and measuring before cutting", sourceTarget)
		}
	}
	return nil
}

// heaviestSince returns the heaviest weighing before the last, from that day on;
// the last itself where there is none.
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

// appetiteOn returns the newest score on the day or before it, within a week.
func (w Watch) appetiteOn(d Date) Appetite {
	var a Appetite
	for _, s := range w.Appetites {
		if d-quickDays <= s.Date && s.Date <= d {
			a = s.Appetite
		}
	}
	return a
}
