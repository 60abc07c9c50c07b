package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
)

const needLadder = `; needed: the veterinarian's own ladder, as in "25/25/50/75/100 %", with the name: Refeeding{Ladder, By}`

// starved are the animals that no named ladder is for.
var starved = []struct {
	change func(*energy.Animal)
	want   string
}{
	{
		func(a *energy.Animal) { a.Condition = energy.BCS9(2) },
		`energy: condition "2/9": very thin: too much food too soon can kill (refeeding)` + needLadder,
	},
	{
		func(a *energy.Animal) { a.Condition = energy.BCS5(1) },
		`energy: condition "1/5": very thin: too much food too soon can kill (refeeding)` + needLadder,
	},
	{
		func(a *energy.Animal) { a.DaysUnfed = 5 },
		`energy: days unfed "5": long without food: too much food too soon can kill (refeeding)` + needLadder,
	},
	{
		func(a *energy.Animal) { a.Ideal = 30 * kg },
		`energy: weight "20 kg": 30 % or more below the recorded ideal weight of 30 kg: too much food too soon can kill (refeeding), or one of the two is wrong (pounds for kilograms?)` + needLadder,
	},
}

func namedLadders() []energy.Ladder {
	return []energy.Ladder{energy.ThreeDayLadder(), energy.FourDayLadder(), energy.FullLadder()}
}

func TestStarvedAnimalIsRefusedEveryNamedLadder(t *testing.T) {
	for _, tt := range starved {
		a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(5)}
		tt.change(&a)
		for _, l := range namedLadders() {
			e, err := refeed(a, l, 1).Estimate()
			if err == nil || err.Error() != tt.want {
				t.Errorf("%v: got  %v\nwant %v", l, err, tt.want)
			}
			if !errors.Is(err, energy.ErrVeterinarian) || e != (energy.Estimate{}) {
				t.Errorf("%v: %T beside %+v, want a *VeterinarianError and the zero value", l, err, e)
			}
		}
	}
}

// 20³ = 8000, the square root 89.4427, again 9.45742, × 70 = 662.02; 25 % are
// 165.5.
func TestStarvedAnimalIsFedByTheVeterinariansOwnLadder(t *testing.T) {
	for _, tt := range starved {
		a := animal(energy.Dog, 20*kg)
		tt.change(&a)
		if got := estimate(t, refeed(a, ownLadder(t, 25, 50, 75, 100), 1)).Daily; !(math.Abs(float64(got)-165.5) <= 0.05) {
			t.Errorf("%+v: %v, want 165.5 kcal", a, got)
		}
	}
}

func TestIllAndTubeFedAnimalsTakeANamedLadder(t *testing.T) {
	for _, c := range []energy.Circumstances{energy.Ill, energy.TubeFed, energy.Ill | energy.TubeFed | energy.LiverDisease} {
		a := patient
		a.Circumstances = c
		for _, l := range namedLadders() {
			estimate(t, refeed(a, l, 1))
		}
	}
}

func TestNextToStarvedTakesANamedLadder(t *testing.T) {
	for _, a := range []energy.Animal{
		{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(3)},
		{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS5(2)},
		{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(4), DaysUnfed: 4},
		{Species: energy.Dog, Weight: 21.1 * kg, Condition: energy.BCS9(4), Ideal: 30 * kg},
	} {
		estimate(t, refeed(a, energy.FourDayLadder(), 1))
	}
}
