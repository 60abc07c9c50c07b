package energy

import (
	"errors"
	"math"
	"slices"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Nursling is the energy of an orphan puppy or kitten from birth to four
// weeks, fed on milk replacer. Its age is required, in days counted from 1 on
// the day of birth, up to 28: on that day Growth takes it too.
//
// By default the energy for each 100 g of body weight is that of a table by
// age: a puppy gets 13.2, 15.4, 17.6 and 19.8 kcal in weeks 1 to 4 (60 to 90
// kcal/lb), a kitten 15 kcal on days 1 to 3, 20 on days 4 to 6, then 22.5, the
// middle of 20 to 25. Method NRC2006 takes 25 kcal for a puppy and 22.5 for a
// kitten, again the middle of 20 to 25, at any age. The tables are the default
// since they start low: an empty gut is filled up in steps. Sources differ by
// two and more, so Low and High are the ends of what the orphans' tables, NRC
// 2006 and Lawler 2008 print for the age, whichever method is asked for. (SACN
// 5th ed., Table 23-1, prints 38 kcal as the need at birth; its table for
// orphans starts at 15.)
//
// The weight used is the current one. No condition scale is made for nurslings
// and none has an ideal weight: both are refused, and a daily gain is looked at
// instead. DayBefore is the weight a day ago; where it is given and the gain
// since is too small, a refer-level caution says so. See DailyGain.
//
// The age counts from 1 on the day of birth, so that a kitten of two weeks is
// Age 2 * Week, never 2. A weight far above a newborn's in the first four days
// is cautioned as weeks typed for days.
//
// A comfortable feed is about 4 mL for each 100 g. (SACN 5th ed., p. 427,
// prints 10 to 15 mL in the first week, which is two to four times that for a
// newborn kitten, and is not used.)
//
// No energy is published for ferret kits, which are refused, as is a weight
// that no nursling of that week has (ours).
type Nursling struct {
	Animal    Animal     `json:"animal"`              // with its age; neither score nor ideal weight
	DayBefore units.Mass `json:"day_before,omitzero"` // the weight a day ago; zero: not weighed
	Method    Method     `json:"method,omitzero"`     // PerKilogram (default) or NRC2006
}

// maxNursling is the last day of week 4.
const maxNursling = 4 * Week

// Weight of the day before against the weight now: outside these it is a
// typing slip. Ours; the fastest puppies gain 14 % a day (Alves 2020).
const (
	minPerDay = 1 / 1.5
	maxPerDay = 1.5
)

// Estimate returns the energy of a day.
func (s Nursling) Estimate() (Estimate, error) {
	method := s.method()
	if faults := s.check(method); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	c, base := s.coefficient(method), units.Energy(s.Animal.Weight.Grams()/100)
	return Estimate{
		Stage: s, Animal: s.Animal, Weight: s.Animal.Weight, Basis: Current, Method: method,
		Daily: units.Energy(c.value) * base, Low: units.Energy(c.low) * base, High: units.Energy(c.high) * base,
		Reweigh: Day,
	}, nil
}

func (s Nursling) method() Method {
	if s.Method == 0 {
		return PerKilogram
	}
	return s.Method
}

func (s Nursling) check(method Method) units.ErrorList {
	a := s.Animal
	faults := a.check(true)
	add := func(err error) {
		if err != nil {
			faults = append(faults, err)
		}
	}
	add(a.checkSpecies(noYoung, Dog, Cat))
	if a.Species == Dog || a.Species == Cat {
		add(s.checkWeight())
	}
	const days = "1 d (the day of birth) to 28 d for a nursling"
	switch {
	case a.Age == 0:
		add(refuse("age", "", days, "not given"))
	case maxNursling < a.Age && a.Age <= maxAge:
		add(refuse("age", a.Age.String(), days, "from 4 wk on: Growth"))
	}
	// Scores that are out of range or too low are among the faults already.
	if nine, ok := a.Condition.Nine(); ok && a.Condition.isValid() && nine > gateCondition {
		add(refuse("condition", a.Condition.String(), "none for a nursling",
			"the scales are made for grown animals; weigh it every day"))
	}
	if a.Ideal > 0 {
		add(refuse("ideal weight", a.Ideal.String(), "none for a nursling", "its daily gain says how it does"))
	}
	faults = append(faults, a.misplaced("a nursling", Growing)...)
	add(s.checkDayBefore())
	add(checkMethod(method, PerKilogram, NRC2006))
	return faults
}

// checkWeight refuses a weight that no nursling of that age has. Nurslings are
// weighed in grams and in ounces, so that slip is looked for too.
func (s Nursling) checkWeight() error {
	a := s.Animal
	week, stage := len(nurslingHigh[Dog]), "a nursling "
	if 0 < a.Age && a.Age <= maxNursling {
		week = weekOfLife(a.Age)
		stage = "a week-" + strconv.Itoa(week) + " nursling "
	}
	table := nurslingBounds(week)
	err := a.checkWeight(table[:], stage)
	var fault *units.FieldError
	if !errors.As(err, &fault) {
		return err
	}
	b := table[a.Species]
	// Grams are typed whole; a number of ounces in the place of kilograms or
	// grams may have decimals.
	if oz := math.Round(a.Weight.Ounces()); near(a.Weight.Ounces(), oz) && b.contains(units.Mass(oz)) {
		fault.Hint = join(fault.Hint, "grams for ounces? "+short(oz)+" g is in range")
		return fault
	}
	for _, typed := range [...]float64{a.Weight.Kilograms(), a.Weight.Grams()} {
		if w := units.Mass(typed) * units.Ounce; b.contains(w) {
			fault.Hint = join(fault.Hint, "ounces? "+short(typed)+" oz is "+readable(w))
		}
	}
	return fault
}

func (s Nursling) checkDayBefore() error {
	if s.DayBefore == 0 {
		return nil
	}
	w := s.Animal.Weight
	switch {
	case !(s.DayBefore > 0) || math.IsInf(float64(s.DayBefore), 0):
		return refuse("day before", s.DayBefore.String(), "a weight above 0 g, or none if it was not weighed", "")
	case s.Animal.Age == Day:
		return refuse("day before", s.DayBefore.String(), "none on the day of birth", "")
	case !(w > 0) || math.IsInf(float64(w), 0):
		return nil // the weight itself is refused
	case s.DayBefore < minPerDay*w || maxPerDay*w < s.DayBefore:
		return refuse("day before", s.DayBefore.String(),
			"a weight from two thirds to one and a half times the current "+readable(w),
			"another animal, or grams, kilograms and ounces mixed?")
	}
	return nil
}

func (s Nursling) explain(e Estimate, w *working) {
	w.line("first", "is it warm? a chilled nursling is warmed slowly before it is fed")
	s.explainGain(w)
	c, hundreds := s.coefficient(e.Method), e.Weight.Grams()/100
	w.line("formula", short(c.value)+" kcal for each 100 g ("+c.label+")")
	w.line("", "= "+short(c.value)+" × "+short(hundreds)+" = "+kcal1(e.Daily))
	w.source(c.source)
	if s.Animal.Species == Dog {
		w.line("spread", short(c.low)+" (the handbook) to "+short(c.high)+" (NRC 2006) kcal for each 100 g at this age")
	} else {
		w.line("spread", short(c.low)+" (Table 23-4) to "+short(c.high)+" (Lawler 2008) kcal for each 100 g at this age")
		w.source(sourceKittenSpread)
	}
	other := NRC2006
	if e.Method == NRC2006 {
		other = PerKilogram
	}
	o := s.coefficient(other)
	w.line("beside", short(o.value)+" kcal for each 100 g ("+o.label+"): "+kcal1(units.Energy(o.value*hundreds)))
	w.source(o.source)
}

func (s Nursling) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, s advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: s})
	}
	a := &s.Animal
	c = s.appendGainAlarm(c)
	if week := weekOfLife(a.Age); e.Weight < nurslingLow[a.Species][week-1] {
		add(advice.Refer, readable(e.Weight)+" is very little in week "+strconv.Itoa(week)+": a digit too few, or it must be seen now", ours)
	}
	if a.Age <= newborn && e.Weight > newbornHigh[a.Species] {
		add(advice.Warn, readable(e.Weight)+" is unusual on day "+strconv.Itoa(int(a.Age))+" of life: is it "+
			(a.Age*Week).String()+" old?", ours)
	}
	if a.DaysUnfed > 0 {
		add(advice.Refer, "a nursling that has taken nothing for a day is an emergency", ours)
	}
	c = slices.Insert(c, 0, chilled(s.Animal.Age))
	add(advice.Warn, "limp, crying without end, or not sucking: an emergency; don't force milk into it", ours)
	weigh := "weigh it every day at the same hour, in grams: "
	if a.Age < firstDay {
		weigh += "after the first 24 hours, "
	}
	g := s.gainTo(max(a.Age, firstDay)+Day, a.Weight)
	add(advice.Note, weigh+readable(g.Low)+" to "+readable(g.High)+" a day is expected; under "+readable(g.Alarm)+
		" call the veterinarian", s.sourceGain())
	add(advice.Note, "a stomach takes about 4 mL for each 100 g, "+round(StomachCapacity(e.Weight).Millilitres(), 1)+
		" mL a feed now: the day's milk in as many feeds as that takes, through the night too", sourceStomach)
	add(advice.Note, "for an orphan: one that its mother feeds needs only what it doesn't get from her", ours)
	return append(c, startingEstimate())
}

// chilled returns the first rule of the nursery.
func chilled(a Age) advice.Caution {
	c := advice.Caution{
		Level: advice.Warn, Text: "never feed a chilled nursling: ",
		Source: advice.Source{Work: "veterinary teaching", Seen: advice.Memory},
	}
	switch weekOfLife(a) {
	case 1:
		c.Text += "below about 35 °C "
		c.Source.Where = "week 1"
	case 2, 3:
		c.Text += "below about 36 °C "
		c.Source.Where = "to day 21"
	}
	c.Text += "warm it slowly first"
	return c
}

// StomachCapacity returns what the stomach of a nursling of weight w takes at
// once with comfort: 4 mL for each 100 g (Lawler 2008). Sources print 4 to 5.
func StomachCapacity(w units.Mass) units.Volume {
	const millilitresPerGram = 0.04
	return units.Volume(millilitresPerGram * w.Grams())
}
