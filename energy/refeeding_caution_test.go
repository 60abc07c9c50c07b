package energy_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

func TestRefeedingIsReferredBeforeTheFigure(t *testing.T) {
	for _, s := range []energy.Refeeding{
		refeed(patient, energy.FullLadder(), 1),
		refeed(patient, energy.FullLadder(), 30),
		refeed(animal(energy.Dog, 16*kg), ownLadder(t, 25), 1),
	} {
		text := estimate(t, s).Explain()
		if !strings.HasPrefix(text, "caution   refer: weakness, wobbling, dullness") {
			t.Errorf("the signs to stop at aren't first in\n%s", text)
		}
	}
}

// Côté 2020: 24 h to 10 days. Koret: bloods for 5 to 7 days.
func TestDangerAndBloodsEndWithTheirDays(t *testing.T) {
	own := ownLadder(t, 25)
	const danger, bloods, sugar = "the danger runs from 24 hours to 10 days", "blood salts (phosphorus, potassium and magnesium)", "blood sugar"
	cautioned(t, refeed(patient, own, 10), advice.Refer, danger)
	silent(t, refeed(patient, own, 11), danger)
	for _, text := range []string{bloods, sugar} {
		cautioned(t, refeed(patient, own, 7), advice.Refer, text)
		silent(t, refeed(patient, own, 8), text)
	}
	for _, day := range []int{1, 10, 11, math.MaxInt} {
		cautioned(t, refeed(patient, own, day), advice.Refer, "seizures or collapse: stop feeding")
		cautioned(t, refeed(patient, own, day), advice.Warn, "4 to 6 meals a day")
		cautioned(t, refeed(patient, own, day), advice.Warn, "feed only once fluids and blood salts are put right")
	}
}

func TestEndOfTheLadderIsCautioned(t *testing.T) {
	const end = "the ladder ended on day 4, and its last step is no ration to stay on: Dr A. Example sets what follows"
	silent(t, refeed(patient, energy.FourDayLadder(), 4), "the ladder ended")
	cautioned(t, refeed(patient, energy.FourDayLadder(), 5), advice.Warn, end)
}

// The published step-up schedules start at 25 to 50 %.
func TestHighFirstStepOfAStarvedAnimalIsReferred(t *testing.T) {
	const high = "check the ladder: it starts at 50.1 % of resting energy, and step-up schedules in print at 25 to 50 %"
	thin := patient
	thin.Condition = energy.BCS9(2)
	unfed, light := patient, patient
	unfed.DaysUnfed, light.Ideal = 5, 7*kg
	for _, a := range []energy.Animal{thin, unfed, light} {
		cautioned(t, refeed(a, ownLadder(t, 50.1), 1), advice.Refer, high)
		cautioned(t, refeed(a, ownLadder(t, 50.1, 100), 2), advice.Refer, high)
		silent(t, refeed(a, ownLadder(t, 50, 100), 2), "check the ladder")
	}
	silent(t, refeed(patient, ownLadder(t, 100), 1), "check the ladder")
	silent(t, refeed(patient, energy.FullLadder(), 1), "check the ladder")
}

func TestGrowingPregnantAndLactatingAreReferred(t *testing.T) {
	const text = "growing, pregnant or lactating: refeeding is more dangerous"
	for _, c := range []energy.Circumstances{energy.Growing, energy.Pregnant, energy.Lactating} {
		a := patient
		a.Circumstances |= c
		cautioned(t, refeed(a, energy.ThreeDayLadder(), 1), advice.Refer, text)
	}
	a := patient
	a.Age = 6*energy.Month - 1
	cautioned(t, refeed(a, energy.ThreeDayLadder(), 1), advice.Refer, text)
	a.Age = 6 * energy.Month
	silent(t, refeed(a, energy.ThreeDayLadder(), 1), text)
	silent(t, refeed(patient, energy.ThreeDayLadder(), 1), text)
}

func TestNamedLadderIsCautioned(t *testing.T) {
	const text = " is a hospital schedule, and none in print is made for starvation"
	for _, l := range namedLadders() {
		cautioned(t, refeed(patient, l, 1), advice.Warn, l.String()+text)
	}
	silent(t, refeed(patient, ownLadder(t, 25), 1), text)
}

func TestUnusualWeightOfAnAdultInRefeedingIsCautioned(t *testing.T) {
	for weight, want := range map[units.Mass]string{
		9 * kg:   "9 kg is unusual for an adult cat: if it was pounds, the weight is 4.08 kg", // × 0.45359237
		2.3 * kg: "", 8 * kg: "",
	} {
		a := energy.Animal{Species: energy.Cat, Weight: weight, Condition: energy.BCS9(5)}
		s := refeed(a, energy.FullLadder(), 1)
		if want == "" {
			silent(t, s, "unusual")
			continue
		}
		cautioned(t, s, advice.Warn, want)
		for _, age := range []energy.Age{5 * energy.Week, 5 * energy.Month} {
			s.Animal.Age = age
			silent(t, s, "unusual")
		}
	}
}

func TestRefeedingIsNoEstimateToCorrect(t *testing.T) {
	silent(t, refeed(patient, energy.ThreeDayLadder(), 1), "correct it")
	cautioned(t, refeed(patient, energy.ThreeDayLadder(), 1), advice.Note, "only Dr A. Example changes a step")
}

func TestEveryCautionOfRefeedingHasLevelTextAndSource(t *testing.T) {
	for _, s := range []energy.Refeeding{
		refeed(patient, energy.ThreeDayLadder(), 1),
		refeed(energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(1), Circumstances: energy.Growing}, ownLadder(t, 60), 3),
	} {
		for _, c := range estimate(t, s).Cautions() {
			if c.Level == 0 || c.Text == "" || c.Source.Seen == 0 {
				t.Errorf("%+v", c)
			}
		}
	}
}
