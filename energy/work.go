package energy

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Work is the energy of a grown dog on a day of work: running, herding,
// hunting, pulling. No equation is published for other animals, which are
// refused. What is done is given either as an Exercise or as a Distance.
//
// An Exercise takes, by default, a published factor on the resting energy
// requirement. It stands for the whole day, whatever the Status:
//
//	light      2
//	moderate   3
//	heavy      6    (the middle of 4 to 8)
//
// A Distance is added to the maintenance of the dog, the factor of Adult on the
// resting energy requirement, which needs a Status. That factor holds a pet's
// usual walks, so that Distance is what comes on top of them in a day:
//
//	PerDistance  1 kcal × kg × km (ours, between the published 0.7 and 1.1); the default
//	TwoTerm      kg × (1.77 × km × kg^-0.40 + 1.25 × hours × kg^-0.25) kcal
//
// TwoTerm is the running equation of SACN, Table 18-6, and needs Minutes; that
// its second term is by the hour is our reading. In dogs above some 15 kg it gives
// less than the measured cost of running, which a caution says where it does.
//
// The weight used is that of Adult: the recorded ideal weight where that is
// below the current weight, else the current one. Low and High of PerDistance
// are those of the maintenance and of the cost together. Whatever the weather,
// nothing is added for cold: sources differ by far too much.
//
// Refused are what Adult refuses in a dog; a distance below 100 m and a speed
// above 70 km/h (ours); a day above 15 times the resting energy, the most that was
// measured, in a sled race; and an Exercise, Distance or Minutes that the method
// has no use for.
type Work struct {
	Animal   Animal       `json:"animal"`            // a grown dog
	Status   Status       `json:"status,omitzero"`   // required with a Distance
	Exercise Exercise     `json:"exercise,omitzero"` // zero: a Distance is given
	Distance units.Length `json:"distance,omitzero"` // a day, 100 m or more; zero: an Exercise is given
	Minutes  int          `json:"minutes,omitzero"`  // a day, for that distance, to 1440; for TwoTerm only
	Method   Method       `json:"method,omitzero"`   // FactorOnRER with an Exercise, PerDistance with a Distance
}

// Limits of a day's work: ours, but for workMost.
const (
	workShortest = 100 * units.Metre
	workFastest  = 70   // km/h; a greyhound runs some 65, from memory
	workHeavy    = 8    // times the resting energy: the high end of heavy exercise
	workMost     = 15   // times the resting energy: SACN 5th ed. p. 259, "almost 15"
	dayMinutes   = 1440 // in a day
)

// workReweigh: ours, the short end for adults.
const workReweigh = 2 * Week

const enumExercise = "light, moderate or heavy"

// Estimate returns the energy of a day with this work.
func (s Work) Estimate() (Estimate, error) {
	method := s.method()
	if faults := s.check(method); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	a := s.Animal
	w, basis := a.weightUsed()
	e := Estimate{Stage: s, Animal: a, Weight: w, Basis: basis, Method: method, Reweigh: workReweigh}
	if method == FactorOnRER {
		c := &exerciseFactors[s.Exercise]
		e.Daily = units.Energy(c.value) * rer(w)
		e.Low, e.High = c.spread(a.Species, rer(w), e.Daily)
		return e, nil
	}
	rest := s.rest()
	e.Daily = rest.Daily + s.cost(method, w)
	e.Low, e.High = spread(a.Species, e.Daily)
	if method == PerDistance {
		e.Low = rest.Low + perDistance(runningCost.low, w, s.Distance)
		e.High = rest.High + perDistance(runningCost.high, w, s.Distance)
	}
	if most := workMost * rer(w); e.Daily > most {
		return Estimate{}, refuse("distance", s.Distance.String(),
			"a day of at most 15 times the resting energy, "+kcal(atMost(most))+": this one is "+kcal(atLeast(e.Daily)),
			"metres for kilometres? then it is "+short(s.Distance.Kilometres()/1000)+" km")
	}
	return e, nil
}

