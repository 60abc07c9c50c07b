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

// Weights and distances at which no day reaches 15 times the resting energy.
func workWeight() gopter.Gen   { return proptest.Quantity[units.Mass](800, 119e3) }
func workDistance() gopter.Gen { return proptest.Quantity[units.Length](100, 150e3) }

func TestWorkGrowsWithTheDistanceAndTheWeight(t *testing.T) {
	for name, stage := range map[string]func(units.Mass, units.Length) energy.Work{
		"per_distance": ran,
		"two_term":     func(w units.Mass, d units.Length) energy.Work { return timed(w, d, 180) },
	} {
		proptest.Check(t, name+": one thousandth farther needs more", prop.ForAll(func(w units.Mass, d units.Length) bool {
			return estimate(t, stage(w, d)).Daily < estimate(t, stage(w, d*1.001)).Daily
		}, workWeight(), workDistance()))
		proptest.Check(t, name+": one thousandth heavier needs more", prop.ForAll(func(w units.Mass, d units.Length) bool {
			return estimate(t, stage(w, d)).Daily < estimate(t, stage(w*1.001, d)).Daily
		}, workWeight(), workDistance()))
	}
}

func TestSlowerRunOfTheSameDistanceCostsMoreByTwoTerm(t *testing.T) {
	proptest.Check(t, "one minute more needs more", prop.ForAll(func(w units.Mass, d units.Length, minutes int) bool {
		return estimate(t, timed(w, d, minutes)).Daily < estimate(t, timed(w, d, minutes+1)).Daily
	}, workWeight(), workDistance(), gen.IntRange(180, 1439)))
}

// Twice as far in twice the time costs twice as much by either equation; in the
// same time it doesn't by TwoTerm, which is why its table can't be multiplied.
func TestTwiceAsFarInTwiceTheTimeCostsTwiceAsMuch(t *testing.T) {
	twice := func(one, two float64) bool { return math.Abs(two-2*one) <= 1e-9*two }
	proptest.Check(t, "twice", prop.ForAll(func(w units.Mass, d units.Length, minutes int) string {
		d /= 2
		if one, two := added(t, ran(w, d+100)), added(t, ran(w, 2*(d+100))); !twice(one, two) {
			return fmt.Sprintf("per_distance: %v and %v", one, two)
		}
		one, two := added(t, timed(w, d+100, minutes)), added(t, timed(w, 2*(d+100), 2*minutes))
		if !twice(one, two) {
			return fmt.Sprintf("two_term: %v and %v", one, two)
		}
		if same := added(t, timed(w, 2*(d+100), minutes)); twice(one, same) {
			return fmt.Sprintf("two_term in the same time: %v and %v", one, same)
		}
		return ""
	}, workWeight(), workDistance(), gen.IntRange(180, 720)))
}

func TestSixteenTimesTheDogNeedsEightTimesTheEnergyAtOneExercise(t *testing.T) {
	proptest.Check(t, "exactly", prop.ForAll(func(w units.Mass, x uint8) bool {
		s, big := worker(w), worker(16*w)
		s.Exercise, big.Exercise = energy.Exercise(x), energy.Exercise(x)
		return estimate(t, big).Daily == 8*estimate(t, s).Daily
	}, proptest.Quantity[units.Mass](800, 7500), gen.UInt8Range(1, 3)))
}

func TestMilesAndKilometresOfOneDistanceAgree(t *testing.T) {
	proptest.Check(t, "within a few units in the last place", prop.ForAll(func(mi float64) bool {
		a, b := estimate(t, ran(16*kg, units.Length(mi)*units.Mile)).Daily, estimate(t, ran(16*kg, units.Length(mi*1.609344)*km)).Daily
		return math.Abs(float64(a-b)) <= 8*ulp(float64(a))
	}, proptest.Quantity[float64](0.1, 90)))
}

// anyWork is a Work with every field in or out of its range, and as often one of
// the three days that make sense.
func anyWork() gopter.Gen {
	mostly := func(good gopter.Gen) gopter.Gen {
		return gen.Weighted([]gen.WeightedGen{{Weight: 4, Gen: good}, {Weight: 1, Gen: anyWeight()}})
	}
	return gopter.CombineGens(
		mostly(proptest.Quantity[units.Mass](700, 130e3)), mostly(proptest.Quantity[units.Mass](50, 900e3)),
		gen.OneConstOf(energy.Dog, energy.Dog, energy.Dog, energy.Cat, energy.Species(0)), gen.IntRange(0, 6),
		gen.IntRange(0, 4), gen.IntRange(-1, 1500), gen.IntRange(0, 21), gen.IntRange(0, 5),
	).Map(func(v []any) energy.Work {
		s := energy.Work{
			Animal: animal(v[2].(energy.Species), v[0].(units.Mass)), Status: energy.Status(v[3].(int)),
			Exercise: energy.Exercise(v[4].(int)), Distance: units.Length(v[1].(units.Mass)), Minutes: v[5].(int),
		}
		switch v[7].(int) {
		case 0:
			s.Distance, s.Minutes = 0, 0
		case 1:
			s.Exercise, s.Minutes = 0, 0
		case 2:
			s.Exercise, s.Method = 0, energy.TwoTerm
		default:
			s.Method = energy.Method(v[6].(int))
		}
		return s
	})
}

func TestAnyWorkIsRefusedOrGivesAFinitePositiveEnergy(t *testing.T) {
	accepted := map[energy.Method]int{}
	proptest.Check(t, "zero on error, else 0 < low <= daily <= high < infinity, at most 15 times the resting energy", prop.ForAll(func(s energy.Work) string {
		e, err := s.Estimate()
		if err != nil {
			if e != (energy.Estimate{}) {
				return fmt.Sprintf("%+v beside %v", e, err)
			}
			return ""
		}
		accepted[e.Method]++
		if !(0 < e.Low && e.Low <= e.Daily && e.Daily <= e.High) || math.IsInf(float64(e.High), 0) {
			return fmt.Sprintf("%v from %v to %v", e.Daily, e.Low, e.High)
		}
		if !(e.Daily <= 15*resting(e.Weight)) || e.Reweigh != 14 || e.Stage != s || e.Explain() == "" {
			return fmt.Sprintf("%v, reweigh %v, stage %+v", e.Daily, e.Reweigh, e.Stage)
		}
		return ""
	}, anyWork()))
	for _, m := range []energy.Method{energy.FactorOnRER, energy.PerDistance, energy.TwoTerm} {
		if accepted[m] == 0 {
			t.Errorf("every %v was refused: the property says nothing of it", m)
		}
	}
}
