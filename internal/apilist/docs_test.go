package main

import (
	"go/types"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// sources are the packages that a user can import, with the names that a link in one
// of them can lead to: its own are given without a path.
func sources(t *testing.T) (list []*source, known map[string]names) {
	t.Helper()
	if testing.Short() {
		t.Skip("compiles every package, the same on every architecture")
	}
	packages, err := load()
	if err != nil {
		t.Fatal(err)
	}
	known = make(map[string]names)
	for _, p := range packages {
		s, err := p.source()
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, s)
		known[p.path] = names{p.types.Scope()}
		for _, imported := range p.types.Imports() {
			known[imported.Path()] = names{imported.Scope()}
		}
	}
	return list, known
}

func TestEveryExportedNameIsDocumented(t *testing.T) {
	list, _ := sources(t)
	for _, s := range list {
		for _, name := range s.undocumented() {
			t.Errorf("%s has no comment", name)
		}
	}
}

func TestEveryDocLinkLeadsSomewhere(t *testing.T) {
	list, known := sources(t)
	for _, s := range list {
		for _, link := range s.brokenLinks(known) {
			t.Error(link)
		}
	}
}

func TestPackagesOfTheLibrary(t *testing.T) {
	list, _ := sources(t)
	var got []string
	for _, s := range list {
		got = append(got, s.short)
	}
	want := []string{"diet", "energy", "energy/advice", "energy/trend", "portion", "portion/scoop", "transition", "units"}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// sample is a package that has every fault.
const sample = `package sample

// Documented is a type with an example of its function, see [Undocumented], [Gone],
// [Documented]s and [strings.Gone].
type Documented int

func NewDocumented() Documented { return 0 }

type Undocumented struct{ Field int }

func (*Undocumented) Method() {}
func (Undocumented) hidden()  {}

type hidden int

func (hidden) Method() {}

// Generic has an example of its method.
type Generic[T any] struct{ x T }

func (*Generic[T]) Method(strings.Builder) {}

// Interface has an example of its own.
type Interface interface {
	Method()
	// Told is told.
	Told()
}

// Group.
const (
	One = 1
	Two = 2
)

const Alone = 3

var Told = 4 // is told

var Untold, untold = 5, 6
`

const sampleTest = `package sample_test

func ExampleNewDocumented() {}

func ExampleGeneric_Method() {}

func ExampleInterface_suffix() {}
`

func TestFaultsOfASample(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{"sample.go": sample, "sample_test.go": sampleTest} {
		text = strings.Replace(text, "\n", "\n\nimport \"strings\"\n", 1)
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	s, err := (&pkg{path: "sample", short: "sample", dir: dir}).source()
	if err != nil {
		t.Fatal(err)
	}
	known := map[string]names{"strings": {types.NewPackage("strings", "strings").Scope()}}
	var broken []string
	for _, link := range s.brokenLinks(known) {
		_, link, _ = strings.Cut(link, " ")
		broken = append(broken, link)
	}
	for _, tt := range []struct {
		what      string
		got, want []string
	}{
		{"undocumented", s.undocumented(), []string{
			"package sample", "sample.NewDocumented", "sample.Undocumented", "sample.Undocumented.Method",
			"sample.Generic.Method", "sample.Interface.Method", "sample.Alone", "sample.Untold",
		}},
		{"without example", s.withoutExample(), []string{"sample.Undocumented"}},
		{"broken links", broken, []string{"[Documented]", "[Gone]", "[strings.Gone]"}},
	} {
		if !slices.Equal(tt.got, tt.want) {
			t.Errorf("%s:\ngot  %q\nwant %q", tt.what, tt.got, tt.want)
		}
	}
}

func TestEveryExportedTypeHasAnExample(t *testing.T) {
	list, _ := sources(t)
	for _, s := range list {
		for _, name := range s.withoutExample() {
			t.Errorf("%s has no example", name)
		}
	}
}
