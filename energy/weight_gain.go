package energy

import (
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// WeightGain is the energy on which a grown dog or cat that is too light, but
// neither starved nor ill, gains weight. No plan with figures was found in
// print: the factor is from memory and the share is ours, and every estimate
// says so.
//
//	FactorOnRER    1.5, the middle of 1.2 to 1.8, × 70 × kg^0.75 at the ideal
//	               weight, which must be recorded; the default
//	ShareOfIntake  Share of Intake; the default where Intake is given and no
//	               ideal weight is recorded
//
// A stray has no ideal weight on record: score it, weigh what it eats for some
// days and give that as Intake.
//
// An animal at 2/9 or 1/5 and less, at less than 70 % of its ideal weight, long
// unfed or ill gets no computed amount: it needs a veterinarian's figure. One
// that is growing, pregnant or lactating is refused, and so is one with nothing
// to gain: with a recorded ideal weight that is not above the current one, at
// 6/9 or 4/5 and more, or, where no ideal weight is recorded, with a score that
// is not below 5/9.
type WeightGain struct {
	Animal Animal        `json:"animal"`          // thin, grown and well; current weight
	Intake units.Energy  `json:"intake,omitzero"` // kcal a day eaten now; zero is not known
	Share  units.Percent `json:"share,omitzero"`  // of Intake, 105 to 150 %; zero is 110 %
	Method Method        `json:"method,omitzero"` // zero: the default above
}

// gainReweigh: ours, as for weight loss.
const gainReweigh = 2 * Week

// gainFactor is on the resting energy at ideal weight. It is in university
// teaching material of which no publication could be confirmed.
var gainFactor = coefficient{1.5, 1.2, 1.8, "weight gain, the middle of 1.2 to 1.8, no publication confirmed", sourceGain}

// Share of the present intake: ours.
const defaultGainShare units.Percent = 110

var (
	gainShares = units.Range[units.Percent]{Low: 105, High: 150}

	sourceGain     = advice.Source{Work: "factor tables in university teaching material", Seen: advice.Memory}
	sourceGainSlow = advice.Source{Work: "US Army Veterinary Services, leaflet", Seen: advice.Primary}
	sourceOldCat   = advice.Source{Work: sacn, Where: "p. 399", Seen: advice.Primary}
)

// oldCat is the age from which a thin cat is referred: ours.
const oldCat = 10 * Year

// Estimate returns the energy that weight is gained on.
func (s WeightGain) Estimate() (Estimate, error) {
	d := s.withDefaults()
	if faults := d.check(); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	a := s.Animal
	e := Estimate{Stage: s, Animal: a, Weight: a.Weight, Basis: Current, Method: d.Method, Reweigh: gainReweigh}
	if a.Ideal > 0 {
		e.Weight, e.Basis = a.Ideal, Ideal
	}
	if d.Method == ShareOfIntake {
		e.Daily = s.Intake * units.Energy(d.Share) / 100
		e.Low, e.High = e.Daily, e.Daily
		return e, nil
	}
	base := rer(e.Weight)
	e.Daily = units.Energy(gainFactor.value) * base
	e.Low, e.High = units.Energy(gainFactor.low)*base, units.Energy(gainFactor.high)*base
	return e, nil
}

// withDefaults returns s with what its zero method and share stand for.
func (s WeightGain) withDefaults() WeightGain {
	if s.Method == 0 {
		s.Method = FactorOnRER
		if s.Animal.Ideal == 0 && s.Intake != 0 {
			s.Method = ShareOfIntake
		}
	}
	if s.Method == ShareOfIntake && s.Share == 0 {
		s.Share = defaultGainShare
	}
	return s
}

func (s WeightGain) check() units.ErrorList {
	a := s.Animal
	faults := a.check(true)
	faults = append(faults, a.checkGrownWeight("weight gain is computed for dogs and cats: Prescribed takes a veterinarian's figure", Dog, Cat)...)
	if 0 < a.Age && a.Age < grown {
		faults = append(faults, refuse("age", a.Age.String(), "6 mo or more for weight gain", "Growth, or Prescribed with a veterinarian's figure"))
	}
	faults = append(faults, a.misplaced("an adult that is to gain weight", 0)...)
	if err := checkMethod(s.Method, FactorOnRER, ShareOfIntake); err != nil {
		faults = append(faults, err)
	}
	faults = append(faults, s.checkUnderweight()...)
	faults = append(faults, a.checkWell()...)
	if err := a.checkIntake(s.Intake, s.Method); err != nil {
		faults = append(faults, err)
	}
	if err := checkShare(s.Share, s.Method, gainShares); err != nil {
		faults = append(faults, err)
	}
	return faults
}

// checkUnderweight refuses an animal that has nothing to gain, or of which that
// can't be told.
func (s WeightGain) checkUnderweight() units.ErrorList {
	a := s.Animal
	var faults units.ErrorList
	nine, scored := a.Condition.Nine()
	valid := a.Condition.isValid()
	switch {
	case s.Method == FactorOnRER && a.Ideal == 0:
		faults = append(faults, refuse("ideal weight", "", "the weight on record, above the current one; without it, what is eaten now as intake", "not given"))
	case a.Ideal == 0 && !scored:
		faults = append(faults, refuse("condition", "", "3/9 to 4/9 or 2/5, or a recorded ideal weight", notScored))
	case a.Ideal == 0 && valid && nine == idealScore:
		faults = append(faults, refuse("condition", a.Condition.String(), "3/9 to 4/9 or 2/5 for weight gain", "not thin: Adult"))
	}
	if scored && valid && nine > idealScore {
		faults = append(faults, refuse("condition", a.Condition.String(), "at most 5/9 or 3/5 for weight gain", "overweight: WeightLoss"))
	}
	if 0 < a.Ideal && a.Ideal <= a.Weight {
		faults = append(faults, refuse("ideal weight", a.Ideal.String(), "above the current "+readable(atLeast(a.Weight))+" for weight gain", "nothing to gain: Adult"))
	}
	return faults
}

func (s WeightGain) explain(e Estimate, w *working) {
	if e.Method == ShareOfIntake {
		share := short(float64(s.withDefaults().Share))
		w.line("formula", share+" % of what is eaten now")
		w.line("", "= "+share+" / 100 × "+kcal1(s.Intake)+" = "+kcal1(e.Daily))
		w.source(ours)
		w.line("beside", "the resting energy at the "+e.Basis.words()+": "+kcal1(rer(e.Weight)))
		w.line("spread", "none: it is this animal's own intake, and as sure as that")
		return
	}
	explainRER(w, e.Weight)
	explainFactor(w, &gainFactor, rer(e.Weight))
	w.line("spread", "the range of the factor, "+short(gainFactor.low)+" to "+short(gainFactor.high))
}

func (s WeightGain) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	a := &e.Animal
	c = appendWeightWatch(c, a)
	if 0 < a.Age && a.Age < fullyGrown {
		add(advice.Warn, a.Age.String()+" old: while it grows, it may need more than this", ours)
	}
	if a.Species == Cat && a.Age >= oldCat {
		add(advice.Refer, "an old cat that has clearly lost weight or muscle must be examined at once", sourceOldCat)
	}
	if nine, scored := a.Condition.Nine(); !(scored && nine <= warnThin) && !(a.Weight < warnIdeal*a.Ideal) {
		// else said of the animal itself
		add(advice.Warn, "find the cause of the loss before feeding for gain", sourceGainSlow)
	}
	if e.Method == FactorOnRER {
		add(advice.Warn, "the factor for weight gain is from memory: no publication was found for it", sourceGain)
	} else {
		add(advice.Warn, "no share for weight gain is published: "+strconv.Itoa(int(defaultGainShare))+" % is a small first step", ours)
	}
	if s.Intake > 0 {
		if text := a.doubtIntake(s.Intake); text != "" {
			add(advice.Warn, text, ours)
		}
		if e.Daily <= s.Intake {
			add(advice.Refer, "it eats "+kcal(s.Intake)+" now, as much as would make it gain: a veterinarian must find out why it doesn't", ours)
		}
	}
	add(advice.Note, "measure what it eats now and raise it slowly to this amount; at the ideal weight go over to Adult", sourceGainSlow)
	return append(c, startingEstimate())
}
