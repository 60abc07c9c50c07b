package main

import (
	"crypto/sha256"
	"fmt"
	"strings"
	"time"

	"example.org/bowlgram/transition"

	ics "github.com/arran4/golang-ical"
)

// calendar returns the iCalendar file of a change.
//
// The library was chosen because it folds long lines as RFC 5545, 3.1, asks, has
// tagged releases and needs nothing else; github.com/emersion/go-ical does neither
// of the first two.
func (s *settings) calendar(c *change, days []transition.Day) (string, error) {
	cal := ics.NewCalendar()
	cal.SetProductId("-//example.org//Bowlgram foodcalendar//EN")
	cal.SetCalscale("GREGORIAN")
	cal.SetXWRCalName(c.Animal + ": change of food")
	uid := s.identifier(c)
	for i, d := range days {
		if d.Missed {
			continue // nothing was given by the plan
		}
		p := entry{change: c, day: d, last: i == len(days)-1, of: days[len(days)-1].Number}
		date := d.Date(s.start)
		if len(s.times) == 0 {
			e := s.event(cal, fmt.Sprintf("%s-day-%d", uid, d.Number), p.daySummary(), p.dayText())
			e.SetAllDayStartAt(date)
			e.SetAllDayEndAt(date.AddDate(0, 0, 1)) // not included
			continue
		}
		for meal, clock := range s.times {
			minutes, _ := clock.Minutes()
			summary := p.mealSummary(meal + 1)
			e := s.event(cal, fmt.Sprintf("%s-day-%d-meal-%d", uid, d.Number, meal+1), summary, p.dayText())
			at := date.Add(time.Duration(minutes) * time.Minute)
			e.SetProperty(ics.ComponentPropertyDtStart, floating(at))
			e.SetProperty(ics.ComponentPropertyDtEnd, floating(at.Add(15*time.Minute)))
			a := e.AddAlarm()
			a.SetAction(ics.ActionDisplay)
			a.SetTrigger("PT0S")
			a.SetProperty(ics.ComponentPropertyDescription, summary)
		}
	}
	var b strings.Builder
	err := cal.SerializeTo(&b, ics.WithNewLineWindows) // CRLF on every system: RFC 5545, 3.1
	return b.String(), err
}

// event adds an entry with what all of them have. It doesn't make the owner busy.
func (s *settings) event(cal *ics.Calendar, uid, summary, text string) *ics.VEvent {
	e := cal.AddEvent(uid)
	e.SetDtStampTime(s.start) // the clock is never read
	e.SetSequence(s.revision)
	e.SetSummary(summary)
	e.SetDescription(text)
	e.SetTimeTransparency(ics.TransparencyTransparent)
	return e
}

// floating is a local time without a zone, wherever the phone is: RFC 5545, 3.3.5,
// form 1.
func floating(t time.Time) string { return t.Format("20060102T150405") }

// identifier is the same for every file of this change, and for no other's.
func (s *settings) identifier(c *change) string {
	h := sha256.New()
	fmt.Fprintf(h, "%q %s", c.Animal, s.start.Format(time.DateOnly))
	for _, item := range c.Plan.To {
		fmt.Fprintf(h, " %q", item.Food.Name)
	}
	return fmt.Sprintf("foodchange-%x", h.Sum(nil)[:12])
}
