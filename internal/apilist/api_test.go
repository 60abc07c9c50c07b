package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"slices"
	"strings"
	"testing"
)

func TestAPIOfASample(t *testing.T) {
	const text = `package sample

const (
	Answer      = 42
	Third  Mass = 1.0 / 3
	Name        = "a"
	hidden      = 1
)

var Err error

func Parse[Q Number](s string, more ...int) (value, digit Q, err error) { return }

type Mass float64

func (m Mass) Grams() float64              { return 0 }
func (m *Mass) UnmarshalText(b []byte) error { return nil }
func (m Mass) hidden()                     {}

type Range[Q Number] struct{ Low, High Q }

func (Range[Q]) Mid() Q { var q Q; return q }

type Open struct {
	Mass ` + "`json:\"mass\"`" + `
	List []Mass
}

type Opaque struct{ x int }

type Number interface{ ~int | ~float64 }

type Sealed interface {
	Do(times int) error
	sealed()
}

type Other = Mass
`
	fset := token.NewFileSet()
	f, err := parser.ParseFile(fset, "sample.go", text, 0)
	if err != nil {
		t.Fatal(err)
	}
	p, err := new(types.Config).Check("sample", fset, []*ast.File{f}, nil)
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Split(`sample: const Answer untyped int = 42
sample: const Name untyped string = "a"
sample: const Third Mass = 0.3333333333333333
sample: func Parse[Q Number](s string, more ...int) (value Q, digit Q, err error)
sample: method (*Mass) UnmarshalText(b []byte) error
sample: method (*Open) UnmarshalText(b []byte) error
sample: method (Mass) Grams() float64
sample: method (Open) Grams() float64
sample: method (Range[Q Number]) Mid() Q
sample: type Mass float64
sample: type Number interface{~int | ~float64}
sample: type Opaque struct, comparable, with unexported fields
sample: type Open struct, List []Mass
sample: type Open struct, embedded Mass `+"`json:\"mass\"`"+`
sample: type Open struct, not comparable
sample: type Other = Mass
sample: type Range[Q Number] struct, High Q
sample: type Range[Q Number] struct, Low Q
sample: type Range[Q Number] struct, comparable
sample: type Sealed interface, Do(times int) error
sample: type Sealed interface, with unexported methods
sample: var Err error`, "\n")
	got := (&pkg{short: "sample", types: p}).api()
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}
