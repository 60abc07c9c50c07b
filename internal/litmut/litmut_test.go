package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// toy is a module with a package of which each literal's fate is known.
var toy = map[string]string{
	"go.mod": "module toy.example\n\ngo 1.25\n",
	"toy/toy.go": `package toy

import "time"

type Mass float64

// Exported: the test sees it, so that its changes are built apart.
const Kilogram Mass = 1000

const half, spare = 1.0 / 4 * 2, 5

type Kind int

const (
	_ Kind = iota
	Dog
)

var names = [...]string{1: "dog"}

func (k Kind) String() string { return names[k] }

func Rest(kg float64) float64 { return 70*kg + half }

func Table(i int) Mass { return []Mass{3, 3 * Kilogram}[i] }

func Shift(n uint) int { return 1<<n | 1<<4 }

func Wait() time.Duration { return time.Duration(3) * time.Second }

func Loop() (n int64) { // of one size everywhere: it must not come round
	for n != 8 {
		n += 4
	}
	return n
}

func Buffer() int { return cap(make([]byte, 2, 8)) }

func Rough(kg float64) bool { return kg > 12.5 } // no test at the limit

func Unseen() complex128 { return 2i }
`,
	"toy/toy_test.go": `package toy_test

import (
	"testing"
	"time"

	. "toy.example/toy"
)

func Test(t *testing.T) {
	if Kilogram != 1000 || Rest(2) != 140.5 || Table(1) != 3000 || Shift(3) != 24 || Wait() != 3*time.Second ||
		Loop() != 8 || Buffer() != 8 || Dog.String() != "dog" || !Rough(20) || Rough(5) || Table(0) < 2 {
		t.Fail()
	}
}
`,
	"figures/figures_test.go": `package figures

import (
	"testing"

	"toy.example/toy"
)

func Test(t *testing.T) {
	if toy.Table(0) != 3 || toy.Kilogram != 1000 {
		t.Fail()
	}
}
`,
}

// The limit and the constant that nothing uses live, and the length of a slice
// whose capacity is all that is asked for. One side of a table's first row is
// only noticed by the package of figures.
const toyLives = `lived	toy/toy.go:10	toy	half	5	6	const half, spare = 1.0 / 4 * 2, 5
lived	toy/toy.go:10	toy	half	5	4	const half, spare = 1.0 / 4 * 2, 5
lived	toy/toy.go:38	toy	Buffer	2	3	func Buffer() int { return cap(make([]byte, 2, 8)) }
lived	toy/toy.go:38	toy	Buffer	2	1	func Buffer() int { return cap(make([]byte, 2, 8)) }
lived	toy/toy.go:40	toy	Rough	12.5	12.6	func Rough(kg float64) bool { return kg > 12.5 }
lived	toy/toy.go:40	toy	Rough	12.5	12.4	func Rough(kg float64) bool { return kg > 12.5 }
`

