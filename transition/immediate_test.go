package transition_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// Where it isn't known what was fed there is no old total to pour: the new food
// for the need, 900 kcal of 3000 kcal/kg, on every basis.
func TestImmediateChangeFromUnknownFood(t *testing.T) {
	food := diet.Food{Name: "the new food", Label: diet.Label{Energy: 3000}}
	for _, basis := range []transition.Basis{0, transition.ByEnergy, transition.ByMass, transition.ByOldTotal} {
		p := transition.Plan{To: diet.Only(food), Steps: transition.Immediate, Basis: basis, Meals: 2, Scale: units.Gram}
		days, err := p.Days(prescribed(900))
		if err != nil {
			t.Fatalf("%v: %v", basis, err)
		}
		if last := days[len(days)-1]; len(last.Meals) != 2 || last.Meals[0].Mass != 150 || last.Meals[1].Mass != 150 || last.Energy != 900 {
			t.Errorf("%v: %+v", basis, last)
		}
	}
}
