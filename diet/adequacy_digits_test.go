package diet_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// said returns the cautions that hold the words.
func said(list []advice.Caution, words string) (found []advice.Caution) {
	for _, c := range list {
		if strings.Contains(c.Text, words) {
			found = append(found, c)
		}
	}
	return found
}

// A figure is met to 1e-12 of it (ours).
func TestAFigureIsMetToItsLastBits(t *testing.T) {
	for off, want := range map[diet.PerMcal]bool{-0.9e-12: true, -1.2e-12: false, -1.8e-12: false, 0.9e-12: true, 1.2e-12: false, 1.8e-12: false} {
		a := fedDog(t, diet.FEDIAF, 110)
		a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Fat: 13.75 * (1 + off)})
		if f := findingOf(t, a, diet.Fat, diet.Minimum); (f.Margin == 0) != want || f.Short() != (off < -1e-12) {
			t.Errorf("%v: %+v", float64(off), f)
		}
	}
}

// FEDIAF's lower intakes, 95 kcal/kg^0.75 and 75 kcal/kg^0.67 (Table III-4; of
// dogs from memory), are where AAFCO's figures can't be relied on: ours.
func TestALowIntakeByAAFCO(t *testing.T) {
	for _, tt := range []struct {
		a    diet.Adequacy
		want advice.Level
	}{
		{fedDog(t, diet.AAFCO, 94.9), advice.Warn},
		{fedDog(t, diet.AAFCO, 95), advice.Note},
		{fedDog(t, diet.AAFCO, 95.9), advice.Note},
		{fedCat(t, diet.AAFCO, 74.9), advice.Warn},
		{fedCat(t, diet.AAFCO, 75.1), advice.Note},
		{fedCat(t, diet.AAFCO, 75.9), advice.Note},
	} {
		list := said(tt.a.Cautions(), "tied to no intake")
		if len(list) != 1 || list[0].Level != tt.want {
			t.Errorf("%v at %v: %v, want %v", tt.a.Animal.Species, tt.a.Daily, list, tt.want)
		}
	}
}

// One nutrient that isn't given is said; none isn't.
func TestOneNutrientNotJudged(t *testing.T) {
	given := map[diet.Nutrient]diet.PerMcal{diet.Protein: 80, diet.Fat: 30, diet.Calcium: 2}
	a := fedDog(t, diet.NRC2006, 130)
	a.Profile = profileOf(t, given)
	if list := said(a.Cautions(), "doesn't give it: phosphorus;"); len(list) != 1 {
		t.Errorf("%v", a.Cautions())
	}
	given[diet.Phosphorus] = 1.5
	a.Profile = profileOf(t, given)
	if list := said(a.Cautions(), "not judged"); len(list) != 0 {
		t.Errorf("%v", list)
	}
}

// Amounts are written to two decimals, below 1 to three digits, and never beyond
// the twelfth decimal.
func TestAmountsOfNutrientsAsText(t *testing.T) {
	cat := fedCat(t, diet.FEDIAF, 100)
	for have, want := range map[diet.PerMcal]string{
		0.1234: "taurine is short: 0.123 g/1000 kcal of", 1.234e-12: "taurine is short: 0.000000000001 g/1000 kcal of",
	} {
		cat.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Taurine: have})
		if len(said(cat.Cautions(), want)) != 1 {
			t.Errorf("%v, want %s", cat.Cautions(), want)
		}
	}
}

// The working of an intake: kcal to two decimals, the rest to three. 16 kg have 8
// kg^0.75, so that 560.125 kcal are 70.015625.
func TestIntakeInTheWorking(t *testing.T) {
	a := fedDog(t, diet.FEDIAF, 70)
	a.Daily = 560.125
	const want = "given     560.12 kcal a day, ideal weight 16 kg\n" +
		"formula   intake = kcal a day ÷ ideal kg^0.75\n" +
		"          = 560.12 ÷ 16^0.75 = 560.12 ÷ 8 = 70.016 kcal/kg^0.75\n"
	if text := a.Explain(); !strings.Contains(text, want) {
		t.Errorf("%s\nwant %s", text, want)
	}
	// At the reference intake nothing is scaled.
	if text := fedDog(t, diet.FEDIAF, 110).Explain(); !strings.Contains(text, "needed = printed: the intake is not below 110 kcal/kg^0.75") {
		t.Error(text)
	}
}

// Adult weights that a dog can have: 800 g to 120 kg, ours.
func TestAdultWeightsAtTheirEnds(t *testing.T) {
	for grams, want := range map[units.Mass]bool{0: true, 0.5: false, 1: false, 799.9: false, 800: true, 120000: true, 120001: false, -0.5: false} {
		if _, err := growingDog(t, diet.AAFCO, 0, grams).Check(); (err == nil) != want {
			t.Errorf("%v g: %v", float64(grams), err)
		}
	}
	// Half a kilocalorie is an energy, if a small one.
	a := fedDog(t, diet.AAFCO, 100)
	a.Daily = 0.5
	if _, err := a.Check(); err != nil {
		t.Error(err)
	}
}

// Below 6 months (ours) an animal is growing, from its first day.
func TestAnAgeSaysGrowing(t *testing.T) {
	adultFood := diet.Food{Label: diet.Label{Energy: 3500}, For: diet.Purpose{Species: diet.Dogs, Stages: diet.Maintenance}}
	for age, want := range map[energy.Age]bool{0: false, 1: true, 2: true, 6*energy.Month - 1: true, 6 * energy.Month: false, 7*energy.Month - 1: false} {
		list := said(adultFood.Cautions(energy.Animal{Species: energy.Dog, Age: age}), "not for a growing animal")
		if (len(list) == 1) != want {
			t.Errorf("%v: %v", age, list)
		}
	}
}
