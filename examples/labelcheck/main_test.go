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
	"testing/iotest"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "rewrite the golden files")

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

func runs(t *testing.T, stdin io.Reader, args ...string) (stdout, stderr string, status int) {
	t.Helper()
	var out, errs bytes.Buffer
	status = run(args, stdin, &out, &errs)
	return out.String(), errs.String(), status
}

const header = "food,energy,serving,serving energy,serving mass,moisture,for,units,analysis,defaults,predict,form\n"

// checked returns the rows of the CSV report, by column.
func checked(t *testing.T, file string) (found []map[string]string, stderr string, status int) {
	t.Helper()
	stdout, stderr, status := runs(t, strings.NewReader(file), "-format", "csv", "-")
	records, err := csv.NewReader(strings.NewReader(stdout)).ReadAll()
	if err != nil || len(records) == 0 {
		t.Fatalf("no CSV: %v\n%s%s", err, stdout, stderr)
	}
	for _, r := range records[1:] {
		row := make(map[string]string)
		for i, column := range records[0] {
			row[column] = r[i]
		}
		found = append(found, row)
	}
	return found, stderr, status
}

func TestDemo(t *testing.T) {
	stdout, stderr, status := runs(t, nil)
	if status != exitBad || strings.Count(stderr, "\n") != 2 {
		t.Errorf("exit status %d, stderr %q, want %d and the two wrong labels", status, stderr, exitBad)
	}
	golden(t, "demo.golden", stdout)
	golden(t, "stderr.golden", stderr)
	stdout, _, _ = runs(t, nil, "-format", "csv")
	golden(t, "demo-csv.golden", stdout)
}

// The two wrong labels of the demo. 3500 × 100 / 1000 = 350 kcal, not 412; and
// pure fat, 9400 kcal/kg, would be 2068 with 78 % of water, 4650 of dry matter
// 1023.
func TestWrongLabelsOfTheDemo(t *testing.T) {
	found, stderr, status := checked(t, demo)
	if status != exitBad {
		t.Errorf("exit status %d, want %d", status, exitBad)
	}
	for _, test := range []struct {
		food, slip string
		problem    []string
	}{
		{"Donated Mixed Biscuit", "", []string{"3500 kcal/kg, 412 kcal/cup and 100 g/cup disagree: the cup makes 4120 kcal/kg, 17.7 % apart"}},
		{
			"Donated Cat Stew", "kcal/kg of dry matter taken for as fed",
			[]string{"4650 kcal/kg is above 2068 kcal/kg", "(as fed 1023 kcal/kg)", "the can makes 1025.6 kcal/kg"},
		},
	} {
		for _, row := range found {
			if row["food"] != test.food {
				continue
			}
			if row["verdict"] != "refused" || row["slip"] != test.slip || row["energy"] != "" {
				t.Errorf("%s: %v", test.food, row)
			}
			for _, want := range test.problem {
				if !strings.Contains(row["problem"], want) || !strings.Contains(stderr, want) {
					t.Errorf("%s: no %q in %q", test.food, want, row["problem"])
				}
			}
		}
	}
	if n := len(found); n != 11 {
		t.Errorf("%d foods, want 11", n)
	}
}

// By hand. NFE is 100 - 24 - 14 - 3 - 7 - 9 = 43 %, so 3.5 × 24 + 8.5 × 14 + 3.5 ×
// 43 = 353.5 kcal/100 g; gross 5.7 × 24 + 9.4 × 14 + 4.1 × 46 = 457.0, fibre 3 / 0.91
// = 3.297 % of dry matter, 91.2 - 1.43 × 3.297 = 86.486 %, 395.24 - 1.04 × 24 =
// 370.28. 240 g/kg of protein for 3560 kcal are 67.4 g for 1000.
func TestFiguresOfOneFood(t *testing.T) {
	found, _, status := checked(t, header+
		`dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog,scoop = 85 g; bar = 28 kcal,"typical analysis: protein 24 %, fat 14 %, fibre 3 %, ash 7 %",,,dry`+"\n")
	want := map[string]string{
		"food": "dry", "verdict": "ok", "energy": "3560 kcal/kg", "origin": "stated", "per 100 g": "356 kcal/100 g",
		"units":            "cup = 100 g = 356 kcal; scoop = 85 g = 302.6 kcal; bar = 7.87 g = 28 kcal",
		"modified atwater": "3535 kcal/kg", "four step dog": "3703 kcal/kg", "four step cat": "",
		"protein": "67.4 g", "fat": "39.3 g", "fibre": "8.4 g", "ash": "19.7 g", "doubts": "", "slip": "", "problem": "",
	}
	if diff := cmp.Diff([]map[string]string{want}, found); diff != "" || status != exitOK {
		t.Errorf("exit status %d (-want +got):\n%s", status, diff)
	}
}

