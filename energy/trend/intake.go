package trend

import (
	"math"
	"slices"
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Served is one food of one meal: what was offered and what was left, both on
// the scale and without the bowl. It is comparable with ==.
type Served struct {
	Date    Date                `json:"date"`
	Meal    int                 `json:"meal"` // from 1; treats and table food may have a number of their own
	Food    string              `json:"food"`
	Offered units.Mass          `json:"offered"`
	Left    units.Mass          `json:"left"`
	Density units.EnergyDensity `json:"density"` // as fed, as diet.Food.Density gives it
}

// UnmarshalJSON reads a food served. A member of unknown name, or one that
// stands twice, is an error. A JSON null leaves s as it was.
func (s *Served) UnmarshalJSON(data []byte) error {
	type plain Served
	return record(data, "served", func(p plain) { *s = Served(p) })
}

// Eaten returns what was not left.
func (s Served) Eaten() units.Mass { return s.Offered - s.Left }

// Energy returns the energy in what was eaten.
func (s Served) Energy() units.Energy { return s.Density.Energy(s.Eaten()) }

// Intake is a log of what one animal was served, the oldest day first and any
// number of lines a day. In JSON it is an array. A day that isn't in it was not
// written down: it is not taken for a day of fasting, which is a day with lines
// of which all was left.
type Intake []Served

// Limits of one line: ours.
const (
	maxMeal    = 99
	maxServed  = 20 * units.Kilogram
	maxDensity = 9400 * units.KilocaloriePerKilogram // pure fat, SACN's gross energy
)

// Check returns every fault of the log at once: a day that is missing, in the
// future of today or out of order, a food without a name or with a line break in
// it, one food twice in a meal, more left than was offered, and an energy density
// above that of pure fat. A log may have 742,500 lines, a meal the number 1 to 99, a
// line 20 kg and the name of a food 256 bytes (all ours).
//
// How much an animal can eat is not known here: NewRequirement, UnderThird and
// Watch, which know its weight, refuse a day of more than 20 times its resting
// energy (ours; sled dogs in a race need almost 15 times, SACN 5th ed., p. 259). See
// Doubts for what is less.
func (l Intake) Check(today Date) error { return l.check(today).Err() }

func (l Intake) check(today Date) units.ErrorList {
	if err := checkToday(today); err != nil {
		return units.ErrorList{err}
	}
	if most := maxMeal * maxLog; len(l) > most {
		return units.ErrorList{refuse("intake", strconv.Itoa(len(l))+" lines", "at most "+strconv.Itoa(most), "")}
	}
	type key struct {
		date Date
		meal int
		food string
	}
	seen := make(map[key]bool, len(l))
	var faults units.ErrorList
	var before Date
	for i, s := range l {
		field := "intake " + strconv.Itoa(i+1)
		if err := checkDate(field+" date", s.Date, before, today, true); err != nil {
			faults = append(faults, err)
		}
		before = max(before, s.Date)
		if s.Meal < 1 || s.Meal > maxMeal {
			faults = append(faults, refuse(field+" meal", strconv.Itoa(s.Meal), "1 to "+strconv.Itoa(maxMeal), ""))
		}
		switch {
		case s.Food == "":
			faults = append(faults, refuse(field+" food", "", "the food's name", "not given"))
		case !oneline.Fits(s.Food):
			faults = append(faults, refuse(field+" food", s.Food, oneline.Wanted, ""))
		}
		if k := (key{s.Date, s.Meal, s.Food}); seen[k] {
			faults = append(faults, refuse(field+" food", s.Food, "each food once a meal", "stands twice in meal "+strconv.Itoa(s.Meal)))
		} else {
			seen[k] = true
		}
		faults = append(faults, s.checkAmounts(field)...)
	}
	return faults
}

// byFood returns a figure of each line, sorted, by the name of the food.
func byFood[Q units.Quantity](l Intake, figure func(Served) Q) map[string][]Q {
	foods := make(map[string][]Q)
	for _, s := range l {
		foods[s.Food] = append(foods[s.Food], figure(s))
	}
	for _, list := range foods {
		slices.Sort(list)
	}
	return foods
}

// checkEaten is check for an animal of that weight.
func (l Intake) checkEaten(weight units.Mass, today Date) units.ErrorList {
	faults := l.check(today)
	if len(faults) > 0 || !isPositive(weight) {
		return faults
	}
	// 70 kcal × kg^0.75 is the resting energy (SACN 5th ed., Table 5-2, p. 61), here of any
	// species.
	const times, perKilogram = 20, 70 * units.Kilocalorie
	most := times * perKilogram * units.Energy(energy.MetabolicWeight(energy.Dog, weight))
	for _, day := range l.days() {
		if day.Energy > most {
			faults = append(faults, refuse("intake of "+day.Date.String(), kcal(day.Energy),
				"up to "+kcal(most)+", 20 times the resting energy of "+readable(weight), "the decimal point, or the unit of an amount?"))
		}
	}
	return faults
}

// Doubts returns the lines on which ten times or more was offered (ours) of what the
// other lines of the same food have in the middle, or whose energy density is more than
// twice or less than half the middle one of that food (ours): possible, as of a dinner
// where the others are treats, or of table food, but worth a look at the decimal point
// and the unit. The errors are those of Check.
func (l Intake) Doubts(today Date) ([]Served, error) {
	if err := l.check(today).Err(); err != nil {
		return nil, err
	}
	var doubts []Served
	inDoubt := l.inDoubt()
	for _, s := range l {
		if amount, density := inDoubt(s); amount || density {
			doubts = append(doubts, s)
		}
	}
	return doubts, nil
}

// inDoubt returns what tells whether the amount or the density of a line of a checked
// log is in doubt.
func (l Intake) inDoubt() func(Served) (amount, density bool) {
	const times, most = 10, 2
	offered := byFood(l, func(s Served) units.Mass { return s.Offered })
	densities := byFood(l, func(s Served) units.EnergyDensity { return s.Density })
	return func(s Served) (amount, density bool) {
		// The middle of the others, where s is above it.
		list := offered[s.Food]
		amount = s.Offered >= times*list[(len(list)-1)/2]
		middle := densities[s.Food][len(list)/2]
		return amount, s.Density > most*middle || most*s.Density < middle
	}
}

func (s Served) checkAmounts(field string) units.ErrorList {
	var faults units.ErrorList
	if !isPositive(s.Offered) || s.Offered > maxServed {
		faults = append(faults, refuse(field+" offered", s.Offered.String(), "above 0 g, up to "+maxServed.String(), ""))
	} else if !(0 <= s.Left && s.Left <= s.Offered) || math.Signbit(float64(s.Left)) {
		faults = append(faults, refuse(field+" left", s.Left.String(), "0 g to the "+readable(s.Offered)+" offered",
			"weighed with the bowl, or the two exchanged?"))
	}
	if !isPositive(s.Density) || s.Density > maxDensity {
		faults = append(faults, refuse(field+" density", s.Density.String(), "above 0 kcal/kg, up to "+maxDensity.String()+", as fed", ""))
	}
	return faults
}

// Eaten is the sum of one day. It is comparable with ==.
type Eaten struct {
	Date    Date
	Offered units.Mass
	Mass    units.Mass    // eaten
	Energy  units.Energy  // in that
	OfGoal  units.Percent // of the day's goal
}

// Days sums the log by day, with the part of the day's goal that each day's
// energy is. The errors are those of Check, and a goal that is none.
func (l Intake) Days(goal units.Energy, today Date) ([]Eaten, error) {
	faults := l.check(today)
	if !isPositive(goal) {
		faults = append(faults, refuse("goal", goal.String(), "above 0 kcal a day", ""))
	}
	if err := faults.Err(); err != nil {
		return nil, err
	}
	sums := l.days()
	for i := range sums {
		sums[i].OfGoal = units.Percent(100 * (sums[i].Energy / goal))
	}
	return sums, nil
}

// days sums a checked log by day.
func (l Intake) days() []Eaten {
	var sums []Eaten
	for _, s := range l {
		if n := len(sums); n == 0 || sums[n-1].Date != s.Date {
			sums = append(sums, Eaten{Date: s.Date})
		}
		day := &sums[len(sums)-1]
		day.Offered += s.Offered
		day.Mass += s.Eaten()
		day.Energy += s.Energy()
	}
	return sums
}

// UnderThird returns the days on which an animal ate a third of its resting
// energy requirement or less, at the weight given; see Watch for what three of
// them in a row call for. The errors are those of Check and of energy.Resting.
func (l Intake) UnderThird(a energy.Animal, today Date) ([]Eaten, error) {
	rer, err := energy.Resting{Animal: a}.Estimate()
	if err != nil {
		return nil, err
	}
	if err := l.checkEaten(a.Weight, today).Err(); err != nil {
		return nil, err
	}
	sums, err := l.Days(rer.Daily, today)
	if err != nil {
		return nil, err
	}
	return slices.DeleteFunc(sums, func(e Eaten) bool { return !e.isUnderThird(rer.Daily) }), nil
}

// isUnderThird reports whether the day's energy is a third of the resting energy
// requirement or less.
func (e Eaten) isUnderThird(rer units.Energy) bool { return 3*e.Energy <= rer }
