package main

import (
	"errors"
	"flag"
	"fmt"
	"io"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/examples/gallery/internal/command"
	"example.org/bowlgram/units"
)

const usage = `Weightclinic prints the page of one animal's visit, from a log of its weights.
Without a file it is that of a demo animal.

  weightclinic [flags] FILE        - is the standard input

The file is CSV with a header row, the columns in any order, as in

  date,weight,scale,appetite
  2026-11-02,38.5 kg,100 g,2

The columns scale (with -scale), confirmed and appetite may be absent. The file of
-intake has date,meal,food,offered,left,energy. A weight loss that runs is told by
-daily and -since.

The exit status is 0 if every row was used, 1 if some were not (see standard
error and the page), 2 if there is no page.

`

// settings are what the flags say.
type settings struct {
	name           string
	animal         energy.Animal
	initial        units.Mass // zero: the first weighing
	daily          units.Energy
	since          trend.Date
	asked, shelter bool
	hoursUnfed     int
	scale          units.Mass // zero: each row says its own
	today          trend.Date // zero: that of the newest row
	weights        string     // files; empty: the demo's
	intake         string
	demo           string // name of the demo; empty: none
	plots          command.Plots
}

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	var s settings
	flags := flag.NewFlagSet("weightclinic", flag.ContinueOnError)
	flags.SetOutput(stderr)
	s.define(flags)
	flags.Usage = func() {
		io.WriteString(stderr, usage)
		flags.PrintDefaults()
	}
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return command.OK
	case err != nil:
		return command.Failed
	}
	fail := func(err error) int {
		fmt.Fprintln(stderr, "weightclinic:", err)
		return command.Failed
	}
	if err := s.settle(flags); err != nil {
		return fail(err)
	}
	l, err := s.read(stdin)
	if err != nil {
		return fail(err)
	}
	v, err := s.visit(l)
	for _, problem := range l.problems {
		fmt.Fprintln(stderr, "weightclinic:", problem)
	}
	if err != nil {
		return fail(err)
	}
	if err := s.plots.Write(v.picture()); err != nil {
		return fail(fmt.Errorf("drawing: %w", err))
	}
	if _, err := io.WriteString(stdout, v.text()); err != nil {
		return fail(fmt.Errorf("writing the page: %w", err))
	}
	if len(l.problems) > 0 {
		return command.BadRows
	}
	return command.OK
}
