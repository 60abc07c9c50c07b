package main

import (
	"strings"
	"testing"

	"example.org/bowlgram/examples/gallery/internal/testkit"
)

var program = testkit.Program(run)

func TestDemo(t *testing.T) {
	stdout, stderr, status := program.Run(t, "")
	if status != 0 || stderr != "" {
		t.Errorf("exit status %d, stderr %q", status, stderr)
	}
	testkit.Golden(t, "demo.golden", stdout)
}

// The demo by hand: the twelve weighings add up to 1134 g, their squared distances
// from 94.5 g to 83; s = √(83/11) = 2.747. With the rounding of 1/12 of the 1 g
// scale the mean is uncertain by √(7.545/12 + 1/12) = 0.844, on 14.1 effective
// degrees of freedom; t = 2.145 for 14 in any table: ± 1.81. Next scoop:
// √(7.545 × 13/12 + 1/12) = 2.873, 11.2 degrees of freedom, t = 2.201 for 11: ± 6.3.
func TestDemoByHand(t *testing.T) {
	stdout, _, _ := program.Run(t, "")
	for _, want := range []string{
		"A level scoop is 94.5 g on average, 5.5 % less than the 100 g of the label; 19 times in 20 its true mean\nlies between 92.7 g and 96.3 g.\n",
		"the next scoop will be between 88.2 g and 100.8 g",
		"by the label they would be 1068 kcal", // 3 × 356 kcal
		"line 8, 70 g: spilt on the way to the scale\n",
	} {
		if !strings.Contains(stdout, want) {
			t.Errorf("no %q in\n%s", want, stdout)
		}
	}
}

// The count data of NIST/SEMATECH e-Handbook 7.2.2, taken for grams: mean 53.7,
// s 6.567; with t = 2.262 (printed there) and no rounding 53.7 ± 4.7.
func TestWeighingsOfTheCommandLineAreThoseOfAFile(t *testing.T) {
	var args []string
	var file strings.Builder
	file.WriteString("weighing\n")
	for mass := range strings.FieldsSeq("50 48 44 56 61 52 53 55 67 51") {
		args = append(args, mass+" g")
		file.WriteString(mass + " g\n")
	}
	typed, stderr, status := program.Run(t, "", args...)
	if status != 0 || stderr != "" {
		t.Fatalf("exit status %d, stderr %q", status, stderr)
	}
	read, _, _ := program.Run(t, file.String(), "-file", "-")
	if typed != read {
		t.Errorf("typed:\n%s\nread:\n%s", typed, read)
	}
	if want := "A level scoop is 53.7 g on average, and 19 times in 20 its true mean lies between 49 g and 58.4 g.\n"; !strings.Contains(typed, want) {
		t.Errorf("no %q in\n%s", want, typed)
	}
}

func TestBadRowsAreNamedAndTheOthersComputed(t *testing.T) {
	stdout, stderr, status := program.Run(t, "", "-file", "testdata/bad.csv", "-scale", "1 g", "-label", "100 g")
	if status != 1 {
		t.Errorf("exit status %d, want 1", status)
	}
	testkit.Golden(t, "bad.golden", stdout)
	testkit.Golden(t, "bad-stderr.golden", stderr)
}

func TestRefusals(t *testing.T) {
	for _, tt := range []struct {
		args  []string
		stdin string
		want  string
	}{
		{[]string{"-nonsense"}, "", "flag provided but not defined: -nonsense"},
		{[]string{"-plot", "cup.gif", "94 g"}, "", `"cup.gif": want a name that ends in .png or .svg`},
		{[]string{"-label", "100 g"}, "", "the demo takes -plot alone"},
		{[]string{"-label", "100"}, "", "no unit"},
		{[]string{"94 g", "95", "96 g", "x g"}, "", "weighing 2 \"95\": no unit"},
		{[]string{"94 g", "95", "96 g", "x g"}, "", "weighing 4 \"x g\""},
		{[]string{"94 g", "95 g"}, "", "want 3"},
		{[]string{"-scale", "5 g", "94 g", "95 g", "96 g"}, "", "94 g"},
		{[]string{"-scoops", "-1", "94 g", "95 g", "96 g"}, "", "-scoops -1: want 1 or more"},
		{[]string{"-cup", "", "94 g", "95 g", "96 g"}, "", "-cup"},
		{[]string{"-energy", "99999 kcal/kg", "94 g", "95 g", "96 g"}, "", "-energy"},
		{[]string{"-file", "-", "94 g"}, "", "want weighings or -file, not both"},
		{[]string{"-file", "-"}, "mass\n94 g\n", `column "mass" unknown`},
		{[]string{"-file", "-"}, "", "no header row"},
		{[]string{"-file", "-"}, "weighing\n94 g\n95 g\n", "want 3"},
		{[]string{"-file", "testdata/missing.csv"}, "", "testdata/missing.csv"},
		{[]string{"-plot", "testdata/none/cup.png"}, "", "drawing: "},
	} {
		program.Refuses(t, tt.stdin, tt.want, tt.args...)
	}
}

func TestWriteErrorIsReported(t *testing.T) {
	program.ReportsWriteError(t, "scoopcheck: writing the page: short write\n")
}
