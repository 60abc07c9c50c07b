package trend

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Litter is a box of orphans that are fed by hand: one milk for all of them,
// each with a log of its own. It may have 100 of them (ours).
type Litter struct {
	Species energy.Species        `json:"species"` // dog or cat
	Born    Date                  `json:"born"`    // day 1 of their age
	Milk    units.EnergyPerVolume `json:"milk"`    // as made up
	Feeds   int                   `json:"feeds"`   // a day at least, 1 to 24
	Method  energy.Method         `json:"method,omitzero"`

	Nurslings []Nursling `json:"nurslings"`
}

// Nursling is one of a litter.
type Nursling struct {
	Name    string  `json:"name"`
	Weights Weights `json:"weights"`
}

// UnmarshalJSON reads a nursling. A member of unknown name, or one that stands
// twice, is an error. A JSON null leaves n as it was.
func (n *Nursling) UnmarshalJSON(data []byte) error {
	type plain Nursling
	return record(data, "nursling", func(p plain) { *n = Nursling(p) })
}

// UnmarshalJSON reads a litter. A member of unknown name, or one that stands
// twice, is an error. A JSON null leaves l as it was.
func (l *Litter) UnmarshalJSON(data []byte) error {
	type plain Litter
	return record(data, "litter", func(p plain) { *l = Litter(p) })
}

// Gained is what a nursling put on up to one weighing. It is comparable.
type Gained struct {
	Date   Date
	Age    energy.Age // on that day
	Weight units.Mass
	Gain   units.Mass // a day since the weighing before
	Days   int        // since that
	// Expected is what it should gain a day, and the alarm.
	Expected energy.Gain
	// Flag is set where the gain, or the mean gain of the last three days, is under
	// the alarm and calls for a veterinarian, and for a look where that mean is
	// under what is expected (ours), or nothing was gained in the first 24 hours.
	Flag Flag
}

// Report is the page of one nursling for the day to come. It is made from its
// newest weighing. Nothing is rounded: a syringe's marks are package portion's
// business.
type Report struct {
	Name  string
	Gains []Gained   // weighing by weighing, from the second on
	Mean  units.Mass // a day, over Days
	Days  int        // from the first weighing to the last; 0: weighed once, Mean isn't known
	Need  energy.Estimate
	Milk  units.Volume // in the day to come
	Feeds int          // in as many feeds
	Feed  units.Volume // of so much each
	// Stomach is what a feed may be at most, 4 mL for each 100 g.
	Stomach units.Volume
}

// Alarm reports whether the newest weighing is flagged for a veterinarian: its
// gain, or the mean gain of the last three days.
func (r Report) Alarm() bool {
	n := len(r.Gains)
	return n > 0 && r.Gains[n-1].Flag.Level == advice.Refer
}

// Limits of a litter: ours.
const (
	maxFeeds  = 24
	maxLitter = 100
)

// Reports returns a page for each nursling, in the order given. Each is fed by
// its own newest weight, and a day's milk is split into Feeds, or into as many
// more as keep a feed within the stomach.
//
// One nursling's slip doesn't hide another's alarm: the reports of those without
// a fault come back, each with its name, and an error for the others. Their faults
// come all at once, those of energy.Nursling among them, and a newest weight that
// is older than yesterday: there is no amount from it. Nurslings of one name, or of
// names that differ in case or spaces only, have no reports, since nobody could tell
// whose they are. A fault of the litter itself (its species, birth, milk or feeds,
// today, or that it has no nurslings or too many) leaves no reports.
func (l Litter) Reports(today Date) ([]Report, error) {
	if err := checkToday(today); err != nil {
		return nil, units.ErrorList{err}.Err()
	}
	faults := l.check(today)
	ofLitter := len(faults) > 0
	l.Nurslings = l.Nurslings[:min(len(l.Nurslings), maxLitter)]
	unnamed, nameless := l.checkNames()
	faults = append(faults, unnamed...)
	var reports []Report
	for i, n := range l.Nurslings {
		r, err := l.report(n, today)
		switch {
		case err != nil:
			faults = append(faults, errlist.At(err, "nursling "+strconv.Itoa(i+1)+n.inLine()+" ")...)
		case !ofLitter && !nameless[n.toTell()]:
			reports = append(reports, r)
		}
	}
	return reports, faults.Err()
}

