package diet

import (
	"strconv"
	"strings"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// Servings are further household units of a label, beside [Label.Serving]: the
// can beside the cup, the piece. One that is called by a mass, "oz" or "100 g",
// must weigh that. It is an array, not a slice, so that a [Food] stays comparable;
// an entry that is zero is none. More than four are refused in JSON.
type Servings [4]Serving

// Unit returns what one household unit or piece of f weighs and holds. The
// name is that of the label, in the singular or the plural; case is ignored. An
// empty name and "serving" are [Label.Serving], whatever it is called.
//
// Where the label gives only one of its two figures, the other follows from
// the energy density of the food; both are held against that density, as
// [Food.Density] does with [Label.Serving]. Errors are those of Density, or a
// [*units.FieldError] for a name that is not on the label, a unit without figures,
// and one that is called by a mass, as an oz is, and comes to another. Unit does
// not allocate unless it fails.
func (f Food) Unit(name string) (Serving, error) {
	d, err := f.Density()
	if err != nil {
		return Serving{}, err
	}
	s := f.Label.serving(name)
	switch {
	case s == nil:
		return Serving{}, refuse("unit", name, f.countable())
	case s == &f.Label.Serving:
		if d.Serving.Mass == 0 {
			return Serving{}, refuse("label.serving", "", "the grams or the kcal of one "+s.unit())
		}
		if d.Serving.isOtherMass() {
			return Serving{}, d.Serving.otherMass("label.serving")
		}
		return d.Serving, nil
	case s.Mass == 0 && s.Energy == 0:
		return Serving{}, refuse("label.others", s.Name, "the grams or the kcal of one "+s.unit())
	}
	g := f.with(*s, d)
	if d, err = g.Density(); err != nil {
		return Serving{}, err
	}
	if d.Serving.isOtherMass() {
		return Serving{}, d.Serving.otherMass("label.others")
	}
	return d.Serving, nil
}

// with returns f with another of its units in the place of its serving, and
// its density d as that of the label, so that the two are held against each
// other. What follows from a serving reaches further up than down: the lesser half
// is taken.
func (f *Food) with(s Serving, d Density) Food {
	g := *f
	g.Label.Serving, g.Label.Others = s, Servings{}
	if g.Label.Energy == 0 {
		g.Label.Energy, g.Label.HalfStep = d.Energy, d.Energy-d.Range.Low
	}
	return g
}

// serving returns the unit of that name, or nil.
func (l *Label) serving(name string) *Serving {
	if name == "" || name == servingText {
		if l.Serving.isZero() {
			return nil
		}
		return &l.Serving
	}
	for _, same := range [...]func(a, b string) bool{func(a, b string) bool { return a == b }, sameUnit} {
		if l.Serving.Name != "" && same(name, l.Serving.Name) {
			return &l.Serving
		}
		for i := range l.Others {
			if l.Others[i].Name != "" && same(name, l.Others[i].Name) {
				return &l.Others[i]
			}
		}
	}
	return nil
}

// sameUnit reports whether two names are one unit in the singular or plural.
func sameUnit(a, b string) bool {
	if len(a) < len(b) {
		a, b = b, a
	}
	for _, plural := range [...]string{"", "s", "es"} {
		if len(a) == len(b)+len(plural) && strings.EqualFold(a[:len(b)], b) && strings.EqualFold(a[len(b):], plural) {
			return true
		}
	}
	return false
}

// countable says what of f can be counted.
func (f *Food) countable() string {
	names := []string{""}
	if s := &f.Label.Serving; !s.isZero() {
		names = append(names, s.unit())
	}
	for i := range f.Label.Others {
		if name := f.Label.Others[i].Name; name != "" {
			names = append(names, name)
		}
	}
	if len(names) == 1 {
		return "a mass: the label of " + strconv.Quote(f.Name) + " names no unit to count"
	}
	return "a unit on the label of " + strconv.Quote(f.Name) + ": " + enum.List(names)
}

// isSound reports whether check has nothing to say of the others beside the
// serving called first.
func (s *Servings) isSound(first string) bool {
	for i := range s {
		if o := &s[i]; !o.isZero() && (s.nameFault(i, first) != "" || !o.isSound()) {
			return false
		}
	}
	return true
}

// check adds what is wrong with the others beside the serving called first.
func (s *Servings) check(errs *units.ErrorList, first string) {
	for i := range s {
		if s[i].isZero() {
			continue
		}
		field := "label.others[" + strconv.Itoa(i) + "]"
		if want := s.nameFault(i, first); want != "" {
			*errs = append(*errs, refuse(field+".name", s[i].Name, want))
		}
		s[i].check(errs, field)
	}
}

// nameFault says what the name of the i-th should be, or "" where it is fine.
func (s *Servings) nameFault(i int, first string) string {
	name := s[i].Name
	if name == "" || name == servingText {
		return "a name, as in can or piece"
	}
	double := first != "" && sameUnit(name, first)
	for j := range i {
		double = double || sameUnit(name, s[j].Name)
	}
	if double {
		return "each name once on a label"
	}
	return ""
}
