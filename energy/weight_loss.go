package energy

import (
	"math"
	"strconv"

	"example.org/bowlgram/units"
)

// WeightLoss is the energy on which an overweight dog or cat loses weight. It
// is computed on the unrounded ideal weight that IdealWeight gives by default:
// the recorded one, else that of the score.
//
//	FactorOnRER         1.0 (dog) or 0.8 (cat) × 70 × kg^0.75; the default
//	RERPower            1.0 × 70 × kg^0.75 in both
//	RERLinear           1.0 (dog) or 0.8 (cat) × (30 × kg + 70), 2 to 45 kg
//	ShareOfMaintenance  60 % of the factor of Adult × 70 × kg^0.75; dogs only
//	ShareOfIntake       Share of Intake
//	Deficit             the factor of Adult on the resting energy at the current
//	                    weight, less 7,920 kcal for each kg of tissue to be lost
//
// The sources disagree most in cats: SACN starts them at 1.0, AAHA and the
// client sheet at 0.8, and the cats that did lose weight ate about 0.7. Most
// starting figures are generous; what another source gives stands beside them in
// the working.
//
// ShareOfMaintenance and Deficit need a Status; the others don't look at it.
// ShareOfIntake needs Intake, and so does the caution against raising what an
// animal eats now: give it where it is known. Share and Rate are refused with any
// other method than their own.
//
// An animal that is growing, pregnant, lactating or ill needs a veterinarian's
// figure, and so does an amount below 0.6 times the resting energy at ideal
// weight (ours). One that is not overweight is refused.
type WeightLoss struct {
	Animal Animal        `json:"animal"`          // overweight, with a score or a recorded ideal weight
	Status Status        `json:"status,omitzero"` // for ShareOfMaintenance and Deficit; others don't look at it
	Intake units.Energy  `json:"intake,omitzero"` // kcal a day eaten now; zero is not known
	Share  units.Percent `json:"share,omitzero"`  // of Intake, 50 to 120 %; zero is 80 %
	Rate   units.Percent `json:"rate,omitzero"`   // of the weight, a week; zero is 1 % (dog) or 0.75 % (cat)
	Method Method        `json:"method,omitzero"` // zero: FactorOnRER
}

// lossReweigh: SACN 5th ed., Box 27-12, p. 532: every two weeks at first.
const lossReweigh = 2 * Week

// Share of the resting energy at ideal weight below which an amount is
// cautioned in a cat, and refused in both: ours.
const (
	lossWarn = 0.8
	lossGate = 0.6
)

// halfEaten of its plan, and less, is danger for a cat: SACN 5th ed. p. 529.
const halfEaten = 0.5

// Estimate returns the energy that weight is lost on.
func (s WeightLoss) Estimate() (Estimate, error) {
	d := s.withDefaults()
	if faults := d.check(); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	a := s.Animal
	e := Estimate{
		Stage: s, Animal: a, Weight: a.target(a.idealMethod(0)).Weight, Basis: Ideal,
		Method: d.Method, Reweigh: lossReweigh,
	}
	atIdeal := rer(e.Weight)
	switch d.Method {
	case FactorOnRER:
		e.Daily = units.Energy(lossFactors[a.Species].value) * atIdeal
	case RERPower:
		e.Daily = atIdeal
	case RERLinear:
		if e.Weight < linearLow || linearHigh < e.Weight {
			value := a.Ideal.String()
			if a.Ideal == 0 {
				value = readable(e.Weight) // worked out, not typed
			}
			return Estimate{}, refuse("ideal weight", value, "2 kg to 45 kg for method rer_linear", "factor_on_rer takes any weight")
		}
		e.Daily = units.Energy(linearFactors[a.Species].value) * rerLinear(e.Weight)
	case ShareOfMaintenance:
		e.Daily = lossShare * s.maintenance(e.Weight)
	case ShareOfIntake:
		e.Daily = s.Intake * units.Energy(d.Share) / 100
	case Deficit:
		e.Weight, e.Basis = a.Weight, Current
		e.Daily = s.maintenance(a.Weight) - d.deficit()
	}
	if e.Daily < lossGate*atIdeal {
		return Estimate{}, &VeterinarianError{
			Field: "daily energy", Value: kcal1(e.Daily),
			Reason: "under " + kcal(atLeast(lossGate*atIdeal)) + ", which is 0.6 of the resting energy at ideal weight (" + kcal1(atIdeal) + "): too little food to lose weight on safely, or an input is wrong",
			Need:   needDaily,
		}
	}
	if 0 < s.Intake && a.Species == Cat && s.Intake < halfEaten*e.Daily {
		return Estimate{}, &VeterinarianError{
			Field: "intake", Value: s.Intake.String(),
			Reason: "a cat that eats less than half of its plan, " + kcal(e.Daily) + ", is in danger and on no diet: give the old food back and call a veterinarian",
			Need:   needDaily,
		}
	}
	e.Low, e.High = spread(a.Species, e.Daily)
	if d.Method == ShareOfIntake {
		e.Low, e.High = e.Daily, e.Daily
	}
	return e, nil
}

