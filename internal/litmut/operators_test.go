package main

import (
	"bytes"
	"strings"
	"testing"
)

// signs is a module with a package in which each operator's fate is known. Some
// forms are there because a call must take their place: nested and adjoining
// operators, what can only be compared with nil, untyped constants, a sign before
// a bracket, a step in the head of a loop.
var signs = map[string]string{
	"go.mod": "module toy.example\n\ngo 1.25\n",
	"toy/toy.go": `package toy

const Dozen = 4 * 3 // out of functions: none

type Mass float64

func Mean(a, b Mass) Mass { return (a + b) / 2 }

func Split(n, m int) (each, rest int) { return n / m, n % m }

func Below(a, b Mass) bool { return a < b } // no test at the limit

func Sum(all []int) (n int) {
	for i := 0; i < len(all); i++ {
		n += -(-all[i])
	}
	return n
}

func Empty(all []int, err error) bool { return all == nil && err == nil }

func Between(s string) bool { return "a"+"b" <= s && s != "b"+"" }

func Far[T ~int | ~float64](x T) T { return x*x - 2*x }

func Days() int { return 52 * 7 }

func Unseen(a, b int) int { return a - b - 1 }
`,
	"toy/toy_test.go": `package toy_test

import (
	"errors"
	"testing"

	. "toy.example/toy"
)

func Test(t *testing.T) {
	each, rest := Split(7, 2)
	if Mean(2, 5) != 3.5 || each != 3 || rest != 1 || !Below(1, 2) || Below(3, 2) || Sum([]int{1, 2}) != 3 ||
		!Empty(nil, nil) || Empty([]int{1}, nil) || Empty(nil, errors.New("")) || !Between("ab") || Between("aa") ||
		Between("b") || !Between("c") || Far(5) != 15 || Days() != 364 {
		t.Fail()
	}
}
`,
}

// The limit of Below, and both signs of Unseen, which no test calls.
const signsLive = `lived	toy/toy.go:11	toy	Below	<	<=	func Below(a, b Mass) bool { return a < b }
lived	toy/toy.go:28	toy	Unseen	-	+	func Unseen(a, b int) int { return a - b - 1 }
lived	toy/toy.go:28	toy	Unseen	-#2	+	func Unseen(a, b int) int { return a - b - 1 }
`

func TestOperators(t *testing.T) {
	dir := writeToy(t, signs)
	for _, tt := range []struct {
		args           []string
		lives, figures string
	}{
		{nil, signsLive, "toy: 19 operators, 22 mutants (0 more don't compile): 19 killed by its tests, 0 by published tables, 0 timed out, 3 lived, "},
		// As the compiler sees it.
		{[]string{"-apart", "-only", "^(Sum|Between)$"}, "", "toy: 19 operators, 8 mutants (0 more don't compile): 8 killed by its tests, "},
	} {
		var out, diag bytes.Buffer
		args := append(tt.args, "-operators", "-packages", "toy", "-tables", "", "-jobs", "1", "-reviewed", "none.tsv")
		if _, err := run(dir, args, &out, &diag); err != nil || diag.Len() > 0 {
			t.Fatalf("%q: %v\n%s", args, err, &diag)
		}
		lives, figures := split(out.String())
		if lives != tt.lives {
			t.Errorf("%q: lived\n%swant\n%s", args, lives, tt.lives)
		}
		if !strings.HasPrefix(figures, tt.figures) {
			t.Errorf("%q: %s, want %s", args, figures, tt.figures)
		}
	}
}
