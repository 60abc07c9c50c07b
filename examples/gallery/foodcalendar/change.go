package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
)

// change is the record of a change of food.
type change struct {
	Animal string          `json:"animal"`
	Need   energy.Stored   `json:"need"`
	Plan   transition.Plan `json:"plan"`
}

// readChange reads a record.
func readChange(in io.Reader) (*change, error) {
	const most = 1 << 20
	data, err := io.ReadAll(io.LimitReader(in, most+1))
	if err != nil {
		return nil, err
	}
	if len(data) > most {
		return nil, fmt.Errorf("more than %d bytes: is it a record of a change?", most)
	}
	c := new(change)
	if err := strictjson.Decode(data, c); err != nil {
		return nil, err
	}
	if why := csvrow.NameFault(c.Animal); why != "" {
		return nil, fmt.Errorf("animal %q: %s", c.Animal, why)
	}
	if c.Need.Stage == nil {
		return nil, fmt.Errorf("need: want a stage, as in {\"stage\": \"observed\", …}")
	}
	return c, nil
}

// readTimes reads the times of the meals, in the order of the day.
func readTimes(text string) ([]portion.Clock, error) {
	var times []portion.Clock
	last := -1
	for part := range strings.SplitSeq(text, ",") {
		clock, err := portion.ParseClock(strings.TrimSpace(part))
		if err != nil {
			return nil, err
		}
		minutes, _ := clock.Minutes()
		if minutes <= last {
			return nil, fmt.Errorf("%s: want the times in the order of the day", clock)
		}
		last = minutes
		times = append(times, clock)
	}
	return times, nil
}
