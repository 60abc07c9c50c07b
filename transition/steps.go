package transition

import (
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// Step is so many days at one share of the new food.
type Step struct {
	Days  int
	Share units.Percent // of the new food
}

// Steps is a schedule of a change of food: rising shares of the new food, the
// last of them 100 %. It is one of the published schedules below or one's own
// (NewSteps, ParseSteps). It is comparable with ==; one's own is never equal to a
// published one. The zero value stands for the default of the species:
//
//	dog     FourStages, 7 days
//	cat     TenSteps, 10 days, within the 7 to 14 of Côté 2020 for a diet food
//	ferret  Slow, with the caution that no schedule is published for ferrets
//	other   none: the steps must be given
type Steps struct {
	schedule schedule // zero for one's own
	n        uint8    // steps in use; the others are zero
	days     [maxSteps]uint8
	shares   [maxSteps]units.Percent
}

// Limits of one's own steps: ours.
const (
	maxSteps = 20
	maxStay  = 60 // days at one step
	minShare = 1  // %; a share of that or less is a fraction typed for a percentage
)

// The published schedules. They are not to be assigned to.
var (
	// FourStages is 25, 50 and 75 % for two days each, all from day 7
	// (University of Missouri; the client sheet of Côté 2020 starts with the same
	// two days).
	FourStages = published(fourStages)
	// FourDays is 25, 50, 75 and 100 % on days 1 to 4: the quick end of the 4 to 7
	// days of SACN 5th ed., p. 386, for cats, and of the 3 to 7 of p. 279 for
	// dogs. Day 1 and the end are printed, the days between follow.
	FourDays = published(fourDays)
	// TenSteps is 10 % more each day, all on day 10 (DK, p. 215, kittens).
	TenSteps = published(tenSteps)
	// Slow is 10 % more every four days, all on day 37: within the month to six
	// weeks of Tufts for slow cats. The steps are ours.
	Slow = published(slow)
	// Immediate is all new food from day 1, for an animal whose old food nobody
	// knows or has. No source sets it out; it is cautioned.
	Immediate = published(immediate)
)

// schedule is a published schedule. The zero value is none.
type schedule uint8

const (
	fourStages schedule = iota + 1
	fourDays
	tenSteps
	slow
	immediate
)

var scheduleNames = []string{"", "four_stages", "four_days", "ten_steps", "slow", "immediate"}

var scheduleSources = [...]advice.Source{
	fourStages: sourceMissouri, fourDays: sourceCats, tenSteps: sourceKitten, slow: sourceSlow, immediate: ours,
}

func published(s schedule) Steps {
	var x Steps
	switch s {
	case fourStages:
		x = even(4, 2)
	case fourDays:
		x = even(4, 1)
	case tenSteps:
		x = even(10, 1)
	case slow:
		x = even(10, 4)
	case immediate:
		x = even(1, 1)
	}
	x.schedule = s
	return x
}

// even returns n equal steps of so many days, the last of one.
func even(n, days int) Steps {
	x := Steps{n: uint8(n)}
	for i := range n {
		x.days[i], x.shares[i] = uint8(days), units.Percent(100*(i+1)/n)
	}
	x.days[n-1] = 1
	return x
}

// NewSteps returns one's own schedule: 1 to 20 steps of 1 to 60 days, each share
// above 1 % and above the one before, the last of them 100 % (the limits are
// ours). The last step is open: its days are those that are listed.
//
// An error is a *units.FieldError that names every step it refuses.
func NewSteps(steps ...Step) (Steps, error) {
	if hint := checkSteps(steps); hint != "" {
		return Steps{}, refuse("steps", stepsText(steps), stepForms, hint)
	}
	x := Steps{n: uint8(len(steps))}
	for i, s := range steps {
		x.days[i], x.shares[i] = uint8(s.Days), s.Share
	}
	return x, nil
}

const stepForms = `1 to 20 steps of 1 to 60 days, each share above 1 % and above the one before, the last 100 %, as in "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %"`

// checkSteps returns what is wrong with the steps, or "".
func checkSteps(steps []Step) string {
	if n := len(steps); n == 0 || n > maxSteps {
		return strconv.Itoa(n) + " steps"
	}
	var wrong []string
	for i, s := range steps {
		nth := "step " + strconv.Itoa(i+1)
		if s.Days < 1 || s.Days > maxStay {
			wrong = append(wrong, nth+" takes "+strconv.Itoa(s.Days)+" days")
		}
		switch {
		case !(0 < s.Share && s.Share <= 100):
			wrong = append(wrong, nth+" is "+s.Share.String())
		case s.Share <= minShare:
			wrong = append(wrong, nth+" is "+s.Share.String()+": a fraction? that is "+(100*s.Share).String())
		case i > 0 && s.Share <= steps[i-1].Share:
			wrong = append(wrong, nth+" doesn't rise: "+s.Share.String()+" after "+steps[i-1].Share.String())
		}
	}
	if last := steps[len(steps)-1].Share; len(wrong) == 0 && last != 100 {
		wrong = append(wrong, "the last is "+last.String())
	}
	return strings.Join(wrong, ", ")
}

// DefaultSteps returns the schedule of a species where none is asked for, and the
// zero value where there is none: see Steps.
func DefaultSteps(s energy.Species) Steps {
	switch s {
	case energy.Dog:
		return FourStages
	case energy.Cat:
		return TenSteps
	case energy.Ferret:
		return Slow
	}
	return Steps{}
}

// IsZero reports whether s stands for the default of the species.
func (s Steps) IsZero() bool { return s.n == 0 }

// Len returns the number of steps; 0 for the zero value.
func (s Steps) Len() int { return int(s.n) }

// Days returns the number of days up to and with the last step; 0 for the zero
// value.
func (s Steps) Days() int {
	n := 0
	for _, d := range s.days[:s.n] {
		n += int(d)
	}
	return n
}

// untilFull returns the first day of the new food alone. What is listed after it
// makes no change slower.
func (s *Steps) untilFull() int {
	n := 1
	for _, d := range s.days[:s.n-1] {
		n += int(d)
	}
	return n
}

// leap returns the largest rise, from one share to another.
func (s *Steps) leap() (from, to units.Percent) {
	var before units.Percent
	for _, share := range s.shares[:s.n] {
		if share-before > to-from {
			from, to = before, share
		}
		before = share
	}
	return from, to
}

// All returns the steps. The slice is the caller's.
func (s Steps) All() []Step {
	steps := make([]Step, s.n)
	for i := range steps {
		steps[i] = Step{Days: int(s.days[i]), Share: s.shares[i]}
	}
	return steps
}

// Source returns where the schedule is published, and "ours" for one's own.
func (s Steps) Source() advice.Source {
	if s.schedule == 0 {
		return ours
	}
	return scheduleSources[s.schedule]
}

// share returns the share of a step counted from 1; 0 is the old food alone.
func (s *Steps) share(step int) units.Percent {
	if step == 0 {
		return 0
	}
	return s.shares[step-1]
}

// capped returns s with at most so many days a step, as one's own, or s itself
// where nothing is cut.
func (s Steps) capped(days int) Steps {
	x := s
	for i := range x.days[:x.n] {
		x.days[i] = min(x.days[i], uint8(days))
	}
	if x == s {
		return s
	}
	x.schedule = 0
	for _, p := range []Steps{FourStages, FourDays, TenSteps, Slow} {
		if p.days == x.days && p.shares == x.shares {
			return p
		}
	}
	return x
}

// name returns the name of a published schedule, and "" for one's own.
func (s Steps) name() string { return enum.Text(s.schedule, scheduleNames) }

// longest returns the most days that a step takes.
func (s Steps) longest() int { return int(slices.Max(s.days[:s.n])) }
