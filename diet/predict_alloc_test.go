package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
)

var sinkPrediction diet.Prediction

func TestPredictionsDoNotAllocate(t *testing.T) {
	asked := diet.Food{Form: diet.Dry, Analysis: boxFood, Predictor: diet.ModifiedAtwater}
	for _, tt := range []struct {
		name string
		call func() error
	}{
		{"Predict", func() error {
			p, err := boxFood.Predict(diet.FourStep, energy.Dog)
			sinkPrediction = p
			return err
		}},
		{"Density, predicted", func() error { d, err := asked.Density(); sinkEnergy = d.Energy; return err }},
	} {
		if n := testing.AllocsPerRun(100, func() {
			if err := tt.call(); err != nil {
				panic(err)
			}
		}); n != 0 {
			t.Errorf("%s: %v allocations, want none", tt.name, n)
		}
	}
}
