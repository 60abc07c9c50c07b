package main

import (
	"bytes"
	"errors"
	"flag"
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
		{"demo-start.golden", []string{"-start", "2026-11-02"}},
		{"demo-csv.golden", []string{"-format", "csv", "-start", "2026-11-02"}},
	} {
		stdout, stderr, status := runs(t, "", test.args...)
		if status != exitOK || stderr != "" {
			t.Errorf("%v: exit status %d, stderr %q", test.args, status, stderr)
		}
		golden(t, test.golden, stdout)
	}
}

// By hand, for 28 days with 5 % waste: g/day × 28 × 1.05 / 1000 is the need, the
// store over g/day × 1.05 the days left.
func TestDemoByHand(t *testing.T) {
	stdout, _, _ := runs(t, "", "-format", "csv")
	for food, want := range map[string]string{
		"Tarnwick House Dog Dry": "3,641,18.85,42.50,0.00,,,63.1,,", // 332 + 150 + 159
		"Tarnwick House Cat Dry": "4,241,7.09,6.00,1.09,1,7.5 kg,23.7,,",
		"Tarnwick Puppy Dry":     "1,210,6.17,9.00,0.00,,,40.8,,",
		"Tarnwick Kitten Dry":    "1,64,1.88,4.00,0.00,,,59.5,,",
		"Tarnwick House Biscuit": "2,24,0.71,1.00,0.00,,,39.7,,", // 3 of 8 g
	} {
		if !strings.Contains(stdout, "\n"+food+","+want) {
			t.Errorf("%s: want %s in\n%s", food, want, stdout)
		}
	}
}

func TestBadRows(t *testing.T) {
	args := []string{"-animals", "testdata/bad-animals.csv", "-foods", "testdata/bad-foods.csv", "-store", "testdata/bad-store.csv"}
	stdout, stderr, status := runs(t, "", args...)
	if status != exitBadRows {
		t.Errorf("exit status %d, want %d", status, exitBadRows)
	}
	golden(t, "bad.golden", stdout)
	golden(t, "bad-stderr.golden", stderr)
	csv, _, status := runs(t, "", append(args, "-format", "csv")...)
	if status != exitBadRows {
		t.Errorf("csv: exit status %d, want %d", status, exitBadRows)
	}
	// What was refused keeps a row, so that nobody reads the list as whole.
	if problems := strings.Count(stderr, "\n"); strings.Count(csv, "\n,,,,,,,,,,,") != problems || problems == 0 {
		t.Errorf("%d problems, and the list is\n%s", problems, csv)
	}
}

func TestStandardInput(t *testing.T) {
	animals := "animal,species,weight,energy,by,food\nTansy,cat,4.6 kg,263.8 kcal/d,Dr Ysolde Crake,wet 50 %; dry\n"
	dir := t.TempDir()
	write := func(name, text string) string {
		file := filepath.Join(dir, name)
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return file
	}
	foods := write("foods.csv", "food,energy,serving,serving energy,serving mass,moisture,for\nwet,1090 kcal/kg,can,170 kcal,156 g,78 %,cat\ndry,3850 kcal/kg,cup,424 kcal,110 g,8 %,cat\n")
	store := write("store.csv", "food,in store\nwet,156 g\ndry,\n")
	stdout, stderr, status := runs(t, animals, "-animals", "-", "-foods", foods, "-store", store, "-days", "10", "-waste", "0 %", "-format", "csv")
	// 131.9 / 1.09 = 121.0 g and 131.9 / 3.85 = 34.3 g.
	const want = "wet,1,121,1.21,0.16,1.05,,,1.3,,,,\ndry,1,34,0.34,0.00,0.34,,,0.0,,,,\n"
	if _, rows, _ := strings.Cut(stdout, "\n"); rows != want || status != exitOK || stderr != "" {
		t.Errorf("exit status %d, stderr %q, rows\n%swant\n%s", status, stderr, rows, want)
	}
}

