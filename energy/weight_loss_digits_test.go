package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// A recorded ideal weight at an end of what the score speaks for is within it. By
// hand: 32 kg at 9/9 are 20 kg at 15 % a point and 24 kg by body fat, 20 kg at 7/9
// to 17.5 kg. How far a 9/9 is above its ideal can't be told, and its recorded
// weight may be higher.
func TestRecordedIdealAtTheEndsOfItsScore(t *testing.T) {
	for _, tt := range []struct {
		weight, ideal units.Mass
		score         int
		want          bool
	}{
		{32 * kg, 20 * kg, 9, false},
		{32 * kg, 19.9 * kg, 9, true},
		{32 * kg, 26 * kg, 9, false},
		{20 * kg, 17.5 * kg, 7, false},
		{20 * kg, 17.6 * kg, 7, true},
		{20 * kg, 17 * kg, 5, false}, // 5/9 is said to be no overweight, and no more
	} {
		a := energy.Animal{Species: energy.Dog, Weight: tt.weight, Ideal: tt.ideal, Condition: energy.BCS9(tt.score)}
		if got := told(t, energy.WeightLoss{Animal: a}, "speaks for"); got != tt.want {
			t.Errorf("%v of %v at %d/9: told %t", tt.ideal, tt.weight, tt.score, got)
		}
	}
}

// Exactly half of its plan is not less than that (Hand and others 2010, p. 529). By
// hand: 16 kg have a resting energy of 560 kcal, neutered 672; 0.7 % a week are
// 0.112 kg, 7920 × 0.112 / 7 = 126.72 kcal a day, which leaves 545.28, half of it
// 272.64.
func TestCatThatEatsExactlyHalfOfItsPlan(t *testing.T) {
	for intake, want := range map[units.Energy]bool{272.64: false, 272.63: true} {
		s := energy.WeightLoss{
			Animal: energy.Animal{Species: energy.Cat, Weight: 16 * kg, Ideal: 8 * kg, Condition: energy.BCS9(9)},
			Status: energy.Neutered, Method: energy.Deficit, Rate: 0.7, Intake: intake,
		}
		if got := strings.Contains(refusal(s), "less than half of its plan"); got != want {
			t.Errorf("%v: %q, want it refused: %t", intake, refusal(s), want)
		}
	}
}

// Up to 2 % a week, a dog's rate, a cat's is a veterinarian's to decide; beyond it
// is a slip (Hand and others 2010, p. 522 and 529).
func TestRateOfACatThatADogMayLose(t *testing.T) {
	for rate, want := range map[units.Percent]string{1: "", 1.01: "veterinarian", 2: "veterinarian", 2.01: "slip"} {
		s := energy.WeightLoss{Animal: heavy(energy.Cat, 5*kg), Status: energy.Neutered, Method: energy.Deficit, Rate: rate}
		err := failure(s)
		got := ""
		switch {
		case errors.Is(err, energy.ErrVeterinarian):
			got = "veterinarian"
		case fieldsOf(err) == "rate":
			got = "slip"
		}
		if got != want {
			t.Errorf("%v: %v, want %q", rate, err, want)
		}
	}
}

// 50,000 kcal are taken of an animal (ours), so that they are held against its
// weight: three times the 560 kcal of 16 kg, and five thirds of that.
func TestIntakeOfTheMostThatIsTaken(t *testing.T) {
	for intake, want := range map[units.Energy]string{
		50000: "want at most 2800 kcal a day, far above 0.5 to 3 times its resting energy", 50001: "want more than 0 kcal and at most 50000 kcal a day",
	} {
		a := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(8)}
		err := failure(energy.WeightLoss{Animal: a, Intake: intake})
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v: %v, want %s", intake, err, want)
		}
	}
}

// Below 85 % of the ideal weight (ours) it is said of the animal, else of the
// plan, so that the cause is asked for in every case, and once.
func TestCauseOfALossIsAskedForOnce(t *testing.T) {
	for _, w := range []units.Mass{16.9 * kg, 17 * kg, 17.1 * kg} {
		a := energy.Animal{Species: energy.Dog, Weight: w, Ideal: 20 * kg, Condition: energy.BCS9(4)}
		cautioned(t, energy.WeightGain{Animal: a}, advice.Warn, "find the cause of the loss before feeding for gain")
	}
}
