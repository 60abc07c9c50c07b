package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"sync"
	"sync/atomic"
	"time"
)

// verdict is what the tests made of a mutant.
type verdict int

const (
	lived verdict = iota
	noMutant
	killed
	killedByTables
	timedOut
)

// runner runs the tests of a package and of the published tables on mutants of it.
type runner struct {
	*source
	tables  *listed // the package of published tables, or nil
	dir     string  // for what is built
	timeout time.Duration
	builds  atomic.Int64

	shared string // overlay with all mutants that need no build of their own
	binary map[*listed]func() (string, error)
}

// newRunner builds the tests of the package with the mutants in, or, if that
// doesn't compile or pass with none chosen, leaves each to a build of its own.
// An error means that the tests fail with nothing changed.
func newRunner(s *source, tables *listed, mutants []*mutant, operators bool, dir string, timeout time.Duration) (*runner, error) {
	r := &runner{source: s, tables: tables, dir: dir, timeout: timeout, binary: map[*listed]func() (string, error){}}
	rewrite := s.rewrite
	if operators {
		rewrite = s.rewriteOperators
	}
	files, added := rewrite(mutants)
	replace := map[string][]byte{filepath.Join(s.Dir, "zz_litmut.go"): added}
	for f, text := range files {
		replace[s.fset.Position(f.Pos()).Filename] = text
	}
	overlay, err := r.overlay("shared", replace)
	if err != nil {
		return nil, err
	}
	r.shared = overlay
	for _, p := range []*listed{s.listed, tables} {
		r.binary[p] = sync.OnceValues(func() (string, error) { return r.baseline(p, r.shared) })
	}
	_, err = r.binary[s.listed]()
	if err == nil {
		return r, nil
	}
	if _, plain := r.baseline(s.listed, ""); plain != nil {
		return nil, plain
	}
	fmt.Fprintf(os.Stderr, "litmut: %s: a build for each change, since one for all fails: %v\n", s.ImportPath, err)
	for _, mu := range mutants {
		mu.apart = true
	}
	return r, nil
}

// overlay writes the texts, and the file that puts them in the place of files
// of the tree.
func (r *runner) overlay(name string, texts map[string][]byte) (string, error) {
	replace := map[string]string{}
	for path, text := range texts {
		to := filepath.Join(r.dir, name+"-"+filepath.Base(path))
		if err := os.WriteFile(to, text, 0o666); err != nil {
			return "", err
		}
		replace[path] = to
	}
	data, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return "", err
	}
	path := filepath.Join(r.dir, name+".json")
	return path, os.WriteFile(path, data, 0o666)
}

// build compiles the tests of p.
func (r *runner) build(p *listed, overlay, out string) error {
	r.builds.Add(1)
	args := []string{"test", "-c", "-o", out}
	if overlay != "" {
		args = append(args, "-overlay", overlay)
	}
	cmd := exec.Command("go", append(args, p.ImportPath)...)
	cmd.Dir = r.Dir
	if text, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("go test -c %s: %w\n%s", p.ImportPath, err, text)
	}
	return nil
}

// baseline builds the tests of p and runs them with no change in force.
func (r *runner) baseline(p *listed, overlay string) (string, error) {
	out := filepath.Join(r.dir, fmt.Sprintf("shared%d.test", r.builds.Load()))
	if err := r.build(p, overlay, out); err != nil {
		return "", err
	}
	if text, v := r.test(p, out, 0); v != lived {
		return "", fmt.Errorf("%s: the tests fail with nothing changed\n%s", p.ImportPath, text)
	}
	return out, nil
}

// test runs the tests of p with a change in force.
func (r *runner) test(p *listed, binary string, id int) (output []byte, v verdict) {
	ctx, cancel := context.WithTimeout(context.Background(), r.timeout)
	defer cancel()
	// A loop without an end must not take the memory of the machine with it.
	cmd := exec.CommandContext(ctx, "sh", "-c", `ulimit -v 4000000; exec "$0" -test.short -test.failfast`, binary)
	cmd.Dir = p.Dir
	cmd.Env = append(os.Environ(), chosen+"="+strconv.Itoa(id))
	cmd.WaitDelay = time.Second
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &out
	err := cmd.Run()
	switch {
	case ctx.Err() != nil:
		return out.Bytes(), timedOut
	case err != nil:
		return out.Bytes(), killed
	}
	return nil, lived
}

// judge runs the tests of the package on the mutant, then, if they pass, those
// of the published tables.
func (r *runner) judge(mu *mutant) (verdict, error) {
	name := fmt.Sprintf("mutant%d", mu.id)
	overlay := ""
	if mu.apart {
		var err error
		overlay, err = r.overlay(name, map[string][]byte{r.fset.Position(mu.file.Pos()).Filename: r.alone(mu)})
		if err != nil {
			return 0, err
		}
	}
	binary := func(p *listed) (string, error) {
		if !mu.apart {
			return r.binary[p]()
		}
		out := filepath.Join(r.dir, name+".test")
		return out, r.build(p, overlay, out)
	}
	defer os.Remove(filepath.Join(r.dir, name+".test"))

	b, err := binary(r.listed)
	if err != nil && mu.apart {
		var exit *exec.ExitError
		if errors.As(err, &exit) {
			return noMutant, nil
		}
	}
	if err != nil {
		return 0, err
	}
	if _, v := r.test(r.listed, b, mu.id); v != lived {
		return v, nil
	}
	if r.tables == nil {
		return lived, nil
	}
	b, err = binary(r.tables)
	if err != nil && mu.apart {
		return killedByTables, nil // not compiling is noticed as well
	}
	if err != nil {
		return 0, err
	}
	if _, v := r.test(r.tables, b, mu.id); v != killed {
		return v, nil
	}
	return killedByTables, nil
}
