package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func gain(change func(*energy.WeightGain)) energy.WeightGain {
	s := energy.WeightGain{Animal: energy.Animal{Species: energy.Dog, Weight: 14 * kg, Ideal: 16 * kg, Condition: energy.BCS9(4)}}
	change(&s)
	return s
}

func TestWeightGainIsRefused(t *testing.T) {
	const maintenance = " (it needs more than maintenance: "
	for _, tt := range []struct {
		name, field string
		change      func(*energy.WeightGain)
		want        string
	}{
		{
			"no ideal weight", "ideal weight", func(s *energy.WeightGain) { s.Animal.Ideal = 0 },
			`energy: ideal weight "": want the weight on record, above the current one; without it, what is eaten now as intake (not given)`,
		},
		{
			"no ideal weight for the factor", "ideal weight",
			func(s *energy.WeightGain) { s.Animal.Ideal, s.Intake, s.Method = 0, 500, energy.FactorOnRER },
			`energy: ideal weight "": want the weight on record, above the current one; without it, what is eaten now as intake (not given)`,
		},
		{
			"already there", "ideal weight", func(s *energy.WeightGain) { s.Animal.Ideal = 14 * kg },
			`energy: ideal weight "14 kg": want above the current 14 kg for weight gain (nothing to gain: Adult)`,
		},
		{
			"6/9", "condition", func(s *energy.WeightGain) { s.Animal.Condition = energy.BCS9(6) },
			`energy: condition "6/9": want at most 5/9 or 3/5 for weight gain (overweight: WeightLoss)`,
		},
		{
			"neither ideal weight nor score", "condition",
			func(s *energy.WeightGain) {
				s.Animal.Ideal, s.Animal.Condition, s.Method, s.Intake = 0, energy.Condition{}, energy.ShareOfIntake, 500
			},
			`energy: condition "": want 3/9 to 4/9 or 2/5, or a recorded ideal weight` + notScored,
		},
		{
			"5/9 without an ideal weight", "condition",
			func(s *energy.WeightGain) {
				s.Animal.Ideal, s.Animal.Condition, s.Method, s.Intake = 0, energy.BCS5(3), energy.ShareOfIntake, 500
			},
			`energy: condition "3/5": want 3/9 to 4/9 or 2/5 for weight gain (not thin: Adult)`,
		},
		{
			"a ferret", "species", func(s *energy.WeightGain) { s.Animal.Species = energy.Ferret },
			`energy: species "ferret": want dog or cat (weight gain is computed for dogs and cats: Prescribed takes a veterinarian's figure)`,
		},
		{
			"pup", "age", func(s *energy.WeightGain) { s.Animal.Age = 4 * energy.Month },
			`energy: age "4 mo": want 6 mo or more for weight gain (Growth, or Prescribed with a veterinarian's figure)`,
		},
		{
			"growing", "circumstances", func(s *energy.WeightGain) { s.Animal.Circumstances = energy.Growing },
			`energy: circumstances "growing": want an adult that is to gain weight` + maintenance + `Growth, or Prescribed with a veterinarian's figure)`,
		},
		{
			"pregnant", "circumstances", func(s *energy.WeightGain) { s.Animal.Circumstances = energy.Pregnant },
			`energy: circumstances "pregnant": want an adult that is to gain weight` + maintenance + `Gestation, or Prescribed with a veterinarian's figure)`,
		},
		{
			"lactating", "circumstances", func(s *energy.WeightGain) { s.Animal.Circumstances = energy.Lactating },
			`energy: circumstances "lactating": want an adult that is to gain weight` + maintenance + `Lactation, or Prescribed with a veterinarian's figure)`,
		},
		{
			"method of weight loss", "method", func(s *energy.WeightGain) { s.Method = energy.Deficit },
			`energy: method "deficit": want factor_on_rer or share_of_intake`,
		},
		{
			"share of what", "intake", func(s *energy.WeightGain) { s.Method = energy.ShareOfIntake },
			`energy: intake "": want more than 0 kcal and at most 50000 kcal a day, for method share_of_intake (not given)`,
		},
		{
			"a fraction", "share", func(s *energy.WeightGain) { s.Method, s.Intake, s.Share = energy.ShareOfIntake, 500, 1.1 },
			`energy: share "1.1 %": want 105 % to 150 % of the intake (a fraction? 1.1 is 110 %)`,
		},
		{
			"no more than now", "share", func(s *energy.WeightGain) { s.Method, s.Intake, s.Share = energy.ShareOfIntake, 500, 100 },
			`energy: share "100 %": want 105 % to 150 % of the intake`,
		},
		{
			"share without intake", "share", func(s *energy.WeightGain) { s.Share = 110 },
			`energy: share "110 %": want none: only method share_of_intake takes one`,
		},
	} {
		t.Run(tt.name, func(t *testing.T) { refused(t, gain(tt.change), tt.field, tt.want) })
	}
}

func TestGatedAnimalGainsNoWeightByComputation(t *testing.T) {
	for _, tt := range gated {
		s := gain(func(*energy.WeightGain) {})
		tt.change(&s.Animal)
		gatedBy(t, s, tt.field, tt.want)
	}
}

// Pointer 2013: 30 % and more below the ideal weight is emaciated; 14 kg is 70 %
// of 20 kg.
func TestEmaciatedAnimalGainsNoWeightByComputation(t *testing.T) {
	estimate(t, gain(func(s *energy.WeightGain) { s.Animal.Ideal = 19.9 * kg }))
	gatedBy(t, gain(func(s *energy.WeightGain) { s.Animal.Ideal = 20 * kg }), "weight",
		`energy: weight "14 kg": 30 % or more below the recorded ideal weight of 20 kg: too much food too soon can kill (refeeding), or one of the two is wrong (pounds for kilograms?)`+need)
}

// 110 % of 500 kcal.
func TestIntakeIsTheDefaultWithoutAnIdealWeight(t *testing.T) {
	stray := gain(func(s *energy.WeightGain) { s.Animal.Ideal, s.Intake = 0, 500 })
	if e := estimate(t, stray); e.Method != energy.ShareOfIntake || e.Daily != 550 {
		t.Errorf("%v by %v, want 550 kcal by share_of_intake", e.Daily, e.Method)
	}
	recorded := gain(func(s *energy.WeightGain) { s.Intake = 500 })
	if e := estimate(t, recorded); e.Method != energy.FactorOnRER {
		t.Errorf("%v with an ideal weight, want factor_on_rer", e.Method)
	}
}

func TestWeightThatTheGainIsComputedOn(t *testing.T) {
	for _, tt := range []struct {
		stage  energy.WeightGain
		weight units.Mass
		basis  energy.Basis
	}{
		{gain(func(*energy.WeightGain) {}), 16 * kg, energy.Ideal},
		{gain(func(s *energy.WeightGain) { s.Method, s.Intake = energy.ShareOfIntake, 500 }), 16 * kg, energy.Ideal},
		{gain(func(s *energy.WeightGain) { s.Method, s.Intake, s.Animal.Ideal = energy.ShareOfIntake, 500, 0 }), 14 * kg, energy.Current},
	} {
		if e := estimate(t, tt.stage); e.Weight != tt.weight || e.Basis != tt.basis || e.Reweigh != 2*energy.Week {
			t.Errorf("%+v: %v, %v, weigh again in %v", tt.stage, e.Weight, e.Basis, e.Reweigh)
		}
	}
}