// What a label is taken for, and what is doubted.
func TestVerdicts(t *testing.T) {
	const analysis = `"protein 24 %, fat 14 %, fibre 3 %, ash 7 %"`
	for _, test := range []struct{ row, verdict, energy, origin, says string }{
		{"a,,cup,424 kcal,110 g,8 %,cat,,,,,", "ok", "3855 kcal/kg", "derived", ""}, // 3854.5
		{"a,1490 kJ/100 g,,,,9 %,dog,,,,,", "ok", "3561.19 kcal/kg", "stated", ""},  // 14900 / 4.184
		// 365 / 355.5 less half a kilocalorie and half a gram: 1.9 % of 3560 by rounding.
		{"a,3560 kcal/kg,cup,365 kcal,100 g,9 %,dog,,,,,", "note", "3560 kcal/kg", "stated", "differ by"},
		{"a,3560 kcal/kg,cup,380 kcal,100 g,9 %,dog,,,,,", "warn", "3560 kcal/kg", "stated", "differ by"},
		{"a,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog,bar = 8 g = 60 kcal,,,,", "warn", "3560 kcal/kg", "stated", "the figures of one bar don't fit"},
		{"a,4400 kcal/kg,,,,9 %,dog,," + analysis + ",,,", "warn", "4400 kcal/kg", "stated", "modified"}, // 24 % above 3535
		{"a,,,,,9 %,dog,," + analysis + ",,modified_atwater,", "note", "3535 kcal/kg", "predicted", "predict"},
		{"a,,,,,9 %,dog,," + analysis + ",,,", "refused", "", "", "kcal/kg as fed"},
		{"a,356 kcal/kg,cup,356 kcal,100 g,9 %,dog,,,,,", "refused", "", "", "typed as kcal/kg"},
		{"a,3560 kcal/kg,cup,356 kcal,227 g,9 %,dog,,,,,", "refused", "", "", "likeliest slip: 8 oz by weight"},
		{`a,3560 kcal/kg,,,,9 %,dog,,"protein 44 %, fat 44 %, fibre 3 %, ash 7 %",,,`, "warn", "3560 kcal/kg", "stated", "= 107 %, more than the whole"}, // 107 %
	} {
		found, _, status := checked(t, header+test.row+"\n")
		row := found[0]
		if row["verdict"] != test.verdict || row["energy"] != test.energy || row["origin"] != test.origin {
			t.Errorf("%s: %v", test.row, row)
		}
		if says := row["doubts"] + row["problem"]; !strings.Contains(says, test.says) {
			t.Errorf("%s: no %q in %q", test.row, test.says, says)
		}
		if want := map[bool]int{true: exitBad, false: exitOK}[test.verdict == "refused"]; status != want {
			t.Errorf("%s: exit status %d, want %d", test.row, status, want)
		}
	}
}

