package main

import (
	"fmt"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
)

// parsed reads a calendar back.
func parsed(t *testing.T, text string) []*ics.VEvent {
	t.Helper()
	cal, err := ics.ParseCalendar(strings.NewReader(text))
	if err != nil {
		t.Fatalf("%v in\n%s", err, text)
	}
	return cal.Events()
}

// property returns the value of one that stands exactly once.
func property(t *testing.T, e *ics.VEvent, name ics.ComponentProperty) string {
	t.Helper()
	if got := e.GetProperties(name); len(got) != 1 {
		t.Fatalf("%d of %s", len(got), name)
	}
	return e.GetProperty(name).Value
}

// The demo's week as its clinic worked it out by hand: 1068 kcal, shares of the
// energy, rounded to the gram.
func TestDemoReadBack(t *testing.T) {
	stdout, _, _ := program.Run(t, "")
	events := parsed(t, stdout)
	const house, slim = " g Tarnwick House Dog Dry", " g Ostlehouse Slim Dog Dry"
	grams := [][2]string{{"225", "90"}, {"225", "90"}, {"150", "179"}, {"150", "179"}, {"75", "269"}, {"75", "269"}, {"", "358"}}
	if len(events) != len(grams) {
		t.Fatalf("%d entries, want %d", len(events), len(grams))
	}
	seen := make(map[string]bool)
	for i, e := range events {
		day := time.Date(2026, time.November, 2+i, 0, 0, 0, 0, time.UTC)
		if got, err := e.GetAllDayStartAt(); err != nil || !got.Equal(day) {
			t.Errorf("entry %d begins on %v, %v, want %v", i+1, got, err, day)
		}
		if got, err := e.GetAllDayEndAt(); err != nil || !got.Equal(day.AddDate(0, 0, 1)) {
			t.Errorf("entry %d ends on %v, %v", i+1, got, err)
		}
		if got := property(t, e, ics.ComponentPropertyDtstamp); got != "20261102T000000Z" {
			t.Errorf("entry %d is stamped %s", i+1, got)
		}
		place := fmt.Sprintf("Oakum, day %d of 7: ", i+1)
		want := place + grams[i][0] + house + " + " + grams[i][1] + slim
		if grams[i][0] == "" {
			want = "Oakum, day 7 and from then on: " + grams[i][1] + slim
		}
		if got := property(t, e, ics.ComponentPropertySummary); got != want {
			t.Errorf("entry %d says %q, want %q", i+1, got, want)
		}
		text := property(t, e, ics.ComponentPropertyDescription)
		for _, want := range []string{"Meal 1: ", "Meal 2: ", "vomiting, blood or dullness: give the old food again and call", "Weigh on a scale"} {
			if !strings.Contains(text, want) {
				t.Errorf("entry %d has no %q in %q", i+1, want, text)
			}
		}
		if got := property(t, e, ics.ComponentPropertyTransp); got != "TRANSPARENT" {
			t.Errorf("entry %d is %s", i+1, got)
		}
		id := property(t, e, ics.ComponentPropertyUniqueId)
		if seen[id] {
			t.Errorf("identifier %s stands twice", id)
		}
		seen[id] = true
	}
	// 150 g and 179 g in two meals, the odd gram in the first.
	if text := property(t, events[2], ics.ComponentPropertyDescription); !strings.Contains(text,
		"Day 3 of 7: 50 % of the energy from the new food.\n") || !strings.Contains(text,
		"\nMeal 1: 75"+house+" + 90"+slim+"\nMeal 2: 75"+house+" + 89"+slim+"\n") {
		t.Errorf("day 3 is %q", text)
	}
}

