package energy_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Up to three times the weight an ideal weight is no slip (ours), so that exactly
// there the starved animal needs a veterinarian, and beyond it the two weights
// are looked at again.
func TestIdealOfThreeTimesTheWeight(t *testing.T) {
	for ideal, gated := range map[units.Mass]bool{12 * kg: true, 12.1 * kg: false} {
		a := energy.Animal{Species: energy.Dog, Weight: 4 * kg, Ideal: ideal, Condition: energy.BCS9(5)}
		err := failure(energy.Adult{Animal: a, Status: energy.Neutered})
		if errors.Is(err, energy.ErrVeterinarian) != gated || (fieldsOf(err) == "ideal weight") == gated {
			t.Errorf("%v: %v, want a veterinarian asked: %t", ideal, err, gated)
		}
		// No more than twice is taken here (ours), and the fault is told once.
		want := "at most twice the current 4 kg"
		if !gated {
			want = "from half to three times the current 4 kg"
		}
		_, err = energy.IdealWeight(a, energy.RecordedIdeal)
		if fieldsOf(err) != "ideal weight" || !strings.Contains(err.Error(), want) {
			t.Errorf("ideal weight of %v: %v, want %s", ideal, err, want)
		}
	}
}

// Beside a weight that is not given no other one is far off.
func TestOnlyTheMissingWeightIsRefused(t *testing.T) {
	a := energy.Animal{Species: energy.Dog, Ideal: 20 * kg, Condition: energy.BCS9(7)}
	for _, s := range []energy.Stage{
		energy.Adult{Animal: a, Status: energy.Neutered},
		energy.WeightLoss{Animal: a},
		energy.Observed{Animal: animal(energy.Dog, 0), Intake: 900, Before: 20 * kg},
	} {
		if err := failure(s); fieldsOf(err) != "weight" {
			t.Errorf("%T: %v, want the weight refused and no other", s, err)
		}
	}
	silent(t, energy.Prescribed{Animal: a, Daily: 900, By: "Dr A. Example"}, "far below the ideal weight")
}

// The least of an adult dog is 800 g (ours): its ideal weight may be that.
func TestIdealWeightOfTheSmallestDog(t *testing.T) {
	for ideal, taken := range map[units.Mass]bool{800: true, 799: false} {
		a := energy.Animal{Species: energy.Dog, Weight: 1 * kg, Ideal: ideal}
		if err := failure(energy.Adult{Animal: a, Status: energy.Neutered}); (err == nil) != taken {
			t.Errorf("%v: %v, want it taken: %t", ideal, err, taken)
		}
	}
}

// An ideal weight that is the current one is not below it.
func TestIdealWeightThatIsTheCurrentOne(t *testing.T) {
	for ideal, want := range map[units.Mass]bool{20 * kg: false, 19.9 * kg: true} {
		a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Ideal: ideal, Condition: energy.BCS9(5)}
		if got := told(t, energy.Adult{Animal: a, Status: energy.Neutered}, "is below the current 20 kg"); got != want {
			t.Errorf("%v: told %t, want %t", ideal, got, want)
		}
		e := energy.Estimate{Animal: a, Weight: ideal, Basis: energy.Ideal, Daily: 600}
		if got := strings.Contains(e.Explain(), "since the animal is heavier"); got != want {
			t.Errorf("%v: %s", ideal, e.Explain())
		}
	}
}

// A plan is made from 365 days on, where nothing stands against it (ours).
func TestPlanFromAYearOn(t *testing.T) {
	for age, want := range map[energy.Age]bool{energy.Year: true, energy.Year - 1: false} {
		a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Age: age, Condition: energy.BCS9(7)}
		s := energy.Adult{Animal: a, Status: energy.Neutered}
		if got := told(t, s, "plan a weight loss"); got != want {
			t.Errorf("%v: told to plan: %t", age, got)
		}
		if got := told(t, s, "while it grows"); got == want {
			t.Errorf("%v: told of growth: %t", age, got)
		}
	}
}

// Whoever puts an estimate together is told of the thin animal all the same.
func TestThinAnimalInAPlanToLose(t *testing.T) {
	a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(3)}
	found := false
	for _, c := range (energy.Estimate{Stage: energy.WeightLoss{Animal: a}, Animal: a, Daily: 600}).Cautions() {
		found = found || strings.Contains(c.Text, "thin (3/9)")
	}
	if !found {
		t.Error("nothing is said of 3/9")
	}
}

// Four weeks are the last of a nursling (ours).
func TestChilledToTheEndOfFourWeeks(t *testing.T) {
	for age, want := range map[energy.Age]bool{28: true, 29: false} {
		s := energy.Growth{Animal: animal(energy.Dog, 2*kg)}
		s.Animal.Age = age
		if got := told(t, s, "chilled"); got != want {
			t.Errorf("day %d: told %t", age, got)
		}
	}
}

// Only what is held against adults may be asked whether it is young; of a kit
// no energy is published.
func TestLightAnimalIsAskedWhetherItIsYoung(t *testing.T) {
	for s, want := range map[energy.Stage]string{
		energy.Adult{Animal: animal(energy.Dog, 600*units.Gram), Status: energy.Neutered}: "a puppy? growth has equations of its own: Growth",
		energy.Adult{Animal: animal(energy.Ferret, 300*units.Gram)}:                       "a kit? no energy is published for its young: Prescribed takes a veterinarian's figure",
		puppy(500*units.Gram, 0, 730):                                                     "",
	} {
		_, err := s.Estimate()
		var fault *units.FieldError
		if !errors.As(err, &fault) || fault.Hint != want {
			t.Errorf("%T: %v, want the hint %q", s, err, want)
		}
	}
}
