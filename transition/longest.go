package transition

import (
	"slices"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// StockError says that the old food lasts for no schedule.
type StockError struct {
	Food  string
	Have  units.Mass
	Need  units.Mass // of the shortest schedule that was tried
	Steps Steps      // that schedule
}

// Error returns what is there, what the shortest schedule needs, and the remedy.
func (e *StockError) Error() string {
	return "transition: " + grams(e.Have) + " of " + e.Food + " is too little for a change by steps: " + e.Steps.String() +
		" needs " + grams(e.Need) + ": want more of it"
}

// LongestSteps returns the steps of p where the stock of the old foods lasts, and
// else the longest schedule that it allows: the plan's own steps with fewer days
// each, or a published one that is no longer. A ferret is never put on another one
// of fewer than ten steps (ours). Where none lasts the error is a *StockError. A
// food without a stock, and one that goes on in the new menu, is taken to last.
// Events are refused, since what they did is eaten.
func (p Plan) LongestSteps(need energy.Estimate, stock ...portion.Stock) (Steps, error) {
	errs := errlist.Of(checkStock(p.foods(), stock))
	if len(p.Events) > 0 {
		errs = append(errs, refuse("events", p.Events[0].text(), "a plan that hasn't begun", ""))
	}
	if _, err := p.Days(need); err != nil {
		errs = errlist.Add(errs, err)
	}
	if err := errs.Err(); err != nil {
		return Steps{}, err
	}
	if p.Steps.IsZero() {
		p.Steps = DefaultSteps(need.Animal.Species)
	}
	var short error
	for _, steps := range candidates(p.Steps, need.Animal.Species) {
		p.Steps = steps
		days, err := p.Days(need)
		if err != nil { // too little of a food for the scale
			continue
		}
		list, err := p.Shopping(days, stock...)
		if err != nil {
			return Steps{}, err
		}
		if short = p.short(list, stock); short == nil {
			return steps, nil
		}
	}
	return Steps{}, short
}

// short returns the error of the first old food that the stock is too little of.
func (p *Plan) short(list []Purchase, stock []portion.Stock) error {
	for _, x := range list {
		of := func(s portion.Stock) bool { return s.Food.Name == x.Food }
		if x.Buy > 0 && slices.ContainsFunc(stock, of) && !p.goesOn(x.Food) {
			return &StockError{Food: x.Food, Have: x.Have, Need: x.Need, Steps: p.Steps}
		}
	}
	return nil
}

// goesOn reports whether a food is in the new menu too.
func (p *Plan) goesOn(food string) bool {
	return slices.ContainsFunc(p.To, func(i diet.Item) bool { return i.Food.Name == food })
}

// candidates returns the schedules to try: one's own, and those that are no longer,
// the longest first.
func candidates(own Steps, species energy.Species) []Steps {
	var list []Steps
	for days := range own.longest() {
		list = append(list, own.capped(days+1))
	}
	list = append(list, TenSteps, FourStages, FourDays)
	list = slices.DeleteFunc(list, func(s Steps) bool {
		return s == own || s.Days() > own.Days() || species == energy.Ferret && s.Len() < TenSteps.Len()
	})
	slices.SortStableFunc(list, func(a, b Steps) int { return b.Days() - a.Days() })
	return append([]Steps{own}, list...)
}
