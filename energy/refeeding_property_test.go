package energy_test

import (
	"fmt"
	"slices"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// anyLadder is a veterinarian's own, of 1 to 14 steps in order.
func anyLadder() gopter.Gen {
	return gen.IntRange(1, 14).FlatMap(func(n any) gopter.Gen {
		return gen.SliceOfN(n.(int), proptest.Quantity[units.Percent](1.5, 100))
	}, nil).Map(func(percents []units.Percent) energy.Ladder {
		slices.Sort(percents)
		l, err := energy.NewLadder(percents...)
		if err != nil {
			panic(err)
		}
		return l
	})
}

func TestLadderComesBackBitForBit(t *testing.T) {
	proptest.Check(t, "text", prop.ForAll(func(l energy.Ladder) string {
		back, err := energy.ParseLadder(l.String())
		if back != l || err != nil {
			return fmt.Sprintf("%v: %v, %v", l, back, err)
		}
		return ""
	}, anyLadder()))
}

func TestRefeedingNeverFallsAndNeverPassesTheRestingEnergy(t *testing.T) {
	proptest.Check(t, "day by day", prop.ForAll(func(l energy.Ladder, w units.Mass) string {
		a := animal(energy.Dog, w)
		a.Age = 5 * energy.Week // a light animal must have an age
		previous := units.Energy(0)
		for day := 1; day <= l.Len()+1; day++ {
			e, err := refeed(a, l, day).Estimate()
			if err != nil || !(0 < e.Daily && previous <= e.Daily && e.Daily <= resting(w)) || e.Low != e.Daily || e.High != e.Daily {
				return fmt.Sprintf("day %d: %v from %v to %v after %v, resting %v, %v", day, e.Daily, e.Low, e.High, previous, resting(w), err)
			}
			previous = e.Daily
		}
		return ""
	}, anyLadder(), proptest.Quantity[units.Mass](50, 120e3)))
}

// 16^0.75 is 8, a power of two, so that not a bit may differ.
func TestSixteenTimesTheWeightIsEightTimesTheStep(t *testing.T) {
	proptest.Check(t, "exactly", prop.ForAll(func(l energy.Ladder, w units.Mass) bool {
		a, b := animal(energy.Dog, w), animal(energy.Dog, 16*w)
		a.Age, b.Age = 5*energy.Week, 5*energy.Week // a light animal must have an age
		e, err := refeed(a, l, 1).Estimate()
		f, err16 := refeed(b, l, 1).Estimate()
		return err == nil && err16 == nil && f.Daily == 8*e.Daily
	}, anyLadder(), proptest.Quantity[units.Mass](50, 7500)))
}
