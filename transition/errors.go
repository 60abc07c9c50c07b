package transition

import (
	"strconv"

	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// DayError is what is wrong with some of the days of a plan.
type DayError struct {
	First, Last int // the days, counted from 1
	Err         error
}

// Error returns the days and what is wrong with them.
func (e *DayError) Error() string {
	days := "day " + strconv.Itoa(e.First)
	if e.Last > e.First {
		days = "days " + strconv.Itoa(e.First) + " to " + strconv.Itoa(e.Last)
	}
	return "transition: " + days + ": " + e.Err.Error()
}

// Unwrap returns what is wrong with the days.
func (e *DayError) Unwrap() error { return e.Err }

// refuse returns one refused field.
func refuse(field, value, accepted, hint string) error {
	return &units.FieldError{Package: "transition", Field: field, Value: value, Accepted: accepted, Hint: hint}
}

// addDay appends the faults of a day. One that was the day before's too is
// lengthened.
func addDay(errs units.ErrorList, day int, err error) units.ErrorList {
next:
	for _, fault := range errlist.Of(err) {
		for _, e := range errs {
			if d, ok := e.(*DayError); ok && d.Last == day-1 && d.Err.Error() == fault.Error() {
				d.Last = day
				continue next
			}
		}
		errs = append(errs, &DayError{First: day, Last: day, Err: fault})
	}
	return errs
}
