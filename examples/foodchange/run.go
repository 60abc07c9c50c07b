package main

import (
	"bufio"
	"embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"time"

	"example.org/bowlgram/internal/errlist"
)

// Exit statuses.
const (
	exitOK     = 0
	exitFailed = 2 // no sheet, or not all of it
)

//go:embed foods.csv
var demo embed.FS

// demoArgs are the invented dog that is shown where no foods file is given. What
// else stands on the command line wins.
var demoArgs = []string{
	"-name", "Oakum", "-species", "dog", "-weight", "18 kg", "-condition", "5/9", "-intake", "1068 kcal/day",
	"-from", "Tarnwick House Dog Dry", "-to", "Ostlehouse Slim Dog Dry", "-start", "2026-11-02", "-have", "1.2 kg",
}

const usage = `Foodchange prints the sheet for a change of food, day by day in grams.
Without -foods it is that of a demo dog.

  foodchange -foods foods.csv -from "House Dry" -to "Slim Dry" -name Oakum \
    -species dog -weight "18 kg" -condition 5/9 -status neutered -start 2026-11-02

The foods file is CSV, as in

  food,energy,serving,serving energy,serving mass,moisture,for
  House Dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog

The exit status is 0, or 2 where there is no sheet.

`

func run(args []string, stdout, stderr io.Writer) int {
	o := new(options)
	flags := o.flags()
	flags.SetOutput(stderr)
	err := flags.Parse(args)
	if err == nil && o.foods == "" {
		*o = options{}
		flags = o.flags()
		err = flags.Parse(append(demoArgs[:len(demoArgs):len(demoArgs)], args...))
	}
	switch {
	case errors.Is(err, flag.ErrHelp):
		io.WriteString(stderr, usage)
		flags.PrintDefaults()
		return exitOK
	case err != nil:
		return exitFailed
	case flags.NArg() > 0:
		err = fmt.Errorf("unexpected %q, want flags only: see -h", flags.Args())
	case o.format != "text" && o.format != "csv":
		err = fmt.Errorf("-format %q: want text or csv", o.format)
	case o.format == "csv" && o.working:
		err = errors.New("-working: want -format text, the working is no rows")
	}
	var s *sheet
	if err == nil {
		s, err = o.sheet()
	}
	if err != nil {
		for _, e := range errlist.Of(err) {
			fmt.Fprintln(stderr, "foodchange:", e)
		}
		return exitFailed
	}
	out := bufio.NewWriter(stdout)
	if o.format == "csv" {
		s.writeCSV(out)
	} else {
		s.writeText(out)
	}
	if err := out.Flush(); err != nil {
		fmt.Fprintln(stderr, "foodchange: writing the sheet:", err)
		return exitFailed
	}
	return exitOK
}

// flags ties the options to their flags.
func (o *options) flags() *flag.FlagSet {
	f := flag.NewFlagSet("foodchange", flag.ContinueOnError)
	f.Usage = func() {} // one line says what is wrong; -h says the rest
	f.StringVar(&o.foods, "foods", "", "CSV `file` of the foods")
	f.StringVar(&o.from, "from", "", "`name` of the old food")
	f.StringVar(&o.to, "to", "", "`name` of the new food")
	f.StringVar(&o.name, "name", "", "`name` of the animal")
	f.TextVar(&o.animal.Species, "species", o.animal.Species, "dog, cat, ferret or other")
	f.TextVar(&o.animal.Weight, "weight", o.animal.Weight, "body `weight`, as in \"18 kg\"")
	f.TextVar(&o.animal.Age, "age", o.animal.Age, "`age`, as in \"12 wk\"")
	f.TextVar(&o.animal.Condition, "condition", o.animal.Condition, "body condition `score`, as in 5/9")
	f.TextVar(&o.animal.Circumstances, "circumstances", o.animal.Circumstances, "what else is known, as in \"diabetic\"")
	f.TextVar(&o.status, "status", o.status, "neutered, intact, inactive, senior or unknown")
	f.StringVar(&o.intake, "intake", "", "`energy` eaten now, as in \"1068 kcal/day\"")
	f.StringVar(&o.energy, "energy", "", "`energy` that a veterinarian has set, as in \"1068 kcal/day\"")
	f.StringVar(&o.by, "by", "", "`name` of the veterinarian")
	f.TextVar(&o.fed, "fed", o.fed, "`grams` of an old food of unknown energy that are fed now, as in \"300 g\"")
	f.TextVar(&o.steps, "steps", o.steps, "the `steps`, as in four_stages")
	f.IntVar(&o.meals, "meals", 2, "meals a day")
	f.TextVar(&o.scale, "scale", gram, "smallest step of the `scale`")
	f.TextVar(&o.have, "have", o.have, "`mass` that there is of the old food, as in \"500 g\"")
	f.Func("event", "what happened, as in \"4 hold 3\"; may be given several times", o.addEvent)
	f.Func("start", "the `day` that the change begins on, as in 2026-11-02", func(s string) (err error) {
		if o.start, err = time.Parse(time.DateOnly, s); err == nil && o.start.IsZero() {
			err = errors.New("want a later day: that one stands for none")
		}
		return err
	})
	f.StringVar(&o.format, "format", "text", "text or csv")
	f.BoolVar(&o.working, "working", false, "and the working of every amount")
	return f
}

// open opens the foods file, or that of the demo.
func (o *options) open() (io.ReadCloser, string, error) {
	if o.foods == "" {
		f, err := demo.Open("foods.csv")
		return f, "foods.csv", err
	}
	f, err := os.Open(o.foods)
	return f, o.foods, err
}
