package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestWeightLossIsRefused(t *testing.T) {
	const (
		lossScores = "6/9 to 9/9 or 4/5 to 5/5"
		notHeavy   = " (not overweight: Adult, or WeightGain)"
		anIntake   = "more than 0 kcal and at most 50000 kcal a day"
	)
	for _, tt := range []struct {
		name, field string
		change      func(*energy.WeightLoss)
		want        string
	}{
		{
			"not scored", "condition", func(s *energy.WeightLoss) { s.Animal.Condition = energy.Condition{} },
			`energy: condition "": want ` + lossScores + `, or a recorded ideal weight` + notScored,
		},
		{
			"5/9", "condition", func(s *energy.WeightLoss) { s.Animal.Condition = energy.BCS9(5) },
			`energy: condition "5/9": want ` + lossScores + ` for weight loss` + notHeavy,
		},
		{
			"2/5", "condition", func(s *energy.WeightLoss) { s.Animal.Condition = energy.BCS5(2) },
			`energy: condition "2/5": want ` + lossScores + ` for weight loss` + notHeavy,
		},
		{
			"4/9 above the weight on record", "condition",
			func(s *energy.WeightLoss) { s.Animal.Condition, s.Animal.Ideal = energy.BCS9(4), 30*kg },
			`energy: condition "4/9": want 5/9 or 3/5 and more for weight loss` + notHeavy,
		},
		{
			"already there", "ideal weight", func(s *energy.WeightLoss) { s.Animal.Ideal = 38.5 * kg },
			`energy: ideal weight "38.5 kg": want below the current 38.5 kg for weight loss` + notHeavy,
		},
		{
			"a ferret", "species", func(s *energy.WeightLoss) { s.Animal.Species = energy.Ferret },
			`energy: species "ferret": want dog or cat (weight loss is computed for dogs and cats: no strict cut for any other without a veterinarian, Prescribed)`,
		},
		{"no species", "species", func(s *energy.WeightLoss) { s.Animal.Species = 0 }, `energy: species "": want dog or cat (not given)`},
		{
			"method of Adult", "method", func(s *energy.WeightLoss) { s.Method = energy.NRC2006 },
			`energy: method "nrc_2006": want factor_on_rer, rer_power, rer_linear, share_of_maintenance, share_of_intake or deficit`,
		},
		{
			"60 % in a cat", "method",
			func(s *energy.WeightLoss) {
				s.Animal.Species, s.Animal.Weight, s.Method, s.Status = energy.Cat, 6.5*kg, energy.ShareOfMaintenance, energy.Neutered
			},
			`energy: method "share_of_maintenance": want any other for a cat (the 60 % are published for dogs)`,
		},
		{
			"60 % of what", "status", func(s *energy.WeightLoss) { s.Method = energy.ShareOfMaintenance },
			`energy: status "": want ` + wantStatus + `, for method share_of_maintenance (not given)`,
		},
		{
			"deficit from what", "status", func(s *energy.WeightLoss) { s.Method = energy.Deficit },
			`energy: status "": want ` + wantStatus + `, for method deficit (not given)`,
		},
		{"no such status", "status", func(s *energy.WeightLoss) { s.Status = 6 }, `energy: status "6": want ` + wantStatus},
		{
			"share of what", "intake", func(s *energy.WeightLoss) { s.Method = energy.ShareOfIntake },
			`energy: intake "": want ` + anIntake + `, for method share_of_intake (not given)`,
		},
		{"negative intake", "intake", func(s *energy.WeightLoss) { s.Intake = -920 }, `energy: intake "-920 kcal": want ` + anIntake},
		{"intake NaN", "intake", func(s *energy.WeightLoss) { s.Intake = units.Energy(math.NaN()) }, `energy: intake "NaN kcal": want ` + anIntake},
		{"in calories", "intake", func(s *energy.WeightLoss) { s.Intake = 920000 }, `energy: intake "920000 kcal": want ` + anIntake},
		{
			"share without intake", "share", func(s *energy.WeightLoss) { s.Share = 80 },
			`energy: share "80 %": want none: only method share_of_intake takes one`,
		},
		{
			"a fraction", "share", func(s *energy.WeightLoss) { s.Method, s.Intake, s.Share = energy.ShareOfIntake, 1200, 0.8 },
			`energy: share "0.8 %": want 50 % to 120 % of the intake (a fraction? 0.8 is 80 %)`,
		},
		{
			"more than now", "share", func(s *energy.WeightLoss) { s.Method, s.Intake, s.Share = energy.ShareOfIntake, 1200, 121 },
			`energy: share "121 %": want 50 % to 120 % of the intake`,
		},
		{
			"share NaN", "share",
			func(s *energy.WeightLoss) {
				s.Method, s.Intake, s.Share = energy.ShareOfIntake, 1200, units.Percent(math.NaN())
			},
			`energy: share "NaN %": want 50 % to 120 % of the intake`,
		},
		{
			"rate without deficit", "rate", func(s *energy.WeightLoss) { s.Rate = 1 },
			`energy: rate "1 %": want none: only method deficit takes one (Goal gives the safe rate)`,
		},
		{
			"rate as a fraction", "rate",
			func(s *energy.WeightLoss) { s.Method, s.Status, s.Rate = energy.Deficit, energy.Neutered, 0.01 },
			`energy: rate "0.01 %": want 0.5 % to 2 % of the weight a week (a fraction? 0.01 is 1 %)`,
		},
		{
			"too fast for any", "rate",
			func(s *energy.WeightLoss) { s.Method, s.Status, s.Rate = energy.Deficit, energy.Neutered, 2.1 },
			`energy: rate "2.1 %": want 0.5 % to 2 % of the weight a week`,
		},
		{
			"too slow for a cat", "rate",
			func(s *energy.WeightLoss) {
				s.Animal.Species, s.Animal.Weight = energy.Cat, 6.5*kg
				s.Method, s.Status, s.Rate = energy.Deficit, energy.Neutered, 0.4
			},
			`energy: rate "0.4 %": want 0.5 % to 1 % of the weight a week`,
		},
	} {
		t.Run(tt.name, func(t *testing.T) {
			s := energy.WeightLoss{Animal: energy.Animal{Species: energy.Dog, Weight: 38.5 * kg, Condition: energy.BCS9(8)}}
			tt.change(&s)
			refused(t, s, tt.field, tt.want)
		})
	}
}

