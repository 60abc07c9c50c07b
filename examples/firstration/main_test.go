package main

import (
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func read(t *testing.T, name string) string {
	t.Helper()
	b, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// 70 × 24.9^0.75 × 1.6 is 1248.44 kcal, and 1248.44 ÷ 3560 × 1000 is 350.69 g,
// worked by hand: 351 g in three meals of 117 g.
func TestFirstRation(t *testing.T) {
	out, err := exec.Command("go", "run", ".").Output()
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(read(t, "testdata/firstration.golden"), string(out)); d != "" {
		t.Errorf("output (-want +got):\n%s", d)
	}
}

// The README shows this program and what it prints, to the letter.
func TestREADMEShowsThisProgram(t *testing.T) {
	readme := read(t, "../../README.md")
	for _, block := range []struct{ fence, text string }{
		{"```go\n", read(t, "main.go")},
		{"```\n", read(t, "testdata/firstration.golden")},
	} {
		if want := block.fence + block.text + "```\n"; !strings.Contains(readme, want) {
			t.Errorf("README.md lacks the block\n%s", want)
		}
	}
}
