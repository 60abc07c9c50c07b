package transition

import (
	"strconv"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// EventKind is what changes the rest of a plan. The zero value is none.
type EventKind uint8

// What can happen on the way.
const (
	// Hold keeps the mix of the day before for so many days more.
	Hold EventKind = iota + 1
	// StepBack goes back one step for so many days, 2 where none are given
	// (Tufts: 1 to 2), then through the step it came from again, in full.
	StepBack
	// Missed is so many days, 1 where none are given, on which the plan was not
	// followed. They are made up for by nothing: the plan goes on where it was. A
	// meal that the animal leaves is none: see Signs.
	Missed
	// Stop ends the change: the old food again, from that day on.
	Stop
)

var eventNames = []string{"", "hold", "step_back", "missed", "stop"}

// ParseEventKind reads hold, step_back, missed or stop. Case is folded.
func ParseEventKind(s string) (EventKind, error) {
	return enum.Parse[EventKind]("transition", "event", s, eventNames)
}

// String returns the text of k, as in "step_back", and "" for the zero value.
func (k EventKind) String() string { return enum.Text(k, eventNames) }

// AppendText appends the text of k.
func (k EventKind) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "transition", "event", k, eventNames)
}

// MarshalText returns the text of k.
func (k EventKind) MarshalText() ([]byte, error) { return k.AppendText(nil) }

// UnmarshalText sets k from its text; an empty text is the zero value. On error k
// is left as it was.
func (k *EventKind) UnmarshalText(text []byte) error {
	return enum.Unmarshal(k, "transition", "event", text, eventNames)
}

// Event is something that happened on the way. It is comparable; the zero value
// is refused. What is seen on day 4 is an event of day 5: the grams of day 4 were
// weighed, and stay as they are. Only a missed day is an event of its own day.
type Event struct {
	Day  int       `json:"day"` // the first day that it changes, counted from 1
	Kind EventKind `json:"kind"`
	Days int       `json:"days,omitzero"` // how many, 1 to 60; not for Stop
}

// UnmarshalJSON reads an event. Unknown members and bare words are errors; a JSON
// null leaves e as it was, and so does an error.
func (e *Event) UnmarshalJSON(data []byte) error {
	type plain Event
	return strictjson.Record("transition", "event", data, func(p plain) { *e = Event(p) })
}

// maxEventDays is the most days that one event takes: ours. maxDays is the most
// of a plan.
const (
	maxEventDays = 60
	maxDays      = 366
)

// usualDays are the days of the events that need not say how many.
var usualDays = [...]int{StepBack: 2, Missed: 1}

// check refuses an event that can't be, on its own.
func (e Event) check(i int) error {
	field := "events[" + strconv.Itoa(i) + "]"
	var errs units.ErrorList
	if e.Kind == 0 || e.Kind > Stop {
		return refuse(field+".kind", e.Kind.String(), enum.List(eventNames), "")
	}
	first := 1
	if e.Kind == StepBack || e.Kind == Stop {
		first = 2
	}
	if e.Day < first {
		errs = append(errs, refuse(field+".day", strconv.Itoa(e.Day), "day "+strconv.Itoa(first)+" or later", ""))
	}
	days := strconv.Itoa(e.Days)
	switch {
	case e.Kind == Stop && e.Days != 0:
		errs = append(errs, refuse(field+".days", days, "none for stop, which lasts", ""))
	case e.Kind == Hold && e.Days == 0:
		errs = append(errs, refuse(field+".days", days, "1 to 60 days to hold", ""))
	case e.Days < 0 || e.Days > maxEventDays:
		errs = append(errs, refuse(field+".days", days, "1 to 60 days", ""))
	}
	return errs.Err()
}

// count returns how many days the event takes.
func (e Event) count() int {
	if e.Days == 0 {
		return usualDays[e.Kind]
	}
	return e.Days
}

func (e Event) text() string { return e.Kind.String() + " on day " + strconv.Itoa(e.Day) }
