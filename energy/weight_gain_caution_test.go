package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func TestWeightGainIsCautioned(t *testing.T) {
	same := func(*energy.WeightGain) {}
	share := func(s *energy.WeightGain) { s.Method, s.Intake = energy.ShareOfIntake, 700 }
	old := func(s *energy.WeightGain) {
		s.Animal = energy.Animal{Species: energy.Cat, Weight: 4 * kg, Ideal: 4.5 * kg, Age: 10 * energy.Year}
	}
	cautioned(t, gain(same), advice.Warn, "the factor for weight gain is from memory")
	silent(t, gain(share), "from memory")
	cautioned(t, gain(share), advice.Warn, "no share for weight gain is published: 110 % is a small first step")
	cautioned(t, gain(same), advice.Warn, "find the cause of the loss before feeding for gain")
	cautioned(t, gain(same), advice.Note, "raise it slowly to this amount; at the ideal weight go over to Adult")
	cautioned(t, gain(same), advice.Note, "a starting estimate")

	// The thin and the far too light are told to look for a cause as animals.
	cautioned(t, gain(func(s *energy.WeightGain) { s.Animal.Condition = energy.BCS9(3) }), advice.Warn, "find the cause of the loss")
	cautioned(t, gain(func(s *energy.WeightGain) { s.Animal.Ideal = 17 * kg }), advice.Warn, "find the cause of the loss")

	cautioned(t, gain(old), advice.Refer, "an old cat that has clearly lost weight or muscle must be examined at once")
	silent(t, gain(func(s *energy.WeightGain) { old(s); s.Animal.Age-- }), "old cat")
	silent(t, gain(func(s *energy.WeightGain) { s.Animal.Age = 10 * energy.Year }), "old cat")

	cautioned(t, gain(func(s *energy.WeightGain) { s.Animal.Age = 8 * energy.Month }), advice.Warn, "8 mo old: while it grows")
	silent(t, gain(func(s *energy.WeightGain) { s.Animal.Age = energy.Year }), "while it grows")

	// 1.5 × 560 = 840.
	cautioned(t, gain(func(s *energy.WeightGain) { s.Intake = 840 }), advice.Refer, "it eats 840 kcal now, as much as would make it gain")
	silent(t, gain(func(s *energy.WeightGain) { s.Intake = 839 }), "as much as would")
	silent(t, gain(share), "as much as would")

	// Three times 70 × 14^0.75 = 506.6 is 1519.9.
	cautioned(t, gain(func(s *energy.WeightGain) { s.Intake = 2500 }), advice.Warn, "check the present intake, 2500 kcal, above 0.5 to 3 times its resting energy (253 kcal to 1520 kcal): kilojoules? that is 598 kcal")
	silent(t, gain(share), "check the present intake")
}

// By hand: 16 × 16 × 16 = 4096, square root twice 8, × 70 = 560, × 1.5 = 840.
func TestWorkingOfAWeightGain(t *testing.T) {
	explained(t, gain(func(*energy.WeightGain) {}), ""+
		"given     dog, 14 kg, condition 4/9, ideal weight 16 kg\n"+
		"weight    16 kg, the ideal weight\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 16^0.75 = 70 × 8.000 = 560.0 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"factor    1.5 (weight gain, the middle of 1.2 to 1.8, no publication confirmed)\n"+
		"source    factor tables in university teaching material (from memory)\n"+
		"          1.5 × 560.0 kcal = 840.0 kcal\n"+
		"spread    the range of the factor, 1.2 to 1.8\n"+
		"result    840 kcal/day\n"+
		"uncertain animals like this one need 672 kcal to 1008 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: find the cause of the loss before feeding for gain [US Army Veterinary Services, leaflet]\n"+
		"caution   warn: the factor for weight gain is from memory: no publication was found for it [factor tables in university teaching material (from memory)]\n"+
		"caution   note: measure what it eats now and raise it slowly to this amount; at the ideal weight go over to Adult [US Army Veterinary Services, leaflet]\n"+
		starting)
}

func TestWorkingOfAShareOfIntake(t *testing.T) {
	s := gain(func(s *energy.WeightGain) {
		s.Method, s.Intake, s.Share, s.Animal.Ideal = energy.ShareOfIntake, 500, 120, 0
		s.Animal.Weight = 16 * kg
	})
	explained(t, s, ""+
		"given     dog, 16 kg, condition 4/9\n"+
		"weight    16 kg, the current weight\n"+
		"formula   120 % of what is eaten now\n"+
		"          = 120 / 100 × 500.0 kcal = 600.0 kcal\n"+
		"source    ours, not published\n"+
		"beside    the resting energy at the current weight: 560.0 kcal\n"+
		"spread    none: it is this animal's own intake, and as sure as that\n"+
		"result    600 kcal/day\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: find the cause of the loss before feeding for gain [US Army Veterinary Services, leaflet]\n"+
		"caution   warn: no share for weight gain is published: 110 % is a small first step [ours, not published]\n"+
		"caution   note: measure what it eats now and raise it slowly to this amount; at the ideal weight go over to Adult [US Army Veterinary Services, leaflet]\n"+
		starting)
}
