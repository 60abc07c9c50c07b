package transition

import (
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Plan is a change of food. Compare two with Equal. The zero value is refused.
type Plan struct {
	// From is what the animal is fed now, and To what it is to be fed: diet.Only for
	// one food. A food in both is one food; treats must be the same in both, since they stay as they
	// are. From may be empty for Immediate, where nobody knows the old food.
	From diet.Menu `json:"from,omitzero"`
	To   diet.Menu `json:"to"`
	// Steps are the schedule; zero: the default of the species.
	Steps Steps `json:"steps,omitzero"`
	// Basis is what the shares are of; zero: energy.
	Basis Basis `json:"basis,omitzero"`
	// Meals a day, 1 to 24, and the step of the scale.
	Meals int        `json:"meals"`
	Scale units.Mass `json:"scale"`
	// By is the veterinarian who ordered the change. It is needed where the
	// animal's circumstances call for one; see Plan.Days.
	By string `json:"by,omitzero"`
	// Events are what happened on the way, by day; at most one a day. They may draw
	// the plan out to 366 days.
	Events []Event `json:"events,omitzero"`
}

// UnmarshalJSON reads a plan. Unknown members and bare numbers of grams are
// errors; a JSON null leaves p as it was, and so does an error. Whether the plan
// is sound is left to Days.
func (p *Plan) UnmarshalJSON(data []byte) error {
	type plain Plan
	return strictjson.Record("transition", "plan", data, func(v plain) { *p = Plan(v) })
}

// Equal reports whether p and q are the same plan.
func (p Plan) Equal(q Plan) bool {
	return slices.Equal(p.From, q.From) && slices.Equal(p.To, q.To) && p.Steps == q.Steps && p.Basis == q.Basis &&
		p.Meals == q.Meals && p.Scale == q.Scale && p.By == q.By && slices.Equal(p.Events, q.Events)
}

// Days returns the days of the change, each on the energy of need. The last day
// stands for every one after it.
//
// All faults come back at once: of the plan, the menus, every label and, as a
// *DayError, of the days. The old food must have a known energy; where it has
// none see ByAmountFed. An animal that is ill, tube fed, on a therapeutic diet,
// or has one of the diseases among its circumstances is refused with an
// *energy.VeterinarianError until By names the veterinarian who ordered the
// change.
func (p Plan) Days(need energy.Estimate) ([]Day, error) {
	return p.days(func(int) energy.Estimate { return need }, true)
}

// DaysWith is Days with a need for each day, counted from 1: for a weight loss
// that starts with the new food, a puppy that is weighed again, a new order. The
// need of a day that was missed is not asked for, but that of day 1, which decides
// the default steps and the cautions, always is.
func (p Plan) DaysWith(need func(day int) energy.Estimate) ([]Day, error) {
	return p.days(need, false)
}

// days makes the days. Where the need is constant those of one step differ in
// their number only, and are made once.
func (p *Plan) days(need func(day int) energy.Estimate, constant bool) ([]Day, error) {
	first := need(1)
	m, c, err := p.prepare(first)
	if err != nil {
		return nil, err
	}
	var errs units.ErrorList
	days := make([]Day, 0, len(c))
	made := make(map[int]int) // where in days the first of a step is
	for i, step := range c {
		number := i + 1
		if step == missed {
			days = append(days, Day{Number: number, Missed: true})
			continue
		}
		if same, ok := made[step]; ok && constant {
			days = append(days, days[same].on(number))
			continue
		}
		e := first
		if number > 1 {
			e = need(number)
		}
		if err := p.gate(e); err != nil {
			errs = addDay(errs, number, err)
			continue
		}
		d, err := m.day(number, step, e)
		if err != nil {
			errs = addDay(errs, number, err)
			continue
		}
		made[step] = len(days)
		days = append(days, d)
	}
	if err := errs.Err(); err != nil {
		return nil, err
	}
	return days, nil
}

// prepare checks what doesn't depend on the day, and returns what mixes the days
// and the step of each of them.
func (p *Plan) prepare(first energy.Estimate) (*mixer, course, error) {
	var errs units.ErrorList
	errs = errlist.Add(errs, p.gate(first))
	steps := p.Steps
	if steps.IsZero() {
		if steps = DefaultSteps(first.Animal.Species); steps.IsZero() {
			errs = append(errs, refuse("steps", "", "the steps, as in four_stages or slow", "no default for this species"))
		}
	}
	errs = errlist.Add(errs, p.Basis.check())
	errs = errlist.Add(errs, checkScale(p.Meals, p.Scale))
	errs = errlist.Add(errs, p.checkMenus(steps))
	if !(first.Daily > 0) {
		errs = append(errs, refuse("need", first.Daily.String(), "an estimate of more than 0 kcal a day", ""))
	}
	var c course
	if !steps.IsZero() {
		var err error
		c, err = steps.course(p.Events)
		errs = errlist.Add(errs, err)
		if len(p.From) == 0 && slices.Contains(c, 0) {
			errs = append(errs, refuse("from", "0 foods", "the old food, for an event that goes back to it", ""))
		}
	}
	if err := errs.Err(); err != nil {
		return nil, nil, err
	}
	m := &mixer{plan: p, steps: steps, from: p.From}
	if p.Basis == ByAmountFed && len(p.From) > 0 {
		var err error
		if m.from, err = resolve(p.From, first); err != nil {
			return nil, nil, err
		}
	}
	return m, c, nil
}

// checkScale returns what package portion has against the meals and the scale.
func checkScale(meals int, scale units.Mass) error {
	probe := diet.Only(diet.Food{Label: diet.Label{Energy: 1000 * units.KilocaloriePerKilogram}})
	r, err := portion.Weigh(energy.Estimate{Daily: 10 * units.Megacalorie}, probe)
	if err != nil {
		return err
	}
	var errs units.ErrorList
	if _, err = r.On(scale); err != nil {
		errs = errlist.Add(errs, err)
		scale = units.Gram
	}
	_, err = r.Meals(meals, scale)
	return errlist.Add(errs, err).Err()
}

// checkMenus returns the faults of both menus and of their labels.
func (p *Plan) checkMenus(steps Steps) error {
	var errs units.ErrorList
	if len(p.From) > 0 || steps != Immediate {
		errs = addMenu(errs, "from", p.From, p.Basis == ByAmountFed)
	}
	errs = addMenu(errs, "to", p.To, false)
	if err := errs.Err(); err != nil {
		return err
	}
	if len(p.From) == 0 {
		return nil
	}
	if !sameItems(treats(p.From), treats(p.To)) {
		errs = append(errs, refuse("treats", menuText(treats(p.From))+" before, "+menuText(treats(p.To))+" after",
			"the same treats in both menus: they stay as they are", "one change at a time"))
	}
	if sameItems(p.From, p.To) {
		errs = append(errs, refuse("to", menuText(p.To), "another menu than the old one", ""))
	}
	foods := make(map[diet.Food]bool)
	names := make(map[string]diet.Food)
	for _, menu := range []diet.Menu{p.From, p.To} {
		for i := range menu {
			f := menu[i].Food
			if other, ok := names[f.Name]; ok && other != f || f.Name == "" {
				errs = append(errs, refuse("food", f.Name, "a name for each food, by which the two can be told apart", ""))
			}
			names[f.Name], foods[f] = f, true
		}
	}
	if len(foods) > diet.MaxItems {
		errs = append(errs, refuse("menus", strconv.Itoa(len(foods))+" foods", "at most "+strconv.Itoa(diet.MaxItems)+" foods in both together", ""))
	}
	if p.Basis == ByAmountFed && len(errs) == 0 {
		errs = errlist.Add(errs, checkFed(p.From))
	}
	return errs.Err()
}

// addMenu appends what is wrong with a menu and with the labels of its foods.
func addMenu(errs units.ErrorList, name string, menu diet.Menu, fed bool) units.ErrorList {
	// Grams fed now are no menu, but fine for a food of unknown energy.
	byGrams := name == "from" && allFixed(menu) && (fed || slices.ContainsFunc(menu, func(i diet.Item) bool { return noEnergy(&i.Food) }))
	if err := menu.Validate(); err != nil && !byGrams {
		errs = append(errs, errlist.At(err, name+": ")...)
	}
	for i := range menu {
		f := &menu[i].Food
		if noEnergy(f) {
			if name == "from" && !fed {
				errs = append(errs, refuse("from", f.Name, "a label with the energy of the old food",
					`where nobody knows it, the grams fed now as a fixed amount, with the basis "amount_fed"`))
				continue
			}
			if fed && !menu[i].Treat {
				continue
			}
		}
		if _, err := f.Density(); err != nil {
			errs = errlist.Add(errs, err)
		}
	}
	return errs
}

// noEnergy reports whether nothing is known of the energy of f.
func noEnergy(f *diet.Food) bool {
	return f.Label.Energy == 0 && f.Label.Serving.Energy == 0 && f.Predictor == 0
}

// treats returns the treats of a menu.
func treats(menu diet.Menu) diet.Menu {
	var t diet.Menu
	for _, item := range menu {
		if item.Treat {
			t = append(t, item)
		}
	}
	return t
}

// sameItems reports whether two menus are the same but for the order.
func sameItems(a, b diet.Menu) bool {
	b = slices.Clone(b)
	for _, item := range a {
		i := slices.Index(b, item)
		if i < 0 {
			return false
		}
		b = slices.Delete(b, i, i+1)
	}
	return len(b) == 0
}

// menuText names the foods of a menu with their amounts.
func menuText(menu diet.Menu) string {
	if len(menu) == 0 {
		return "none"
	}
	var text strings.Builder
	for i, item := range menu {
		if i > 0 {
			text.WriteString(", ")
		}
		text.WriteString(item.Amount.String() + " of " + item.Food.Name)
	}
	return text.String()
}
