package diet

import (
	"math"

	"example.org/bowlgram/units"
)

// Analysis is the composition of a food as fed, in percent: the guaranteed
// analysis of a label in the United States, the analytical constituents of one
// in the European Union or the United Kingdom, or a laboratory's figures. An
// Analysis is comparable.
//
// A figure of zero is not given. A true zero, such as the fibre of meat, is
// told by None. Figures on another basis don't belong here: see [DryMatter].
type Analysis struct {
	// Kind says whether the figures are bounds or averages. A record holds one
	// kind; zero: not stated, which is cautioned in a prediction.
	Kind    AnalysisKind  `json:"kind,omitzero"`
	Protein units.Percent `json:"protein,omitzero"` // crude protein, nitrogen × 6.25
	Fat     units.Percent `json:"fat,omitzero"`     // crude fat; crude oils and fats
	Fibre   units.Percent `json:"fibre,omitzero"`   // crude fibre, not total dietary fibre
	// Moisture is the water in the food as fed, from 1 % (less only for a fat
	// or an oil) to below 100 %. Zero means not given, and switches off the
	// checks that need it.
	Moisture units.Percent `json:"moisture,omitzero"`
	Ash      units.Percent `json:"ash,omitzero"` // crude ash, inorganic matter
	// None holds the constituents of which there is truly nothing, 0 %.
	None Constituents `json:"none,omitzero"`
	// Defaults names the form of food whose published default figures stand in
	// for what is not given; zero: nothing does, and a missing figure is an
	// error where it is needed. Only [Dry] (ash, fibre, moisture), [SemiMoist]
	// and [Wet] (ash) have any; a [FatOrOil] is taken for nothing but fat.
	Defaults Form `json:"defaults,omitzero"`
}

// roundoffPercent is a rest that adding five percentages can leave.
const roundoffPercent = 1e-9

// NFE returns the nitrogen-free extract as fed by difference: what is neither
// protein, fat, fibre, moisture nor ash. It stands for the starch and sugar.
//
// Every constituent that is neither given, in None nor covered by Defaults is
// a [*units.FieldError], and so is a figure that no food can have, all of them
// in a [units.ErrorList]; figures that come to more than 100 % are an
// [*AnalysisError], and so are fewer of them that come to more than 105 % (ours).
func (a Analysis) NFE() (units.Percent, error) {
	full, assumed, err := a.complete(a.Defaults)
	if err != nil {
		return 0, err
	}
	nfe := full.rest()
	if nfe < 0 {
		return 0, &AnalysisError{Analysis: full, Assumed: assumed, Sum: full.sum(), NFE: nfe}
	}
	return nfe, nil
}

func (a *Analysis) sum() units.Percent {
	return a.Protein + a.Fat + a.Fibre + a.Moisture + a.Ash
}

// rest returns what the five leave of 100 %, without the last bits that adding
// leaves.
func (a *Analysis) rest() units.Percent {
	nfe := 100 - a.sum()
	if math.Abs(float64(nfe)) < roundoffPercent {
		return 0
	}
	return nfe
}

// overflow returns an [*AnalysisError] where what is given comes to so much more
// than the whole that rounding and bounds can't be why, whatever is missing.
func (a *Analysis) overflow() error {
	if sum := a.sum(); sum > 100+smallExcess {
		return &AnalysisError{Analysis: *a, Sum: sum, NFE: a.rest()}
	}
	return nil
}

// complete returns a with its defaults filled in, and which of the figures
// those are; or every fault of a and everything that is still missing.
func (a Analysis) complete(form Form) (full Analysis, assumed Constituents, err error) {
	var errs units.ErrorList
	if !a.isSound(form) {
		a.faults(&errs, form)
	}
	if len(errs) == 0 {
		if err := a.overflow(); err != nil {
			return Analysis{}, 0, err
		}
	}
	full = a
	for _, c := range constituents {
		if full.isGiven(c) {
			continue
		}
		if d, ok := defaultOf(a.Defaults, c); ok {
			*full.content(c) = d.content
			assumed |= c
			continue
		}
		errs = append(errs, a.missing(c))
	}
	if len(errs) > 0 {
		return Analysis{}, 0, errs.Err()
	}
	return full, assumed, nil
}

// content returns the figure of one constituent.
func (a *Analysis) content(c Constituents) *units.Percent {
	switch c {
	case CrudeProtein:
		return &a.Protein
	case CrudeFat:
		return &a.Fat
	case CrudeFibre:
		return &a.Fibre
	case Moisture:
		return &a.Moisture
	}
	return &a.Ash
}

func (a *Analysis) isGiven(c Constituents) bool { return *a.content(c) != 0 || a.None.Has(c) }

// missing says that constituent c is needed, and what can be done.
func (a *Analysis) missing(c Constituents) error {
	e := refuse("analysis."+c.String(), "", "the "+c.words()+" as fed, in %")
	switch _, dry := defaultOf(Dry, c); {
	case c == CrudeAsh:
		e.Hint = "not on every label: ask the manufacturer, or set defaults to the form of the food"
	case dry:
		e.Hint = "ask the manufacturer, or set defaults where the food is dry"
	}
	return e
}
