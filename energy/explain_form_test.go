package energy_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// One form for every stage: what was given, the way to the figure with a source
// below it, the result, when to weigh again; refer-level cautions first, the
// others last.
func TestWorkingOfEveryStageHasOneForm(t *testing.T) {
	labels := map[string]bool{
		"": true, "caution": true, "given": true, "weight": true, "formula": true, "by hand": true, "source": true, "factor": true,
		"spread": true, "beside": true, "result": true, "uncertain": true, "next": true,
		// What single stages have besides.
		"adult": true, "week": true, "litter": true, "first": true, "work": true, "together": true,
		"ideal": true, "deficit": true, "goal": true, "ladder": true, "step": true, "weights": true, "gain": true,
	}
	for _, s := range stages() {
		text := estimate(t, s).Explain()
		if !utf8.ValidString(text) || !strings.HasSuffix(text, "\n") || strings.Contains(text, "NaN") {
			t.Errorf("%T: %q", s, text)
		}
		at := map[string]int{}
		for i, line := range strings.Split(strings.TrimSuffix(text, "\n"), "\n") {
			const column = 10
			label := strings.TrimRight(line[:min(column, len(line))], " ")
			if !labels[label] {
				t.Errorf("%T: a line of its own kind: %q", s, line)
			}
			if len(line) <= column {
				t.Errorf("%T: an empty line: %q", s, line)
			}
			if _, ok := at[label]; !ok {
				at[label] = i
			}
			if label == "caution" && at["result"] > 0 && strings.HasPrefix(line[column:], advice.Refer.String()) {
				t.Errorf("%T: a refer-level caution below the result: %q", s, line)
			}
		}
		for i, label := range []string{"given", "formula", "result", "next"} {
			if _, ok := at[label]; !ok {
				t.Errorf("%T: no line %q in\n%s", s, label, text)
			} else if i > 0 && at[label] < at["given"] {
				t.Errorf("%T: %q above what was given", s, label)
			}
		}
		if _, ok := s.(energy.Prescribed); !ok && at["source"] < at["given"] {
			t.Errorf("%T: no source below what was given:\n%s", s, text)
		}
	}
}