func writeToy(t *testing.T, files map[string]string) string {
	t.Helper()
	if testing.Short() {
		t.Skip("builds a module of its own")
	}
	t.Setenv("GOWORK", "off")
	dir := t.TempDir()
	for name, text := range files {
		path := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

func TestToy(t *testing.T) {
	dir := writeToy(t, toy)
	args := []string{"-packages", "toy", "-tables", "figures", "-jobs", "1"}
	for _, tt := range []struct {
		args    []string
		lives   string
		figures string // regexp
	}{
		{
			[]string{"-only", "^[^L]"},
			toyLives,
			"^toy: 18 literals, 32 mutants .0 more don't compile.: 24 killed by its tests, 2 by published tables, 0 timed out, 6 lived, 0 of them reviewed; ",
		},
		// As the compiler sees it: the same changes live.
		{[]string{"-only", "^(half|Table|Rough)$", "-apart"}, toyLives, "2 by published tables, 0 timed out, 4 lived"},
		{[]string{"-only", "^Loop", "-timeout", "1s"}, "", "4 timed out, 0 lived"},
	} {
		var out bytes.Buffer
		if _, err := run(dir, append(args, tt.args...), &out, io.Discard); err != nil {
			t.Fatal(err)
		}
		lives, figures := split(out.String())
		var want strings.Builder
		for line := range strings.Lines(tt.lives) {
			if !slices.Contains(tt.args, "-apart") || !strings.Contains(line, "Buffer") {
				want.WriteString(line)
			}
		}
		if lives != want.String() {
			t.Errorf("%q: lived\n%swant\n%s", tt.args, lives, want.String())
		}
		if !regexp.MustCompile(tt.figures).MatchString(figures) {
			t.Errorf("%q: %s, want %s", tt.args, figures, tt.figures)
		}
	}
}

// split parts the lines of mutants that live from the line of figures, dropping
// those of time-outs.
func split(out string) (lives, figures string) {
	for line := range strings.Lines(out) {
		switch {
		case strings.HasPrefix(line, "lived"):
			lives += line
		case !strings.HasPrefix(line, "timeout"):
			figures = line
		}
	}
	return lives, figures
}

func TestReviewedList(t *testing.T) {
	dir := writeToy(t, map[string]string{
		"go.mod":          "module toy.example\n\ngo 1.25\n",
		"toy/toy.go":      "package toy\n\nfunc F() int { return 3 } // why three\n",
		"toy/toy_test.go": "package toy\n",
		"list.tsv": reviewedHeader + `
toy	F	3	2	func F() int { return 3 }	makes no difference
toy	F	3	4	func F() int { return 3 }	makes no difference
toy	F	3	5	func F() int { return 3 }	stale
other	F	3	5	func F() int { return 3 }	of a package that is not tried
`,
	})
	var out bytes.Buffer
	status, err := run(dir, []string{"-packages", "toy", "-tables", "", "-reviewed", "list.tsv"}, &out, io.Discard)
	want := regexp.MustCompile(`^toy: 1 literals, 2 mutants .* 2 lived, 2 of them reviewed; .*\nstale\ttoy\tF\t3\t5\tfunc F\(\) int { return 3 }\n$`)
	if err != nil || status != 1 || !want.MatchString(out.String()) {
		t.Errorf("status %d, %v, printed\n%s", status, err, &out)
	}
}

func TestCompare(t *testing.T) {
	k := func(s string) key { return key{pkg: "p", decl: s} }
	for _, tt := range []struct {
		survivors, reviewed []string
		unlisted            int
		stale               string
	}{
		{nil, nil, 0, "[]"},
		{[]string{"a", "b"}, []string{"a", "b"}, 0, "[]"},
		{[]string{"a", "b"}, []string{"a"}, 1, "[]"},
		{[]string{"a"}, []string{"a", "b"}, 0, fmt.Sprint([]key{k("b")})},
		{[]string{"c"}, []string{"b", "a"}, 1, fmt.Sprint([]key{k("a"), k("b")})},
	} {
		survivors, reviewed := map[key]bool{}, map[key]string{{pkg: "q"}: "not tried"}
		for _, s := range tt.survivors {
			survivors[k(s)] = true
		}
		for _, s := range tt.reviewed {
			reviewed[k(s)] = "reason"
		}
		unlisted, stale := compare(survivors, reviewed, []string{"p"})
		if unlisted != tt.unlisted || fmt.Sprint(stale) != tt.stale {
			t.Errorf("%q against %q: %d, %v, want %d, %s", tt.survivors, tt.reviewed, unlisted, stale, tt.unlisted, tt.stale)
		}
	}
}

func TestBaselineFails(t *testing.T) {
	dir := writeToy(t, map[string]string{
		"go.mod":          "module toy.example\n\ngo 1.25\n",
		"toy/toy.go":      "package toy\n\nfunc F() int { return 3 }\n",
		"toy/toy_test.go": "package toy\n\nimport \"testing\"\n\nfunc Test(t *testing.T) { t.Error(\"always\") }\n",
	})
	status, err := run(dir, []string{"-packages", "toy", "-tables", ""}, io.Discard, io.Discard)
	if status != 2 || err == nil || !strings.Contains(err.Error(), "fail with nothing changed") {
		t.Errorf("status %d, %v", status, err)
	}
}

func TestParseReviewed(t *testing.T) {
	for list, want := range map[string]string{
		"a\tb\n":                                "line 1: ",
		reviewedHeader + "\na\tb\tc\td\te\n":    "line 2: want six columns",
		reviewedHeader + "\na\tb\tc\td\te\t \n": "line 2: want six columns",

		reviewedHeader + strings.Repeat("\na\tb\tc\td\te\tr", 2): "line 3: twice",
	} {
		if _, err := parseReviewed(strings.NewReader(list)); err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%q: %v, want %s", list, err, want)
		}
	}
}
