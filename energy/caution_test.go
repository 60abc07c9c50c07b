package energy_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// cautioned reports whether the estimate has exactly one caution whose text
// holds this, and that of the level.
func cautioned(t *testing.T, s energy.Stage, level advice.Level, text string) {
	t.Helper()
	var found []advice.Caution
	for _, c := range estimate(t, s).Cautions() {
		if strings.Contains(c.Text, text) {
			found = append(found, c)
		}
	}
	if len(found) != 1 || found[0].Level != level {
		t.Errorf("%+v\ncautions of %q: %v, want one of level %v", s, text, found, level)
	}
}

// silent checks that no caution holds the text.
func silent(t *testing.T, s energy.Stage, text string) {
	t.Helper()
	for _, c := range estimate(t, s).Cautions() {
		if strings.Contains(c.Text, text) {
			t.Errorf("%+v: unexpected %v", s, c)
		}
	}
}

func TestAnimalIsCautioned(t *testing.T) {
	for _, tt := range []struct {
		name   string
		animal energy.Animal
		level  advice.Level
		text   string
	}{
		{"3/9", energy.Animal{Condition: energy.BCS9(3)}, advice.Warn, "thin (3/9)"},
		{"2/5", energy.Animal{Condition: energy.BCS5(2)}, advice.Warn, "thin (2/5)"},
		{"7/9", energy.Animal{Condition: energy.BCS9(7)}, advice.Warn, "overweight (7/9)"},
		{"9/9", energy.Animal{Condition: energy.BCS9(9)}, advice.Warn, "overweight (9/9)"},
		{"4/5", energy.Animal{Condition: energy.BCS5(4)}, advice.Warn, "overweight (4/5)"},
		{"not scored", energy.Animal{}, advice.Note, "condition not scored"},
		{"scored ferret", energy.Animal{Species: energy.Ferret, Weight: 1 * kg, Condition: energy.BCS9(5)}, advice.Note, "made for dogs and cats"},
		{"cat unfed a day", energy.Animal{Species: energy.Cat, DaysUnfed: 1}, advice.Refer, "never fast a cat"},
		{"cat unfed four days", energy.Animal{Species: energy.Cat, DaysUnfed: 4}, advice.Refer, "never fast a cat"},
		{"ferret unfed a day", energy.Animal{Species: energy.Ferret, Weight: 1 * kg, DaysUnfed: 1}, advice.Refer, "is an emergency"},
		{"dog unfed a day", energy.Animal{DaysUnfed: 1}, advice.Warn, "nothing eaten for a day"},
		{"dog unfed two days", energy.Animal{DaysUnfed: 2}, advice.Refer, "nothing eaten for 2 days"},
		{"diabetic", energy.Animal{Circumstances: energy.Diabetic}, advice.Refer, "food and amount only as the veterinarian orders (diabetic)"},
		{
			"several diseases",
			energy.Animal{Circumstances: energy.KidneyDisease | energy.LiverDisease},
			advice.Refer, "(kidney_disease liver_disease)",
		},
	} {
		t.Run(tt.name, func(t *testing.T) {
			a := tt.animal
			if a.Species == 0 {
				a.Species = energy.Dog
			}
			if a.Weight == 0 {
				a.Weight = 4 * kg
			}
			cautioned(t, energy.Adult{Animal: a, Status: energy.Intact}, tt.level, tt.text)
		})
	}
}

func TestMiddleScoreIsNotCautioned(t *testing.T) {
	for _, c := range []energy.Condition{energy.BCS9(4), energy.BCS9(5), energy.BCS5(3)} {
		a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Condition: c}
		got := estimate(t, energy.Adult{Animal: a, Status: energy.Intact}).Cautions()
		if len(got) != 1 || !strings.HasPrefix(got[0].Text, "a starting estimate") {
			t.Errorf("%v: %v, want only that it is a starting estimate", c, got)
		}
	}
}

func TestPrescribedForAGatedAnimalIsReferredFirst(t *testing.T) {
	for _, a := range []energy.Animal{
		{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(2)},
		{Species: energy.Dog, Weight: 20 * kg, DaysUnfed: 5},
	} {
		s := energy.Prescribed{Animal: a, Daily: 3000, By: "Dr A. Example"}
		if c := estimate(t, s).Cautions(); len(c) < 2 || c[0].Level != advice.Refer {
			t.Errorf("%v, want refer first", c)
		}
	}
}

func TestUnknownStatusTakesTheLowerFactorAndSaysSo(t *testing.T) {
	for _, species := range []energy.Species{energy.Dog, energy.Cat} {
		for _, m := range []energy.Method{energy.FactorOnRER, energy.NRC2006, energy.FEDIAF} {
			s := energy.Adult{Animal: animal(species, 5*kg), Status: energy.Unknown, Method: m}
			cautioned(t, s, advice.Warn, "neuter status unknown")
			for _, other := range []energy.Status{energy.Neutered, energy.Intact} {
				o := s
				o.Status = other
				if estimate(t, s).Daily > estimate(t, o).Daily {
					t.Errorf("%v %v: unknown gives more than %v", species, m, other)
				}
				silent(t, o, "neuter status unknown")
			}
		}
	}
	silent(t, energy.Adult{Animal: animal(energy.Ferret, 1*kg), Status: energy.Unknown}, "neuter status")
}

func TestFerretIsOfferedFoodAtAllTimes(t *testing.T) {
	cautioned(t, energy.Adult{Animal: animal(energy.Ferret, 1*kg)}, advice.Warn, "keep food in reach at all times")
	silent(t, adultOf(energy.Cat)(4*kg), "keep food in reach")
}

