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

// Pounds make kilograms of nine decimals. What is held against them is written to
// the gram, on the side that is taken: 5.9 lb are 2.676194983 kg.
func TestLimitThatIsAnotherWeightIsTakenAsItIsWritten(t *testing.T) {
	const lb = units.Pound
	fat := energy.Animal{Species: energy.Cat, Weight: 5.9 * lb, Condition: energy.BCS9(6)}
	thin := energy.Animal{Species: energy.Cat, Weight: 5.9 * lb, Condition: energy.BCS9(4)}
	for _, tt := range []struct {
		text    string
		with    func(units.Mass) energy.Stage
		refused units.Mass
		taken   units.Mass // 0: that is no weight which is written
	}{
		{"want at most the expected adult weight of 2.676 kg", func(w units.Mass) energy.Stage { return kitten(w, 5.9*lb, 200) }, 2677, 2676},
		{"want below the current 2.676 kg", func(w units.Mass) energy.Stage {
			a := fat
			a.Ideal = w
			return energy.WeightLoss{Animal: a}
		}, 2677, 2676},
		{"want above the current 2.677 kg", func(w units.Mass) energy.Stage {
			a := thin
			a.Ideal = w
			return energy.WeightGain{Animal: a}
		}, 2676, 2677},
		{"want a weight from half to three times the current 2.676 kg", func(w units.Mass) energy.Stage {
			a := thin
			a.Ideal = w
			return energy.Adult{Animal: a, Status: energy.Neutered}
		}, 9000, 0},
		{"want a weight between half and twice the current 2.676 kg", func(w units.Mass) energy.Stage {
			return energy.Observed{Animal: thin, Intake: 180, Before: w}
		}, 9000, 0},
		{"want one from which the current 2.676 kg is at most 50 % less or 75 % more", func(w units.Mass) energy.Stage {
			return energy.Gestation{Animal: thin, WeightBeforeMating: w}
		}, 9000, 0},
		{"a fiftieth of the expected adult weight of 53.524 kg", func(w units.Mass) energy.Stage { return puppy(w, 118*lb, 30) }, 1000, 0},
		{"one and a half times the current 267.6 g", func(w units.Mass) energy.Stage {
			s := nursling(energy.Dog, 0.59*lb, 10)
			s.DayBefore = w
			return s
		}, 100, 0},
	} {
		if err := failure(tt.with(tt.refused)); err == nil || !strings.Contains(err.Error(), tt.text) {
			t.Errorf("%v: %v\nwant %s", tt.refused, err, tt.text)
		}
		if tt.taken != 0 {
			estimate(t, tt.with(tt.taken))
		}
	}
	a := energy.Animal{Species: energy.Cat, Weight: 5.9 * lb, Ideal: 5.353 * kg}
	if _, err := energy.IdealWeight(a, 0); err == nil || !strings.Contains(err.Error(), "at most twice the current 2.676 kg") {
		t.Errorf("%v, want twice 2.676 kg", err)
	}
}

// A slip is asked back to the milligram at most: 48.8 lb are
// 22.135307656 kg.
func TestSlipIsAskedBackWithoutTheLastBitsOfAConversion(t *testing.T) {
	_, err := energy.Adult{Animal: animal(energy.Cat, 48.8*units.Pound), Status: energy.Neutered}.Estimate()
	var fault *units.FieldError
	if !errors.As(err, &fault) || fault.Hint != "pounds? 22.135308 lb is 10.04 kg" {
		t.Errorf("%v, want 22.135308 lb asked back", err)
	}
}
