package energy_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// growthMethods are those of Growth, the default, one of another stage and one
// that is none.
var growthMethods = []energy.Method{
	energy.FEDIAF, energy.NRC2006, energy.Klein2019, energy.FactorOnRER, energy.PerKilogram, 0, energy.RERPower, 99,
}

// anyGrowth is a stage with every field in or just out of its range.
func anyGrowth() gopter.Gen {
	weight := gen.Weighted([]gen.WeightedGen{
		{Weight: 1, Gen: anyWeight()},
		{Weight: 5, Gen: proptest.Quantity[units.Mass](800, 40e3)},
	})
	species := gen.OneConstOf(energy.Species(0), energy.Dog, energy.Dog, energy.Cat, energy.Cat, energy.Ferret)
	return gopter.CombineGens(
		species, weight, weight, gen.Float64Range(0.01, 1.1), gen.IntRange(-1, 800),
		gen.IntRange(0, 7), gen.IntRange(0, 10), gen.IntRange(0, 4),
	).Map(func(v []any) energy.Growth {
		s := energy.Growth{
			Animal: energy.Animal{
				Species: v[0].(energy.Species), Weight: v[1].(units.Mass), Age: energy.Age(v[4].(int)),
			},
			AdultWeight: v[2].(units.Mass), Method: growthMethods[v[5].(int)],
		}
		if n := v[6].(int); n > 2 {
			s.Animal.Condition = energy.BCS9(n)
		}
		switch v[7].(int) {
		case 0:
			s.AdultWeight = 0
		case 1, 2: // a part of the adult weight, as growing animals have
			s.Animal.Weight = units.Mass(v[3].(float64)) * s.AdultWeight
		case 3:
			s.Animal.Age = 0
		}
		return s
	})
}

func TestAnyGrowthIsRefusedOrGivesAFinitePositiveEnergy(t *testing.T) {
	accepted := map[energy.Method]int{}
	proptest.Check(t, "zero on error, else 0 < low <= daily <= high < infinity", prop.ForAll(func(s energy.Growth) string {
		e, err := s.Estimate()
		if err != nil {
			if e != (energy.Estimate{}) {
				return fmt.Sprintf("%+v beside %v", e, err)
			}
			return ""
		}
		accepted[e.Method]++
		if !(0 < e.Low && e.Low <= e.Daily && e.Daily <= e.High) || math.IsInf(float64(e.High), 0) {
			return fmt.Sprintf("%v from %v to %v", e.Daily, e.Low, e.High)
		}
		if e.Stage != energy.Stage(s) || e.Weight != s.Animal.Weight || e.Basis != energy.Current {
			return fmt.Sprintf("%+v", e)
		}
		return ""
	}, anyGrowth()))
	for _, m := range growthMethods[:5] {
		if accepted[m] == 0 && !testing.Short() {
			t.Errorf("no input was taken by %v: the property says nothing of it", m)
		}
	}
}

// part generates parts of the adult weight.
func part(low, high float64) gopter.Gen { return gen.Float64Range(low, high) }

// adultDog generates expected adult weights.
func adultDog() gopter.Gen { return proptest.Quantity[units.Mass](3e3, 100e3) }

func TestWithinABandOfFEDIAFTheHeavierPuppyNeedsMore(t *testing.T) {
	for _, band := range [][2]float64{{0.151, 0.499}, {0.5, 0.799}, {0.8, 0.999}} {
		proptest.Check(t, fmt.Sprint(band), prop.ForAll(func(adult units.Mass, p float64) bool {
			s := puppy(units.Mass(p)*adult, adult, 0)
			heavier := s
			heavier.Animal.Weight *= 1.001
			return estimate(t, s).Daily < estimate(t, heavier).Daily
		}, adultDog(), part(band[0]+1e-6, band[1]/1.001)))
	}
}