// withDefaults returns s with what its zero method, share and rate stand for.
func (s WeightLoss) withDefaults() WeightLoss {
	if s.Method == 0 {
		s.Method = FactorOnRER
	}
	if s.Method == ShareOfIntake && s.Share == 0 {
		s.Share = defaultLossShare
	}
	if s.Method == Deficit && s.Rate == 0 {
		s.Rate = defaultRateDog
		if s.Animal.Species == Cat {
			s.Rate = defaultRateCat
		}
	}
	return s
}

// maintenance returns what Adult gives by default to a dog or a cat of the
// weight. The conversion keeps the product from being fused with the deficit.
func (s WeightLoss) maintenance(w units.Mass) units.Energy {
	return units.Energy(float64(s.adultFactor().value * float64(rer(w))))
}

func (s WeightLoss) adultFactor() *coefficient {
	return Adult{Animal: s.Animal, Status: s.Status}.coefficient(FactorOnRER)
}

// deficit returns the energy a day of the tissue that is lost.
func (s WeightLoss) deficit() units.Energy {
	kgPerWeek := s.Animal.Weight.Kilograms() * s.Rate.Fraction()
	return units.Energy(adiposeEnergy * kgPerWeek / 7)
}

func (s WeightLoss) check() units.ErrorList {
	a := s.Animal
	faults := a.check(true)
	faults = append(faults, a.checkGrownWeight("weight loss is computed for dogs and cats: no strict cut for any other without a veterinarian, Prescribed", Dog, Cat)...)
	faults = append(faults, a.checkNotNeeded()...)
	faults = append(faults, a.checkWell()...)
	faults = append(faults, a.checkOverweight()...)
	methods := []Method{FactorOnRER, RERPower, RERLinear, ShareOfMaintenance, ShareOfIntake, Deficit}
	if err := checkMethod(s.Method, methods...); err != nil {
		faults = append(faults, err)
	}
	if s.Method == ShareOfMaintenance && a.Species == Cat {
		faults = append(faults, refuse("method", s.Method.String(), "any other for a cat", "the 60 % are published for dogs"))
	}
	switch needed := s.Method == ShareOfMaintenance || s.Method == Deficit; {
	case s.Status > Unknown:
		faults = append(faults, refuse("status", strconv.Itoa(int(s.Status)), enumStatus, ""))
	case needed && s.Status == 0:
		faults = append(faults, refuse("status", "", enumStatus+", for method "+s.Method.String(), "not given"))
	}
	if err := a.checkIntake(s.Intake, s.Method); err != nil {
		faults = append(faults, err)
	}
	if err := checkShare(s.Share, s.Method, lossShares); err != nil {
		faults = append(faults, err)
	}
	if err := s.checkRate(); err != nil {
		faults = append(faults, err)
	}
	return faults
}

// checkNotNeeded refuses those whose body needs what a weight loss would take:
// only a veterinarian may decide that it is lost all the same.
func (a Animal) checkNotNeeded() units.ErrorList {
	const reason = "growth, pregnancy and lactation need more than maintenance: no weight loss without a veterinarian"
	var faults units.ErrorList
	if 0 < a.Age && a.Age < grown {
		faults = append(faults, &VeterinarianError{Field: "age", Value: a.Age.String(), Reason: reason, Need: needDaily})
	}
	for _, bit := range [...]Circumstances{Growing, Pregnant, Lactating} {
		if a.Circumstances.Has(bit) {
			faults = append(faults, &VeterinarianError{Field: "circumstances", Value: bit.String(), Reason: reason, Need: needDaily})
		}
	}
	return faults
}

// checkOverweight refuses an animal that has nothing to lose, or of which that
// can't be told. A score that is out of range or very thin is among the faults
// of check.
func (a Animal) checkOverweight() units.ErrorList {
	const notOverweight = "not overweight: Adult, or WeightGain"
	var faults units.ErrorList
	nine, scored := a.Condition.Nine()
	known := scored && a.Condition.isValid() && nine > gateCondition
	switch {
	case a.Ideal == 0 && !scored:
		faults = append(faults, refuse("condition", "", "6/9 to 9/9 or 4/5 to 5/5, or a recorded ideal weight", notScored))
	case a.Ideal == 0 && known && nine <= idealScore:
		faults = append(faults, refuse("condition", a.Condition.String(), "6/9 to 9/9 or 4/5 to 5/5 for weight loss", notOverweight))
	case a.Ideal != 0 && known && nine < idealScore:
		faults = append(faults, refuse("condition", a.Condition.String(), "5/9 or 3/5 and more for weight loss", notOverweight))
	}
	if 0 < a.Weight && a.Weight <= a.Ideal {
		faults = append(faults, refuse("ideal weight", a.Ideal.String(), "below the current "+readable(atMost(a.Weight))+" for weight loss", notOverweight))
	}
	return faults
}

