package transition_test

import (
	"reflect"
	"strconv"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// byDay returns the share of each day of a plan, as in "25 25 50".
func byDay(t *testing.T, p transition.Plan, need energy.Estimate) string {
	t.Helper()
	var b strings.Builder
	for i, d := range mustDays(t, p, need) {
		if d.Number != i+1 {
			t.Errorf("day %d has the number %d", i+1, d.Number)
		}
		if i > 0 {
			b.WriteByte(' ')
		}
		if d.Missed {
			b.WriteByte('-')
			continue
		}
		b.WriteString(strings.TrimSuffix(d.Share.String(), " %"))
	}
	return b.String()
}

func TestPublishedSchedules(t *testing.T) {
	for _, tt := range []struct {
		steps   transition.Steps
		name    string
		days    int
		byDay   string
		printed string // where
	}{
		{transition.FourStages, "four_stages", 7, "25 25 50 50 75 75 100", "Missouri: 25 (d1-2), 50 (3-4), 75 (5-6), 100 (7+)"},
		{transition.FourDays, "four_days", 4, "25 50 75 100", "SACN5 p. 386: +25 points daily, done day 4"},
		{transition.TenSteps, "ten_steps", 10, "10 20 30 40 50 60 70 80 90 100", "DK p. 215: +10 points daily, all on day 10"},
		{transition.Immediate, "immediate", 1, "100", "ours"},
	} {
		if got := tt.steps.String(); got != tt.name || tt.steps.Days() != tt.days || tt.steps.IsZero() {
			t.Errorf("%s: %d days, %q", tt.name, tt.steps.Days(), got)
		}
		p := toSlim()
		p.Steps = tt.steps
		if got := byDay(t, p, oakum()); got != tt.byDay {
			t.Errorf("%s: %s, printed %s (%s)", tt.name, got, tt.byDay, tt.printed)
		}
	}
	// Tufts: 1 month to 6 weeks.
	if n := transition.Slow.Days(); n < 28 || n > 42 || transition.Slow.Len() != 10 {
		t.Errorf("slow takes %d days in %d steps", n, transition.Slow.Len())
	}
}

func TestDefaultStepsFollowTheSpecies(t *testing.T) {
	ferret := estimate(energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}})
	for name, tt := range map[string]struct {
		need energy.Estimate
		last int
	}{
		"dog": {oakum(), 7}, "cat": {neuteredCat(4 * units.Kilogram), 10}, "ferret": {ferret, 37},
	} {
		p := toSlim()
		p.Steps = transition.Steps{}
		p.Scale = 0.1 * units.Gram
		days := mustDays(t, p, tt.need)
		if len(days) != tt.last || days[tt.last-1].Share != 100 {
			t.Errorf("%s: %d days, want %d", name, len(days), tt.last)
		}
	}
	rabbit := estimate(energy.Prescribed{Animal: energy.Animal{Species: energy.Other, Weight: 2 * units.Kilogram}, Daily: 180, By: "Dr Ysolde Crake"})
	p := toSlim()
	p.Steps = transition.Steps{}
	const want = `transition: steps "": want the steps, as in four_stages or slow (no default for this species)`
	if _, err := p.Days(rabbit); err == nil || err.Error() != want {
		t.Errorf("a rabbit: %v", err)
	}
}

// twenty is the most steps of one's own: ours.
const twenty = "5 %, 10 %, 15 %, 20 %, 25 %, 30 %, 35 %, 40 %, 45 %, 50 %, 55 %, 60 %, 65 %, 70 %, 75 %, 80 %, 85 %, 90 %, 95 %, 100 %"

