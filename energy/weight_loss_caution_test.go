package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// loss returns a plan for an animal whose ideal weight, 16 kg, has a resting
// energy of 70 × 8 = 560 kcal.
func loss(s energy.Species, change func(*energy.WeightLoss)) energy.WeightLoss {
	w := energy.WeightLoss{Animal: heavy(s, 16*kg)}
	change(&w)
	return w
}

func unchanged(*energy.WeightLoss) {}

func TestWeightLossIsCautioned(t *testing.T) {
	share := func(intake units.Energy) func(*energy.WeightLoss) {
		return func(s *energy.WeightLoss) { s.Method, s.Intake = energy.ShareOfIntake, intake }
	}
	eats := func(intake units.Energy) func(*energy.WeightLoss) {
		return func(s *energy.WeightLoss) { s.Intake = intake }
	}
	for _, tt := range []struct {
		name   string
		stage  energy.WeightLoss
		level  advice.Level
		text   string
		absent bool
	}{
		{"dog, too fast", loss(energy.Dog, unchanged), advice.Warn, "if it loses more than 400 g a week (2 % of 20 kg), raise the food and call", false},
		{"cat, too fast", loss(energy.Cat, unchanged), advice.Warn, "if it loses more than 200 g a week (1 % of 20 kg), raise the food and call", false},
		{"too slow", loss(energy.Dog, unchanged), advice.Note, "if it loses less than 100 g a week, ask again what it really eats", false},
		{"nutrients", loss(energy.Dog, unchanged), advice.Warn, "use a food made for weight loss and check its nutrients", false},
		{"treats of a dog", loss(energy.Dog, unchanged), advice.Note, "at most 10 % of it: 56 kcal", false},
		{"treats of a cat", loss(energy.Cat, unchanged), advice.Note, "no treats for a cat in weight loss", false},
		{"starting point", loss(energy.Dog, unchanged), advice.Note, "a starting estimate", false},
		{"cat that doesn't eat", loss(energy.Cat, unchanged), advice.Warn, "if it eats less than half of its plan (under 224 kcal a day): give the old food back and call a veterinarian at once", false},
		{"dog that doesn't eat", loss(energy.Dog, unchanged), 0, "half of its plan", true},
		{"change of a cat's food", loss(energy.Cat, unchanged), advice.Warn, "over 1 to 2 weeks", false},
		{
			"end of the nine-point scale",
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Animal.Condition = energy.BCS9(9) }),
			advice.Warn, "9/9 is the end of the scale", false,
		},
		{
			"end of the five-point scale",
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Animal.Ideal, s.Animal.Condition = 0, energy.BCS5(5) }),
			advice.Warn, "5/5 is the end of the scale", false,
		},
		{"not at the end", loss(energy.Dog, unchanged), 0, "end of the scale", true},
		{
			"not yet a year old", loss(energy.Dog, func(s *energy.WeightLoss) { s.Animal.Age = 8 * energy.Month }),
			advice.Warn, "8 mo old: make sure that it has stopped growing", false,
		},
		{
			"a year old", loss(energy.Dog, func(s *energy.WeightLoss) { s.Animal.Age = energy.Year }), 0, "stopped growing", true,
		},
		// 20 kg at 9/9 is 12.5 kg at 15 % a point and 15 kg by body fat, and at 7/9 15.4
		// to 17.5 kg.
		{
			"recorded weight below the score's range", loss(energy.Dog, func(s *energy.WeightLoss) { s.Animal.Ideal = 15 * kg }),
			advice.Warn, "the recorded ideal weight, 15 kg, is not what 7/9 speaks for (15.385 kg to 17.5 kg): check both", false,
		},
		{
			"recorded weight above it", loss(energy.Dog, func(s *energy.WeightLoss) { s.Animal.Ideal = 18 * kg }),
			advice.Warn, "18 kg, is not what 7/9 speaks for", false,
		},
		{"recorded weight within", loss(energy.Dog, unchanged), 0, "speaks for", true},
		{
			"unknown status in a deficit",
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Method, s.Status = energy.Deficit, energy.Unknown }),
			advice.Warn, "neuter status unknown: the lower figure was used", false,
		},
		{
			"unknown status that isn't asked for", loss(energy.Dog, func(s *energy.WeightLoss) { s.Status = energy.Unknown }),
			0, "neuter status", true,
		},
		{
			"60 % of a low factor",
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Method, s.Status = energy.ShareOfMaintenance, energy.Inactive }),
			advice.Warn, "on that of inactive ones it is a steep cut", false,
		},
		{
			"60 % as published",
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Method, s.Status = energy.ShareOfMaintenance, energy.Intact }),
			0, "steep cut", true,
		},
		{"cat at 0.8", loss(energy.Cat, share(560)), 0, "under 0.8", true},
		{"cat below 0.8", loss(energy.Cat, share(559)), advice.Warn, "447 kcal is 0.799 times the resting energy at ideal weight: under 0.8", false},
		{"dog below 0.8", loss(energy.Dog, share(525)), 0, "under 0.8", true},
		// 1.6 × 560 = 896 is 80 % of 1120 for a dog, 1.2 × 560 = 672 of 840 for a cat.
		{"dog at maintenance", loss(energy.Dog, share(1120)), 0, "a loss may not come", true},
		{"dog above maintenance", loss(energy.Dog, share(1125)), advice.Warn, "900 kcal is 1.607 times", false},
		{"cat at maintenance", loss(energy.Cat, share(840)), 0, "a loss may not come", true},
		{"cat above maintenance", loss(energy.Cat, share(850)), advice.Warn, "680 kcal is 1.214 times", false},
		{"eats more", loss(energy.Dog, eats(560)), 0, "already less", true},
		{
			"eats less already", loss(energy.Dog, eats(559)), advice.Warn,
			"it eats 559 kcal now, already less than the 560 kcal computed for weight loss: don't raise it; take the diet history again and have a veterinarian look for a cause", false,
		},
		{"share of more", loss(energy.Cat, share(448)), 0, "already less", true},
		{"share of less", loss(energy.Cat, share(440)), advice.Warn, "it eats 440 kcal now, already less than the 448 kcal", false},
		// 70 × 20^0.75 = 662.0; three times that 1986, half of it 331.
		{"kilojoules", loss(energy.Dog, eats(3000)), advice.Warn, "check the present intake, 3000 kcal, above 0.5 to 3 times its resting energy (331 kcal to 1987 kcal): kilojoules? that is 717 kcal", false},
		{"usual intake", loss(energy.Dog, eats(900)), 0, "check the present intake", true},
		{
			"an unusual weight",
			energy.WeightLoss{Animal: energy.Animal{Species: energy.Cat, Weight: 11 * kg, Condition: energy.BCS9(8)}},
			advice.Warn, "11 kg is unusual for an adult cat: if it was pounds, the weight is 4.99 kg", false,
		},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if tt.absent {
				silent(t, tt.stage, tt.text)
			} else {
				cautioned(t, tt.stage, tt.level, tt.text)
			}
		})
	}
}

func TestEveryCautionOfAPlanHasLevelTextAndSource(t *testing.T) {
	for _, s := range []energy.Stage{
		loss(energy.Dog, func(s *energy.WeightLoss) { s.Intake = 3000 }), loss(energy.Cat, unchanged),
		energy.WeightGain{Animal: energy.Animal{Species: energy.Cat, Weight: 4 * kg, Ideal: 5 * kg, Age: 12 * energy.Year}, Intake: 900},
	} {
		for _, c := range estimate(t, s).Cautions() {
			if c.Level == 0 || c.Text == "" || c.Source.Seen == 0 {
				t.Errorf("%T: %+v", s, c)
			}
		}
	}
}
