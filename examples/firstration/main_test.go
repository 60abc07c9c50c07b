package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// printed returns what main prints.
func printed(t *testing.T) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "stdout")
	file, err := os.Create(name)
	if err != nil {
		t.Fatal(err)
	}
	stdout := os.Stdout
	os.Stdout = file
	main()
	os.Stdout = stdout
	if err := file.Close(); err != nil {
		t.Fatal(err)
	}
	return read(t, name)
}

func read(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// By hand: 24.9^0.75 = 11.1468, × 70 × 1.6 = 1248.4 kcal, / 3.56 = 350.7 g,
// on a 1 g scale 351 g, in three meals of 117 g.
func TestOutput(t *testing.T) {
	out := printed(t)
	if diff := cmp.Diff(read(t, "testdata/firstration.golden"), out); diff != "" {
		t.Errorf("output (-want +got):\n%s", diff)
	}
	if want := "meals     117 g + 117 g + 117 g\n"; !strings.Contains(out, want) {
		t.Errorf("no %q", want)
	}
}

// The README shows this program and what it prints, to the letter.
func TestREADME(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	if errors.Is(err, fs.ErrNotExist) {
		t.Skip("no README.md beside the examples")
	}
	if err != nil {
		t.Fatal(err)
	}
	_, rest, ok := strings.Cut(string(text), "```go\n")
	if !ok {
		t.Fatal("README.md has no block of Go")
	}
	code, rest, _ := strings.Cut(rest, "```\n")
	if diff := cmp.Diff(read(t, "main.go"), code); diff != "" {
		t.Errorf("code in README.md (-want +got):\n%s", diff)
	}
	_, rest, _ = strings.Cut(rest, "```\n")
	output, _, _ := strings.Cut(rest, "```\n")
	if diff := cmp.Diff(read(t, "testdata/firstration.golden"), output); diff != "" {
		t.Errorf("output in README.md (-want +got):\n%s", diff)
	}
}