func TestLinearFormIsCautionedAboveThirtyKilograms(t *testing.T) {
	silent(t, linear(30*kg), "linear")
	cautioned(t, linear(step(30*kg, math.Inf(1))), advice.Warn, "the linear equation runs high")
	// 30 × 40 + 70 = 1270; 40^0.75 = 15.9054, × 70 = 1113.4.
	cautioned(t, linear(40*kg), advice.Warn, "1270 kcal against 1113 kcal by 70 × kg^0.75")
	silent(t, restingOf(energy.Dog)(40*kg), "linear")
}

func TestUnusualWeightIsCautioned(t *testing.T) {
	for _, tt := range []struct {
		species   energy.Species
		low, high units.Mass // the ends of what is usual
		weight    units.Mass
		text      string // a pound is 0.45359237 kg
	}{
		{energy.Dog, 1.5 * kg, 80 * kg, 88 * kg, "88 kg is unusual for an adult dog: if it was pounds, the weight is 39.92 kg"},
		{energy.Cat, 2.3 * kg, 8 * kg, 10 * kg, "10 kg is unusual for an adult cat: if it was pounds, the weight is 4.54 kg"},
		{energy.Cat, 2.3 * kg, 8 * kg, 4 * units.Pound, "1.814 kg is unusual for an adult cat: if kilograms were typed as pounds, the weight is 4 kg"},
		{energy.Ferret, 0.5 * kg, 2 * kg, 2.2 * kg, "2.2 kg is unusual for an adult ferret: if it was pounds, the weight is 1.00 kg"},
	} {
		cautioned(t, adultOf(tt.species)(tt.weight), advice.Warn, tt.text)
		for _, end := range []units.Mass{tt.low, tt.high} {
			silent(t, adultOf(tt.species)(end), "unusual")
		}
		cautioned(t, adultOf(tt.species)(step(tt.low, 0)), advice.Warn, "unusual")
		cautioned(t, adultOf(tt.species)(step(tt.high, math.Inf(1))), advice.Warn, "unusual")
	}
}

func TestIdealBelowAnAnimalThatIsNotOverweightIsCautioned(t *testing.T) {
	a := energy.Animal{Species: energy.Dog, Weight: 24.9 * kg, Ideal: 13 * kg, Condition: energy.BCS9(5)}
	const text = "the ideal weight, 13 kg, is below the current 24.9 kg, but 5/9 is not overweight: check both"
	cautioned(t, energy.Adult{Animal: a, Status: energy.Neutered}, advice.Warn, text)
	a.Condition = energy.BCS9(6)
	silent(t, energy.Adult{Animal: a, Status: energy.Neutered}, "check both")
	// The amount is that of the ideal weight: it does allow for the score.
	silent(t, energy.Adult{Animal: a, Status: energy.Neutered}, "above ideal")
	a.Ideal = 0
	cautioned(t, energy.Adult{Animal: a, Status: energy.Neutered}, advice.Note, "above ideal (6/9)")
}

func TestNothingIsSaidOfWhatTheStageSeesTo(t *testing.T) {
	fat := energy.Animal{Species: energy.Dog, Weight: 38.5 * kg, Condition: energy.BCS9(8)}
	silent(t, energy.WeightLoss{Animal: fat}, "plan a weight loss")
	cautioned(t, energy.Adult{Animal: fat, Status: energy.Neutered}, advice.Warn, "plan a weight loss")
	puppy := energy.Growth{
		Animal:      energy.Animal{Species: energy.Dog, Weight: 9 * kg, Age: 4 * energy.Month, Condition: energy.BCS9(8)},
		AdultWeight: 24 * kg,
	}
	cautioned(t, puppy, advice.Warn, "overweight (8/9): score again")
	silent(t, puppy, "weight loss on the ideal weight")
	bitch := energy.Lactation{Animal: fat, Young: 4, Week: 2}
	cautioned(t, bitch, advice.Warn, "overweight (8/9): score again")
	silent(t, bitch, "weight loss on the ideal weight")
	kitten := energy.Animal{Species: energy.Cat, Weight: 200 * units.Gram, Age: 10}
	silent(t, energy.Nursling{Animal: kitten}, "not scored")
}

func TestChangedEstimateIsReferred(t *testing.T) {
	e := estimate(t, energy.Prescribed{Animal: animal(energy.Cat, 4*kg), Daily: 20000, By: "Dr A. Example"})
	e.Animal.Condition = energy.BCS9(5)
	for _, c := range e.Cautions() {
		if c.Level == advice.Refer {
			return
		}
	}
	t.Errorf("no refer-level caution: %v", e.Cautions())
}

func TestCautionsAreSortedGravestFirst(t *testing.T) {
	a := energy.Animal{Species: energy.Cat, Weight: 9 * kg, DaysUnfed: 1, Circumstances: energy.Diabetic}
	c := estimate(t, energy.Adult{Animal: a, Status: energy.Unknown}).Cautions()
	seen := map[advice.Level]bool{}
	for i, x := range c {
		seen[x.Level] = true
		if i > 0 && c[i-1].Level < x.Level {
			t.Errorf("%v comes before %v", c[i-1], x)
		}
	}
	if len(seen) != 3 {
		t.Errorf("levels %v, want all three among %v", seen, c)
	}
}

func TestEveryCautionHasLevelTextAndSource(t *testing.T) {
	for _, s := range stages() {
		for _, c := range estimate(t, s).Cautions() {
			if c.Level == 0 || c.Text == "" || c.Source.Seen == 0 {
				t.Errorf("%T: %+v", s, c)
			}
		}
	}
}