// checkRate refuses a rate of loss that is not safe or useful.
func (s WeightLoss) checkRate() error {
	switch rate := s.Rate; {
	case s.Method != Deficit && rate == 0:
		return nil
	case s.Method != Deficit:
		return refuse("rate", rate.String(), "none: only method deficit takes one", "Goal gives the safe rate")
	case s.Animal.Species == Cat && rateCat.High < rate && rate <= rateDog.High:
		return &VeterinarianError{
			Field: "rate", Value: rate.String(), Reason: "above 1 % a week a cat's liver is in danger", Need: needDaily,
		}
	case !(rateDog.Low <= rate && rate <= rateDog.High):
		accepted := "0.5 % to 2 % of the weight a week"
		if s.Animal.Species == Cat {
			accepted = "0.5 % to 1 % of the weight a week"
		}
		return refuse("rate", rate.String(), accepted, asFraction(rate, rateDog))
	}
	return nil
}

// checkWell refuses those that a plan would harm: a sick animal, and one that
// has stopped eating.
func (a Animal) checkWell() units.ErrorList {
	var faults units.ErrorList
	for _, bit := range [...]Circumstances{Diabetic, UrinaryDisease, Pancreatitis, KidneyDisease, LiverDisease} {
		if a.Circumstances.Has(bit) {
			faults = append(faults, &VeterinarianError{
				Field: "circumstances", Value: bit.String(), Reason: "in illness a change of weight is the veterinarian's to plan", Need: needDaily,
			})
		}
	}
	if a.DaysUnfed < gateUnfed && (a.DaysUnfed >= 2 || a.DaysUnfed == 1 && a.Species == Cat) {
		faults = append(faults, &VeterinarianError{
			Field: "days unfed", Value: strconv.Itoa(a.DaysUnfed), Reason: "an animal that does not eat is put on no plan: find the cause first", Need: needDaily,
		})
	}
	return faults
}

// checkIntake refuses an intake that no animal has, and one missing where the
// method needs it.
func (a Animal) checkIntake(intake units.Energy, m Method) error {
	const accepted = "more than 0 kcal and at most 50000 kcal a day"
	switch {
	case m == ShareOfIntake && intake == 0:
		return refuse("intake", "", accepted+", for method share_of_intake", "not given")
	case !(0 <= intake && intake <= maxDaily) || math.Signbit(float64(intake)):
		return refuse("intake", intake.String(), accepted, "")
	}
	if usual, what, ok := a.usual(); ok && intake > absurdHigh*usual.High {
		return refuse("intake", intake.String(), "at most "+kcal(atMost(absurdHigh*usual.High))+" a day, far above "+what, slips(intake, usual))
	}
	return a.checkEaten(intake)
}

// checkEaten refuses a dog or a cat that eats so little that a veterinarian must
// see it: ours. An intake of zero is not known.
func (a Animal) checkEaten(intake units.Energy) error {
	if !(intake > 0) || a.Species != Dog && a.Species != Cat || !adults[a.Species].contains(a.Weight) {
		return nil
	}
	w, _ := a.weightUsed()
	if nine, scored := a.Condition.Nine(); scored && a.Condition.isValid() && nine > idealScore && w == a.Weight {
		w = a.target(PerPoint).Weight
	}
	if least := lossGate * rer(w); intake < least {
		return &VeterinarianError{
			Field: "intake", Value: intake.String(),
			Reason: "under " + kcal(atLeast(least)) + ", which is 0.6 of the resting energy (" + kcal(rer(w)) + "): an animal that eats so little must be seen, or the intake is wrong",
			Need:   needDaily,
		}
	}
	return nil
}

// checkShare refuses a share of the intake outside r, and one that the method
// has no use for.
func checkShare(share units.Percent, m Method, r units.Range[units.Percent]) error {
	switch {
	case m != ShareOfIntake && share == 0:
		return nil
	case m != ShareOfIntake:
		return refuse("share", share.String(), "none: only method share_of_intake takes one", "")
	case !r.Contains(share):
		return refuse("share", share.String(), r.Low.String()+" to "+r.High.String()+" of the intake", asFraction(share, r))
	}
	return nil
}

// asFraction returns the hint at a fraction that was typed as a percentage.
func asFraction(p units.Percent, r units.Range[units.Percent]) string {
	if r.Contains(p * 100) {
		return "a fraction? " + short(float64(p)) + " is " + short(float64(p*100)) + " %"
	}
	return ""
}
