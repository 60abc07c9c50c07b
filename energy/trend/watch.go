package trend

import (
	"cmp"
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Watch is what is looked through for flags. Only Animal.Species and Today are
// needed; what is not given is not looked at.
//
// A day of Intake is taken for a whole one where what was eaten is held against
// a plan or a need, so leave today out while meals are still to come. A day of
// nothing, in Intake or Appetites, counts 24 hours once it is past. Today counts
// none, since nobody can tell from it how long it has been: it is a note, and
// HoursUnfed is what makes it more. Days that nobody wrote down after a day of
// nothing don't feed the animal: they count on.
//
// Losses are looked at in any animal, a rise only in a shelter adult. A bitch or
// a queen is lighter after birth: begin her log anew then.
type Watch struct {
	// Animal is as for a stage. Its weight is taken where there are no Weights;
	// its age decides whether it is a nursling, or young.
	Animal energy.Animal
	// AdultWeight, of a puppy: under 4 kg it is a toy puppy. Where it is not
	// given, a puppy under 4 kg may be one, and so may one of unknown weight.
	AdultWeight units.Mass
	Today       Date

	Weights    Weights
	Appetites  Appetites
	Intake     Intake
	HoursUnfed int // whole hours since it last ate; zero is eating, or not known

	// Shelter says that the first weighing is that of intake to a shelter.
	Shelter bool
	// Plan is the weight loss that runs, of an animal of the same species; zero where
	// no loss is meant. How fast it goes is flagged in the words of its next step: see
	// Plan.Next.
	Plan Plan
	// Daily is the day's energy of the order, treats included; zero where there
	// is none, then that of Plan.
	Daily units.Energy
	// Order is flagged from the day after the one on which the animal was to be
	// weighed again, whatever was weighed since: a new one replaces it.
	Order Order
}

// Order is when a feeding order was written, and after how many days the animal
// was to be weighed again: energy.Estimate.Reweigh. The zero value is none.
type Order struct {
	Written Date       `json:"written"`
	Reweigh energy.Age `json:"reweigh"`
}

// UnmarshalJSON reads an order. A member of unknown name, or one that stands
// twice, is an error. A JSON null leaves o as it was.
func (o *Order) UnmarshalJSON(data []byte) error {
	type plain Order
	return record(data, "order", func(p plain) { *o = Order(p) })
}

// toyPuppy is the adult weight below which a puppy can't go for hours without
// food: ours, as package energy's Growth has it.
const toyPuppy = 4 * units.Kilogram

// lastNursling is the last day of a nursling, lastYoung of a kitten or puppy.
const (
	lastNursling = 4 * energy.Week
	lastYoung    = 6 * energy.Month
)

// Flags returns what the logs call for, the gravest first and within a level the
// newest first. All faults of the inputs come back at once.
func (w Watch) Flags() ([]Flag, error) {
	if err := w.check().Err(); err != nil {
		return nil, err
	}
	var flags []Flag
	if w.isNursling() {
		gains, err := w.nurslingFlags()
		if err != nil {
			return nil, err
		}
		flags = append(flags, gains...)
	} else {
		flags = append(flags, w.weightFlags()...)
	}
	flags = append(flags, w.unfedFlags()...)
	flags = append(flags, w.intakeFlags()...)
	flags = append(flags, w.orderFlags()...)
	sortFlags(flags)
	return flags, nil
}

func (w Watch) check() units.ErrorList {
	if err := checkToday(w.Today); err != nil {
		return units.ErrorList{err}
	}
	var faults units.ErrorList
	if s := w.Animal.Species; s == 0 || s > energy.Other {
		faults = append(faults, refuse("species", s.String(), "dog, cat, ferret or other", ""))
	} else if of := w.Plan.Loss.Animal.Species; w.Plan != (Plan{}) && of != s {
		faults = append(faults, refuse("plan species", of.String(), s.String()+", as the animal", "the plan of another?"))
	}
	faults = append(faults, w.Weights.check(w.Today, w.growth())...)
	faults = append(faults, w.Appetites.check(w.Today)...)
	faults = append(faults, w.Intake.checkEaten(cmp.Or(w.Weights.heaviest(), w.Animal.Weight), w.Today)...)
	if w.Animal.Age < 0 {
		faults = append(faults, refuse("age", strconv.Itoa(int(w.Animal.Age))+" d", "0 (not given) or more", ""))
	}
	if w.Animal.Weight != 0 && !isPositive(w.Animal.Weight) {
		faults = append(faults, refuse("weight", w.Animal.Weight.String(), "above 0 g, or none", ""))
	}
	if w.AdultWeight != 0 && !isPositive(w.AdultWeight) {
		faults = append(faults, refuse("adult weight", w.AdultWeight.String(), "above 0 g, or none", ""))
	}
	if w.Daily != 0 && !isPositive(w.Daily) {
		faults = append(faults, refuse("daily", w.Daily.String(), "above 0 kcal a day, or none", ""))
	}
	if w.HoursUnfed < 0 {
		faults = append(faults, refuse("hours unfed", strconv.Itoa(w.HoursUnfed), "0 or more whole hours", ""))
	}
	if w.Plan != (Plan{}) {
		faults = append(faults, w.Plan.check(w.Today)...)
	}
	if w.Order != (Order{}) {
		if err := checkDate("order written", w.Order.Written, 0, w.Today, false); err != nil {
			faults = append(faults, err)
		}
		if w.Order.Reweigh <= 0 || w.Order.Reweigh > energy.Year {
			faults = append(faults, refuse("order reweigh", strconv.Itoa(int(w.Order.Reweigh))+" d", "1 d to 365 d", ""))
		}
	}
	return faults
}

func (w Watch) isNursling() bool {
	return 0 < w.Animal.Age && w.Animal.Age <= lastNursling && (w.Animal.Species == energy.Cat || w.Animal.Species == energy.Dog)
}

// growth returns what is known of how the animal grows. One with a plan to lose weight
// doesn't.
func (w Watch) growth() growth {
	switch age := w.Animal.Age; {
	case w.Plan != (Plan{}):
		return growth{}
	case w.Animal.Circumstances.Has(energy.Growing):
		return growing(w.Animal.Species, w.AdultWeight, lastDate)
	case age > 0:
		aYearOld := max(0, int64(w.Today)+int64(energy.Year)-int64(age))
		return growing(w.Animal.Species, w.AdultWeight, Date(aYearOld))
	}
	return growth{}
}

// isGrown reports whether the weight is meant to be steady.
func (w Watch) isGrown() bool {
	return w.Animal.Circumstances&(energy.Pregnant|energy.Lactating) == 0 && !w.isYoung()
}

// isYoung reports whether the weight is meant to rise.
func (w Watch) isYoung() bool {
	return 0 < w.Animal.Age && w.Animal.Age < lastYoung || w.Animal.Circumstances.Has(energy.Growing)
}

// delicate returns what the animal is that can't go for half a day without
// food, and "" where it can.
func (w Watch) delicate() string {
	young := w.isYoung()
	toy := w.AdultWeight
	if toy == 0 {
		toy = w.weight()
	}
	switch {
	case w.Animal.Species == energy.Ferret:
		return "a ferret"
	case w.isNursling():
		return "a nursling"
	case w.Animal.Species == energy.Cat && young:
		return "a kitten"
	case w.Animal.Species == energy.Dog && young && w.AdultWeight == 0 && toy < toyPuppy:
		return "a puppy that may be of a toy breed"
	case w.Animal.Species == energy.Dog && young && toy < toyPuppy:
		return "a toy puppy"
	}
	return ""
}

// weight returns the newest weight that is known.
func (w Watch) weight() units.Mass {
	if n := len(w.Weights); n > 0 {
		return w.Weights[n-1].Weight
	}
	return w.Animal.Weight
}

// daily returns the day's energy of the order.
func (w Watch) daily() units.Energy { return cmp.Or(w.Daily, w.Plan.Daily) }

func (w Watch) orderFlags() []Flag {
	if w.Order == (Order{}) {
		return nil
	}
	due := w.Order.Written + Date(w.Order.Reweigh)
	if w.Today <= due {
		return nil
	}
	return []Flag{{OldOrder, w.Today, advice.Caution{
		Level: advice.Warn, Source: ours,
		Text: "the order of " + w.Order.Written.String() + " was to be looked at again on " + due.String() + ": weigh, and write a new one",
	}}}
}

// nurslingFlags returns the alarms of a nursling, from the last weighing back.
func (w Watch) nurslingFlags() ([]Flag, error) {
	gains, err := gains(w.Animal.Species, w.Animal.Age, w.Weights, w.Today)
	if err != nil {
		return nil, err
	}
	var flags []Flag
	for _, g := range gains {
		if g.Flag != (Flag{}) {
			flags = append(flags, g.Flag)
		}
	}
	return flags, nil
}
