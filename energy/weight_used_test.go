package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// AAHA 2021: a thin or ideal animal on its current weight, a fat one on its
// ideal weight.
func TestSmallerOfCurrentAndIdealWeightIsUsed(t *testing.T) {
	for _, tt := range []struct {
		ideal, weight units.Mass
		basis         energy.Basis
	}{
		{0, 20 * kg, energy.Current},
		{16 * kg, 16 * kg, energy.Ideal},
		{20 * kg, 20 * kg, energy.Current},
		{25 * kg, 20 * kg, energy.Current},
	} {
		dog := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Ideal: tt.ideal}
		for _, s := range []energy.Stage{energy.Resting{Animal: dog}, energy.Adult{Animal: dog, Status: energy.Intact}} {
			e := estimate(t, s)
			if e.Weight != tt.weight || e.Basis != tt.basis {
				t.Errorf("%T, ideal %v: %v, %v; want %v, %v", s, tt.ideal, e.Weight, e.Basis, tt.weight, tt.basis)
			}
		}
	}
}

// 16^0.75 is 8: 70 × 8 = 560 whatever the dog weighs above that.
func TestEnergyIsThatOfTheWeightUsed(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Ideal: 16 * kg}
	if got := estimate(t, energy.Resting{Animal: dog}).Daily; got != 560 {
		t.Errorf("%v, want 560 kcal", got)
	}
}

// The curve for overweight cats is made for the weight they have.
func TestOverweightCatCurveTakesTheCurrentWeight(t *testing.T) {
	for _, tt := range []struct {
		condition energy.Condition
		weight    units.Mass
		basis     energy.Basis
	}{
		{energy.BCS9(6), 5 * kg, energy.Ideal},
		{energy.BCS9(7), 6 * kg, energy.Current},
		{energy.BCS5(3), 5 * kg, energy.Ideal},
		{energy.BCS5(4), 6 * kg, energy.Current},
		{energy.Condition{}, 5 * kg, energy.Ideal},
	} {
		cat := energy.Animal{Species: energy.Cat, Weight: 6 * kg, Ideal: 5 * kg, Condition: tt.condition}
		e := estimate(t, energy.Adult{Animal: cat, Status: energy.Neutered, Method: energy.NRC2006})
		if e.Weight != tt.weight || e.Basis != tt.basis {
			t.Errorf("%v: %v, %v; want %v, %v", tt.condition, e.Weight, e.Basis, tt.weight, tt.basis)
		}
	}
}

func TestPrescribedUsesNoWeight(t *testing.T) {
	e := estimate(t, prescribe(energy.Animal{Species: energy.Dog, Weight: 20 * kg, Ideal: 16 * kg}, 700))
	if e.Weight != 0 || e.Basis != 0 {
		t.Errorf("%v, %v; want none", e.Weight, e.Basis)
	}
}
