package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Component is one of the parts of a [Budget]. The zero value is none.
type Component uint8

// Components of a budget.
const (
	LabelRounding  Component = iota + 1 // of the figures printed on the label
	EnergyInterval                      // how far the food's true kcal/kg may be from the label's
	ScaleStep                           // the step of the scale
	ScoopFill                           // the fill of a scoop, where the food isn't weighed
	IndividualNeed                      // what this animal needs, of its kind
)

var componentNames = []string{"", "label", "density", "scale", "scoop", "individual"}

// String returns the name of c, as in "label", and "" for the zero value.
func (c Component) String() string { return enum.Text(c, componentNames) }

// AppendText appends the text of c.
func (c Component) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "portion", "component", c, componentNames)
}

// MarshalText returns the text of c.
func (c Component) MarshalText() ([]byte, error) { return c.AppendText(nil) }

// UnmarshalText sets c from its text; an empty text is the zero value.
func (c *Component) UnmarshalText(text []byte) error {
	return enum.Unmarshal(c, "portion", "component", text, componentNames)
}

// Measuring says how a bowl is measured, as far as the ration doesn't.
type Measuring struct {
	// Meals is how many bowls a day are measured, 1 to 24. 0 means 1: the day is
	// measured at once.
	Meals int `json:"meals,omitzero"`
	// Scoop is the relative standard uncertainty of what is scooped into a bowl,
	// in percent: one standard deviation, as the calibration of package scoop
	// gives it. 0 means that the food is weighed on the ration's scale.
	Scoop units.Percent `json:"scoop,omitzero"`
	// Density is where the food's true energy density may lie, around that of the
	// label. Zero: from the energy of the serving to that of the label, where
	// the label contradicts itself, and nothing elsewhere. A predicted energy
	// needs it, since no label bounds it.
	Density units.Range[units.EnergyDensity] `json:"density,omitzero"`
}

// Budget says how well the energy in a bowl is known, part by part. Each part is a relative
// standard uncertainty, one standard deviation in percent; 0 is none. It is comparable.
type Budget struct {
	Food string `json:"food"` // its name, on one line
	// Bowl is the mass of the smallest bowl that gets anything, and Energy what
	// it holds by the label.
	Bowl   units.Mass   `json:"bowl"`
	Energy units.Energy `json:"energy"`
	// Step is that of the scale; 0 where the food is scooped.
	Step  units.Mass `json:"step,omitzero"`
	Bowls int        `json:"bowls"` // a day
	// Off is how far the weighed day is from the exact one, in percent: a known
	// change that nothing here counts as uncertain. 0 where the food is scooped.
	Off units.Percent `json:"off"`
	// DayOnce says that it helps to weigh the day once and divide it, as
	// [Fitness] has it.
	DayOnce bool `json:"day_once,omitzero"`

	Label      units.Percent `json:"label"`
	Density    units.Percent `json:"density"`
	Scale      units.Percent `json:"scale"`
	Scoop      units.Percent `json:"scoop"`
	Individual units.Percent `json:"individual"`

	Reweigh energy.Age `json:"reweigh,omitzero"` // the animal, after so many days
}

// Budget returns how well the energy in the bowls of the i-th food is known.
// An interval that is all that is known of a figure counts as √12-th of its
// width (JCGM 100:2008, 4.3.7 and 4.3.8): the rounding of the label, the step of
// the scale (F.2.2.1), the density and, ours, the published spread of the
// animals around the equation. A label that gives only kcal and grams of a
// serving has both roundings, by the quotient rule (5.1.6).
//
// All faults come back at once. A label whose half-steps are so wide that a part is
// more than 50 % (ours) is refused as [Budget.Validate] does. A treat in whole
// pieces is refused: it is counted. It panics where i is not below Len, as a slice
// does.
func (w Weighed) Budget(i int, m Measuring) (Budget, error) {
	if m.Meals == 0 {
		m.Meals = 1
	}
	errs := w.checkFood(i, m.Meals)
	if !(0 <= m.Scoop && m.Scoop <= maxPart) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "scoop", Value: percentValue(m.Scoop), Accepted: acceptedPart,
			Hint: "a relative standard uncertainty, one standard deviation in percent",
		})
	}
	if w.ration.n > 0 {
		errs = m.checkDensity(errs, &w.ration.parts[i].density)
	}
	if len(errs) > 0 {
		return Budget{}, errs.Err()
	}
	d, need := &w.ration.parts[i].density, &w.ration.need
	f := w.fitness(i, m.Meals)
	bowl := f.Meal
	if bowl == 0 {
		bowl = w.scale.step // the bowls that get anything
	}
	b := Budget{
		Food: f.Food, Bowl: bowl, Energy: d.Energy.Energy(bowl), Bowls: f.Meals,
		Label: labelPart(d), Density: m.densityPart(d),
		Individual: interval(need.Low, need.High, need.Daily), Reweigh: need.Reweigh,
	}
	if m.Scoop > 0 {
		b.Scoop = m.Scoop
	} else {
		b.Step, b.Scale = w.scale.step, percentOf(f.Scale.Uncertainty(), bowl)
		b.Off, b.DayOnce = f.Off(), f.DayOnce
	}
	if err := b.Validate(); err != nil {
		return Budget{}, err
	}
	return b, nil
}

