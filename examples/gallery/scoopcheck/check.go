package main

import (
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

// mostEnergy is the most that a food can have: that of pure fat, gross, in Small Animal Clinical
// Nutrition, 5th ed. (from memory), as package trend has it.
const mostEnergy = 9400 * units.KilocaloriePerKilogram

// check works it all out. All faults come back at once.
func (s *settings) check(l *list) (*check, error) {
	c := &check{settings: *s, list: l}
	faults := s.faults()
	try := func(err error) {
		if err != nil {
			faults = append(faults, err)
		}
	}
	var err error
	if c.cup, err = scoop.Calibrate(l.used, s.scale); err != nil {
		try(err)
		return nil, faults.Err()
	}
	c.mean, err = c.cup.MeanInterval(level)
	try(err)
	c.next, err = c.cup.NextScoop(level)
	try(err)
	c.odd, err = c.cup.Outlier(level)
	try(err)
	if s.scoops > 0 {
		c.day, err = c.cup.Day(s.scoops, level)
		try(err)
	}
	if s.label > 0 {
		c.label, err = c.cup.Against(s.label, level)
		try(err)
	}
	return c, faults.Err()
}

// faults returns what is wrong with the flags themselves.
func (s *settings) faults() (faults units.ErrorList) {
	say := func(format string, args ...any) { faults = append(faults, fmt.Errorf(format, args...)) }
	if why := csvrow.NameFault(s.cup); why != "" {
		say("-cup %q: %s", s.cup, why)
	}
	if s.energy < 0 || s.energy > mostEnergy {
		say("-energy %q: want what a food has, as fed, up to %s, or no flag", s.energy, mostEnergy)
	}
	if s.scoops < 0 {
		say("-scoops %d: want 1 or more, or no flag", s.scoops)
	}
	if s.label < 0 {
		say("-label %q: want a mass above zero, or no flag", s.label)
	}
	if !(s.within > 0 && s.within <= 50) {
		say("-within %q: want above 0 %%, up to 50 %%", s.within)
	}
	return faults
}
