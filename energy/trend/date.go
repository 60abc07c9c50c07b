package trend

import (
	"strconv"
	"time"
)

// Date is a calendar day without a time and a place: the number of days since
// 31 December of the year 0, so that the difference of two is a number of days
// and d + 14 is two weeks later. The zero value is not given. Days from
// 1900-01-01 to 2199-12-31 are taken (ours: a check on typing).
type Date int32

const (
	firstDate Date = 693596 // 1900-01-01
	lastDate  Date = 803168 // 2199-12-31

	unixDate = 719163 // 1970-01-01

	secondsPerDay = 24 * 60 * 60
	layout        = "2006-01-02"
	dateForm      = `a day of the calendar, as in "2026-11-02", from 1900 to 2199`
)

// DateOf returns the day that t is in, where t's location is.
func DateOf(t time.Time) Date {
	year, month, day := t.Date()
	seconds := time.Date(year, month, day, 0, 0, 0, 0, time.UTC).Unix()
	// A year beyond int32 days is out of range and stays so.
	const far = 1 << 30
	return Date(max(-far, min(seconds/secondsPerDay+unixDate, far)))
}

// ParseDate reads a day in the form of ISO 8601, "2026-11-02". A day that the
// calendar doesn't have is refused.
func ParseDate(s string) (Date, error) {
	t, err := time.Parse(layout, s)
	if err != nil {
		return 0, refuse("date", s, dateForm, "")
	}
	if d := DateOf(t); d.isValid() {
		return d, nil
	}
	return 0, refuse("date", s, dateForm, "")
}

func (d Date) isValid() bool { return firstDate <= d && d <= lastDate }

// Time returns the start of d in UTC, for the packages that want a time.
func (d Date) Time() time.Time {
	return time.Unix((int64(d)-unixDate)*secondsPerDay, 0).UTC()
}

// String returns d as in "2026-11-02", "" for the zero value, and the bare
// number of one that is out of range.
func (d Date) String() string {
	switch {
	case d == 0:
		return ""
	case !d.isValid():
		return "day " + strconv.Itoa(int(d))
	}
	return d.Time().Format(layout)
}

// AppendText appends the text of d. It fails where d is out of range, since
// such a text is not read back.
func (d Date) AppendText(b []byte) ([]byte, error) {
	if d != 0 && !d.isValid() {
		return nil, refuse("date", d.String(), dateForm, "")
	}
	return append(b, d.String()...), nil
}

// MarshalText returns the text of d. It fails where AppendText does.
func (d Date) MarshalText() ([]byte, error) { return d.AppendText(nil) }

// UnmarshalText sets d from its text; an empty text is the zero value.
func (d *Date) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*d = 0
		return nil
	}
	x, err := ParseDate(string(text))
	if err != nil {
		return err
	}
	*d = x
	return nil
}

// checkToday refuses a day that is none, by which nothing can be judged.
func checkToday(today Date) error {
	if today.isValid() {
		return nil
	}
	if today == 0 {
		return refuse("today", "", dateForm, "not given: the clock is never read")
	}
	return refuse("today", today.String(), dateForm, "")
}

// checkDate returns the faults of one day of a log: not given, after today, or
// not after (or, where days may repeat, before) the one before it, which is
// zero for the first.
func checkDate(field string, d, before, today Date, repeats bool) error {
	switch {
	case d == 0:
		return refuse(field, "", dateForm, "not given")
	case !d.isValid():
		return refuse(field, d.String(), dateForm, "")
	case d > today:
		return refuse(field, d.String(), "a day up to "+today.String(), "in the future")
	case before == d && !repeats:
		return refuse(field, d.String(), "one entry a day", "stands twice")
	case before > d:
		return refuse(field, d.String(), "the days in their order", "after "+before.String())
	}
	return nil
}
