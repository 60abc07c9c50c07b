package main

import (
	"bytes"
	"encoding/csv"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/bowlgram/internal/reftable"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// TestGolden runs the program on the library's own tables, where every figure
// that should agree does.
func TestGolden(t *testing.T) {
	rows, err := load()
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		golden string
		args   []string
	}{
		{"all.txt", nil},
		{"disagrees.txt", []string{"-disagrees"}},
		{"practice.txt", []string{"-source", "Common Practice"}},
		{"booklet.csv", []string{"-format", "csv", "-source", "your cat's nutritional needs"}},
		{"fediaf-disagrees.csv", []string{"-format=csv", "-source=fediaf", "-disagrees"}},
	} {
		t.Run(tt.golden, func(t *testing.T) {
			var out, errs bytes.Buffer
			if status := run(tt.args, rows, &out, &errs); status != 0 || errs.Len() > 0 {
				t.Fatalf("status %d, standard error %q", status, errs.String())
			}
			file := filepath.Join("testdata", tt.golden)
			if *update {
				if err := os.WriteFile(file, out.Bytes(), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if got := out.String(); got != string(want) {
				t.Errorf("differs from %s at line %s", file, firstDifference(got, string(want)))
			}
		})
	}
}

func firstDifference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range g {
		if i >= len(w) || g[i] != w[i] {
			return g[i]
		}
	}
	return "after the end of ours"
}

// TestEveryRowIsReported counts the rows of the CSV form against the tables.
func TestEveryRowIsReported(t *testing.T) {
	rows, err := load()
	if err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	run([]string{"-format", "csv"}, rows, &out, &errs)
	records, err := csv.NewReader(&out).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if got := len(records) - 1; got != len(rows) {
		t.Errorf("%d rows reported of %d", got, len(rows))
	}
	for _, r := range records[1:] {
		if (r[2] == "computed") != (r[0] == printedNowhere) {
			t.Errorf("%s is seen %q under %q: what was computed is not to be cited", r[3], r[2], r[0])
		}
	}
}

// TestStatus: 70·10^0.75 is 393.6 kcal.
func TestStatus(t *testing.T) {
	row := reftable.Row{
		ID: "x", Quantity: "RER", Inputs: "species=dog;bw_kg=10", Value: "394", Unit: "kcal/day",
		Tolerance: "0.5", Source: "A Book", Seen: reftable.Primary, Verdict: reftable.Checked,
	}
	wrong := row
	wrong.Value = "395"
	unknown := row
	unknown.Quantity = "charm"
	noted := wrong
	noted.Verdict, noted.Ours, noted.Reason = reftable.Disagrees, "393.63", "misprint"
	for _, tt := range []struct {
		name   string
		row    reftable.Row
		args   []string
		status int
		errs   string
	}{
		{"agrees", row, nil, 0, ""},
		{"disagrees for a reason", noted, nil, 0, ""},
		{"should agree", wrong, nil, 1, "reference: x should agree and does not: ours is 393.64, printed 395\n"},
		{"should agree, csv", wrong, []string{"-format", "csv"}, 1, "reference: x should agree and does not: ours is 393.64, printed 395\n"},
		{"should agree, shown or not", wrong, []string{"-disagrees"}, 1, "reference: x should agree and does not: ours is 393.64, printed 395\n"},
		{"can't be computed", unknown, nil, 1, "reference: x should agree and does not: reftable: the library gives no such figure: x\n"},
		{"source, any case", wrong, []string{"-source", "a book"}, 1, "reference: x should agree and does not: ours is 393.64, printed 395\n"},
		{"unknown source", row, []string{"-source", "A Film"}, 2, "reference: source \"A Film\": no source is called so\n"},
		{"unknown format", row, []string{"-format", "pdf"}, 2, "reference: format \"pdf\": want text or csv\n"},
		{"argument", row, []string{"fediaf"}, 2, "reference: unexpected argument \"fediaf\"\n"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var out, errs bytes.Buffer
			if got := run(tt.args, []reftable.Row{tt.row}, &out, &errs); got != tt.status || errs.String() != tt.errs {
				t.Errorf("status %d, standard error %q, want %d, %q", got, errs.String(), tt.status, tt.errs)
			}
			if (out.Len() == 0) != (tt.status == 2) {
				t.Errorf("status %d, standard output %q", tt.status, out.String())
			}
		})
	}
}
