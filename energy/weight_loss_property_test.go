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

// anyPlan is a weight loss or a weight gain, sound but for the few fields that
// are in or just out of their range.
func anyPlan() gopter.Gen {
	usually := func(sound any, others ...any) gopter.Gen {
		return gen.Weighted([]gen.WeightedGen{{Weight: 7, Gen: gen.Const(sound)}, {Weight: 1, Gen: gen.OneConstOf(others...)}})
	}
	return gopter.CombineGens(
		proptest.Quantity[units.Mass](700, 130e3),
		gen.OneConstOf(0, 1, 1, 1, 1, 2, 2, 3, 4, 5),                   // species
		usually(6, 0, 1, 3, 4, 5, 7, 8, 9, 10),                         // score, of a loss
		usually(0.8, 0.0, 0.4, 0.6, 0.95, 1.0, 1.2, math.NaN()),        // ideal weight, of the current
		usually(40.0, 0.0, 1.0, 10.0, 120.0, -1.0, math.Inf(1)),        // intake for each kg
		usually(0.0, 0.8, 50.0, 80.0, 105.0, 110.0, 150.0, math.NaN()), // share
		usually(0.0, 0.5, 0.75, 1.0, 2.0, 3.0, math.NaN()),             // rate
		gen.OneConstOf(
			energy.Method(0), energy.RERPower, energy.RERLinear, energy.ShareOfMaintenance,
			energy.ShareOfIntake, energy.ShareOfIntake, energy.Deficit, energy.FEDIAF,
		),
		usually(energy.Neutered, energy.Status(0), energy.Intact, energy.Inactive, energy.Senior, energy.Unknown, energy.Status(6)),
		gen.Bool(),
	).Map(func(v []any) energy.Stage {
		w := v[0].(units.Mass)
		a := energy.Animal{Species: energy.Species(v[1].(int)), Weight: w, Ideal: units.Mass(v[3].(float64)) * w}
		intake := units.Energy(v[4].(float64) * w.Kilograms())
		share, method := units.Percent(v[5].(float64)), v[7].(energy.Method)
		score := v[2].(int)
		if gains := v[9].(bool); gains {
			a.Ideal, score = w*w/a.Ideal, 10-score
			a.Condition = energy.BCS9(score)
			return energy.WeightGain{Animal: a, Intake: intake, Share: share, Method: method}
		}
		a.Condition = energy.BCS9(score)
		return energy.WeightLoss{
			Animal: a, Status: v[8].(energy.Status), Intake: intake, Share: share,
			Rate: units.Percent(v[6].(float64)), Method: method,
		}
	})
}

func TestAnyPlanIsRefusedOrGivesAFinitePositiveEnergy(t *testing.T) {
	accepted := map[string]int{}
	proptest.Check(t, "zero on error, else 0 < low <= daily <= high < infinity", prop.ForAll(func(s energy.Stage) string {
		e, err := s.Estimate()
		if err != nil {
			if e != (energy.Estimate{}) {
				return fmt.Sprintf("%+v beside %v", e, err)
			}
			return ""
		}
		if !(0 < e.Low && e.Low <= e.Daily && e.Daily <= e.High) || math.IsInf(float64(e.High), 0) {
			return fmt.Sprintf("%v from %v to %v", e.Daily, e.Low, e.High)
		}
		if e.Method == 0 || e.Basis == 0 || e.Weight <= 0 || e.Stage != s {
			return fmt.Sprintf("%+v", e)
		}
		accepted[fmt.Sprintf("%T by %v", s, e.Method)]++
		plan, ok := s.(energy.WeightLoss)
		if !ok {
			return ""
		}
		g, err := plan.Goal()
		switch {
		case err != nil:
			return err.Error()
		case !(0 < g.Lose && g.Target.Low <= g.Target.Weight && g.Target.Weight <= g.Target.High):
			return fmt.Sprintf("%+v", g)
		case !(0 < g.Weeks.Soonest && g.Weeks.Soonest < g.Weeks.Latest) || !(0 < g.Weekly.Low && g.Weekly.Low < g.Weekly.High):
			return fmt.Sprintf("%+v", g)
		}
		return ""
	}, anyPlan()))
	want := 8 // six of a loss and two of a gain
	if testing.Short() {
		want = 1 // too few cases to reach all of them
	}
	if len(accepted) < want {
		t.Errorf("accepted %v: the property says nothing of the others", accepted)
	}
}

// Every equation grows with the weight, the deficit too: in so far as 1 % of a dog
// is less than what it needs.
func TestWeightLossGrowsWithTheWeight(t *testing.T) {
	for _, m := range []energy.Method{energy.FactorOnRER, energy.RERPower, energy.RERLinear, energy.ShareOfMaintenance, energy.Deficit} {
		proptest.Check(t, m.String(), prop.ForAll(func(w units.Mass, score int) string {
			s := energy.WeightLoss{
				Animal: energy.Animal{Species: energy.Dog, Weight: w, Condition: energy.BCS9(score)},
				Status: energy.Neutered, Method: m,
			}
			heavier := s
			heavier.Animal.Weight *= 1.001
			a, err := s.Estimate()
			if err != nil {
				return err.Error()
			}
			b, err := heavier.Estimate()
			if err != nil {
				return err.Error()
			}
			if !(a.Daily < b.Daily) {
				return fmt.Sprintf("%v: %v, a thousandth more: %v", w, a.Daily, b.Daily)
			}
			return ""
		}, proptest.Quantity[units.Mass](3e3, 45e3), gen.IntRange(6, 9)))
	}
}

// The fatter by the score, the less, at one weight.
func TestWeightLossFallsWithTheScore(t *testing.T) {
	proptest.Check(t, "less with every point", prop.ForAll(func(w units.Mass, cat bool) string {
		species := energy.Dog
		if cat {
			species = energy.Cat
		}
		last := units.Energy(math.Inf(1))
		for score := 6; score <= 9; score++ {
			e, err := energy.WeightLoss{Animal: energy.Animal{Species: species, Weight: w, Condition: energy.BCS9(score)}}.Estimate()
			if err != nil || !(e.Daily < last) {
				return fmt.Sprintf("%v at %d/9: %v after %v, %v", w, score, e.Daily, last, err)
			}
			last = e.Daily
		}
		return ""
	}, proptest.Quantity[units.Mass](1500, 20e3), gen.Bool()))
}