func TestStepsAreComparableAndReadBack(t *testing.T) {
	if !reflect.TypeFor[transition.Steps]().Comparable() || !reflect.TypeFor[transition.Event]().Comparable() ||
		!reflect.TypeFor[transition.Response]().Comparable() || !reflect.TypeFor[transition.Purchase]().Comparable() {
		t.Error("not comparable")
	}
	for _, text := range []string{
		"four_stages", "four_days", "ten_steps", "slow", "immediate",
		twenty, "100 %", "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %", "33.3 % 10 d, 66.7 % 3 d, 100 % 2 d", "1.5 % 60 d, 100 %",
	} {
		s, err := transition.ParseSteps(text)
		if err != nil || s.String() != text {
			t.Errorf("%q: %q, %v", text, s, err)
		}
		own, err := transition.NewSteps(s.All()...)
		if err != nil {
			t.Errorf("%q: %v", text, err)
		}
		if named := !strings.Contains(text, "%"); (own == s) == named {
			t.Errorf("%q: one's own equal to a published one", text)
		}
	}
	for in, want := range map[string]string{
		" FOUR_DAYS ": "four_days", "50%2d,100%": "50 % 2 d, 100 %", "50 % 1 day, 100 % 3 days": "50 %, 100 % 3 d",
	} {
		if s, err := transition.ParseSteps(in); err != nil || s.String() != want {
			t.Errorf("%q: %q, %v, want %q", in, s, err, want)
		}
	}
}

func TestStepsThatAreRefused(t *testing.T) {
	const (
		forms = `1 to 20 steps of 1 to 60 days, each share above 1 % and above the one before, the last 100 %, as in "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %"`
		any   = "four_stages, four_days, ten_steps, slow or immediate, or " + forms
	)
	for in, hint := range map[string]string{
		"":                                   "",
		"fast":                               "",
		"25/50/100":                          ` (step 1 is "25/50/100")`,
		"50 %":                               " (the last is 50 %)",
		"50 %, 40 %, 100 %":                  " (step 2 doesn't rise: 40 % after 50 %)",
		"50 %, 50 %, 100 %":                  " (step 2 doesn't rise: 50 % after 50 %)",
		"0.25 % 2 d, 0.5 % 61 d, 1 %":        " (step 1 is 0.25 %: a fraction? that is 25 %, step 2 takes 61 days, step 2 is 0.5 %: a fraction? that is 50 %, step 3 is 1 %: a fraction? that is 100 %)",
		"-5 %, 120 %":                        " (step 1 is -5 %, step 2 is 120 %)",
		"50 % 2, 100 %":                      ` (step 1 takes "2")`,
		"50 % two d, 100 %":                  ` (step 1 takes "two d")`,
		"50 % 0 d, 100 %":                    " (step 1 takes 0 days)",
		"50 %, 100":                          ` (step 2 is "100")`,
		"0 %, 100 %":                         " (step 1 is 0 %)",
		"50 %, 100.5 %":                      " (step 2 is 100.5 %)",
		"50 % 65535 d, 100 %":                " (step 1 takes 65535 days)",
		"50 % 65536 d, 100 %":                ` (step 1 takes "65536 d")`,
		strings.Repeat("2 %,", 21):           ` (step 22 is "")`,
		strings.Repeat("2 %,", 20) + "100 %": " (21 steps)",
	} {
		s, err := transition.ParseSteps(in)
		if want := "transition: steps " + strconv.Quote(in) + ": want " + any + hint; err == nil || err.Error() != want || !s.IsZero() {
			t.Errorf("%q\ngot  %v\nwant %s", in, err, want)
		}
	}
	if _, err := transition.NewSteps(); err == nil || err.Error() != `transition: steps "": want `+forms+" (0 steps)" {
		t.Errorf("no steps: %v", err)
	}
	s := transition.Slow
	if err := s.UnmarshalText([]byte("fast")); err == nil || s != transition.Slow {
		t.Errorf("the receiver became %v, %v", s, err)
	}
	if err := s.UnmarshalText(nil); err != nil || !s.IsZero() {
		t.Errorf("an empty text: %v, %v", s, err)
	}
}

// Where each schedule is published; none is said to be printed that isn't.
func TestSourceOfSteps(t *testing.T) {
	for steps, want := range map[transition.Steps]string{
		transition.FourStages: "University of Missouri Veterinary Health Center, nutrition FAQ, 25 % on days 1 and 2, 50, 75, all from day 7",
		transition.Immediate:  "ours, not published",
		{}:                    "ours, not published",
	} {
		if got := steps.Source().String(); got != want {
			t.Errorf("%s: %s", steps, got)
		}
	}
	for _, s := range []transition.Steps{transition.FourDays, transition.TenSteps, transition.Slow} {
		if s.Source().Where == "" {
			t.Errorf("%s: %s", s, s.Source())
		}
	}
}
