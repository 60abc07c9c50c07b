package main

import (
	"errors"
	"flag"
	"fmt"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/units"
)

// define names the flags.
func (s *settings) define(flags *flag.FlagSet) {
	flags.StringVar(&s.name, "name", "", "the animal's `name`")
	flags.TextVar(&s.animal.Species, "species", s.animal.Species, "dog, cat, ferret or other")
	flags.TextVar(&s.animal.Age, "age", s.animal.Age, "its age, as in \"7 y\"")
	flags.TextVar(&s.animal.Condition, "score", s.animal.Condition, "its body condition on the first day of the plan, as in 8/9")
	flags.TextVar(&s.animal.Ideal, "ideal", s.animal.Ideal, "its recorded ideal weight")
	flags.TextVar(&s.animal.Circumstances, "circumstances", s.animal.Circumstances, "what else is known of it today, as in \"ill\"")
	flags.IntVar(&s.hoursUnfed, "unfed", 0, "whole `hours` since it last ate")
	flags.TextVar(&s.daily, "daily", s.daily, "what it is fed a day, treats included, as in \"888 kcal\"")
	flags.TextVar(&s.since, "since", s.since, "the day from which on")
	flags.TextVar(&s.initial, "initial", s.initial, "its weight on the first day of the plan; the first weighing unless given")
	flags.BoolVar(&s.asked, "asked", false, "treats, other feeders and the measuring were asked about today")
	flags.BoolVar(&s.shelter, "shelter", false, "the first weighing is that of its intake to a shelter")
	flags.TextVar(&s.scale, "scale", s.scale, "the step of the scale, where a row doesn't say it")
	flags.TextVar(&s.today, "today", s.today, "the day of the visit; that of the newest row unless given")
	flags.StringVar(&s.intake, "intake", "", "CSV `file` of what it was served and what it left")
	flags.StringVar(&s.demo, "demo", "", "the demo `animal` where there is no file: harbottle (the default) or custard")
	flags.Var(&s.plots, "plot", "draw into this `file`, .png or .svg; may be given again")
}

// settle checks what was given, all of it at once, and fills in the demo.
func (s *settings) settle(flags *flag.FlagSet) error {
	var faults []string
	say := func(format string, args ...any) { faults = append(faults, fmt.Sprintf(format, args...)) }
	if flags.NArg() == 0 {
		flags.Visit(func(f *flag.Flag) {
			switch f.Name {
			case "demo", "plot", "asked":
			default:
				say("-%s goes with a file of weights: see -h", f.Name)
			}
		})
		if len(faults) == 0 {
			return s.fillDemo()
		}
		return errors.New(strings.Join(faults, "; "))
	}
	s.weights = flags.Arg(0)
	if flags.NArg() > 1 {
		say("%q: want one file, after the flags: see -h", flags.Args())
	}
	if s.demo != "" {
		say("-demo %s: want no file with it", s.demo)
	}
	if why := csvrow.NameFault(s.name); why != "" {
		say("-name %q: %s", s.name, why)
	}
	if s.animal.Species == 0 {
		say("-species: want dog, cat, ferret or other")
	}
	if (s.daily != 0) != (s.since != 0) {
		say("want -daily and -since together, or neither")
	}
	if s.daily == 0 && (s.asked || s.initial != 0) {
		say("-asked and -initial go with -daily and -since")
	}
	if s.weights == "-" && s.intake == "-" {
		say("want one file only on the standard input")
	}
	if len(faults) > 0 {
		return errors.New(strings.Join(faults, "; "))
	}
	return nil
}

// fillDemo fills in a demo animal. All of it is invented.
func (s *settings) fillDemo() error {
	switch s.demo {
	case "", "harbottle":
		s.demo, s.name = "harbottle", "Harbottle"
		s.animal = energy.Animal{Species: energy.Dog, Condition: energy.BCS9(8)}
		s.daily = 888 * units.Kilocalorie
		var err error
		s.since, err = trend.ParseDate("2026-11-02")
		return err
	case "custard":
		if s.asked {
			return errors.New("-asked goes with a weight loss: custard has none")
		}
		s.name = "Custard"
		s.animal = energy.Animal{Species: energy.Cat, Condition: energy.BCS9(5)}
		s.shelter = true
		return nil
	}
	return fmt.Errorf("-demo %q: want harbottle or custard", s.demo)
}

// loses reports whether a weight loss runs.
func (s *settings) loses() bool { return s.daily != 0 }
