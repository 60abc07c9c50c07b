package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// coefficient is one row of a published table. Where the source prints a range,
// low and high are its ends and value is what this library uses; else they are
// zero.
type coefficient struct {
	value, low, high float64
	label            string
	source           advice.Source
}

// spread returns Low and High: the ends of the published range times the base,
// or the general spread around the daily energy.
func (c *coefficient) spread(s Species, base, daily units.Energy) (low, high units.Energy) {
	if c.low > 0 {
		return units.Energy(c.low) * base, units.Energy(c.high) * base
	}
	return spread(s, daily)
}

// explainSpread says where Low and High come from.
func (c *coefficient) explainSpread(w *working, s Species) {
	if c.low > 0 {
		text := "the published range, " + short(c.low) + " to " + short(c.high)
		if s == Ferret {
			text += " kcal/kg"
		}
		w.line("spread", text)
		return
	}
	explainSpread(w, s)
}
