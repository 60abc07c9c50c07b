package main

import (
	"strings"
	"testing"

	"example.org/bowlgram/examples/gallery/internal/testkit"
)

var program = testkit.Program(run)

// own are the flags of a dog that loses weight, with what a test adds.
func own(args ...string) []string {
	return append([]string{"-name", "Bracken", "-species", "dog", "-score", "8/9", "-daily", "888 kcal", "-since", "2026-11-02"}, args...)
}

// contains checks that texts stand in the page, in that order.
func contains(t *testing.T, page string, texts ...string) {
	t.Helper()
	rest := strings.Join(strings.Fields(page), " ") // however the lines are broken
	for _, text := range texts {
		_, after, ok := strings.Cut(rest, text)
		if !ok {
			t.Errorf("no %q, in its place, in\n%s", text, page)
			return
		}
		rest = after
	}
}

func TestDemo(t *testing.T) {
	for _, tt := range []struct {
		golden string
		args   []string
	}{
		{"harbottle.golden", nil},
		{"harbottle-asked.golden", []string{"-asked"}},
		{"custard.golden", []string{"-demo", "custard"}},
	} {
		stdout, stderr, status := program.Run(t, "", tt.args...)
		if status != 0 || stderr != "" {
			t.Errorf("%v: exit status %d, stderr %q", tt.args, status, stderr)
		}
		testkit.Golden(t, tt.golden, stdout)
	}
}

// The visits' table of the demo as its clinic wrote it by hand: the loss a week
// in percent of the weight before, and stalled at the last, when treats are asked
// about before anything is cut.
func TestStalledDogIsAskedAboutTreats(t *testing.T) {
	stdout, _, _ := program.Run(t, "")
	contains(t, stdout,
		"Stalled: ", "Keep 888 kcal a day, and ask about treats",
		"38.50 kg", "37.90 kg -1.6 % -0.78", "37.20 kg -3.4 % -0.92", "36.40 kg -5.5 % -1.08", "36.20 kg -6.0 % -0.27",
		"Before any cut ask what else it gets")
	stdout, _, _ = program.Run(t, "", "-asked")
	contains(t, stdout, "Proposed: 799 kcal a day instead of 888 kcal (-10 %)") // 888.3 - 10 %, of 888: 799.2
}

// What the demo dog ate by hand: 270 g × 2.98 + 24 g × 3.5 = 888.6 kcal, less 32 g ×
// 2.98 = 95.4 kcal left on two of 14 days: 881.8 kcal. It lost 200 g in them: 7.92
// kcal × 200 / 14 = 113.1 kcal a day more would have kept it.
func TestOwnRequirementByHand(t *testing.T) {
	stdout, _, _ := program.Run(t, "")
	contains(t, stdout,
		"14 days from 2026-12-14 to 2026-12-27: 882 kcal a day on average of 888 kcal, the least 829 kcal on 2026-12-23.",
		"Its own requirement, to keep its weight, is 995 kcal a day")
}

// The table of the demo cat as its shelter wrote it by hand. The flags are those
// of the shelter or stricter ones: a cat that loses above 2 % a week, or 5 % in 7
// days, is referred.
func TestShelterCatVisitByVisit(t *testing.T) {
	stdout, _, _ := program.Run(t, "", "-demo", "custard")
	contains(t, stdout,
		"2026-11-02 4.30 kg 0 ",
		"2026-11-05 4.18 kg -2.8 % -6.51 1 refer: rate of loss",
		"2026-11-09 4.02 kg -6.5 % -6.70 1 refer: quick loss, refer: rate of loss, warn: shelter shift",
		"2026-11-12 3.96 kg -7.9 % -3.48 1 refer: quick loss, refer: rate of loss, warn: shelter shift",
		"2026-11-16 3.92 kg -8.8 % -1.77 2 refer: rate of loss, warn: shelter shift",
		"2026-11-23 4.01 kg -6.7 % +2.30 2 warn: shelter shift")
}

// After a week, at 6.5 % less with little appetite, the veterinarian comes first.
func TestReferComesFirst(t *testing.T) {
	file := "date,weight,appetite\n2026-11-02,4.30 kg,0\n2026-11-05,4.18 kg,1\n2026-11-07,,1\n2026-11-09,4.02 kg,1\n"
	stdout, stderr, status := program.Run(t, file, "-name", "Sedge", "-species", "cat", "-shelter", "-scale", "10 g", "-")
	if status != 0 || stderr != "" {
		t.Errorf("exit status %d, stderr %q", status, stderr)
	}
	if first := "VISIT OF 2026-11-09    Sedge, cat\n\n!! VETERINARIAN: lost 6.51 % in 7 days"; !strings.HasPrefix(stdout, first) {
		t.Errorf("want it to begin with %q:\n%s", first, stdout)
	}
}