// Food for dogs is not for a cat, and 6000 kcal of dry food for a dog of 10 kg
// are 1,714 g, 17 % of it: both stand above the order, with the animal's name.
func TestVeterinarianFirst(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) string {
		file := filepath.Join(dir, name)
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return file
	}
	args := []string{
		"-animals", write("animals.csv", "animal,species,weight,energy,by,food\nAsh,dog,10 kg,600 kcal,Dr Ysolde Crake,dry\nOak,dog,10 kg,6000 kcal,Dr Ysolde Crake,dry\nElm,cat,4 kg,240 kcal,Dr Ysolde Crake,dry\n"),
		"-foods", write("foods.csv", "food,energy,serving,serving energy,serving mass,moisture,for,role\ndry,3500 kcal/kg,,,,9 %,dog,complete\n"),
		"-store", write("store.csv", "food,in store\ndry,100 kg\n"),
	}
	const oak = "Oak: 1714.29 g of dry a day is 17 % of the body weight: "
	const elm = "Elm: dry is food for dogs, not for cats: "
	text, stderr, status := runs(t, "", args...)
	if status != exitOK {
		t.Fatalf("exit status %d, %s", status, stderr)
	}
	above, _, _ := strings.Cut(text, "\nfood ")
	_, above, said := strings.Cut(above, "\nVETERINARIAN FIRST, before anything is ordered for them:\n")
	if !said || !strings.Contains(above, "  "+oak) || !strings.Contains(above, "  "+elm) || strings.Contains(text, "Ash: ") {
		t.Errorf("want %s\nand %s above the order in\n%s", oak, elm, text)
	}
	table, _, _ := runs(t, "", append(args, "-format", "csv")...)
	above, _, _ = strings.Cut(table, "\ndry,")
	for _, want := range []string{oak, elm} {
		if !strings.Contains(above, "\n,,,,,,,,,,,,\""+want) {
			t.Errorf("want %s above the order in\n%s", want, table)
		}
	}
}

// The name is that of the foods file in every letter, and what is wanted is said.
func TestFoodOfAnotherCase(t *testing.T) {
	dir := t.TempDir()
	animals, store := filepath.Join(dir, "animals.csv"), filepath.Join(dir, "store.csv")
	for file, text := range map[string]string{
		animals: "animal,species,weight,energy,by,food,treats\nAsh,dog,10 kg,600 kcal,Dr Ysolde Crake,tarnwick house dog dry,Biscuit 2 biscuits\n",
		store:   "food,in store\ntarnwick puppy dry,1 kg\n",
	} {
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	_, stderr, status := runs(t, "", "-animals", animals, "-foods", "foods.csv", "-store", store)
	if status != exitBadRows {
		t.Errorf("exit status %d", status)
	}
	for _, want := range []string{
		`line 2: food "tarnwick house dog dry": not in the foods file as it is written here, want "Tarnwick House Dog Dry"; treats "Biscuit 2 biscuits": not in the foods file, want one of Tarnwick House Dog Dry, `,
		`line 2: food "tarnwick puppy dry": not in the foods file as it is written here, want "Tarnwick Puppy Dry"`,
	} {
		if !strings.Contains(stderr, want) {
			t.Errorf("want %s in\n%s", want, stderr)
		}
	}
}

func TestUsage(t *testing.T) {
	for _, test := range []struct {
		args []string
		want string
	}{
		{[]string{"extra"}, `unexpected ["extra"]`},
		{[]string{"-animals", "x.csv"}, "want -animals, -foods and -store, or none of them"},
		{[]string{"-format", "xml"}, `-format "xml": want text or csv`},
		{[]string{"-days", "0"}, `portion: days "0": want 1 to 366`},
		{[]string{"-days", "0", "-waste", "60 %"}, `portion: waste "60 %": want 0 % to 50 %`},
		{[]string{"-waste", "5"}, `invalid value "5" for flag -waste`},
		{[]string{"-start", "2 November"}, `invalid value "2 November" for flag -start`},
		{[]string{"-animals", "none.csv", "-foods", "none.csv", "-store", "none.csv"}, "none.csv"},
		{[]string{"-animals", "animals.csv", "-foods", "store.csv", "-store", "store.csv"}, `store.csv: line 1: column "in store" unknown`},
	} {
		stdout, stderr, status := runs(t, "", test.args...)
		if status != exitFailed || stdout != "" || !strings.Contains(stderr, test.want) {
			t.Errorf("%v: exit status %d, stdout %q, stderr %q", test.args, status, stdout, stderr)
		}
	}
	if _, stderr, status := runs(t, "", "-h"); status != exitOK || !strings.Contains(stderr, "The files are CSV") {
		t.Errorf("-h: exit status %d, stderr %q", status, stderr)
	}
}

// full is a device with no room left.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no room") }

func TestOutputThatCannotBeWritten(t *testing.T) {
	for _, format := range []string{"text", "csv"} {
		var stderr bytes.Buffer
		if status := run([]string{"-format", format}, nil, full{}, &stderr); status != exitFailed || !strings.Contains(stderr.String(), "no room") {
			t.Errorf("%s: exit status %d, stderr %q", format, status, stderr.String())
		}
	}
}
