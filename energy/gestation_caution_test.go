package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func TestUnknownWeekOfGestationCountsAsLateAndIsSaid(t *testing.T) {
	const text = "week of gestation not known: counted as late gestation"
	for _, m := range []energy.Method{energy.NRC2006, energy.FactorOnRER} {
		unknown, last := pregnant(energy.Dog, 20*kg, 0, m), pregnant(energy.Dog, 20*kg, 9, m)
		cautioned(t, unknown, advice.Warn, text)
		silent(t, last, text)
		if a, b := estimate(t, unknown).Daily, estimate(t, last).Daily; a != b {
			t.Errorf("%v: %v with the week unknown, %v in the last", m, a, b)
		}
	}
	cautioned(t, pregnant(energy.Cat, 4*kg, 0, energy.FactorOnRER), advice.Warn, text)
	// These have one figure for every week.
	silent(t, pregnant(energy.Cat, 4*kg, 0, energy.NRC2006), text)
	silent(t, pregnant(energy.Ferret, 1*kg, 0, 0), text)
}

func TestWeekAfterTheLastOfGestationIsReferred(t *testing.T) {
	for _, tt := range []struct {
		species energy.Species
		last    int
		text    string
	}{
		{energy.Dog, 9, "week 10: birth is due or overdue, call the veterinarian; the figure is that of week 9, and the least she needs"},
		{energy.Cat, 9, "week 10: birth is due or overdue, call the veterinarian; the figure is that of week 9, and the least she needs"},
		{energy.Ferret, 6, "week 7: birth is due or overdue, call the veterinarian; the figure is that of week 6, and the least she needs"},
	} {
		in, past := pregnant(tt.species, 2*kg, tt.last, 0), pregnant(tt.species, 2*kg, tt.last+1, 0)
		silent(t, in, "overdue")
		cautioned(t, past, advice.Refer, tt.text)
		if a, b := estimate(t, in).Daily, estimate(t, past).Daily; a != b {
			t.Errorf("%v: %v in the last week, %v after it", tt.species, a, b)
		}
	}
}

func TestWeightBeforeMatingNotGivenIsCautioned(t *testing.T) {
	const text = "weight before mating not given"
	for _, tt := range []struct {
		species energy.Species
		week    int
		level   advice.Level
		more    string
	}{
		{energy.Dog, 4, advice.Note, "late in gestation it is up to 25 % more"},
		{energy.Dog, 5, advice.Warn, "late in gestation it is up to 25 % more"},
		{energy.Dog, 0, advice.Warn, "late in gestation it is up to 25 % more"},
		{energy.Cat, 6, advice.Warn, "about 1 to 1.5 kg more"},
		{energy.Ferret, 5, advice.Warn, "well above that"},
	} {
		s := pregnant(tt.species, 2*kg, tt.week, 0)
		silent(t, s, text)
		s.WeightBeforeMating = 0
		cautioned(t, s, tt.level, text)
		cautioned(t, s, tt.level, tt.more)
	}
}

func TestNoGainLateInGestationIsCautioned(t *testing.T) {
	const text = "and no heavier than before mating"
	s := energy.Gestation{Animal: animal(energy.Dog, 18*kg), Week: 7, WeightBeforeMating: 18 * kg}
	cautioned(t, s, advice.Warn, "week 7, "+text)
	s.Week = 6
	silent(t, s, text)
	s.Week = 0 // not known
	silent(t, s, text)
	s.Week, s.Animal.Weight = 8, 18.1*kg
	silent(t, s, text)
	s.Animal.Weight = 17.9 * kg // of which more is said
	silent(t, s, text)
}

func TestLossSinceMatingIsCautioned(t *testing.T) {
	const text = "is less than before mating"
	s := energy.Gestation{Animal: animal(energy.Dog, 18*kg), Week: 5, WeightBeforeMating: 18 * kg}
	silent(t, s, text)
	s.WeightBeforeMating = 19 * kg
	cautioned(t, s, advice.Warn, "18 kg is less than before mating, 19 kg: weigh again and find the cause")
	s.WeightBeforeMating = 20 * kg // 18 is 10 % less
	cautioned(t, s, advice.Refer, "18 kg is less than before mating, 20 kg: a veterinarian must see her")
}

// An overweight animal is told to be scored again, and no more than that.
func TestNoWeightLossInGestationAndLactation(t *testing.T) {
	const text = "plan it for when the young are weaned"
	for _, score := range []int{6, 7} {
		a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Condition: energy.BCS9(score)}
		for _, s := range []energy.Stage{
			energy.Gestation{Animal: a, Week: 3},
			energy.Lactation{Animal: a, Young: 4, Week: 3},
		} {
			if score < 7 {
				silent(t, s, text)
				continue
			}
			cautioned(t, s, advice.Warn, text)
		}
	}
}

func TestYoungAdultInGestationAndLactationIsCautioned(t *testing.T) {
	for _, s := range []func(energy.Animal) energy.Stage{
		func(a energy.Animal) energy.Stage { return energy.Gestation{Animal: a, Week: 3} },
		func(a energy.Animal) energy.Stage { return energy.Lactation{Animal: a, Young: 2, Week: 3} },
	} {
		a := energy.Animal{Species: energy.Cat, Weight: 3 * kg, Age: 6 * energy.Month}
		cautioned(t, s(a), advice.Warn, "6 mo old: if it still grows, it needs more than this")
		a.Age = energy.Year
		silent(t, s(a), "still grows")
	}
}

func TestGestationIsFedSmallAmountsOften(t *testing.T) {
	const text = "feed small amounts often, or free choice"
	cautioned(t, pregnant(energy.Dog, 20*kg, 2, 0), advice.Note, text)
	cautioned(t, pregnant(energy.Cat, 4*kg, 8, 0), advice.Note, text)
	silent(t, pregnant(energy.Ferret, 1*kg, 2, 0), text)
}

func TestPregnantJillIsCautioned(t *testing.T) {
	jill := pregnant(energy.Ferret, 1*kg, 2, 0)
	cautioned(t, jill, advice.Warn, "a jill's energy was never measured")
	cautioned(t, jill, advice.Warn, "off her food for a day is an emergency")
	silent(t, pregnant(energy.Cat, 4*kg, 2, 0), "jill")
}

func TestUnusualWeightInGestationAndLactationIsCautioned(t *testing.T) {
	cautioned(t, pregnant(energy.Cat, 9*kg, 5, 0), advice.Warn, "9 kg is unusual for an adult cat")
	cautioned(t, nursing(energy.Cat, 9*kg, 4, 3, 0), advice.Warn, "9 kg is unusual for an adult cat")
}

func TestGestationAndLactationAreStartingEstimates(t *testing.T) {
	for _, species := range []energy.Species{energy.Dog, energy.Cat, energy.Ferret} {
		cautioned(t, pregnant(species, 2*kg, 5, 0), advice.Note, "a starting estimate")
		cautioned(t, nursing(species, 2*kg, 4, 3, 0), advice.Note, "a starting estimate")
	}
}
