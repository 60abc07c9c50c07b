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
// unless it is Confirmed. The last kind says which slip would explain it. A log may
// have 7,500 weighings, twenty years of every day, each of at most 200 kg (ours).
//
// Half of the weight before it or less can't follow it, nor can 1.75 times it or more
// (ours), however many days lie between: of the animal nothing is known here. Only
// a Litter, and a Watch without a Plan whose Animal is Growing, or was under a year old
// by its Age, know that it grows. They take what it can have grown in the days between: by
// 15 % a day (ours: the fastest puppies gain 14 % at first, Alves 2020), and a day at
// most 50 g of a cat, 20 g of a ferret and others, and of a dog 300 g, or 8 g for each
// kg of its AdultWeight where that is given (all ours). A rise that growth alone
// explains is the slip itself where the next weighing is half of it or less, and can
// follow the one before it.
func (l Weights) Check(today Date) error {
	return l.check(today, growth{}).Err()
}

func (l Weights) check(today Date, g growth) units.ErrorList {
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
	return l.slips(g)
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

// What an animal that is known to grow can gain. The puppies of Alves 2020 gain
// exp(0.13084) - 1 = 14 % on their first day and less from day to day: 2.31 times their
// weight at birth in 7 days, 4.55 times in 14; ferret kits double in 5 days (from
// memory). Kittens gain 10 to 20 g a day. A giant puppy gains more than 200 g (Book of
// Proceedings, I PetFeeding, 2017, p. 23), and puppies 2 to 4 g for each kg of adult
// weight (SACN 5th ed., Table 16-1). What is taken is more, and ours.
const (
	fastestGrowth = 1.15 // times the weight, a day

	mostGrowthCat     = 50 * units.Gram // a day, as the next
	mostGrowthDog     = 300 * units.Gram
	mostGrowthOther   = 20 * units.Gram
	mostGrowthOfAdult = 8 * units.Gram // for each kg
)

// growth is what is known of an animal that grows: how much it gains a day at most, and
// from which day on no more. The zero value is one that is grown, or of which nobody
// knows.
type growth struct {
	most  units.Mass
	until Date
}

// growing returns the growth of a species up to a day; the adult weight, of a dog, is
// zero where it is not known.
func growing(s energy.Species, adult units.Mass, until Date) growth {
	switch {
	case s == energy.Cat:
		return growth{mostGrowthCat, until}
	case s == energy.Dog && adult > 0:
		return growth{min(mostGrowthDog, mostGrowthOfAdult*units.Mass(adult.Kilograms())), until}
	case s == energy.Dog:
		return growth{mostGrowthDog, until}
	}
	return growth{mostGrowthOther, until}
}

// grown returns the most that a weight can have grown to by a day.
func (g growth) grown(from Weighing, to Date) units.Mass {
	if g.until <= from.Date {
		return from.Weight
	}
	days := float64(min(to, g.until) - from.Date)
	return min(from.Weight*units.Mass(math.Pow(fastestGrowth, days)), from.Weight+g.most*units.Mass(days))
}

// follows reports whether a weight can follow another, from which it can have grown to
// the third.
func follows(w, before, grown units.Mass) bool {
	return slipLow*before < w && w < max(slipHigh*before, grown)
}

// follows reports whether the i-th weight can follow another of the log.
func (l Weights) follows(i, before int, g growth) bool {
	return follows(l[i].Weight, l[before].Weight, g.grown(l[before], l[i].Date))
}

// slips returns the weights that can't follow the ones before them. Where the
// second weighing and the third agree with each other, it is the first that is
// wrong; and where one falls back from what only growth explains to what it was
// before, it is the one between.
func (l Weights) slips(g growth) units.ErrorList {
	var faults units.ErrorList
	good, before := 0, 0 // the last weighing that is not in doubt, and the one before
	for i := 1; i < len(l); i++ {
		if l[i].Confirmed || l.follows(i, good, g) {
			good, before = i, good
			continue
		}
		if !l[0].Confirmed && i == 1 && len(l) > 2 && l.follows(2, 1, g) && !l.follows(2, 0, g) {
			faults = append(faults, l.slip(0, 1))
			good = i
			continue
		}
		if rose := l[good].Weight >= slipHigh*l[before].Weight; rose && !l[good].Confirmed && l[i].Weight < l[good].Weight && l.follows(i, before, g) {
			faults = append(faults, l.slip(good, before, i))
			good = i
			continue
		}
		faults = append(faults, l.slip(i, good))
	}
	return faults
}

// slip returns the fault of the i-th weight beside a good one, or beside another that
// it is the pounds of.
func (l Weights) slip(i, good int, others ...int) error {
	w := l[i].Weight
	for _, other := range others {
		if !like(pounds(w), l[good].Weight) && like(pounds(w), l[other].Weight) {
			good = other
		}
	}
	by := l[good].Weight
	change := signed(units.Percent(100 * (w/by - 1)))
	return refuse("weighing "+strconv.Itoa(i+1)+" weight", w.String(),
		"a weight like the "+readable(by)+" of "+l[good].Date.String(),
		change+hint(w, by)+"; weigh again, and set Confirmed where it is right")
}

// hint names the slip of unit that turns w into a weight near the other.
func hint(w, by units.Mass) string {
	like := func(x units.Mass) bool { return like(x, by) }
	switch {
	case like(pounds(w)):
		return ": pounds? " + trim(round(w.Kilograms(), 3)) + " lb is " + readable(pounds(w))
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

// like reports whether a weight is near another.
func like(x, by units.Mass) bool {
	const near = 0.20 // ours: what may really have changed besides
	return math.Abs(float64(x/by-1)) <= near
}

// pounds returns the weight that was typed as kilograms and read as pounds.
func pounds(w units.Mass) units.Mass { return units.Mass(w.Kilograms()) * units.Pound }
