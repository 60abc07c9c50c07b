package hostile

import (
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// entry is one input that is refused.
type entry struct {
	into  reader
	input string
	kind  kind
	want  string // the whole text of the error
}

// kind is the type of an error, as a caller asks for it with errors.As.
type kind string

const (
	list     kind = "units.ErrorList" // several faults, all at once
	vet      kind = "*energy.VeterinarianError"
	label    kind = "*diet.LabelError"
	analysis kind = "*diet.AnalysisError"
	scale    kind = "*portion.ScaleError"
	day      kind = "*transition.DayError"
	stock    kind = "*transition.StockError"
	parse    kind = "*units.ParseError"
	field    kind = "*units.FieldError"
	cell     kind = "a problem of a row" // in a file, for whoever mends it
	other    kind = "another"            // of encoding/json or of the form of a record
)

// kindOf returns the outermost of the types that a caller may ask for: a list before
// what is in it.
func kindOf(err error) kind {
	switch {
	case is[problem](err):
		return cell
	case is[*transition.DayError](err):
		return day
	case is[units.ErrorList](err):
		return list
	case is[*energy.VeterinarianError](err):
		return vet
	case is[*diet.LabelError](err):
		return label
	case is[*diet.AnalysisError](err):
		return analysis
	case is[*portion.ScaleError](err):
		return scale
	case is[*transition.StockError](err):
		return stock
	case is[*units.ParseError](err):
		return parse
	case is[*units.FieldError](err):
		return field
	}
	return other
}

func is[E error](err error) bool {
	var e E
	return errors.As(err, &e)
}

// reader is a way into the library, and what it is called in a failure.
type reader struct {
	name string
	read func(input string) error
}

// text is the way through a parser and, where the type has it, UnmarshalText. good is
// a text that is read.
func text[T any](name string, parse func(string) (T, error), good string) reader {
	return reader{name, func(input string) error {
		v, err := parse(input)
		if err == nil {
			return nil
		}
		if !reflect.ValueOf(&v).Elem().IsZero() {
			return fmt.Errorf("%v comes with the error %w", v, err)
		}
		u, ok := any(&v).(encoding.TextUnmarshaler)
		if !ok || input == "" { // which is none of an enumeration
			return err
		}
		before, goodErr := parse(good)
		if goodErr != nil {
			return fmt.Errorf("the good text is refused: %w", goodErr)
		}
		v = before
		if other := u.UnmarshalText([]byte(input)); other == nil || other.Error() != err.Error() {
			return fmt.Errorf("UnmarshalText: %v, the parser: %w", other, err)
		}
		if !reflect.DeepEqual(v, before) {
			return fmt.Errorf("the receiver is changed to %v by %w", v, err)
		}
		return err
	}}
}

// record is the way through encoding/json and, if the record can be read, its use.
// good is a record that is read and can be used.
func record[T any](name, good string, use func(T) error) reader {
	return reader{name, func(input string) error {
		var v, before T
		if err := errors.Join(json.Unmarshal([]byte(good), &v), json.Unmarshal([]byte(good), &before)); err != nil {
			return fmt.Errorf("the good record is refused: %w", err)
		}
		if use != nil {
			if err := use(v); err != nil {
				return fmt.Errorf("the good record is refused: %w", err)
			}
		}
		if err := json.Unmarshal([]byte(input), &v); err != nil {
			if !reflect.DeepEqual(v, before) {
				return fmt.Errorf("the receiver is changed to %v by %w", v, err)
			}
			return err
		}
		if use == nil {
			return nil
		}
		var fresh T
		if err := json.Unmarshal([]byte(input), &fresh); err != nil {
			return fmt.Errorf("refused the second time: %w", err)
		}
		return use(fresh)
	}}
}

// refusal is the error of an entry; a panic is told apart from one.
func (e *entry) refusal() (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("PANIC: %v", p)
		}
	}()
	return e.into.read(e.input)
}

// check runs a part of the corpus.
func check(t *testing.T, least int, entries []entry) {
	t.Helper()
	if len(entries) < least {
		t.Errorf("%d entries, there were %d", len(entries), least)
	}
	seen := make(map[[2]string]bool)
	for _, e := range entries {
		in := e.input
		if len(in) > 200 {
			in = in[:200] + "…"
		}
		key := [2]string{e.into.name, e.input}
		if seen[key] {
			t.Errorf("%s %q stands twice", e.into.name, in)
		}
		seen[key] = true
		err := e.refusal()
		if err == nil {
			t.Errorf("%s %q is taken", e.into.name, in)
			continue
		}
		// What encoding/json says of a depth begins in one way or another.
		said := err.Error() == e.want || e.kind == other && strings.HasSuffix(err.Error(), e.want)
		if got := kindOf(err); !said || got != e.kind {
			t.Errorf("%s %q\ngot  %s %s\nwant %s %s", e.into.name, in, got, err, e.kind, e.want)
		}
	}
}
