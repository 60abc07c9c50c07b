package energy

import (
	"fmt"
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Refeeding is the energy of one of the first days of feeding of a dog or a cat
// that did not eat: the step of a ladder, in percent of the resting energy
// requirement, 70 × kg^0.75, on the current weight. It is the current weight
// that SACN 5th ed., ch. 25, p. 471, takes, and the only source that says
// which; the healthy weight of a starved animal would give far more.
//
// No schedule that was seen is made for starvation, and those for hospital
// patients start at 25, at 33 to 50, or at 100 %. So there is no default
// ladder. For a starved animal (2/9, 1/5 or less; 5 days or more without food;
// below 70 % of its recorded ideal weight) the named ladders are refused with a
// *VeterinarianError, and only the veterinarian's own is taken; for any other
// animal a named one needs a condition score, since without it nobody can tell.
// By is the name of the veterinarian who set or confirmed the ladder.
//
// Day 1 is the first day of feeding; a day past the last step stays on it.
// Animal.DaysUnfed is what went before. Ill and tube-fed animals are taken. An
// animal of 4 weeks or less is refused (ours): see Nursling. Low and High are
// equal to the step, and the animal is weighed again after a day.
type Refeeding struct {
	Animal Animal `json:"animal"`          // at its current weight, with its score for a named ladder
	Ladder Ladder `json:"ladder,omitzero"` // required: there is no default
	Day    int    `json:"day"`             // 1 or more
	By     string `json:"by"`              // the veterinarian who set or confirmed the ladder, on one line; required
}

const (
	refeedingReweigh = Day

	// Danger runs from 24 h to 10 days after feeding starts: Côté 2020,
	// p. 871.e3; bloods for 5 to 7 days: Koret.
	refeedingDanger = 10
	refeedingBloods = 7

	// highFirst is the highest first step of a published step-up schedule, in
	// percent: DiBartola 2012, Box 26-6, p. 640. Used as a limit: ours.
	highFirst = 50
)

// Estimate returns the energy of the day.
func (s Refeeding) Estimate() (Estimate, error) {
	if faults := s.check(); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	w := s.Animal.Weight
	daily := units.Energy(s.Ladder.step(s.Day).Fraction()) * rer(w)
	return Estimate{
		Stage: s, Animal: s.Animal, Weight: w, Basis: Current, Method: PercentOfRER,
		Daily: daily, Low: daily, High: daily, Reweigh: refeedingReweigh,
	}, nil
}

func (s Refeeding) check() units.ErrorList {
	a := s.Animal
	faults := a.check(false)
	if err := a.checkSpecies("no resting-energy equation is published for it: Prescribed takes a veterinarian's figure", Dog, Cat); err != nil {
		faults = append(faults, err)
	} else if a.Species.isValid() {
		if err := a.checkWeight(anyStage[:], ""); err != nil {
			faults = append(faults, err)
		}
	}
	if 0 < a.Age && a.Age <= 4*Week {
		faults = append(faults, refuse("age", a.Age.String(), "more than 4 wk for refeeding",
			"milk is fed by age and weight: Nursling, or Prescribed with a veterinarian's figure"))
	}
	if a.Age == 0 && 0 < a.Weight && (a.Species == Dog || a.Species == Cat) && a.Weight < adults[a.Species].low {
		faults = append(faults, refuse("age", "", "an age, for an animal lighter than an adult", "milk is fed by age and weight: Nursling"))
	}
	switch {
	case s.Ladder.IsZero():
		faults = append(faults, refuse("ladder", "", ladderForms, "not given"))
	case !s.Ladder.own() && a.Condition.IsZero():
		faults = append(faults, refuse("condition", "", conditionForms+", for the ladder "+s.Ladder.String(),
			"not given; a starved animal is fed by the veterinarian's own ladder only"))
	}
	if !s.Ladder.own() {
		faults = append(faults, a.starved()...)
	}
	if s.Day < 1 {
		faults = append(faults, refuse("day", strconv.Itoa(s.Day), "1 or more, counted from the first day of feeding", ""))
	}
	if err := checkBy(s.By, "ladder"); err != nil {
		faults = append(faults, err)
	}
	return faults
}

// starved returns the gates of the starved that the animal is behind, each of
// which a veterinarian's own ladder lifts. An ill or a tube-fed animal need not
// be starved.
func (a Animal) starved() units.ErrorList {
	a.Circumstances &^= Ill | TubeFed
	var faults units.ErrorList
	for _, err := range a.check(true) {
		if gate, ok := err.(*VeterinarianError); ok {
			gate.Need = `the veterinarian's own ladder, as in "25/25/50/75/100 %", with the name: Refeeding{Ladder, By}`
			faults = append(faults, gate)
		}
	}
	return faults
}

func (s Refeeding) explain(e Estimate, w *working) {
	w.source(sourceAssisted)
	explainRER(w, e.Weight)
	l := s.Ladder
	steps := make([]string, 0, maxSteps)
	for _, p := range l.Steps() {
		steps = append(steps, short(float64(p)))
	}
	text := strings.Join(steps, ", ") + " % of resting energy, "
	if l.own() {
		w.line("ladder", text+"set by "+s.By)
	} else {
		w.line("ladder", l.name()+": "+text+"confirmed by "+s.By)
		w.source(schedules[l.schedule].source)
	}
	day := "day " + strconv.Itoa(s.Day) + ": "
	if s.Day > l.Len() {
		day = "day " + strconv.Itoa(s.Day) + ", past the last step, stays on it: "
	}
	w.line("step", day+short(float64(l.step(s.Day)))+" % of "+kcal1(rer(e.Weight))+" = "+kcal1(e.Daily))
	if !l.own() {
		w.line("beside", "other first days in print, of resting energy: 25 % (DVM Newsmagazine), 1/3 to 1/2 (DiBartola), 100 % (SACN)")
	}
	if ideal := e.Animal.Ideal; ideal > 0 && ideal != e.Weight {
		other := rer(ideal)
		w.line("beside", fmt.Sprintf("on the ideal weight, %s, resting energy would be %s (%+.0f %%): not used",
			readable(ideal), kcal1(other), 100*float64(other/rer(e.Weight)-1)))
	}
}

// The sources of what is said beside a step.
var (
	sourceWindow   = advice.Source{Work: "Cohn, Côté (eds), Côté's Clinical Veterinary Advisor, 4th ed., 2020", Where: "Refeeding Syndrome, p. 871.e3", Seen: advice.Primary}
	sourceGlucose  = advice.Source{Work: "Cook and others 2021, J Feline Med Surg 23:883-891", Where: "abstract", Seen: advice.Primary}
	sourceCritical = advice.Source{Work: "a textbook chapter on feeding in critical care, title not noted", Seen: advice.Secondary}
)

func (s Refeeding) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	a, l := &e.Animal, s.Ladder
	add(advice.Refer, "weakness, wobbling, dullness, seizures or collapse: stop feeding and go to the veterinarian at once", sourceRefeed)
	day := "day " + strconv.Itoa(s.Day)
	if s.Day <= refeedingDanger {
		add(advice.Refer, "too much food too soon can kill: the danger runs from 24 hours to 10 days after feeding starts, and this is "+day+
			"; no more than the step, no free feeding, no feeding for gain", sourceWindow)
	}
	if s.Day <= refeedingBloods {
		add(advice.Refer, "blood salts (phosphorus, potassium and magnesium) at least once a day for the first 5 to 7 days, as the veterinarian orders", sourceRefeed)
		sugar := "blood sugar with them: of 11 starved cats 10 had it high and 7 low"
		if a.Species == Dog {
			sugar = "measure blood sugar too: it swings high and low in refeeding, as seen in cats"
		}
		add(advice.Refer, sugar, sourceGlucose)
	}
	if first := l.step(1); first > highFirst && len(a.starved()) > 0 {
		add(advice.Refer, "check the ladder: it starts at "+short(float64(first))+" % of resting energy, and step-up schedules in print at 25 to 50 %", schedules[threeDay].source)
	}
	growing := a.Circumstances.Has(Growing) || 0 < a.Age && a.Age < grown
	if !growing {
		c = appendWeightWatch(c, a)
	}
	if growing || a.Circumstances&(Pregnant|Lactating) != 0 {
		add(advice.Refer, "growing, pregnant or lactating: refeeding is more dangerous, and resting energy is far below the need; the veterinarian sets what follows", ours)
	}
	add(advice.Warn, "feed only once fluids and blood salts are put right", sourceCritical)
	add(advice.Warn, "4 to 6 meals a day, one every 4 to 6 hours", schedules[threeDay].source)
	if !l.own() {
		add(advice.Warn, l.name()+" is a hospital schedule, and none in print is made for starvation: ask "+s.By+" if the animal may have starved", ours)
	}
	if s.Day > l.Len() {
		add(advice.Warn, "the ladder ended on day "+strconv.Itoa(l.Len())+", and its last step is no ration to stay on: "+s.By+" sets what follows", ours)
	}
	add(advice.Note, "weigh every day; only "+s.By+" changes a step", ours)
	return c
}