// method returns the method asked for, or the default for what is given, or
// zero where nothing is.
func (s Work) method() Method {
	switch {
	case s.Method != 0:
		return s.Method
	case s.Exercise != 0:
		return FactorOnRER
	case s.Distance != 0:
		return PerDistance
	}
	return 0
}

// maintenance is the dog on a day without the work.
func (s Work) maintenance() Adult {
	return Adult{Animal: s.Animal, Status: s.Status, Method: FactorOnRER}
}

// rest estimates that day. A dog that check takes has an estimate.
func (s Work) rest() Estimate {
	e, _ := s.maintenance().Estimate()
	return e
}

func (s Work) hours() float64 { return float64(s.Minutes) / 60 }

// cost returns what the distance adds to the maintenance.
func (s Work) cost(method Method, w units.Mass) units.Energy {
	if method == TwoTerm {
		return twoTerm(w, s.Distance, s.hours())
	}
	return perDistance(runningCost.value, w, s.Distance)
}

func (s Work) check(method Method) units.ErrorList {
	byDistance := method == PerDistance || method == TwoTerm
	faults := s.checkDog(byDistance)
	add := func(field, value, accepted, hint string) {
		faults = append(faults, refuse(field, value, accepted, hint))
	}
	unused := func(field, value, hint string) { add(field, value, "none for method "+method.given(), hint) }

	switch {
	case s.Exercise > HeavyExercise:
		add("exercise", strconv.Itoa(int(s.Exercise)), enumExercise, "")
	case method == 0:
		add("exercise", "", enumExercise+", or a distance", "not given")
	case method == FactorOnRER && s.Exercise == 0:
		add("exercise", "", enumExercise, "not given")
	case byDistance && s.Exercise != 0:
		unused("exercise", s.Exercise.String(), "the distance says what is done: give one of the two")
	}

	const far = "100 m or more a day"
	switch d := s.Distance; {
	case d != 0 && (!(d >= workShortest) || math.IsInf(float64(d), 0)):
		hint := ""
		if typed := strconv.FormatFloat(d.Metres(), 'f', -1, 64); d < workShortest && d*1000 >= workShortest {
			hint = typed + " km, or " + typed + " mi?"
		}
		add("distance", d.String(), far, hint)
	case byDistance && d == 0:
		add("distance", "", far, "not given")
	case method == FactorOnRER && d != 0:
		unused("distance", d.String(), "the exercise says what is done: give one of the two")
	}

	switch fastest := s.Distance.Kilometres() / workFastest * 60; {
	case s.Minutes < 0 || s.Minutes > dayMinutes:
		add("minutes", strconv.Itoa(s.Minutes), "1 to 1440 a day", "")
	case method == TwoTerm && s.Minutes == 0:
		add("minutes", "", "1 to 1440 a day", "not given")
	case method == TwoTerm && float64(s.Minutes) < fastest && fastest <= dayMinutes:
		add("minutes", strconv.Itoa(s.Minutes), round(math.Ceil(fastest), 0)+" or more for "+s.Distance.String()+": no dog runs faster than 70 km/h", "hours for minutes?")
	case (method == PerDistance || method == FactorOnRER) && s.Minutes != 0:
		unused("minutes", strconv.Itoa(s.Minutes), "two_term takes them, with a distance")
	}

	if method != 0 {
		if err := checkMethod(method, FactorOnRER, PerDistance, TwoTerm); err != nil {
			faults = append(faults, err)
		}
	}
	return faults
}

// checkDog holds a dog to all that Adult asks of one, but for the status where
// no maintenance is computed. In another animal the limits of a dog mean nothing.
func (s Work) checkDog(withStatus bool) units.ErrorList {
	a := s.Animal
	if a.Species == Dog {
		m := s.maintenance()
		if !withStatus && m.Status == 0 {
			m.Status = Unknown
		}
		return m.check(FactorOnRER)
	}
	faults := a.check(true)
	if err := a.checkSpecies("work is published for dogs only: Adult for a cat or a ferret, Prescribed for any animal", Dog); err != nil {
		faults = append(faults, err)
	}
	return faults
}