// The form of the file, read without the library that wrote it: RFC 5545, 3.1
// (lines of at most 75 octets that end in CR LF), 3.6 (what a calendar must have)
// and 3.6.1 (what an event must have).
func TestForm(t *testing.T) {
	for _, args := range [][]string{nil, {"-times", "07:00,18:30"}, {"-start", "2026-11-02", "testdata/names.json"}} {
		text, stderr, status := program.Run(t, "", args...)
		if status != 0 {
			t.Fatalf("%v: %s", args, stderr)
		}
		if strings.Count(text, "\n") != strings.Count(text, "\r\n") || strings.Count(text, "\r") != strings.Count(text, "\r\n") {
			t.Errorf("%v: a line that doesn't end in CR LF", args)
		}
		for line := range strings.SplitSeq(text, "\r\n") {
			if len(line) > 75 {
				t.Errorf("%v: %d octets: %s", args, len(line), line)
			}
		}
		lines := strings.Split(strings.TrimSuffix(strings.ReplaceAll(text, "\r\n ", ""), "\r\n"), "\r\n")
		if lines[0] != "BEGIN:VCALENDAR" || lines[len(lines)-1] != "END:VCALENDAR" {
			t.Errorf("%v: from %s to %s", args, lines[0], lines[len(lines)-1])
		}
		var open []string
		count := make(map[string]int)
		for _, line := range lines {
			name, value, ok := strings.Cut(line, ":")
			if !ok {
				t.Errorf("%v: no property: %s", args, line)
			}
			name, _, _ = strings.Cut(name, ";")
			switch name {
			case "BEGIN":
				open = append(open, value)
			case "END":
				if len(open) == 0 || open[len(open)-1] != value {
					t.Fatalf("%v: END:%s in %v", args, value, open)
				}
				open = open[:len(open)-1]
			default:
				name = open[len(open)-1] + " " + name
			}
			count[name]++
		}
		events := count["VEVENT UID"]
		if events == 0 || count["VEVENT DTSTAMP"] != events || count["VEVENT DTSTART"] != events ||
			count["VCALENDAR VERSION"] != 1 || count["VCALENDAR PRODID"] != 1 {
			t.Errorf("%v: %v", args, count)
		}
	}
}

