package diet

import (
	"math"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// Adequacy holds the nutrients of a food against the minima of a standard, for
// one animal on one day's energy. It is comparable.
//
// The minima are printed for 1000 kcal, but an animal needs its grams of a
// nutrient for each kg of metabolic weight, however little it eats. A food that
// meets them can be short when less of it is fed than the standard takes for
// granted, on a weight loss above all: Linder et al. (Vet Q 2012;32:123) found
// no diet below the allowances for 1000 kcal, and every one of them short of
// something at 79 kcal/kg^0.75 of ideal weight. So for adults
//
//	needed = minimum × reference / intake
//	intake = kcal a day / ideal kg^0.75 (dog) or ideal kg^0.67 (cat)
//
// by FEDIAF's equation, from the intake that the standard is tied to: 110
// kcal/kg^0.75 and 100 kcal/kg^0.67 for [FEDIAF], 130 and 100 for [NRC2006].
// An intake above it lowers no minimum (ours). Fat is never scaled, nor are
// maxima and ratios. [AAFCO] publishes no such intake and is compared as
// printed; so are growth and reproduction.
//
// There is no verdict on the whole: only what is given in the profile, and of
// which the standard has a figure here, is judged. [Adequacy.Cautions] says
// what was not.
type Adequacy struct {
	Profile Profile `json:"profile"`
	// Form is that of the food: the taurine that a dry food for cats needs is
	// less than that of a canned one, which is asked of every other form.
	Form     Form     `json:"form,omitzero"`
	Standard Standard `json:"standard"`
	// Stage is one of [Maintenance], [Growth] and [Reproduction].
	Stage Stages `json:"stage"`
	// Animal is a dog or a cat. At maintenance the ideal weight is what
	// [energy.IdealWeight] gives: recorded, or by the score. Of a puppy the Age
	// decides which figures of FEDIAF hold: from 14 weeks those of late growth,
	// before and where it isn't given those of early growth.
	Animal energy.Animal `json:"animal"`
	// AdultWeight is that expected of a growing dog, which some figures for
	// calcium depend on. Zero: not known, and the stricter ones are taken.
	AdultWeight units.Mass `json:"adult_weight,omitzero"`
	// Daily is the metabolizable energy that the animal gets in a day. It
	// is needed at maintenance, and not used otherwise.
	Daily units.Energy `json:"daily,omitzero"`
}

// Finding is one nutrient of a food held against one figure. It is comparable.
type Finding struct {
	Nutrient Nutrient `json:"nutrient"`
	Rule     Rule     `json:"rule"`
	Have     PerMcal  `json:"have"` // what the food holds
	// Need is the least or the most that it should hold, scaled to the
	// animal's intake; for a ratio, the multiple of the food's phosphorus.
	Need PerMcal `json:"need"`
	// Margin is how far Have is inside Need, below zero where it is outside.
	Margin PerMcal `json:"margin"`
	// Printed is the standard's own figure; for a ratio that is Ratio.
	Printed PerMcal `json:"printed,omitzero"`
	Ratio   float64 `json:"ratio,omitzero"`
	// Reference is the intake that Printed is tied to, and Intake the animal's,
	// in kcal/kg^0.75 or kg^0.67; zero where nothing was scaled.
	Reference float64       `json:"reference,omitzero"`
	Intake    float64       `json:"intake,omitzero"`
	Source    advice.Source `json:"source"`
}

// Short reports whether the food is outside the figure: short of a minimum or
// above a maximum.
func (f Finding) Short() bool { return f.Margin < 0 }

// Check returns a finding for every figure that the standard has of a nutrient
// that the profile gives, in the order of the nutrients. A ratio needs the
// phosphorus too.
//
// A standard, stage or species that has no figures, an energy that isn't above
// zero and an adult weight that no dog has are a [*units.FieldError], and so is
// an animal that is growing, pregnant or lactating at maintenance. The errors
// of [energy.IdealWeight] are passed on. All of them come at once, in a
// [units.ErrorList].
func (a Adequacy) Check() ([]Finding, error) {
	intake, err := a.sound()
	if err != nil {
		return nil, err
	}
	return a.findings(intake), nil
}

// findings are those of a sound a.
func (a *Adequacy) findings(intake float64) []Finding {
	var list []Finding
	for t, i := a.table(), 0; i < len(t.limits); i++ {
		if f, ok := a.find(t, &t.limits[i], intake); ok {
			list = append(list, f)
		}
	}
	return list
}

// find holds a against one figure of t, and reports whether it is for a.
func (a *Adequacy) find(t *standardTable, l *limit, intake float64) (Finding, bool) {
	have, given := a.Profile.Of(l.nutrient)
	if !given || !a.holds(l.only) {
		return Finding{}, false
	}
	f := Finding{Nutrient: l.nutrient, Rule: l.rule, Have: have, Source: *l.source}
	switch {
	case l.rule.isRatio():
		phosphorus, given := a.Profile.Of(Phosphorus)
		if !given {
			return Finding{}, false
		}
		f.Ratio = l.amount
		f.Need = PerMcal(l.amount) * phosphorus
	default:
		f.Printed = PerMcal(l.amount)
		f.Need = f.Printed
		if t.reference > 0 && l.rule == Minimum && l.nutrient != Fat {
			f.Reference, f.Intake = t.reference, intake
			f.Need *= PerMcal(f.Reference / min(intake, t.reference))
		}
	}
	f.Margin = f.Have - f.Need
	if l.rule.isMost() {
		f.Margin = -f.Margin
	}
	if math.Abs(float64(f.Margin)) <= equalWithin*float64(f.Need) {
		f.Margin = 0
	}
	return f, true
}

// equalWithin lets a food that is exactly at a figure meet it, whatever the
// last bits of the computation.
const equalWithin = 1e-12

// sound returns the intake at maintenance, else 0, or every fault of a.
func (a *Adequacy) sound() (intake float64, err error) {
	var errs units.ErrorList
	if int(a.Form) >= len(formNames) {
		errs = append(errs, refuse("form", "out of range", enum.List(formNames)))
	}
	known := true // the three that choose the table
	if a.Standard == 0 || int(a.Standard) >= len(standardNames) {
		errs = append(errs, refuse("standard", outOfRange(a.Standard), enum.List(standardNames)))
		known = false
	}
	if a.Stage != Maintenance && a.Stage != Growth && a.Stage != Reproduction {
		errs = append(errs, refuse("stage", a.Stage.String(), "one of "+enum.List(stageNames)))
		known = false
	}
	if s := a.Animal.Species; s != energy.Dog && s != energy.Cat {
		e := refuse("animal.species", s.String(), "dog or cat")
		e.Hint = "no minima are held for other animals"
		errs = append(errs, e)
		known = false
	}
	if w := a.AdultWeight; !(w >= 0) || w > 0 && (w < leastAdultDog || w > mostAdultDog) {
		errs = append(errs, refuse("adult_weight", w.String(), leastAdultDog.String()+" to "+mostAdultDog.String()+", or none if not known"))
	}
	if known && a.table() == nil {
		errs = append(errs, refuse("stage", a.Stage.String(), "maintenance for "+a.Standard.String()))
	}
	if a.Stage == Maintenance {
		var faults units.ErrorList
		intake, faults = a.intake()
		errs = append(errs, faults...)
	}
	return intake, errs.Err()
}

// Adult weights that a dog can have: ours, those of [energy.Adult].
const (
	leastAdultDog = 800 * units.Gram
	mostAdultDog  = 120 * units.Kilogram
)

// outOfRange says of an enumeration's value why it is refused: "" where it is
// not given.
func outOfRange[E enum.Enum](v E) string {
	if v == 0 {
		return ""
	}
	return "out of range"
}
