package transition_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/transition"
)

func TestEventsChangeWhatRemains(t *testing.T) {
	const (
		hold, back, missed, stop = transition.Hold, transition.StepBack, transition.Missed, transition.Stop
	)
	for _, tt := range []struct {
		name   string
		events []transition.Event
		want   string
	}{
		{"nothing", nil, "25 25 50 50 75 75 100"},
		{"hold two days", []transition.Event{{4, hold, 2}}, "25 25 50 50 50 50 75 75 100"},
		{"hold at the end of a step", []transition.Event{{3, hold, 3}}, "25 25 25 25 25 50 50 75 75 100"},
		{"the old food for a week first", []transition.Event{{1, hold, 7}}, "0 0 0 0 0 0 0 25 25 50 50 75 75 100"},
		{"hold after the end", []transition.Event{{8, hold, 2}}, "25 25 50 50 75 75 100 100 100"},
		{"back for two days, then forward again", []transition.Event{{4, back, 0}}, "25 25 50 25 25 50 50 75 75 100"},
		{"back for one day", []transition.Event{{6, back, 1}}, "25 25 50 50 75 50 75 75 100"},
		{"back from all new", []transition.Event{{8, back, 2}}, "25 25 50 50 75 75 100 75 75 100"},
		{"back from the first step", []transition.Event{{2, back, 1}}, "25 0 25 25 50 50 75 75 100"},
		{"a missed day", []transition.Event{{3, missed, 0}}, "25 25 - 50 50 75 75 100"},
		{"missed at once", []transition.Event{{1, missed, 2}}, "- - 25 25 50 50 75 75 100"},
		{"hold after a missed day", []transition.Event{{3, missed, 1}, {4, hold, 1}}, "25 25 - 25 50 50 75 75 100"},
		{"missed after the end", []transition.Event{{8, missed, 2}}, "25 25 50 50 75 75 100 - - 100"},
		{"back before the days missed are over", []transition.Event{{3, missed, 5}, {5, hold, 1}}, "25 25 - - 25 50 50 75 75 100"},
		{"stop", []transition.Event{{4, stop, 0}}, "25 25 50 0"},
		{"back, hold, stop", []transition.Event{{4, back, 1}, {5, hold, 2}, {9, stop, 0}}, "25 25 50 25 25 25 50 50 0"},
		{"hold cut short by a step back", []transition.Event{{4, hold, 5}, {6, back, 1}}, "25 25 50 50 50 25 50 50 75 75 100"},
	} {
		p := toSlim()
		p.Events = tt.events
		if got := byDay(t, p, oakum()); got != tt.want {
			t.Errorf("%s: %s, want %s", tt.name, got, tt.want)
		}
	}
}

func TestMissedDayHoldsNothing(t *testing.T) {
	p := toSlim()
	p.Events = []transition.Event{{Day: 3, Kind: transition.Missed}}
	if d := mustDays(t, p, oakum())[2]; !d.Equal(transition.Day{Number: 3, Missed: true}) {
		t.Errorf("%+v", d)
	}
}

func TestStopGivesTheOldFoodInFull(t *testing.T) {
	p := toSlim()
	p.Events = []transition.Event{{Day: 5, Kind: transition.Stop}}
	days := mustDays(t, p, oakum())
	if d := days[len(days)-1]; d.Number != 5 || d.Step != 0 || d.Mass(houseDry.Name) != 300 || d.Mass(slimDry.Name) != 0 {
		t.Errorf("%+v", d)
	}
}

func TestEventsThatAreRefused(t *testing.T) {
	for _, tt := range []struct {
		events []transition.Event
		want   string
	}{
		{[]transition.Event{{}}, `transition: events[0].kind "": want hold, step_back, missed or stop`},
		{[]transition.Event{{3, 9, 1}}, `transition: events[0].kind "": want hold, step_back, missed or stop`},
		{[]transition.Event{{0, transition.Missed, 1}}, `transition: events[0].day "0": want day 1 or later`},
		{[]transition.Event{{1, transition.StepBack, 1}}, `transition: events[0].day "1": want day 2 or later`},
		{[]transition.Event{{1, transition.Stop, 3}}, `transition: events[0].day "1": want day 2 or later; transition: events[0].days "3": want none for stop, which lasts`},
		{[]transition.Event{{3, transition.Hold, 0}, {4, transition.Hold, -1}, {5, transition.Missed, 61}}, `transition: events[0].days "0": want 1 to 60 days to hold; transition: events[1].days "-1": want 1 to 60 days; transition: events[2].days "61": want 1 to 60 days`},
		{[]transition.Event{{9, transition.Hold, 1}}, `transition: events[0].day "9": want a day of the plan, up to 8`},
		{[]transition.Event{{4, transition.Hold, 1}, {4, transition.Missed, 1}}, `transition: events[1].day "4": want a day after the hold on day 4, one event a day`},
		{[]transition.Event{{4, transition.Stop, 0}, {5, transition.Hold, 1}}, `transition: events[1].day "5": want nothing after the stop on day 4 (to try again is a new plan)`},
		{[]transition.Event{{2, transition.Hold, 60}, {3, transition.Hold, 60}, {4, transition.Hold, 60}, {5, transition.Hold, 60}, {6, transition.Hold, 60}, {7, transition.Hold, 60}}, `transition: events "367 days": want a plan of at most 366 days`},
	} {
		p := toSlim()
		p.Events = tt.events
		if days, err := p.Days(oakum()); err == nil || err.Error() != tt.want || days != nil {
			t.Errorf("%+v\ngot  %v\nwant %s", tt.events, err, tt.want)
		}
	}
	// A year and a day, ours, is a plan still: 7 days, five times 60 and 59 more.
	whole := toSlim()
	whole.Events = []transition.Event{{2, transition.Hold, 60}, {3, transition.Hold, 60}, {4, transition.Hold, 60}, {5, transition.Hold, 60}, {6, transition.Hold, 60}, {7, transition.Hold, 59}}
	if days, err := whole.Days(oakum()); err != nil || len(days) != 366 {
		t.Errorf("%d days, %v", len(days), err)
	}
	p := transition.Plan{To: diet.Only(slimDry), Steps: transition.Immediate, Meals: 3, Scale: 1, Events: []transition.Event{{2, transition.Stop, 0}}}
	if _, err := p.Days(oakum()); err == nil || err.Error() != `transition: from "0 foods": want the old food, for an event that goes back to it` {
		t.Errorf("back to a food nobody knows: %v", err)
	}
}
