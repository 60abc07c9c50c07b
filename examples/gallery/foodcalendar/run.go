package main

import (
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"time"

	"example.org/bowlgram/examples/gallery/internal/command"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
)

//go:embed change.json
var demo []byte

// demoStart is the first day of the demo.
const demoStart = "2026-11-02"

const usage = `Foodcalendar writes a change of food into a calendar file for a phone.
Without a file it is that of a demo dog.

  foodcalendar -start 2026-11-02 -o change.ics FILE        - is the standard input

The exit status is 0, or 2 if there is no calendar. The file is a JSON record of the
animal, its need as a stage of package energy, and the plan of package transition;
the demo's is

`

// settings are what the flags say.
type settings struct {
	start    time.Time
	times    []portion.Clock // of the meals; nil: one entry a day
	revision int
	out      string
}

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	s := settings{}
	flags := flag.NewFlagSet("foodcalendar", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.Func("start", "the first `day` of the change, as in 2026-11-02", func(text string) (err error) {
		s.start, err = time.Parse(time.DateOnly, text)
		return err
	})
	flags.Func("times", "the `times` of the meals, as in \"07:00,18:00\": one entry for each", func(text string) (err error) {
		s.times, err = readTimes(text)
		return err
	})
	flags.IntVar(&s.revision, "revision", 0, "how many files of this change were given out before")
	flags.StringVar(&s.out, "o", "", "write into this `file`; the standard output unless given")
	flags.Usage = func() {
		io.WriteString(stderr, usage+string(demo)+"\n")
		flags.PrintDefaults()
	}
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return command.OK
	case err != nil:
		return command.Failed
	}
	fail := func(err error) int {
		fmt.Fprintln(stderr, "foodcalendar:", err)
		return command.Failed
	}
	c, err := s.change(flags.Args(), stdin)
	if err != nil {
		return fail(err)
	}
	days, err := c.days()
	if err != nil {
		return fail(err)
	}
	text, err := s.calendar(c, days)
	if err != nil {
		return fail(err)
	}
	if s.out != "" {
		err = os.WriteFile(s.out, []byte(text), 0o644)
	} else {
		_, err = io.WriteString(stdout, text)
	}
	if err != nil {
		return fail(fmt.Errorf("writing the calendar: %w", err))
	}
	return command.OK
}

// change reads the record, or the demo's, and checks it against the flags.
func (s *settings) change(args []string, stdin io.Reader) (*change, error) {
	in, name, err := command.Demo("change.json", demo)
	switch {
	case len(args) > 1:
		return nil, fmt.Errorf("%q: want one file, after the flags: see -h", args)
	case s.revision < 0:
		return nil, fmt.Errorf("-revision %d: want 0 or more", s.revision)
	case len(args) == 1 && s.start.IsZero():
		return nil, errors.New("want -start, the first day of the change: the clock is never read")
	case len(args) == 1:
		in, name, err = command.Open(args[0], stdin)
	case s.start.IsZero():
		s.start, err = time.Parse(time.DateOnly, demoStart)
	}
	if err != nil {
		return nil, err
	}
	defer in.Close()
	c, err := readChange(in)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if len(s.times) > 0 && len(s.times) != c.Plan.Meals {
		return nil, fmt.Errorf("-times has %d times for the %d meals of the plan", len(s.times), c.Plan.Meals)
	}
	return c, nil
}

// days works the change out.
func (c *change) days() ([]transition.Day, error) {
	need, err := c.Need.Stage.Estimate()
	if err != nil {
		return nil, err
	}
	return c.Plan.Days(need)
}
