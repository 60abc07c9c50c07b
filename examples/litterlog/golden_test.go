package main

import (
	"bytes"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"example.org/bowlgram/internal/page"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// golden compares got with a file of testdata.
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
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", name, diff)
	}
}

// runs runs the program and returns what it wrote and its exit status.
func runs(t *testing.T, stdin string, args ...string) (stdout, stderr string, status int) {
	t.Helper()
	var out, errs bytes.Buffer
	status = run(args, strings.NewReader(stdin), &out, &errs)
	return out.String(), errs.String(), status
}

// own are the flags that a file needs, with what the tests add.
func own(args ...string) []string {
	return append([]string{
		"-species", "cat", "-born", "2026-10-20",
		"-powder-energy", "5100 kcal/kg", "-powder", "30 g", "-water", "125 mL", "-made", "150 mL",
	}, args...)
}

func TestDemo(t *testing.T) {
	for _, test := range []struct {
		golden string
		args   []string
	}{
		{"demo.golden", nil},
		{"demo-working.golden", []string{"-working"}},
		{"demo-csv.golden", []string{"-format", "csv"}},
	} {
		stdout, stderr, status := runs(t, "", test.args...)
		if status != exitOK || stderr != "" {
			t.Errorf("%v: exit status %d, stderr %q", test.args, status, stderr)
		}
		golden(t, test.golden, stdout)
	}
}

// A sheet of A4 takes some 65 lines of 104 characters.
func TestDemoFitsOnePage(t *testing.T) {
	stdout, _, _ := runs(t, "")
	if n := strings.Count(stdout, "\n"); n > 65 {
		t.Errorf("%d lines", n)
	}
	for line := range strings.Lines(stdout) {
		if n := utf8.RuneCountInString(line) - 1; n > page.Width {
			t.Errorf("%d characters: %s", n, line)
		}
	}
}

func TestBadRowsKeepTheirPlace(t *testing.T) {
	stdout, stderr, status := runs(t, "", own(filepath.Join("testdata", "bad.csv"))...)
	if status != exitBadRows {
		t.Errorf("exit status %d, want %d", status, exitBadRows)
	}
	golden(t, "bad.golden", stdout)
	golden(t, "bad-stderr.golden", filepath.ToSlash(stderr))
	stdout, _, status = runs(t, "", own("-format", "csv", filepath.Join("testdata", "bad.csv"))...)
	if status != exitBadRows {
		t.Errorf("csv: exit status %d, want %d", status, exitBadRows)
	}
	golden(t, "bad-csv.golden", stdout)
	file, err := os.ReadFile(filepath.Join("testdata", "bad.csv"))
	if err != nil {
		t.Fatal(err)
	}
	if got, want := strings.Count(stdout, "\n"), bytes.Count(file, []byte("\n")); got != want {
		t.Errorf("%d rows for %d", got, want)
	}
}

// brokenWriter takes n bytes and then no more.
type brokenWriter struct{ n int }

func (w *brokenWriter) Write(b []byte) (int, error) {
	if len(b) > w.n {
		return w.n, io.ErrShortWrite
	}
	w.n -= len(b)
	return len(b), nil
}

func TestWriteErrorIsReported(t *testing.T) {
	for _, format := range []string{"text", "csv"} {
		var errs bytes.Buffer
		status := run([]string{"-format", format}, nil, &brokenWriter{100}, &errs)
		if want := "litterlog: writing the page: short write\n"; status != exitFailed || errs.String() != want {
			t.Errorf("%s: exit status %d, stderr %q, want %d, %q", format, status, errs.String(), exitFailed, want)
		}
	}
}
