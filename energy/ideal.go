package energy

import (
	"strconv"

	"example.org/bowlgram/units"
)

// Target is an ideal weight to plan on, and how sure it is. Every weight is
// unrounded. It is comparable with ==; the zero value is no target.
type Target struct {
	Weight units.Mass // the weight to plan on
	Low    units.Mass // by 15 % for each point above 5/9
	High   units.Mass // the larger of what PerPoint and BodyFat give
	Method Method     // RecordedIdeal, PerPoint or BodyFat

	// First is set where the score is the last of its scale, 9/9 or 5/5: how
	// much heavier the animal is can't be told from it. Weight is then a first
	// target; score the animal again when it is reached.
	First bool
}

// IdealWeight returns the weight that an animal should have. The method zero
// takes the best evidence there is (SACN 5th ed., Table 27-11): the recorded
// ideal weight, Animal.Ideal, which is what the animal weighed when it scored
// 5/9 or, less sure, at about one year of age; where none is recorded, the
// current weight and its score by PerPoint. With a pencil:
//
//	score        PerPoint        BodyFat                Low
//	6/9          weight / 1.10   weight × 75 / 80       weight / 1.15
//	7/9 or 4/5   weight / 1.20   weight × 70 / 80       weight / 1.30
//	8/9          weight / 1.30   weight × 65 / 80       weight / 1.45
//	9/9 or 5/5   weight / 1.40   weight × 60 / 80       weight / 1.60
//
// PerPoint divides: each point above 5/9 is about 10 % over the ideal weight,
// and 30 % over it is 1.30 times it. BodyFat keeps the lean mass and puts 20 %
// fat to it. High is the larger of the two, which is BodyFat for every score. A
// recorded ideal weight has no range, and neither has a score of 5/9, whose
// target is the current weight.
//
// The form that takes 10 or 15 % a point off the current weight (Vet Times
// 2015) is not offered: it is further off with every point.
//
// It is made for grown dogs and cats. A ferret is taken with a recorded ideal
// weight or a five-point score, by PerPoint with the figures of dogs and cats,
// since none are published for it. Refused are other species, a ferret's
// nine-point score, an animal that is growing (or under 6 months), pregnant or
// lactating, a missing score, which is never taken for 5/9, and a score below
// 5/9, for which the sources give no figures.
//
// To plan on another method than the default, record its result:
//
//	t, err := energy.IdealWeight(dog, energy.BodyFat)
//	dog.Ideal = t.Weight
func IdealWeight(a Animal, m Method) (Target, error) {
	faults := a.check(false)
	faults = append(faults, a.checkGrownWeight("no ideal weight is worked out for it: ask a veterinarian", Dog, Cat, Ferret)...)
	const grownOnly = "a grown animal, neither pregnant nor lactating"
	if 0 < a.Age && a.Age < grown {
		faults = append(faults, refuse("age", a.Age.String(), "6 mo or more for an ideal weight", "Growth takes the expected adult weight"))
	}
	for _, bit := range [...]Circumstances{Growing, Pregnant, Lactating} {
		if a.Circumstances.Has(bit) {
			faults = append(faults, refuse("circumstances", bit.String(), grownOnly, "its weight is not that of its condition alone"))
		}
	}
	if a.Ideal > 2*a.Weight && a.idealIsLikely() {
		// A score can't tell how thin an animal is that weighs less than half.
		faults = append(faults, refuse("ideal weight", a.Ideal.String(), "at most twice the current "+readable(atMost(a.Weight)), "pounds for kilograms?"))
	}
	m = a.idealMethod(m)
	faults = append(faults, a.checkIdeal(m)...)
	if len(faults) > 0 {
		return Target{}, faults.Err()
	}
	return a.target(m), nil
}

// idealMethod returns the method that zero stands for.
func (a Animal) idealMethod(m Method) Method {
	switch {
	case m != 0:
		return m
	case a.Ideal != 0:
		return RecordedIdeal
	}
	return PerPoint
}

