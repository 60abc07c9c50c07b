package main

import (
	"fmt"
	"runtime"
	"strings"
	"testing"

	"example.org/bowlgram/internal/csvrow"
)

func TestNamesAreKeptExactly(t *testing.T) {
	var s nameSet
	for i := range 5000 {
		if got := s.add(fmt.Append(nil, "animal ", i), i+2); got != 0 {
			t.Fatalf("animal %d: new name taken for the one on line %d", i, got)
		}
	}
	for i := range 5000 {
		if got := s.add(fmt.Append(nil, "animal ", i), 9999); got != i+2 {
			t.Fatalf("animal %d: got line %d, want %d", i, got, i+2)
		}
	}
	for _, name := range []string{"", "Animal 1", "animal 1 ", "animal"} {
		if got := s.add([]byte(name), 1); got != 0 {
			t.Errorf("%q taken for the name on line %d", name, got)
		}
	}
}

// The chunks are of a size that entries of 64 bytes don't divide, those of 59
// bytes do: both ends of a chunk are walked over.
func TestNamesFillChunks(t *testing.T) {
	for _, length := range []int{csvrow.MaxName, 59} {
		var s nameSet
		name := func(i int) string { return fmt.Sprintf("%0*d", length, i) }
		for i := range 3 * chunkSize / length {
			if got := s.add([]byte(name(i)), i+1); got != 0 {
				t.Fatalf("length %d, name %d: taken for line %d", length, i, got)
			}
		}
		for i := range 3 * chunkSize / length {
			if got := s.add([]byte(name(i)), 0); got != i+1 {
				t.Fatalf("length %d, name %d: line %d", length, i, got)
			}
		}
	}
}

func TestNamesCostAtMost100BytesARow(t *testing.T) {
	const rows = 200_000
	heap := func() uint64 {
		runtime.GC()
		runtime.GC()
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		return m.HeapAlloc
	}
	tail := strings.Repeat("x", csvrow.MaxName-8)
	before := heap()
	var s nameSet
	for i := range rows {
		if s.add(fmt.Appendf(nil, "%08d%s", i, tail), i+2) != 0 {
			t.Fatal("new name refused")
		}
	}
	after := heap()
	per := float64(after-before) / rows
	runtime.KeepAlive(&s)
	t.Logf("%.1f bytes a row of %d-byte names", per, csvrow.MaxName)
	if per > 100 || per < csvrow.MaxName {
		t.Errorf("%.1f bytes a row, want %d to 100", per, csvrow.MaxName)
	}
}
