package transition

import (
	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// mixer makes the days of a plan that was checked.
type mixer struct {
	plan  *Plan
	steps Steps
	from  diet.Menu // with the energy of every food
}

// share is a food of a mix and its part of the day.
type share struct {
	food   diet.Food
	energy units.Energy
}

// menu returns what is fed at a share of the new food, and the energy that it is
// to hold: that of need but where the old total is poured.
func (m *mixer) menu(need energy.Estimate, part units.Percent) (diet.Menu, units.Energy, error) {
	basis := m.plan.Basis
	switch {
	case part == 0:
		return m.from, need.Daily, nil
	case part == 100 && basis != ByOldTotal:
		return m.plan.To, need.Daily, nil
	}
	if len(m.from) == 0 {
		return m.plan.To, need.Daily, nil
	}
	old, err := portion.Weigh(need, m.from)
	if err != nil {
		return nil, 0, err
	}
	new, err := portion.Weigh(need, m.plan.To)
	if err != nil {
		return nil, 0, err
	}
	f := part.Fraction()
	var shares []share
	switch basis {
	case ByMass, ByOldTotal:
		// The grams of one day of the old food, shared out.
		total := mealMass(old)
		shares = addShares(shares, old, 1-f)
		shares = addShares(shares, new, f*float64(total/mealMass(new)))
	default:
		shares = addShares(shares, old, 1-f)
		shares = addShares(shares, new, f)
	}
	return mixed(shares, treats(m.plan.To)), m.daily(need, old, shares), nil
}

// daily returns the energy of the day.
func (m *mixer) daily(need energy.Estimate, old portion.Ration, shares []share) units.Energy {
	if m.plan.Basis != ByOldTotal {
		return need.Daily
	}
	var e units.Energy
	for i := range old.Len() {
		if p := old.Portion(i); p.Treat {
			e += p.Energy
		}
	}
	for _, s := range shares {
		e += s.energy
	}
	return e
}

// mealMass is the mass of what is no treat.
func mealMass(r portion.Ration) units.Mass {
	var m units.Mass
	for i := range r.Len() {
		if p := r.Portion(i); !p.Treat {
			m += p.Mass
		}
	}
	return m
}

// addShares appends so many times the foods of a day, treats aside.
func addShares(shares []share, r portion.Ration, times float64) []share {
	menu := r.Menu()
next:
	for i := range r.Len() {
		p := r.Portion(i)
		e := units.Energy(float64(p.Energy) * times)
		if p.Treat || e == 0 {
			continue
		}
		for j := range shares {
			if shares[j].food == menu[i].Food {
				shares[j].energy += e
				continue next
			}
		}
		shares = append(shares, share{menu[i].Food, e})
	}
	return shares
}

// mixed returns the menu of the shares, with the treats. What supplies most is
// the rest, so that it takes up the rounding of the others.
func mixed(shares []share, treats diet.Menu) diet.Menu {
	var sum units.Energy
	most := 0
	for i, s := range shares {
		sum += s.energy
		if s.energy > shares[most].energy {
			most = i
		}
	}
	menu := make(diet.Menu, 0, len(shares)+len(treats))
	for i, s := range shares {
		amount := diet.Share(units.Percent(100 * s.energy / sum))
		if i == most {
			amount = diet.Rest()
		}
		menu = append(menu, diet.Item{Food: s.food, Amount: amount})
	}
	return append(menu, treats...)
}

// weigh returns a day's mix on the scale, and the need that it was weighed for.
func (m *mixer) weigh(need energy.Estimate, part units.Percent) (portion.Weighed, error) {
	menu, daily, err := m.menu(need, part)
	if err != nil {
		return portion.Weighed{}, err
	}
	need.Daily = daily
	r, err := portion.Weigh(need, menu)
	if err != nil {
		return portion.Weighed{}, err
	}
	return r.On(m.plan.Scale)
}

// day returns a day of the plan.
func (m *mixer) day(number, step int, need energy.Estimate) (Day, error) {
	part := m.steps.share(step)
	w, err := m.weigh(need, part)
	if err != nil {
		return Day{}, err
	}
	d, err := newDay(number, w, m.plan.Meals)
	if err != nil {
		return Day{}, err
	}
	d.Step, d.Share, d.Target = step, part, need.Daily
	d.Cautions = m.cautions(w, need, part)
	return d, nil
}