func (s Work) explain(e Estimate, w *working) {
	if e.Method == FactorOnRER {
		c := &exerciseFactors[s.Exercise]
		explainRER(w, e.Weight)
		w.line("factor", short(c.value)+" ("+c.label+"), for the whole day")
		w.source(c.source)
		w.line("", short(c.value)+" × "+kcal1(rer(e.Weight))+" = "+kcal1(e.Daily))
		c.explainSpread(w, e.Animal.Species)
		return
	}
	rest := s.rest()
	s.maintenance().explain(rest, w)
	cost := s.cost(e.Method, e.Weight)
	kg, km := short(e.Weight.Kilograms()), short(s.Distance.Kilometres())
	together := func() { w.line("together", kcal1(rest.Daily)+" + "+kcal1(cost)+" = "+kcal1(e.Daily)) }
	if e.Method == TwoTerm {
		s.explainTwoTerm(e, w)
		together()
		w.line("spread", "that of the maintenance, taken for the work too")
		w.line("beside", "1 × kg × km would add "+kcal1(perDistance(runningCost.value, e.Weight, s.Distance)))
		w.source(runningCost.source)
		return
	}
	c := &runningCost
	w.line("work", short(c.value)+" × kg × km")
	w.line("", "= "+short(c.value)+" × "+kg+" × "+km+" = "+kcal1(cost))
	w.source(c.source)
	together()
	w.line("spread", "that of the maintenance, and "+short(c.low)+" to "+short(c.high)+" "+c.label+" of the work")
}

// explainTwoTerm writes the work as it is done by hand.
func (s Work) explainTwoTerm(e Estimate, w *working) {
	kg := e.Weight.Kilograms()
	w.line("work", "kg × (1.77 × km × kg^-0.40 + 1.25 × hours × kg^-0.25)")
	w.line("", "= "+short(kg)+" × (1.77 × "+short(s.Distance.Kilometres())+" × "+round(math.Pow(kg, twoTermDistanceExponent), 4)+
		" + 1.25 × "+short(s.hours())+" × "+round(math.Pow(kg, twoTermHourExponent), 4)+") = "+kcal1(s.cost(TwoTerm, e.Weight)))
	w.source(sourceTwoTerm)
	w.line("", "the hours are our reading: the equation is printed without them, for a table of 1 km")
}

func (s Work) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, s advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: s})
	}
	if e.Daily > workHeavy*rer(e.Weight) {
		add(advice.Refer, round(float64(e.Daily/rer(e.Weight)), 1)+" times the resting energy, beyond heavy exercise (4 to 8 times): only sled dogs in a race were measured to need so much; check the distance, and let a veterinarian set the amount", sourceMostWork)
	}
	if e.Method == FactorOnRER && s.Exercise == HeavyExercise {
		add(advice.Warn, "heavy exercise is published as "+kcal(e.Low)+" to "+kcal(e.High)+", a twofold range: weigh the dog every week until its amount is known", exerciseFactors[HeavyExercise].source)
	}
	adult := Adult{Animal: s.Animal} // of which the status was not used
	if e.Method == FactorOnRER {
		add(advice.Note, "for a day of this work only: on a day of rest feed the maintenance, by Adult", ours)
	} else {
		adult = s.maintenance()
		cost := s.cost(e.Method, e.Weight)
		add(advice.Note, "the maintenance, "+kcal(e.Daily-cost)+", holds a pet's usual walks: count only the distance beyond them, and on a day of rest feed the maintenance", ours)
		if low := perDistance(runningCost.low, e.Weight, s.Distance); cost < low {
			add(advice.Warn, "this equation adds "+kcal(cost)+" for the work where the measured cost of running gives "+
				kcal(low)+" or more: watch for loss of weight", sourceBryce)
		}
	}
	add(advice.Note, "nothing is added for cold: what is published for dogs outdoors in winter goes from little to 90 %, so let the weight decide", sourceCold)
	return adult.appendCautions(c, e)
}
