package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"
	"testing/iotest"
)

// demoRows returns the rows of a CSV output by nursling and date.
func demoRows(t *testing.T, text string) map[string]map[string]string {
	t.Helper()
	records, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	rows := make(map[string]map[string]string)
	for _, rec := range records[1:] {
		row := make(map[string]string)
		for i, name := range records[0] {
			row[name] = rec[i]
		}
		rows[row["nursling"]+" "+row["date"]] = row
	}
	return rows
}

// The litter by hand: kcal = g × 22.5 / 100 (Small Animal Clinical Nutrition,
// 5th ed., Table 23-4, the middle of 20 to 25 kcal), mL = kcal / 1.02, six feeds,
// the stomach 4 mL for each 100 g.
func TestDemoByHand(t *testing.T) {
	stdout, _, _ := runs(t, "", "-format", "csv")
	rows := demoRows(t, stdout)
	for _, tt := range []struct{ key, gain, mean, kcal, milk, feed, stomach string }{
		{"Pim 2026-11-02", "", "", "47.7 kcal", "46.8 mL", "7.8 mL", "8.5 mL"}, // 212 g
		{"Pim 2026-11-08", "13 g", "12 g", "63.9 kcal", "62.6 mL", "10.4 mL", "11.4 mL"},
		{"Dab 2026-11-08", "11 g", "11.2 g", "59.6 kcal", "58.5 mL", "9.7 mL", "10.6 mL"},
		{"Fig 2026-11-08", "13 g", "12.7 g", "71.1 kcal", "69.7 mL", "11.6 mL", "12.6 mL"},
		{"Moth 2026-11-08", "6 g", "3.8 g", "44.8 kcal", "43.9 mL", "7.3 mL", "8.0 mL"},
	} {
		r := rows[tt.key]
		got := [...]string{r["gain"], r["mean"], r["kcal"], r["milk"], r["feed"], r["stomach"]}
		want := [...]string{tt.gain, tt.mean, tt.kcal, tt.milk, tt.feed, tt.stomach}
		if got != want || r["feeds"] != "6" {
			t.Errorf("%s: %q, want %q in 6 feeds", tt.key, got, want)
		}
	}
}

// Moth gains 8, 5, 2, -1, 3 and 6 g: under 7 g from the second day on. None of the
// others ever does.
func TestMothAlarmsFromTheSecondDayOnAndLosesOnTheFourth(t *testing.T) {
	stdout, _, _ := runs(t, "", "-format", "csv")
	for key, row := range demoRows(t, stdout) {
		want := strings.HasPrefix(key, "Moth") && row["date"] >= "2026-11-04"
		if got := row["caution"] != ""; got != want {
			t.Errorf("%s: caution %q, want one: %v", key, row["caution"], want)
		}
		if key == "Moth 2026-11-06" && !strings.HasPrefix(row["caution"], "lost 1 g a day (191 g to 190 g in 1 day)") {
			t.Errorf("%s: caution %q", key, row["caution"])
		}
	}
}

func TestAlarmStandsAboveTheAmounts(t *testing.T) {
	stdout, _, _ := runs(t, "")
	alarm, amounts := strings.Index(stdout, "VETERINARIAN TODAY: Moth"), strings.Index(stdout, "--- Feed ")
	if alarm < 0 || amounts < 0 || alarm > amounts {
		t.Errorf("the alarm at %d, the amounts at %d", alarm, amounts)
	}
}

// 284 + 265 + 316 + 199 = 1064 g take 239.4 kcal, 234.7 mL, 244.1 mL with 4 %
// more: 48.8 g of powder, rounded up, and 49 / 30 × 125 = 204.2 mL of water.
func TestMilkOfTheLitter(t *testing.T) {
	stdout, _, _ := runs(t, "")
	const want = "[ 49 g of powder + 204 mL of water = 245 mL ]  234.7 mL for all 4, 244.1 mL with 4 % waste."
	if !strings.Contains(stdout, want) {
		t.Errorf("want %s", want)
	}
	// 30 g to the gram are 30 g, not 31.
	stdout, _, _ = runs(t, "nursling,date,weight\nPim,2026-11-05,680 g\n", own("-waste", "0 %", "-")...)
	if want := "[ 30 g of powder + 125 mL of water = 150 mL ]  150.0 mL for one"; !strings.Contains(stdout, want) {
		t.Errorf("want %s in\n%s", want, stdout)
	}
}

