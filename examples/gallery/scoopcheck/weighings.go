package main

import (
	"errors"
	"fmt"
	"io"

	"example.org/bowlgram/examples/gallery/internal/command"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// list is what was weighed.
type list struct {
	used []units.Mass
	out  []leftOut
}

// leftOut is a weighing that isn't to count.
type leftOut struct {
	line    int
	mass    string // as typed
	because string
}

// weighings reads the weighings of the command line, of the file or of the demo.
func (s *settings) weighings(args []string, stdin io.Reader, report func(string)) (*list, error) {
	if len(args) > 0 {
		if s.file != "" {
			return nil, errors.New("want weighings or -file, not both: flags come first")
		}
		return typed(args)
	}
	in, name, err := command.Demo("weighings.csv", demo)
	if s.file != "" {
		in, name, err = command.Open(s.file, stdin)
	}
	if err != nil {
		return nil, err
	}
	defer in.Close()
	l := new(list)
	err = command.Read(in, []string{"weighing", "left out"}, 1, l.add, func(problem string) { report(name + ": " + problem) })
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return l, nil
}

// add reads one row.
func (l *list) add(cell func(int) string, line int, p *csvrow.Problems) {
	mass, err := units.ParseMass(cell(0))
	switch {
	case err != nil:
		p.AddError("weighing", cell(0), err)
	case !(mass > 0):
		p.Add("weighing", cell(0), "want a mass above zero")
	case cell(1) != "":
		l.out = append(l.out, leftOut{line, oneline.Of(cell(0)), oneline.Of(cell(1))})
	default:
		l.used = append(l.used, mass)
	}
}

// typed reads the weighings of the command line. Each is a mass with its unit;
// one that isn't is bad usage, since a shell may have split it.
func typed(args []string) (*list, error) {
	l := new(list)
	var faults units.ErrorList
	for i, arg := range args {
		mass, err := units.ParseMass(arg)
		if err != nil {
			faults = append(faults, fmt.Errorf("weighing %d %q: %s", i+1, arg, csvrow.Reason(err)))
		}
		l.used = append(l.used, mass)
	}
	return l, faults.Err()
}