// checkIdeal returns what an ideal weight by the method lacks.
func (a Animal) checkIdeal(m Method) units.ErrorList {
	accepted := []Method{RecordedIdeal, PerPoint, BodyFat}
	if a.Species == Ferret {
		accepted = accepted[:2]
	}
	if err := checkMethod(m, accepted...); err != nil {
		return units.ErrorList{err}
	}
	if m == RecordedIdeal {
		if a.Ideal == 0 {
			return units.ErrorList{refuse("ideal weight", "", "the weight on record", "not given")}
		}
		return nil
	}
	nine, scored := a.Condition.Nine()
	switch {
	case !scored:
		return units.ErrorList{refuse("condition", "", scoresAbove, notScored)}
	case !a.Condition.isValid():
		return nil // among the faults of check
	case a.Species == Ferret && a.Condition.scale == 9:
		return units.ErrorList{refuse("condition", a.Condition.String(), "3/5 to 5/5 for a ferret, or a recorded ideal weight",
			"the scale of nine is made for dogs and cats")}
	case nine < idealScore:
		return units.ErrorList{refuse("condition", a.Condition.String(), scoresAbove,
			"below the ideal score no percentage is published: record the ideal weight")}
	}
	return nil
}

const (
	scoresAbove = "5/9 to 9/9 or 3/5 to 5/5, or a recorded ideal weight"
	notScored   = "not given: score the animal, it is never taken for ideal"
)

// target returns the ideal weight of a checked animal.
func (a Animal) target(m Method) Target {
	if m == RecordedIdeal {
		return Target{Weight: a.Ideal, Low: a.Ideal, High: a.Ideal, Method: m}
	}
	nine, _ := a.Condition.Nine()
	byPoint, byFat := overIdeal(a.Weight, nine, perPoint), leanKept(a.Weight, nine)
	t := Target{
		Weight: byPoint, Low: overIdeal(a.Weight, nine, perPointHigh), High: max(byPoint, byFat),
		Method: m, First: nine == topScore,
	}
	if m == BodyFat {
		t.Weight = byFat
	}
	return t
}

// overIdeal returns the ideal weight of an animal that is so many percent over
// it for each point above 5/9.
func overIdeal(w units.Mass, nine, percent int) units.Mass {
	return w / (units.Mass(100+percent*(nine-idealScore)) / 100)
}

// leanKept returns the weight at which the animal's lean mass goes with the
// body fat of ideal condition.
func leanKept(w units.Mass, nine int) units.Mass {
	return w * (units.Mass(100-bodyFat[nine]) / (100 - idealFat))
}

// checkGrownWeight refuses a species that is not taken, a weight that no grown
// animal of the species has, and such an ideal weight.
func (a Animal) checkGrownWeight(hint string, takes ...Species) units.ErrorList {
	if err := a.checkSpecies(hint, takes...); err != nil || !a.Species.isValid() {
		if err == nil {
			return nil
		}
		return units.ErrorList{err}
	}
	var faults units.ErrorList
	if err := a.checkWeight(adults[:], anAdult); err != nil {
		faults = append(faults, err)
	}
	if b := adults[a.Species]; a.Ideal > 0 && !b.contains(a.Ideal) {
		faults = append(faults, refuse("ideal weight", a.Ideal.String(),
			b.low.String()+" to "+b.high.String()+" for an adult "+a.Species.String(), ""))
	}
	return faults
}

// explainTarget writes how the ideal weight of a weight loss came about.
func (a Animal) explainTarget(w *working, t Target) {
	nine, scored := a.Condition.Nine()
	if t.Method == RecordedIdeal {
		w.line("ideal", readable(t.Weight)+", as recorded")
		w.source(sourceIdealOrder)
		if scored && nine > idealScore {
			byScore := a.target(PerPoint)
			w.line("beside", "the score, "+a.Condition.String()+", would put it at "+readable(byScore.Weight)+
				" ("+readable(byScore.Low)+" to "+readable(byScore.High)+")")
			w.source(sourcePerPoint)
		}
		return
	}
	points := strconv.Itoa(nine-idealScore) + " points"
	if nine-idealScore == 1 {
		points = "1 point"
	}
	w.line("ideal", a.Condition.String()+" is "+points+" above 5/9, each about 10 % over the ideal weight: divide")
	w.line("", "= "+readable(a.Weight)+" / "+round(1+float64(perPoint*(nine-idealScore))/100, 2)+" = "+readable(t.Weight))
	w.source(sourcePerPoint)
	w.line("range", readable(t.Low)+" by 15 % a point to "+readable(t.High)+" by body fat, "+
		strconv.Itoa(bodyFat[nine])+" % now and "+strconv.Itoa(idealFat)+" % at ideal weight")
	w.source(sourcePerPoint15)
	w.source(sourceBodyFat)
}
