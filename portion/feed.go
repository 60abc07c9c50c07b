package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Liquid is what is fed from a bottle or through a tube, as it is made up: milk
// replacer, a thinned can. It is comparable.
type Liquid struct {
	Name   string                `json:"name,omitzero"` // at most 256 bytes on one line
	Energy units.EnergyPerVolume `json:"energy"`        // of the made-up liquid, 0.2 to 3 kcal/mL (ours)
	// Water is the water in it by volume, mL in 100 mL, 30 or more (ours); zero:
	// not known.
	Water units.Percent `json:"water,omitzero"`
	// Food is what [LiquidFood] made it of, for whom it is and what is to be said
	// of its label. Zero: not given, and said to be unknown.
	Food diet.Food `json:"food,omitzero"`
}

// UnmarshalJSON reads a liquid. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves l as it was.
func (l *Liquid) UnmarshalJSON(data []byte) error {
	type plain Liquid
	return strictjson.Record("portion", "liquid", data, func(p plain) { *l = Liquid(p) })
}

// LiquidFood returns a food as a liquid, by the volume on its label: see
// [diet.Food.PerVolume], whose errors are passed on. [diet.Mix.Food] makes such a
// food of powder or a can and water. What is not poured as it is, dry food,
// powder and oil, is refused, and so is a food of less water than a liquid has,
// or of more than its volume holds. Up to 2 % more (ours) is the reading of a jug
// and is taken as 100 %.
func LiquidFood(f diet.Food) (Liquid, error) {
	var errs units.ErrorList
	switch f.Form {
	case diet.Dry, diet.SemiMoist, diet.Powder, diet.FatOrOil:
		errs = append(errs, unfit("form", f.Form.String(), "a liquid, or wet food thinned with water", madeUp))
	}
	perVolume, err := f.PerVolume()
	if errs = errlist.Add(errs, err); len(errs) > 0 {
		return Liquid{}, errs.Err()
	}
	d, err := f.Density()
	if err != nil {
		return Liquid{}, err
	}
	l := Liquid{Name: f.Name, Energy: perVolume, Food: f}
	if moisture, known := moistureOf(&f); known {
		gramsPerMillilitre := perVolume.KilocaloriesPerMillilitre() / d.Energy.KilocaloriesPerGram()
		l.Water = moisture * units.Percent(gramsPerMillilitre)
		const jug = 102
		switch {
		case l.Water < leastWater:
			return Liquid{}, unfit("water of "+f.Name, percentText(l.Water)+" of the volume", "30 % or more in a liquid", madeUp)
		case l.Water > jug:
			return Liquid{}, unfit("water of "+f.Name, percentText(l.Water)+" of the volume", "at most 100 %", "measure again in a jug what its grams fill")
		}
		l.Water = min(l.Water, 100)
	}
	return l, nil
}

// madeUp says how what can't be poured becomes a liquid.
const madeUp = "it is fed made up with water: Mix"

// percentText writes a percentage for a reader.
func percentText(p units.Percent) string { return number(float64(p)) + " %" }

// leastWater is the least water in what goes through a bottle or a tube, mL in
// 100 mL: ours. Milk replacers and slurries have some 80, the driest of cans
// about 60.
const leastWater = 30

// Bounds of the energy of a liquid; ours. Milk replacers are 0.74 to 1.3 kcal/mL
// (shelter charts; Dog Owner's Home Veterinary Handbook), slurries about 1.
const (
	thinnest units.EnergyPerVolume = 0.2
	richest  units.EnergyPerVolume = 3
)

func (l *Liquid) check(errs units.ErrorList) units.ErrorList {
	if !oneline.Fits(l.Name) {
		errs = append(errs, unfit("liquid.name", l.Name, oneline.Wanted, ""))
	}
	if !(thinnest <= l.Energy && l.Energy <= richest) {
		hint := ""
		if l.Energy > richest {
			hint = "of the powder? give that of the made-up liquid"
		}
		errs = append(errs, unfit("liquid.energy", figure(float64(l.Energy), "kcal/mL"), "0.2 kcal/mL to 3 kcal/mL", hint))
	}
	if p := l.Water; p != 0 && !(leastWater <= p && p <= 100) {
		hint := ""
		switch {
		case 0 < p && p < 1:
			hint = "a fraction for a percentage?"
		case 1 <= p && p < leastWater:
			hint = madeUp
		}
		errs = append(errs, unfit("liquid.water", figure(float64(p), "%"), "30 % to 100 % of the volume, or none if not known", hint))
	}
	if l.Food != (diet.Food{}) {
		errs = l.checkFood(errs)
	}
	return errs
}

