package diet_test

import (
	"reflect"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// The compiler takes no basis for another, and so none of dry matter where the
// figure as fed is wanted.
func TestNoBasisIsAssignableToAnother(t *testing.T) {
	bases := []reflect.Type{
		reflect.TypeFor[units.Percent](), reflect.TypeFor[units.EnergyDensity](), reflect.TypeFor[diet.DryMatter](), reflect.TypeFor[diet.DryEnergy](),
		reflect.TypeFor[diet.PerMcal](), reflect.TypeFor[diet.PerMJ](), reflect.TypeFor[diet.EnergyShare](),
	}
	for i, from := range bases {
		for j, to := range bases {
			if i != j && from.AssignableTo(to) {
				t.Errorf("%v is taken for %v", from, to)
			}
		}
	}
}