func TestTooEarly(t *testing.T) {
	for _, tt := range []struct {
		args []string
		file string
		want string
	}{
		{own("-"), "date,weight,scale\n2026-11-02,38.5 kg,100 g\n", "Too early to tell"},
		{own("-"), "date,weight,scale\n2026-11-02,38.5 kg,100 g\n2026-11-09,38.2 kg,100 g\n", "Too early to tell"},
		{[]string{"-name", "Sedge", "-species", "cat", "-"}, "date,weight,scale\n2026-11-02,4.3 kg,10 g\n", "One weighing: too early to tell."},
	} {
		stdout, stderr, status := program.Run(t, tt.file, tt.args...)
		if status != 0 {
			t.Errorf("exit status %d, stderr %q", status, stderr)
		}
		contains(t, stdout, tt.want)
	}
}

func TestBadRowsAreNamedAndTheOthersComputed(t *testing.T) {
	stdout, stderr, status := program.Run(t, "", own("-intake", "testdata/bad-intake.csv", "testdata/bad.csv")...)
	if status != 1 {
		t.Errorf("exit status %d, want 1", status)
	}
	testkit.Golden(t, "bad.golden", stdout)
	testkit.Golden(t, "bad-stderr.golden", stderr)
}

func TestRefusals(t *testing.T) {
	const sound = "date,weight,scale\n2026-11-02,38.5 kg,100 g\n"
	for _, tt := range []struct {
		args  []string
		stdin string
		want  string
	}{
		{[]string{"-nonsense"}, "", "flag provided but not defined"},
		{[]string{"-plot", "visit.pdf"}, "", "want a name that ends in .png or .svg"},
		{[]string{"-species", "dog"}, "", "-species goes with a file of weights"},
		{[]string{"-demo", "nobody"}, "", `-demo "nobody": want harbottle or custard`},
		{[]string{"-demo", "custard", "-asked"}, "", "custard has none"},
		{[]string{"-"}, sound, `-name "": want a name; -species: want dog, cat, ferret or other`},
		{own("-demo", "custard", "-"), sound, "want no file with it"},
		{own("-", "-"), sound, "want one file"},
		{own("-intake", "-", "-"), sound, "want one file only on the standard input"},
		{[]string{"-name", "Sedge", "-species", "dog", "-daily", "888 kcal", "-"}, sound, "want -daily and -since together"},
		{[]string{"-name", "Sedge", "-species", "dog", "-asked", "-"}, sound, "-asked and -initial go with"},
		{own("-"), "weight\n38.5 kg\n", `column "date" missing`},
		{own("-"), "date,weight\n2026-11-02,38.5 kg\n", "no row that can be used"},
		{own("-"), "date,weight,scale\n2026-11-02,0 kg,100 g\n", "no weighing that can be used"},
		{own("-today", "2026-11-01", "-"), sound, "no weighing that can be used"},
		{own("-circumstances", "ill", "-"), sound, "ill"},
		{own("-score", "5/9", "-"), sound, "5/9"},
		{own("testdata/missing.csv"), "", "testdata/missing.csv"},
		{own("-intake", "testdata/missing.csv", "-"), sound, "testdata/missing.csv"},
		{[]string{"-plot", "testdata/none/visit.png"}, "", "drawing: "},
	} {
		program.Refuses(t, tt.stdin, tt.want, tt.args...)
	}
}

// A day's meals of which a row can't be used would add up to too little.
func TestDayWithABadRowIsNotAddedUp(t *testing.T) {
	const file = "date,meal,food,offered,left,energy\n" +
		"2026-12-14,1,Ostlehouse Slim Dog Dry,270 g,0 g,2980 kcal/kg\n" +
		"2026-12-14,2,House Biscuit,24,0 g,3500 kcal/kg\n" +
		"2026-12-15,1,Ostlehouse Slim Dog Dry,270 g,0 g,2980 kcal/kg\n"
	stdout, _, status := program.Run(t, file, own("-intake", "-", "harbottle.csv")...)
	if status != 1 {
		t.Errorf("exit status %d, want 1", status)
	}
	contains(t, stdout, "can't be used: [2026-12-14].", "1 day, 2026-12-15: 805 kcal of 888 kcal.") // 270 g × 2.98 = 804.6
	stdout, _, status = program.Run(t, strings.Replace(file, "2026-12-14,2", "14/12,2", 1), own("-intake", "-", "harbottle.csv")...)
	if status != 1 {
		t.Errorf("exit status %d, want 1", status)
	}
	contains(t, stdout, "Nothing is added up")
	if strings.Contains(stdout, "805 kcal") {
		t.Errorf("added up all the same:\n%s", stdout)
	}
}

func TestWriteErrorIsReported(t *testing.T) {
	program.ReportsWriteError(t, "weightclinic: writing the page: short write\n")
}
