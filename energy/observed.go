package energy

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Observed is a measured intake that has kept this animal's weight steady: its
// own requirement, which no equation knows better. Intake is what was eaten in
// a day, on average over the days of Over; Before is the weight at their start.
// It takes any species; for Other (rabbit, guinea pig …) it and Prescribed are
// the only ways here.
//
// The figure is given as it is, Low and High equal to it. It is cautioned
// unless it was measured over 14 days or more, the weight stayed within 2 % of
// Before, and, but for ferrets, the condition is scored (all ours): a steady
// weight can be steadily too high. An intake outside what is usual for the
// weight is cautioned with the likely slip, as in Prescribed. For Other there is
// nothing to hold it against, which a caution says, and any weight from 5 g to
// 200 kg is taken: a slip of the unit is not seen.
//
// A growing, pregnant or lactating animal is refused, since its weight isn't
// meant to be steady, and so are one under six months old, but for Other
// (ours), and a weight that no adult has. The gates stand: to have eaten so
// much doesn't make it right for an ill or a starved animal.
type Observed struct {
	Animal Animal       `json:"animal"`          // with the weight now
	Intake units.Energy `json:"intake"`          // kcal eaten a day, above 0
	Over   Age          `json:"over,omitzero"`   // measured for so long; zero: not known, and cautioned
	Before units.Mass   `json:"before,omitzero"` // body weight at the start; zero: not weighed, and cautioned
}

// What makes a measured intake trusted: ours.
const (
	observedDays   = 2 * Week
	observedSteady = 0.02 // of the weight at the start
	observedLost   = 0.10 // of it, and more: no feeding question any longer

	// Outside these of the weight at the start it is a typing slip.
	minPerStart = 0.5
	maxPerStart = 2.0
)

// Estimate returns the measured intake.
func (s Observed) Estimate() (Estimate, error) {
	if faults := s.check(); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	e := Estimate{
		Stage: s, Animal: s.Animal, Weight: s.Animal.Weight, Basis: Current, Method: MeasuredIntake,
		Daily: s.Intake, Low: s.Intake, High: s.Intake, Reweigh: adultReweigh,
	}
	if s.Animal.Species == Dog {
		e.Reweigh = adultReweighDog
	}
	return e, nil
}

func (s Observed) check() units.ErrorList {
	a := s.Animal
	faults := a.check(true)
	add := func(err error) {
		if err != nil {
			faults = append(faults, err)
		}
	}
	add(a.checkSpecies("", Dog, Cat, Ferret, Other))
	switch a.Species {
	case Dog, Cat, Ferret:
		add(a.checkWeight(adults[:], anAdult))
	case Other:
		add(a.checkWeight(adults[:], ""))
	}
	if 0 < a.Age && a.Age < grown && a.Species != Other {
		add(refuse("age", a.Age.String(), "6 mo or more", "its weight isn't steady while it grows: Growth"))
	}
	faults = append(faults, a.misplaced("an animal whose weight is steady", 0)...)
	if !(s.Intake > 0 && s.Intake <= maxDaily) {
		add(refuse("intake", s.Intake.String(), "more than 0 kcal and at most 50000 kcal a day", ""))
	}
	add(a.checkEaten(s.Intake))
	if s.Over < 0 || s.Over > maxAge {
		add(refuse("over", strconv.Itoa(int(s.Over))+" d", "0 (not given) to 40 y", ""))
	}
	if !(s.Before >= 0) || math.IsInf(float64(s.Before), 1) {
		add(refuse("weight before", s.Before.String(), "above 0 g, or none if it was not weighed", ""))
	} else if ratio := float64(a.Weight / s.Before); s.Before > 0 && a.Weight > 0 && !(minPerStart <= ratio && ratio <= maxPerStart) {
		add(refuse("weight before", s.Before.String(),
			"a weight between half and twice the current "+readable(a.Weight), "pounds for kilograms?"))
	}
	return faults
}

// change writes the change of the weight in percent, with its sign.
func (s Observed) change() string {
	p := round(100*float64((s.Animal.Weight-s.Before)/s.Before), 1)
	if s.Animal.Weight > s.Before {
		p = "+" + p
	}
	return p + " %"
}

func (s Observed) explain(e Estimate, w *working) {
	text := "none: " + kcal1(e.Daily) + " eaten a day"
	if s.Over > 0 {
		text += ", measured over " + dayCount(s.Over)
	}
	w.line("formula", text)
	if s.Before > 0 {
		w.line("weights", readable(s.Before)+", then "+readable(e.Weight)+": "+s.change())
	}
	if usual, what, ok := e.Animal.usual(); ok {
		w.line("beside", what+": "+kcal(usual.Low)+" to "+kcal(usual.High)+" (ours, not published)")
	}
}

func (s Observed) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: ours})
	}
	a := &e.Animal
	c = a.appendUnusual(c, "measured", e.Daily)
	if a.Species == Other {
		add(advice.Warn, "nothing to hold the measured intake against: no need is known for the species")
	}
	switch {
	case s.Over == 0:
		add(advice.Warn, "not said for how long the intake was measured: measure for at least 14 days")
	case s.Over < observedDays:
		add(advice.Warn, "measured over "+dayCount(s.Over)+": measure for at least 14 days")
	}
	if changed := a.Weight - s.Before; s.Before == 0 {
		add(advice.Warn, "no weight at the start: nobody can say that this intake keeps the weight steady")
	} else if limit := observedSteady * s.Before * (1 + onBoundary); changed < -limit || limit < changed {
		level, verdict := advice.Warn, "it needs less than it ate"
		if changed < 0 {
			verdict = "it needs more than it ate"
		}
		if changed <= -observedLost*s.Before*(1-onBoundary) {
			level, verdict = advice.Refer, "find the cause before feeding for gain"
		}
		add(level, "the weight went from "+readable(s.Before)+" to "+readable(a.Weight)+" ("+s.change()+
			"), which is more than 2 %: "+verdict)
	}
	if a.Condition.IsZero() && a.Species != Ferret {
		add(advice.Warn, "a steady weight may be steadily too high or too low: score the condition")
	}
	add(advice.Note, "count what was eaten, not what was offered: left-overs weighed back, treats and table food in")
	return c
}

// appendUnusual cautions of a figure that is outside what is usual for the
// animal, with the slips that would explain it. The word says how the figure
// came about.
func (a *Animal) appendUnusual(c []advice.Caution, word string, daily units.Energy) []advice.Caution {
	usual, what, ok := a.usual()
	if !ok || usual.Contains(daily) {
		return c
	}
	side := ", above "
	if daily < usual.Low {
		side = ", below "
	}
	off := advice.Caution{
		Level: advice.Warn, Source: ours,
		Text: "check the " + word + " " + kcal(daily) + side + what + " (" + kcal(usual.Low) + " to " + kcal(usual.High) + ")",
	}
	if s := slips(daily, usual); s != "" {
		off.Text += ": " + s
	}
	if daily < absurdLow*usual.Low || absurdHigh*usual.High < daily {
		off.Level = advice.Refer
	}
	return append(c, off)
}
