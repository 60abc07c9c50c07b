package energy_test

import (
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

func TestAnyIntakeIsRefusedOrGivenAsItIs(t *testing.T) {
	accepted := 0
	proptest.Check(t, "zero on error, else daily is the intake", prop.ForAll(func(w, before units.Mass, part float64, n []int) string {
		s := energy.Observed{Animal: animal(energy.Species(n[0]), w), Intake: units.Energy(before), Over: energy.Age(n[1] - 1), Before: before}
		if n[2] > 0 {
			s.Before = w * units.Mass(part)
		}
		e, err := s.Estimate()
		if err != nil {
			if e != (energy.Estimate{}) {
				return fmt.Sprintf("%+v beside %v", e, err)
			}
			return ""
		}
		accepted++
		if e.Daily != s.Intake || e.Low != s.Intake || e.High != s.Intake || !(0 < e.Daily) || math.IsInf(float64(e.Daily), 0) {
			return fmt.Sprintf("%v from %v to %v, want %v", e.Daily, e.Low, e.High, s.Intake)
		}
		for _, c := range e.Cautions() {
			if c.Level == 0 || c.Text == "" || c.Source.Seen == 0 {
				return fmt.Sprintf("caution %+v", c)
			}
		}
		return ""
	}, anyWeight(), anyWeight(), proptest.Quantity[float64](0.4, 2.5), gopter.CombineGens(
		gen.IntRange(0, 5), gen.IntRange(0, 30), gen.IntRange(0, 3),
	).Map(func(v []any) []int { return []int{v[0].(int), v[1].(int), v[2].(int)} })))
	if accepted == 0 {
		t.Error("every input was refused: the property says nothing")
	}
}

func TestObservedGoesThroughJSON(t *testing.T) {
	s := observed(func(*energy.Observed) {})
	const want = `{"stage":"observed","animal":{"species":"dog","weight":"16 kg","condition":"5/9"},"intake":"900 kcal","over":"4 wk","before":"16 kg"}`
	b, err := json.Marshal(energy.Stored{Stage: s})
	if string(b) != want || err != nil {
		t.Errorf("got  %s, %v\nwant %s", b, err, want)
	}
	var back energy.Stored
	if err := json.Unmarshal([]byte(want), &back); back.Stage != s || err != nil {
		t.Errorf("read back %+v, %v", back.Stage, err)
	}
}
