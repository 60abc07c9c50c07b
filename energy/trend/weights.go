package trend

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Weights is a log of weighings of one animal, the oldest first, at most one a
// day. In JSON it is an array.
type Weights []Weighing

// maxLog is the longest log that is taken: ours, twenty years of every day.
const maxLog = 7500

// Check returns every fault of the log at once: a day that is missing, in the
// future of today, twice there or out of order, a weight that is none, a scale
// whose step is not given, and a weight that can't follow the ones before it
// unless it is Confirmed. The last kind says which slip would explain it.
//
// Half of the weight before it or less can't follow it, and 1.75 times it or more
// (ours) only where the animal can have grown so in the days between: by 14 % a day,
// as the fastest puppies do at first (Alves 2020), and by 300 g a day at most (ours:
// giant puppies gain more than 200). So a nursling's weight may double in a week, and
// over weeks pounds for kilograms pass for growth, unless the next weighing takes it
// back. A Watch whose animal was a year old, and the Next of a Plan, know that it is
// grown and keep to 1.75 times.
func (l Weights) Check(today Date) error {
	return l.check(today, 0).Err()
}

// check takes the day from which on the animal is known to be grown, zero where
// it is not.
func (l Weights) check(today, grown Date) units.ErrorList {
	if err := checkToday(today); err != nil {
		return units.ErrorList{err}
	}
	if len(l) > maxLog {
		return units.ErrorList{refuse("weights", strconv.Itoa(len(l))+" weighings", "at most "+strconv.Itoa(maxLog), "")}
	}
	var faults units.ErrorList
	var before Date
	for i, w := range l {
		field := "weighing " + strconv.Itoa(i+1)
		if err := checkDate(field+" date", w.Date, before, today, false); err != nil {
			faults = append(faults, err)
		}
		before = max(before, w.Date)
		if !isPositive(w.Weight) || w.Weight > maxWeight {
			faults = append(faults, refuse(field+" weight", w.Weight.String(), "above 0 g, up to "+maxWeight.String(), ""))
		} else if !isPositive(w.Readability) || w.Readability > w.Weight/2 {
			faults = append(faults, refuse(field+" readability", w.Readability.String(),
				"the step of the scale, above 0 g and at most half the weight", ""))
		}
	}
	if len(faults) > 0 {
		return faults
	}
	return l.slips(grown)
}

// maxWeight is that of the heaviest animal that package energy takes in any stage.
const maxWeight = 200 * units.Kilogram

// heaviest returns the heaviest weight of the log, nothing where it is empty.
func (l Weights) heaviest() (m units.Mass) {
	for _, w := range l {
		m = max(m, w.Weight)
	}
	return m
}

// Since returns the weighings on that day and later. It shares their memory.
func (l Weights) Since(d Date) Weights {
	for i, w := range l {
		if w.Date >= d {
			return l[i:]
		}
	}
	return nil
}

// A weight this far from the one before it is a slip until it is confirmed:
// ours. The cats of Cook 2021 had lost 46 % of their weight on average when they were
// found after three weeks, and the puppies of Alves 2020 gain less than 75 % in
// four days.
const (
	slipLow  = 0.5
	slipHigh = 1.75
)

// What an animal can grow. The puppies of Alves 2020 gain exp(0.13084) - 1 = 14 % on
// their first day and less from day to day: 2.31 times their weight at birth in 7
// days, 4.55 times in 14. A giant puppy gains more than 200 g a day (Book of
// Proceedings, I PetFeeding, 2017, p. 23); half as much again is ours.
const (
	fastestGrowth = 1.14 // times the weight, a day
	mostGrowth    = 300 * units.Gram
)

// follows reports whether a weight can follow another, of a grown animal or with
// the days in which it may have grown.
func follows(w, before units.Mass, grew Date) bool {
	byShare := before * units.Mass(math.Pow(fastestGrowth, float64(grew)))
	most := max(slipHigh*before, min(byShare, before+units.Mass(float64(mostGrowth)*float64(grew))))
	return slipLow*before < w && w < most
}

// follows reports whether the i-th weight can follow another of the log, of an
// animal that is grown from a day on.
func (l Weights) follows(i, before int, grown Date) bool {
	grew := l[i].Date - l[before].Date
	if grown != 0 && l[before].Date >= grown {
		grew = 0
	}
	return follows(l[i].Weight, l[before].Weight, grew)
}

// grownFrom returns the day from which on an animal is known to be grown: that of
// a year of age (ours), or the first of a plan to lose weight. Zero is not known.
func grownFrom(a energy.Animal, today, plan Date) Date {
	if a.Circumstances.Has(energy.Growing) {
		return plan
	}
	// Of no age it is a year from today, and nothing is known.
	year := Date(max(int(today)-int(a.Age-energy.Year), int(firstDate)))
	if plan == 0 {
		return year
	}
	return min(plan, year)
}

// slips returns the weights that can't follow the ones before them. Where the
// second weighing and the third agree with each other, it is the first that is
// wrong; and where one falls back from what only growth explains to what it was
// before, it is the one between.
func (l Weights) slips(grown Date) units.ErrorList {
	var faults units.ErrorList
	good, before := 0, 0 // the last weighing that is not in doubt, and the one before
	for i := 1; i < len(l); i++ {
		if l[i].Confirmed || l.follows(i, good, grown) {
			good, before = i, good
			continue
		}
		if !l[0].Confirmed && i == 1 && len(l) > 2 && l.follows(2, 1, grown) && !l.follows(2, 0, grown) {
			faults = append(faults, l.slip(0, 1))
			good = i
			continue
		}
		if rose := l[good].Weight >= slipHigh*l[before].Weight; rose && !l[good].Confirmed && l[i].Weight < l[good].Weight && l.follows(i, before, grown) {
			faults = append(faults, l.slip(good, before))
			good = i
			continue
		}
		faults = append(faults, l.slip(i, good))
	}
	return faults
}

// slip returns the fault of the i-th weight beside a good one.
func (l Weights) slip(i, good int) error {
	w, by := l[i].Weight, l[good].Weight
	change := signed(units.Percent(100 * (w/by - 1)))
	return refuse("weighing "+strconv.Itoa(i+1)+" weight", w.String(),
		"a weight like the "+readable(by)+" of "+l[good].Date.String(),
		change+hint(w, by)+"; weigh again, and set Confirmed where it is right")
}

// hint names the slip of unit that turns w into a weight near the other.
func hint(w, by units.Mass) string {
	const near = 0.20 // ours: what may really have changed besides
	like := func(x units.Mass) bool { return math.Abs(float64(x/by-1)) <= near }
	switch pounds := units.Mass(w.Kilograms()) * units.Pound; {
	case like(pounds):
		return ": pounds? " + trim(round(w.Kilograms(), 3)) + " lb is " + readable(pounds)
	case like(units.Kilogram * units.Mass(w.Pounds())):
		return ": kilograms read as pounds? " + readable(w) + " is " + trim(round(w.Pounds(), 1)) + " lb"
	case like(w / 1000):
		return ": grams? " + readable(w/1000)
	case like(w * 1000):
		return ": kilograms? " + readable(w*1000)
	case like(w / 10), like(w * 10):
		return ": the decimal point?"
	}
	if ounces := units.Mass(w.Grams()) * units.Ounce; like(ounces) {
		return ": ounces? " + trim(round(w.Grams(), 1)) + " oz is " + readable(ounces)
	}
	return ": another animal, a carrier, the unit?"
}
