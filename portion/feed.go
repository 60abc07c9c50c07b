package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Liquid is what is fed from a bottle or through a tube, as it is made up: milk
// replacer, a thinned can. It is comparable.
type Liquid struct {
	Name   string                `json:"name,omitzero"`
	Energy units.EnergyPerVolume `json:"energy"` // of the made-up liquid, 0.2 to 3 kcal/mL (ours)
	// Water is the water in it by volume, mL in 100 mL; zero: not known.
	Water units.Percent `json:"water,omitzero"`
}

// UnmarshalJSON reads a liquid. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves l as it was.
func (l *Liquid) UnmarshalJSON(data []byte) error {
	type plain Liquid
	return strictjson.Record("portion", "liquid", data, func(p plain) { *l = Liquid(p) })
}

// LiquidFood returns a food as a liquid, by the volume on its label: see
// [diet.Food.PerVolume], whose errors are passed on. [diet.Mix.Food] makes such a
// food of powder or a can and water.
func LiquidFood(f diet.Food) (Liquid, error) {
	perVolume, err := f.PerVolume()
	if err != nil {
		return Liquid{}, err
	}
	d, err := f.Density()
	if err != nil {
		return Liquid{}, err
	}
	gramsPerMillilitre := perVolume.KilocaloriesPerMillilitre() / d.Energy.KilocaloriesPerGram()
	return Liquid{Name: f.Name, Energy: perVolume, Water: f.Analysis.Moisture * units.Percent(gramsPerMillilitre)}, nil
}

// Bounds of the energy of a liquid; ours. Milk replacers are 0.74 to 1.3 kcal/mL
// (shelter charts; Dog Owner's Home Veterinary Handbook), slurries about 1.
const (
	thinnest units.EnergyPerVolume = 0.2
	richest  units.EnergyPerVolume = 3
)

func (l *Liquid) check(errs units.ErrorList) units.ErrorList {
	if !(thinnest <= l.Energy && l.Energy <= richest) {
		hint := ""
		if l.Energy > richest {
			hint = "of the powder? give that of the made-up liquid"
		}
		errs = append(errs, unfit("liquid.energy", figure(float64(l.Energy), "kcal/mL"), "0.2 kcal/mL to 3 kcal/mL", hint))
	}
	if p := l.Water; p != 0 && !(1 <= p && p <= 100) {
		hint := ""
		if 0 < p && p < 1 {
			hint = "a fraction for a percentage?"
		}
		errs = append(errs, unfit("liquid.water", figure(float64(p), "%"), "1 % to 100 % of the volume, or none if not known", hint))
	}
	return errs
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
