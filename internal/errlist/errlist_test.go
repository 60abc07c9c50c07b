package errlist_test

import (
	"errors"
	"testing"

	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

func TestLists(t *testing.T) {
	one, two, three := errors.New("1"), errors.New("2"), errors.New("3")
	for _, test := range []struct {
		err  error
		want units.ErrorList
	}{
		{nil, nil},
		{one, units.ErrorList{one}},
		{units.ErrorList{one, two}, units.ErrorList{one, two}},
		{units.ErrorList(nil), nil},
	} {
		got := errlist.Of(test.err)
		added := errlist.Add(units.ErrorList{three}, test.err)
		if len(got) != len(test.want) || len(added) != 1+len(test.want) || added[0] != three {
			t.Errorf("%v: %v, added %v", test.err, got, added)
		}
		for i, want := range test.want {
			if got[i] != want || added[i+1] != want {
				t.Errorf("%v: %v, added %v", test.err, got, added)
			}
		}
	}
}

// The field is placed in a copy: the error may be somebody else's too.
func TestAt(t *testing.T) {
	field, other := &units.FieldError{Package: "p", Field: "label", Value: "x"}, errors.New("other")
	got := errlist.At(units.ErrorList{field, other}, "foods[1].")
	var placed *units.FieldError
	if len(got) != 2 || !errors.As(got[0], &placed) || placed.Field != "foods[1].label" || placed.Value != "x" || got[1] != other {
		t.Errorf("%v", got)
	}
	if field.Field != "label" {
		t.Errorf("the error itself has %q now", field.Field)
	}
	if got := errlist.At(nil, "foods[1]."); got != nil {
		t.Errorf("of nothing: %v", got)
	}
}
