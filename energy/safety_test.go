package energy_test

import (
	"encoding/json"
	"errors"
	"strconv"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// What would hurt an animal if it were computed.
func TestOnlyAVeterinarianMaySetTheAmount(t *testing.T) {
	cat := func(kilograms float64, score int) energy.Animal {
		return energy.Animal{Species: energy.Cat, Weight: units.Mass(kilograms) * kg, Condition: energy.BCS9(score)}
	}
	with := func(a energy.Animal, change func(*energy.Animal)) energy.Animal { change(&a); return a }
	thin := with(cat(3.5, 4), func(a *energy.Animal) { a.Ideal = 4 * kg })
	for name, s := range map[string]energy.Stage{
		"a gain of next to nothing":      energy.WeightGain{Animal: thin, Intake: 50, Method: energy.ShareOfIntake},
		"a gain for a cat that starves":  energy.WeightGain{Animal: thin, Intake: 50},
		"a loss for a cat that starves":  energy.WeightLoss{Animal: cat(7, 8), Intake: 50},
		"a loss at half the plan":        energy.WeightLoss{Animal: cat(7, 8), Intake: 98}, // of 197.9
		"a loss of the diabetic":         energy.WeightLoss{Animal: with(cat(7, 8), func(a *energy.Animal) { a.Circumstances = energy.Diabetic })},
		"a loss with liver disease":      energy.WeightLoss{Animal: with(cat(7, 8), func(a *energy.Animal) { a.Circumstances = energy.LiverDisease })},
		"a gain with kidney disease":     energy.WeightGain{Animal: with(thin, func(a *energy.Animal) { a.Circumstances = energy.KidneyDisease })},
		"a loss for a cat off its food":  energy.WeightLoss{Animal: with(cat(7, 8), func(a *energy.Animal) { a.DaysUnfed = 1 })},
		"a gain for a cat off its food":  energy.WeightGain{Animal: with(thin, func(a *energy.Animal) { a.DaysUnfed = 4 })},
		"a steady intake of a third":     energy.Observed{Animal: cat(4, 5), Intake: 60, Over: 14, Before: 4 * kg},
		"less than half the ideal":       energy.Adult{Animal: with(cat(1.9, 5), func(a *energy.Animal) { a.Ideal = 4 * kg }), Status: energy.Neutered},
		"thirty percent below, in pound": energy.Adult{Animal: energy.Animal{Species: energy.Dog, Weight: 35 * units.Pound, Ideal: 50 * units.Pound}, Status: energy.Intact},
	} {
		e, err := s.Estimate()
		if !errors.Is(err, energy.ErrVeterinarian) || e != (energy.Estimate{}) {
			t.Errorf("%s: %v, %v; want a veterinarian's figure to be asked for", name, e.Daily, err)
		}
	}
}

// The most starved are those whom a veterinarian's figure is for: Cook 2021 saw
// cats that had lost 46 ± 7 %.
func TestVeterinariansFigureReachesTheMostStarved(t *testing.T) {
	cat := energy.Animal{Species: energy.Cat, Weight: 1.9 * kg, Ideal: 4 * kg, Condition: energy.BCS9(1)}
	cautioned(t, prescribe(cat, 30), advice.Refer, "far below the ideal weight")
	cautioned(t, refeed(cat, ownLadder(t, 25, 50, 75, 100), 1), advice.Refer, "too much food too soon can kill")
}

// Slips that make an amount absurd.
func TestWeightIsHeldAgainstTheAge(t *testing.T) {
	grow := func(s energy.Species, weight units.Mass, age energy.Age) energy.Stage {
		return energy.Growth{Animal: energy.Animal{Species: s, Weight: weight, Age: age}}
	}
	for _, s := range []energy.Stage{
		grow(energy.Cat, 20*kg, 5*energy.Week),
		grow(energy.Cat, 3*kg, 28),
		grow(energy.Cat, 9*kg, 12*energy.Week),
		grow(energy.Dog, 60*kg, 28),
		grow(energy.Dog, 0.1*kg, 7*energy.Month),
	} {
		var fault *units.FieldError
		if _, err := s.Estimate(); !errors.As(err, &fault) || fault.Field != "weight" {
			t.Errorf("%+v: %v, want the weight refused", s, err)
		}
	}
	for _, s := range []energy.Stage{
		energy.Growth{Animal: animal(energy.Cat, 0.1*kg), AdultWeight: 4 * kg},
		energy.Growth{Animal: animal(energy.Dog, 0.2*kg), AdultWeight: 10 * kg},
		refeed(animal(energy.Cat, 0.1*kg), ownLadder(t, 25, 100), 1),
	} {
		var fault *units.FieldError
		if _, err := s.Estimate(); !errors.As(err, &fault) || fault.Field != "age" {
			t.Errorf("%+v: %v, want the age asked for", s, err)
		}
	}
	nursling := energy.Nursling{Animal: energy.Animal{Species: energy.Cat, Weight: 45 * units.Gram, Age: 28}}
	cautioned(t, nursling, advice.Refer, "45 g is very little in week 4: a digit too few, or it must be seen now")
	nursling.Animal.Age = 2
	silent(t, nursling, "very little")
}

func TestNeonateIsWarmedFirstWhateverTheStage(t *testing.T) {
	kitten := energy.Animal{Species: energy.Cat, Weight: 100 * units.Gram, Age: 3}
	cautioned(t, prescribe(kitten, 18), advice.Warn, "never feed a chilled nursling: below about 35 °C warm it slowly first")
	kitten.Age = 29
	silent(t, prescribe(kitten, 18), "chilled")
}

func TestNobodyIsToldToLoseWeightWhoMustNot(t *testing.T) {
	fat := energy.Animal{Species: energy.Cat, Weight: 7 * kg, Condition: energy.BCS9(9)}
	cautioned(t, prescribe(fat, 250), advice.Warn, "plan a weight loss")
	for _, c := range []energy.Circumstances{energy.Ill, energy.TubeFed, energy.Pregnant} {
		a := fat
		a.Circumstances = c
		silent(t, prescribe(a, 250), "plan a weight loss")
	}
	unfed := fat
	unfed.DaysUnfed = 3
	silent(t, refeed(unfed, energy.FourDayLadder(), 1), "plan a weight loss")
	young := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Age: 7 * energy.Month, Condition: energy.BCS9(8)}
	silent(t, energy.Adult{Animal: young, Status: energy.Intact}, "plan a weight loss")
}

