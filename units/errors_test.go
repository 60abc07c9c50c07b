package units_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.org/bowlgram/units"
)

func TestFieldErrorText(t *testing.T) {
	for _, row := range []struct {
		err  units.FieldError
		want string
	}{
		{
			units.FieldError{"energy", "weight", "4300 kg", "1.5 kg to 20 kg", "grams?"},
			`energy: weight "4300 kg": want 1.5 kg to 20 kg (grams?)`,
		},
		{units.FieldError{"energy", "weight", "0 g", "more than 0 g", ""}, `energy: weight "0 g": want more than 0 g`},
		{units.FieldError{"diet", "name", "", "", "which food?"}, `diet: name "" (which food?)`},
		{units.FieldError{"diet", "name", "", "", ""}, `diet: name ""`},
		{units.FieldError{"diet", "name", "a\"b\n", "", ""}, `diet: name "a\"b\n"`}, // on one line
	} {
		if got := row.err.Error(); got != row.want {
			t.Errorf("got %s, want %s", got, row.want)
		}
	}
}

func TestParseErrorText(t *testing.T) {
	err := &units.ParseError{Quantity: "mass", Text: "5\n", Reason: "no unit", Accepted: "g"}
	if got, want := err.Error(), `units: mass "5\n": no unit: want g`; got != want {
		t.Errorf("got %s, want %s", got, want) // on one line, for a CSV cell
	}
	err.Accepted = ""
	if got, want := err.Error(), `units: mass "5\n": no unit`; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func TestErrorList(t *testing.T) {
	sentinel := errors.New("first")
	field := &units.FieldError{Package: "energy", Field: "age", Value: "-1 d"}
	list := units.ErrorList{fmt.Errorf("row 2: %w", sentinel), field}

	if got, want := list.Error(), `row 2: first; energy: age "-1 d"`; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	err := list.Err()
	var got *units.FieldError
	if !errors.Is(err, sentinel) || !errors.As(err, &got) || got != field {
		t.Errorf("errors.Is or errors.As doesn't look through the list")
	}
	if errors.Is(err, errors.ErrUnsupported) {
		t.Error("errors.Is finds what isn't there")
	}
	var same units.ErrorList
	if !errors.As(err, &same) || len(same) != 2 {
		t.Errorf("Err of two faults is a %T", err)
	}
}

func TestErrorListErr(t *testing.T) {
	if err := units.ErrorList(nil).Err(); err != nil {
		t.Errorf("no faults: %v", err)
	}
	if err := (units.ErrorList{}).Err(); err != nil {
		t.Errorf("no faults: %v", err)
	}
	one := errors.New("one")
	if err := (units.ErrorList{one}).Err(); err != one {
		t.Errorf("one fault: %v", err)
	}
}

func TestLongValueIsCutInTheError(t *testing.T) {
	err := &units.FieldError{Package: "p", Field: "f", Value: strings.Repeat("ä", 1000), Accepted: "less"}
	if text := err.Error(); len(text) > 400 || !strings.Contains(text, "ä…\": want less") {
		t.Errorf("%d bytes: %s", len(text), text)
	}
}

// A sheet of 100,000 faults is one line of text, and still a list of 100,000.
func TestLongListIsCutInTheTextOnly(t *testing.T) {
	last := errors.New("the last")
	for _, row := range []struct {
		faults int
		want   string
	}{
		{50, `; energy: age "49 d"`},
		{51, `; energy: age "49 d"; and 1 more`},
		{100000, `; energy: age "49 d"; and 99950 more`},
	} {
		var list units.ErrorList
		for i := range row.faults {
			list = append(list, &units.FieldError{Package: "energy", Field: "age", Value: fmt.Sprintf("%d d", i)})
		}
		if text := list.Error(); !strings.HasSuffix(text, row.want) || !strings.HasPrefix(text, `energy: age "0 d"; energy: age "1 d"; `) || len(text) > 1200 {
			t.Errorf("%d faults: %s", row.faults, text)
		}
		list[row.faults-1] = last
		if err := list.Err(); !errors.Is(err, last) || len(list.Unwrap()) != row.faults {
			t.Errorf("the last of %d faults is lost", row.faults)
		}
	}
}
