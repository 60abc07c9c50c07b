// Package proptest is the test support for properties: a seed that never
// changes, generators that reach the edges, and failures that say why.
package proptest

import (
	"math"
	"testing"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
)

// runs is the number of cases of a property; short runs take a fifth.
const runs = 500

// Check runs one property with a seed of its own, so that adding another
// never changes the cases of this one.
func Check(t *testing.T, claim string, p gopter.Prop) {
	t.Helper()
	t.Run(claim, func(t *testing.T) {
		parameters := gopter.DefaultTestParametersWithSeed(1)
		parameters.MinSuccessfulTests = runs
		if testing.Short() {
			parameters.MinSuccessfulTests = runs / 5
		}
		properties := gopter.NewProperties(parameters)
		properties.Property(claim, p)
		properties.TestingRun(t, gopter.NewFormatedReporter(false, 120, log{t}))
	})
}

type log struct{ t *testing.T }

func (l log) Write(b []byte) (int, error) {
	l.t.Log(string(b))
	return len(b), nil
}

// Quantity generates values from low to high: one in five an edge, the others
// log-uniform. Both must be above zero. Shrinking stays in range.
func Quantity[Q ~float64](low, high float64) gopter.Gen {
	raw := gen.Weighted([]gen.WeightedGen{
		{Weight: 1, Gen: gen.OneConstOf(low, high, math.Nextafter(low, high), math.Nextafter(high, low))},
		{Weight: 4, Gen: gopter.DeriveGen(math.Exp, math.Log, gen.Float64Range(math.Log(low), math.Log(high)))},
	}).SuchThat(func(x float64) bool { return low <= x && x <= high })
	return gopter.DeriveGen(func(x float64) Q { return Q(x) }, func(q Q) float64 { return float64(q) }, raw)
}
