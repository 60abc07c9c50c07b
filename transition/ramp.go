package transition

import (
	"slices"
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Ramp is a rise of energy on one menu, day by day: a refeeding ladder, the
// step-up of a hospital, the steps of a weight gain. Compare two with Equal. The
// zero value is refused.
type Ramp struct {
	Menu  diet.Menu
	Meals int        // a day, 1 to 24
	Scale units.Mass // the step of the scale
}

// Equal reports whether r and s are the same ramp.
func (r Ramp) Equal(s Ramp) bool {
	return slices.Equal(r.Menu, s.Menu) && r.Meals == s.Meals && r.Scale == s.Scale
}

// fewestRefeeding is the least number of meals on a ladder: package energy
// cautions to 4 to 6. Ours.
const fewestRefeeding = 4

// Refeeding returns the days of a ladder, from s.Day (zero: 1) to its last step,
// which stands for every day after it. A ladder that is held at a step, or goes
// back, is another ladder, for the veterinarian to give. Fewer than 4 meals are
// refused (ours), and the errors of energy.Refeeding are passed on.
func (r Ramp) Refeeding(s energy.Refeeding) ([]Day, error) {
	first := max(s.Day, 1)
	var errs units.ErrorList
	if 0 < r.Meals && r.Meals < fewestRefeeding {
		errs = append(errs, refuse("meals", strconv.Itoa(r.Meals), "4 or more: small meals through the day", ""))
	}
	if s.Day < 0 || s.Day > maxDays {
		errs = append(errs, refuse("day", strconv.Itoa(s.Day), "1 to "+strconv.Itoa(maxDays)+", or none for the first", ""))
	}
	s.Day = first
	if _, err := s.Estimate(); err != nil {
		errs = errlist.Add(errs, err)
	}
	errs = errlist.Add(errs, r.check())
	if err := errs.Err(); err != nil {
		return nil, err
	}
	return r.days(first, max(s.Ladder.Len(), first), func(day int) energy.Estimate {
		s.Day = day
		e, _ := s.Estimate() // only the day differs, and each is on the ladder
		return e
	})
}

// DaysWith returns so many days, 1 to 366, each on its need: the steps of a weight
// gain, a need that grows. The last stands for every day after it.
func (r Ramp) DaysWith(days int, need func(day int) energy.Estimate) ([]Day, error) {
	errs := errlist.Of(r.check())
	if days < 1 || days > maxDays {
		errs = append(errs, refuse("days", strconv.Itoa(days), "1 to "+strconv.Itoa(maxDays), ""))
	}
	if err := errs.Err(); err != nil {
		return nil, err
	}
	return r.days(1, days, need)
}

// check returns the faults of the ramp that don't depend on the day.
func (r Ramp) check() error {
	errs := errlist.Of(checkScale(r.Meals, r.Scale))
	return addMenu(errs, "menu", r.Menu, false).Err()
}

func (r Ramp) days(first, last int, need func(day int) energy.Estimate) ([]Day, error) {
	var errs units.ErrorList
	var days []Day
	for i := range last - first + 1 {
		number := first + i
		d, err := r.day(number, need(number))
		if err != nil {
			errs = addDay(errs, number, err)
			continue
		}
		days = append(days, d)
	}
	if err := errs.Err(); err != nil {
		return nil, err
	}
	return days, nil
}

func (r Ramp) day(number int, need energy.Estimate) (Day, error) {
	ration, err := portion.Weigh(need, r.Menu)
	if err != nil {
		return Day{}, err
	}
	w, err := ration.On(r.Scale)
	if err != nil {
		return Day{}, err
	}
	d, err := newDay(number, w, r.Meals)
	if err != nil {
		return Day{}, err
	}
	d.Share, d.Cautions = 100, w.Cautions(r.Meals)
	return d, nil
}
