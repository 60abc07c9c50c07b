package energy_test

import (
	"reflect"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestEstimateOfEveryStageIsComparable(t *testing.T) {
	again := stages()
	for i, s := range stages() {
		e, e2 := estimate(t, s), estimate(t, again[i])
		if !reflect.ValueOf(e).Comparable() {
			t.Errorf("%T: not comparable", s)
		}
		if e != e2 {
			t.Errorf("%T: equal inputs gave\n%+v\n%+v", s, e, e2)
		}
		if e.Stage != s {
			t.Errorf("%T: the estimate holds the stage %+v, want %+v", s, e.Stage, s)
		}
	}
}

func TestEstimatesOfDifferentInputsDiffer(t *testing.T) {
	seen := map[energy.Estimate]int{}
	for i, s := range append(stages(),
		prescribe(energy.Animal{}, 250),
		energy.Prescribed{Daily: 250, By: "Dr B. Example"},
		energy.Resting{Animal: animal(energy.Dog, 4*kg)},
		energy.Resting{Animal: animal(energy.Cat, 4*kg)},
		energy.Resting{Animal: animal(energy.Cat, units.Mass(4001))},
	) {
		e := estimate(t, s)
		if j, ok := seen[e]; ok {
			t.Errorf("stages %d and %d have one estimate", j, i)
		}
		seen[e] = i
	}
}
