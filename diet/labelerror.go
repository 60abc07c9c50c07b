package diet

import (
	"strings"

	"example.org/bowlgram/units"
)

// LabelError is a label whose figures cannot all be right: they disagree with
// each other by more than a tenth beyond their rounding, or the energy is more
// or less than food of that moisture can hold.
type LabelError struct {
	Food        string              // the name of the food; may be empty
	Serving     string              // what one serving is called: "cup"
	Stated      units.EnergyDensity // kcal/kg on the label; zero: not stated
	PerServing  units.Energy        // energy of one serving; zero: not stated
	ServingMass units.Mass          // mass of one serving; zero: not stated
	Implied     units.EnergyDensity // what the two figures of the serving make; zero: not both stated
	Moisture    units.Percent       // zero: not known
	Gap         float64             // between the nearest ends of rounding, as in [Density]
	Limit       units.EnergyDensity // the bound that the energy breaks; zero: none
	Slip        Slip                // the likeliest explanation; zero: none found
	Or          Slip                // another as likely; zero: none
}

// labelError says why d, computed from f, is refused.
func (f *Food) labelError(d Density) error {
	s := &f.Label.Serving
	e := &LabelError{
		Food:        f.Name,
		Serving:     s.unit(),
		Stated:      f.Label.Energy,
		PerServing:  s.Energy,
		ServingMass: s.Mass,
		Moisture:    f.Analysis.Moisture,
		Gap:         d.Gap,
		Limit:       f.limit(d.Energy),
	}
	if s.Mass > 0 {
		e.Implied = s.implied()
	}
	if isApart(d.Gap) {
		e.Slip, e.Or = f.slips()
	} else {
		e.Slip, e.Or = f.slipsBeyond(d)
	}
	return e
}

// Error shows the figures, how far they are apart, and the likeliest slip.
func (e *LabelError) Error() string {
	var b strings.Builder
	b.WriteString("diet: label")
	if e.Food != "" {
		b.WriteString(` of "` + e.Food + `"`)
	}
	b.WriteString(": ")
	apart := isApart(e.Gap)
	if apart {
		e.writeGap(&b)
	}
	// Where the figures disagree, one that is too small says nothing more.
	if e.Limit != 0 && !(apart && e.isTooLittle()) {
		if apart {
			b.WriteString("; ")
		}
		e.writeLimit(&b)
	}
	e.writeSlip(&b)
	return b.String()
}

// energy returns the density that the label comes to.
func (e *LabelError) energy() units.EnergyDensity {
	if e.Stated != 0 {
		return e.Stated
	}
	return e.Implied
}

// isTooLittle reports whether the bound that is broken is the lower one.
func (e *LabelError) isTooLittle() bool { return e.energy() < e.Limit }

func (e *LabelError) writeGap(b *strings.Builder) {
	b.WriteString(density(e.Stated) + ", " + number(float64(e.PerServing)) + " kcal/" + e.Serving + " and " +
		number(float64(e.ServingMass)) + " g/" + e.Serving + " disagree: the " + e.Serving + " makes " + density(e.Implied) + ", " +
		number(100*(float64(max(e.Stated, e.Implied)/min(e.Stated, e.Implied))-1)) + " % apart, " +
		number(100*e.Gap) + " % at the nearest ends of rounding")
}

func (e *LabelError) writeLimit(b *strings.Builder) {
	b.WriteString(density(e.energy()))
	if e.Stated == 0 {
		b.WriteString(" (" + number(float64(e.PerServing)) + " kcal in " + number(float64(e.ServingMass)) + " g)")
	}
	water := ""
	if e.Moisture > 0 {
		water = " at " + number(float64(e.Moisture)) + " % moisture"
	}
	if e.isTooLittle() {
		b.WriteString(" is below " + density(e.Limit) + ", the least that is plausible" + water)
		return
	}
	b.WriteString(" is above " + density(e.Limit) + ", the most that even pure fat could hold" + water)
}

func (e *LabelError) writeSlip(b *strings.Builder) {
	if e.Slip == 0 {
		b.WriteString("; check the label")
		if isApart(e.Gap) {
			b.WriteString(", and weigh one " + e.Serving)
		}
		return
	}
	b.WriteString("; likeliest slip: " + e.describe(e.Slip))
	if e.Or != 0 {
		b.WriteString(", or " + e.describe(e.Or))
	}
}

// describe says what the slip was, with the figure that shows it where there
// is one.
func (e *LabelError) describe(s Slip) string {
	switch s {
	case PerServingAsPerKilogram:
		if e.PerServing == 0 {
			return "kcal/cup or kcal/can typed as kcal/kg"
		}
		return "kcal/" + e.Serving + " typed as kcal/kg"
	case DryMatterAsFed:
		return s.String() + " (as fed " + density(e.Stated*units.EnergyDensity(1-e.Moisture.Fraction())) + ")"
	case EightOuncesAsCup:
		return s.String() + " (" + number(float64(e.ServingMass)) + " g would hold " +
			number(float64(e.Stated.Energy(e.ServingMass))) + " kcal)"
	}
	return s.String()
}

// density writes an energy density for a sentence.
func density(d units.EnergyDensity) string { return number(float64(d)) + " kcal/kg" }
