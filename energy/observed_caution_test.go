package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func TestWellMeasuredIntakeHasOneNote(t *testing.T) {
	for _, change := range []func(*energy.Observed){
		func(*energy.Observed) {},
		func(s *energy.Observed) { s.Over = 14 },
		// 2 % of 16 kg is 320 g.
		func(s *energy.Observed) { s.Animal.Weight = 16320 },
		func(s *energy.Observed) { s.Animal.Weight = 15680 },
	} {
		s := observed(change)
		if c := estimate(t, s).Cautions(); len(c) != 1 || c[0].Level != advice.Note {
			t.Errorf("%+v: %v, want one note", s, c)
		}
		cautioned(t, s, advice.Note, "count what was eaten, not what was offered")
	}
}

// The thresholds are ours: 14 days, 2 %, a tenth.
func TestBadlyMeasuredIntakeIsCautioned(t *testing.T) {
	for _, tt := range []struct {
		level  advice.Level
		text   string
		change func(*energy.Observed)
	}{
		{advice.Warn, "not said for how long the intake was measured: measure for at least 14 days", func(s *energy.Observed) { s.Over = 0 }},
		{advice.Warn, "measured over 13 days: measure for at least 14 days", func(s *energy.Observed) { s.Over = 13 }},
		{advice.Warn, "measured over 1 day: measure for at least 14 days", func(s *energy.Observed) { s.Over = 1 }},
		{advice.Warn, "no weight at the start", func(s *energy.Observed) { s.Before = 0 }},
		{
			advice.Warn, "the weight went from 16 kg to 16.4 kg (+2.5 %), which is more than 2 %: it needs less than it ate",
			func(s *energy.Observed) { s.Animal.Weight = 16.4 * kg },
		},
		{
			advice.Warn, "the weight went from 16 kg to 15.6 kg (-2.5 %), which is more than 2 %: it needs more than it ate",
			func(s *energy.Observed) { s.Animal.Weight = 15.6 * kg },
		},
		{
			advice.Warn, "which is more than 2 %: it needs less",
			func(s *energy.Observed) { s.Animal.Weight = 16.321 * kg },
		},
		{
			advice.Warn, "which is more than 2 %: it needs more",
			func(s *energy.Observed) { s.Animal.Weight = 15.679 * kg },
		},
		{
			advice.Warn, "it needs more than it ate",
			func(s *energy.Observed) { s.Animal.Weight = 14.401 * kg },
		},
		{
			advice.Refer, "the weight went from 16 kg to 14.4 kg (-10.0 %), which is more than 2 %: find the cause before feeding for gain",
			func(s *energy.Observed) { s.Animal.Weight = 14.4 * kg },
		},
		{advice.Warn, "score the condition", func(s *energy.Observed) { s.Animal.Condition = energy.Condition{} }},
		// 16^0.75 is 8: a resting energy of 560 kcal, and 280 to 1680 kcal
		// expected. 4184 kJ are 1000 kcal.
		{
			advice.Refer, "check the measured 4184 kcal, above 0.5 to 3 times its resting energy (280 kcal to 1680 kcal): " +
				"kilojoules? that is 1000 kcal, one digit too many? that is 418 kcal",
			func(s *energy.Observed) { s.Intake = 4184 },
		},
		{advice.Warn, "check the measured 2800 kcal", func(s *energy.Observed) { s.Intake = 2800 }},
		{advice.Refer, "check the measured 2801 kcal", func(s *energy.Observed) { s.Intake = 2801 }},
	} {
		cautioned(t, observed(tt.change), tt.level, tt.text)
	}
}

func TestUsualIntakeIsNotCautioned(t *testing.T) {
	for _, s := range []energy.Observed{
		observed(func(s *energy.Observed) { s.Intake = 336 }),
		observed(func(s *energy.Observed) { s.Intake = 1680 }),
	} {
		silent(t, s, "check the measured")
	}
}

// Nothing is known of a rabbit's usual intake.
func TestIntakeOfAnotherSpeciesIsHeldAgainstNothing(t *testing.T) {
	const nothing = "nothing to hold the measured intake against: no need is known for the species"
	rabbit := observed(func(s *energy.Observed) { s.Animal.Species, s.Intake = energy.Other, 9000 })
	cautioned(t, rabbit, advice.Warn, nothing)
	silent(t, rabbit, "check the measured")
	silent(t, observed(func(*energy.Observed) {}), nothing)
}

// Condition scales are made for dogs and cats.
func TestFerretNeedsNoScoreForItsIntake(t *testing.T) {
	silent(t, observed(func(s *energy.Observed) {
		s.Animal = animal(energy.Ferret, 1.2*kg)
		s.Before, s.Intake = 1.2*kg, 300
	}), "score the condition")
}

// By hand: 0.2 / 15.8 = 1.27 %. 16^0.75 is 8, × 70 = 560; half of that, three
// times that.
func TestWorkingOfAMeasuredIntake(t *testing.T) {
	explained(t, observed(func(s *energy.Observed) { s.Before, s.Animal.Weight = 15.8*kg, 16*kg }), ""+
		"given     dog, 16 kg, condition 5/9\n"+
		"weight    16 kg, the current weight\n"+
		"formula   none: 900.0 kcal eaten a day, measured over 28 days\n"+
		"weights   15.8 kg, then 16 kg: +1.3 %\n"+
		"beside    0.5 to 3 times its resting energy: 280 kcal to 1680 kcal (ours, not published)\n"+
		"result    900 kcal/day\n"+
		"next      weigh again in 28 days\n"+
		"caution   note: count what was eaten, not what was offered: left-overs weighed back, treats and table food in [ours, not published]\n")
	explained(t, energy.Observed{Animal: energy.Animal{Species: energy.Other, Weight: 2 * kg, Condition: energy.BCS5(3)}, Intake: 160}, ""+
		"given     other, 2 kg, condition 3/5\n"+
		"weight    2 kg, the current weight\n"+
		"formula   none: 160.0 kcal eaten a day\n"+
		"result    160 kcal/day\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: nothing to hold the measured intake against: no need is known for the species [ours, not published]\n"+
		"caution   warn: not said for how long the intake was measured: measure for at least 14 days [ours, not published]\n"+
		"caution   warn: no weight at the start: nobody can say that this intake keeps the weight steady [ours, not published]\n"+
		"caution   note: count what was eaten, not what was offered: left-overs weighed back, treats and table food in [ours, not published]\n")
}