func TestSmallHerbivoreOffItsFoodIsAnEmergency(t *testing.T) {
	rabbit := energy.Animal{Species: energy.Other, Weight: 2 * kg, DaysUnfed: 1, Condition: energy.BCS9(5)}
	cautioned(t, energy.Observed{Animal: rabbit, Intake: 180, Over: 14, Before: 2 * kg}, advice.Refer, "has eaten nothing for a day is an emergency")
}

func TestBoundariesHoldInPounds(t *testing.T) {
	kitten := energy.Growth{Animal: animal(energy.Cat, 5.6*units.Pound), AdultWeight: 8 * units.Pound, Method: energy.FactorOnRER}
	if got := float64(estimate(t, kitten).Daily / resting(kitten.Animal.Weight)); !(1.999 < got && got < 2.001) {
		t.Errorf("70 %% of the adult weight: %v times the resting energy, want 2.0", got)
	}
	dog := energy.Observed{
		Animal: animal(energy.Dog, 9.9*units.Pound), Intake: 300, Over: 14, Before: 11 * units.Pound,
	}
	cautioned(t, dog, advice.Refer, "the weight went from")
}

// 0.36³ is 0.046656, √0.046656 = 0.216, of that again 0.46476; × 70 = 32.53.
func TestWorkingOfASmallAnimalCanBeRedone(t *testing.T) {
	text := estimate(t, energy.Resting{Animal: animal(energy.Cat, 0.36*kg)}).Explain()
	const want = "by hand   0.36 × 0.36 × 0.36 = 0.04666, square root twice, × 70\n"
	if !strings.Contains(text, want) {
		t.Errorf("no %q in\n%s", want, text)
	}
}

func TestWrongKindOfMemberIsSaidInWords(t *testing.T) {
	for in, want := range map[string]string{
		`{"stage":"adult","animal":{"species":"cat","weight":20000},"status":"neutered"}`: `energy: animal.weight "number": want text with a unit, as in "100 g"`,
		`{"stage":"lactation","animal":{"species":"cat"},"young":"4"}`:                    `energy: lactation.young "string": want a whole number`,
		`[1]`:                            `energy: stage "array": want an object`,
		`{"stage":3}`:                    `energy: stage.stage "number": want text`,
		`{"stage":"adult","animal":[1]}`: `energy: animal "array": want an object`,
	} {
		var s energy.Stored
		if err := json.Unmarshal([]byte(in), &s); err == nil || err.Error() != want {
			t.Errorf("%s\ngot  %v\nwant %s", in, err, want)
		}
	}
}

func TestStageIsGivenByValue(t *testing.T) {
	for s, hint := range map[energy.Stage]string{
		&energy.Adult{}: "(give the value, not a pointer to it)",
		nil:             "(not given)",
	} {
		if _, err := energy.Compare(s); err == nil || !strings.HasSuffix(err.Error(), hint) {
			t.Errorf("%T: %v, want %s", s, err, hint)
		}
	}
}

func TestNameThatTurnsTheLineIsRefused(t *testing.T) {
	for _, by := range []string{"Dr\u2028X", "Dr \u202eX", "Dr\nX", "\u3164", strings.Repeat("X", 257)} {
		refused(t, energy.Prescribed{Daily: 300, By: by}, "by",
			`energy: by `+strconv.Quote(by)+`: want the name of the veterinarian who set the energy, on one line`)
	}
	estimate(t, energy.Prescribed{Daily: 300, By: "Dr\u00a0Ysolde Crake"})
}
