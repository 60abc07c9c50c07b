package energy_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"

	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

func TestIdealWeightLiesInItsRangeAndNotAboveTheCurrent(t *testing.T) {
	proptest.Check(t, "low <= weight <= high <= current, lower with every point", prop.ForAll(func(w units.Mass, fat bool) string {
		method := energy.PerPoint
		if fat {
			method = energy.BodyFat
		}
		last := energy.Target{Weight: units.Mass(math.Inf(1))}
		for score := 5; score <= 9; score++ {
			a := energy.Animal{Species: energy.Dog, Weight: w, Condition: energy.BCS9(score)}
			got, err := energy.IdealWeight(a, method)
			if err != nil {
				return err.Error()
			}
			if !(0 < got.Low && got.Low <= got.Weight && got.Weight <= got.High && got.High <= w) {
				return fmt.Sprintf("%v at %d/9: %+v", w, score, got)
			}
			if !(got.Weight < last.Weight) || got.First != (score == 9) {
				return fmt.Sprintf("%v at %d/9: %+v after %+v", w, score, got, last)
			}
			last = got
		}
		return ""
	}, proptest.Quantity[units.Mass](800, 120e3), gen.Bool()))
}

// Twice the weight doubles every figure to the bit.
func TestIdealWeightGoesWithTheWeight(t *testing.T) {
	proptest.Check(t, "exactly twice", prop.ForAll(func(w units.Mass, score int) string {
		a := energy.Animal{Species: energy.Dog, Weight: w, Condition: energy.BCS9(score)}
		one, err := energy.IdealWeight(a, 0)
		if err != nil {
			return err.Error()
		}
		a.Weight *= 2
		two, err := energy.IdealWeight(a, 0)
		if err != nil {
			return err.Error()
		}
		if two.Weight != 2*one.Weight || two.Low != 2*one.Low || two.High != 2*one.High {
			return fmt.Sprintf("%+v and %+v", one, two)
		}
		return ""
	}, proptest.Quantity[units.Mass](800, 60e3), gen.IntRange(5, 9)))
}

func TestAnyInputGivesATargetOrARefusal(t *testing.T) {
	weight := gen.Weighted([]gen.WeightedGen{
		{Weight: 1, Gen: anyWeight()},
		{Weight: 5, Gen: proptest.Quantity[units.Mass](800, 120e3)},
	})
	accepted := map[energy.Method]int{}
	proptest.Check(t, "zero on error, else 0 < low <= weight <= high", prop.ForAll(func(w, recorded units.Mass, species, score, method int) string {
		a := energy.Animal{Species: energy.Species(species), Weight: w, Condition: energy.BCS9(score)}
		switch {
		case score%4 == 0:
			a.Ideal = 0.8 * w
		case score%2 == 0:
			a.Ideal = recorded
		}
		got, err := energy.IdealWeight(a, energy.Method(method))
		if err != nil {
			if got != (energy.Target{}) {
				return fmt.Sprintf("%+v beside %v", got, err)
			}
			return ""
		}
		accepted[got.Method]++
		if !(0 < got.Low && got.Low <= got.Weight && got.Weight <= got.High) || math.IsInf(float64(got.High), 0) {
			return fmt.Sprintf("%+v: %+v", a, got)
		}
		return ""
	}, weight, weight, gen.OneConstOf(0, 1, 1, 1, 2, 3, 4, 5), gen.IntRange(3, 10), gen.OneConstOf(0, int(energy.PerPoint), int(energy.BodyFat), int(energy.NRC2006))))
	for _, m := range []energy.Method{energy.RecordedIdeal, energy.PerPoint, energy.BodyFat} {
		if accepted[m] == 0 {
			t.Errorf("never accepted by %v: the property says nothing of it", m)
		}
	}
}
