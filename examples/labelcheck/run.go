package main

import (
	"bufio"
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
)

// Exit statuses.
const (
	exitOK     = 0
	exitBad    = 1 // a label refused, or a row that couldn't be used
	exitFailed = 2 // nothing could be read
)

//go:embed foods.csv
var demo string

const usage = `Labelcheck says what the labels of foods come to, and which can't be right.
Without a file it checks those of a demo shelter; - is the standard input.

    labelcheck [-format text|csv] [FILE]

The file is CSV with a header row, the columns in any order, as in

  food,energy,serving,serving energy,serving mass,moisture,for,units,analysis
  house-dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog,scoop = 85 g,"protein 24 %, fat 14 %, fibre 3 %, ash 7 %"
  house-wet,,can,170 kcal,156 g,78 %,cat,,

Any figure may be empty that the label doesn't have. There may also be the columns

  stages    growth, reproduction, maintenance
  form      dry, semi_moist, wet, liquid, powder, fat_or_oil
  role      complete, complementary
  defaults  the form whose published figures stand in for what the analysis lacks
  predict   the equation where there is no energy: modified_atwater, atwater, four_step
  claim     calculated, fed

The exit status is 0 if no label is refused, 1 if one is or a row can't be used, 2
if nothing could be read.

`

// report is one of the forms that the checks are written in.
type report interface {
	add(*check) error
	close() error
}

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("labelcheck", flag.ContinueOnError)
	flags.SetOutput(stderr)
	format := flags.String("format", "text", "text or csv")
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
		fmt.Fprintln(stderr, append([]any{"labelcheck:"}, a...)...)
		return exitFailed
	}
	switch {
	case flags.NArg() > 1:
		return fail("unexpected", flags.Args()[1:], "want one file: see -h")
	case *format != "text" && *format != "csv":
		return fail(fmt.Sprintf("-format %q: want text or csv", *format))
	}
	in, name, title := stdin, "standard input", ""
	switch {
	case flags.NArg() == 0:
		in, name, title = strings.NewReader(demo), "foods.csv", "DEMO: the foods and their labels are invented, and two of them are wrong."
	case flags.Arg(0) != "-":
		f, err := os.Open(flags.Arg(0))
		if err != nil {
			return fail(err)
		}
		defer f.Close()
		in, name = f, flags.Arg(0)
	}
	records := csvrow.NewReader(in)
	header, err := csvrow.ReadHeader(records, foodcsv.Columns, foodcsv.Optional)
	if err != nil {
		return fail(name+":", err)
	}
	out := bufio.NewWriter(stdout)
	var r report = newRows(out)
	if *format == "text" {
		r = newText(out, title)
	}
	read, bad, readErr, err := checkAll(r, records, header, func(problem string) {
		fmt.Fprintf(stderr, "labelcheck: %s: %s\n", name, problem)
	})
	if err == nil {
		err = out.Flush()
	}
	switch {
	case err != nil:
		return fail("writing the report:", err)
	case readErr != nil:
		return fail(name+":", readErr)
	case read == 0:
		return fail(name + ": no food in it could be read")
	case bad:
		return exitBad
	}
	return exitOK
}

// checkAll checks every food and counts those whose row could be read. Where the
// reading breaks off, the report says so in a last row.
func checkAll(r report, records *csvrow.Reader, h csvrow.Header, problem func(string)) (read int, bad bool, readErr, writeErr error) {
	lines := make(map[string]int) // of the names, by what a person can't tell apart
	for readErr == nil {
		rec, err := records.Next()
		if err == io.EOF {
			break
		}
		var c check
		if err != nil {
			readErr = err
			c = check{verdict: notRead, problem: fmt.Sprintf("the reading broke off at line %d, what follows is missing: %v", records.Line(), err)}
		} else {
			c = newCheck(h, &rec, lines)
		}
		if c.verdict != notRead {
			read++
		}
		if c.problem != "" {
			bad = true
			if readErr == nil {
				problem(c.problem)
			}
		}
		if err := r.add(&c); err != nil {
			return read, bad, readErr, err
		}
	}
	return read, bad, readErr, r.close()
}