func (l Litter) check(today Date) units.ErrorList {
	var faults units.ErrorList
	if err := checkDate("born", l.Born, 0, today, false); err != nil {
		faults = append(faults, err)
	}
	// The widest that a made-up milk can be: ours; half cream is 1.3 kcal/mL.
	if most := 3 * units.KilocaloriePerMillilitre; !isPositive(l.Milk) || l.Milk > most {
		faults = append(faults, refuse("milk", l.Milk.String(), "above 0 kcal/mL, up to "+most.String()+", as made up", "of the powder?"))
	}
	if l.Feeds < 1 || l.Feeds > maxFeeds {
		faults = append(faults, refuse("feeds", strconv.Itoa(l.Feeds), "1 to 24 a day", ""))
	}
	if n := len(l.Nurslings); n < 1 || n > maxLitter {
		faults = append(faults, refuse("nurslings", strconv.Itoa(n), "1 to "+strconv.Itoa(maxLitter), ""))
	}
	return faults
}

// CheckWeights is Weights.Check for a nursling of the litter, which is known to grow.
func (l Litter) CheckWeights(log Weights, today Date) error {
	return log.check(today, growing(l.Species, 0, lastDate)).Err()
}

// checkNames returns the faults of the names, and the names that tell nobody
// which nursling is meant.
func (l Litter) checkNames() (faults units.ErrorList, refused map[string]bool) {
	seen := make(map[string]string) // the name as it stood first
	refused = make(map[string]bool)
	for i, n := range l.Nurslings {
		told := n.toTell()
		first, twice := seen[told]
		switch field := "nursling " + strconv.Itoa(i+1) + " name"; {
		case told == "":
			faults = append(faults, refuse(field, n.Name, "a name", "not given"))
		case !oneline.Fits(n.Name):
			faults = append(faults, refuse(field, n.Name, oneline.Wanted, ""))
		case twice && first == n.Name:
			faults = append(faults, refuse(field, n.Name, "each name once", "stands twice"))
		case twice:
			faults = append(faults, refuse(field, n.Name, "each name once", "who tells it from "+strconv.Quote(first)+"?"))
		default:
			seen[told] = n.Name
			continue
		}
		refused[told] = true
	}
	return faults, refused
}

// report makes the page of one nursling.
func (l Litter) report(n Nursling, today Date) (Report, error) {
	if err := l.CheckWeights(n.Weights, today); err != nil || !l.Born.isValid() {
		return Report{}, err
	}
	if len(n.Weights) == 0 {
		return Report{}, refuse("weights", "0 weighings", "one or more", "")
	}
	first, last := n.Weights[0], n.Weights[len(n.Weights)-1]
	if first.Date < l.Born {
		return Report{}, refuse("weighing 1 date", first.Date.String(), "the day of birth, "+l.Born.String()+", or later", "")
	}
	a := energy.Animal{Species: l.Species, Age: energy.Age(today - l.Born + 1)}
	r := Report{Name: n.Name}
	var err error
	if r.Gains, err = gains(l.Species, a.Age, n.Weights, today); err != nil {
		return Report{}, err
	}
	s := energy.Nursling{Animal: a, Method: l.Method}
	s.Animal.Weight, s.Animal.Age = last.Weight, a.Age-energy.Age(today-last.Date)
	if k := len(n.Weights); k > 1 && n.Weights[k-2].Date == last.Date-1 {
		s.DayBefore = n.Weights[k-2].Weight
	}
	if r.Need, err = s.Estimate(); err != nil {
		return Report{}, err
	}
	if last.Date < today-1 {
		return Report{}, refuse("weights", "the newest is of "+last.Date.String(),
			"a weighing of "+(today-1).String()+" or "+today.String(), "weigh it before the next feed")
	}
	if a.Age > lastNursling {
		return Report{}, refuse("age", a.Age.String(), "1 d (the day of birth) to "+lastNursling.String(), "older by now: energy.Growth")
	}
	if r.Days = int(last.Date - first.Date); r.Days > 0 {
		r.Mean = (last.Weight - first.Weight) / units.Mass(r.Days)
	}
	if !isPositive(l.Milk) {
		return r, nil // among the faults of the litter
	}
	r.Milk = l.Milk.Volume(r.Need.Daily)
	r.Stomach = energy.StomachCapacity(last.Weight)
	needed := math.Ceil(float64(r.Milk / r.Stomach))
	if needed > maxFeeds {
		return Report{}, refuse("milk", l.Milk.String(), "rich enough for 24 feeds a day that the stomach holds", "too thin")
	}
	r.Feeds = max(l.Feeds, int(needed))
	r.Feed = r.Milk / units.Volume(r.Feeds)
	return r, nil
}

