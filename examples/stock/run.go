package main

import (
	"embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"time"

	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Exit statuses.
const (
	exitOK      = 0
	exitBadRows = 1 // a list, with rows that couldn't be used
	exitFailed  = 2 // no list
)

//go:embed animals.csv foods.csv store.csv
var demo embed.FS

const usage = `Stock says what to order of each food: from the animals, the foods and the store.
Without -animals, -foods and -store they are those of a demo shelter.

The files are CSV with a header row, the columns in any order, as in

  animal,species,weight,energy,by,food,treats
  Bolster,dog,24.6 kg,1237.1 kcal/day,Dr Ysolde Crake,house-dry,biscuit 2

  food,energy,serving,serving energy,serving mass,moisture,for
  house-dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog
  biscuit,3500 kcal/kg,biscuit,28 kcal,8 g,9 %,dog

  food,in store,packs
  house-dry,42.5 kg,15 kg = 48.00 EUR; 3 kg

An animal on several foods has "house-wet 50 %; house-dry" in the cell. What a
veterinarian must see first stands above the order, by animal. The exit status
is 0 if every row was used, 1 if some were not, 2 if there is no list.

`

// options are what the command line says.
type options struct {
	animals, foods, store string
	days                  int
	waste                 units.Percent
	start                 time.Time // zero: not given
	format                string
}

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	var o options
	flags := flag.NewFlagSet("stock", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.StringVar(&o.animals, "animals", "", "CSV `file` of the animals; - is the standard input")
	flags.StringVar(&o.foods, "foods", "", "CSV `file` of the foods")
	flags.StringVar(&o.store, "store", "", "CSV `file` of the store")
	flags.IntVar(&o.days, "days", 28, "days to buy for")
	flags.TextVar(&o.waste, "waste", units.Percent(5), "what is spilled and thrown away, in percent of what is fed")
	flags.Func("start", "the first `day` fed from the store, as in 2026-11-02", func(s string) (err error) {
		o.start, err = time.Parse(time.DateOnly, s)
		return err
	})
	flags.StringVar(&o.format, "format", "text", "text or csv")
	flags.Usage = func() {
		io.WriteString(stderr, usage)
		flags.PrintDefaults()
	}
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return exitOK
	case err != nil:
		return exitFailed
	}
	if err := o.check(flags.Args()); err != nil {
		fmt.Fprintln(stderr, "stock:", err)
		return exitFailed
	}
	l, err := o.list(stdin)
	if err != nil {
		fmt.Fprintln(stderr, "stock:", err)
		return exitFailed
	}
	for _, p := range l.problems {
		fmt.Fprintln(stderr, "stock:", p)
	}
	write := l.writeText
	if o.format == "csv" {
		write = l.writeCSV
	}
	if err := write(stdout); err != nil {
		fmt.Fprintln(stderr, "stock: writing the list:", err)
		return exitFailed
	}
	if len(l.problems) > 0 {
		return exitBadRows
	}
	return exitOK
}

func (o *options) check(rest []string) error {
	given := 0
	for _, name := range [...]string{o.animals, o.foods, o.store} {
		if name != "" {
			given++
		}
	}
	switch {
	case len(rest) > 0:
		return fmt.Errorf("unexpected %q, want flags only: see -h", rest)
	case given != 0 && given != 3:
		return errors.New("want -animals, -foods and -store, or none of them for the demo")
	case o.format != "text" && o.format != "csv":
		return fmt.Errorf("-format %q: want text or csv", o.format)
	}
	_, err := portion.Supply{Days: o.days, Waste: o.waste}.Lines()
	return err
}

// list reads the files and works the list out.
func (o *options) list(stdin io.Reader) (*list, error) {
	l := &list{options: *o}
	var foods *foodcsv.File
	for _, file := range [...]struct {
		name, demo string
		stdin      io.Reader
		read       func(*csvrow.Reader, func(string)) error
	}{
		{o.foods, "foods.csv", nil, func(r *csvrow.Reader, report func(string)) (err error) {
			foods, err = foodcsv.ReadFile(r, report)
			return err
		}},
		{o.store, "store.csv", nil, func(r *csvrow.Reader, report func(string)) error { return l.readStore(r, foods, report) }},
		{o.animals, "animals.csv", stdin, func(r *csvrow.Reader, report func(string)) error { return l.readAnimals(r, foods, report) }},
	} {
		in, name, err := open(file.name, file.demo, file.stdin)
		if err != nil {
			return nil, err
		}
		err = file.read(csvrow.NewReader(in), func(problem string) { l.problems = append(l.problems, name+": "+problem) })
		in.Close()
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
	}
	err := l.work()
	return l, err
}

// open opens a file for reading, or the demo file where no name is given.
func open(name, demoName string, stdin io.Reader) (io.ReadCloser, string, error) {
	switch {
	case name == "":
		f, err := demo.Open(demoName)
		return f, demoName, err
	case name == "-" && stdin != nil:
		return io.NopCloser(stdin), "standard input", nil
	}
	f, err := os.Open(name)
	return f, name, err
}
