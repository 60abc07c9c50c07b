package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func nursing(s energy.Species, weight units.Mass, young, week int, m energy.Method) energy.Lactation {
	return energy.Lactation{Animal: animal(s, weight), Young: young, Week: week, Method: m}
}

// day returns what the stage estimates in kcal.
func day(t *testing.T, s energy.Stage) float64 {
	t.Helper()
	return estimate(t, s).Daily.Kilocalories()
}

// National Academies, Your Cat's Nutritional Needs, 2006, p. 5: the row of the
// nursing queen, four kittens at the peak. The cell of 10 lb is 1 high.
func TestLactationOfBookletQueens(t *testing.T) {
	for lb, want := range map[units.Mass]float64{5: 336, 10: 603, 15: 851, 20: 1091} {
		for _, week := range []int{0, 3, 4} {
			if got := day(t, nursing(energy.Cat, lb*units.Pound, 4, week, 0)); math.Abs(got-want) > 1.5 {
				t.Errorf("%v lb, week %d: %v kcal, want %v within 1.5", lb, week, got, want)
			}
		}
	}
}

// SACN 5th ed., case, p. 413: a queen of 3.5 kg, 4 to 6 × RER, about 700 to
// 1000 kcal; the second is 1075, cut hard in print.
func TestLactationOfTheHandbooksQueen(t *testing.T) {
	e := estimate(t, nursing(energy.Cat, 3.5*kg, 4, 3, energy.FactorOnRER))
	if got := e.Daily.Kilocalories(); math.Abs(got-700) > 20 {
		t.Errorf("%v kcal at 4 × RER, want 700 within 20", got)
	}
	if got := e.High.Kilocalories(); math.Abs(got-1000) > 80 {
		t.Errorf("%v kcal at 6 × RER, want 1000 within 80", got)
	}
}

// 16^0.75 is 8; 145 × 8 = 1160, and 24 × 4 × 16 = 1536 times L. NRC 2006, from
// memory: L = 0.75, 0.95, 1.1, 1.2. The figure is a floor: its spread runs
// upwards only, and so with every one that has no range in print.
func TestLactationOfABitchByWeek(t *testing.T) {
	for week, want := range []float64{1: 2312, 2: 2619.2, 3: 2849.6, 4: 3003.2, 5: 3003.2, 10: 3003.2} {
		if want > 0 {
			withinDay(t, nursing(energy.Dog, 16*kg, 4, week, 0), want, want, want*1.3)
		}
	}
	withinDay(t, nursing(energy.Dog, 16*kg, 4, 0, energy.NRC2006), 3003.2, 3003.2, 3904.16)
}

// 1160 and, in week 4, 16 × 1.2 = 19.2 times 24 for each of the first four
// puppies and 12 for each of the next four; FEDIAF, from memory, writes these
// as 96 + 12 × (n - 4). In FactorOnRER 560 times the factor of SACN 5th ed.,
// Table 5-2, p. 61, from 5 puppies on from memory.
func TestLactationOfABitchByLitter(t *testing.T) {
	for _, tt := range []struct {
		puppies     int
		nrc, factor float64
	}{
		{1, 1620.8, 1680}, // 3.0
		{2, 2081.6, 1960}, // 3.5
		{3, 2542.4, 2240}, // 4.0
		{4, 3003.2, 2240},
		{5, 3233.6, 2800}, // 5.0, from memory
		{6, 3464.0, 2800},
		{7, 3694.4, 3080}, // 5.5, from memory
		{8, 3924.8, 3080},
		{9, 3924.8, 3360}, // 6.0 or more, from memory
		{24, 3924.8, 3360},
	} {
		withinDay(t, nursing(energy.Dog, 16*kg, tt.puppies, 4, 0), tt.nrc, tt.nrc, tt.nrc*1.3)
		for _, week := range []int{0, 1, 4, 10} {
			withinDay(t, nursing(energy.Dog, 16*kg, tt.puppies, week, energy.FactorOnRER), tt.factor, tt.factor, tt.factor*1.3)
		}
	}
}

