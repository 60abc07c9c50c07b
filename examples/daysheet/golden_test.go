package main

import (
	"bytes"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

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
func runs(t *testing.T, stdin string, args ...string) (stdout, stderr string, status int) {
	t.Helper()
	var out, errs bytes.Buffer
	status = run(args, strings.NewReader(stdin), &out, &errs)
	return out.String(), errs.String(), status
}

func TestDemo(t *testing.T) {
	for _, test := range []struct {
		golden string
		args   []string
	}{
		{"demo.golden", nil},
		{"demo-working.golden", []string{"-working"}},
		{"demo-csv.golden", []string{"-format", "csv"}},
	} {
		stdout, stderr, status := runs(t, "", test.args...)
		if status != exitOK || stderr != "" {
			t.Errorf("%v: exit status %d, stderr %q", test.args, status, stderr)
		}
		golden(t, test.golden, stdout)
	}
}

// The menus of the demo, worked by hand: treats first, then half of what is
// left, then the rest.
func TestDemoMenusByHand(t *testing.T) {
	stdout, _, _ := runs(t, "", "-format", "csv")
	for _, want := range []string{
		"Bolster,shelter run 3,Tarnwick House Dog Dry,1181 kcal,332 g,166 g + 166 g,", // (1237.1 - 56) / 3.56 = 331.78
		"Bolster,shelter run 3,Tarnwick House Biscuit,56 kcal,16 g,2 biscuits outside meals,",
		"Pippet,shelter run 3,Tarnwick House Dog Dry,534 kcal,150 g,75 g + 75 g,", // (562.3 - 28) / 3.56 = 150.09
		"Pippet,shelter run 3,Tarnwick House Biscuit,28 kcal,8 g,1 biscuit outside meals,",
		"Harbottle,clinic weight visits,Ostlehouse Slim Dog Dry,804 kcal,270 g,90 g + 90 g + 90 g,", // (888.3 - 84) / 2.98 = 269.90
		"Harbottle,clinic weight visits,Tarnwick House Biscuit,84 kcal,24 g,3 biscuits outside meals,",
		"Tansy,home,Tarnwick House Cat Wet,132 kcal,121 g,61 g + 60 g,", // 263.84 / 2 = 131.92, / 1.09 = 121.03
		"Tansy,home,Tarnwick House Cat Dry,132 kcal,34 g,17 g + 17 g,",  // / 3.85 = 34.27
		"Biddle,home,Tarnwick House Cat Wet,98 kcal,90 g,45 g + 45 g,",  // 195.83 / 2 = 97.92, / 1.09 = 89.83
		"Biddle,home,Tarnwick House Cat Dry,98 kcal,25 g,13 g + 12 g,",  // / 3.85 = 25.43
	} {
		if !strings.Contains(stdout, "\n"+want) {
			t.Errorf("no row %s", want)
		}
	}
}

// The grams of the demo that were worked by hand: RER 70 × kg^0.75, the
// factor, the density.
func TestDemoGramsByHand(t *testing.T) {
	stdout, _, _ := runs(t, "", "-format", "csv")
	for animal, want := range map[string]string{
		"Gantry":  "283 kcal,79 g,20 g + 20 g + 20 g + 19 g",
		"Custard": "251 kcal,65 g,22 g + 22 g + 21 g",
		"Larkin":  "172 kcal,45 g,15 g + 15 g + 15 g",
		"Nettle":  "233 kcal,61 g,31 g + 30 g",
		"Sorrel":  "268 kcal,70 g,35 g + 35 g",
		"Dunnock": "845 kcal,210 g,53 g + 53 g + 52 g + 52 g",
		"Windle":  "1058 kcal,297 g,149 g + 148 g",
		"Thistle": "518 kcal,125 g,32 g + 31 g + 31 g + 31 g",                     // 100 × 3.8^0.67 + 3.8 × 60 × 1.2 = 518.2, / 4.15
		"Marram":  "1821 kcal,453 g,151 g + 151 g + 151 g",                        // 130 × 21^0.75 + 26 × 21 = 1821.3, / 4.02
		"Cobbler": "1516 kcal,426 g,213 g + 213 g",                                // 1.8 × 70 × 21.5^0.75 + 21.5 × 12 = 1516.1, / 3.56
		"Spindle": "1012 kcal,284 g,95 g + 95 g + 94 g",                           // 1.5 × 70 × 20.5^0.75 = 1011.6, / 3.56
		"Moth":    "43 kcal,43.1 g,7.2 g + 7.2 g + 7.2 g + 7.2 g + 7.2 g + 7.1 g", // 22.5 × 1.89 = 42.5, / 153 × 155
		"Burdock": "181 kcal,74 g,37 g + 37 g",                                    // 181 / 2.45 = 73.88
	} {
		if row := rowOf(t, stdout, animal); !strings.Contains(row, ","+want+",") {
			t.Errorf("%s: want %s in %s", animal, want, row)
		}
	}
}

func rowOf(t *testing.T, sheet, animal string) string {
	t.Helper()
	for line := range strings.Lines(sheet) {
		if strings.HasPrefix(line, animal+",") {
			return line
		}
	}
	t.Fatalf("no row for %s", animal)
	return ""
}

// brokenWriter takes n bytes and then no more.
type brokenWriter struct{ n int }

func (w *brokenWriter) Write(b []byte) (int, error) {
	if len(b) > w.n {
		return w.n, io.ErrShortWrite
	}
	w.n -= len(b)
	return len(b), nil
}

func TestWriteErrorIsReported(t *testing.T) {
	for _, format := range []string{"text", "csv"} {
		var errs bytes.Buffer
		status := run([]string{"-format", format}, nil, &brokenWriter{100}, &errs)
		if want := "daysheet: writing the sheet: short write\n"; status != exitFailed || errs.String() != want {
			t.Errorf("%s: exit status %d, stderr %q, want %d, %q", format, status, errs.String(), exitFailed, want)
		}
	}
}