// A row that can't be used keeps its place, with all that is wrong with it.
func TestRowsThatCannotBeRead(t *testing.T) {
	for _, test := range []struct{ row, food, problem string }{
		{"b,3560", "b", `"b,3560": 2 fields, want 12 as in the header`},
		{`"b,3560 kcal/kg,,,,,,,,,,`, `"b`, `"\"b,3560 kcal/kg,,,,,,,,,,": a quote is opened and not closed on this line`},
		{",3560 kcal/kg,,,,,,,,,,", "", `food "": want a name`},
		{"A,3560 kcal/kg,,,,,,,,,,", "A", `food "A": already on line 2, want each food once`},
		{"b,3560,,,100,9,dogg,,,,,", "b", `energy "3560": no unit, want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg; ` +
			`serving mass "100": no unit, want kg, g, mg, lb or oz; moisture "9": no unit, want %; for "dogg": want dog, cat, ferret or other`},
		{"b,3560 kcal/kg,,,,9 %,dog,bar,,,,", "b", `units "bar": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{"b,3560 kcal/kg,,,,9 %,dog,bar = 8,,,,", "b", `units "bar = 8": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{"b,3560 kcal/kg,,,,9 %,dog,bar = 8 g = 9 g,,,,", "b", `units "bar = 8 g = 9 g": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{"b,3560 kcal/kg,,,,9 %,dog,= 8 g,,,,", "b", `units "= 8 g": want a name`},
		{"b,3560 kcal/kg,,,,9 %,dog,a=1 g;b=2 g;c=3 g;d=4 g;e=5 g,,,,", "b", `units "a=1 g;b=2 g;c=3 g;d=4 g;e=5 g": want at most 4 units`},
		{`b,3560 kcal/kg,,,,9 %,dog,,"protein 24 %, moisture 10 %",,,`, "b", `moisture "9 %": want the same as in the analysis, 10 %, or one of the two empty`},
		{"b,3560 kcal/kg,,,,9 %,dog,,,,magic,", "b", `predict "magic": want modified_atwater, atwater or four_step`},
		{"b,3560 kcal/kg,,,,9 %,dog,,,,,solid", "b", `form "solid": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
	} {
		found, stderr, status := checked(t, header+"a,3560 kcal/kg,,,,9 %,dog,,,,,\n"+test.row+"\nz,3560 kcal/kg,,,,9 %,dog,,,,,\n")
		if len(found) != 3 || found[0]["verdict"] != "ok" || found[2]["verdict"] != "ok" || status != exitBad {
			t.Errorf("%s: exit status %d, %v", test.row, status, found)
			continue
		}
		problem := "line 3: " + test.problem
		if got := found[1]; got["verdict"] != "not read" || got["food"] != test.food || got["energy"] != "" || got["problem"] != problem {
			t.Errorf("%s:\ngot  %q\nwant %q", test.row, got["problem"], problem)
		}
		if want := "labelcheck: standard input: " + problem + "\n"; stderr != want {
			t.Errorf("stderr %q, want %q", stderr, want)
		}
	}
}

func TestNothingCanBeRead(t *testing.T) {
	for _, test := range []struct {
		stdin string
		args  []string
		want  string
	}{
		{"", []string{"-"}, "standard input: no header row, want food,energy,"},
		{"food;energy\n", []string{"-"}, "want commas between the columns"},
		{header, []string{"-"}, "standard input: no food in it could be read"},
		{header + "b,3560\n", []string{"-"}, "standard input: no food in it could be read"},
		{"", []string{"none.csv"}, "open none.csv: "},
		{"", []string{"a", "b"}, "unexpected [b] want one file"},
		{"", []string{"-format", "pdf"}, `-format "pdf": want text or csv`},
	} {
		if _, stderr, status := runs(t, strings.NewReader(test.stdin), test.args...); status != exitFailed || !strings.Contains(stderr, test.want) {
			t.Errorf("%v: exit status %d, stderr %q, want %q", test.args, status, stderr, test.want)
		}
	}
	if _, stderr, status := runs(t, nil, "-h"); status != exitOK || !strings.Contains(stderr, "The exit status is 0") {
		t.Errorf("-h: exit status %d, %q", status, stderr)
	}
}

func TestReadErrorIsInTheReport(t *testing.T) {
	in := io.MultiReader(strings.NewReader(header+"a,3560 kcal/kg,,,,9 %,dog,,,,,\n"), iotest.ErrReader(errors.New("disk on fire")))
	stdout, stderr, status := runs(t, in, "-format", "csv", "-")
	if status != exitFailed || stderr != "labelcheck: standard input: disk on fire\n" || !strings.Contains(stdout, "the reading broke off at line 3, what follows is missing: disk on fire") {
		t.Errorf("exit status %d, %q\n%s", status, stderr, stdout)
	}
}

type fullDisk struct{}

func (fullDisk) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func TestWriteErrorIsReported(t *testing.T) {
	for _, format := range []string{"text", "csv"} {
		var errs bytes.Buffer
		status := run([]string{"-format", format}, nil, fullDisk{}, &errs)
		if status != exitFailed || !strings.HasSuffix(errs.String(), "labelcheck: writing the report: short write\n") {
			t.Errorf("%s: exit status %d, %q", format, status, errs.String())
		}
	}
}

// Every row of any file has a verdict, and a figure or a reason.
func FuzzFile(f *testing.F) {
	f.Add(header + `a,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog,bar = 8 g;x=1 kcal,"protein 24 %, fat 14 %",dry,four_step,dry` + "\n\"b\n")
	f.Fuzz(func(t *testing.T, text string) {
		var out, errs bytes.Buffer
		status := run([]string{"-format", "csv", "-"}, strings.NewReader(text), &out, &errs)
		if status == exitFailed && out.Len() == 0 {
			if errs.Len() == 0 {
				t.Fatal("no reason for no report")
			}
			return
		}
		records, err := csv.NewReader(&out).ReadAll()
		if err != nil {
			t.Fatalf("the report is no CSV: %v", err)
		}
		for _, r := range records[1:] {
			if bad := r[1] == "refused" || r[1] == "not read"; bad != (r[15] != "") || bad == (r[2] != "") {
				t.Errorf("row %q", r)
			}
		}
	})
}