// gains returns the gain up to each weighing from the second on, of one that is
// of that age today.
func gains(species energy.Species, age energy.Age, log Weights, today Date) ([]Gained, error) {
	var all []Gained
	for i := 1; i < len(log); i++ {
		before, now := log[i-1], log[i]
		g := Gained{Date: now.Date, Weight: now.Weight, Days: int(now.Date - before.Date)}
		g.Age = age - energy.Age(today-now.Date)
		g.Gain = (now.Weight - before.Weight) / units.Mass(g.Days)
		// DailyGain looks at one day: over a longer gap at the mean of it.
		a := energy.Animal{Species: species, Age: g.Age, Weight: before.Weight + g.Gain}
		s := energy.Nursling{Animal: a, DayBefore: before.Weight}
		var err error
		if g.Expected, err = s.DailyGain(); err != nil {
			return nil, err
		}
		g.Flag = g.flag(species, before.Weight)
		if g.Flag == (Flag{}) {
			g.Flag = g.meanFlag(species, log[:i+1])
		}
		all = append(all, g)
	}
	return all, nil
}

// meanDays is over how many days, at least, the mean gain is held against the
// alarm too, so that one good day doesn't hide what the days before it were: ours.
const meanDays = 3

// meanFlag returns the flag of the mean gain over the last days of a log that
// ends with g, which is looked at where it is less than expected too. The first
// 24 hours of life are left out.
func (g Gained) meanFlag(species energy.Species, log Weights) Flag {
	s := log.since(meanDays)
	if s == (stretch{}) || g.Age-energy.Age(s.to.Date-s.from.Date) < 2*energy.Day {
		return Flag{}
	}
	g.Days = int(s.to.Date - s.from.Date)
	g.Gain = (s.to.Weight - s.from.Weight) / units.Mass(g.Days)
	a := energy.Animal{Species: species, Age: g.Age, Weight: g.Weight}
	expected, err := energy.Nursling{Animal: a, DayBefore: s.from.Weight}.DailyGain()
	if err != nil {
		return Flag{} // half as much again as three days ago: no alarm
	}
	g.Expected = expected
	if f := g.flag(species, s.from.Weight); f != (Flag{}) || !below(g.Gain, expected.Low) {
		return f
	}
	return Flag{NurslingGain, g.Date, advice.Caution{
		Level: advice.Note, Source: ours,
		Text: g.said(s.from.Weight) + ": less than the " + readable(expected.Low) + " expected; see that it is warm and that it gets its milk",
	}}
}

// said says what was gained since a weight.
func (g Gained) said(from units.Mass) string {
	text := "gained only " + readable(g.Gain) + " a day"
	switch {
	case g.Gain == 0:
		text = "gained nothing"
	case g.Gain < 0:
		text = "lost " + readable(-g.Gain) + " a day"
	}
	return text + " (" + readable(from) + " to " + readable(g.Weight) + " in " + days(g.Days) + ")"
}

// flag returns the flag of a gain.
func (g Gained) flag(species energy.Species, from units.Mass) Flag {
	text := g.said(from)
	source := sourceKittenGain
	if species == energy.Dog {
		source = sourcePuppyGain
	}
	f := Flag{Kind: NurslingGain, Date: g.Date}
	alarm := below(g.Gain, g.Expected.Alarm)
	switch firstDay := g.Age <= 2*energy.Day; {
	case alarm && firstDay:
		f.Caution = advice.Caution{Level: advice.Refer, Text: text + ": more than the slight loss of the first 24 hours, call the veterinarian today", Source: sourceFirstDay}
	case alarm:
		f.Caution = advice.Caution{Level: advice.Refer, Text: text + ": it must gain " + readable(g.Expected.Alarm) + " or more; see that it is warm, and call the veterinarian today", Source: source}
	case g.Gain <= 0 && firstDay:
		f.Caution = advice.Caution{Level: advice.Note, Text: text + ": a slight loss is usual in the first 24 hours, watch; it must gain from now on", Source: sourceFirstDay}
	default:
		return Flag{}
	}
	return f
}

// below reports whether a gain is less than a bound by more than the rounding of a
// difference: 128.2 g less 121.2 g are 7 g, as in package energy.
func below(gain, bound units.Mass) bool {
	const onBoundary = 1e-9
	return bound-gain > onBoundary*units.Mass(math.Abs(float64(bound)))
}

// toTell returns what people tell the nursling by.
func (n Nursling) toTell() string { return string(oneline.AppendKey(nil, n.Name)) }

// inLine returns the name after a space, "" where it would break the line.
func (n Nursling) inLine() string {
	if n.Name == "" || !oneline.Fits(n.Name) {
		return ""
	}
	return " " + n.Name
}
