package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
)

// The one allocation is the stage that the estimate holds.
func TestEstimateAllocatesAtMostOnce(t *testing.T) {
	list := stages()
	r, a, p := list[0].(energy.Resting), list[1].(energy.Adult), list[2].(energy.Prescribed)
	ferret := energy.Adult{Animal: animal(energy.Ferret, 1*kg)}
	for name, estimate := range map[string]func() (energy.Estimate, error){
		"resting": r.Estimate, "adult": a.Estimate, "ferret": ferret.Estimate, "prescribed": p.Estimate,
	} {
		var err error
		n := testing.AllocsPerRun(100, func() { sink, err = estimate() })
		if n > 1 || err != nil {
			t.Errorf("%s: %v allocations, %v", name, n, err)
		}
	}
}
