package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

func adultOf(s energy.Species) func(units.Mass) energy.Stage {
	return func(w units.Mass) energy.Stage { return energy.Adult{Animal: animal(s, w), Status: energy.Intact} }
}

func restingOf(s energy.Species) func(units.Mass) energy.Stage {
	return func(w units.Mass) energy.Stage { return energy.Resting{Animal: animal(s, w)} }
}

func prescribedOf(s energy.Species) func(units.Mass) energy.Stage {
	return func(w units.Mass) energy.Stage {
		return energy.Prescribed{Animal: animal(s, w), Daily: 100, By: "Dr A. Example"}
	}
}

func linear(w units.Mass) energy.Stage {
	return energy.Resting{Animal: animal(energy.Dog, w), Method: energy.RERLinear}
}

// All bounds are ours but those of the linear form: SACN 5th ed., Table 5-2.
func TestWeightBoundsAreClosedAndExact(t *testing.T) {
	for _, tt := range []struct {
		name      string
		stage     func(units.Mass) energy.Stage
		low, high units.Mass
	}{
		{"adult dog", adultOf(energy.Dog), 0.8 * kg, 120 * kg},
		{"adult cat", adultOf(energy.Cat), 1.5 * kg, 20 * kg},
		{"adult ferret", adultOf(energy.Ferret), 0.4 * kg, 4 * kg},
		{"resting dog", restingOf(energy.Dog), 0.05 * kg, 120 * kg},
		{"resting cat", restingOf(energy.Cat), 0.04 * kg, 20 * kg},
		{"linear form", linear, 2 * kg, 45 * kg},
		{"prescribed dog", prescribedOf(energy.Dog), 0.05 * kg, 120 * kg},
		{"prescribed cat", prescribedOf(energy.Cat), 0.04 * kg, 20 * kg},
		{"prescribed ferret", prescribedOf(energy.Ferret), 0.005 * kg, 4 * kg},
		{"prescribed other", prescribedOf(energy.Other), 0.005 * kg, 200 * kg},
		{"prescribed, species not given", prescribedOf(0), 0.005 * kg, 200 * kg},
	} {
		t.Run(tt.name, func(t *testing.T) {
			estimate(t, tt.stage(tt.low))
			estimate(t, tt.stage(tt.high))
			for _, w := range []units.Mass{step(tt.low, 0), step(tt.high, math.Inf(1))} {
				var fault *units.FieldError
				if _, err := tt.stage(w).Estimate(); !errors.As(err, &fault) || fault.Field != "weight" {
					t.Errorf("%v: %v, want the weight refused", w, err)
				}
			}
		})
	}
}

// step returns the next mass from m on towards the other.
func step(m units.Mass, towards float64) units.Mass {
	return units.Mass(math.Nextafter(float64(m), towards))
}

func TestLinearFormSaysWhatToUseInstead(t *testing.T) {
	refused(t, linear(46*kg), "weight", `energy: weight "46 kg": want 2 kg to 45 kg for method rer_linear (rer_power takes any weight)`)
}

func TestIdealWeightBoundsAreHalfAndThreeTimes(t *testing.T) {
	at := func(ideal units.Mass) energy.Stage {
		a := animal(energy.Cat, 3*kg)
		a.Ideal = ideal
		return prescribe(a, 300)
	}
	estimate(t, at(1.5*kg))
	estimate(t, at(9*kg))
	for _, ideal := range []units.Mass{step(1.5*kg, 0), step(9*kg, math.Inf(1))} {
		if _, err := at(ideal).Estimate(); err == nil {
			t.Errorf("ideal weight %v beside 3 kg was taken", ideal)
		}
	}
}

func TestPrescribedUpToFiftyMegacalories(t *testing.T) {
	at := func(e units.Energy) energy.Stage { return energy.Prescribed{Daily: e, By: "Dr A. Example"} }
	estimate(t, at(50000))
	estimate(t, at(math.SmallestNonzeroFloat64))
	if _, err := at(units.Energy(math.Nextafter(50000, 50001))).Estimate(); err == nil {
		t.Error("more than 50000 kcal was taken")
	}
}

// Pointer 2013 calls 30 % or more below ideal emaciated.
func TestFarBelowTheIdealWeightIsGated(t *testing.T) {
	at := func(weight units.Mass) energy.Stage {
		a := animal(energy.Dog, weight)
		a.Ideal = 10 * kg
		return energy.Adult{Animal: a, Status: energy.Neutered}
	}
	for _, of := range [][2]units.Mass{{7 * kg, 10 * kg}, {2.8 * kg, 4 * kg}, {7 * units.Pound, 10 * units.Pound}, {2.1 * kg, 3 * kg}, {0.4 * 16 * kg, 16 * kg}} {
		a := animal(energy.Dog, of[0])
		a.Ideal = of[1]
		if _, err := (energy.Adult{Animal: a, Status: energy.Neutered}).Estimate(); !errors.Is(err, energy.ErrVeterinarian) {
			t.Errorf("%v of %v: %v", of[0], of[1], err)
		}
	}
	cautioned(t, at(7.001*kg), advice.Warn, "7.001 kg is far below the ideal weight, 10 kg")
	cautioned(t, at(step(8.5*kg, 0)), advice.Warn, "far below the ideal weight")
	silent(t, at(8.5*kg), "far below the ideal weight")
	thin := animal(energy.Dog, 6*kg)
	thin.Ideal = 10 * kg
	cautioned(t, prescribe(thin, 200), advice.Refer, "far below the ideal weight")
}

func TestRestingOfAnAnimalThatNeedsMoreIsReferred(t *testing.T) {
	for _, c := range []energy.Circumstances{energy.Growing, energy.Pregnant, energy.Lactating} {
		a := animal(energy.Cat, 4*kg)
		a.Circumstances = c
		cautioned(t, energy.Resting{Animal: a}, advice.Refer, "needs a multiple of its resting energy")
	}
	silent(t, energy.Resting{Animal: animal(energy.Cat, 4*kg)}, "multiple")
}

// 16 kg has a resting energy of 560 kcal: 8 times it in lactation, 4 in growth.
func TestUsualRangeIsWiderInLactationAndGrowth(t *testing.T) {
	for c, high := range map[energy.Circumstances]units.Energy{energy.Lactating: 4480, energy.Growing: 2240} {
		a := animal(energy.Dog, 16*kg)
		a.Circumstances = c
		silent(t, prescribe(a, high), "check the prescribed")
		cautioned(t, prescribe(a, high+1), advice.Warn, "check the prescribed")
	}
}

func TestMultipliedEstimateIsReferred(t *testing.T) {
	for _, s := range []energy.Stage{adultOf(energy.Dog)(16 * kg), adultOf(energy.Ferret)(1 * kg), linear(16 * kg), restingOf(energy.Cat)(4 * kg)} {
		e := estimate(t, s)
		e.Daily *= 10
		if c := e.Cautions(); len(c) == 0 || c[0].Level != advice.Refer {
			t.Errorf("%T times ten: %v", s, c)
		}
	}
}
