package energy_test

import (
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// anyNursling is a nursling with every field in or just out of its range.
func anyNursling() gopter.Gen {
	return gopter.CombineGens(
		anyWeight(), anyWeight(), proptest.Quantity[float64](0.6, 1.6), gen.IntRange(0, 5), gen.IntRange(-1, 31),
		gen.IntRange(0, 6), gen.IntRange(0, 40),
	).Map(func(v []any) energy.Nursling {
		s := nursling(energy.Species(v[3].(int)), v[0].(units.Mass), energy.Age(v[4].(int)))
		switch n := v[5].(int); n {
		case 0, 1:
		case 2:
			s.DayBefore = v[1].(units.Mass)
		default:
			s.DayBefore = s.Animal.Weight * units.Mass(v[2].(float64))
		}
		if n := v[6].(int); n < 10 {
			s.Method = energy.Method(n)
		}
		return s
	})
}

func TestAnyNurslingIsRefusedOrGivesAFinitePositiveEnergy(t *testing.T) {
	accepted, alarmed := 0, 0
	proptest.Check(t, "zero on error, else 0 < low <= daily <= high < infinity; the alarm is under the least gain", prop.ForAll(func(s energy.Nursling) string {
		e, err := s.Estimate()
		g, gainErr := s.DailyGain()
		if (err == nil) != (gainErr == nil) {
			return fmt.Sprintf("%v for the energy, %v for the gain", err, gainErr)
		}
		if err != nil {
			if e != (energy.Estimate{}) || g != (energy.Gain{}) {
				return fmt.Sprintf("%+v and %+v beside %v", e, g, err)
			}
			return ""
		}
		accepted++
		if !(0 < e.Low && e.Low <= e.Daily && e.Daily <= e.High) || math.IsInf(float64(e.High), 0) {
			return fmt.Sprintf("%v from %v to %v", e.Daily, e.Low, e.High)
		}
		if !(g.Alarm <= g.Low && 0 < g.Low && g.Low < g.High) {
			return fmt.Sprintf("gain %+v", g)
		}
		alarm := s.DayBefore > 0 && s.Animal.Weight-s.DayBefore < g.Alarm || s.Animal.Weight < 130*units.Gram
		if refer := e.Cautions()[0].Level == advice.Refer; alarm && !refer && s.Animal.Age > 21 || refer && !alarm {
			return fmt.Sprintf("%v to %v: alarm %v, refer-level caution %v", s.DayBefore, s.Animal.Weight, alarm, refer)
		} else if refer {
			alarmed++
		}
		return ""
	}, anyNursling()))
	if accepted == 0 || alarmed == 0 {
		t.Errorf("%d accepted, %d of them alarmed: the property says nothing", accepted, alarmed)
	}
}

func TestTwiceTheNurslingIsTwiceTheEnergy(t *testing.T) {
	proptest.Check(t, "exactly", prop.ForAll(func(w units.Mass, age int, dog, nrc bool) string {
		s := nursling(energy.Cat, w, energy.Age(age))
		if dog {
			s.Animal.Species = energy.Dog
		}
		if nrc {
			s.Method = energy.NRC2006
		}
		twice := s
		twice.Animal.Weight *= 2
		a, b := estimate(t, s), estimate(t, twice)
		if b.Daily != 2*a.Daily || b.Low != 2*a.Low || b.High != 2*a.High {
			return fmt.Sprintf("%v and %v", a.Daily, b.Daily)
		}
		return ""
	}, proptest.Quantity[units.Mass](50, 175), gen.IntRange(1, 28), gen.Bool(), gen.Bool()))
}

func TestOlderNurslingOfOneWeightNeverNeedsLess(t *testing.T) {
	for _, species := range []energy.Species{energy.Dog, energy.Cat} {
		for age := energy.Age(1); age < 28; age++ {
			a, b := estimate(t, nursling(species, 200, age)), estimate(t, nursling(species, 200, age+1))
			if b.Daily < a.Daily || b.Low < a.Low || b.High < a.High {
				t.Errorf("%v: %v on day %d, then %v", species, a.Daily, age, b.Daily)
			}
		}
	}
}

func TestOuncesAndGramsOfOneNurslingAgree(t *testing.T) {
	proptest.Check(t, "within a few units in the last place", prop.ForAll(func(oz float64) string {
		a := estimate(t, nursling(energy.Cat, units.Mass(oz)*units.Ounce, 12)).Daily
		b := estimate(t, nursling(energy.Cat, units.Mass(oz*28.349523125)*units.Gram, 12)).Daily
		if !(math.Abs(float64(a-b)) <= 4*ulp(float64(a))) {
			return fmt.Sprintf("%v oz: %v and %v", oz, a, b)
		}
		return ""
	}, proptest.Quantity[float64](2, 17)))
}

func TestNurslingGoesThroughJSON(t *testing.T) {
	s := nursling(energy.Cat, 189*units.Gram, 12)
	s.DayBefore, s.Method = 184*units.Gram, energy.NRC2006
	const want = `{"stage":"nursling","animal":{"species":"cat","weight":"189 g","age":"12 d"},"day_before":"184 g","method":"nrc_2006"}`
	b, err := json.Marshal(energy.Stored{Stage: s})
	if string(b) != want || err != nil {
		t.Errorf("got  %s, %v\nwant %s", b, err, want)
	}
	var back energy.Stored
	if err := json.Unmarshal([]byte(want), &back); back.Stage != s || err != nil {
		t.Errorf("read back %+v, %v", back.Stage, err)
	}
}