// maxPart is the largest relative uncertainty that the first-order rule is used
// for: ours.
const (
	maxPart      units.Percent = 50
	acceptedPart               = "0 % to 50 %"
)

// checkDensity refuses an interval that can't hold the food's energy density.
func (m *Measuring) checkDensity(errs units.ErrorList, d *diet.Density) units.ErrorList {
	r := m.Density
	if r == (units.Range[units.EnergyDensity]{}) {
		if d.Origin != diet.Predicted {
			return errs
		}
		// Jewell and Jackson 2023: mean absolute error 6.7 % by modified Atwater, 5.1 %
		// by the NRC equation.
		return append(errs, &units.FieldError{
			Package: "portion", Field: "density", Accepted: "an interval of kcal/kg around the predicted " + d.Energy.String(),
			Hint: "a prediction is not a label: nothing bounds it; predictions are off by 5 to 7 % on average",
		})
	}
	if r.Low > 0 && r.Contains(d.Energy) && interval(r.Low, r.High, d.Energy) <= maxPart {
		return errs
	}
	return append(errs, &units.FieldError{
		Package: "portion", Field: "density", Value: densityText(r), Accepted: "an interval of kcal/kg that holds the food's " + d.Energy.String(),
	})
}

func densityText(r units.Range[units.EnergyDensity]) string {
	if s := float64(r.Low) + float64(r.High); math.IsNaN(s) || math.IsInf(s, 0) {
		return "not finite numbers"
	}
	return r.Low.String() + " to " + r.High.String()
}

// interval returns the relative standard uncertainty of x that is only known to
// lie from low to high: √12-th of the width, also where x is not in the middle.
func interval[Q units.Quantity](low, high, x Q) units.Percent {
	return units.Percent(100 * float64(high-low) / math.Sqrt(12) / float64(x))
}

// labelPart is what the rounding of the printed figures leaves open.
func labelPart(d *diet.Density) units.Percent {
	if d.Origin != diet.Derived {
		return interval(d.Range.Low, d.Range.High, d.Energy)
	}
	s := &d.Serving
	e, m := halfStep(s.Energy, s.EnergyHalfStep), halfStep(s.Mass, s.MassHalfStep)
	return quadrature(interval(-e, e, s.Energy), interval(-m, m, s.Mass))
}

// halfStep is that of a figure of a [diet.Serving], whose zero stands for this.
func halfStep[Q units.Energy | units.Mass](figure, given Q) Q {
	if given != 0 {
		return given
	}
	return min(0.5, figure/2)
}

// densityPart is what is open of the food beyond the rounding of its label.
func (m *Measuring) densityPart(d *diet.Density) units.Percent {
	if m.Density != (units.Range[units.EnergyDensity]{}) {
		return interval(m.Density.Low, m.Density.High, d.Energy)
	}
	if d.Gap == 0 {
		return 0
	}
	serving := units.EnergyDensity(d.Serving.Energy.Kilocalories() / d.Serving.Mass.Kilograms())
	return interval(min(serving, d.Energy), max(serving, d.Energy), d.Energy)
}

// quadrature adds uncorrelated parts of a product or a quotient (JCGM 100:2008,
// 5.1.6).
func quadrature(parts ...units.Percent) units.Percent {
	var sum float64
	for _, p := range parts {
		sum += float64(p) * float64(p)
	}
	return units.Percent(math.Sqrt(sum))
}

