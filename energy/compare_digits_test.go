package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// What was given for one method alone is left out for the others, which refuse
// it otherwise.
func TestCompareLeavesOutWhatOneMethodTakes(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 30 * kg, Condition: energy.BCS9(8)}
	thin := energy.Animal{Species: energy.Cat, Weight: 3.5 * kg, Condition: energy.BCS9(4), Ideal: 4 * kg}
	for _, tt := range []struct {
		stage energy.Stage
		want  energy.Method
	}{
		{energy.Work{Animal: animal(energy.Dog, 20*kg), Status: energy.Neutered, Distance: 12 * units.Kilometre, Minutes: 90, Method: energy.TwoTerm}, energy.PerDistance},
		{energy.WeightLoss{Animal: dog, Status: energy.Neutered, Method: energy.Deficit, Rate: 1.5}, energy.FactorOnRER},
		{energy.WeightLoss{Animal: dog, Intake: 1100, Method: energy.ShareOfIntake, Share: 75}, energy.FactorOnRER},
		{energy.WeightGain{Animal: thin, Intake: 190, Method: energy.ShareOfIntake, Share: 115}, energy.FactorOnRER},
	} {
		all, err := energy.Compare(tt.stage)
		if err != nil {
			t.Errorf("%+v: %v", tt.stage, err)
			continue
		}
		found := false
		for _, e := range all[1:] {
			found = found || e.Method == tt.want
		}
		if !found {
			t.Errorf("%+v: %v is missing among %d", tt.stage, tt.want, len(all))
		}
	}
}
