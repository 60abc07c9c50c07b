package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// ownLadder is a veterinarian's own.
func ownLadder(t testing.TB, percents ...units.Percent) energy.Ladder {
	t.Helper()
	l, err := energy.NewLadder(percents...)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// patient is a cat that is not starved.
var patient = energy.Animal{Species: energy.Cat, Weight: 4.2 * kg, Condition: energy.BCS9(4), Circumstances: energy.TubeFed}

// refeed returns the day of a ladder that was set by a veterinarian.
func refeed(a energy.Animal, l energy.Ladder, day int) energy.Refeeding {
	return energy.Refeeding{Animal: a, Ladder: l, Day: day, By: "Dr A. Example"}
}

// Two invented animals: 16.2³ = 4251.528, the square root 65.2037, again
// 8.07488, × 70 = 565.24; 4.2³ = 74.088, 8.60744, 2.93384, × 70 = 205.37.
func TestStepsOfALadder(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 16.2 * kg, Condition: energy.BCS9(1)}
	for _, tt := range []struct {
		name   string
		animal energy.Animal
		ladder energy.Ladder
		want   []units.Energy // to a tenth
	}{
		{"a starved dog", dog, ownLadder(t, 25, 25, 50, 75, 100), []units.Energy{141.3, 141.3, 282.6, 423.9, 565.2}},
		{"a cat with a tube", patient, energy.ThreeDayLadder(), []units.Energy{68.5, 136.9, 205.4}},
	} {
		for i, want := range tt.want {
			e := estimate(t, refeed(tt.animal, tt.ladder, i+1))
			if !(math.Abs(float64(e.Daily-want)) <= 0.05) {
				t.Errorf("%s, day %d: %v, want %v", tt.name, i+1, e.Daily, want)
			}
		}
	}
}

// 16^0.75 = 8, × 70 = 560: the steps of the sources, exactly.
func TestNamedLaddersOfADogOf16Kilograms(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(4)}
	for _, tt := range []struct {
		ladder energy.Ladder
		want   []units.Energy
	}{
		{energy.FourDayLadder(), []units.Energy{140, 280, 420, 560}},
		{energy.FullLadder(), []units.Energy{560}},
	} {
		for i, want := range tt.want {
			got := estimate(t, refeed(dog, tt.ladder, i+1))
			if got.Daily != want || got.Low != want || got.High != want {
				t.Errorf("%v, day %d: %v from %v to %v, want %v in all three", tt.ladder, i+1, got.Daily, got.Low, got.High, want)
			}
		}
	}
}

// The healthy weight would give 829 kcal, 47 % more; a fat animal's ideal less.
func TestRefeedingIsOnTheCurrentWeight(t *testing.T) {
	for _, ideal := range []units.Mass{0, 27 * kg, 13 * kg} {
		dog := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Ideal: ideal}
		e := estimate(t, refeed(dog, ownLadder(t, 100), 1))
		if e.Daily != 560 || e.Weight != 16*kg || e.Basis != energy.Current || e.Method != energy.PercentOfRER || e.Reweigh != energy.Day {
			t.Errorf("ideal weight %v: %+v, want 560 kcal on 16 kg, current, percent_of_rer, weighed again after 1 d", ideal, e)
		}
	}
}

func TestDayPastTheLadderStaysOnItsLastStep(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 16 * kg}
	l := ownLadder(t, 25, 50)
	for day, want := range map[int]units.Energy{1: 140, 2: 280, 3: 280, 11: 280, math.MaxInt: 280} {
		if got := estimate(t, refeed(dog, l, day)).Daily; got != want {
			t.Errorf("day %d: %v, want %v", day, got, want)
		}
	}
}

func TestRefeedingAllocatesAtMostOnce(t *testing.T) {
	s := refeed(patient, energy.ThreeDayLadder(), 2)
	var err error
	n := testing.AllocsPerRun(100, func() { sink, err = s.Estimate() })
	if n > 1 || err != nil {
		t.Errorf("%v allocations, %v", n, err)
	}
}
