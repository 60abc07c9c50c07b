package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// The least of an adult is 800 g for a dog and 1.5 kg for a cat (ours): from there
// on no age is asked for.
func TestRefeedingAnAnimalOfAnAdultsLeast(t *testing.T) {
	for species, least := range map[energy.Species]units.Mass{energy.Dog: 800, energy.Cat: 1500} {
		for off, want := range map[units.Mass]string{0: "", -1: "age"} {
			a := energy.Animal{Species: species, Weight: least + off, Condition: energy.BCS9(4)}
			_, err := refeed(a, energy.FourDayLadder(), 1).Estimate()
			if fieldsOf(err) != want {
				t.Errorf("%v of %v: %v, want %q refused", species, a.Weight, err, want)
			}
		}
	}
}

func TestLastStepIsNotPastItself(t *testing.T) {
	for day, want := range map[int]bool{4: false, 5: true} {
		text := estimate(t, refeed(patient, energy.FourDayLadder(), day)).Explain()
		if strings.Contains(text, "past the last step") != want {
			t.Errorf("day %d, past the last step: want %t in\n%s", day, want, text)
		}
	}
}
