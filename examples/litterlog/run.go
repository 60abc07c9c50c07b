package main

import (
	"bytes"
	"cmp"
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Exit statuses.
const (
	exitOK      = 0
	exitBadRows = 1 // a page, with rows that couldn't be used
	exitFailed  = 2 // no page, or not all of it
)

//go:embed litter.csv
var demo []byte

const usage = `Litterlog prints the morning's page for a litter of orphans: gains, alarms, milk.
Without a file it is that of a demo litter.

  litterlog [flags] FILE        - is the standard input

The file is CSV with a header row, the columns in any order, as in

  nursling,date,weight,scale,confirmed
  Pim,2026-11-02,212 g,1 g,
  Moth,2026-11-02,176 g,1 g,

The columns scale (1 g) and confirmed (yes: weighed again and right) may be absent.
With a file, -species, -born and the four flags of the milk must be given.

The exit status is 0 if every row was used, 1 if some were not (see standard
error and the page), 2 if there is no page or no whole one.

`

// settings are what the flags say.
type settings struct {
	litter  trend.Litter
	milk    recipe
	today   trend.Date // zero: that of the newest weighing
	waste   units.Percent
	format  string
	working bool
	demo    bool
}

// demoSettings are those of the demo litter. All of it is invented.
func demoSettings() settings {
	return settings{
		litter: trend.Litter{Species: energy.Cat, Born: demoBorn(), Feeds: 6},
		milk: recipe{
			energy: 5100 * units.KilocaloriePerKilogram,
			powder: 30 * units.Gram, water: 125 * units.Millilitre, made: 150 * units.Millilitre,
		},
		waste: 4,
	}
}

func demoBorn() trend.Date {
	d, err := trend.ParseDate("2026-10-20")
	if err != nil {
		panic(err)
	}
	return d
}

// needed are the flags that a file can't do without.
var needed = []string{"species", "born", "powder-energy", "powder", "water", "made"}

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	s := demoSettings()
	flags := flag.NewFlagSet("litterlog", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.TextVar(&s.litter.Species, "species", s.litter.Species, "dog or cat")
	flags.TextVar(&s.litter.Born, "born", s.litter.Born, "day of birth, as in 2026-10-20")
	flags.IntVar(&s.litter.Feeds, "feeds", s.litter.Feeds, "feeds a day at least, 1 to 24")
	flags.TextVar(&s.milk.energy, "powder-energy", s.milk.energy, "energy of the milk powder by its label")
	flags.TextVar(&s.milk.powder, "powder", s.milk.powder, "powder of a batch by the label")
	flags.TextVar(&s.milk.water, "water", s.milk.water, "water of that batch")
	flags.TextVar(&s.milk.made, "made", s.milk.made, "what powder and water make, as a jug shows it")
	flags.TextVar(&s.waste, "waste", s.waste, "milk that is spilt or left, 0 % to 50 %")
	flags.TextVar(&s.today, "today", s.today, "day of the page; that of the newest weighing unless given")
	flags.StringVar(&s.format, "format", "text", "text or csv")
	flags.BoolVar(&s.working, "working", false, "print the working of every amount after the text page")
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
		fmt.Fprintln(stderr, append([]any{"litterlog:"}, a...)...)
		return exitFailed
	}
	given := make(map[string]bool)
	flags.Visit(func(f *flag.Flag) { given[f.Name] = true })
	s.demo = flags.NArg() == 0
	if err := s.check(given, flags.Args()); err != nil {
		return fail(err)
	}

	in, name, err := open(flags.Args(), stdin)
	if err != nil {
		return fail(err)
	}
	defer in.Close()
	l, readErr := readLog(in)
	if l == nil {
		return fail(name+":", readErr)
	}
	if len(l.rows) == 0 && readErr == nil {
		return fail(name + ": no weighings in it, only a header")
	}
	s.today = cmp.Or(s.today, l.newestDay(s.litter.Born), s.litter.Born)
	for _, n := range l.nurslings {
		n.settle(s.litter, s.today)
	}

	bad := false
	for _, r := range l.rows {
		if p := r.problem(); p != "" {
			bad = true
			fmt.Fprintf(stderr, "litterlog: %s: %s\n", name, p)
		}
	}
	var out []byte
	if s.format == "csv" {
		out = csvText(l, readErr)
	} else {
		text, err := pageText(s, l, readErr)
		if err != nil {
			return fail(err)
		}
		out = []byte(text)
	}
	switch _, err := stdout.Write(out); {
	case err != nil:
		return fail("writing the page:", err)
	case readErr != nil:
		return fail(name+":", readErr)
	case bad:
		return exitBadRows
	}
	return exitOK
}

// check refuses settings that no page can be made of, all at once, and works out
// the milk.
func (s *settings) check(given map[string]bool, args []string) error {
	var faults []string
	if len(args) > 1 {
		faults = append(faults, fmt.Sprintf("%q: want one file, after the flags: see -h", args))
	}
	var missing []string
	for _, name := range needed {
		if !s.demo && !given[name] {
			missing = append(missing, "-"+name)
		}
	}
	if len(missing) > 0 {
		return fmt.Errorf("want %s too: those of the demo litter aren't yours", strings.Join(missing, ", "))
	}
	if s.format != "text" && s.format != "csv" {
		faults = append(faults, fmt.Sprintf("-format %q: want text or csv", s.format))
	}
	if s.working && s.format == "csv" {
		faults = append(faults, "-working goes with -format text")
	}
	if s.litter.Species != energy.Dog && s.litter.Species != energy.Cat {
		faults = append(faults, fmt.Sprintf("-species %q: want dog or cat", s.litter.Species))
	}
	if !(s.waste >= 0 && s.waste <= 50) {
		faults = append(faults, fmt.Sprintf("-waste %q: want 0 %% to 50 %%", s.waste))
	}
	var err error
	if s.litter.Milk, err = s.milk.strength(); err != nil {
		for _, fault := range errlist.Of(err) {
			faults = append(faults, fault.Error())
		}
	}
	faults = append(faults, s.litterFaults(err == nil)...)
	if len(faults) > 0 {
		return errors.New(strings.Join(faults, "; "))
	}
	return nil
}

// litterFaults returns what the library refuses of the litter itself, whose
// nurslings aren't read yet.
func (s *settings) litterFaults(milk bool) (faults []string) {
	if s.litter.Born == 0 {
		return []string{"-born: want the day of birth, as in 2026-10-20"}
	}
	today := cmp.Or(s.today, s.litter.Born)
	_, err := s.litter.Reports(today)
	for _, fault := range errlist.Of(err) {
		if field, _ := fieldOf(fault); field != "nurslings" && (milk || field != "milk") {
			faults = append(faults, fault.Error())
		}
	}
	return faults
}

// open opens the file, or the demo where there is none.
func open(args []string, stdin io.Reader) (io.ReadCloser, string, error) {
	switch {
	case len(args) == 0:
		return io.NopCloser(bytes.NewReader(demo)), "litter.csv", nil
	case args[0] == "-":
		return io.NopCloser(stdin), "standard input", nil
	}
	f, err := os.Open(args[0])
	return f, args[0], err
}
