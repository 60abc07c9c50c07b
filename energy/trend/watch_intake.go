package trend

import (
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// Hours without food. A cat's 24 are Côté's; all others are ours.
const (
	catHours      = 24
	dogCallHours  = 24
	dogReferHours = 48
	delicateCall  = 8
	delicateRefer = 12

	hoursPerDay = 24
)

// unfedFlags returns what is to be said of an animal that doesn't eat: for the
// hours given, or for the days at the end of the logs on which it ate nothing.
func (w Watch) unfedFlags() []Flag {
	unfed, last := w.unfedDays()
	hours, date := max(w.HoursUnfed, hoursPerDay*w.Animal.DaysUnfed), w.Today
	text := "nothing eaten for " + strconv.Itoa(hours) + " hours"
	if hours == 1 {
		text = "nothing eaten for 1 hour"
	}
	// A day of nothing is past at the end of it; on the day itself nobody can
	// tell how long it has been. Days that nobody wrote down since then don't
	// feed it: they count on.
	whole := 0
	if unfed > 0 {
		whole = unfed + int(w.Today-last) - 1
	}
	if hoursPerDay*whole > hours {
		hours, date = hoursPerDay*whole, last
		text = "nothing eaten for " + days(whole)
		if last < w.Today-1 {
			text = "nothing eaten on " + last.String() + ", nothing written down since"
			if unfed > 1 {
				text = "nothing eaten from " + (last - Date(unfed-1)).String() + " to " + last.String() + ", nothing written down since"
			}
		}
	}
	flag := func(l advice.Level, text string, s advice.Source) []Flag {
		return []Flag{{NothingEaten, date, advice.Caution{Level: l, Text: text, Source: s}}}
	}
	cat := w.Animal.Species == energy.Cat
	switch kind := w.delicate(); {
	case kind != "" && (hours >= delicateRefer || kind == "a nursling" && hours >= delicateCall):
		return flag(advice.Refer, text+": "+kind+" is in danger after 8 to 12 hours, a veterinarian now", ours)
	case cat && hours >= catHours:
		return flag(advice.Refer, text+": a cat needs a veterinarian now, never wait it out", sourceCat24)
	case kind != "" && hours >= delicateCall:
		return flag(advice.Warn, text+": "+kind+" can't wait, call the veterinarian", ours)
	case hours >= dogReferHours:
		return flag(advice.Refer, text+": a veterinarian must see it", ours)
	case hours >= dogCallHours:
		return flag(advice.Warn, text+": call the veterinarian", ours)
	case unfed > 0 || hours > 0 && cat:
		if unfed > 0 {
			date, text = last, "nothing eaten on "+last.String()
		}
		limit, source := "24 hours", ours
		if cat {
			source = sourceCat24
		}
		if kind != "" {
			limit = "8 to 12 hours"
		}
		return flag(advice.Note, text+": watch; at "+limit+" call the veterinarian", source)
	}
	return nil
}

// unfedDays returns how many days at the end of the logs it is written down to
// have eaten nothing on, in an unbroken row, and the last of them.
func (w Watch) unfedDays() (n int, last Date) {
	ate := make(map[Date]bool)
	for _, s := range w.Appetites {
		ate[s.Date] = s.Appetite != NotEating
	}
	for _, day := range w.Intake.days() {
		ate[day.Date] = ate[day.Date] || day.Mass > 0
	}
	for d := range ate {
		last = max(last, d)
	}
	for d := last; ; d-- {
		if eaten, written := ate[d]; !written || eaten {
			break
		}
		n++
	}
	return n, last
}

// intakeFlags returns what the last days of the intake log call for.
func (w Watch) intakeFlags() []Flag {
	sums := w.Intake.days()
	if len(sums) == 0 {
		return nil
	}
	var flags []Flag
	last := sums[len(sums)-1].Date
	add := func(k FlagKind, text string, s advice.Source) {
		flags = append(flags, Flag{k, last, advice.Caution{Level: advice.Refer, Text: text, Source: s}})
	}
	if plan := w.daily(); w.Animal.Species == energy.Cat {
		row := rowAtEnd(sums, func(e Eaten) bool { return 2*e.Energy < plan })
		if row >= 2 {
			add(UnderHalf, "under half of its "+kcal(plan)+" a day for "+days(row)+": a cat is in danger, give the old food back and call a veterinarian", sourceHalf)
		}
	}
	// Resting energy is for dogs and cats, and so are its gates; the weight of an
	// animal that is ill or thin has one all the same.
	a := energy.Animal{Species: w.Animal.Species, Weight: w.weight()}
	rer, err := energy.Resting{Animal: a}.Estimate()
	if err != nil {
		return flags
	}
	row := rowAtEnd(sums, func(e Eaten) bool { return e.isUnderThird(rer.Daily) })
	if row >= 3 {
		add(UnderThird, "a third of the resting energy ("+kcal(rer.Daily/3)+") or less for "+days(row)+": assisted feeding is a veterinarian's decision, now", sourceThird)
	}
	return flags
}

// rowAtEnd returns how many days in an unbroken row, up to the last, a rule
// holds for.
func rowAtEnd(sums []Eaten, rule func(Eaten) bool) int {
	n := 0
	for i := len(sums) - 1; i >= 0; i-- {
		if !rule(sums[i]) || n > 0 && sums[i].Date != sums[i+1].Date-1 {
			break
		}
		n++
	}
	return n
}
