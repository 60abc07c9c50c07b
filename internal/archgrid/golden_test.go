package archgrid_test

import (
	"crypto/sha256"
	"encoding/binary"
	"flag"
	"fmt"
	"hash"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var (
	update = flag.Bool("update", false, "rewrite the golden files")
	dump   = flag.String("dump", "", "write the whole grid to this directory, to be compared with that of another architecture")
)

// block is a part of the grid: what it came to, and hashes of it.
type block struct {
	name    string
	figures strings.Builder // grams, steps, meals, energies as printed
	texts   strings.Builder // workings, cautions, refusals
	bits    hash.Hash       // nil where a power other than 3/4 or an exponential is in it
	cases   int
	refused int
	last    string // the figures of the last case
	sample  string // those of one case, for the reader
}

func newBlock(name string, exact bool) *block {
	b := &block{name: name}
	if exact {
		b.bits = sha256.New()
	}
	return b
}

// exactly takes figures into the hash of the bits.
func (b *block) exactly(figures ...float64) {
	if b.bits == nil {
		return
	}
	for _, x := range figures {
		var bytes [8]byte
		binary.LittleEndian.PutUint64(bytes[:], math.Float64bits(x))
		b.bits.Write(bytes[:])
	}
}

// short is a hash as it stands in the golden file.
func short(sum []byte) string { return fmt.Sprintf("%x", sum[:6]) }

func hashed(text string) string {
	sum := sha256.Sum256([]byte(text))
	return short(sum[:])
}

// line is the block in the golden file.
func (b *block) line() string {
	bits := "-"
	if b.bits != nil {
		bits = short(b.bits.Sum(nil))
	}
	return fmt.Sprintf("%-42s %5d %7d  %s  %s  %s\n", b.name, b.cases, b.refused, hashed(b.figures.String()), hashed(b.texts.String()), bits)
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(strings.Split(string(want), "\n"), strings.Split(got, "\n")); diff != "" {
		t.Errorf("%s (-want +got), see the comment of TestGrid:\n%s", name, diff)
	}
}

// TestGrid holds the grid against testdata/grid.golden, a line for each block:
// cases, how many of them are refused, then hashes of the figures, of the texts
// and of the bits. testdata/sample.golden has some of what is hashed.
//
// Where a figure or a text was changed on purpose, go test ./internal/archgrid
// -update writes both anew on any machine; a hash of figures that changes without
// that is a fault. Where one architecture differs from another, -dump=DIR on both
// and diff -r show the case.
func TestGrid(t *testing.T) {
	var grid, samples strings.Builder
	fmt.Fprintf(&grid, "%-42s %5s %7s  %-12s  %-12s  %s\n", "block", "cases", "refused", "figures", "texts", "bits")
	for _, b := range blocks(t) {
		grid.WriteString(b.line())
		samples.WriteString(b.name + "\n" + b.sample + "\n")
		if *dump != "" {
			name := filepath.Join(*dump, strings.ReplaceAll(b.name, "/", "-"))
			if err := os.WriteFile(name, []byte(b.figures.String()+b.texts.String()), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	golden(t, "grid.golden", grid.String())
	golden(t, "sample.golden", samples.String())
}
