package transition_test

import (
	"testing"
	"time"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

func TestDateCountsCalendarDays(t *testing.T) {
	east := time.FixedZone("", 9*60*60)
	for _, tt := range []struct {
		start  time.Time
		number int
		want   string
	}{
		{time.Date(2026, 11, 2, 0, 0, 0, 0, time.UTC), 1, "2026-11-02T00:00:00Z"},
		{time.Date(2026, 11, 2, 23, 59, 0, 0, time.UTC), 7, "2026-11-08T00:00:00Z"},
		{time.Date(2026, 11, 2, 1, 0, 0, 0, east), 1, "2026-11-02T00:00:00Z"}, // still the 1st in UTC
		{time.Date(2028, 2, 28, 0, 0, 0, 0, time.UTC), 3, "2028-03-01T00:00:00Z"},
		{time.Date(2026, 12, 31, 0, 0, 0, 0, time.UTC), 2, "2027-01-01T00:00:00Z"},
	} {
		if got := (transition.Day{Number: tt.number}).Date(tt.start).Format(time.RFC3339Nano); got != tt.want {
			t.Errorf("day %d from %v: %s, want %s", tt.number, tt.start, got, tt.want)
		}
	}
	if got := (transition.Day{Number: 3}).Date(time.Time{}); !got.IsZero() {
		t.Errorf("no start: %v", got)
	}
}

// An animal is ordered 845 kcal, and 890 from day 5 of its change on.
func TestNeedThatChangesOnTheWay(t *testing.T) {
	p := toSlim()
	asked := make(map[int]int)
	p.Events = []transition.Event{{Day: 2, Kind: transition.Missed}}
	days, err := p.DaysWith(func(day int) energy.Estimate {
		asked[day]++
		if day < 5 {
			return prescribed(845)
		}
		return prescribed(890)
	})
	if err != nil {
		t.Fatal(err)
	}
	// 25 % of 845 is 211.25 kcal, 70.89 g of the new food; all of 890 is 298.66 g.
	if got := days[0].Mass(slimDry.Name); got != 71 || days[0].Target != 845 {
		t.Errorf("day 1: %v for %v", got, days[0].Target)
	}
	if last := days[7]; last.Number != 8 || last.Mass(slimDry.Name) != 299 || last.Target != 890 {
		t.Errorf("day 8: %+v", last)
	}
	if asked[1] != 1 || asked[2] != 0 || asked[5] != 1 || len(asked) != 7 {
		t.Errorf("asked for %v", asked)
	}
}

func TestDaysAreEqual(t *testing.T) {
	day := func() transition.Day { return mustDays(t, toSlim(), oakum())[0] }
	for name, change := range map[string]func(*transition.Day){
		"number":   func(d *transition.Day) { d.Number++ },
		"step":     func(d *transition.Day) { d.Step++ },
		"share":    func(d *transition.Day) { d.Share++ },
		"missed":   func(d *transition.Day) { d.Missed = true },
		"foods":    func(d *transition.Day) { d.Foods[0].Mass++ },
		"meals":    func(d *transition.Day) { d.Meals = d.Meals[1:] },
		"energy":   func(d *transition.Day) { d.Energy++ },
		"target":   func(d *transition.Day) { d.Target++ },
		"cautions": func(d *transition.Day) { d.Cautions[0].Text = "" },
	} {
		d := day()
		change(&d)
		if d.Equal(day()) {
			t.Errorf("another %s is equal", name)
		}
	}
	if !day().Equal(day()) {
		t.Error("not equal to itself")
	}
	// The days of one step don't share what they hold.
	days := mustDays(t, toSlim(), oakum())
	days[0].Foods[0].Mass, days[0].Meals[0].Mass, days[0].Cautions[0].Text = 1, 1, ""
	if days[1].Foods[0].Mass == 1 || days[1].Meals[0].Mass == 1 || days[1].Cautions[0].Text == "" {
		t.Error("day 2 changed with day 1")
	}
}

func TestMassOfAFoodThatIsNotGiven(t *testing.T) {
	if m := mustDays(t, toSlim(), oakum())[0].Mass("hay"); m != units.Mass(0) {
		t.Errorf("%v", m)
	}
}
