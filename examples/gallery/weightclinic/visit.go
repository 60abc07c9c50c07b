package main

import (
	"cmp"
	"errors"
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// visit is everything that the page and the picture show.
type visit struct {
	settings
	*log
	weights   trend.Weights
	appetites trend.Appetites
	intake    trend.Intake

	step   trend.Step        // of a weight loss
	line   trend.Trend       // that is drawn; zero: too few weighings
	byDay  [][]trend.Flag    // what was to be flagged at each weighing
	flags  []trend.Flag      // today
	doubts []trend.Doubt     // weighings to look at again
	eaten  []trend.Eaten     // by day
	own    trend.Requirement // zero: not known, see ownErr
	ownErr error
}

// visit works the page out.
func (s *settings) visit(l *log) (*visit, error) {
	v := &visit{settings: *s, log: l}
	v.today = cmp.Or(s.today, l.newest())
	if v.today == 0 {
		return nil, fmt.Errorf("%s: no row that can be used", l.weightFile)
	}
	today := v.today
	v.weights, _ = usable(l.weights, func(w []trend.Weighing) error { return trend.Weights(w).Check(today) }, l.say(l.weightFile))
	v.appetites, _ = usable(l.appetites, func(a []trend.Scored) error { return trend.Appetites(a).Check(today) }, l.say(l.weightFile))
	served, refused := usable(l.intake, func(x []trend.Served) error { return trend.Intake(x).Check(today) }, l.say(l.intakeFile))
	for _, x := range refused {
		l.partial[x.Date] = true
	}
	for _, x := range served {
		if !l.partial[x.Date] && !l.partial[0] {
			v.intake = append(v.intake, x)
		}
	}
	if len(v.weights) == 0 {
		return nil, fmt.Errorf("%s: no weighing that can be used", l.weightFile)
	}
	if err := v.judge(); err != nil {
		return nil, err
	}
	return v, v.addUp()
}

// judge works out the trend, the step and the flags.
func (v *visit) judge() (err error) {
	v.animal.Weight = v.weights[len(v.weights)-1].Weight
	if v.loses() {
		if v.step, err = v.plan().Next(v.weights, v.today); err != nil {
			return err
		}
		v.line = v.step.Trend
	} else if len(v.weights) > 1 {
		if v.line, err = v.weights.Trend(v.today); err != nil {
			return err
		}
	}
	if v.doubts, err = v.weights.Doubts(v.today); err != nil {
		return err
	}
	for i, w := range v.weights {
		flags, err := v.watch(i+1, w.Date).Flags()
		if err != nil {
			return err
		}
		v.byDay = append(v.byDay, flags)
	}
	v.flags, err = v.watch(len(v.weights), v.today).Flags()
	return err
}

// plan is the weight loss that runs.
func (v *visit) plan() trend.Plan {
	if !v.loses() {
		return trend.Plan{}
	}
	a := v.animal
	a.Weight = cmp.Or(v.initial, v.weights[0].Weight)
	return trend.Plan{Loss: energy.WeightLoss{Animal: a}, Daily: v.daily, Since: v.since, Asked: v.asked}
}

// watch is what was known on a day, with so many weighings. A day's meals count
// when it is over.
func (v *visit) watch(weighings int, day trend.Date) trend.Watch {
	w := trend.Watch{Animal: v.animal, Today: day, Weights: v.weights[:weighings], Shelter: v.shelter}
	w.Animal.Weight = v.weights[weighings-1].Weight
	for _, a := range v.appetites {
		if a.Date <= day {
			w.Appetites = append(w.Appetites, a)
		}
	}
	for _, x := range v.intake {
		if x.Date < day {
			w.Intake = append(w.Intake, x)
		}
	}
	if v.since <= day {
		w.Plan = v.plan()
	}
	if day == v.today {
		w.HoursUnfed = v.hoursUnfed
	}
	return w
}

// addUp works out what was eaten, and the animal's own requirement over the days
// that the intake has, if it can be known.
func (v *visit) addUp() (err error) {
	if len(v.intake) == 0 {
		return nil
	}
	if v.eaten, err = v.intake.Days(cmp.Or(v.daily, units.Kilocalorie), v.today); err != nil {
		return err
	}
	v.own, v.ownErr = trend.NewRequirement(v.weights.Since(v.intake[0].Date), v.intake, v.today)
	if errors.Is(v.ownErr, energy.ErrVeterinarian) {
		return v.ownErr
	}
	return nil
}

// refers returns what a veterinarian must see, from the flags and the step.
func (v *visit) refers() (texts []string) {
	seen := make(map[string]bool)
	add := func(c advice.Caution) {
		if c.Level == advice.Refer && !seen[c.Text] {
			seen[c.Text] = true
			texts = append(texts, c.Text)
		}
	}
	for _, f := range v.flags {
		add(f.Caution)
	}
	for _, c := range v.step.Cautions() {
		add(c)
	}
	return texts
}
