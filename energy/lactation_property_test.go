package energy_test

import (
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

// adultWeights are the weights that an adult may have.
var adultWeights = map[energy.Species][2]float64{
	energy.Dog: {800, 120e3}, energy.Cat: {1500, 20e3}, energy.Ferret: {400, 4e3},
}

// anyDam is a pregnant or nursing animal with every field in or just out of
// its range.
func anyDam() gopter.Gen {
	weight := gen.Weighted([]gen.WeightedGen{
		{Weight: 1, Gen: anyWeight()},
		{Weight: 3, Gen: proptest.Quantity[units.Mass](1500, 4000)}, // of all three species
	})
	return gopter.CombineGens(
		gen.Weighted([]gen.WeightedGen{{Weight: 1, Gen: gen.IntRange(0, 5)}, {Weight: 3, Gen: gen.IntRange(1, 3)}}), weight, anyWeight(), gen.IntRange(-1, 12), gen.IntRange(-1, 26),
		gen.OneConstOf(energy.Method(0), energy.Method(0), energy.NRC2006, energy.FactorOnRER, energy.PerKilogram, energy.FEDIAF), gen.Bool(), gen.IntRange(0, 5),
	).Map(func(v []any) energy.Stage {
		a := animal(energy.Species(v[0].(int)), v[1].(units.Mass))
		week, method := v[3].(int), v[5].(energy.Method)
		if v[6].(bool) {
			return energy.Lactation{Animal: a, Young: v[4].(int), Week: week, Method: method}
		}
		before := v[2].(units.Mass)
		if n := v[7].(int); n > 0 {
			before = a.Weight * units.Mass(n-1) / 3
		}
		return energy.Gestation{Animal: a, Week: week, WeightBeforeMating: before, Method: method}
	})
}

func TestAnyDamIsRefusedOrGetsAFinitePositiveEnergy(t *testing.T) {
	accepted := map[string]int{}
	proptest.Check(t, "zero on error, else 0 < low <= daily <= high < infinity", prop.ForAll(func(s energy.Stage) string {
		e, err := s.Estimate()
		if err != nil {
			if e != (energy.Estimate{}) {
				return fmt.Sprintf("%+v beside %v", e, err)
			}
			return ""
		}
		accepted[fmt.Sprintf("%T", s)]++
		if !(0 < e.Low && e.Low <= e.Daily && e.Daily <= e.High) || math.IsInf(float64(e.High), 0) {
			return fmt.Sprintf("%v from %v to %v", e.Daily, e.Low, e.High)
		}
		if e.Method == 0 || e.Reweigh != 7*energy.Day || e.Stage != s || e.Explain() == "" {
			return fmt.Sprintf("method %v, reweigh %v, stage %+v", e.Method, e.Reweigh, e.Stage)
		}
		return ""
	}, anyDam()))
	if len(accepted) != 2 {
		t.Errorf("accepted %v: the property says nothing of the others", accepted)
	}
}

func TestEnergyOfADamGrowsWithTheWeight(t *testing.T) {
	for species, b := range adultWeights {
		for _, m := range []energy.Method{0, energy.FactorOnRER} {
			if species == energy.Ferret && m != 0 {
				continue
			}
			proptest.Check(t, fmt.Sprint(species, m), prop.ForAll(func(w units.Mass, week, young int) string {
				heavier := w * 1.001
				for _, s := range [][2]energy.Stage{
					{pregnant(species, w, week, m), pregnant(species, heavier, week, m)},
					{nursing(species, w, young, week, m), nursing(species, heavier, young, week, m)},
				} {
					if a, b := estimate(t, s[0]).Daily, estimate(t, s[1]).Daily; !(a < b) {
						return fmt.Sprintf("%T: %v: %v, %v: %v", s[0], w, a, heavier, b)
					}
				}
				return ""
			}, proptest.Quantity[units.Mass](b[0], b[1]*0.99), gen.IntRange(0, 7), gen.IntRange(1, 24)))
		}
	}
}

func TestMoreYoungNeverNeedLess(t *testing.T) {
	for _, species := range []energy.Species{energy.Dog, energy.Cat, energy.Ferret} {
		b := adultWeights[species]
		proptest.Check(t, species.String(), prop.ForAll(func(w units.Mass, young, week int) string {
			for _, m := range []energy.Method{0, energy.FactorOnRER} {
				if species == energy.Ferret {
					m = 0
				}
				fewer, more := nursing(species, w, young, week, m), nursing(species, w, young+1, week, m)
				if a, b := estimate(t, fewer).Daily, estimate(t, more).Daily; a > b {
					return fmt.Sprintf("%v: %d young %v, one more %v", m, young, a, b)
				}
			}
			return ""
		}, proptest.Quantity[units.Mass](b[0], b[1]), gen.IntRange(1, 23), gen.IntRange(0, 10)))
	}
}

func TestLaterGestationNeverNeedsLess(t *testing.T) {
	for _, species := range []energy.Species{energy.Dog, energy.Cat} {
		b := adultWeights[species]
		for _, m := range []energy.Method{energy.NRC2006, energy.FactorOnRER} {
			proptest.Check(t, fmt.Sprint(species, m), prop.ForAll(func(w units.Mass, week int) string {
				now, next := estimate(t, pregnant(species, w, week, m)), estimate(t, pregnant(species, w, week+1, m))
				unknown := estimate(t, pregnant(species, w, 0, m))
				if now.Daily > next.Daily || next.Daily > unknown.Daily {
					return fmt.Sprintf("week %d: %v, next %v, unknown %v", week, now.Daily, next.Daily, unknown.Daily)
				}
				return ""
			}, proptest.Quantity[units.Mass](b[0], b[1]), gen.IntRange(1, 9)))
		}
	}
}

func TestPoundsAndKilogramsOfADamAgree(t *testing.T) {
	proptest.Check(t, "within a few units in the last place", prop.ForAll(func(lb float64, young, week int) string {
		for _, species := range []energy.Species{energy.Dog, energy.Cat} {
			a := estimate(t, nursing(species, units.Mass(lb)*units.Pound, young, week, 0)).Daily
			b := estimate(t, nursing(species, units.Mass(lb*0.45359237)*units.Kilogram, young, week, 0)).Daily
			if !(math.Abs(float64(a-b)) <= 8*ulp(float64(a))) {
				return fmt.Sprintf("%v of %v lb: %v and %v", species, lb, a, b)
			}
		}
		return ""
	}, proptest.Quantity[float64](4, 40), gen.IntRange(1, 24), gen.IntRange(0, 10)))
}
