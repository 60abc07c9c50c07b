package energy_test

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"example.org/bowlgram/energy"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "rewrite the table of methods in DEVELOPERS.md")

// methodTable is the list of methods as DEVELOPERS.md shows it.
func methodTable() string {
	var b strings.Builder
	b.WriteString("| stage | animal | method | formula, kcal/day | for | source |\n| --- | --- | --- | --- | --- | --- |\n")
	for _, q := range energy.Methods() {
		species := q.Species.String()
		if species == "" {
			species = "any"
		}
		method := q.Method.String()
		if q.Default {
			method += ", default"
		}
		fmt.Fprintf(&b, "| %s | %s | %s | %s | %s | %s |\n", q.Stage, species, method, q.Formula, q.Valid, q.Source)
	}
	return b.String()
}

func TestMaintainersTableIsTheListOfMethods(t *testing.T) {
	const file, from, to = "../DEVELOPERS.md", "<!-- methods -->\n", "<!-- end of methods -->\n"
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, ok := strings.Cut(string(text), from)
	table, after, ok2 := strings.Cut(rest, to)
	if !ok || !ok2 {
		t.Fatalf("%s has no %q and %q", file, from, to)
	}
	if *update {
		if err := os.WriteFile(file, []byte(before+from+methodTable()+to+after), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if diff := cmp.Diff(table, methodTable()); diff != "" {
		t.Errorf("%s (-there +Methods), rewrite it with -update:\n%s", file, diff)
	}
}