func TestEveryFaultOfAWeightLossIsReportedAtOnce(t *testing.T) {
	s := energy.WeightLoss{
		Animal: energy.Animal{Species: energy.Dog, Circumstances: energy.Growing}, Status: 9,
		Intake: -1, Share: 3, Rate: 9, Method: energy.NRC2006,
	}
	_, err := s.Estimate()
	const want = `energy: weight "": want 800 g to 120 kg for an adult dog (not given); ` +
		`energy: circumstances "growing": growth, pregnancy and lactation need more than maintenance: no weight loss without a veterinarian` + need + `; ` +
		`energy: condition "": want 6/9 to 9/9 or 4/5 to 5/5, or a recorded ideal weight` + notScored + `; ` +
		`energy: method "nrc_2006": want factor_on_rer, rer_power, rer_linear, share_of_maintenance, share_of_intake or deficit; ` +
		`energy: status "9": want ` + wantStatus + `; ` +
		`energy: intake "-1 kcal": want more than 0 kcal and at most 50000 kcal a day; ` +
		`energy: share "3 %": want none: only method share_of_intake takes one; ` +
		`energy: rate "9 %": want none: only method deficit takes one (Goal gives the safe rate)`
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %v", err, want)
	}
}

// gatedBy checks that only a veterinarian's figure lifts the refusal.
func gatedBy(t *testing.T, s energy.Stage, field, want string) {
	t.Helper()
	e, err := s.Estimate()
	if e != (energy.Estimate{}) {
		t.Errorf("estimate %+v, want the zero value", e)
	}
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %v", err, want)
	}
	var refusal *energy.VeterinarianError
	if !errors.Is(err, energy.ErrVeterinarian) || !errors.As(err, &refusal) || refusal.Field != field {
		t.Errorf("%T %v, want a *VeterinarianError of %s", err, err, field)
	}
}