// 65^0.75 = 22.892, × 145 = 3319.3; 65 × 144 × 1.2 = 11232. SACN 5th ed., case,
// p. 294, reckons 11250 kcal for this bitch and her eleven puppies.
func TestLactationOfElevenPuppiesIsThatOfEight(t *testing.T) {
	for _, puppies := range []int{8, 11} {
		if got := day(t, nursing(energy.Dog, 65*kg, puppies, 4, 0)); math.Abs(got-14551.3) > 0.1 {
			t.Errorf("%d puppies: %v kcal, want 14551.3", puppies, got)
		}
	}
}

// 4^0.67 = 2^1.34 = 2.53151; four kittens, 60 × 4 = 240 times L. NRC 2006, from
// memory: L = 0.9, 0.9, 1.2, 1.2, 1.1, 1.0, 0.8.
func TestLactationOfAQueenByWeek(t *testing.T) {
	for week, want := range []float64{
		0: 541.15, 1: 469.15, 2: 469.15, 3: 541.15, 4: 541.15, 5: 517.15, 6: 493.15, 7: 445.15, 8: 445.15, 9: 445.15, 10: 445.15,
	} {
		withinDay(t, nursing(energy.Cat, 4*kg, 4, week, 0), want, want, want*3/2)
	}
}

// 253.15 and, in week 3, 4 × 1.2 = 4.8 times 18, 60 or 70, of which 18 and 70
// are from memory. 70 × 4^0.75 = 197.99; Melbourne Polytechnic: 2.0 to 6.0.
func TestLactationOfAQueenByLitter(t *testing.T) {
	for kittens, want := range map[int]float64{1: 339.55, 2: 339.55, 3: 541.15, 4: 541.15, 5: 589.15, 12: 589.15} {
		withinDay(t, nursing(energy.Cat, 4*kg, kittens, 3, 0), want, want, want*3/2)
		withinDay(t, nursing(energy.Cat, 4*kg, kittens, 3, energy.FactorOnRER), 791.96, 395.98, 1187.94)
	}
}

// SACN 5th ed., p. 1218: three to four times; Table 70-1: 200 to 300 kcal/kg.
// 3.5 × 250, 3 × 200 and 4 × 300, times 1.2.
func TestLactationOfAJill(t *testing.T) {
	for _, week := range []int{0, 1, 6, 10} {
		withinDay(t, nursing(energy.Ferret, 1.2*kg, 8, week, 0), 1050, 720, 1440)
	}
}

func TestLactationUsesTheCurrentWeight(t *testing.T) {
	s := nursing(energy.Dog, 20*kg, 4, 3, 0)
	want := estimate(t, s).Daily
	for _, ideal := range []units.Mass{14 * kg, 20 * kg, 25 * kg} {
		s.Animal.Ideal = ideal
		if e := estimate(t, s); e.Weight != 20*kg || e.Basis != energy.Current || e.Daily != want {
			t.Errorf("ideal %v: %v on %v, %v; want %v on 20 kg, current", ideal, e.Daily, e.Weight, e.Basis, want)
		}
	}
}

func TestLactationNamesItsMethodAndIsWeighedAfterAWeek(t *testing.T) {
	for species, want := range map[energy.Species]energy.Method{
		energy.Dog: energy.NRC2006, energy.Cat: energy.NRC2006, energy.Ferret: energy.PerKilogram,
	} {
		e := estimate(t, nursing(species, 2*kg, 3, 1, 0))
		if e.Method != want || e.Reweigh != 7*energy.Day {
			t.Errorf("%v: %v, again in %v; want %v, 1 wk", species, e.Method, e.Reweigh, want)
		}
	}
}

func TestLactatingIsImpliedByLactation(t *testing.T) {
	s := nursing(energy.Cat, 4*kg, 4, 5, 0)
	want := estimate(t, s).Daily
	s.Animal.Circumstances = energy.Lactating
	if got := estimate(t, s).Daily; got != want {
		t.Errorf("%v with the circumstance, %v without", got, want)
	}
}
