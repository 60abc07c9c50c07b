package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/bowlgram/examples/gallery/internal/testkit"
)

var program = testkit.Program(run)

// edited is the record of the demo with texts replaced, in pairs.
func edited(t *testing.T, pairs ...string) string {
	t.Helper()
	text := string(demo)
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("the demo has no %s", pairs[i])
		}
		text = strings.ReplaceAll(text, pairs[i], pairs[i+1])
	}
	return text
}

func TestDemo(t *testing.T) {
	for _, tt := range []struct {
		golden string
		args   []string
	}{
		{"demo.golden", nil},
		{"demo-times.golden", []string{"-times", "07:00, 18:30"}},
	} {
		stdout, stderr, status := program.Run(t, "", tt.args...)
		if status != 0 || stderr != "" {
			t.Errorf("%v: exit status %d, stderr %q", tt.args, status, stderr)
		}
		testkit.Golden(t, tt.golden, strings.ReplaceAll(stdout, "\r\n", "\n"))
	}
}

func TestFileIsWhatStandardOutputIs(t *testing.T) {
	name := filepath.Join(t.TempDir(), "change.ics")
	stdout, stderr, status := program.Run(t, "", "-o", name)
	if status != 0 || stdout != "" || stderr != "" {
		t.Errorf("exit status %d, stdout %q, stderr %q", status, stdout, stderr)
	}
	got, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if want, _, _ := program.Run(t, ""); string(got) != want {
		t.Errorf("the file is\n%s\nwant\n%s", got, want)
	}
}

func TestRefusals(t *testing.T) {
	start := func(args ...string) []string { return append([]string{"-start", "2026-11-02"}, args...) }
	for _, tt := range []struct {
		args  []string
		stdin string
		want  string
	}{
		{[]string{"-nonsense"}, "", "flag provided but not defined"},
		{[]string{"-start", "2 Nov"}, "", "-start"},
		{[]string{"-times", "18:30,07:00"}, "", "in the order of the day"},
		{[]string{"-times", "07:00"}, "", "-times has 1 times for the 2 meals of the plan"},
		{[]string{"-times", "7 am"}, "", "-times"},
		{[]string{"-revision", "-1"}, "", "-revision -1: want 0 or more"},
		{[]string{"-"}, string(demo), "want -start"},
		{start("-", "-"), string(demo), "want one file"},
		{start("testdata/missing.json"), "", "testdata/missing.json"},
		{start("-"), "", "standard input"},
		{start("-"), "{}", `animal "": want a name`},
		{start("-"), `{"animal": "Oakum"}`, "need: want a stage"},
		{start("-"), edited(t, `"animal": "Oakum"`, `"animal": "Oakum", "start": 1`), "start"},
		{start("-"), edited(t, `"18 kg", "condition"`, `"18", "condition"`), "18"},
		{start("-"), edited(t, `"intake": "1068 kcal"`, `"intake": "0 kcal"`), "intake"},
		{start("-"), edited(t, `"2980 kcal/kg"`, `"29800 kcal/kg"`), "29800 kcal/kg"},
		// A diabetic dog's food is changed by a veterinarian's order only.
		{start("-"), edited(t, `"5/9"}`, `"5/9", "circumstances": "diabetic"}`), "veterinarian"},
		{[]string{"-o", "testdata/none/change.ics"}, "", "writing the calendar: "},
	} {
		program.Refuses(t, tt.stdin, tt.want, tt.args...)
	}
}

func TestWriteErrorIsReported(t *testing.T) {
	program.ReportsWriteError(t, "foodcalendar: writing the calendar: short write\n")
}
