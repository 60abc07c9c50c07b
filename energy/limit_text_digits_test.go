package energy_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A limit that is written is taken when it is typed, the whole kilocalorie beyond
// it is not.
func TestLimitOfAnIntakeIsTakenAsItIsWritten(t *testing.T) {
	// By hand: 4 kg have 70 × 2.82843 = 197.99 kcal, 0.6 of it 118.79.
	cat := energy.Animal{Species: energy.Cat, Weight: 4 * kg, Condition: energy.BCS9(5)}
	if got := refusal(energy.Observed{Animal: cat, Intake: 118}); !strings.HasPrefix(got, "under 119 kcal, which is 0.6 of the resting energy") {
		t.Errorf("118 kcal: %q", got)
	}
	estimate(t, energy.Observed{Animal: cat, Intake: 119})

	// By hand: 20 kg have 70 × 9.45742 = 662.02 kcal; three times that, rounded
	// up as it is written, 1987, and five thirds of it 3311.67.
	dog := energy.WeightLoss{Animal: energy.Animal{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(8)}, Intake: 3312}
	if err := failure(dog); err == nil || !strings.Contains(err.Error(), "want at most 3311 kcal a day, far above") {
		t.Errorf("3312 kcal: %v", err)
	}
	dog.Intake = 3311
	estimate(t, dog)
}

// By hand: 20 kg have 662.02 kcal, 15 times that is 9930.3; maintenance, 1.6 times,
// is 1059.2, and 450 km more are 20 × 450 = 9000.
func TestMostOfADaysWorkIsRoundedInwards(t *testing.T) {
	s := energy.Work{Animal: animal(energy.Dog, 20*kg), Status: energy.Neutered, Distance: 450 * units.Kilometre}
	const want = "a day of at most 15 times the resting energy, 9930 kcal: this one is 10060 kcal"
	if err := failure(s); err == nil || !strings.Contains(err.Error(), want) {
		t.Errorf("%v, want %s", err, want)
	}
}

// By hand: 60 kg at 6/9 are 60 / 1.1 = 54.5454… kg. What was typed is quoted as it
// was.
func TestIdealWeightThatWasWorkedOutIsRounded(t *testing.T) {
	a := energy.Animal{Species: energy.Dog, Weight: 60 * kg, Condition: energy.BCS9(6)}
	for ideal, want := range map[units.Mass]string{0: "54.545 kg", 54.5454 * kg: "54.5454 kg"} {
		a.Ideal = ideal
		_, err := energy.WeightLoss{Animal: a, Method: energy.RERLinear}.Estimate()
		var fault *units.FieldError
		if !errors.As(err, &fault) || fault.Value != want {
			t.Errorf("%v, want %s refused", err, want)
		}
	}
}

// By hand: 112 g at 22.5 kcal for each 100 g are 25.2 kcal, 20 and 26 for each of
// them 22.4 and 29.12.
func TestStoredFigureIsAskedForWithoutItsLastBits(t *testing.T) {
	record := func(daily string) string {
		return `{"stage":{"stage":"nursling","animal":{"species":"cat","weight":"112 g","age":"8 d"}},"weight":"112 g","basis":"current",` +
			`"method":"per_kilogram","daily":"` + daily + `","low":"22.4 kcal","high":"29.12 kcal","reweigh":"1 d"}`
	}
	var e energy.Estimate
	err := json.Unmarshal([]byte(record("52.2 kcal")), &e)
	if err == nil || !strings.HasSuffix(err.Error(), `daily "52.2 kcal": want 25.2 kcal, as the stage gives it`) {
		t.Errorf("%v, want 25.2 kcal asked for", err)
	}
	if err := json.Unmarshal([]byte(record("25.2 kcal")), &e); err != nil {
		t.Error(err)
	}

	// By hand: 1.2 × 70 × √8 are 237.587878478680; what is asked for is taken.
	cat := `{"stage":{"stage":"adult","animal":{"species":"cat","weight":"4 kg"},"status":"neutered"},"weight":"4 kg","basis":"current",` +
		`"method":"factor_on_rer","daily":"237.6 kcal","low":"118.79393923934 kcal","high":"356.38181771802 kcal","reweigh":"2 wk"}`
	const want = "237.5878784787 kcal"
	if err := json.Unmarshal([]byte(cat), &e); err == nil || !strings.HasSuffix(err.Error(), "want "+want+", as the stage gives it") {
		t.Errorf("%v, want %s asked for", err, want)
	}
	if err := json.Unmarshal([]byte(strings.Replace(cat, "237.6 kcal", want, 1)), &e); err != nil {
		t.Error(err)
	}
}

// A kilogram is written as one, and less in grams.
func TestKilogramAndGram(t *testing.T) {
	for w, want := range map[units.Mass]string{1000: "given     cat, 1 kg\n", 999: "given     cat, 999 g\n"} {
		a := animal(energy.Cat, w)
		text := estimate(t, energy.Prescribed{Animal: a, Daily: 120, By: "Dr A. Example"}).Explain()
		if !strings.Contains(strings.Replace(text, ", condition not scored", "", 1), want) {
			t.Errorf("%v: no %q in\n%s", w, want, text)
		}
	}
}

// An estimate that was put together without saying when to weigh again says nothing
// of it.
func TestNoNextWeighingWhereNoneIsSaid(t *testing.T) {
	for reweigh, want := range map[energy.Age]bool{0: false, 1: true} {
		text := energy.Estimate{Animal: animal(energy.Dog, 16*kg), Daily: 900, Reweigh: reweigh}.Explain()
		if strings.Contains(text, "\nnext ") != want {
			t.Errorf("%d days: want a next weighing: %t in\n%s", reweigh, want, text)
		}
	}
}
