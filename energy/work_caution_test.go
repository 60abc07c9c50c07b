package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func TestNothingIsAddedForColdAndThatIsSaid(t *testing.T) {
	for _, s := range []energy.Stage{exercised(energy.LightExercise), ran(16*kg, 20*km), timed(16*kg, 20*km, 90)} {
		cautioned(t, s, advice.Note, "nothing is added for cold")
		cautioned(t, s, advice.Note, "a starting estimate")
	}
	silent(t, adultOf(energy.Dog)(16*kg), "cold")
}

func TestHeavyExerciseIsCautionedWithItsRange(t *testing.T) {
	cautioned(t, exercised(energy.HeavyExercise), advice.Warn, "published as 2240 kcal to 4480 kcal, a twofold range")
	silent(t, exercised(energy.ModerateExercise), "twofold")
	silent(t, ran(16*kg, 200*km), "twofold")
}

// 8 × 560 = 4480 = 1008 + 16 × 217; 1008 + 16 × 300 = 5808, 10.37 times 560.
func TestBeyondHeavyExerciseIsReferred(t *testing.T) {
	silent(t, ran(16*kg, 217*km), "beyond heavy exercise")
	cautioned(t, ran(16*kg, 218*km), advice.Refer, "beyond heavy exercise")
	cautioned(t, ran(16*kg, 300*km), advice.Refer, "10.4 times the resting energy, beyond heavy exercise (4 to 8 times)")
	silent(t, exercised(energy.HeavyExercise), "beyond heavy exercise")
}

func TestDayOfRestIsCautioned(t *testing.T) {
	const rest = "on a day of rest feed the maintenance"
	cautioned(t, exercised(energy.LightExercise), advice.Note, rest+", by Adult")
	for _, s := range []energy.Stage{ran(16*kg, 20*km), timed(16*kg, 20*km, 90)} {
		cautioned(t, s, advice.Note, "the maintenance, 1008 kcal, holds a pet's usual walks: count only the distance beyond them, and "+rest)
	}
}

// By hand: 32 × (1.77 × 10 × 0.25 + 1.25 × 0.420448) = 158.4, and 0.7 × 32 × 10 =
// 224. A dog of 1 kg: 18.95 against 7.
func TestTwoTermBelowTheMeasuredCostIsCautioned(t *testing.T) {
	cautioned(t, timed(32*kg, 10*km, 60), advice.Warn, "adds 158 kcal for the work where the measured cost of running gives 224 kcal or more")
	silent(t, timed(1*kg, 10*km, 60), "measured cost")
	silent(t, ran(32*kg, 10*km), "measured cost")
}

func TestStatusIsCautionedOnlyWhereItIsUsed(t *testing.T) {
	s := ran(16*kg, 20*km)
	s.Status = energy.Unknown
	cautioned(t, s, advice.Warn, "neuter status unknown: the lower figure was used")
	x := exercised(energy.LightExercise)
	x.Status = energy.Unknown
	silent(t, x, "neuter status")
}

func TestWorkerIsCautionedAsAnAdult(t *testing.T) {
	young := exercised(energy.LightExercise)
	young.Animal.Age = 8 * energy.Month
	cautioned(t, young, advice.Warn, "8 mo old: while it grows, maintenance is too little")
	cautioned(t, ran(88*kg, 20*km), advice.Warn, "88 kg is unusual for an adult dog")
}
