package diet

import (
	"strconv"
	"strings"

	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Part is one food of a mix, and how much of it: [Fixed] or a [Count].
type Part struct {
	Food   Food   `json:"food"`
	Amount Amount `json:"amount,omitzero"`
}

// Mix is foods that are stirred into one another, with water or without: milk
// powder made up for the bottle, a can thinned for the tube. [Mix.Food] gives
// the food that it makes, which is weighed and fed like any other.
//
// Mass and energy add up, volumes don't: powder takes room in the water, more
// or less of it by what it is. What the mix fills is measured once, in a jug,
// and given as Made; without it there is no energy per volume.
type Mix struct {
	Name string `json:"name,omitzero"` // empty: the names of the parts, or how many they are where those don't fit on a line
	// Form is that of the mix; zero: [Liquid] where Water is given or a part is
	// liquid, and otherwise that of the parts if they share one.
	Form  Form         `json:"form,omitzero"`
	Parts []Part       `json:"parts"`          // 1 to [MaxItems]
	Water units.Volume `json:"water,omitzero"` // added, at 1 g/mL; zero: none
	Made  units.Volume `json:"made,omitzero"`  // what all of it fills; zero: not known
}

// The names of the units in which the food of a mix is counted.
const (
	batchText      = "batch"
	millilitreText = "mL"
)

// waterDensity is that of drinking water, to 1 % between 4 and 40 °C (from
// memory).
const waterDensity = 1 * units.GramPerMillilitre

// Bounds on the mass of what Made measures where it isn't poured, in g/mL: dry
// food in a cup is below them and syrup within (both from memory); as bounds ours.
// What water is stirred into has those of a liquid.
const (
	lightestMix units.BulkDensity = 0.5
	heaviestMix units.BulkDensity = 1.5
)

// Food returns the food that m makes. Its label gives the energy and the mass
// of a "batch", all of m, and where Made is given the mass of an "mL", so that
// it can be counted in either: [Count](45, "mL"). [Food.PerVolume] gives its
// kcal/mL. The energy is what the labels of the parts come to, with the
// rounding of those labels and, as a label has it, half a gram of the batch: make
// the mix of a whole batch. [Density.Origin] is [Derived], also where the energy of
// a part is predicted, which [Mix.Cautions] says.
//
// A figure of the analysis is the mean of the parts by mass, water included,
// where every part has it or asks for a default; where guaranteed figures meet
// typical ones only the moisture is given. The mix is for the animals and the
// stages that every part is for: [NoSpecies] or [NoStage] where there are none,
// and not stated where it isn't of a part. It is complete where all the parts are,
// and complementary where those that are make up more than 10 % of its energy. The
// doubts about the parts are not in it: see [Mix.Cautions].
//
// All faults come back at once: those of the amounts and the volumes as
// [*units.FieldError], and those of [Food.Density] and [Food.Unit] for each
// part.
func (m Mix) Food() (Food, error) {
	b, err := m.batch()
	if err != nil {
		return Food{}, err
	}
	f := Food{
		Name:      m.called(),
		Form:      m.form(),
		For:       m.purpose(),
		Role:      m.role(&b),
		Label:     Label{Serving: b.serving},
		Analysis:  m.analysis(&b),
		Predictor: b.predictor,
	}
	if m.Made > 0 {
		f.Label.Others[0] = Serving{Name: millilitreText, Mass: b.serving.Mass / units.Mass(m.Made.Millilitres())}
	}
	if _, err := f.Density(); err != nil {
		return Food{}, err
	}
	return f, nil
}

// batch is all of a mix.
type batch struct {
	masses        [MaxItems]units.Mass // of the parts
	serving       Serving
	water         units.Mass   // added, and in the parts whose moisture is known
	complementary units.Energy // from the parts that are
	predictor     Predictor    // of the energy of all parts; zero where one is stated, or by another
}

// batch adds up m, or returns everything that is wrong with it.
func (m *Mix) batch() (batch, error) {
	var errs units.ErrorList
	checkName(&errs, m.Name, "mix.name")
	if len(m.Parts) == 0 || len(m.Parts) > MaxItems {
		errs = append(errs, refuse("mix.parts", strconv.Itoa(len(m.Parts))+" foods", "1 to "+strconv.Itoa(MaxItems)+" foods"))
	}
	if int(m.Form) >= len(formNames) {
		errs = append(errs, refuse("mix.form", "out of range", "a form of food, or none"))
	}
	var b batch
	b.water = waterDensity.Mass(m.Water)
	b.serving = Serving{Name: batchText, Mass: b.water}
	for i := range m.Parts[:min(len(m.Parts), MaxItems)] {
		mass, d, err := m.Parts[i].weigh("mix.parts[" + strconv.Itoa(i) + "].amount")
		if err != nil {
			errs = append(errs, err)
			continue
		}
		by := Predictor(0)
		if d.Origin == Predicted {
			by = m.Parts[i].Food.Predictor
		}
		if i == 0 {
			b.predictor = by
		} else if by != b.predictor {
			b.predictor = 0
		}
		b.masses[i] = mass
		b.serving.Mass += mass
		b.serving.Energy += d.Energy.Energy(mass)
		if m.Parts[i].Food.Role == Complementary {
			b.complementary += d.Energy.Energy(mass)
		}
		if content, ok := m.Parts[i].Food.Analysis.contentOf(Moisture); ok {
			b.water += mass * units.Mass(content.Fraction())
		}
		b.serving.EnergyHalfStep += max(d.Energy-d.Range.Low, d.Range.High-d.Energy).Energy(mass)
	}
	if !isFigure(m.Water) {
		errs = append(errs, refuse("mix.water", number(float64(m.Water))+" mL", "above 0 mL and at most 1e9, or none"))
	}
	if !isFigure(m.Made) {
		errs = append(errs, refuse("mix.made", number(float64(m.Made))+" mL", "above 0 mL and at most 1e9, or none if not known"))
	} else if len(errs) == 0 && m.Made > 0 {
		if err := m.checkMade(&b); err != nil {
			errs = append(errs, err)
		}
	}
	if len(errs) > 0 {
		return batch{}, errs.Err()
	}
	return b, nil
}

// checkMade refuses a volume that b can't fill.
func (m *Mix) checkMade(b *batch) error {
	light, heavy := lightestMix, heaviestMix
	if form := m.form(); form == Liquid || m.Water > 0 && form != Dry && form != SemiMoist {
		light, heavy = lightestLiquid, heaviestLiquid
	}
	mass, water := b.serving.Mass, waterDensity.Volume(b.water)
	e := refuse("mix.made", number(float64(m.Made))+" mL", "")
	switch d := units.BulkDensity(float64(mass) / float64(m.Made)); {
	case m.Made < water*(1-roundoff):
		e.Accepted = "at least the " + number(float64(water)) + " mL of water in it, and room for what is not water"
		e.Hint = "measure it again in a jug"
	case d < light || d > heavy:
		e.Accepted = number(float64(heavy.Volume(mass))) + " mL to " + number(float64(light.Volume(mass))) + " mL for " + number(float64(mass)) + " g"
		e.Hint = "it would weigh " + number(float64(d)) + " g/mL: measure it again in a jug"
	default:
		return nil
	}
	return e
}

// weigh returns the mass of p and the energy density of its food. The amount is
// called field.
func (p *Part) weigh(field string) (units.Mass, Density, error) {
	var errs units.ErrorList
	a := p.Amount
	of, counted := "", false
	switch want := a.accepted(); {
	case a.kind != fixedMass && a.kind != countOfUnits:
		errs = append(errs, refuse(field, a.String(), "a mass or a count of "+strconv.Quote(p.Food.Name)+", as in 30 g or 1 can"))
	case want != "":
		errs = append(errs, refuse(field, a.String(), want))
	default:
		_, of, counted = a.Count()
		switch {
		case counted && p.Food.Label.serving(of) == nil:
			errs = append(errs, refuse(field, a.String(), p.Food.countable()))
		case a.isUntold():
			errs = append(errs, refuse(field, a.String(), nameWanted))
		}
	}
	d, err := p.Food.Density()
	if err != nil {
		errs = append(errs, err)
	}
	if len(errs) > 0 {
		return 0, Density{}, errs.Err()
	}
	if !counted {
		return units.Mass(a.figure), d, nil
	}
	unit, err := p.Food.Unit(of)
	if err != nil {
		return 0, Density{}, err
	}
	return unit.Mass * units.Mass(a.figure), d, nil
}

// called returns the name of the food that m makes.
func (m *Mix) called() string {
	if m.Name != "" {
		return m.Name
	}
	var names []string
	for i := range m.Parts {
		if name := m.Parts[i].Food.Name; name != "" {
			names = append(names, name)
		}
	}
	if m.Water > 0 && len(names) > 0 {
		names = append(names, "water")
	}
	if name := strings.Join(names, " + "); oneline.Fits(name) {
		return name
	}
	return "a mix of " + strconv.Itoa(len(m.Parts)) + " foods"
}

func (m *Mix) form() Form {
	if m.Form != 0 {
		return m.Form
	}
	f := m.Parts[0].Food.Form
	for i := range m.Parts {
		switch g := m.Parts[i].Food.Form; {
		case m.Water > 0 || g == Liquid:
			return Liquid
		case g != f:
			f = 0
		}
	}
	return f
}

// purpose returns whom every part is for.
func (m *Mix) purpose() Purpose {
	p := m.Parts[0].Food.For
	for i := range m.Parts {
		p.Species = shared(p.Species, m.Parts[i].Food.For.Species)
		p.Stages = shared(p.Stages, m.Parts[i].Food.For.Stages)
	}
	return p
}

// mostComplementary is the part of the energy that food which is no diet by itself
// may be: ours, as for treats (Small Animal Clinical Nutrition, 5th ed., p. 522).
// The last bits of a sum that makes exactly a tenth are allowed for.
const mostComplementary = 0.10 * (1 + roundoff)

// unbalances reports whether the complementary parts are too much of b.
func (b *batch) unbalances() bool { return b.complementary > mostComplementary*b.serving.Energy }

// role returns what b is by its parts.
func (m *Mix) role(b *batch) Role {
	if b.unbalances() {
		return Complementary
	}
	r := m.Parts[0].Food.Role
	for i := range m.Parts {
		if m.Parts[i].Food.Role != r {
			return 0
		}
	}
	return r
}

// Times returns n times m, n above 0: every amount and volume. Nothing is
// rounded.
func (m Mix) Times(n float64) Mix {
	parts := make([]Part, len(m.Parts))
	for i, p := range m.Parts {
		p.Amount.figure *= n
		parts[i] = p
	}
	m.Parts = parts
	m.Water *= units.Volume(n)
	m.Made *= units.Volume(n)
	return m
}

// Making returns as much of m as fills v, above 0 mL. The error is a
// [*units.FieldError] where Made is not given or either is no volume.
func (m Mix) Making(v units.Volume) (Mix, error) {
	var errs units.ErrorList
	if !(m.Made > 0 && m.Made <= maxFigure) {
		errs = append(errs, refuse("mix.made", number(float64(m.Made))+" mL", "the volume that the mix fills, measured in a jug"))
	}
	if !(v > 0 && v <= maxFigure) {
		errs = append(errs, refuse("volume", number(float64(v))+" mL", "above 0 mL and at most 1e9"))
	}
	if len(errs) > 0 {
		return Mix{}, errs.Err()
	}
	n := m.Times(float64(v / m.Made))
	n.Made = v
	return n, nil
}

// UnmarshalJSON reads a part, as [Food.UnmarshalJSON] does a food.
func (p *Part) UnmarshalJSON(data []byte) error {
	type plain Part
	return decode[plain](data, "part", func(v plain) { *p = Part(v) })
}

// UnmarshalJSON reads a mix, as [Food.UnmarshalJSON] does a food. Whether it can
// be mixed is left to [Mix.Food].
func (m *Mix) UnmarshalJSON(data []byte) error {
	type plain Mix
	return decode[plain](data, "mix", func(v plain) { *m = Mix(v) })
}
