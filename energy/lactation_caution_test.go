package energy_test

import (
	"fmt"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func TestEveryLactationIsFreeChoiceAndAFloorButAJills(t *testing.T) {
	for _, s := range []energy.Lactation{
		nursing(energy.Dog, 20*kg, 4, 2, energy.NRC2006),
		nursing(energy.Dog, 20*kg, 12, 9, energy.FactorOnRER),
		nursing(energy.Cat, 4*kg, 1, 0, energy.NRC2006),
		nursing(energy.Cat, 4*kg, 5, 7, energy.FactorOnRER),
	} {
		cautioned(t, s, advice.Warn, "feed free choice: the figure is a floor")
	}
	jill := nursing(energy.Ferret, 1*kg, 8, 3, energy.PerKilogram)
	cautioned(t, jill, advice.Warn, "feed free choice, food in reach at all times: the figure is a guide")
	silent(t, jill, "floor")
}

func TestMoreThanEightPuppiesAreReferred(t *testing.T) {
	for _, m := range []energy.Method{energy.NRC2006, energy.FactorOnRER} {
		for _, puppies := range []int{9, 15, 24} {
			text := fmt.Sprintf("%d puppies: no full figure is published beyond 8; she needs at least this, fed free choice", puppies)
			cautioned(t, nursing(energy.Dog, 30*kg, puppies, 3, m), advice.Refer, text)
		}
		silent(t, nursing(energy.Dog, 30*kg, 8, 3, m), "no full figure")
	}
	// NRC 2006 has one coefficient for more than four kittens.
	silent(t, nursing(energy.Cat, 4*kg, 9, 3, 0), "no full figure")
}

func TestWeekPastTheLastPublishedIsReferred(t *testing.T) {
	for species, last := range map[energy.Species]int{energy.Dog: 4, energy.Cat: 7} {
		in := nursing(species, 5*kg, 4, last, energy.NRC2006)
		silent(t, in, "figures are published up to")
		for week := last + 1; week <= 10; week++ {
			past := nursing(species, 5*kg, 4, week, energy.NRC2006)
			text := fmt.Sprintf("week %d: figures are published up to week %d; while she nurses she needs at least the last of them, fed free choice", week, last)
			cautioned(t, past, advice.Refer, text)
			if a, b := estimate(t, in).Daily, estimate(t, past).Daily; a != b {
				t.Errorf("%v: %v in week %d, %v in week %d", species, a, last, b, week)
			}
		}
		cautioned(t, nursing(species, 5*kg, 4, last+1, energy.FactorOnRER), advice.Refer, fmt.Sprintf("figures are published up to week %d", last))
		silent(t, nursing(species, 5*kg, 4, last, energy.FactorOnRER), "figures are published up to")
	}
}

func TestJillThatNursesPastWeaningIsReferred(t *testing.T) {
	silent(t, nursing(energy.Ferret, 1*kg, 6, 6, 0), "figures are published up to")
	cautioned(t, nursing(energy.Ferret, 1*kg, 6, 7, 0), advice.Refer, "week 7: figures are published up to week 6")
}

func TestUnknownWeekOfLactationCountsAsThePeakAndIsSaid(t *testing.T) {
	for species, peak := range map[energy.Species]int{energy.Dog: 4, energy.Cat: 3} {
		unknown := nursing(species, 5*kg, 4, 0, energy.NRC2006)
		cautioned(t, unknown, advice.Warn, fmt.Sprintf("week of lactation not known: counted as the peak, week %d", peak))
		for week := 1; week <= 10; week++ {
			known := nursing(species, 5*kg, 4, week, energy.NRC2006)
			silent(t, known, "week of lactation not known")
			if a, b := estimate(t, unknown).Daily, estimate(t, known).Daily; a < b || week == peak && a != b {
				t.Errorf("%v: %v with the week unknown, %v in week %d", species, a, b, week)
			}
		}
		silent(t, nursing(species, 5*kg, 4, 0, energy.FactorOnRER), "week of lactation not known")
	}
}

func TestSignsOfEclampsiaAreAnEmergency(t *testing.T) {
	const text = "possible low blood calcium"
	cautioned(t, nursing(energy.Dog, 4*kg, 4, 3, 0), advice.Warn, text)
	cautioned(t, nursing(energy.Cat, 4*kg, 4, 3, 0), advice.Warn, text)
	silent(t, nursing(energy.Ferret, 1*kg, 4, 3, 0), text)
}

func TestNursingJillIsCautioned(t *testing.T) {
	cautioned(t, nursing(energy.Ferret, 1*kg, 4, 3, 0), advice.Warn, "a jill's energy was never measured")
	silent(t, nursing(energy.Cat, 4*kg, 4, 3, 0), "jill")
}