// 175/210 is 0.8333 and 140/175 is 0.8: the falls that the documentation gives
// as a sixth or more.
func TestFEDIAFFallsWhereABandEnds(t *testing.T) {
	for share, want := range map[units.Mass]float64{0.5: 175.0 / 210, 0.8: 140.0 / 175} {
		proptest.Check(t, fmt.Sprint(float64(share)), prop.ForAll(func(adult units.Mass) string {
			below := estimate(t, puppy(share*adult*(1-1e-6), adult, 0)).Daily
			above := estimate(t, puppy(share*adult*(1+1e-12), adult, 0)).Daily
			if got := float64(above / below); math.Abs(got-want) > 1e-6 {
				return fmt.Sprintf("%v to %v: %v, want %v", below, above, got, want)
			}
			return ""
		}, adultDog()))
	}
}

// The peaks of the NRC forms are where the derivative of p^x × factor(p) is
// zero: 0.703 for the puppy and about 0.82 for the kitten, whatever the adult
// weight.
func TestNRCPeaksBeforeTheAdultWeight(t *testing.T) {
	for _, tt := range []struct {
		name       string
		of         func(weight, adult units.Mass, age energy.Age) energy.Growth
		peak, step float64
	}{
		{"puppy", puppy, 0.703, 0.002},
		{"kitten", kitten, 0.82, 0.01},
	} {
		proptest.Check(t, tt.name, prop.ForAll(func(adult units.Mass) string {
			at := func(p float64) units.Energy {
				return estimate(t, by(tt.of(units.Mass(p)*adult, adult, 0), energy.NRC2006)).Daily
			}
			for _, rising := range []float64{0.16, 0.3, 0.5, tt.peak - 3*tt.step, tt.peak - 2*tt.step} {
				if !(at(rising) < at(rising+tt.step)) {
					return fmt.Sprintf("doesn't rise at p = %v", rising)
				}
			}
			for _, falling := range []float64{tt.peak + tt.step, tt.peak + 2*tt.step, 0.9, 0.95} {
				if !(at(falling) > at(falling+tt.step)) {
					return fmt.Sprintf("doesn't fall at p = %v", falling)
				}
			}
			return ""
		}, proptest.Quantity[units.Mass](2e3, 20e3)))
	}
}

// FEDIAF asks for less than NRC 2006 up to half of the adult weight, and the
// pet puppies of Klein 2019 ate less than it.
func TestNRCIsTheHighestOfThePuppyMethodsWhileYoung(t *testing.T) {
	proptest.Check(t, "fediaf and klein_2019 below nrc_2006 to half the adult weight", prop.ForAll(func(adult units.Mass, p float64) bool {
		s := puppy(units.Mass(p)*adult, adult, 0)
		high := estimate(t, by(s, energy.NRC2006)).Daily
		return estimate(t, by(s, energy.FEDIAF)).Daily < high && estimate(t, by(s, energy.Klein2019)).Daily < high
	}, adultDog(), part(0.151, 0.5)))
}

// 16 times both weights: the same part, 16^0.75 = 8 times the energy, to the
// last bit where nothing but roots and products are taken.
func TestSixteenTimesBothWeightsOfAPuppyIsEightTimesTheEnergy(t *testing.T) {
	proptest.Check(t, "exactly", prop.ForAll(func(adult units.Mass, p float64) string {
		for _, m := range []energy.Method{energy.FEDIAF, energy.NRC2006, energy.Klein2019} {
			small := by(puppy(units.Mass(p)*adult, adult, 0), m)
			large := small
			large.Animal.Weight, large.AdultWeight = 16*small.Animal.Weight, 16*adult
			if got, want := estimate(t, large).Daily, 8*estimate(t, small).Daily; got != want {
				return fmt.Sprintf("%v: %v, want %v", m, got, want)
			}
		}
		return ""
	}, proptest.Quantity[units.Mass](3e3, 7.5e3), part(0.151, 1)))
}
