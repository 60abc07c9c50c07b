package trend

import "example.org/bowlgram/units"

// Change is what the scale says from one weighing to another; a loss is below
// zero. It is comparable with ==.
type Change struct {
	Days    int
	Mass    units.Mass
	Percent units.Percent // of the earlier weight
	// PerWeek is Percent / weeks, of the earlier weight, as AAHA 2014 has it:
	// 100 × (last - now) / last / weeks. Zero where both are of one day.
	PerWeek units.Percent
}

// change returns the change from a to b.
func change(a, b Weighing) Change {
	c := Change{
		Days: int(b.Date - a.Date), Mass: b.Weight - a.Weight,
		Percent: units.Percent(100 * ((b.Weight - a.Weight) / a.Weight)),
	}
	if c.Days > 0 {
		c.PerWeek = c.Percent * daysPerWeek / units.Percent(c.Days)
	}
	return c
}

const daysPerWeek = 7