// oneLine undoes the breaking of lines.
func oneLine(page string) string { return strings.Join(strings.Fields(page), " ") }

// litterOf runs the program on rows of the plain columns.
func litterOf(t *testing.T, rows string, args ...string) (stdout, stderr string, status int) {
	t.Helper()
	return runs(t, "nursling,date,weight\n"+rows, own(append(args, "-")...)...)
}

func TestAmountsRestOnAWeightOfYesterdayAtMost(t *testing.T) {
	const rows = "Pim,2026-11-02,212 g\nDab,2026-11-03,209 g\nFig,2026-11-04,265 g\n"
	stdout, _, status := litterOf(t, rows)
	for _, want := range []string{
		"! Pim: not weighed since 2026-11-02: weigh it before the next feed",
		"! Dab: not weighed since 2026-11-03: weigh it before the next feed",
		"   Pim        [ NO AMOUNT ]  weigh it first",
		"   Dab          209 g        -        -       6    [ 7.7 mL ]", // 209 × 0.225 / 1.02 / 6
		"mL for all 2, ",
	} {
		if !strings.Contains(stdout, want) {
			t.Errorf("want %s", want)
		}
	}
	if strings.Contains(stdout, "! Fig: ") || status != exitOK {
		t.Errorf("exit status %d\n%s", status, stdout)
	}
	stdout, _, _ = litterOf(t, rows, "-today", "2026-11-06")
	if strings.Count(stdout, "NO AMOUNT") != 3 || !strings.Contains(stdout, "None: there is no amount.") {
		t.Errorf("amounts from weights of two days ago:\n%s", stdout)
	}
}

// first returns what the page says before all else.
func first(page string) string {
	_, rest, _ := strings.Cut(page, "--- First ")
	head, _, _ := strings.Cut(rest, "--- Before every feed ")
	return oneLine(strings.TrimLeft(head, "-"))
}

// Of one weighing nobody knows a gain: it isn't said to be above an alarm.
func TestPageSaysWhatIsKnownOfEachNursling(t *testing.T) {
	for _, tt := range []struct{ name, rows, want string }{
		{"weighed once", "Pim,2026-11-05,212 g\n", "- gain not known yet, weighed once: Pim"},
		{"one of two", "Pim,2026-11-05,212 g\nDab,2026-11-04,198 g\nDab,2026-11-05,209 g\n", "- gain not known yet, weighed once: Pim"},
		{"both", "Dab,2026-11-04,198 g\nDab,2026-11-05,209 g\n", "Every nursling was weighed today and none is under its alarm."},
		// Weighed on the day of the page, and a row out of order after it.
		{"unordered", "Pim,2026-11-03,212 g\nPim,2026-11-05,236 g\nPim,2026-11-04,224 g\n", "- Pim: weighed today; its last row can't be used: see its rows below"},
		{
			"a row of the day", "Pim,2026-11-03,212 g\nPim,2026-11-04,224 g\nPim,2026-11-05,236\nDab,2026-11-04,198 g\nDab,2026-11-05,209 g\n",
			"! Pim: its last row can't be used, the newest weight is of 2026-11-04: weigh it before the next feed",
		},
		// 209, 202 and 209 g: the newest gain is 7 g, that of three days 2.3 g a day.
		{
			"up and down", "Dab,2026-11-02,202 g\nDab,2026-11-03,209 g\nDab,2026-11-04,202 g\nDab,2026-11-05,209 g\n",
			"!! VETERINARIAN TODAY: Dab gained only 2.3 g a day (202 g to 209 g in 3 days): it must gain 7 g or more; see that it is warm, and call the veterinarian today",
		},
		// 8 g a day: above the alarm of 7 and below the 10 that are expected.
		{
			"little", "Dab,2026-11-02,202 g\nDab,2026-11-03,210 g\nDab,2026-11-04,218 g\nDab,2026-11-05,226 g\n",
			"- Dab gained only 8 g a day (202 g to 226 g in 3 days): less than the 10 g expected; see that it is warm and that it gets its milk",
		},
	} {
		stdout, _, _ := litterOf(t, tt.rows)
		if got := first(stdout); got != tt.want {
			t.Errorf("%s: %s\nwant %s", tt.name, got, tt.want)
		}
	}
}