// Names with what iCalendar takes for its own, and letters of several octets where
// lines are folded, come back as they were.
func TestNamesComeBack(t *testing.T) {
	text, stderr, status := program.Run(t, "", "-start", "2026-11-02", "testdata/names.json")
	if status != 0 {
		t.Fatal(stderr)
	}
	events := parsed(t, text)
	const want = `Bö, "Jr"; C:\n: old, day 1 of 7: 225 g Trockenfutter für große Hunde mit Käse, Grünkern und Möhren (süß) + 90 g Neue; Kost\`
	if got := property(t, events[0], ics.ComponentPropertySummary); got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestOneEntryForEachMeal(t *testing.T) {
	stdout, _, _ := program.Run(t, "", "-times", "07:00,18:30", "-start", "2026-12-30")
	events := parsed(t, stdout)
	if len(events) != 14 {
		t.Fatalf("%d entries, want 14", len(events))
	}
	for _, tt := range []struct {
		entry      int
		start, end string // local, wherever the phone is
		summary    string
	}{
		{0, "20261230T070000", "20261230T071500", "Oakum, day 1 of 7, meal 1: 113 g Tarnwick House Dog Dry + 45 g Ostlehouse Slim Dog Dry"},
		{5, "20270101T183000", "20270101T184500", "Oakum, day 3 of 7, meal 2: 75 g Tarnwick House Dog Dry + 89 g Ostlehouse Slim Dog Dry"},
		{13, "20270105T183000", "20270105T184500", "Oakum, day 7 and from then on, meal 2: 179 g Ostlehouse Slim Dog Dry"},
	} {
		e := events[tt.entry]
		if start, end := property(t, e, ics.ComponentPropertyDtStart), property(t, e, ics.ComponentPropertyDtEnd); start != tt.start || end != tt.end {
			t.Errorf("entry %d is from %s to %s, want %s to %s", tt.entry, start, end, tt.start, tt.end)
		}
		if got := property(t, e, ics.ComponentPropertySummary); got != tt.summary {
			t.Errorf("entry %d says %q, want %q", tt.entry, got, tt.summary)
		}
		if n := len(e.Alarms()); n != 1 {
			t.Errorf("entry %d has %d reminders", tt.entry, n)
		}
	}
}

// A hold of three days makes the change three days longer; what was there keeps its
// identifiers, and counts up. A day that was missed has no entry.
func TestEventsOnTheWay(t *testing.T) {
	before, _, _ := program.Run(t, "")
	after, stderr, status := program.Run(t, edited(t, `"meals": 2`, `"events": [{"day": 4, "kind": "hold", "days": 3}], "meals": 2`),
		"-start", "2026-11-02", "-revision", "1", "-")
	if status != 0 {
		t.Fatal(stderr)
	}
	was, is := parsed(t, before), parsed(t, after)
	if len(is) != len(was)+3 {
		t.Fatalf("%d entries, want %d", len(is), len(was)+3)
	}
	for i := range was {
		if a, b := property(t, was[i], ics.ComponentPropertyUniqueId), property(t, is[i], ics.ComponentPropertyUniqueId); a != b {
			t.Errorf("entry %d was %s and is %s", i+1, a, b)
		}
	}
	if got := property(t, is[0], ics.ComponentPropertySequence); got != "1" {
		t.Errorf("revision %s", got)
	}
	if got := property(t, is[5], ics.ComponentPropertySummary); !strings.Contains(got, "day 6 of 10: 150 g") {
		t.Errorf("the sixth day is %q", got)
	}

	missed, stderr, status := program.Run(t, edited(t, `"meals": 2`, `"events": [{"day": 2, "kind": "missed"}], "meals": 2`), "-start", "2026-11-02", "-")
	if status != 0 {
		t.Fatal(stderr)
	}
	is = parsed(t, missed)
	if got := property(t, is[1], ics.ComponentPropertyDtStart); len(is) != 7 || got != "20261104" {
		t.Errorf("%d entries, the second on %s, want 7, and 20261104", len(is), got)
	}
}

// What a veterinarian must know comes before the grams.
func TestReferComesFirst(t *testing.T) {
	text, stderr, status := program.Run(t, edited(t, `"5/9"}`, `"5/9", "circumstances": "diabetic"}`, `"meals": 2`, `"by": "Dr Ysolde Crake", "meals": 2`),
		"-start", "2026-11-02", "-")
	if status != 0 {
		t.Fatal(stderr)
	}
	for i, e := range parsed(t, text) {
		summary, description := property(t, e, ics.ComponentPropertySummary), property(t, e, ics.ComponentPropertyDescription)
		if !strings.HasPrefix(summary, "!! Oakum") || !strings.HasPrefix(description, "!! VETERINARIAN: ") ||
			!strings.Contains(description, "by order of Dr Ysolde Crake only") {
			t.Errorf("entry %d: %q, %q", i+1, summary, description)
		}
	}
}

// Two biscuits of 28 kcal a day come out of the energy first and stay.
func TestTreatsAreOutsideMeals(t *testing.T) {
	const biscuits = `"amount": "rest"}, {"food": {"name": "House Biscuit", "label": {"serving": {"name": "biscuit", "energy": "28 kcal", "mass": "8 g"}}}, "amount": "2 biscuit", "treat": true}`
	text, stderr, status := program.Run(t, edited(t, `"amount": "rest"}`, biscuits), "-start", "2026-11-02", "-")
	if status != 0 {
		t.Fatal(stderr)
	}
	events := parsed(t, text)
	last := events[len(events)-1]
	// (1068 - 56) / 2.98 = 339.6
	if got := property(t, last, ics.ComponentPropertySummary); got != "Oakum, day 7 and from then on: 340 g Ostlehouse Slim Dog Dry" {
		t.Errorf("the last day is %q", got)
	}
	if got := property(t, last, ics.ComponentPropertyDescription); !strings.Contains(got, "\nOutside meals: House Biscuit, 2 × biscuit\n") {
		t.Errorf("the last day is %q", got)
	}
}
