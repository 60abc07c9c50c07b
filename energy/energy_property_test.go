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

// resting returns the resting energy of a dog, or NaN where it is refused.
func resting(w units.Mass) units.Energy {
	e, err := energy.Resting{Animal: animal(energy.Dog, w)}.Estimate()
	if err != nil {
		return units.Energy(math.NaN())
	}
	return e.Daily
}

func TestRestingEnergyGrowsWithTheWeight(t *testing.T) {
	weight := proptest.Quantity[units.Mass](50, 120e3)
	proptest.Check(t, "the heavier never needs less", prop.ForAll(func(a, b units.Mass) string {
		if !(resting(min(a, b)) <= resting(max(a, b))) {
			return fmt.Sprintf("%v: %v, %v: %v", a, resting(a), b, resting(b))
		}
		return ""
	}, weight, weight))
	proptest.Check(t, "one thousandth more needs more", prop.ForAll(func(w units.Mass) bool {
		return resting(w) < resting(w*1.001)
	}, proptest.Quantity[units.Mass](50, 119e3)))
}

// 16^0.75 is 8, and both are powers of two, so that not a bit may differ.
func TestSixteenTimesTheWeightIsEightTimesTheEnergy(t *testing.T) {
	proptest.Check(t, "exactly", prop.ForAll(func(w units.Mass) string {
		if got, want := resting(16*w), 8*resting(w); got != want {
			return fmt.Sprintf("%v: %v, want %v", w, got, want)
		}
		return ""
	}, proptest.Quantity[units.Mass](50, 7500)))
}

// anyWeight is any float64 there is, NaN and the infinities among them, and as
// often one that an animal can have.
func anyWeight() gopter.Gen {
	bits := gen.UInt64().Map(func(b uint64) units.Mass { return units.Mass(math.Float64frombits(b)) })
	edges := gen.OneConstOf(
		units.Mass(math.NaN()), units.Mass(math.Inf(1)), units.Mass(math.Inf(-1)), units.Mass(0),
		units.Mass(math.Copysign(0, -1)), units.Mass(math.SmallestNonzeroFloat64), units.Mass(math.MaxFloat64),
	)
	return gen.Weighted([]gen.WeightedGen{
		{Weight: 2, Gen: bits},
		{Weight: 1, Gen: edges},
		{Weight: 3, Gen: proptest.Quantity[units.Mass](1, 300e3)},
	})
}

// anyStage is a stage with every field in or just out of its range.
func anyStage() gopter.Gen {
	return gopter.CombineGens(
		anyWeight(), anyWeight(), gen.IntRange(0, 5), gen.IntRange(0, 10), gen.IntRange(0, 6),
		gen.IntRange(0, 8), gen.IntRange(0, 6), gen.Weighted([]gen.WeightedGen{
			{Weight: 3, Gen: gen.Const(energy.Circumstances(0))},
			{Weight: 1, Gen: gen.UInt16().Map(func(c uint16) energy.Circumstances { return energy.Circumstances(c) })},
		}), gen.IntRange(0, 2),
	).Map(func(v []any) energy.Stage {
		a := energy.Animal{
			Weight: v[0].(units.Mass), Species: energy.Species(v[2].(int)),
			DaysUnfed: v[4].(int) - 1, Circumstances: v[7].(energy.Circumstances),
		}
		if n := v[3].(int); n > 2 {
			a.Condition = energy.BCS9(n)
		}
		if n := v[4].(int); n == 0 {
			a.Ideal = v[1].(units.Mass)
		} else {
			a.Ideal = a.Weight * units.Mass(n) / 4
		}
		method := energy.Method(v[5].(int))
		switch v[8].(int) {
		case 0:
			return energy.Resting{Animal: a, Method: method}
		case 1:
			return energy.Adult{Animal: a, Status: energy.Status(v[6].(int)), Method: method}
		}
		return energy.Prescribed{Animal: a, Daily: units.Energy(v[1].(units.Mass)), By: "Dr A. Example"}
	})
}

func TestAnyInputIsRefusedOrGivesAFinitePositiveEnergy(t *testing.T) {
	accepted := 0
	proptest.Check(t, "zero on error, else 0 < low <= daily <= high < infinity", prop.ForAll(func(s energy.Stage) string {
		e, err := s.Estimate()
		if err != nil {
			if e != (energy.Estimate{}) {
				return fmt.Sprintf("%+v beside %v", e, err)
			}
			return ""
		}
		accepted++
		if !(0 < e.Low && e.Low <= e.Daily && e.Daily <= e.High) || math.IsInf(float64(e.High), 0) {
			return fmt.Sprintf("%v from %v to %v", e.Daily, e.Low, e.High)
		}
		if e.Method == 0 || e.Reweigh <= 0 || e.Stage != s {
			return fmt.Sprintf("method %v, reweigh %v, stage %+v", e.Method, e.Reweigh, e.Stage)
		}
		return ""
	}, anyStage()))
	if accepted == 0 {
		t.Error("every input was refused: the property says nothing")
	}
}

func TestPoundsAndKilogramsOfOneWeightAgree(t *testing.T) {
	proptest.Check(t, "within a few units in the last place", prop.ForAll(func(lb float64) string {
		a, b := resting(units.Mass(lb)*units.Pound), resting(units.Mass(lb*0.45359237)*units.Kilogram)
		if !(math.Abs(float64(a-b)) <= 4*ulp(float64(a))) {
			return fmt.Sprintf("%v lb: %v and %v", lb, a, b)
		}
		return ""
	}, proptest.Quantity[float64](1, 250)))
}

func ulp(x float64) float64 { return math.Nextafter(x, math.Inf(1)) - x }

func TestEnergyOfAnAdultGrowsWithTheWeight(t *testing.T) {
	for _, m := range []energy.Method{energy.FactorOnRER, energy.NRC2006, energy.FEDIAF} {
		for _, condition := range []energy.Condition{energy.BCS9(5), energy.BCS9(8)} {
			proptest.Check(t, fmt.Sprint(m, condition), prop.ForAll(func(w units.Mass) bool {
				s := energy.Adult{Animal: animal(energy.Cat, w), Status: energy.Neutered, Method: m}
				s.Animal.Condition = condition
				heavier := s
				heavier.Animal.Weight *= 1.001
				return estimate(t, s).Daily < estimate(t, heavier).Daily
			}, proptest.Quantity[units.Mass](1500, 19.9e3)))
		}
	}
}
