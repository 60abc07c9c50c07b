package main

import (
	"bytes"
	"encoding/csv"
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// golden compares got with a file of testdata.
func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", name, diff)
	}
}

// runs runs the program and returns what it wrote and its exit status.
func runs(args ...string) (stdout, stderr string, status int) {
	var out, errs bytes.Buffer
	status = run(args, &out, &errs)
	return out.String(), errs.String(), status
}

var (
	tansy = []string{
		"-foods", "foods.csv", "-name", "Tansy", "-species", "cat", "-weight", "4.6 kg", "-condition", "5/9", "-status", "neutered",
		"-from", "Tarnwick House Cat Dry", "-to", "Tarnwick House Cat Wet",
	}
	quince = []string{
		"-foods", "foods.csv", "-name", "Quince", "-species", "ferret", "-weight", "1.2 kg", "-meals", "4", "-scale", "0.1 g",
		"-from", "Tarnwick Kitten Dry", "-to", "Tarnwick House Cat Dry", "-start", "2026-11-02", "-have", "1 kg",
	}
	sheets = map[string][]string{
		"demo.golden":         nil,
		"demo-csv.golden":     {"-format", "csv"},
		"demo-working.golden": {"-working"},
		"events.golden":       {"-event", "4 step_back", "-event", "7 missed", "-event", "10 hold 3"},
		"events-csv.golden":   {"-event", "3 missed", "-event", "4 stop", "-format", "csv"},
		"half-a-bag.golden":   {"-have", "500 g"},
		"unknown.golden":      {"-from", "loose kibble", "-fed", "300 g", "-have", "0 g"},
		"stray.golden":        {"-from", "", "-steps", "immediate", "-meals", "3", "-have", "0 g"},
		"diabetic.golden":     {"-circumstances", "diabetic", "-intake", "", "-energy", "1068 kcal/day", "-by", "Dr Ysolde Crake"},
		"cat.golden":          tansy,
		"ferret.golden":       quince,
	}
)

func TestSheets(t *testing.T) {
	for name, args := range sheets {
		stdout, stderr, status := runs(args...)
		if status != exitOK || stderr != "" {
			t.Errorf("%s: exit status %d, stderr %q", name, status, stderr)
		}
		golden(t, name, stdout)
	}
}

// A page of A4 or letter paper takes 60 lines; the slowest schedule of all fits too.
func TestSheetFitsOnePage(t *testing.T) {
	for name, args := range sheets {
		if strings.Contains(name, "csv") || strings.Contains(name, "working") {
			continue
		}
		stdout, _, _ := runs(args...)
		if n := strings.Count(stdout, "\n"); n > 60 {
			t.Errorf("%s has %d lines", name, n)
		}
		for line := range strings.Lines(stdout) {
			if n := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); n > width {
				t.Errorf("%s: %d characters: %s", name, n, line)
			}
		}
	}
}

