package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
)

type figure struct {
	method energy.Method
	daily  float64
}

// compared holds the methods and their figures, to the kilocalorie, against
// what was worked out by hand.
func compared(t *testing.T, s energy.Stage, want ...figure) {
	t.Helper()
	all, err := energy.Compare(s)
	if err != nil {
		t.Fatal(err)
	}
	var got []figure
	for _, e := range all {
		got = append(got, figure{e.Method, math.Round(e.Daily.Kilocalories())})
		if e.Low > e.Daily || e.Daily > e.High {
			t.Errorf("%v: %v is not from %v to %v", e.Method, e.Daily, e.Low, e.High)
		}
	}
	if len(got) != len(want) {
		t.Fatalf("got  %v\nwant %v", got, want)
	}
	for i := range got {
		if got[i] != want[i] {
			t.Errorf("got  %v\nwant %v", got[i], want[i])
		}
	}
}

// By hand for 20 kg: 20^0.75 is 9.4574; × 70 × 1.6 = 1059.2, × 130 = 1229.5,
// × 110 = 1040.3, × 98 = 926.8. 20^0.93 is 16.217; × 81.5 = 1321.7.
func TestMethodsForADogOf20kg(t *testing.T) {
	dog := animal(energy.Dog, 20*kg)
	compared(
		t, energy.Adult{Animal: dog, Status: energy.Neutered},
		figure{energy.FactorOnRER, 1059}, figure{energy.NRC2006, 1229}, figure{energy.FEDIAF, 1040},
		figure{energy.Bermingham, 1322}, figure{energy.Thes, 927},
	)
	// The lowest of all sources is for the inactive: 95 × 9.4574 = 898.5.
	all, err := energy.Compare(energy.Adult{Animal: dog, Status: energy.Inactive, Method: energy.FEDIAF})
	if err != nil || math.Round(all[0].Daily.Kilocalories()) != 898 {
		t.Errorf("inactive: %+v, %v; want 898 kcal first", all, err)
	}
}

// By hand for 4 kg: 4^0.75 is 2.8284; × 70 × 1.2 = 237.6, × 70 × 1.4 = 277.2.
// 4^0.67 is 2.5315; × 100 = 253.1, × 75 = 189.9. 4^1.115 is 4.6913; × 46.8 =
// 219.6.
func TestMethodsForACatOf4kg(t *testing.T) {
	cat := animal(energy.Cat, 4*kg)
	compared(
		t, energy.Adult{Animal: cat, Status: energy.Neutered},
		figure{energy.FactorOnRER, 238}, figure{energy.NRC2006, 253}, figure{energy.FEDIAF, 190}, figure{energy.Bermingham, 220},
	)
	all, err := energy.Compare(energy.Adult{Animal: cat, Status: energy.Intact})
	if err != nil || math.Round(all[0].Daily.Kilocalories()) != 277 {
		t.Errorf("intact: %+v, %v; want 277 kcal first", all, err)
	}
}

func TestMethodThatIsAskedForComesFirst(t *testing.T) {
	all, err := energy.Compare(energy.Adult{Animal: animal(energy.Dog, 20*kg), Status: energy.Neutered, Method: energy.Thes})
	if err != nil || len(all) != 5 || all[0].Method != energy.Thes || all[1].Method != energy.FactorOnRER {
		t.Errorf("%+v, %v", all, err)
	}
}

func TestMethodOutOfItsRangeIsLeftOut(t *testing.T) {
	compared(t, energy.Resting{Animal: animal(energy.Dog, 16*kg)}, figure{energy.RERPower, 560}, figure{energy.RERLinear, 550})
	compared(t, energy.Resting{Animal: animal(energy.Dog, 81*kg)}, figure{energy.RERPower, 1890})
}

func TestNothingIsComparedWhereTheStageIsRefused(t *testing.T) {
	_, want := energy.Adult{Animal: animal(energy.Dog, 20*kg)}.Estimate()
	all, err := energy.Compare(energy.Adult{Animal: animal(energy.Dog, 20*kg)})
	if all != nil || err == nil || err.Error() != want.Error() {
		t.Errorf("%v, %v; want no estimate and %v", all, err, want)
	}
	if all, err := energy.Compare(foreign{}); all != nil || err == nil {
		t.Errorf("a foreign stage: %v, %v", all, err)
	}
	if all, err := energy.Compare(nil); all != nil || err == nil {
		t.Errorf("no stage: %v, %v", all, err)
	}
}