func TestGatedAnimalLosesNoWeightByComputation(t *testing.T) {
	for _, tt := range gated {
		s := energy.WeightLoss{Animal: heavy(energy.Dog, 16*kg)}
		tt.change(&s.Animal)
		gatedBy(t, s, tt.field, tt.want)
	}
}

func TestGrowthPregnancyAndLactationLoseNoWeightByComputation(t *testing.T) {
	const reason = "growth, pregnancy and lactation need more than maintenance: no weight loss without a veterinarian" + need
	for _, species := range []energy.Species{energy.Dog, energy.Cat} {
		for text, bit := range map[string]energy.Circumstances{
			"growing": energy.Growing, "pregnant": energy.Pregnant, "lactating": energy.Lactating,
		} {
			s := energy.WeightLoss{Animal: heavy(species, 5*kg)}
			s.Animal.Circumstances = bit
			gatedBy(t, s, "circumstances", `energy: circumstances "`+text+`": `+reason)
		}
		s := energy.WeightLoss{Animal: heavy(species, 5*kg)}
		s.Animal.Age = 6*energy.Month - energy.Day
		gatedBy(t, s, "age", `energy: age "179 d": `+reason)
		s.Animal.Age++
		estimate(t, s)
	}
}

// 16^0.75 is 8: resting energy 560, 0.6 times it 336 kcal, 80 % of 420. Ours.
func TestTooLittleToLoseWeightOnNeedsAVeterinarian(t *testing.T) {
	for _, species := range []energy.Species{energy.Dog, energy.Cat} {
		s := energy.WeightLoss{Animal: heavy(species, 16*kg), Intake: 420, Method: energy.ShareOfIntake}
		if got := estimate(t, s).Daily; got != 336 {
			t.Errorf("%v, want 336 kcal", got)
		}
		s.Intake = 419
		gatedBy(t, s, "daily energy", `energy: daily energy "335.2 kcal": under 336 kcal, which is 0.6 of the resting energy at ideal weight (560.0 kcal): `+
			`too little food to lose weight on safely, or an input is wrong`+need)
	}
	// 2 % a week of a large dog: 1.2 × 70 × 60^0.75 = 1810.9, less 7920 × 1.2 / 7 =
	// 1357.7, is 453.2 kcal; the resting energy at 60 / 1.4 kg is 1172.5,
	// 0.6 of it 703.5, written rounded up.
	giant := energy.WeightLoss{
		Animal: energy.Animal{Species: energy.Dog, Weight: 60 * kg, Condition: energy.BCS9(9)},
		Status: energy.Inactive, Rate: 2, Method: energy.Deficit,
	}
	gatedBy(t, giant, "daily energy", `energy: daily energy "453.2 kcal": under 704 kcal, which is 0.6 of the resting energy at ideal weight (1172.5 kcal): `+
		`too little food to lose weight on safely, or an input is wrong`+need)
}

// SACN 5th ed., p. 529: 0.5 to 1 % is safer in obese cats.
func TestFastLossOfACatNeedsAVeterinarian(t *testing.T) {
	s := energy.WeightLoss{Animal: heavy(energy.Cat, 5*kg), Status: energy.Neutered, Rate: 1, Method: energy.Deficit}
	estimate(t, s)
	s.Rate = 1.5
	gatedBy(t, s, "rate", `energy: rate "1.5 %": above 1 % a week a cat's liver is in danger`+need)
}