// Validate refuses a budget that [Weighed.Budget] can't have made: with a part
// that is no uncertainty, more than [MaxMeals] bowls a day, or less in the bowl
// than a step of the scale. All faults come back at once.
func (b Budget) Validate() error {
	var errs units.ErrorList
	if !oneline.Fits(b.Food) {
		errs = append(errs, unfit("food", b.Food, oneline.Wanted, ""))
	}
	for c := LabelRounding; c <= IndividualNeed; c++ {
		if p := b.Part(c); !(0 <= p && p <= maxPart) {
			errs = append(errs, unfit(c.String(), percentValue(p), acceptedPart, ""))
		}
	}
	if !(b.Bowl > 0) || math.IsInf(float64(b.Bowl), 0) {
		errs = append(errs, unfit("bowl", massText(b.Bowl), "above 0 g", ""))
	}
	if !(b.Energy > 0) || math.IsInf(float64(b.Energy), 0) {
		errs = append(errs, unfit("energy", energyText(b.Energy), "above 0 kcal", ""))
	}
	if b.Bowls < 1 || b.Bowls > MaxMeals {
		errs = append(errs, unfit("bowls", strconv.Itoa(b.Bowls), acceptedMeals, ""))
	}
	return b.checkWeighing(errs).Err()
}

// checkWeighing adds what is wrong with how the bowl was weighed.
func (b *Budget) checkWeighing(errs units.ErrorList) units.ErrorList {
	switch {
	case b.Step != 0 && !(minStep <= b.Step && b.Step <= maxStep):
		errs = append(errs, unfit("step", massText(b.Step), acceptedStep+", or none where the food is scooped", ""))
	case b.Step > b.Bowl && b.Bowl > 0:
		errs = append(errs, unfit("step", massText(b.Step), "at most what is in the bowl, "+massText(b.Bowl), ""))
	}
	if !(-100 <= b.Off && b.Off <= math.MaxFloat64) {
		errs = append(errs, unfit("off", percentValue(b.Off), "-100 % or more", ""))
	}
	if b.Reweigh < 0 {
		errs = append(errs, unfit("reweigh", b.Reweigh.String(), "0 d or more", ""))
	}
	return errs
}

// Part returns one part, and 0 for what is no component.
func (b Budget) Part(c Component) units.Percent {
	switch c {
	case LabelRounding:
		return b.Label
	case EnergyInterval:
		return b.Density
	case ScaleStep:
		return b.Scale
	case ScoopFill:
		return b.Scoop
	case IndividualNeed:
		return b.Individual
	}
	return 0
}

// InBowl returns how well the energy in the bowl is known: the root of the sum of the squares
// of every part but the animal's.
func (b Budget) InBowl() units.Percent { return quadrature(b.Label, b.Density, b.Scale, b.Scoop) }

// Combined returns how well the bowl is known to fit the need: InBowl with the spread
// of the animals.
func (b Budget) Combined() units.Percent { return quadrature(b.InBowl(), b.Individual) }

// Share returns how much of the variance in the bowl is that of c, from 0 to 1.
// It is 0 for the animal, which is not in the bowl.
func (b Budget) Share(c Component) float64 {
	whole := float64(b.InBowl())
	if whole == 0 || c == IndividualNeed {
		return 0
	}
	x := float64(b.Part(c)) / whole
	return x * x
}

// Limit returns the largest part of what is open about the bowl, the earlier of
// equal ones, and false where nothing is.
func (b Budget) Limit() (Component, bool) {
	limit := LabelRounding
	for c := EnergyInterval; c <= ScoopFill; c++ {
		if b.Part(c) > b.Part(limit) {
			limit = c
		}
	}
	return limit, b.Part(limit) > 0
}

// EnergyRange returns the energy in the bowl less and plus twice its standard
// uncertainty: about 19 times in 20 (JCGM 100:2008, 6.3.3).
func (b Budget) EnergyRange() units.Range[units.Energy] {
	half := b.Energy * units.Energy(2*b.InBowl().Fraction())
	return units.Range[units.Energy]{Low: max(0, b.Energy-half), High: b.Energy + half}
}
