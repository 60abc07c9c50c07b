package diet

import (
	"math"

	"example.org/bowlgram/units"
)

// PerVolume returns the energy in a volume of f, from the first unit of its
// label that is one: "mL", "100 mL", "US cup". A bare cup is none, since there
// are several. The error is that of [Food.Unit], or a [*units.FieldError] where
// no unit is a volume, and where a [Liquid] would weigh less than 0.95 g/mL or more
// than 1.2 (ours). A mass in whole grams is taken to be rounded.
func (f Food) PerVolume() (units.EnergyPerVolume, error) {
	name, v := f.Label.volume()
	if v == 0 {
		if _, err := f.Density(); err != nil {
			return 0, err
		}
		e := refuse("label.serving", "", "a unit of the label of "+f.called()+" that is a volume, as in mL or US cup")
		e.Hint = "weigh what fills a measured volume"
		return 0, e
	}
	s, err := f.Unit(name)
	if err != nil {
		return 0, err
	}
	if f.Form == Liquid {
		if err := checkPoured(&s, v); err != nil {
			return 0, err
		}
	}
	return units.EnergyPerVolume(float64(s.Energy) / float64(v)), nil
}

// Bounds on the mass of what is poured, in g/mL. Milk has 1.03, cream a little
// less than water and the richest enteral diets about 1.1 (from memory); as bounds
// ours.
const (
	lightestLiquid units.BulkDensity = 0.95
	heaviestLiquid units.BulkDensity = 1.2
)

// checkPoured refuses a unit s of the volume v that no liquid weighs.
func checkPoured(s *Serving, v units.Volume) error {
	half := s.MassHalfStep
	if whole := s.Mass == units.Mass(math.Trunc(float64(s.Mass))); whole {
		half = halfStep(s.Mass, half)
	}
	light, heavy := lightestLiquid.Mass(v), heaviestLiquid.Mass(v)
	if s.Mass+half >= light && s.Mass-half <= heavy {
		return nil
	}
	e := refuse("label", number(float64(s.Mass))+" g/"+s.unit(), number(float64(light))+" g to "+number(float64(heavy))+" g of a liquid in it")
	e.Hint = "it would weigh " + number(float64(s.Mass)/float64(v)) + " g/mL: weigh what fills a measured volume"
	return e
}

// volume returns the first unit of the label that is a volume, or 0.
func (l *Label) volume() (name string, v units.Volume) {
	if v = volumeOf(l.Serving.Name); v > 0 {
		return l.Serving.Name, v
	}
	for i := range l.Others {
		if v = volumeOf(l.Others[i].Name); v > 0 {
			return l.Others[i].Name, v
		}
	}
	return "", 0
}

// volumeOf returns the volume that a unit is called by, or 0.
func volumeOf(unit string) units.Volume {
	if unit == "" {
		return 0
	}
	for _, text := range [...]string{unit, "1 " + unit} {
		if v, err := units.ParseVolume(text); err == nil {
			return v
		}
	}
	return 0
}
