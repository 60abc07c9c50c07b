package testkit

import (
	"bytes"
	"io"
	"path/filepath"
	"strings"
	"testing"
)

// Program is the run function of a program of the gallery.
type Program func(args []string, stdin io.Reader, stdout, stderr io.Writer) int

// Run runs a program and returns what it wrote and its exit status.
func (p Program) Run(t *testing.T, stdin string, args ...string) (stdout, stderr string, status int) {
	t.Helper()
	var out, errs bytes.Buffer
	status = p(args, strings.NewReader(stdin), &out, &errs)
	return out.String(), filepath.ToSlash(errs.String()), status
}

// Refuses checks that bad usage or bad input is refused: exit status 2, the reason
// on the standard error and nothing on the standard output.
func (p Program) Refuses(t *testing.T, stdin, reason string, args ...string) {
	t.Helper()
	stdout, stderr, status := p.Run(t, stdin, args...)
	if status != 2 || stdout != "" || !strings.Contains(stderr, reason) {
		t.Errorf("%q: exit status %d, stdout %q, stderr %q, want 2 and %q", args, status, stdout, stderr, reason)
	}
}

// ReportsWriteError checks that output that can't be written is said and is exit
// status 2.
func (p Program) ReportsWriteError(t *testing.T, want string) {
	t.Helper()
	var errs bytes.Buffer
	if status := p(nil, nil, noWriter{}, &errs); status != 2 || errs.String() != want {
		t.Errorf("exit status %d, stderr %q, want 2, %q", status, errs.String(), want)
	}
}

type noWriter struct{}

func (noWriter) Write([]byte) (int, error) { return 0, io.ErrShortWrite }