func TestMistypedYearMakesNoPageOfTheFuture(t *testing.T) {
	stdout, stderr, status := litterOf(t, "Pim,2026-11-02,212 g\nDab,2062-11-02,198 g\n")
	if !strings.HasPrefix(stdout, "LITTER PAGE FOR 2026-11-02") || status != exitBadRows {
		t.Errorf("exit status %d\n%s", status, stdout)
	}
	const want = `litterlog: standard input: line 3: date "2062-11-02": want a day up to 2026-11-02 (in the future)` + "\n"
	if stderr != want {
		t.Errorf("stderr %s, want %s", stderr, want)
	}
}

func TestUnlikelyWeightIsTakenOnceConfirmed(t *testing.T) {
	const header, rows = "nursling,date,weight,confirmed\n", "Pim,2026-11-02,150 g,\nPim,2026-11-06,268 g,"
	if _, stderr, status := runs(t, header+rows+"\n", own("-")...); status != exitBadRows ||
		!strings.Contains(stderr, "want a weight like the 150 g of 2026-11-02") {
		t.Errorf("exit status %d, stderr %s", status, stderr)
	}
	stdout, stderr, status := runs(t, header+rows+"yes\n", own("-")...)
	if status != exitOK || stderr != "" || !strings.Contains(stdout, "+29.5 in each of 4 d") { // (268 - 150) / 4
		t.Errorf("exit status %d, stderr %s\n%s", status, stderr, stdout)
	}
}

// Nearly four times a stomach: a thin milk takes more feeds than were asked for.
func TestThinMilkTakesMoreFeeds(t *testing.T) {
	stdout, _, _ := runs(t, "nursling,date,weight\nPim,2026-11-02,200 g\n", "-species", "cat", "-born", "2026-10-20",
		"-powder-energy", "5100 kcal/kg", "-powder", "15 g", "-water", "140 mL", "-made", "150 mL", "-feeds", "4", "-")
	// 45 kcal / 0.51 = 88.2 mL; the stomach holds 8 mL: 12 feeds of 7.4 mL.
	if want := "      12    [ 7.4 mL ]     8.0 mL     88.2 mL"; !strings.Contains(stdout, want) {
		t.Errorf("want %s in\n%s", want, stdout)
	}
}

func TestPuppiesAreHeldAgainstTheirOwnAlarm(t *testing.T) {
	stdout, _, status := runs(t, "nursling,date,weight\nBirch,2026-11-02,900 g\nBirch,2026-11-03,930 g\n",
		"-species", "dog", "-born", "2026-10-20", "-powder-energy", "5100 kcal/kg", "-powder", "30 g", "-water", "125 mL", "-made", "150 mL", "-")
	// 3.5 % of 900 g are 31.5 g.
	if want := "Birch gained only 30 g a day (900 g to 930 g in 1 day): it must gain 31.5 g or more"; status != exitOK || !strings.Contains(oneLine(stdout), want) {
		t.Errorf("exit status %d, want %s in\n%s", status, want, stdout)
	}
}

// The page has the last seven weighings, and every row that can't be used.
func TestLongLogStaysOnThePage(t *testing.T) {
	var rows strings.Builder
	fmt.Fprintf(&rows, "Pim,2026-10-27,120\n")
	for i := range 10 {
		fmt.Fprintf(&rows, "Pim,2026-10-%d,%d g\n", 21+i, 110+12*i)
	}
	stdout, _, _ := litterOf(t, rows.String())
	const want = `Pim 3 earlier; [NOT USED, line 2: weight "120": no unit, want kg, g, mg, lb or oz]; 24 Oct 146 (+12); 25 Oct 158`
	if !strings.Contains(oneLine(stdout), want) {
		t.Errorf("want %s in\n%s", want, stdout)
	}
}

