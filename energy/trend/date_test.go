package trend_test

import (
	"math"
	"testing"
	"time"

	"example.org/bowlgram/energy/trend"
)

func TestDateCountsDays(t *testing.T) {
	// 2028 is a leap year.
	if got := on("2028-03-01") - on("2028-02-28"); got != 2 {
		t.Errorf("from 28 February to 1 March 2028: %d days, want 2", got)
	}
	if got := on("1970-01-01").Time(); !got.Equal(time.Unix(0, 0)) {
		t.Errorf("1970-01-01 starts at %v", got)
	}
	// 23:30 in New York is the next day in UTC; the day is that of the place.
	place := time.FixedZone("", -5*60*60)
	if got := trend.DateOf(time.Date(2026, 11, 2, 23, 30, 0, 0, place)); got != on("2026-11-02") {
		t.Errorf("half past eleven in the evening is %v", got)
	}
	for d := on("1900-01-01"); d <= on("2199-12-31"); d += 97 {
		if back := on(d.String()); back != d {
			t.Fatalf("%v is read back as %v", d, back)
		}
		if y, m, day := d.Time().Date(); trend.DateOf(time.Date(y, m, day, 12, 0, 0, 0, time.UTC)) != d {
			t.Fatalf("%v is not its own noon", d)
		}
	}
}

func TestDateOutOfRangeHasNoText(t *testing.T) {
	for _, d := range []trend.Date{-1, 1, math.MinInt32, math.MaxInt32, on("2199-12-31") + 1, on("1900-01-01") - 1} {
		if b, err := d.MarshalText(); err == nil {
			t.Errorf("%d is written as %s", d, b)
		}
	}
	for _, s := range []string{"", "2026-11-2", "2026-11-02 ", "2026-11-02T00:00:00Z", "20261102", "2026-13-01", "1899-12-31", "2200-01-01", "12026-11-02"} {
		if d, err := trend.ParseDate(s); err == nil || d != 0 {
			t.Errorf("%q is read as %v, %v", s, d, err)
		}
	}
	if got := trend.DateOf(time.Date(100_000_000, 1, 1, 0, 0, 0, 0, time.UTC)); got.String() != "day 1073741824" {
		t.Errorf("a year beyond reason is %v", got)
	}
}
