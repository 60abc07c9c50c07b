package energy_test

import (
	"errors"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

const (
	stepForms   = `1 to 14 steps in percent of resting energy, each above 1 % and at most 100 % and none below the one before, as in "25/50/75/100 %"`
	ladderForms = "three_day, four_day, full, or " + stepForms
	noName      = `: want the name of the veterinarian who set the ladder, on one line`
)

func TestRefeedingIsRefused(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(*energy.Refeeding)
		want   string
	}{
		{
			"no species", func(s *energy.Refeeding) { s.Animal.Species = 0 },
			`energy: species "": want dog or cat (not given)`,
		},
		{
			"ferret", func(s *energy.Refeeding) { s.Animal.Species = energy.Ferret },
			`energy: species "ferret": want dog or cat (no resting-energy equation is published for it: Prescribed takes a veterinarian's figure)`,
		},
		{
			"no such species", func(s *energy.Refeeding) { s.Animal.Species = 9 },
			`energy: species "9": want dog, cat, ferret or other`,
		},
		{
			"no weight", func(s *energy.Refeeding) { s.Animal.Weight = 0 },
			`energy: weight "": want 40 g to 20 kg for a cat (not given)`,
		},
		{
			"grams", func(s *energy.Refeeding) { s.Animal.Weight = 4200 * kg },
			`energy: weight "4200 kg": want 40 g to 20 kg for a cat (grams? 4200 g is 4.2 kg)`,
		},
		{
			"nursling", func(s *energy.Refeeding) { s.Animal.Age = 28 },
			`energy: age "4 wk": want more than 4 wk for refeeding (milk is fed by age and weight: Nursling, or Prescribed with a veterinarian's figure)`,
		},
		{
			"no ladder", func(s *energy.Refeeding) { s.Ladder = energy.Ladder{} },
			`energy: ladder "": want ` + ladderForms + ` (not given)`,
		},
		{
			"no score for a named ladder", func(s *energy.Refeeding) { s.Animal.Condition = energy.Condition{} },
			`energy: condition "": want the score with its scale, as in "5/9" or "3/5", for the ladder three_day (not given; a starved animal is fed by the veterinarian's own ladder only)`,
		},
		{
			"day 0", func(s *energy.Refeeding) { s.Day = 0 },
			`energy: day "0": want 1 or more, counted from the first day of feeding`,
		},
		{
			"day below 0", func(s *energy.Refeeding) { s.Day = -1 },
			`energy: day "-1": want 1 or more, counted from the first day of feeding`,
		},
		{"no name", func(s *energy.Refeeding) { s.By = "" }, `energy: by ""` + noName},
		{"no letter", func(s *energy.Refeeding) { s.By = "12" }, `energy: by "12"` + noName},
		{"two lines", func(s *energy.Refeeding) { s.By = "Dr A.\nExample" }, `energy: by "Dr A.\nExample"` + noName},
		{
			"several", func(s *energy.Refeeding) { *s = energy.Refeeding{} },
			`energy: species "": want dog or cat (not given); energy: ladder "": want ` + ladderForms +
				` (not given); energy: day "0": want 1 or more, counted from the first day of feeding; energy: by ""` + noName,
		},
	} {
		t.Run(tt.name, func(t *testing.T) {
			s := refeed(patient, energy.ThreeDayLadder(), 1)
			tt.change(&s)
			e, err := s.Estimate()
			if err == nil || err.Error() != tt.want {
				t.Errorf("got  %v\nwant %v", err, tt.want)
			}
			var fault *units.FieldError
			if !errors.As(err, &fault) || errors.Is(err, energy.ErrVeterinarian) || e != (energy.Estimate{}) {
				t.Errorf("%T beside %+v, want a *units.FieldError and the zero value", err, e)
			}
		})
	}
}

func TestFiveWeeksOldIsRefed(t *testing.T) {
	a := patient
	a.Age = 29
	estimate(t, refeed(a, energy.ThreeDayLadder(), 1))
}

func TestUnscoredAnimalIsFedByTheVeterinariansOwnLadder(t *testing.T) {
	estimate(t, refeed(animal(energy.Cat, 4.2*kg), ownLadder(t, 25), 1))
}

func TestGatesOfTheStarvedStandBesideOtherFaults(t *testing.T) {
	s := energy.Refeeding{Animal: energy.Animal{Species: energy.Cat, Weight: 2 * kg, Condition: energy.BCS9(1)}, Day: 1, By: "Dr A. Example"}
	want := `energy: ladder "": want ` + ladderForms + ` (not given); ` +
		`energy: condition "1/9": very thin: too much food too soon can kill (refeeding)` + needLadder
	if _, err := s.Estimate(); err == nil || err.Error() != want || !errors.Is(err, energy.ErrVeterinarian) {
		t.Errorf("got  %v\nwant %v", err, want)
	}
}
