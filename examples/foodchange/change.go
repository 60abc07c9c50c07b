package main

import (
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

const gram = units.Gram

// options are what the command line says.
type options struct {
	foods, from, to string
	name            string
	animal          energy.Animal
	status          energy.Status
	intake, energy  string
	by              string
	fed, have       units.Mass
	steps           transition.Steps
	meals           int
	scale           units.Mass
	events          []transition.Event
	start           time.Time // zero: not given
	format          string
	working         bool
}

// sheet is a change of food, worked out.
type sheet struct {
	options
	need    energy.Estimate
	plan    transition.Plan
	days    []transition.Day
	buy     []transition.Purchase
	longest string // what the old food lasts for, where it doesn't for the steps
	text    string // the working, where it is asked for
}

// addEvent reads "4 hold 3".
func (o *options) addEvent(s string) error {
	want := errors.New(`want a day, what happened (hold, step_back, missed, stop) and for how many days, as in "4 hold 3"`)
	words := strings.Fields(s)
	if len(words) < 2 || len(words) > 3 {
		return want
	}
	day, err := strconv.Atoi(words[0])
	if err != nil {
		return want
	}
	e := transition.Event{Day: day}
	if e.Kind, err = transition.ParseEventKind(words[1]); err != nil {
		return want
	}
	if len(words) == 3 {
		if e.Days, err = strconv.Atoi(words[2]); err != nil || e.Days == 0 {
			return want
		}
	}
	o.events = append(o.events, e)
	return nil
}

// sheet works the change out. Everything that is wrong is in the error.
func (o *options) sheet() (*sheet, error) {
	s := &sheet{options: *o}
	var errs units.ErrorList
	if o.name != "" {
		if why := csvrow.NameFault(o.name); why != "" {
			errs = append(errs, fmt.Errorf("-name %q: %s", o.name, why))
		}
	}
	need, err := o.need()
	errs = errlist.Add(errs, err)
	foods, err := o.readFoods()
	if err != nil {
		return nil, errlist.Add(errs, err).Err()
	}
	s.plan = transition.Plan{Steps: o.steps, Meals: o.meals, Scale: o.scale, By: o.by, Events: o.events}
	switch f, known := foods[o.from].(diet.Food); {
	case o.fed != 0 && o.from == "":
		errs = append(errs, fmt.Errorf("-fed %q: want -from as well, the name of that food", o.fed))
	case o.fed != 0 && known:
		errs = append(errs, fmt.Errorf("-fed %q: the energy of %s stands in the foods file: want no -fed", o.fed, f.Name))
	}
	if o.from != "" || o.steps != transition.Immediate {
		if o.fed != 0 {
			s.plan.From = diet.Menu{{Food: diet.Food{Name: o.from}, Amount: diet.Fixed(o.fed)}}
			s.plan.Basis = transition.ByAmountFed
		} else {
			errs = pick(errs, &s.plan.From, "from", o.from, foods)
		}
	}
	errs = pick(errs, &s.plan.To, "to", o.to, foods)
	if len(errs) > 0 {
		return nil, errs.Err()
	}
	s.need = need
	if s.days, err = s.plan.Days(need); err != nil {
		return nil, err
	}
	if err := s.shop(); err != nil {
		return nil, err
	}
	if o.working {
		s.text, err = s.plan.Explain(need)
	}
	return s, err
}

// need returns the day's energy, by what is given.
func (o *options) need() (energy.Estimate, error) {
	given := 0
	for _, is := range [...]bool{o.status != 0, o.intake != "", o.energy != ""} {
		if is {
			given++
		}
	}
	if given > 1 || given == 0 && o.animal.Species != energy.Ferret {
		return energy.Estimate{}, errors.New("want one of -status, -intake and -energy, from which the day's energy follows")
	}
	switch {
	case o.intake != "":
		daily, err := parseDaily("intake", o.intake)
		if err != nil {
			return energy.Estimate{}, err
		}
		return energy.Observed{Animal: o.animal, Intake: daily}.Estimate()
	case o.energy != "":
		daily, err := parseDaily("energy", o.energy)
		if err != nil {
			return energy.Estimate{}, err
		}
		return energy.Prescribed{Animal: o.animal, Daily: daily, By: o.by}.Estimate()
	}
	return energy.Adult{Animal: o.animal, Status: o.status}.Estimate()
}

// parseDaily reads "1068 kcal", "1068 kcal/day" or "1068 kcal/d".
func parseDaily(flag, s string) (units.Energy, error) {
	amount, per, ok := strings.Cut(s, "/")
	if per = strings.TrimSpace(per); ok && (per == "day" || per == "d") {
		s = amount
	}
	e, err := units.ParseEnergy(strings.TrimSpace(s))
	if err != nil {
		return 0, fmt.Errorf("-%s: %w", flag, err)
	}
	return e, nil
}

// readFoods reads the foods file. A food that can't be fed by is in the error only
// where it is asked for.
func (o *options) readFoods() (map[string]any, error) {
	in, name, err := o.open()
	if err != nil {
		return nil, err
	}
	defer in.Close()
	r := csvrow.NewReader(in)
	h, err := csvrow.ReadHeader(r, foodcsv.Columns, foodcsv.Optional)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	foods := make(map[string]any) // a diet.Food, or the error that refuses it
	for {
		rec, err := r.Next()
		switch {
		case errors.Is(err, io.EOF):
			return foods, nil
		case err != nil:
			return nil, fmt.Errorf("%s: %w", name, err)
		case rec.Fault != "":
			return nil, fmt.Errorf("%s: line %d: %s", name, rec.Line, rec.Fault)
		}
		var p csvrow.Problems
		f := foodcsv.Read(h, &rec, &p)
		if foods[f.Name] != nil {
			p.Add("food", f.Name, "stands twice: nobody can tell which row is right")
		}
		if !p.Any() {
			foodcsv.Density(f, h, &rec, &p)
		}
		foods[f.Name] = f
		if p.Any() {
			foods[f.Name] = errors.New(name + ": " + p.String(rec.Line))
		}
	}
}

// pick puts the food of a flag on a menu.
func pick(errs units.ErrorList, menu *diet.Menu, flag, name string, foods map[string]any) units.ErrorList {
	switch f := foods[name].(type) {
	case diet.Food:
		*menu = diet.Only(f)
		return errs
	case error:
		return append(errs, f)
	}
	return append(errs, fmt.Errorf("-%s %q: want a name of the foods file", flag, name))
}

// shop works out what is needed, and whether the old food lasts.
func (s *sheet) shop() error {
	var stock []portion.Stock
	if s.have != 0 && len(s.plan.From) > 0 {
		stock = append(stock, portion.Stock{Food: s.plan.From[0].Food, Mass: s.have})
	}
	var err error
	if s.buy, err = s.plan.Shopping(s.days, stock...); err != nil || len(stock) == 0 || len(s.events) > 0 {
		return err
	}
	for _, x := range s.buy {
		if x.Food != s.from || x.Buy == 0 {
			continue
		}
		steps, err := s.plan.LongestSteps(s.need, stock...)
		switch {
		case err == nil:
			s.longest = "they would do for the steps " + steps.String()
		default:
			s.longest = csvrow.Plain(err)
		}
	}
	return nil
}
