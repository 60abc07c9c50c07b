package main

import (
	"bufio"
	"embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/bowlgram/internal/csvrow"
)

// Exit statuses.
const (
	exitOK      = 0
	exitBadRows = 1 // a sheet, with rows that couldn't be used
	exitFailed  = 2 // no sheet, or not all of it
)

//go:embed animals.csv foods.csv
var demo embed.FS

// sheet is one of the forms that the plans of the animals are written in.
type sheet interface {
	add(*plan) error
	close() error
}

const usage = `Daysheet prints the day's feeding sheet: grams per meal for each animal.
Without -animals and -foods it is that of a demo shelter.

The files are CSV with a header row, the columns in any order, as in

  animal,place,species,weight,status,energy,by,condition,days unfed,food,meals,scale,hold
  Bolster,run 3,dog,24.6 kg,neutered,,,5/9,,house-dry,2,1 g,
  Mudge,ward,cat,4.2 kg,,205 kcal/day,Dr Ysolde Crake,,,house-wet,5,,surgery at 9

  food,energy,serving,serving energy,serving mass,moisture,for
  house-dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog
  house-wet,,can,170 kcal,156 g,78 %,cat

Species: dog, cat, ferret or other. Status: neutered, intact, inactive, senior or
unknown, or empty where energy and by hold a prescribed amount (and for a ferret).
The columns status, energy, by, condition, days unfed, meals (2), scale (1 g) and
hold may be absent; any figure of a food may be empty that follows from the rest.

Several foods stand in one food cell, treats in the column treats:

  Tarnwick House Cat Wet 50 %; Tarnwick House Cat Dry      half the energy; the rest
  Tarnwick House Biscuit 2 biscuits                        a count, or a mass as in "5 g"

Treats, masses and counts come out of the day first. Foods may have the columns units
("small biscuit = 4 g = 14 kcal"), form, role, analysis, defaults, predict and claim,
see go doc and the example labelcheck.

For other life stages, as in

  animal,place,species,weight,stage,age,adult weight,ladder,day,by,condition,food,meals,weighed
  Dunnock,puppies,dog,6.4 kg,growth,12 wk,22 kg,,,,5/9,house-puppy,4,7
  Gantry,ward,dog,16.2 kg,refeeding,,,25/50/75/100 %,2,Dr Ysolde Crake,1/9,house-dry,4,1

there are the columns

  stage           adult, resting, growth, gestation, lactation, nursling, work,
                  weight loss, weight gain, refeeding, observed, prescribed
  age             "12 wk"                       any stage, nursling always
  ideal weight                                  adult, resting, work, weight loss and gain
  circumstances   ill, tube_fed, diabetic, ...  any stage
  weighed         days since then, 0 for today  any stage
  adult weight    expected                      growth
  weight before   mating; a day ago; the start  gestation; nursling; observed
  young, week     from 1                        lactation; week: gestation too
  exercise        light, moderate, heavy        work, or distance ("12 km") and status
  ladder, day     "25/50/75/100 %", from 1      refeeding, with by
  intake          eaten now, "240 kcal/day"     observed, weight loss and gain
  over            how long, "21 d"              observed

and for foods the column stages (growth, reproduction, maintenance). A column that
the stage doesn't read must be empty.

The exit status is 0 if every row was used, 1 if some were not (see standard
error and the sheet), 2 if there is no sheet or no whole one.

`

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("daysheet", flag.ContinueOnError)
	flags.SetOutput(stderr)
	animalsFile := flags.String("animals", "", "CSV `file` of the animals; - is the standard input")
	foodsFile := flags.String("foods", "", "CSV `file` of the foods")
	format := flags.String("format", "text", "text or csv")
	working := flags.Bool("working", false, "print the working of every amount after the text sheet")
	given := func(name string) (ok bool) {
		flags.Visit(func(f *flag.Flag) { ok = ok || f.Name == name })
		return ok
	}
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
	fail := func(a ...any) int {
		fmt.Fprintln(stderr, append([]any{"daysheet:"}, a...)...)
		return exitFailed
	}
	switch {
	case flags.NArg() > 0:
		return fail("unexpected", flags.Args(), "want flags only: see -h")
	case given("animals") && *animalsFile == "" || given("foods") && *foodsFile == "":
		return fail("want the names of files after -animals and -foods, not empty ones")
	case (*animalsFile == "") != (*foodsFile == ""):
		return fail("want both -animals and -foods, or neither for the demo")
	case *format != "text" && *format != "csv":
		return fail(fmt.Sprintf("-format %q: want text or csv", *format))
	case *working && *format != "text":
		return fail("-working goes with -format text")
	}

	animalsIn, animalsName, err := open(*animalsFile, "animals.csv", stdin)
	if err != nil {
		return fail(err)
	}
	defer animalsIn.Close()
	foodsIn, foodsName, err := open(*foodsFile, "foods.csv", nil)
	if err != nil {
		return fail(err)
	}
	defer foodsIn.Close()

	bad := false
	report := func(file string) func(string) {
		return func(problem string) {
			bad = true
			fmt.Fprintf(stderr, "daysheet: %s: %s\n", file, problem)
		}
	}
	foods, err := readFoods(csvrow.NewReader(foodsIn), report(foodsName))
	if err != nil {
		return fail(foodsName+":", err)
	}
	animals, err := newAnimals(csvrow.NewReader(animalsIn))
	if err != nil {
		return fail(animalsName+":", err)
	}
	out := bufio.NewWriterSize(stdout, 64<<10)
	title := ""
	if *animalsFile == "" {
		title = "DEMO: the animals, foods, places and people of this sheet are invented."
	}
	var s sheet = newRowSheet(out)
	if *format == "text" {
		text := newTextSheet(out, title, *working)
		text.calls, text.weights, text.treats = animals.staged, animals.has(colWeighed), animals.has(colTreats)
		s = text
	}
	rows, readErr, err := fill(s, animals, foods, report(animalsName))
	if rows == 0 && readErr == nil {
		fmt.Fprintf(stderr, "daysheet: %s: no animals in it\n", animalsName)
	}
	if err == nil {
		err = out.Flush()
	}
	switch {
	case err != nil:
		return fail("writing the sheet:", err)
	case readErr != nil:
		return fail(animalsName+":", readErr)
	case bad:
		return exitBadRows
	}
	return exitOK
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

// fill works out every animal, puts it on the sheet and counts the rows. Where the reading
// breaks off, the sheet says so in a last row.
func fill(s sheet, animals *animals, foods *foods, report func(string)) (rows int, readErr, writeErr error) {
	var p plan
	for ; readErr == nil; rows++ {
		switch err := animals.next(&p.order, foods); {
		case err == io.EOF:
			return rows, nil, s.close()
		case err != nil:
			readErr = err
			p.order = order{problem: fmt.Sprintf("the reading broke off at line %d, what follows is missing: %v", animals.records.Line(), err)}
		}
		p.work()
		if p.problem != "" && readErr == nil {
			report(p.problem)
		}
		if err := s.add(&p); err != nil {
			return rows, readErr, err
		}
	}
	return rows, readErr, s.close()
}
