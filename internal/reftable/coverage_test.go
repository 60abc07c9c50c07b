package reftable

import (
	"errors"
	"testing"
)

// TestEveryTableIsHeldAgainstTheLibrary fails for a table of which nothing is
// evaluated: its rows would be a list of excuses.
func TestEveryTableIsHeldAgainstTheLibrary(t *testing.T) {
	for _, name := range Tables() {
		rows, err := Load(name)
		if err != nil {
			t.Fatal(err)
		}
		evaluated := 0
		for _, r := range rows {
			if r.Verdict != Out {
				evaluated++
			}
		}
		if evaluated == 0 {
			t.Errorf("%s: none of %d rows is evaluated", name, len(rows))
		}
	}
}

// TestEveryEvaluatorIsReached fails for an evaluator that no row comes to, be it
// that the rows are gone or that one before it takes them.
func TestEveryEvaluatorIsReached(t *testing.T) {
	reached := make([]bool, len(evaluators))
	for _, name := range Tables() {
		rows, err := Load(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rows {
			in, err := parseInputs(r.Inputs)
			if err != nil {
				t.Errorf("%s: %v", r.ID, err)
				continue
			}
			for i, evaluate := range evaluators {
				if _, err := evaluate(r, in); !errors.Is(err, ErrNoEvaluator) {
					reached[i] = true
					break
				}
			}
		}
	}
	for i, ok := range reached {
		if !ok {
			t.Errorf("evaluator %d of %d is never reached", i, len(evaluators))
		}
	}
}
