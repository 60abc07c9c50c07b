package portion

import (
	"strconv"
	"strings"
)

// Clock is the time of a day that a meal is given at, in whole minutes. It has
// no date and no place. The zero value is not given, which midnight isn't. It
// is comparable.
type Clock struct {
	minute int16 // of the day, from 1; 0: not given
}

const (
	minutesOfHour = 60
	minutesOfDay  = 24 * minutesOfHour

	clockForm = `hours and minutes of a 24-hour clock, as in "07:30"`
)

// At returns the time of day of an hour, 0 to 23, and a minute, 0 to 59. Any
// other is refused where it is used.
func At(hour, minute int) Clock {
	if hour < 0 || hour > 23 || minute < 0 || minute > 59 {
		return Clock{-1}
	}
	return Clock{int16(hour*minutesOfHour + minute + 1)}
}

// ParseClock reads hours and minutes of a 24-hour clock, as in "07:30" or "7:30".
func ParseClock(s string) (Clock, error) {
	t := strings.TrimSpace(s)
	h, m, ok := strings.Cut(t, ":")
	hour, err := strconv.ParseUint(h, 10, 8)
	minute, err2 := strconv.ParseUint(m, 10, 8)
	c := At(int(hour), int(minute))
	if !ok || err != nil || err2 != nil || len(h) > 2 || len(m) != 2 || !c.isValid() {
		hint := ""
		if l := strings.ToLower(t); strings.HasSuffix(l, "am") || strings.HasSuffix(l, "pm") {
			hint = "6 pm is 18:00"
		}
		return Clock{}, unfit("time", s, clockForm, hint)
	}
	return c, nil
}

func (c Clock) isValid() bool { return 0 <= c.minute && c.minute <= minutesOfDay }

// IsZero reports whether c is not given.
func (c Clock) IsZero() bool { return c == Clock{} }

// Equal reports whether c and d are the same time of day, or both not given.
func (c Clock) Equal(d Clock) bool { return c == d }

// Minutes returns the minutes since midnight, and false where c is not given or
// no time of day.
func (c Clock) Minutes() (int, bool) {
	if c.IsZero() || !c.isValid() {
		return 0, false
	}
	return int(c.minute) - 1, true
}

// String returns "07:30", and "" where c is not given or no time of day.
func (c Clock) String() string {
	b, _ := c.AppendText(nil)
	return string(b)
}

// AppendText appends the text of c. It fails where c is no time of day.
func (c Clock) AppendText(b []byte) ([]byte, error) {
	if c.IsZero() {
		return b, nil
	}
	m, ok := c.Minutes()
	if !ok {
		return nil, unfit("time", "out of range", clockForm, "")
	}
	h, m := m/minutesOfHour, m%minutesOfHour
	return append(b, byte('0'+h/10), byte('0'+h%10), ':', byte('0'+m/10), byte('0'+m%10)), nil
}

// MarshalText returns the text of c, as AppendText does.
func (c Clock) MarshalText() ([]byte, error) { return c.AppendText(nil) }

// UnmarshalText sets c from its text; an empty text is not given. On error c is
// left as it was.
func (c *Clock) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*c = Clock{}
		return nil
	}
	x, err := ParseClock(string(text))
	if err == nil {
		*c = x
	}
	return err
}
