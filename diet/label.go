package diet

import (
	"math"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Label is the calorie content statement of a food. Any two of kcal/kg, kcal
// per serving and grams per serving give the third; a figure of zero is not
// stated.
//
// The statement is of metabolizable energy as fed, an average and never a
// bound (AAFCO Model Regulation PF9 as amended, Official Publication 2014):
// per kilogram and per familiar household measure. Older rules of some states
// ask for one of the two, and newer ones for the household unit only.
type Label struct {
	Energy units.EnergyDensity `json:"energy,omitzero"` // as fed
	// Claim is how the energy was arrived at: calculated or fed.
	Claim Claim `json:"claim,omitzero"`
	// HalfStep is half the step Energy was rounded to when printed. Zero means
	// 5 kcal/kg where Energy in kcal/kg is divisible by 10 and 0.5 kcal/kg
	// otherwise, but never more than half of Energy. No rule for rounding was
	// found in PF9: these are ours.
	HalfStep units.EnergyDensity `json:"half_step,omitzero"`
	Serving  Serving             `json:"serving,omitzero"`
	// Others are further units that can be counted, each with a name; see
	// [Food.Unit]. Energy and Serving alone decide the density of the food: a
	// unit that contradicts it is a caution, and refused where it is counted.
	Others Servings `json:"others,omitzero"`
	// Packs are what the food is sold in.
	Packs Packs `json:"packs,omitzero"`
}

// statedRange returns every density that the printed kcal/kg leaves possible.
func (l *Label) statedRange() units.Range[units.EnergyDensity] {
	half := l.HalfStep
	if half == 0 {
		half = 0.5
		if tens := float64(l.Energy) / 10; tens == math.Trunc(tens) {
			half = 5
		}
		half = min(half, l.Energy/2)
	}
	return units.Range[units.EnergyDensity]{Low: l.Energy - half, High: l.Energy + half}
}

// maxFigure is the largest figure taken for a serving, in kcal or g, so that
// nothing overflows; ours.
const maxFigure = 1e9

// check refuses figures that no label can carry: all of them at once.
func (f *Food) check() error {
	l, s := &f.Label, &f.Label.Serving
	if oneline.Fits(f.Name) && isFigure(l.Energy) && isHalfStep(l.HalfStep, l.Energy) && s.isSound() && l.Others.isSound(s.Name) && l.Packs.isSound() && int(l.Claim) < len(claimNames) && f.Analysis.isSound(f.Form) {
		return nil
	}
	var errs units.ErrorList
	checkName(&errs, f.Name, "name")
	checkFigure(&errs, l.Energy, "label.energy", l.HalfStep, "label.half_step", "kcal/kg")
	s.check(&errs, "label.serving")
	l.Others.check(&errs, s.Name)
	l.Packs.check(&errs)
	if int(l.Claim) >= len(claimNames) {
		errs = append(errs, refuse("label.claim", "out of range", enum.List(claimNames)))
	}
	if !f.Analysis.isSound(f.Form) {
		f.Analysis.faults(&errs, f.Form)
	}
	return errs.Err()
}

// checkName adds that a name can't stand on a line of a sheet. It may be none.
func checkName(errs *units.ErrorList, name, field string) {
	if !oneline.Fits(name) {
		*errs = append(*errs, refuse(field, name, oneline.Wanted))
	}
}

func isFigure[Q units.Quantity](q Q) bool { return q >= 0 && q <= maxFigure }

// isHalfStep reports whether half leaves an interval above zero. The half-step
// of a figure that is not stated doesn't matter, but must be a number.
func isHalfStep[Q units.Quantity](half, figure Q) bool {
	return isFigure(half) && (figure == 0 || half < figure)
}

// checkFigure adds what is wrong with a figure and its half-step. The names are
// the paths of their JSON members.
func checkFigure[Q units.Quantity](errs *units.ErrorList, figure Q, name string, half Q, halfName, unit string) {
	if !isFigure(figure) {
		*errs = append(*errs, refuse(name, number(float64(figure))+" "+unit, "above 0 "+unit+" and at most 1e9, or none if not stated"))
		return
	}
	if !isHalfStep(half, figure) {
		accepted := "above 0 " + unit
		if figure > 0 {
			accepted += " and below the figure, " + number(float64(figure)) + " " + unit
		}
		*errs = append(*errs, refuse(halfName, number(float64(half))+" "+unit, accepted))
	}
}

func refuse(field, value, accepted string) *units.FieldError {
	return &units.FieldError{Package: "diet", Field: field, Value: value, Accepted: accepted}
}
