package main

import (
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"

	"example.org/bowlgram/examples/gallery/internal/command"
	"example.org/bowlgram/units"
)

//go:embed weighings.csv
var demo []byte

const usage = `Scoopcheck says how much a cup or a scoop really holds, from weighings of level fills.
Without weighings it is that of a demo cup.

  scoopcheck [flags] "94 g" "97 g" "91 g" ...
  scoopcheck [flags] -file FILE

The file is CSV with a header row: the column weighing and, if wanted, left out (the
reason why one isn't to count), as in

  weighing,left out
  94 g,
  70 g,spilt

The exit status is 0 if every weighing was used, 1 if some could not be, 2 if
there is no result.

`

// settings are what the flags say.
type settings struct {
	cup    string
	file   string
	scale  units.Mass
	label  units.Mass          // zero: not given
	energy units.EnergyDensity // zero: not given
	scoops int                 // zero: not given
	within units.Percent
	plots  command.Plots
	demo   bool
}

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	var s settings
	flags := flag.NewFlagSet("scoopcheck", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.StringVar(&s.cup, "cup", "this cup", "the `name` of the cup and what is in it")
	flags.StringVar(&s.file, "file", "", "CSV `file` of the weighings; - is the standard input")
	flags.TextVar(&s.scale, "scale", s.scale, "the step of the scale, as in \"1 g\"; without it its rounding isn't counted")
	flags.TextVar(&s.label, "label", s.label, "what a level cup holds by the label, as in \"100 g\"")
	flags.TextVar(&s.energy, "energy", s.energy, "energy of the food as fed, as in \"3560 kcal/kg\"")
	flags.IntVar(&s.scoops, "scoops", 0, "scoops a day, 1 to 1000")
	flags.TextVar(&s.within, "within", units.Percent(1), "how exactly the mean is wanted")
	flags.Var(&s.plots, "plot", "draw into this `file`, .png or .svg; may be given again")
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
		fmt.Fprintln(stderr, "scoopcheck:", err)
		return command.Failed
	}
	if s.demo = flags.NArg() == 0 && s.file == ""; s.demo {
		if flags.NFlag() > len(s.plots) {
			return fail(errors.New("want weighings or -file with these flags: see -h; the demo takes -plot alone"))
		}
		s.cup = "feed room cup, Tarnwick House Dog Dry"
		s.scale, s.label, s.scoops = units.Gram, 100*units.Gram, 3
		s.energy = 3560 * units.KilocaloriePerKilogram
	}
	bad := false
	report := func(problem string) {
		bad = true
		fmt.Fprintln(stderr, "scoopcheck:", problem)
	}
	l, err := s.weighings(flags.Args(), stdin, report)
	if err != nil {
		return fail(err)
	}
	c, err := s.check(l)
	if err != nil {
		return fail(err)
	}
	if err := s.plots.Write(c.picture()); err != nil {
		return fail(fmt.Errorf("drawing: %w", err))
	}
	if _, err := io.WriteString(stdout, c.text()); err != nil {
		return fail(fmt.Errorf("writing the page: %w", err))
	}
	if bad {
		return command.BadRows
	}
	return command.OK
}
