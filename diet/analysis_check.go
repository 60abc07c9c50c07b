package diet

import (
	"strings"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// isSound reports whether a has no fault in food of that form. It doesn't
// allocate.
func (a *Analysis) isSound(form Form) bool {
	for _, c := range constituents {
		if v := *a.content(c); !(v >= 0 && v <= 100) || v != 0 && a.None.Has(c) {
			return false
		}
	}
	return a.isMoisture(form) && a.None < 1<<len(constituents) && int(a.Kind) < len(kindNames) &&
		int(a.Defaults) < len(formNames) && !a.isOfAnotherForm(form) && !a.isFraction(form)
}

// mostFraction is the most that protein and fat in the dry matter come to when
// they are typed as fractions of the food. As a bound on foods ours: only a starch
// or a sugar has as little of both.
const mostFraction DryMatter = 1

// isFraction reports whether protein and fat, 0.26 and 0.14, were typed as
// fractions. Without the moisture little of both can be much water.
func (a *Analysis) isFraction(form Form) bool {
	moisture, known := a.contentOf(Moisture)
	return known && form != FatOrOil && a.Protein > 0 && a.Fat > 0 && float64(a.Protein+a.Fat) <= float64(mostFraction)*(1-moisture.Fraction())
}

func (a *Analysis) dryProteinFat(moisture units.Percent) DryMatter {
	return DryMatter(float64(a.Protein+a.Fat) / (1 - moisture.Fraction()))
}

// isOfAnotherForm reports whether the defaults asked for are those of a form
// that the food doesn't have.
func (a *Analysis) isOfAnotherForm(form Form) bool {
	return a.Defaults != 0 && form != 0 && a.Defaults != form
}

// isMoisture refuses a fraction, 0.78, typed for 78 %: only a fat or an oil has
// less than 1 % of water (ours).
func (a *Analysis) isMoisture(form Form) bool {
	p := a.Moisture
	return p == 0 || p > 0 && p < 100 && (p >= 1 || form == FatOrOil)
}

// faults adds what no food of that form can have. What is missing is left to
// the calls that need it, and so is the sum: bounds may come to more than the
// whole.
func (a *Analysis) faults(errs *units.ErrorList, form Form) {
	if int(a.Kind) >= len(kindNames) {
		*errs = append(*errs, refuse("analysis.kind", "out of range", enum.List(kindNames)))
	}
	for _, c := range constituents {
		v := *a.content(c)
		name, value := "analysis."+c.String(), number(float64(v))+" %"
		switch {
		case v != 0 && a.None.Has(c):
			*errs = append(*errs, refuse(name, value, "no figure, since none holds "+c.String()))
		case c == Moisture:
			if !a.isMoisture(form) {
				*errs = append(*errs, refuse(name, value, "1 % or more and below 100 %, or none if not known"))
			}
		case !(v >= 0 && v <= 100):
			*errs = append(*errs, refuse(name, value, "above 0 % and at most 100 %, or none if not known"))
		}
	}
	if a.isFraction(form) {
		moisture, _ := a.contentOf(Moisture)
		e := refuse("analysis.protein", "protein "+number(float64(a.Protein))+" %, fat "+number(float64(a.Fat))+" %, "+
			number(float64(a.dryProteinFat(moisture)))+" % of the dry matter", "above "+number(float64(mostFraction))+" % together, in a food that has both and is no fat or oil")
		e.Hint = "a fraction? 0.26 is 26 %; of a starch or a sugar give the lesser as none"
		*errs = append(*errs, e)
	}
	if a.None >= 1<<len(constituents) {
		*errs = append(*errs, refuse("analysis.none", "unknown bits", enum.List(constituentNames)))
	}
	switch d := a.Defaults; {
	case int(d) >= len(formNames):
		*errs = append(*errs, refuse("analysis.defaults", "out of range", enum.List(formNames)))
	case a.isOfAnotherForm(form):
		*errs = append(*errs, refuse("analysis.defaults", d.String(), form.String()+", the form of the food"))
	}
}

// AnalysisError is an analysis whose figures can't all be right, since they
// come to more than 100 %: the nitrogen-free extract would be negative.
type AnalysisError struct {
	Analysis Analysis      // with the defaults filled in
	Assumed  Constituents  // the figures that are defaults
	Sum      units.Percent // of the constituents that are known
	NFE      units.Percent // 100 - Sum, below zero
}

// Error shows the sum and says what must be wrong.
func (e *AnalysisError) Error() string {
	var parts []string
	for _, c := range constituents {
		if v := *e.Analysis.content(c); v > 0 {
			parts = append(parts, c.String()+" "+number(float64(v)))
		}
	}
	return "diet: analysis: " + strings.Join(parts, " + ") + " = " + number(float64(e.Sum)) +
		" %, more than the whole: NFE would be " + number(float64(e.NFE)) + " %; " + e.reason()
}

// smallExcess is what rounding, tolerances and bounds can add to 100 %; ours.
const smallExcess = 5

// reason says what must be wrong, the likeliest first.
func (e *AnalysisError) reason() string {
	var why []string
	a := &e.Analysis
	if solids := e.Sum - a.Moisture; e.Sum > 100+smallExcess && solids <= 100 && a.Moisture >= euMoisture {
		why = append(why, "the figures beside the moisture are of dry matter, not as fed")
	}
	if a.Kind != Typical {
		why = append(why, "guarantees are summed, which are bounds and not contents (ask for the typical analysis)")
	}
	if e.Assumed != 0 {
		why = append(why, "the default for "+e.Assumed.list()+" is too much for this food")
	}
	if a.Kind == Typical && e.Sum <= 100+smallExcess {
		why = append(why, "the averages are rounded or not of one batch (ask the laboratory)")
	}
	if len(why) == 0 {
		return "a figure is mistyped or on another basis"
	}
	return strings.Join(why, ", or ")
}

// euMoisture is the moisture above which a label in the European Union states
// it (Regulation (EC) 767/2009, as quoted elsewhere). A drier food has nearly
// the same figures on both bases, so that they tell nothing.
const euMoisture = 14