func TestUsage(t *testing.T) {
	for _, tt := range []struct {
		args []string
		want string
	}{
		{[]string{"-"}, "want -species, -born, -powder-energy, -powder, -water, -made too"},
		{own("a.csv", "b.csv"), `["a.csv" "b.csv"]: want one file`},
		{own("no-such-file.csv"), "no-such-file.csv"},
		{[]string{"-format", "html"}, `-format "html": want text or csv`},
		{[]string{"-format", "csv", "-working"}, "-working goes with -format text"},
		{[]string{"-species", "ferret"}, `-species "ferret": want dog or cat`},
		{[]string{"-waste", "51 %"}, `-waste "51 %": want 0 % to 50 %`},
		{[]string{"-feeds", "25"}, `feeds "25": want 1 to 24 a day`},
		{[]string{"-born", ""}, "-born: want the day of birth"},
		{[]string{"-born", "2026-11-09", "-today", "2026-11-08"}, "in the future"},
		{[]string{"-made", "15 mL"}, "want at least the 125 mL of water"},
		{[]string{"-powder", "90 g"}, "want 179.2 mL to 226.3 mL for 215 g"},
		{[]string{"-powder", "130 g", "-made", "220 mL"}, "up to 3 kcal/mL, as made up"}, // 663 kcal
		{[]string{"-powder-energy", "5100"}, "no unit"},
	} {
		stdout, stderr, status := runs(t, "", tt.args...)
		if status != exitFailed || stdout != "" || !strings.Contains(stderr, tt.want) {
			t.Errorf("%q: exit status %d, stdout %q, stderr %q, want %d and %q", tt.args, status, stdout, stderr, exitFailed, tt.want)
		}
	}
	// All faults at once.
	_, stderr, _ := runs(t, "", "-format", "html", "-species", "ferret", "-feeds", "0")
	for _, want := range []string{"-format", "-species", "feeds"} {
		if !strings.Contains(stderr, want) {
			t.Errorf("want %s in %s", want, stderr)
		}
	}
	if _, stderr, status := runs(t, "", "-h"); status != exitOK || !strings.Contains(stderr, "nursling,date,weight") {
		t.Errorf("-h: exit status %d, stderr %q", status, stderr)
	}
}

func TestFilesWithoutRowsOrHeader(t *testing.T) {
	stdout, stderr, status := litterOf(t, "")
	if want := "litterlog: standard input: no weighings in it, only a header\n"; status != exitFailed || stderr != want || stdout != "" {
		t.Errorf("no rows: exit status %d, stderr %q, stdout %q", status, stderr, stdout)
	}
	for _, text := range []string{"", "nursling,date\n", "nursling;date;weight\n", "nursling,date,weight,mood\n"} {
		if stdout, stderr, status := runs(t, text, own("-")...); status != exitFailed || stdout != "" || stderr == "" {
			t.Errorf("%q: exit status %d, stdout %q, stderr %q", text, status, stdout, stderr)
		}
	}
}

func TestBrokenReadingIsSaidOnThePage(t *testing.T) {
	for _, format := range []string{"text", "csv"} {
		in := io.MultiReader(strings.NewReader("nursling,date,weight\nPim,2026-11-02,212 g\n"), iotest.ErrReader(errors.New("unplugged")))
		var out, errs strings.Builder
		status := run(own("-format", format, "-"), in, &out, &errs)
		const want = "the reading broke off at line 3: unplugged"
		if status != exitFailed || !strings.Contains(out.String(), want) || !strings.Contains(errs.String(), want) {
			t.Errorf("%s: exit status %d, stderr %q\n%s", format, status, errs.String(), out.String())
		}
	}
}
