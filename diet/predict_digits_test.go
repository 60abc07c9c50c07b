package diet_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
)

// The working names the kind of the analysis where it is stated, and nothing where
// it isn't.
func TestTheKindInTheWorking(t *testing.T) {
	const given = "given     protein 27 %, fat 14 %, fibre 3 %, moisture 10 %, ash 6 %, as fed"
	for kind, want := range map[diet.AnalysisKind]string{0: "\n", diet.Guaranteed: ", guaranteed\n", diet.Typical: ", typical\n"} {
		p, err := diet.Analysis{Kind: kind, Protein: 27, Fat: 14, Fibre: 3, Moisture: 10, Ash: 6}.Predict(diet.ModifiedAtwater, energy.Dog)
		if text := p.Explain(); err != nil || !strings.Contains(text, given+want) {
			t.Errorf("%v: %v\n%s", kind, err, text)
		}
	}
}
