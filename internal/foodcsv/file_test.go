package foodcsv_test

import (
	"errors"
	"strings"
	"testing"
	"testing/iotest"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
)

const header = "food,energy,serving,serving energy,serving mass,moisture,for,units\n"

// read reads a foods file and returns what was reported.
func read(t *testing.T, rows string) (*foodcsv.File, []string) {
	t.Helper()
	var reported []string
	f, err := foodcsv.ReadFile(csvrow.NewReader(strings.NewReader(header+rows)), func(s string) { reported = append(reported, s) })
	if err != nil {
		t.Fatal(err)
	}
	return f, reported
}

func TestFile(t *testing.T) {
	f, reported := read(t, "dry,3500 kcal/kg,cup,350 kcal,100 g,9 %,dog,\n"+
		"wet,1000 kcal,,,,,,\n"+
		"Slim,3000 kcal/kg,,,,,,\n"+
		"slim,3100 kcal/kg,,,,,,\n"+
		",3100 kcal/kg,,,,,,\n"+
		"short\n")
	const doubled = `line 5: food "slim": already on line 4, want each food once: neither is used`
	want := []string{
		`line 3: energy "1000 kcal": `, doubled, `line 6: food "": want a name`, `line 7: "short": 1 field, want 8 as in the header`,
	}
	if len(reported) != len(want) {
		t.Fatalf("%q", reported)
	}
	for i := range want {
		if !strings.HasPrefix(reported[i], want[i]) {
			t.Errorf("%s, want %s", reported[i], want[i])
		}
	}
	var names []string
	for _, e := range f.Entries() {
		names = append(names, e.Name)
		if f.Entry(e.Name) != e {
			t.Errorf("%s is another entry", e.Name)
		}
	}
	if d := cmp.Diff([]string{"dry", "wet", "Slim"}, names); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	const missing = "not in the foods file, want one of dry, wet, Slim"
	for name, want := range map[string]string{
		"dry": "", "Slim": "refused in the foods file, " + doubled, "wet": "refused in the foods file, " + reported[0],
		"DRY": `not in the foods file as it is written here, want "dry"`, "tripe": missing, "": missing,
	} {
		if got := f.Fault(name); got != want {
			t.Errorf("%q: %s, want %s", name, got, want)
		}
	}
	if e := f.Entry("DRY"); e != nil {
		t.Errorf("another name: %v", e)
	}
	empty, _ := read(t, "")
	if got, want := empty.Fault("dry"), "not in the foods file, which holds none"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

func TestFileThatCannotBeRead(t *testing.T) {
	broken := errors.New("broken")
	for _, in := range []*csvrow.Reader{
		csvrow.NewReader(strings.NewReader("food\n")),
		csvrow.NewReader(iotest.ErrReader(broken)),
	} {
		if f, err := foodcsv.ReadFile(in, nil); err == nil || f != nil {
			t.Errorf("%v, %v", f, err)
		}
	}
}

func TestItems(t *testing.T) {
	f, _ := read(t, "dry,3500 kcal/kg,,,,9 %,dog,\n"+
		"dry 2,3500 kcal/kg,,,,9 %,dog,\n"+
		"a; b,3500 kcal/kg,,,,9 %,dog,\n"+
		"biscuit,3500 kcal/kg,biscuit,28 kcal,8 g,9 %,dog,\n"+
		"chew,3500 kcal/kg,chew,28 kcal,8 g,9 %,dog,half = 4 g\n"+
		"wrong,35 kcal/kg,,,,9 %,dog,\n")
	const foods, treats = "food", "treats"
	const amount = `want a share as in "50 %", a mass as in "45 g", a count as in "2 biscuits" or "rest" behind the name of the food`
	const treat = `want how many or how much behind the name of the food, as in "2 biscuits" or "5 g"`
	const list = "not in the foods file, want one of dry, dry 2, a; b, biscuit, chew, wrong"
	for _, test := range []struct{ column, cell, want string }{
		{foods, "dry", "dry = rest"},
		{foods, "dry 50 %; biscuit 45 g ;", "dry = 50 %, biscuit = 45 g"},
		{foods, "dry 2", "dry 2 = rest"}, // not 2 of dry
		{foods, "dry 2 50 %", "dry 2 = 50 %"},
		{foods, "dry 2 g", "dry = 2 g"},
		{foods, "a; b", "a; b = rest"},
		{foods, "dry 5", `food "dry 5": ` + amount},
		{foods, "", `food "": ` + list},
		{foods, "tripe; dry 50 %; dRY", `dry = 50 %, food "tripe": ` + list + `; food "dRY": not in the foods file as it is written here, want "dry"`},
		{treats, "", ""},
		{treats, "biscuit 2", "biscuit = 2 serving"},
		{treats, "biscuit 2 biscuits; chew 1 half", "biscuit = 2 biscuits, chew = 1 half"},
		{treats, "chew 2", `treats "chew 2": ` + treat}, // which of the two?
		{treats, "biscuit", `treats "biscuit": ` + treat},
	} {
		var p csvrow.Problems
		var got []string
		for _, item := range f.Items(test.column, test.cell, test.column == treats, &p) {
			got = append(got, item.Name+" = "+item.Amount.String())
		}
		if p.Any() {
			got = append(got, p.Joined())
		}
		if text := strings.Join(got, ", "); text != test.want {
			t.Errorf("%s %q: %s\nwant %s", test.column, test.cell, text, test.want)
		}
	}
	var p csvrow.Problems
	if items := f.Items(foods, "wrong", false, &p); items != nil || !strings.HasPrefix(p.Joined(), `food "wrong": refused in the foods file, line 7: `) {
		t.Errorf("%v, %s", items, p.Joined())
	}
}
