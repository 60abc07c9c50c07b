package portion_test

import (
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// plan is the main job: an animal and a menu to three meals.
func plan(dst []portion.Meal, w units.Mass, menu diet.Menu) ([]portion.Meal, error) {
	need, err := energy.Adult{
		Animal: energy.Animal{Species: energy.Dog, Weight: w, Condition: energy.BCS9(5)},
		Status: energy.Neutered,
	}.Estimate()
	if err != nil {
		return dst, err
	}
	ration, err := portion.Weigh(need, menu)
	if err != nil {
		return dst, err
	}
	return ration.AppendMeals(dst, 3, units.Gram)
}

func TestPlanAllocatesAtMostOnce(t *testing.T) {
	menu := diet.Only(kibble)
	dst := make([]portion.Meal, 0, 3)
	w := 20 * units.Kilogram
	allocs := testing.AllocsPerRun(1000, func() {
		w += units.Gram
		if _, err := plan(dst, w, menu); err != nil {
			panic(err)
		}
	})
	if allocs > 1 {
		t.Errorf("a plan allocates %v times, want at most 1", allocs)
	}
}

func TestAppendMealsAllocatesNothing(t *testing.T) {
	ration, err := portion.Weigh(prescribed(1000), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	dst := make([]portion.Meal, 0, portion.MaxMeals)
	if allocs := testing.AllocsPerRun(1000, func() {
		if _, err := ration.AppendMeals(dst, portion.MaxMeals, units.Gram); err != nil {
			panic(err)
		}
	}); allocs != 0 {
		t.Errorf("AppendMeals allocates %v times, want none", allocs)
	}
}

func TestMoreEnergyIsNeverFewerGrams(t *testing.T) {
	menu := diet.Only(kibble)
	grams := func(e units.Energy) int64 {
		r, err := portion.Weigh(prescribed(e), menu)
		if err != nil {
			panic(err)
		}
		w, err := r.On(units.Gram)
		if err != nil {
			panic(err)
		}
		return w.Count(0)
	}
	proptest.Check(t, "monotone in the need", prop.ForAll(func(e units.Energy, more float64) bool {
		return grams(e) <= grams(min(e*units.Energy(more), 5000))
	}, proptest.Quantity[units.Energy](20, 5000), gen.Float64Range(1, 1.1)))
}

func TestDeliveredEnergyIsWithinHalfAStep(t *testing.T) {
	proptest.Check(t, "delivered against target", prop.ForAll(func(e units.Energy, step units.Mass) bool {
		r, err := portion.Weigh(prescribed(e), diet.Only(kibble))
		if err != nil {
			return false
		}
		w, err := r.On(step)
		if err != nil {
			return false
		}
		half := kibble.Label.Energy.Energy(step / 2)
		return math.Abs(float64(w.Energy()-w.Target())) <= float64(half)*(1+1e-12)
	}, proptest.Quantity[units.Energy](20, 5000), gen.OneConstOf(units.Mass(0.1), units.Gram, 5*units.Gram)))
}

var (
	meals []portion.Meal
	sink  [3]float64
)

func weights() []units.Mass {
	w := make([]units.Mass, 1024)
	for i := range w {
		w[i] = units.Mass(2000 + 50*i)
	}
	return w
}

func BenchmarkPlan(b *testing.B) {
	menu, in := diet.Only(kibble), weights()
	meals = make([]portion.Meal, 0, 3)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		var err error
		if meals, err = plan(meals[:0], in[i&1023], menu); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkPlanFloor is the bare arithmetic of BenchmarkPlan.
func BenchmarkPlanFloor(b *testing.B) {
	in := weights()
	for i := 0; b.Loop(); i++ {
		kg := float64(in[i&1023]) / 1000
		kcal := 1.6 * 70 * math.Sqrt(math.Sqrt(kg*kg*kg))
		day := int64(math.Round(kcal / 3560 * 1000))
		for m := range int64(3) {
			n := day / 3
			if m < day%3 {
				n++
			}
			sink[m] = float64(n)
		}
	}
}