// The table of the demo, worked by hand: 1068 kcal from 3560 to 2980 kcal/kg.
func TestDemoIsTheHandWorkedTable(t *testing.T) {
	stdout, _, _ := runs("-format", "csv")
	rows, err := csv.NewReader(strings.NewReader(stdout)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, r := range rows[1:] {
		got = append(got, strings.Join(r[:5], " "))
	}
	const house, slim = " Tarnwick House Dog Dry ", " Ostlehouse Slim Dog Dry "
	want := []string{
		"1 2026-11-02 25 %" + house + "225", "1 2026-11-02 25 %" + slim + "90",
		"2 2026-11-03 25 %" + house + "225", "2 2026-11-03 25 %" + slim + "90",
		"3 2026-11-04 50 %" + house + "150", "3 2026-11-04 50 %" + slim + "179",
		"4 2026-11-05 50 %" + house + "150", "4 2026-11-05 50 %" + slim + "179",
		"5 2026-11-06 75 %" + house + "75", "5 2026-11-06 75 %" + slim + "269",
		"6 2026-11-07 75 %" + house + "75", "6 2026-11-07 75 %" + slim + "269",
		"7 2026-11-08 100 %" + slim + "358",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// A caution of refer level stands above the grams, and on every day of the CSV.
func TestReferBeforeTheGrams(t *testing.T) {
	stdout, _, _ := runs(sheets["diabetic.golden"]...)
	refer, grams := strings.Index(stdout, "VETERINARIAN FIRST"), strings.Index(stdout, "225 g")
	if refer < 0 || grams < refer {
		t.Errorf("refer at %d, grams at %d", refer, grams)
	}
	stdout, _, _ = runs(append(sheets["diabetic.golden"], "-format", "csv")...)
	if n := strings.Count(stdout, "refer: a change of food in such an animal (diabetic)"); n != 7 {
		t.Errorf("on %d days of 7", n)
	}
}

func TestRefusals(t *testing.T) {
	file := func(text string) string {
		name := filepath.Join(t.TempDir(), "foods.csv")
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return name
	}
	const header = "food,energy,serving,serving energy,serving mass,moisture,for\n"
	bad := file(header + "donated,3500 kcal/kg,cup,412 kcal,100 g,10 %,dog\nhouse,3560 kcal/kg,,,,9 %,dog\nhouse,3500 kcal/kg,,,,9 %,dog\n")
	for _, tt := range []struct {
		args []string
		want string
	}{
		{[]string{"x"}, `foodchange: unexpected ["x"], want flags only: see -h`},
		{[]string{"-format", "csv", "-working"}, "foodchange: -working: want -format text, the working is no rows"},
		{[]string{"-fed", "200 g"}, `foodchange: -fed "200 g": the energy of Tarnwick House Dog Dry stands in the foods file: want no -fed`},
		{[]string{"-fed", "200 g", "-from", "", "-steps", "immediate"}, `foodchange: -fed "200 g": want -from as well, the name of that food`},
		{[]string{"-start", "0001-01-01"}, `invalid value "0001-01-01" for flag -start: want a later day: that one stands for none`},
		{[]string{"-format", "pdf"}, `foodchange: -format "pdf": want text or csv`},
		{[]string{"-weight", "18"}, `invalid value "18" for flag -weight: units: mass "18": no unit: want kg, g, mg, lb or oz`},
		{[]string{"-event", "hold"}, `invalid value "hold" for flag -event: want a day, what happened (hold, step_back, missed, stop) and for how many days, as in "4 hold 3"`},
		{[]string{"-event", "x hold"}, `invalid value "x hold" for flag -event: want a day, what happened (hold, step_back, missed, stop) and for how many days, as in "4 hold 3"`},
		{[]string{"-event", "3 wait"}, `invalid value "3 wait" for flag -event: want a day, what happened (hold, step_back, missed, stop) and for how many days, as in "4 hold 3"`},
		{[]string{"-event", "3 hold 0"}, `invalid value "3 hold 0" for flag -event: want a day, what happened (hold, step_back, missed, stop) and for how many days, as in "4 hold 3"`},
		{[]string{"-start", "2 Nov"}, `invalid value "2 Nov" for flag -start: parsing time "2 Nov" as "2006-01-02": cannot parse "2 Nov" as "2006"`},
		{[]string{"-status", "neutered"}, `foodchange: want one of -status, -intake and -energy, from which the day's energy follows`},
		{[]string{"-intake", "1068"}, `foodchange: -intake: units: energy "1068": no unit: want kcal, kJ, Mcal, MJ, cal_th or J`},
		{[]string{"-intake", "", "-energy", "a lot"}, `foodchange: -energy: units: energy "a lot": no number: want a number and kcal, kJ, Mcal, MJ, cal_th or J`},
		{[]string{"-from", "hay", "-to", "straw", "-name", "\x07", "-intake", ""}, `foodchange: -name "\a": want no line breaks or other control characters
foodchange: want one of -status, -intake and -energy, from which the day's energy follows
foodchange: -from "hay": want a name of the foods file
foodchange: -to "straw": want a name of the foods file`},
		{[]string{"-foods", "none.csv"}, "foodchange: want one of -status, -intake and -energy, from which the day's energy follows\nfoodchange: open none.csv: no such file or directory"},
		{[]string{"-meals", "0", "-scale", "2 kg", "-event", "1 stop"}, `foodchange: portion: scale step "2 kg": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g
foodchange: portion: meals "0": want 1 to 24 a day
foodchange: transition: events[0].day "1": want day 2 or later`},
		{[]string{"-circumstances", "diabetic"}, `foodchange: energy: circumstances "diabetic": a change of food can harm such an animal; needed: the name of the veterinarian who ordered it: Plan{By}`},
		{[]string{"-from", "loose kibble", "-fed", "30 g"}, `foodchange: transition: from "30 g of loose kibble": want the grams fed now, all of the day: for 1068.0 kcal a day they would have to hold 35600 kcal/kg`},
		{
			append(tansy[:len(tansy):len(tansy)], "-foods", bad, "-from", "donated", "-to", "house"),
			"foodchange: " + bad + `: line 2: food "donated": label: 3500 kcal/kg, 412 kcal/cup and 100 g/cup disagree: the cup makes 4120 kcal/kg, 17.7 % apart, 16.8 % at the nearest ends of rounding; check the label, and weigh one cup` + "\n" +
				"foodchange: " + bad + `: line 4: food "house": stands twice: nobody can tell which row is right`,
		},
		{append(tansy[:len(tansy):len(tansy)], "-foods", file("food\n")), `foodchange: `},
		{append(tansy[:len(tansy):len(tansy)], "-foods", file(header+"\"house")), `foodchange: `},
	} {
		stdout, stderr, status := runs(tt.args...)
		if got := strings.TrimSuffix(stderr, "\n"); status != exitFailed || stdout != "" || got != tt.want && (tt.want != "foodchange: " || !strings.HasPrefix(got, tt.want)) {
			t.Errorf("%q: status %d, stdout %q\ngot  %s\nwant %s", tt.args, status, stdout, stderr, tt.want)
		}
	}
}

// However long the amounts and the plan are, no figure touches another and none is
// off the page.
func TestFiguresStandApart(t *testing.T) {
	for _, tt := range []struct {
		args []string
		want []string
	}{
		{
			[]string{"-scale", "0.001 g", "-meals", "7"},
			[]string{"old: 150 g = 4 × 21.429 + 3 × 21.428\n", "new: 179.195 g = 2 × 25.6 + 5 × 25.599\n"},
		},
		{
			[]string{"-event", "2 hold 60", "-event", "62 hold 50"},
			[]string{" 113-114 Mon 22 Feb - Tue 23 Feb 50 %   150 g = 2 × 75 ", " 117 on Fri 26 Feb on "},
		},
	} {
		stdout, _, status := runs(tt.args...)
		for _, want := range tt.want {
			if !strings.Contains(stdout, want) || status != exitOK {
				t.Errorf("%q: no %q in\n%s", tt.args, want, stdout)
			}
		}
		for line := range strings.Lines(stdout) {
			if n := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); n > width {
				t.Errorf("%q: %d characters: %s", tt.args, n, line)
			}
		}
	}
}

// Two warnings of one source are not one: that the food is for cats, and that the
// scale is too coarse for the grams.
func TestCautionsOfOneSourceAreAllSaid(t *testing.T) {
	foods := filepath.Join(t.TempDir(), "foods.csv")
	const text = "food,energy,serving,serving energy,serving mass,moisture,for\n" +
		"Kitty,4000 kcal/kg,,,,9 %,cat\nHouse Dog Dry Adult Lamb with Rice,2980 kcal/kg,,,,9 %,dog\n"
	if err := os.WriteFile(foods, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	stdout, stderr, _ := runs("-foods", foods, "-species", "dog", "-weight", "2 kg", "-condition", "5/9", "-status", "neutered",
		"-scale", "5 g", "-from", "Kitty", "-to", "House Dog Dry Adult Lamb with Rice")
	for _, want := range []string{
		"! Kitty is food for cats, not for dogs: choose a food that is\n",
		"! the 5 g scale makes 25 g of Kitty out of 23.55 g a day",
		"! the 5 g scale makes 30 g of House Dog Dry Adult Lamb with Rice out of 31.60 g a day, -5.1 %: use a\n  1 g scale (and 2 like it on other days)\n",
		"old: Kitty ", "new: House Dog Dry Adult Lam…\n",
	} {
		if !strings.Contains(stdout, want) {
			t.Errorf("no %q in\n%s%s", want, stdout, stderr)
		}
	}
}

func TestHelp(t *testing.T) {
	stdout, stderr, status := runs("-h")
	if status != exitOK || stdout != "" || !strings.HasPrefix(stderr, usage) || !strings.Contains(stderr, "-scale") {
		t.Errorf("status %d\n%s%s", status, stdout, stderr)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestOutputThatCannotBeWritten(t *testing.T) {
	var errs bytes.Buffer
	if status := run(nil, broken{}, &errs); status != exitFailed || errs.String() != "foodchange: writing the sheet: disk full\n" {
		t.Errorf("status %d, %q", status, errs.String())
	}
	var _ io.Writer = broken{}
}
