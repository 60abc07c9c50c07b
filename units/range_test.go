package units_test

import (
	"math"
	"testing"

	"example.org/bowlgram/units"
)

func TestRange(t *testing.T) {
	r := units.Range[units.Energy]{Low: 200, High: 300}
	for _, row := range []struct {
		e    units.Energy
		want bool
	}{
		{200, true},
		{250, true},
		{300, true},
		{units.Energy(math.Nextafter(200, 0)), false},
		{units.Energy(math.Nextafter(300, 400)), false},
		{units.Energy(math.NaN()), false},
	} {
		if got := r.Contains(row.e); got != row.want {
			t.Errorf("Contains(%v) = %v", row.e, got)
		}
	}
	if r.Mid() != 250 || r.Width() != 100 {
		t.Errorf("middle %v, width %v; want 250 and 100", r.Mid(), r.Width())
	}
}

func TestRangeIsValid(t *testing.T) {
	nan := units.Energy(math.NaN())
	for _, row := range []struct {
		r    units.Range[units.Energy]
		want bool
	}{
		{units.Range[units.Energy]{}, true},
		{units.Range[units.Energy]{Low: 5, High: 5}, true},
		{units.Range[units.Energy]{Low: 6, High: 5}, false},
		{units.Range[units.Energy]{Low: nan, High: 5}, false},
		{units.Range[units.Energy]{Low: 5, High: nan}, false},
	} {
		if got := row.r.IsValid(); got != row.want {
			t.Errorf("%v: %v, want %v", row.r, got, row.want)
		}
	}
}

func TestRangeOverlaps(t *testing.T) {
	r := units.Range[units.Energy]{Low: 200, High: 300}
	for _, row := range []struct {
		low, high units.Energy
		want      bool
	}{
		{100, 199, false},
		{100, 200, true}, // the ends count
		{220, 230, true},
		{100, 400, true},
		{300, 400, true},
		{301, 400, false},
	} {
		s := units.Range[units.Energy]{Low: row.low, High: row.high}
		if r.Overlaps(s) != row.want || s.Overlaps(r) != row.want {
			t.Errorf("%v and %v: want %v", r, s, row.want)
		}
	}
}
