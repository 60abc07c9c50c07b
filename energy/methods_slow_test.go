package energy_test

import (
	"errors"
	"math/big"
	"testing"

	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
)

// slowKey is a row of Methods.
type slowKey struct {
	stage   string
	species energy.Species
	method  energy.Method
}

// slowFigures are what a stage should give.
type slowFigures struct{ daily, low, high *big.Float }

// slowReference draws the inputs of a stage and computes its figures.
type slowReference func(d Draws) (energy.Stage, slowFigures)

// slowBound is the largest relative difference that is taken: 32 half-units in
// the last place. What was found when it was set is below 7 of them, for math.Pow
// on amd64; on others that is up to 5 whole units off by itself.
const slowBound = 32.0 / (1 << 53)

// slowDraws returns the number of inputs for each equation. A stage may refuse
// some of them, but not half: a pair of weights that don't go together, a day
// beyond the limit of work.
func slowDraws() int {
	if testing.Short() {
		return 40
	}
	return 150
}

func TestEveryMethodAgainstTheSlowReference(t *testing.T) {
	references := slowReferences()
	for _, q := range energy.Methods() {
		k := slowKey{q.Stage, q.Species, q.Method}
		if k.stage == "ideal_weight" {
			if slowIdeals[k.method] == nil {
				t.Errorf("%v has no slow reference", k)
			}
			continue // TestIdealWeightsAgainstTheSlowReference
		}
		reference, ok := references[k]
		if !ok {
			t.Errorf("%v has no slow reference", k)
			continue
		}
		delete(references, k)
		d, taken, worst := NewDraws(8, 3), 0, 0.0
		for range slowDraws() {
			s, want := reference(d)
			e, err := s.Estimate()
			if err != nil {
				continue
			}
			taken++
			for _, f := range []struct {
				name      string
				got, want *big.Float
			}{{"daily", Exact(e.Daily), want.daily}, {"low", Exact(e.Low), want.low}, {"high", Exact(e.High), want.high}} {
				off := Relative(f.got, f.want)
				worst = max(worst, off)
				if off > slowBound {
					t.Errorf("%v of %+v: %s is %v, want %s", k, s, f.name, f.got, f.want.Text('g', 20))
				}
			}
			if e.Method != k.method {
				t.Errorf("%+v is by %v", s, e.Method)
			}
		}
		if 2*taken < slowDraws() {
			_, err := first(reference).Estimate()
			t.Errorf("%v: %d of %d inputs taken; the first: %v", k, taken, slowDraws(), err)
		}
		t.Logf("%-11s %-6v %-20v %3d inputs, %.2g", k.stage, k.species, k.method, taken, worst)
	}
	for k := range references {
		t.Errorf("%v is no row of Methods, or two", k)
	}
}

func first(r slowReference) energy.Stage {
	s, _ := r(NewDraws(8, 3))
	return s
}

// An amount below 0.6 of the resting energy at ideal weight is refused, and no
// other: the slow figures say which.
func TestDeficitIsRefusedWhereTheSlowReferenceIsTooLow(t *testing.T) {
	const draws = 400
	reference := slowReferences()[slowKey{"weight_loss", energy.Dog, energy.Deficit}]
	d, refused := NewDraws(8, 3), 0
	for range draws {
		s, want := reference(d)
		_, err := s.Estimate()
		var gate *energy.VeterinarianError
		isRefused := errors.As(err, &gate) && gate.Field == "daily energy"
		least := Mul(Dec("0.6"), slowRER(slowTarget(s.(energy.WeightLoss).Animal)))
		if tooLow := want.daily.Cmp(least) < 0; tooLow != isRefused {
			t.Errorf("%+v: %v, want %s kcal and %s at least", s, err, want.daily.Text('g', 10), least.Text('g', 10))
		}
		if isRefused {
			refused++
		}
	}
	if refused < 5 || refused > draws/2 {
		t.Errorf("%d of %d refused", refused, draws)
	}
}
