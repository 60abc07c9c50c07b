package diet

import (
	"math"
	"strings"

	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Serving is what a label says of one familiar household unit: a cup, a can, a
// piece. A figure of zero is not stated.
//
// The grams of a cup are grams of food, not of water and not eight ounces by
// weight: a cup of dry food weighs about 85 to 100 g (a veterinary teaching
// sheet on the modified Atwater formula).
type Serving struct {
	Name   string       `json:"name,omitzero"`   // "cup", "can", at most 256 bytes on one line; empty: "serving"
	Energy units.Energy `json:"energy,omitzero"` // metabolizable energy of one serving
	// EnergyHalfStep is half the step Energy was rounded to when printed; zero
	// means 0.5 kcal, or half of Energy if that is less.
	EnergyHalfStep units.Energy `json:"energy_half_step,omitzero"`
	Mass           units.Mass   `json:"mass,omitzero"` // mass of one serving as fed
	// MassHalfStep is half the step Mass was rounded to when printed; zero
	// means 0.5 g, or half of Mass if that is less.
	MassHalfStep units.Mass `json:"mass_half_step,omitzero"`
}

// unit returns the name of one serving for use in a sentence.
func (s *Serving) unit() string {
	if s.Name == "" {
		return "serving"
	}
	return s.Name
}

// measure returns what to put on the scale to learn the mass of one serving.
func (s *Serving) measure() string {
	if s.isCup() {
		return "a level " + s.Name
	}
	return "the food of one " + s.unit()
}

// howToWeigh says where the mass of one serving is to be had from.
func (s *Serving) howToWeigh() string {
	if m := massNamed(s.Name); m > 0 {
		return s.Name + " means " + number(float64(m)) + " g: give that as its mass"
	}
	return "ask the manufacturer for kcal/kg or for grams per " + s.unit() + ", or weigh " + s.measure() + " several times and take the mean"
}

func (s *Serving) isCup() bool { return strings.Contains(strings.ToLower(s.Name), "cup") }

// isCan reports whether the serving is what wet food comes in.
func (s Serving) isCan() bool {
	name := strings.ToLower(s.Name)
	for _, c := range [...]string{"can", "tin", "pouch", "tray"} {
		if strings.HasPrefix(name, c) {
			return true
		}
	}
	return false
}

// isEightOunces reports whether the cup was given the mass of eight ounces
// (226.8 g), or its 240 mL as grams.
func (s *Serving) isEightOunces() bool {
	grams := math.Round(s.Mass.Grams())
	return (grams == 227 || grams == 240) && s.isCup()
}

// isZero reports whether nothing is given. It is what == says, in less time.
func (s *Serving) isZero() bool {
	return s.Energy == 0 && s.Mass == 0 && s.Name == "" && s.EnergyHalfStep == 0 && s.MassHalfStep == 0
}

// isSound reports whether check has nothing to say of s.
func (s *Serving) isSound() bool {
	return isFigure(s.Energy) && isFigure(s.Mass) && isHalfStep(s.EnergyHalfStep, s.Energy) && isHalfStep(s.MassHalfStep, s.Mass) && oneline.Fits(s.Name) && !s.isOtherMass()
}

// check adds what is wrong with the figures of s, whose JSON path is field.
func (s *Serving) check(errs *units.ErrorList, field string) {
	checkName(errs, s.Name, field+".name")
	checkFigure(errs, s.Energy, field+".energy", s.EnergyHalfStep, field+".energy_half_step", "kcal")
	checkFigure(errs, s.Mass, field+".mass", s.MassHalfStep, field+".mass_half_step", "g")
	if s.isOtherMass() {
		*errs = append(*errs, s.otherMass(field))
	}
}

// implied returns the energy density that follows from the energy and the mass
// of one serving.
func (s *Serving) implied() units.EnergyDensity {
	return units.EnergyDensity(float64(s.Energy) / float64(s.Mass) * 1000)
}

// impliedRange returns every density that the printed energy and mass leave
// possible.
func (s *Serving) impliedRange() units.Range[units.EnergyDensity] {
	e := halfStep(s.Energy, s.EnergyHalfStep)
	m := halfStep(s.Mass, s.MassHalfStep)
	return units.Range[units.EnergyDensity]{
		Low:  units.EnergyDensity(float64(s.Energy-e) / float64(s.Mass+m) * 1000),
		High: units.EnergyDensity(float64(s.Energy+e) / float64(s.Mass-m) * 1000),
	}
}

// halfStep returns the half-step of a figure printed as a whole number, unless
// another one is given. A default never takes the interval down to zero.
func halfStep[Q units.Energy | units.Mass](figure, given Q) Q {
	if given != 0 {
		return given
	}
	return min(0.5, figure/2)
}
