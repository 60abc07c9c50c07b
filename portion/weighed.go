package portion

import (
	"math"

	"example.org/bowlgram/energy/advice"
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
// units.Gram for one that shows whole grams. A step is from 1 mg to 1 kg and
// a decimal number of grams. A food of less than half a step is a *ScaleError.
func (r Ration) On(step units.Mass) (Weighed, error) {
	s, ok := newScale(step)
	if !ok {
		return Weighed{}, &units.FieldError{
			Package: "portion", Field: "scale step", Value: massText(step),
			Accepted: "1 mg to 1 kg, as in 0.1 g, 1 g or 5 g",
		}
	}
	w := Weighed{ration: r, scale: s}
	for i := range r.n {
		m := r.parts[i].mass
		if !s.fits(m) {
			return Weighed{}, &units.FieldError{
				Package: "portion", Field: "scale step", Value: massText(step),
				Accepted: "a coarser step for " + trimmed(m),
			}
		}
		if w.counts[i] = s.count(m); w.counts[i] == 0 {
			return Weighed{}, &ScaleError{Food: r.menu[i].Food.Name, Mass: m, Step: step}
		}
	}
	return w, nil
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

// Count returns the number of steps of the i-th food in the day.
func (w Weighed) Count(i int) int64 { return w.counts[:w.ration.n][i] }

// Portion returns the i-th food as it is weighed, with the energy in that mass.
func (w Weighed) Portion(i int) Portion {
	p := &w.ration.parts[:w.ration.n][i]
	m := w.scale.mass(w.counts[i])
	return Portion{w.ration.menu[i].Food.Name, m, p.density.Energy.Energy(m)}
}

// Target returns the day's energy that was asked for.
func (w Weighed) Target() units.Energy { return w.ration.need.Daily }

// Energy returns the day's energy that the weighed masses hold.
func (w Weighed) Energy() units.Energy {
	var e units.Energy
	for i := range w.ration.n {
		e += w.Portion(i).Energy
	}
	return e
}

// Household returns about how many of the label's units (cups, cans) the i-th
// food's day is, to the nearest eighth, with the unit's name, and false where
// the label names no unit, its mass can't be told, or the day is less than a
// sixteenth of it. It is for recognising an
// amount, never for measuring it: weigh instead.
func (w Weighed) Household(i int) (about float64, unit string, ok bool) {
	s := w.ration.parts[:w.ration.n][i].density.Serving
	if s.Name == "" || !(s.Mass > 0) {
		return 0, "", false
	}
	about = math.Round(float64(w.scale.mass(w.counts[i])/s.Mass)*8) / 8
	return about, s.Name, about > 0
}

// Cautions returns what the amounts must be shown with, the gravest first: the
// ration's own cautions, and what the scale does to so many meals a day. For
// meals below 1 the day is taken as one.
func (w Weighed) Cautions(meals int) []advice.Caution {
	c := w.ration.Cautions()
	c = append(c, w.scaleCautions(max(meals, 1))...)
	advice.Sort(c)
	return c
}
