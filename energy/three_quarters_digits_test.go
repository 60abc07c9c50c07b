package energy

import (
	"testing"

	"example.org/bowlgram/units"
)

// Wherever the power is 3/4 it is the two square roots, to the last bit, since
// math.Pow differs between architectures.
func TestPowerOfAnAdultDogIsTwoRoots(t *testing.T) {
	for _, m := range []Method{NRC2006, FEDIAF, Thes} {
		for w := 0.9; w < 100; w *= 1.01 {
			s := Adult{Animal: Animal{Species: Dog, Weight: units.Mass(w) * units.Kilogram}, Status: Neutered}
			c := s.coefficient(m)
			want := units.Energy(threeQuarters(s.Animal.Weight.Kilograms()))
			if got := s.base(m, c, s.Animal.Weight); got != want {
				t.Errorf("%v: %v^0.75 = %v, want %v", m, w, float64(got), float64(want))
			}
		}
	}
}

func TestPowerOfWhatDogsAteIsTwoRoots(t *testing.T) {
	o := &observedLosses[Dog]
	for w := 0.9; w < 100; w *= 1.01 {
		want := units.Energy(o.mean * threeQuarters((units.Mass(w) * units.Kilogram).Kilograms()))
		if got := o.at(units.Mass(w) * units.Kilogram); got != want {
			t.Errorf("%v kg: %v, want %v", w, float64(got), float64(want))
		}
	}
}
