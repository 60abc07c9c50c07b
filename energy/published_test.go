package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// The weight of 16 kg is chosen for its power: 16^0.75 is 8 and 70 × 8 is 560,
// so that the whole table can be done in the head. Ferrets and the cat's other
// powers stand in tests of their own.
func TestCoefficientsOfAdults(t *testing.T) {
	for _, tt := range []struct {
		species energy.Species
		method  energy.Method
		status  energy.Status
		want    units.Energy
	}{
		// SACN 5th ed., Table 33-7: 1.6, 1.8 and 1.2 (lower end).
		{energy.Dog, energy.FactorOnRER, energy.Neutered, 896},
		{energy.Dog, energy.FactorOnRER, energy.Intact, 1008},
		{energy.Dog, energy.FactorOnRER, energy.Inactive, 672},
		// Melbourne Polytechnic: 1.4.
		{energy.Dog, energy.FactorOnRER, energy.Senior, 784},
		{energy.Dog, energy.FactorOnRER, energy.Unknown, 896},
		// Cat Healthy Protocols, Table 1: 1.2, 1.4 and 1.0.
		{energy.Cat, energy.FactorOnRER, energy.Neutered, 672},
		{energy.Cat, energy.FactorOnRER, energy.Intact, 784},
		{energy.Cat, energy.FactorOnRER, energy.Inactive, 560},
		// The middle of 1.1 to 1.4.
		{energy.Cat, energy.FactorOnRER, energy.Senior, 700},
		{energy.Cat, energy.FactorOnRER, energy.Unknown, 672},
		// NRC 2006: 130; 95 and 105 from memory.
		{energy.Dog, energy.NRC2006, energy.Neutered, 1040},
		{energy.Dog, energy.NRC2006, energy.Intact, 1040},
		{energy.Dog, energy.NRC2006, energy.Inactive, 760},
		{energy.Dog, energy.NRC2006, energy.Senior, 840},
		{energy.Dog, energy.NRC2006, energy.Unknown, 1040},
		// FEDIAF Annex VII-2: 110, and 95 for the inactive and the over 7 years.
		{energy.Dog, energy.FEDIAF, energy.Neutered, 880},
		{energy.Dog, energy.FEDIAF, energy.Intact, 880},
		{energy.Dog, energy.FEDIAF, energy.Inactive, 760},
		{energy.Dog, energy.FEDIAF, energy.Senior, 760},
		{energy.Dog, energy.FEDIAF, energy.Unknown, 760},
	} {
		e := estimate(t, energy.Adult{Animal: animal(tt.species, 16*kg), Status: tt.status, Method: tt.method})
		if e.Method != tt.method || math.Abs(float64(e.Daily-tt.want)) > 1e-9 {
			t.Errorf("%v %v %v: %v by %v, want %v", tt.species, tt.method, tt.status, e.Daily, e.Method, tt.want)
		}
	}
}

// FEDIAF Table VII-12: a cat of 4 kg, 253 and 189 kcal (189.86, cut in print).
func TestFEDIAFCats(t *testing.T) {
	for status, want := range map[energy.Status]float64{
		energy.Intact: 253, energy.Neutered: 189, energy.Inactive: 189, energy.Senior: 189, energy.Unknown: 189,
	} {
		e := estimate(t, energy.Adult{Animal: animal(energy.Cat, 4*kg), Status: status, Method: energy.FEDIAF})
		if got := math.Floor(e.Daily.Kilocalories()); got != want {
			t.Errorf("%v: %v kcal, want %v", status, got, want)
		}
	}
}

// NRC, owner booklet on cats, 2006, p. 5, printed to 10 kcal.
func TestNRCCatsAgainstTheOwnerBooklet(t *testing.T) {
	for _, tt := range []struct {
		pounds    units.Mass
		lean, fat float64
	}{{5, 170, 180}, {10, 280, 240}, {15, 360, 280}, {20, 440, 310}} {
		for condition, want := range map[energy.Condition]float64{energy.BCS9(5): tt.lean, energy.BCS9(8): tt.fat} {
			cat := energy.Animal{Species: energy.Cat, Weight: tt.pounds * units.Pound, Condition: condition}
			e := estimate(t, energy.Adult{Animal: cat, Status: energy.Neutered, Method: energy.NRC2006})
			if got := e.Daily.Kilocalories(); math.Abs(got-want) > 5 {
				t.Errorf("%v lb, %v: %.1f kcal, want %v within 5", float64(tt.pounds), condition, got, want)
			}
		}
	}
}