// checkFood refuses a liquid whose figures are not those of its food.
func (l *Liquid) checkFood(errs units.ErrorList) units.ErrorList {
	made, err := LiquidFood(l.Food)
	if err != nil {
		return errlist.Add(errs, err)
	}
	if !near(float64(l.Energy), float64(made.Energy)) {
		errs = append(errs, unfit("liquid.energy", figure(float64(l.Energy), "kcal/mL"), "that of its food, "+figure(float64(made.Energy), "kcal/mL"), "leave Food out for a liquid of other figures"))
	}
	if made.Water != 0 && !near(float64(l.Water), float64(made.Water)) {
		errs = append(errs, unfit("liquid.water", figure(float64(l.Water), "%"), "that of its food, "+percentText(made.Water), "leave Food out for a liquid of other figures"))
	}
	return errs
}

// cautions returns what is to be said of the liquid as the only food of an
// animal.
func (l *Liquid) cautions(need *energy.Estimate) []advice.Caution {
	if l.Food != (diet.Food{}) {
		return l.Food.Cautions(animalOf(need))
	}
	name := l.Name
	if name == "" {
		name = "the liquid"
	}
	return []advice.Caution{{Level: advice.Note, Source: ours, Text: "it is not stated whom " + name + " is for, nor whether it is a complete food: read its label"}}
}

// figure writes a number with its unit, also one that is no number.
func figure(x float64, unit string) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "not a finite number"
	}
	return strconv.FormatFloat(x, 'f', -1, 64) + " " + unit
}

// Feed is one feed of a day.
type Feed struct {
	Number int          `json:"number"` // from 1
	Count  int64        `json:"count"`  // marks of the syringe
	Volume units.Volume `json:"volume"`
	Energy units.Energy `json:"energy"`
}

// Feeds is a day of liquid feeds, rounded once to the marks of a syringe. It is
// comparable. It is worked out, not stored: store the [Bottle] or the [Tube].
type Feeds struct {
	Liquid Liquid       `json:"liquid"`
	Number int          `json:"number"`         // feeds a day
	Mark   units.Volume `json:"mark"`           // of the syringe
	Exact  units.Volume `json:"exact"`          // of the day, unrounded
	Count  int64        `json:"count"`          // marks in the day
	Volume units.Volume `json:"volume"`         // of the day, in whole marks
	Energy units.Energy `json:"energy"`         // in Volume
	Flush  units.Volume `json:"flush,omitzero"` // of water after each feed
	Water  units.Volume `json:"water,omitzero"` // of the day, in the feed and the flushes; zero: not known
	Goal   units.Volume `json:"goal,omitzero"`  // of water a day; zero: not given
}

// DefaultMark is the mark of a syringe where none is given.
const DefaultMark = 0.5 * units.Millilitre

// Marks of syringes: 0.01 mL on one of 1 mL, 10 mL on the largest.
const (
	finestMark   = 0.01 * units.Millilitre
	coarsestMark = 10 * units.Millilitre
)

// marks are the marks of a syringe, counted as the steps of a scale are: a
// millilitre stands for a gram.
type marks struct{ scale }

func newMarks(v units.Volume) (marks, bool) {
	s, ok := newScale(units.Mass(v.Millilitres()) * units.Gram)
	return marks{s}, ok && finestMark <= v && v <= coarsestMark
}

func (m marks) count(v units.Volume) int64 {
	return m.scale.count(units.Mass(v.Millilitres()) * units.Gram)
}

func (m marks) volume(n int64) units.Volume {
	return units.Volume(m.scale.mass(n).Grams()) * units.Millilitre
}

// All returns the feeds of the day. Their counts add up to the day exactly, each
// is less than one mark from its exact share, and the odd marks go to the
// earliest feeds.
func (f Feeds) All() []Feed {
	if f.Number < 1 || f.Number > MaxMeals {
		return nil
	}
	m, ok := newMarks(f.Mark)
	if !ok {
		return nil
	}
	feeds := make([]Feed, f.Number)
	for i := range feeds {
		n := share(f.Count, f.Number, i)
		v := m.volume(n)
		feeds[i] = Feed{i + 1, n, v, f.Liquid.Energy.Energy(v)}
	}
	return feeds
}

// Largest returns the largest feed of the day, which is the first.
func (f Feeds) Largest() units.Volume {
	if feeds := f.All(); len(feeds) > 0 {
		return feeds[0].Volume
	}
	return 0
}

// FeedWater returns the water in the liquid of the day, without the flushes.
func (f Feeds) FeedWater() units.Volume {
	return units.Volume(float64(f.Volume) * f.Liquid.Water.Fraction()) // rounded, not fused with a sum
}

// Shortfall returns how much water the day is short of its goal, negative where
// it is above, and false where the goal or the water in the liquid is not known.
func (f Feeds) Shortfall() (units.Volume, bool) {
	if f.Goal == 0 || f.Liquid.Water == 0 {
		return 0, false
	}
	return f.Goal - f.Water, true
}
