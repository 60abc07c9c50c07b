package main

import (
	"errors"
	"fmt"

	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// level of every interval: 19 times in 20.
const level = 95

// check is everything that the page and the picture show of a cup.
type check struct {
	settings
	*list
	cup   scoop.Calibration
	mean  units.Range[units.Mass]
	next  units.Range[units.Mass]
	day   units.Range[units.Mass] // of so many scoops; zero: not asked for
	label scoop.Comparison        // zero: no label
	odd   scoop.Grubbs
}

// check works it all out.
func (s *settings) check(l *list) (*check, error) {
	c := &check{settings: *s, list: l}
	var faults []error
	if why := csvrow.NameFault(s.cup); why != "" {
		faults = append(faults, fmt.Errorf("-cup %q: %s", s.cup, why))
	}
	if s.energy < 0 || s.energy > 9400*units.KilocaloriePerKilogram { // pure fat: AAFCO's modified Atwater gives it 8,500, gross energy is 9,400
		faults = append(faults, fmt.Errorf("-energy %q: want the kcal/kg as fed of a food", s.energy))
	}
	if s.scoops < 0 {
		faults = append(faults, fmt.Errorf("-scoops %d: want 1 or more, or no flag", s.scoops))
	}
	if s.label < 0 {
		faults = append(faults, fmt.Errorf("-label %q: want a mass above zero, or no flag", s.label))
	}
	var err error
	try := func(e error) { err = errors.Join(err, e) }
	c.cup, err = scoop.Calibrate(l.used, s.scale)
	if err == nil {
		c.mean, err = c.cup.MeanInterval(level)
		var e error
		c.next, e = c.cup.NextScoop(level)
		try(e)
		c.odd, e = c.cup.Outlier(level)
		try(e)
		if s.scoops > 0 {
			c.day, e = c.cup.Day(s.scoops, level)
			try(e)
		}
		if s.label > 0 {
			c.label, e = c.cup.Against(s.label, level)
			try(e)
		}
	}
	return c, errors.Join(append(faults, err)...)
}