// SACN 5th ed., Table 70-1 after McLain 1988: 200 to 300 kcal/kg.
func TestFerretGetsTheMiddleOfItsRangeWhateverItsStatus(t *testing.T) {
	for status := range energy.Unknown + 1 {
		e := estimate(t, energy.Adult{Animal: animal(energy.Ferret, 2*kg), Status: status})
		if e.Daily != 500 || e.Low != 400 || e.High != 600 || e.Method != energy.PerKilogram {
			t.Errorf("%v: %v from %v to %v by %v, want 500, 400 and 600 kcal", status, e.Daily, e.Low, e.High, e.Method)
		}
	}
}

// SACN 5th ed. p. 377: cats at least ±50 %; AAHA 2010 and WSAVA 2011: dogs
// ±30 %. The senior cat has a published range of its own, 1.1 to 1.4 × 560.
func TestSpread(t *testing.T) {
	for _, tt := range []struct {
		stage     energy.Stage
		low, high units.Energy
	}{
		{energy.Resting{Animal: animal(energy.Dog, 16*kg)}, 392, 728},
		{energy.Resting{Animal: animal(energy.Cat, 16*kg)}, 280, 840},
		{energy.Adult{Animal: animal(energy.Dog, 16*kg), Status: energy.Intact}, 705.6, 1310.4},
		{energy.Adult{Animal: animal(energy.Cat, 16*kg), Status: energy.Intact}, 392, 1176},
		{energy.Adult{Animal: animal(energy.Cat, 16*kg), Status: energy.Senior}, 616, 784},
	} {
		e := estimate(t, tt.stage)
		if math.Abs(float64(e.Low-tt.low)) > 1e-9 || math.Abs(float64(e.High-tt.high)) > 1e-9 {
			t.Errorf("%+v: %v to %v, want %v to %v", tt.stage, e.Low, e.High, tt.low, tt.high)
		}
	}
}

// The intervals are ours, within the published two to four weeks.
func TestReweighInterval(t *testing.T) {
	for _, tt := range []struct {
		stage energy.Stage
		want  energy.Age
	}{
		{adultOf(energy.Dog)(16 * kg), 28},
		{adultOf(energy.Cat)(4 * kg), 14},
		{adultOf(energy.Ferret)(1 * kg), 14},
		{restingOf(energy.Dog)(16 * kg), 14},
		{prescribe(energy.Animal{}, 250), 7},
	} {
		if e := estimate(t, tt.stage); e.Reweigh != tt.want {
			t.Errorf("%T %v: %v, want %d days", tt.stage, e.Animal.Species, e.Reweigh, tt.want)
		}
	}
}

// Bermingham 2010: 53.7 × kg^1.061 for light, 46.8 × kg^1.115 for normal and
// 131.8 × kg^0.366 for heavy cats. The powers of 5 by logarithms: 1.061 × ln 5
// is 1.70761, its exponential 5.5157; 1.115: 1.79452 and 6.0166; 0.366: 0.58905
// and 1.8023.
func TestBerminghamCats(t *testing.T) {
	for condition, want := range map[int]float64{3: 296.2, 4: 281.6, 6: 281.6, 7: 237.5} {
		a := animal(energy.Cat, 5*kg)
		a.Condition = energy.BCS9(condition)
		e := estimate(t, energy.Adult{Animal: a, Status: energy.Neutered, Method: energy.Bermingham})
		if math.Abs(e.Daily.Kilocalories()-want) > 0.06 {
			t.Errorf("%d/9: %v, want %v kcal", condition, e.Daily, want)
		}
	}
}

// Bermingham 2010, abstract: the mean of all cats is 55.1 kcal/kg, standard
// error 1.2, and that of the curve for normal cats must lie with it.
func TestBerminghamCatsAgreeWithTheirMean(t *testing.T) {
	e := estimate(t, energy.Adult{Animal: animal(energy.Cat, 4*kg), Status: energy.Neutered, Method: energy.Bermingham})
	if perKilogram := e.Daily.Kilocalories() / 4; math.Abs(perKilogram-55.1) > 1.2 {
		t.Errorf("%.1f kcal/kg, the study's mean is 55.1 ± 1.2", perKilogram)
	}
}

// Thes 2014: 98 kcal/kg^0.75, standard deviation 29. 16^0.75 is 8.
func TestThesDogs(t *testing.T) {
	e := estimate(t, energy.Adult{Animal: animal(energy.Dog, 16*kg), Status: energy.Neutered, Method: energy.Thes})
	if e.Daily != 784 || e.Low != 552 || e.High != 1016 {
		t.Errorf("%v from %v to %v, want 784 from 552 to 1016 kcal", e.Daily, e.Low, e.High)
	}
	refused(t, energy.Adult{Animal: animal(energy.Cat, 4*kg), Status: energy.Neutered, Method: energy.Thes}, "method",
		`energy: method "thes": want factor_on_rer, nrc_2006, fediaf or bermingham`)
}
