package main

import (
	"strings"
	"testing"
)

const sedge = "date,weight\n2026-11-02,4.3 kg\n2026-11-09,4.3 kg\n"

// A cat that has eaten nothing for a day is referred.
func TestUnfedCat(t *testing.T) {
	stdout, _, _ := program.Run(t, sedge, "-name", "Sedge", "-species", "cat", "-scale", "10 g", "-unfed", "24", "-")
	if first := "VISIT OF 2026-11-09    Sedge, cat\n\n!! VETERINARIAN: "; !strings.HasPrefix(stdout, first) {
		t.Errorf("want it to begin with %q:\n%s", first, stdout)
	}
}

// The meals of the day of the visit are still to come, so that what was eaten by
// then doesn't make two days under half of the plan.
func TestDayOfTheVisitIsNotJudged(t *testing.T) {
	served := func(days ...string) string {
		var file strings.Builder
		file.WriteString("date,meal,food,offered,left,energy\n")
		for _, day := range days {
			file.WriteString(day + ",1,House Cat Wet,150 g,120 g,1090 kcal/kg\n")
		}
		return file.String()
	}
	// 8/9 at 6 kg: 4.62 kg ideal, on 176 kcal; 30 g hold 33.
	const log = "testdata/cat.csv"
	args := []string{"-name", "Sedge", "-species", "cat", "-score", "8/9", "-daily", "176 kcal", "-since", "2026-11-02", "-intake", "-", log}
	stdout, _, _ := program.Run(t, served("2026-11-08", "2026-11-09"), args...)
	if strings.Contains(stdout, "!! VETERINARIAN") {
		t.Errorf("one day under half, and a morning, are referred:\n%s", stdout)
	}
	stdout, _, _ = program.Run(t, served("2026-11-07", "2026-11-08"), args...)
	if !strings.Contains(stdout, "!! VETERINARIAN") {
		t.Errorf("two days under half aren't referred:\n%s", stdout)
	}
}

// Where the log begins later than the plan its percentages are still of the weight
// on the plan's first day: 600 g in two weeks are 0.75 % of 40 kg a week.
func TestInitialWeight(t *testing.T) {
	const log = "date,weight,scale\n2026-11-16,38.5 kg,100 g\n2026-11-30,37.9 kg,100 g\n"
	stdout, _, _ := program.Run(t, log, own("-initial", "40 kg", "-")...)
	contains(t, stdout, "0.75 % of its initial weight a week", "of 40 kg at the start")
}
