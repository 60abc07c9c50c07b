package reftable

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/units"
)

// The tables are counted, so that a lost row or a lost file fails.
var counts = map[string]struct{ checked, disagrees, out int }{
	"units":           {45, 11, 48},
	"ucum":            {24, 0, 39},
	"adult-energy":    {220, 9, 52},
	"growth":          {53, 4, 54},
	"reproduction":    {45, 12, 31},
	"neonates":        {126, 11, 59},
	"activity":        {25, 0, 29},
	"weight-loss":     {23, 3, 29},
	"body-condition":  {164, 2, 49},
	"refeeding":       {2, 0, 23},
	"thresholds":      {2, 0, 14},
	"worked-examples": {86, 30, 71},
	"practice":        {5, 5, 0},
	"statistics":      {257, 12, 51},
	"nutrient-minima": {132, 8, 16},

	"energy-density":   {179, 1, 51},
	"basis-conversion": {71, 7, 1},
	"densities":        {5, 0, 57},

	"scales":        {23, 0, 84},
	"rounding":      {18, 3, 65},
	"scoop-studies": {7, 2, 27},
	"bulk-density":  {5, 0, 22},

	"food-change": {14, 2, 13},

	"meals": {26, 0, 11},
	"water": {4, 0, 53},
}

func TestEveryTableIsCounted(t *testing.T) {
	files, err := files.ReadDir("tables")
	if err != nil {
		t.Fatal(err)
	}
	if len(files) != len(Tables()) || len(counts) != len(Tables()) {
		t.Errorf("%d files and %d counts for %d tables", len(files), len(counts), len(Tables()))
	}
	for _, name := range Tables() {
		rows, err := Load(name)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		got := counts[name]
		want := got
		got.checked, got.disagrees, got.out = 0, 0, 0
		for _, r := range rows {
			switch r.Verdict {
			case Checked:
				got.checked++
			case Disagrees:
				got.disagrees++
			case Out:
				got.out++
			}
		}
		if got != want {
			t.Errorf("%s: %+v, want %+v", name, got, want)
		}
	}
}

// TestEveryRowIsAsItsVerdictSays holds each row against the library: a checked
// row agrees, a disagreeing one gives the figure noted and is truly outside
// the rounding, and one that is out is beyond the library.
func TestEveryRowIsAsItsVerdictSays(t *testing.T) {
	for _, name := range Tables() {
		rows, err := Load(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rows {
			t.Run(name+"/"+r.ID, func(t *testing.T) {
				c, err := r.Compare()
				if r.Verdict == Out {
					if !isOut(err) {
						t.Errorf("out, yet Compare gives %+v, %v", c, err)
					}
					return
				}
				if err != nil {
					t.Fatal(err)
				}
				if r.Verdict == Checked && !c.Agrees {
					t.Errorf("ours is %s, %s (%s) prints %s %s (%s), seen: %s",
						c.Text, r.Source, r.Where, r.Value, r.Unit, c.Rounding, r.Seen)
				}
				if r.Verdict == Disagrees && (c.Agrees || c.Text != r.Ours) {
					t.Errorf("ours is %s (agrees: %t), the table notes %s as disagreeing with %s",
						c.Text, c.Agrees, r.Ours, r.Value)
				}
			})
		}
	}
}

// isOut reports whether err says that the library has no such figure, or that
// it refuses the unit or the weight of the row.
func isOut(err error) bool {
	var parse *units.ParseError
	var field *units.FieldError
	return errors.Is(err, ErrNoEvaluator) || errors.As(err, &parse) || errors.As(err, &field)
}

// roundings are the roundings of print that are wider than half of the last
// printed digit, by the ids they hold for.
var roundings = []struct {
	prefix, suffix string
	allowed        float64
}{
	// Figures rounded to ten.
	{"nrc-booklet-", "", 5},
	{"nrc-pamphlet-leancat-", "", 5},
	{"handout-", "", 5},
	{"practice-dog-", "", 5},
	// Figures rounded to five.
	{"sacn5-kitten-age", "-kj", 2.5},
	// The weight that the ideal weight is computed from is itself printed to
	// 0.1 kg, and the ideal weight is 0.875 of it.
	{"sacn-t27-3-bcs4-ideal-", "", 0.05 + 0.875*0.05},
}

// TestNoToleranceIsWidened fails where a tolerance is more than the rounding of
// print.
func TestNoToleranceIsWidened(t *testing.T) {
	for _, name := range Tables() {
		rows, err := Load(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rows {
			if r.Verdict == Out || r.Tolerance == "" {
				continue
			}
			allowed := half(r.Value)
			for _, x := range roundings {
				if strings.HasPrefix(r.ID, x.prefix) && strings.HasSuffix(r.ID, x.suffix) {
					allowed = x.allowed
				}
			}
			if got := mustFloat(t, r.Tolerance); got > allowed*(1+1e-9) {
				t.Errorf("%s: tolerance %s, the rounding of %s is ±%g", r.ID, r.Tolerance, r.Value, allowed)
			}
		}
	}
}

func TestReadRefuses(t *testing.T) {
	head := strings.Join(header, "\t") + "\n"
	row := func(id, seen, verdict, ours, reason string) string {
		return strings.Join([]string{id, "RER", "bw_kg=4", "198", "kcal/day", "0.5", "a book", "p. 1", seen, "", verdict, ours, reason}, "\t") + "\n"
	}
	good := row("a", "primary", "checked", "", "")
	if rows, err := Read(strings.NewReader(head + good + row("b", "memory", "out", "", "why"))); err != nil || len(rows) != 2 {
		t.Fatalf("two good rows: %d, %v", len(rows), err)
	}
	for _, tt := range []struct{ name, text, want string }{
		{"nothing", "", "no header"},
		{"unknown column", strings.Replace(head, "note", "remark", 1) + good, `"remark"`},
		{"missing column", strings.Replace(head, "note\t", "", 1) + good, "columns"},
		{"short row", head + "a\tRER\n", "line 2: 2 columns, want 13"},
		{"repeated id", head + good + good, `line 3: id "a" is repeated`},
		{"no id", head + row("", "primary", "checked", "", ""), "no id"},
		{"unknown seen", head + row("a", "heard", "checked", "", ""), `seen "heard"`},
		{"unknown verdict", head + row("a", "primary", "fine", "", ""), `verdict "fine"`},
		{"no verdict", head + row("a", "primary", "", "", ""), `verdict ""`},
		{"checked with a reason", head + row("a", "primary", "checked", "", "why"), "checked, yet"},
		{"disagrees without ours", head + row("a", "primary", "disagrees", "", "why"), "disagrees without"},
		{"disagrees without reason", head + row("a", "primary", "disagrees", "1", ""), "disagrees without"},
		{"out with ours", head + row("a", "primary", "out", "1", "why"), "out wants"},
		{"out without reason", head + row("a", "primary", "out", "", ""), "out wants"},
	} {
		if rows, err := Read(strings.NewReader(tt.text)); err == nil || !strings.Contains(err.Error(), tt.want) || rows != nil {
			t.Errorf("%s: %d rows, error %v, want one with %q", tt.name, len(rows), err, tt.want)
		}
	}
}

func TestLoadUnknown(t *testing.T) {
	if _, err := Load("no-such-table"); err == nil {
		t.Error("no error")
	}
}
