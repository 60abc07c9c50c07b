package energy

import (
	"slices"

	"example.org/bowlgram/energy/advice"
)

// Equation is one way to a day's energy, or to an ideal weight, as Methods
// lists it.
type Equation struct {
	Method  Method        // the one to ask for
	Stage   string        // as Stored names it; "ideal_weight" for IdealWeight
	Species Species       // zero: any
	Default bool          // the first choice where no method is given; Valid says when another is taken
	Formula string        // kg is the weight used, RER 70 × kg^0.75 of it
	Valid   string        // for which animals, and what must be given; "" for all
	Source  advice.Source // where the formula is from
}

// Methods returns every equation of the package, stage by stage, the default
// of each first. The slice is the caller's.
func Methods() []Equation { return slices.Clone(equations) }
