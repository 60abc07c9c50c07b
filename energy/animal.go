package energy

import (
	"math"
	"slices"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Animal is what is known of the patient, the same for every stage. A zero
// field is not given; nothing that is not given is guessed. The zero value is
// refused by every stage but Prescribed.
//
// These weights are taken, and others refused (all of them ours):
//
//	        adult          growing: at 4 wk  at 1 y         nursling, in weeks 1 to 4
//	dog     0.8 to 120 kg  150 g to 7 kg     0.8 to 120 kg  50 g to 2, 3.5, 5, 7 kg
//	cat     1.5 to 20 kg   150 g to 1 kg     1 to 12 kg     40 g to 350, 500, 700, 900 g
//	ferret  0.4 to 4 kg    refused           refused        refused
//	other   5 g to 200 kg in Observed and Prescribed, refused elsewhere
//
// Resting, Refeeding and Prescribed, and Growth without an age, take whatever a
// dog (50 g to 120 kg), a cat (40 g to 20 kg) or, in Prescribed, a ferret (5 g
// to 4 kg) of any age may weigh. Pounds typed as kilograms are seen only
// where they fall outside: 45 lb as 45 kg is a dog. An adult outside 1.5 to 80
// kg (dog), 2.3 to 8 kg (cat) or 0.5 to 2 kg (ferret) is cautioned.
type Animal struct {
	Species       Species       `json:"species,omitzero"`       // zero: not given
	Weight        units.Mass    `json:"weight,omitzero"`        // current body weight; zero: not given
	Age           Age           `json:"age,omitzero"`           // in days, 1 on the day of birth; zero: not given
	Condition     Condition     `json:"condition,omitzero"`     // zero: not scored
	Ideal         units.Mass    `json:"ideal,omitzero"`         // recorded ideal weight; zero: none recorded
	DaysUnfed     int           `json:"days_unfed,omitzero"`    // whole days without food; zero: none
	Circumstances Circumstances `json:"circumstances,omitzero"` // what else is known; zero: nothing
}

// The gates. A score this low, or this many days without food, needs a
// veterinarian's figure; the thresholds of the cautions stand with them.
const (
	gateCondition = 2 // of nine, and less; ours, after Pointer 2013
	warnThin      = 3 // of nine
	warnFat       = 7 // of nine, and more
	gateUnfed     = 5 // days and more: Koret, "more than 5-10 days"

	gateIdeal = 0.70 // of the ideal weight, and less: Pointer 2013, emaciated
	warnIdeal = 0.85 // ours
)

// Current weight against ideal weight: outside these it is a typing slip. Ours;
// the fattest dog of the textbook cases is 1.9 times its ideal, and the starved
// cats of Cook 2021 had lost 46 ± 7 %.
const (
	minPerIdeal = 1.0 / 3
	maxPerIdeal = 2.0
)

// onBoundary takes what is off a boundary by the rounding of a unit only, as
// 7 lb of 10 lb is, for what is on it.
const onBoundary = 1e-9

// emaciated reports whether the weight is so far below the other that only a
// veterinarian may set the amount.
func emaciated(now, ideal units.Mass) bool { return now <= gateIdeal*ideal*(1+onBoundary) }

// idealIsLikely reports whether an ideal weight is recorded that is no slip
// beside the current one.
func (a Animal) idealIsLikely() bool {
	ratio := float64(a.Weight / a.Ideal)
	return minPerIdeal <= ratio && ratio <= maxPerIdeal
}

// check returns the weight-independent faults of the animal. Where gated, the
// refusals that only a veterinarian's figure lifts are among them.
func (a Animal) check(gated bool) units.ErrorList {
	var faults units.ErrorList
	if !a.Species.isValid() {
		faults = append(faults, refuse("species", strconv.Itoa(int(a.Species)), "dog, cat, ferret or other", ""))
	}
	if a.Age < 0 || a.Age > maxAge {
		faults = append(faults, refuse("age", strconv.Itoa(int(a.Age))+" d", "0 (not given) to 40 y", ""))
	}
	if !a.Condition.isValid() {
		faults = append(faults, refuse("condition", a.Condition.String(), conditionRange, ""))
	}
	if !(a.Ideal >= 0) || math.IsInf(float64(a.Ideal), 1) {
		faults = append(faults, refuse("ideal weight", a.Ideal.String(), "above 0 g, or none if not recorded", ""))
	} else if a.Ideal > 0 && a.Weight > 0 && !a.idealIsLikely() {
		faults = append(faults, refuse("ideal weight", a.Ideal.String(),
			"a weight from half to three times the current "+readable(a.Weight), "pounds for kilograms?"))
	}
	if a.DaysUnfed < 0 {
		faults = append(faults, refuse("days unfed", strconv.Itoa(a.DaysUnfed), "0 or more whole days", ""))
	}
	if a.Circumstances&^known != 0 {
		faults = append(faults, refuse("circumstances", strconv.Itoa(int(a.Circumstances)), "the named bits", ""))
	}
	if !gated {
		return faults
	}
	if nine, ok := a.Condition.Nine(); ok && a.Condition.isValid() && nine <= gateCondition {
		faults = append(faults, &VeterinarianError{
			Field: "condition", Value: a.Condition.String(),
			Reason: "very thin: too much food too soon can kill (refeeding)", Need: needDaily,
		})
	}
	if a.idealIsLikely() && emaciated(a.Weight, a.Ideal) {
		faults = append(faults, &VeterinarianError{
			Field: "weight", Value: a.Weight.String(),
			Reason: "30 % or more below the recorded ideal weight of " + readable(a.Ideal) + ": too much food too soon can kill (refeeding), or one of the two is wrong (pounds for kilograms?)",
			Need:   needDaily,
		})
	}
	if a.DaysUnfed >= gateUnfed {
		faults = append(faults, &VeterinarianError{
			Field: "days unfed", Value: strconv.Itoa(a.DaysUnfed),
			Reason: "long without food: too much food too soon can kill (refeeding)", Need: needDaily,
		})
	}
	for _, g := range []struct {
		bit    Circumstances
		reason string
	}{
		{Ill, "an ill animal is not fed by an equation for healthy ones"},
		{TubeFed, "tube feeding is set by the clinician"},
	} {
		if a.Circumstances.Has(g.bit) {
			faults = append(faults, &VeterinarianError{
				Field: "circumstances", Value: g.bit.String(), Reason: g.reason, Need: needDaily,
			})
		}
	}
	return faults
}

// checkSpecies refuses a species that the stage has no equation for.
func (a Animal) checkSpecies(hint string, takes ...Species) error {
	switch {
	case slices.Contains(takes, a.Species), !a.Species.isValid():
		return nil // one out of range is among the faults of check
	case a.Species == 0:
		hint = "not given"
	}
	return refuse("species", a.Species.String(), list(takes), hint)
}

// misplaced refuses the growing, the pregnant and the lactating, but for those
// that the stage is made for.
func (a Animal) misplaced(stage string, takes Circumstances) units.ErrorList {
	var faults units.ErrorList
	for _, r := range [...]struct {
		bit Circumstances
		to  string
	}{{Growing, "Growth"}, {Pregnant, "Gestation"}, {Lactating, "Lactation"}} {
		if a.Circumstances.Has(r.bit) && !takes.Has(r.bit) {
			faults = append(faults, refuse("circumstances", r.bit.String(), stage,
				"it needs more than maintenance: "+r.to+", or Prescribed with a veterinarian's figure"))
		}
	}
	return faults
}

// appendCautions appends what is to be said of the animal whatever the stage.
// Of the overweight nothing is said where the estimate sees to it.
func (a *Animal) appendCautions(c []advice.Caution, e *Estimate) []advice.Caution {
	add := func(l advice.Level, text string, s advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: s})
	}
	var losing, nursling bool
	const other = Growing | Pregnant | Lactating | Ill | TubeFed
	noPlan := a.Circumstances&other != 0 || 0 < a.Age && a.Age < fullyGrown || a.DaysUnfed > 0
	switch e.Stage.(type) {
	case WeightLoss:
		losing = true
	case Nursling:
		nursling = true
	case Growth, Gestation, Lactation, Refeeding:
		noPlan = true
	}
	switch nine, ok := a.Condition.Nine(); {
	case nursling, losing && nine > warnThin: // not scored, or planned for
	case !ok:
		add(advice.Note, "condition not scored: without it nobody can say whether this weight is right", ours)
	case nine <= gateCondition:
		add(advice.Refer, "very thin ("+a.Condition.String()+"): small meals, no free feeding, watch for weakness, dullness or seizures for the first 10 days; stop and call at once", sourceStarved)
	case nine <= warnThin:
		add(advice.Warn, "thin ("+a.Condition.String()+"): find the cause of the loss before feeding for gain", ours)
	case nine == warnFat-1 && e.Basis != Ideal:
		add(advice.Note, "above ideal ("+a.Condition.String()+"): the amount doesn't allow for it; watch the weight", ours)
	case nine >= warnFat:
		text := "overweight (" + a.Condition.String() + "): score again"
		if !noPlan {
			text += " and plan a weight loss on the ideal weight"
		}
		add(advice.Warn, text, ours)
	}
	if nine, ok := a.Condition.Nine(); ok && nine < warnFat-1 && 0 < a.Ideal && a.Ideal < a.Weight && !noPlan {
		add(advice.Warn, "the ideal weight, "+readable(a.Ideal)+", is below the current "+readable(a.Weight)+", but "+
			a.Condition.String()+" is not overweight: check both", ours)
	}
	if 0 < a.Weight && a.Weight < warnIdeal*a.Ideal {
		level := advice.Warn
		if emaciated(a.Weight, a.Ideal) {
			level = advice.Refer
		}
		add(level, readable(a.Weight)+" is far below the ideal weight, "+readable(a.Ideal)+": find the cause of the loss before feeding for gain", sourceStarved)
	}
	if a.Species == Ferret && !a.Condition.IsZero() {
		add(advice.Note, "condition scales are made for dogs and cats, and weight swings with the season in ferrets", ours)
	}
	switch d := strconv.Itoa(a.DaysUnfed); {
	case a.DaysUnfed >= gateUnfed:
		add(advice.Refer, "nothing eaten for "+d+" days: refeeding can kill; daily bloods and a veterinarian's ladder", sourceRefeed)
	case a.DaysUnfed >= 1 && a.Species == Cat:
		add(advice.Refer, "a cat that has eaten nothing for a day needs a veterinarian now: never fast a cat or wait it out", sourceCat24)
	case a.DaysUnfed >= 1 && a.Species == Ferret:
		add(advice.Refer, "a ferret that has eaten nothing for a day is an emergency", ours)
	case a.DaysUnfed >= 1 && a.Species == Other:
		add(advice.Refer, "a rabbit, a guinea pig or another small animal that has eaten nothing for a day is an emergency", ours)
	case a.DaysUnfed >= 2:
		add(advice.Refer, "nothing eaten for "+d+" days: a veterinarian must see the animal", ours)
	case a.DaysUnfed == 1:
		add(advice.Warn, "nothing eaten for a day: call the veterinarian", ours)
	}
	if !nursling && 0 < a.Age && a.Age <= maxNursling && (a.Species == Dog || a.Species == Cat) {
		c = append(c, chilled(a.Age))
	}
	if d := a.Circumstances & (TherapeuticDiet | diseases); d != 0 {
		add(advice.Refer, "food and amount only as the veterinarian orders ("+d.String()+")", ours)
	}
	return c
}

// weightUsed returns the weight to compute on: the smaller of the current and
// the recorded ideal weight, since AAHA 2021 feeds the thin and the ideal on
// their current weight and the fat on their ideal.
func (a Animal) weightUsed() (units.Mass, Basis) {
	if a.Ideal > 0 && a.Ideal < a.Weight {
		return a.Ideal, Ideal
	}
	return a.Weight, Current
}

// given returns the animal in one line, for the working.
func (a Animal) given() string {
	s := a.Species.String()
	if s == "" {
		s = "species not given"
	}
	var age, ideal, unfed string
	if a.Age > 0 {
		age = a.Age.String() + " old"
	}
	if a.Ideal > 0 {
		ideal = "ideal weight " + readable(a.Ideal)
	}
	if a.DaysUnfed > 0 {
		unfed = dayCount(Age(a.DaysUnfed)) + " unfed"
	}
	weight := "weight not given"
	if a.Weight > 0 {
		weight = readable(a.Weight)
	}
	condition := "condition not scored"
	if !a.Condition.IsZero() {
		condition = "condition " + a.Condition.String()
	}
	return join(s, weight, age, condition, ideal, unfed, a.Circumstances.String())
}
