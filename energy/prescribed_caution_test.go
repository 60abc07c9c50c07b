package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

func prescribe(a energy.Animal, daily units.Energy) energy.Stage {
	return energy.Prescribed{Animal: a, Daily: daily, By: "Dr A. Example"}
}

// The dog of 16 kg has a resting energy of 70 × 8 = 560 kcal, for 16^0.75 is 8:
// what is expected is 280 to 1680 kcal.
func TestPrescribedOutsideTheUsualRangeOffersTheSlip(t *testing.T) {
	dog, ferret := animal(energy.Dog, 16*kg), animal(energy.Ferret, 1*kg)
	const ends = " 0.5 to 3 times its resting energy (280 kcal to 1680 kcal)"
	const ferretEnds = " 200 kcal/kg to twice 300 kcal/kg (200 kcal to 600 kcal)"
	thin := dog
	thin.Condition = energy.BCS9(1)
	const danger = "; a ferret fed so little is in danger of low blood sugar"
	for _, tt := range []struct {
		name  string
		stage energy.Stage
		level advice.Level
		text  string
	}{
		// 4184 kJ are 1000 kcal.
		{
			"kilojoules", prescribe(dog, 4184), advice.Refer,
			"check the prescribed 4184 kcal, above" + ends + ": kilojoules? that is 1000 kcal, one digit too many? that is 418 kcal",
		},
		{
			"tenfold", prescribe(dog, 9000), advice.Refer,
			"check the prescribed 9000 kcal, above" + ends + ": one digit too many? that is 900 kcal",
		},
		{
			"one of three meals", prescribe(dog, 100), advice.Refer,
			"check the prescribed 100 kcal, below" + ends + ": one of 3 meals? the day is 300 kcal, one of 4 meals? the day is 400 kcal, one digit too few? that is 1000 kcal",
		},
		{
			"one of two meals", prescribe(dog, 250), advice.Warn,
			"check the prescribed 250 kcal, below" + ends + ": one of 2 meals? the day is 500 kcal, one of 3 meals? the day is 750 kcal, one of 4 meals? the day is 1000 kcal",
		},
		{
			"no likely slip", prescribe(dog, 20), advice.Refer,
			"check the prescribed 20 kcal, below" + ends,
		},
		{
			"a point between thousands", prescribe(dog, 1.25), advice.Refer,
			"check the prescribed 1 kcal, below" + ends + ": a point between thousands, or Mcal? that is 1250 kcal",
		},
		{
			"a thin dog above its resting energy", prescribe(thin, 561), advice.Refer,
			"check the prescribed 561 kcal: refeeding starts at a part of the resting energy, 560 kcal, and ends at it",
		},
		{
			"ferret below its range", prescribe(ferret, 150), advice.Warn,
			"check the prescribed 150 kcal, below" + ferretEnds + ": one of 2 meals? the day is 300 kcal, one of 3 meals? the day is 450 kcal, one of 4 meals? the day is 600 kcal",
		},
		{
			"ferret far below its range", prescribe(ferret, 45), advice.Refer,
			"check the prescribed 45 kcal, below" + ferretEnds + ": one digit too few? that is 450 kcal" + danger,
		},
		{
			"ferret above its range", prescribe(ferret, 2092), advice.Refer,
			"check the prescribed 2092 kcal, above" + ferretEnds + ": kilojoules? that is 500 kcal, one digit too many? that is 209 kcal",
		},
	} {
		t.Run(tt.name, func(t *testing.T) {
			for _, c := range estimate(t, tt.stage).Cautions() {
				if c.Level == tt.level && c.Text == tt.text {
					return
				}
			}
			t.Errorf("cautions %v\nwant %v %s", estimate(t, tt.stage).Cautions(), tt.level, tt.text)
		})
	}
}

func TestPrescribedAtTheEndsOfTheUsualRangeIsNotCautioned(t *testing.T) {
	for _, s := range []energy.Stage{
		prescribe(animal(energy.Dog, 16*kg), 280),
		prescribe(animal(energy.Dog, 16*kg), 1680),
		prescribe(animal(energy.Ferret, 1*kg), 200),
		prescribe(animal(energy.Ferret, 1*kg), 600),
	} {
		silent(t, s, "check the prescribed")
	}
}

func TestFerretFarBelowIsHalfOfItsLowEnd(t *testing.T) {
	ferret := animal(energy.Ferret, 1*kg)
	cautioned(t, prescribe(ferret, 100), advice.Warn, "check the prescribed")
	cautioned(t, prescribe(ferret, 99.9), advice.Refer, "low blood sugar")
}

func TestPrescribedWithNothingToHoldItAgainstSaysSo(t *testing.T) {
	const nothing = "nothing to hold the prescribed energy against"
	cautioned(t, prescribe(energy.Animal{}, 250), advice.Warn, nothing)
	cautioned(t, prescribe(energy.Animal{Species: energy.Dog}, 250), advice.Warn, nothing)
	cautioned(t, prescribe(animal(energy.Other, 2*kg), 250), advice.Warn, nothing)
	silent(t, prescribe(animal(energy.Dog, 16*kg), 500), nothing)
}
