package energy

import (
	"slices"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// Ladder is a schedule of the first days of feeding: for each day a percentage
// of the resting energy requirement. It is either one of the named hospital
// schedules (ThreeDayLadder, FourDayLadder, FullLadder) or a veterinarian's own
// (NewLadder, ParseLadder). The zero value is none, and is refused where a
// ladder is needed.
//
// It is comparable with ==. A veterinarian's own ladder is never equal to a
// named one, even with the same steps: starved animals are fed by the first
// and refused the second.
type Ladder struct {
	schedule schedule // zero for a veterinarian's own
	n        uint8    // steps in use; the others are zero
	steps    [maxSteps]units.Percent
}

// Limits of a ladder, ours. Published schedules reach the resting energy in one
// to four days. A step of 1 or less is 100 % or less typed as a fraction.
const (
	maxSteps = 14
	minStep  = 1   // %, and a step is above it
	maxStep  = 100 // %
)

// schedule is a named hospital schedule. The zero value is none.
type schedule uint8

const (
	threeDay schedule = iota + 1
	fourDay
	full
)

var scheduleNames = []string{"", "three_day", "four_day", "full"}

// schedules are the steps of the named schedules, in percent of the resting
// energy requirement.
var schedules = [...]struct {
	steps  []units.Percent
	source advice.Source
}{
	threeDay: {[]units.Percent{100.0 / 3, 200.0 / 3, 100}, advice.Source{
		Work:  "DiBartola (ed), Fluid, Electrolyte, and Acid-Base Disorders in Small Animal Practice, 4th ed., 2012 (edition inferred from its pages)",
		Where: "Box 26-6, p. 640: 1/3 to 1/2, then 2/3 to 3/4; the low ends; the third day is ours", Seen: advice.Primary,
	}},
	fourDay: {[]units.Percent{25, 50, 75, 100}, advice.Source{
		Work:  "DVM Newsmagazine, Nutritional support for hospitalized patients",
		Where: "25 % on day 1, all in 2 to 4 days; the steps between are ours", Seen: advice.Primary,
	}},
	full: {[]units.Percent{100}, sourceAssisted},
}

// sourceAssisted is also the only source that says whose weight: the current.
var sourceAssisted = advice.Source{Work: sacn, Where: "ch. 25 summary, p. 471, assisted feeding on current weight", Seen: advice.Primary}

// ThreeDayLadder returns 1/3, 2/3 and all of the resting energy: the low ends of
// DiBartola 2012, Box 26-6, p. 640, for feeding by bolus. That box was seen to
// its second day; the third is ours.
func ThreeDayLadder() Ladder { return threeDay.ladder() }

// FourDayLadder returns 25, 50, 75 and 100 % of the resting energy: DVM
// Newsmagazine starts at 25 % and reaches all in 2 to 4 days; the steps between
// are ours.
func FourDayLadder() Ladder { return fourDay.ladder() }

// FullLadder returns 100 % of the resting energy from the first day, as SACN 5th
// ed., ch. 25, p. 471, starts assisted feeding in general.
func FullLadder() Ladder { return full.ladder() }

func (s schedule) ladder() Ladder {
	l := ownLadder(schedules[s].steps)
	l.schedule = s
	return l
}

// NewLadder returns a veterinarian's own ladder: for each day, from the first
// on, a percentage of the resting energy. It takes 1 to 14 steps, each above
// 1 % and at most 100 %, none below the one before; all of these limits are
// ours. A step may be repeated.
//
// An error is a *units.FieldError that names every step it refuses.
func NewLadder(percents ...units.Percent) (Ladder, error) {
	if hint := checkSteps(percents); hint != "" {
		return Ladder{}, refuse("ladder", string(appendSteps(nil, percents)), stepForms, hint)
	}
	return ownLadder(percents), nil
}

// ownLadder returns a veterinarian's ladder of checked steps.
func ownLadder(steps []units.Percent) Ladder {
	l := Ladder{n: uint8(len(steps))}
	copy(l.steps[:], steps)
	return l
}

const stepForms = `1 to 14 steps in percent of resting energy, each above 1 % and at most 100 % and none below the one before, as in "25/50/75/100 %"`

// checkSteps returns what is wrong with the steps, or "".
func checkSteps(steps []units.Percent) string {
	if n := len(steps); n == 0 || n > maxSteps {
		return strconv.Itoa(n) + " steps"
	}
	var wrong []string
	for i, p := range steps {
		nth := "step " + strconv.Itoa(i+1)
		switch {
		case !(minStep < p && p <= maxStep):
			text := nth + " is " + p.String()
			if 0 < p && p <= minStep {
				text += ": a fraction? that is " + short(100*float64(p)) + " %"
			}
			wrong = append(wrong, text)
		case i > 0 && p < steps[i-1]:
			wrong = append(wrong, nth+" falls to "+p.String()+" from "+steps[i-1].String())
		}
	}
	return join(wrong...)
}

// IsZero reports whether l is no ladder.
func (l Ladder) IsZero() bool { return l.n == 0 }

// Len returns the number of steps, one for each day; 0 for the zero value.
func (l Ladder) Len() int { return int(l.n) }

// Steps returns the steps in percent of the resting energy, the first day's
// first. The slice is the caller's.
func (l Ladder) Steps() []units.Percent { return slices.Clone(l.steps[:l.n]) }

// step returns the step of a day counted from 1. After the last step it stays
// there.
func (l Ladder) step(day int) units.Percent { return l.steps[min(day, l.Len())-1] }

// own reports whether l is a veterinarian's own.
func (l Ladder) own() bool { return l.n > 0 && l.schedule == 0 }

// name returns the name of the schedule, and "" for a veterinarian's own.
func (l Ladder) name() string { return enum.Text(l.schedule, scheduleNames) }
