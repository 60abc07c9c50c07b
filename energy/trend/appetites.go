package trend

import (
	"strconv"

	"example.org/bowlgram/units"
)

// Scored is the appetite of one day.
type Scored struct {
	Date     Date     `json:"date"`
	Appetite Appetite `json:"appetite"`
}

// UnmarshalJSON reads a score. A member of unknown name, or one that stands
// twice, is an error. A JSON null leaves s as it was.
func (s *Scored) UnmarshalJSON(data []byte) error {
	type plain Scored
	return record(data, "scored", func(p plain) { *s = Scored(p) })
}

// Appetites is a log of the appetite of one animal, the oldest day first, at
// most one score a day. In JSON it is an array.
type Appetites []Scored

// Check returns every fault of the log at once: days, at most 7,500 of them, as in
// Weights.Check, and scores that are none.
func (l Appetites) Check(today Date) error { return l.check(today).Err() }

func (l Appetites) check(today Date) units.ErrorList {
	if err := checkToday(today); err != nil {
		return units.ErrorList{err}
	}
	if len(l) > maxLog {
		return units.ErrorList{refuse("appetites", strconv.Itoa(len(l))+" days", "at most "+strconv.Itoa(maxLog), "")}
	}
	var faults units.ErrorList
	var before Date
	for i, s := range l {
		field := "appetite " + strconv.Itoa(i+1)
		if err := checkDate(field+" date", s.Date, before, today, false); err != nil {
			faults = append(faults, err)
		}
		before = max(before, s.Date)
		if s.Appetite == 0 || s.Appetite > Normal {
			faults = append(faults, refuse(field, s.Appetite.String(), "none, reduced or normal", "leave out a day that was not scored"))
		}
	}
	return faults
}
