package trend

import (
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Sentence returns the verdict in one sentence.
func (s Step) Sentence() string {
	rate, interval := s.loss()
	aim := percent(s.Target.Low) + " to " + percent(s.Target.High) + " a week"
	has := "it " + losing(rate) + " of its initial weight a week"
	switch s.Verdict {
	case TooEarly:
		switch {
		case s.isStale():
			return "Too early to tell: the newest weight is " + days(int(s.Today-s.Last.Date)) + " old, weigh first."
		case s.Trend.Weighings == 0:
			return "Too early to tell: one weighing on this energy says nothing of a trend."
		case s.Trend.Days < firstVisit:
			return "Too early to tell: " + days(s.Trend.Days) + " on this energy, and two weeks are needed."
		case interval.High < s.Target.Low || s.Trend.Days >= oneMonth:
			return "Too early to tell: " + has + ", but " + s.lately() + ", and the target is " + aim + "."
		}
		return "Too early to tell: " + has + ", but the log allows for " + percent(interval.Low) + " to " + percent(interval.High) + ", and the target is " + aim + "."
	case OnTarget:
		return "On target: " + has + ", and the target is " + aim + "."
	case TooFast:
		if rate <= s.Target.High {
			has = s.lately()
		}
		return "Too fast: " + has + ", and the target is " + aim + "."
	case TooSlow:
		return "Too slow: " + has + ", and the target is " + aim + "."
	case Stalled:
		return "Stalled: " + has + s.sinceVisit() + ", and the target is " + aim + "."
	case AtGoal:
		if s.isBelowGoal() {
			return "Below the goal: " + readable(s.Last.Weight) + ", and the target was " + readable(s.Goal.Target.Weight) + "."
		}
		return "At the goal: " + readable(s.Last.Weight) + ", and the target was " + readable(s.Goal.Target.Weight) + "."
	}
	return ""
}

// lately says how fast it loses now.
func (s Step) lately() string {
	return "since " + s.now.from.Date.String() + " it " + losing(s.recent()) + " of its initial weight a week"
}

// sinceVisit says what was lost since the last visit, "" where there was none.
func (s Step) sinceVisit() string {
	if s.visit == (stretch{}) {
		return ""
	}
	when := "the last visit"
	if s.visit.from.Date != s.Last.Date-Date(s.Trend.SinceLast.Days) {
		when = s.visit.from.Date.String()
	}
	return ", since " + when + " it " + losing(s.lastVisit())
}

// losing writes a loss in percent, below zero for a gain.
func losing(p units.Percent) string {
	if p < 0 {
		return "gains " + percent(-p)
	}
	return "loses " + percent(p)
}

// Reasons returns why this is proposed, sentence by sentence.
func (s Step) Reasons() []string {
	if s.Verdict == 0 {
		return nil
	}
	reasons := []string{s.Sentence()}
	add := func(text string, from ...advice.Source) {
		for _, f := range from {
			text += " (" + f.String() + ")"
		}
		reasons = append(reasons, text)
	}
	to := kcal(s.Plan.Daily) + " to " + kcal(s.Daily) + " a day, " + signed(s.Change)
	switch {
	case s.Ask:
		add("Before any cut ask what else it gets: treats, chews, table food, what medicines are given in, other people who feed, other animals' bowls.", sourceAsk)
		add("Have the food weighed on a gram scale, left-overs too: a cup can be half or twice as much. Cut only if all of that is as planned.", sourceAsk)
	case s.gated:
		add("A cut would go below what WeightLoss gives without a veterinarian: " + kcal(s.Plan.Daily) + " stay.")
	case s.held:
		add("It loses more than "+percent(s.Goal.Rate.High)+" a week: never cut there, whatever the target; "+kcal(s.Daily)+" a day stay.", s.rateSource())
	case s.Verdict == TooFast:
		add("More food, never less: "+to+".", sourceStep)
	case s.Verdict == AtGoal && s.rising:
		add("It gains: "+kcal(s.Daily)+" a day stay as they are.", ours)
	case s.Verdict == AtGoal:
		add("The way to a steady weight, in steps until it holds: "+to+".", sourceStep)
	case s.Change == -bigStep:
		add("It is shown to have gained, and what else it gets was asked: "+to+".", sourceBigStep)
	case s.Change < 0 && s.Trend.Days >= oneMonth:
		add("What else it gets was asked, and it had a month: "+to+".", sourceStep, sourceMonth)
	case s.Change < 0:
		add("What else it gets was asked, and the log shows that it is below the target: "+to+".", sourceStep)
	default:
		add(kcal(s.Daily) + " a day stay as they are.")
	}
	add("Weigh again on "+s.Recheck.String()+", on the same scale.", s.recheckSource())
	return reasons
}

// Cautions returns what the proposal must be shown with, the gravest first.
func (s Step) Cautions() []advice.Caution {
	if s.Verdict == 0 {
		return nil
	}
	var c []advice.Caution
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	if own := s.rateCaution(); own != (advice.Caution{}) {
		c = append(c, own)
	}
	_, interval := s.loss()
	if s.isBelowGoal() {
		goal := s.Goal.Target.Weight
		add(advice.Refer, readable(s.Last.Weight)+" is "+percent(units.Percent(100*((goal-s.Last.Weight)/goal)))+" below its goal of "+readable(goal)+": it must not lose more, a veterinarian must see it", ours)
	}
	if s.gated {
		add(advice.Refer, "it doesn't lose weight on little food: have a veterinarian look for a cause before any cut", ours)
	}
	if s.below {
		add(advice.Refer, kcal(s.Daily)+" a day is less than WeightLoss gives without a veterinarian: only on a veterinarian's figure", ours)
	}
	if interval.Low <= s.Target.Low && s.Verdict == OnTarget {
		add(advice.Note, "the log allows for "+percent(interval.Low)+" to "+percent(interval.High)+" a week: one more weighing before this counts as settled", ours)
	}
	if s.Verdict == OnTarget && s.stoodStill() {
		add(advice.Note, "little was lost since the last visit (it "+losing(s.lastVisit())+" of its initial weight a week): ask about treats and measuring", sourceAsk)
	}
	if s.Verdict == AtGoal {
		add(advice.Warn, "nearly half of the cats regained more than 5 %: weigh on after the goal, every 2 to 3 weeks and then every 2 to 3 months", sourceRegain)
		if s.Goal.Target.First {
			add(advice.Warn, "the target was worked out from the end of the scale: score the condition again and set a new one", ours)
		}
		advice.Sort(c)
		return c
	}
	if e, err := s.Stage().Estimate(); err == nil {
		for _, own := range e.Cautions() {
			if !strings.HasPrefix(own.Text, "it eats ") { // of a present intake: that is the proposal here
				c = append(c, own)
			}
		}
	}
	advice.Sort(c)
	return c
}

// rateCaution returns what is to be said of a loss above what is safe, the zero value
// where it isn't. What two weighings can't show is no more than a note, but for what
// endangers a cat.
func (s Step) rateCaution() advice.Caution {
	rate, _ := s.loss()
	pace, fast := s.pace(), s.Goal.Rate.High
	loses := "loses " + percent(pace) + " of its initial weight a week"
	if s.recent() > rate && percent(s.recent()) != percent(rate) {
		loses += " since " + s.now.from.Date.String()
	}
	shown := func(limit units.Percent) bool { return s.shows(limit, s.now.surely(s.Plan.Loss.Animal.Weight)) }
	const danger = ": a veterinarian today; its liver is in danger"
	switch {
	case s.isDangerous() && pace <= referCat:
		before := s.now.from
		return advice.Caution{Level: advice.Refer, Source: sourceTarget, Text: "the cat loses " + percent(-s.now.change().PerWeek) +
			" a week of what it weighed on " + before.Date.String() + moreThan(referCat, s.now.surely(before.Weight) > referCat) + danger}
	case s.isDangerous():
		return advice.Caution{Level: advice.Refer, Source: sourceTarget, Text: "the cat " + loses + moreThan(referCat, shown(referCat)) + danger}
	case pace <= fast:
		return advice.Caution{}
	}
	c := advice.Caution{Level: advice.Warn, Source: s.rateSource(), Text: "it " + loses + moreThan(fast, shown(fast))}
	switch {
	case s.Change > 0:
		c.Text += ": give more, and call"
	case shown(fast):
		c.Text += ": no less food, weigh again in a week, and call"
	default:
		c.Level = advice.Note
		c.Text += ": no less food, and weigh again in a week"
	}
	return c
}

// moreThan says that a loss is above a limit, and where two weighings don't show it.
func moreThan(limit units.Percent, shown bool) string {
	text := ", more than " + percent(limit)
	if !shown {
		text += ", though the scale can't tell it from that"
	}
	return text
}

// rateSource says where the safe rate is from.
func (s Step) rateSource() advice.Source {
	if s.Plan.Loss.Animal.Species == energy.Cat {
		return sourceRateCat
	}
	return sourceRate
}

// Explain returns the proposal and its working, line by line, each ended by a
// newline: the verdict, what is proposed, the figures, why, and the cautions; a
// refer-level caution comes first.
func (s Step) Explain() string {
	if s.Verdict == 0 {
		return ""
	}
	var b strings.Builder
	line := func(label, text string) { b.WriteString(label + "          "[len(label):] + text + "\n") }
	cautions := s.Cautions()
	for len(cautions) > 0 && cautions[0].Level == advice.Refer {
		line("caution", cautions[0].String())
		cautions = cautions[1:]
	}
	reasons := s.Reasons()
	line("verdict", reasons[0])
	line("proposal", kcal(s.Daily)+" a day, weigh again on "+s.Recheck.String())
	line("goal", readable(s.Goal.Target.Weight)+", from "+readable(s.Plan.Loss.Animal.Weight))
	if s.Trend.Weighings > 0 {
		line("weights", s.Trend.String())
	}
	for _, r := range reasons[1:] {
		line("reason", r)
	}
	for _, c := range cautions {
		line("caution", c.String())
	}
	return b.String()
}
