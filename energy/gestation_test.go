package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// pregnant returns the stage of an animal that weighs now what it did before
// mating.
func pregnant(s energy.Species, weight units.Mass, week int, m energy.Method) energy.Gestation {
	return energy.Gestation{Animal: animal(s, weight), Week: week, WeightBeforeMating: weight, Method: m}
}

// withinDay checks a day's energy and its range to a tenth of a kilocalorie.
func withinDay(t *testing.T, s energy.Stage, daily, low, high float64) {
	t.Helper()
	e := estimate(t, s)
	for _, f := range []struct {
		name string
		got  units.Energy
		want float64
	}{{"daily", e.Daily, daily}, {"low", e.Low, low}, {"high", e.High, high}} {
		if math.Abs(f.got.Kilocalories()-f.want) > 0.05 {
			t.Errorf("%+v: %s %v, want %v kcal", s, f.name, f.got, f.want)
		}
	}
}

// The booklet of 2006 on the dog, its row of pregnant dogs from four weeks
// after mating, from memory and to 10 kcal.
func TestGestationOfBookletDogs(t *testing.T) {
	for lb, want := range map[units.Mass]float64{10: 518, 30: 1274, 50: 1940, 70: 2567, 90: 3170} {
		e := estimate(t, pregnant(energy.Dog, lb*units.Pound, 5, energy.NRC2006))
		if got := e.Daily.Kilocalories(); math.Abs(got-want) > 10 {
			t.Errorf("%v lb: %v kcal, want %v within 10", lb, got, want)
		}
	}
}

// 16^0.75 is 8, and 70 × 8 is 560. The ranges without a published one of their
// own are 30 % to either side.
func TestGestationOfABitchByHand(t *testing.T) {
	for week := range 11 {
		late := week == 0 || week >= 5
		nrc, sacn := [3]float64{1040, 728, 1352}, [3]float64{1064, 1008, 1120} // 130; 1.9, 1.8, 2.0
		if late {
			nrc = [3]float64{1456, 1019.2, 1892.8} // 1040 + 26 × 16
			sacn = [3]float64{1596, 1232, 1960}    // 2.85, 2.2, 3.5
		}
		withinDay(t, pregnant(energy.Dog, 16*kg, week, 0), nrc[0], nrc[1], nrc[2])
		withinDay(t, pregnant(energy.Dog, 16*kg, week, energy.NRC2006), nrc[0], nrc[1], nrc[2])
		withinDay(t, pregnant(energy.Dog, 16*kg, week, energy.FactorOnRER), sacn[0], sacn[1], sacn[2])
	}
}

// 4^0.67 = 2^1.34 = 2.53151; 140 of it are 354.41, half and one and a half
// times that 177.2 and 531.6. 4^0.75 = 2.82843, × 70 = 197.99; SACN 5th ed., p.
// 410, has 1.6 at breeding and 2.0 at parturition, and every week's step
// between is 0.05.
func TestGestationOfAQueenByHand(t *testing.T) {
	for week := range 11 {
		withinDay(t, pregnant(energy.Cat, 4*kg, week, 0), 354.41, 177.21, 531.62)
	}
	for week, want := range []float64{
		0: 395.98, 1: 316.78, 2: 326.68, 3: 336.58, 4: 346.48, 5: 356.38, 6: 366.28, 7: 376.18, 8: 386.08, 9: 395.98, 10: 395.98,
	} {
		withinDay(t, pregnant(energy.Cat, 4*kg, week, energy.FactorOnRER), want, want/2, want*3/2)
	}
}

// SACN 5th ed., p. 1218: about twice; Table 70-1: 200 to 300 kcal/kg.
func TestGestationOfAJill(t *testing.T) {
	for week := range 8 {
		withinDay(t, pregnant(energy.Ferret, 1.2*kg, week, 0), 600, 480, 720)
	}
}

func TestGestationUsesTheWeightBeforeMating(t *testing.T) {
	a := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Ideal: 14 * kg}
	for _, tt := range []struct {
		before, weight units.Mass
		basis          energy.Basis
	}{
		{16 * kg, 16 * kg, energy.BeforeMating},
		{21 * kg, 21 * kg, energy.BeforeMating},
		{20 * kg, 20 * kg, energy.BeforeMating},
		{0, 20 * kg, energy.Current},
	} {
		for _, m := range []energy.Method{energy.NRC2006, energy.FactorOnRER} {
			e := estimate(t, energy.Gestation{Animal: a, Week: 6, WeightBeforeMating: tt.before, Method: m})
			if e.Weight != tt.weight || e.Basis != tt.basis {
				t.Errorf("%v before mating: %v, %v; want %v, %v", tt.before, e.Weight, e.Basis, tt.weight, tt.basis)
			}
			same := estimate(t, pregnant(energy.Dog, tt.weight, 6, m))
			if e.Daily != same.Daily {
				t.Errorf("%v before mating: %v, want %v", tt.before, e.Daily, same.Daily)
			}
		}
	}
}

func TestGestationNamesItsMethodAndIsWeighedAfterAWeek(t *testing.T) {
	for species, want := range map[energy.Species]energy.Method{
		energy.Dog: energy.NRC2006, energy.Cat: energy.NRC2006, energy.Ferret: energy.PerKilogram,
	} {
		e := estimate(t, pregnant(species, 2*kg, 1, 0))
		if e.Method != want || e.Reweigh != 7*energy.Day {
			t.Errorf("%v: %v, again in %v; want %v, 1 wk", species, e.Method, e.Reweigh, want)
		}
	}
}

func TestPregnantIsImpliedByGestation(t *testing.T) {
	s := pregnant(energy.Cat, 4*kg, 5, 0)
	want := estimate(t, s).Daily
	s.Animal.Circumstances = energy.Pregnant
	if got := estimate(t, s).Daily; got != want {
		t.Errorf("%v with the circumstance, %v without", got, want)
	}
}
