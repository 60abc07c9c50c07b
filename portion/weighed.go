package portion

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Weighed is a ration rounded, once, to whole steps of a scale. The zero value
// is no ration. Compare two with Equal.
type Weighed struct {
	ration Ration
	scale  scale
	counts [len(Ration{}.parts)]int64
}

// On rounds the mass of each food for the day to the nearest step of a scale:
// units.Gram for one that shows whole grams. A treat that is counted in whole
// pieces is not weighed, so that it stays exact. The rest of a menu is sized
// from the energy that the other foods leave as they are weighed, so that it
// takes up their rounding.
//
// A step is from 1 mg to 1 kg and a number of grams with at most nine decimals. A
// food of less than half a step is a *ScaleError; all of them come back at once.
func (r Ration) On(step units.Mass) (w Weighed, err error) { // named: no copy on the way out
	s, ok := newScale(step)
	if !ok {
		return Weighed{}, refuseStep(step)
	}
	w.ration, w.scale = r, s
	var errs units.ErrorList
	rest := -1
	for i := range r.n {
		switch {
		case r.menu[i].Amount.IsRest():
			rest = i
		case !r.counted(i):
			errs = errlist.Add(errs, w.round(i, r.parts[i].mass))
		}
	}
	if rest >= 0 {
		errs = errlist.Add(errs, w.round(rest, w.restMass(rest)))
	}
	if len(errs) > 0 {
		return Weighed{}, errs.Err()
	}
	return w, nil
}

// round sets the steps of the i-th food to the mass m.
func (w *Weighed) round(i int, m units.Mass) error {
	if w.counts[i] = w.scale.count(m); w.counts[i] == 0 {
		return &ScaleError{Food: w.ration.menu[i].Food.Name, Mass: m, Step: w.scale.step}
	}
	return nil
}

// left returns what of the day's energy the weighed foods but the i-th leave:
// none where they are rounded up to more than the day.
func (w *Weighed) left(i int) units.Energy {
	e := w.ration.need.Daily
	for j := range w.ration.n {
		if j != i {
			e -= w.energy(j)
		}
	}
	return max(e, 0)
}

// restMass returns the unrounded mass of the rest, the i-th food, beside the
// weighed others.
func (w *Weighed) restMass(i int) units.Mass {
	return w.ration.parts[i].density.Energy.Mass(w.left(i))
}

// mass returns the i-th food as it is weighed or counted.
func (w *Weighed) mass(i int) units.Mass {
	if w.ration.counted(i) {
		return w.ration.parts[i].mass
	}
	return w.scale.mass(w.counts[i])
}

// energy returns the energy in the i-th food as it is weighed or counted.
func (w *Weighed) energy(i int) units.Energy {
	return w.ration.parts[i].density.Energy.Energy(w.mass(i))
}

// Equal reports whether w and x are the same in every figure.
func (w Weighed) Equal(x Weighed) bool {
	return w.scale == x.scale && w.counts == x.counts && w.ration.Equal(x.ration)
}

// Ration returns the exact ration that was rounded.
func (w Weighed) Ration() Ration { return w.ration }

// Step returns the step of the scale.
func (w Weighed) Step() units.Mass { return w.scale.step }

// Len returns the number of foods.
func (w Weighed) Len() int { return w.ration.n }

// Count returns the number of steps of the i-th food in the day; 0 where it is
// a treat that is counted in pieces.
func (w Weighed) Count(i int) int64 { return w.counts[:w.ration.n][i] }

// Portion returns the i-th food as it is weighed, with the energy in that
// mass. Pieces and Unit are set for a treat that is counted instead.
func (w Weighed) Portion(i int) Portion {
	p := w.ration.portion(i)
	p.Mass, p.Energy = w.mass(i), w.energy(i)
	if !w.ration.counted(i) {
		p.Pieces, p.Unit = 0, ""
	}
	return p
}

// Target returns the day's energy that was asked for.
func (w Weighed) Target() units.Energy { return w.ration.need.Daily }

// Energy returns the day's energy that the weighed masses hold.
func (w Weighed) Energy() units.Energy {
	var e units.Energy
	for i := range w.ration.n {
		e += w.energy(i)
	}
	return e
}

// Household returns about how many of the label's units (cups, cans) the i-th
// food's day is, to the nearest eighth, with the unit's name, and false where
// the label names no unit, its mass can't be told, or the day is less than a
// sixteenth of it. It is for recognising an amount, never for measuring it:
// weigh instead.
func (w Weighed) Household(i int) (about float64, unit string, ok bool) {
	s := w.ration.parts[:w.ration.n][i].density.Serving
	if s.Name == "" || !(s.Mass > 0) {
		return 0, "", false
	}
	measures := float64(w.mass(i) / s.Mass)
	if measures < 1.0/16 {
		return 0, s.Name, false
	}
	return Eighths.nearest(measures).Measures(), s.Name, true
}

// Cautions returns what the amounts must be shown with, the gravest first: the
// ration's own cautions, what the scale does to so many meals a day, and whether
// they are fewer than recommended. For meals below 1 the day is taken as one.
func (w Weighed) Cautions(meals int) []advice.Caution {
	c := w.cautions(max(meals, 1))
	c = appendFrequency(c, &w.ration, meals)
	advice.Sort(c)
	return c
}

// cautions returns those of the ration and of the scale, unsorted.
func (w *Weighed) cautions(meals int) []advice.Caution {
	return append(w.ration.cautions(), w.scaleCautions(func(i int) Fitness { return w.fitness(i, meals) })...)
}
