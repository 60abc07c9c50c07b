package energy

import (
	"math"

	"example.org/bowlgram/units"
)

// bounds are the body weights that a stage takes for a species. Beyond them a
// typing slip is far likelier than the animal. All of them are ours: wide
// enough for every animal the sources speak of, narrow enough that grams typed
// as kilograms, and most pounds typed as kilograms, fall out.
type bounds struct{ low, high units.Mass }

// anyStage holds from the newborn to the heaviest adult.
var anyStage = [...]bounds{
	Dog:    {50 * units.Gram, 120 * units.Kilogram},
	Cat:    {40 * units.Gram, 20 * units.Kilogram},
	Ferret: {5 * units.Gram, 4 * units.Kilogram},
	Other:  {5 * units.Gram, 200 * units.Kilogram},
}

// adults holds for the grown animal.
var adults = [...]bounds{
	Dog:    {800 * units.Gram, 120 * units.Kilogram},
	Cat:    {1500 * units.Gram, 20 * units.Kilogram},
	Ferret: {400 * units.Gram, 4 * units.Kilogram},
	Other:  {5 * units.Gram, 200 * units.Kilogram},
}

// usualAdults are the weights outside which an adult is worth a second look at
// the unit: ours.
var usualAdults = [...]bounds{
	Dog:    {1500 * units.Gram, 80 * units.Kilogram},
	Cat:    {2300 * units.Gram, 8 * units.Kilogram},
	Ferret: {500 * units.Gram, 2 * units.Kilogram},
	Other:  {0, math.MaxFloat64},
}

var young = [...]string{Dog: "puppy", Cat: "kitten", Ferret: "kit", Other: "young animal"}

// anAdult is the stage of those that are held against adults.
const anAdult = "an adult "

func (b bounds) contains(w units.Mass) bool { return b.low <= w && w <= b.high }

// checkWeight refuses a weight outside what the table takes for the species,
// with the slips that would explain it. The species must be valid.
func (a Animal) checkWeight(table []bounds, stage string) error {
	b := table[a.Species]
	if b.contains(a.Weight) {
		return nil
	}
	kind := a.Species.String()
	if a.Species == Other {
		kind = "any other animal"
	} else if stage == "" {
		kind = "a " + kind
	}
	accepted := b.low.String() + " to " + b.high.String() + " for " + stage + kind
	if a.Weight == 0 {
		return refuse("weight", "", accepted, "not given")
	}
	if !(a.Weight > 0) || math.IsInf(float64(a.Weight), 0) {
		return refuse("weight", a.Weight.String(), accepted, "")
	}
	var hint []string
	if w := a.Weight / 1000; b.contains(w) {
		hint = append(hint, "grams? "+typed(a.Weight.Kilograms())+" g is "+short(w.Kilograms())+" kg")
	}
	if w := units.Mass(a.Weight.Kilograms()) * units.Pound; b.contains(w) {
		hint = append(hint, "pounds? "+typed(a.Weight.Kilograms())+" lb is "+round(w.Kilograms(), 2)+" kg")
	}
	if a.Weight < b.low {
		if w := a.Weight * 1000; b.contains(w) {
			hint = append(hint, "kilograms? "+typed(a.Weight.Grams())+" kg is in range")
		}
		if stage == anAdult && anyStage[a.Species].contains(a.Weight) {
			grows := "growth has equations of its own: Growth"
			if a.Species == Ferret {
				grows = noYoung
			}
			hint = append(hint, "a "+young[a.Species]+"? "+grows)
		}
	}
	return refuse("weight", a.Weight.String(), accepted, join(hint...))
}
