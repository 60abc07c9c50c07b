package portion_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// ferretDay is the day of a ferret of 1.2 kg: 300 kcal, 72.29 g of a food of
// 4150 kcal/kg.
func ferretDay(step units.Mass) portion.Weighed {
	need, err := energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}}.Estimate()
	if err != nil {
		panic(err)
	}
	ration, err := portion.Weigh(need, diet.Only(diet.Food{
		Name: "Tarnwick Kitten Dry", For: diet.Purpose{Species: diet.Cats | diet.Ferrets},
		Label: diet.Label{Energy: 4150 * units.KilocaloriePerKilogram},
	}))
	if err != nil {
		panic(err)
	}
	w, err := ration.On(step)
	if err != nil {
		panic(err)
	}
	return w
}

// With a pencil: 0.5/12 = 4.17 %, 0.5/72 = 0.69 %, 1/√12 = 0.2887, /12 = 2.41 %;
// 2.5/10 = 25 %, 5/√12 = 1.443, /10 = 14.4 %; 0.05/12 = 0.42 %, 0.0289/12 = 0.24 %.
func TestFitnessForAFerretInSixMeals(t *testing.T) {
	for _, test := range []struct {
		step                     units.Mass
		day, meal                string
		half, ofDay, uncertainty string
		grade                    portion.Grade
		finer                    units.Mass
		once                     bool
		remedy                   string
	}{
		{units.Gram / 10, "72.3 g", "12 g", "0.42", "0.07", "0.24", portion.Fits, 0, false, ""},
		{units.Gram, "72 g", "12 g", "4.17", "0.69", "2.41", portion.Coarse, units.Gram / 10, true, "use a 0.1 g scale, or weigh the day's 72 g once and divide it"},
		{5 * units.Gram, "70 g", "10 g", "25.00", "3.57", "14.43", portion.TooCoarse, units.Gram / 10, false, "use a 0.1 g scale"},
	} {
		f, err := ferretDay(test.step).Fitness(0, 6)
		if err != nil {
			t.Fatal(err)
		}
		got := []string{f.Day.String(), f.Meal.String(), fmt.Sprintf("%.2f", f.HalfStepOfMeal()), fmt.Sprintf("%.2f", f.HalfStepOfDay()), fmt.Sprintf("%.2f", f.Uncertainty()), f.Remedy()}
		want := []string{test.day, test.meal, test.half, test.ofDay, test.uncertainty, test.remedy}
		if d := cmp.Diff(want, got); d != "" {
			t.Errorf("%v scale (-want +got):\n%s", test.step, d)
		}
		if f.Grade != test.grade || f.Finer != test.finer || f.DayOnce != test.once {
			t.Errorf("%v scale: %v, finer %v, once %v; want %v, %v, %v", test.step, f.Grade, f.Finer, f.DayOnce, test.grade, test.finer, test.once)
		}
	}
}

func TestExplainOfAFitnessCanBeRedoneByHand(t *testing.T) {
	f, err := ferretDay(5*units.Gram).Fitness(0, 6)
	if err != nil {
		t.Fatal(err)
	}
	const want = `day       72.29 g of Tarnwick Kitten Dry is 70 g on a 5 g scale, -3.2 %
load      10 g, the smallest of 6 meals
rounding  half a step, 2.5 g, is 25.0 % of that and 3.6 % of the day
uncertain standard uncertainty 5 g ÷ √12 = 1.443 g, 14.4 %
source    JCGM 100:2008, Guide to the expression of uncertainty in measurement, F.2.2.1: step/√12
guide     20 steps, 100 g, are the least load of a class III scale, where half a step is 2.5 %
source    OIML R 76-1, Non-automatic weighing instruments, Table 3: minimum capacity 20 e in class III, as a guide for a kitchen scale (as quoted elsewhere)
remedy    use a 0.1 g scale
`
	if d := cmp.Diff(want, f.Explain()); d != "" {
		t.Errorf("working (-want +got):\n%s", d)
	}
	if got := (portion.Fitness{}).Explain(); got != "" {
		t.Errorf("the zero Fitness explains %q", got)
	}
}

// 20 and 10 steps are the limits, each with what lies just below it.
func TestGradesOfAScale(t *testing.T) {
	for _, test := range []struct {
		scale portion.Scale
		day   units.Mass
		meals int
		grade portion.Grade
		text  string // of the caution
	}{
		{portion.Scale{Step: 1}, 20, 1, portion.Fits, ""},
		{portion.Scale{Step: 1}, 19, 1, portion.Coarse, "note: a 1 g scale is coarse for 19 g of food: half a step is 2.6 % of it: use a 0.1 g scale"},
		{portion.Scale{Step: 1}, 10, 1, portion.Coarse, "note: a 1 g scale is coarse for 10 g of food: half a step is 5.0 % of it: use a 0.1 g scale"},
		{portion.Scale{Step: 1}, 9, 1, portion.TooCoarse, "warn: a 1 g scale is coarse for 9 g of food: half a step is 5.6 % of it: use a 0.1 g scale"},
		{portion.Scale{Step: 5}, 200, 4, portion.Coarse, "note: a 5 g scale is coarse for 50 g of food: half a step is 5.0 % of it: use a 1 g scale, or weigh the day's 200 g once and divide it"},
		// The day on it is 19 steps: to weigh it once is no remedy.
		{portion.Scale{Step: 5}, 95, 2, portion.TooCoarse, "warn: a 5 g scale is coarse for 45 g of food: half a step is 5.6 % of it: use a 1 g scale"},
		{portion.Scale{Step: 1}, 2, 3, portion.Nothing, "warn: some of the 3 meals get no food on a 1 g scale: use a finer scale, or feed fewer meals"},
		{portion.Scale{Step: 1, Capacity: 500}, 501, 1, portion.Overload, "warn: 501 g of food is more than the 500 g that the scale holds with its bowl: weigh it in parts"},
		{portion.Scale{Step: 1, Capacity: 500}, 3300, 5, portion.Overload, "warn: a meal of 3.3 kg of food a day in 5 is more than the 500 g that the scale holds with its bowl: weigh it in parts"},
		{portion.Scale{Step: 1, Capacity: 500}, 1000, 2, portion.Fits, ""},
		// 60 g hold the day's 15 g meals, but not the day.
		{portion.Scale{Step: 1, Capacity: 60}, 75, 5, portion.Coarse, "note: a 1 g scale is coarse for 15 g of food: half a step is 3.3 % of it: use a 0.1 g scale"},
	} {
		f, err := test.scale.Fitness(test.day, test.meals)
		if err != nil {
			t.Errorf("%v, %v in %d: %v", test.scale, test.day, test.meals, err)
			continue
		}
		if f.Grade != test.grade {
			t.Errorf("%v, %v in %d: %v, want %v", test.scale, test.day, test.meals, f.Grade, test.grade)
		}
		text := ""
		if c, ok := f.Caution(); ok {
			text = c.Level.String() + ": " + c.Text
		}
		if text != test.text {
			t.Errorf("%v, %v in %d: %q, want %q", test.scale, test.day, test.meals, text, test.text)
		}
	}
}

// GUM F.2.2.1 gives 0.29 g for a scale that reads to 1 g.
func TestUncertaintyOfAStep(t *testing.T) {
	if got := fmt.Sprintf("%.2f", portion.Scale{Step: units.Gram}.Uncertainty().Grams()); got != "0.29" {
		t.Errorf("1 g scale: u = %s g, want 0.29 (JCGM 100:2008, F.2.2.1)", got)
	}
}

func TestFitnessRefuses(t *testing.T) {
	nan := units.Mass(math.NaN())
	for _, test := range []struct {
		scale portion.Scale
		day   units.Mass
		meals int
		want  string
	}{
		{portion.Scale{}, 100, 2, `portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		{portion.Scale{Step: nan}, 100, 2, `portion: scale step "not a finite number": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		{portion.Scale{Step: 1, Capacity: 19}, 100, 2, `portion: scale capacity "19 g": want 20 steps or more, or none if not known (step and capacity mixed up?)`},
		{portion.Scale{Step: 1, Capacity: nan}, 100, 2, `portion: scale capacity "not a finite number": want 20 steps or more, or none if not known (step and capacity mixed up?)`},
		{portion.Scale{Step: 1}, 0, 0, `portion: meals "0": want 1 to 24 a day; portion: day "0 g": want above 0 g and at most 20 kg`},
		{portion.Scale{Step: 1}, -5, 25, `portion: meals "25": want 1 to 24 a day; portion: day "-5 g": want above 0 g and at most 20 kg`},
		{portion.Scale{Step: 1}, units.Mass(math.Inf(1)), 1, `portion: day "not a finite number": want above 0 g and at most 20 kg`},
		{portion.Scale{Step: 5}, 2.4, 1, `portion: 2.40 g of food a day is less than half a step of a 5 g scale: want a finer scale`},
	} {
		f, err := test.scale.Fitness(test.day, test.meals)
		if err == nil || err.Error() != test.want || f != (portion.Fitness{}) {
			t.Errorf("%v, %v in %d: %v, %v; want %q", test.scale, test.day, test.meals, f, err, test.want)
		}
	}
	var coarse *portion.ScaleError
	if _, err := (portion.Scale{Step: 5}).Fitness(2.4, 1); !errors.As(err, &coarse) {
		t.Errorf("%T, want a *ScaleError", err)
	}
	if _, err := (portion.Scale{}).LeastFor(0); err == nil || err.Error() != `portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g; portion: tolerance "0 %": want 0.01 % to 50 %` {
		t.Errorf("LeastFor: %v", err)
	}
	if _, err := (portion.Weighed{}).Fitness(0, 2); err == nil || err.Error() != `portion: ration "": want a ration from Weigh (its error was not looked at?)` {
		t.Errorf("zero Weighed: %v", err)
	}
}

// A treat is weighed once whatever the meals; one in whole pieces isn't weighed.
func TestFitnessOfTreats(t *testing.T) {
	w, err := fed(given(1236), diet.Menu{
		{Food: kibble, Amount: diet.Rest()},
		{Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true},
		{Food: asFed("cheese", 4000), Amount: diet.Fixed(30), Treat: true},
	})
	if err != nil {
		t.Fatal(err)
	}
	f, err := w.Fitness(2, 6)
	if err != nil || f.Meals != 1 || f.Meal != 30 {
		t.Errorf("cheese: %+v, %v", f, err)
	}
	const want = `portion: food "House biscuit": want a food that is weighed (a treat in whole pieces is counted)`
	if _, err := w.Fitness(1, 6); err == nil || err.Error() != want {
		t.Errorf("biscuits: %v, want %s", err, want)
	}
}

// What lies on the scale is within half a step of what it shows, so that half a
// step bounds every reading and the standard uncertainty is that of it.
func TestHalfAStepBoundsEveryReading(t *testing.T) {
	proptest.Check(t, "half a step", prop.ForAll(func(m, step units.Mass) bool {
		f, err := portion.Scale{Step: step}.Fitness(m, 1)
		var coarse *portion.ScaleError
		if errors.As(err, &coarse) {
			return m < step/2*(1+1e-12)
		}
		return err == nil && math.Abs(float64(f.Day-m)) <= float64(f.Scale.HalfStep())*(1+1e-12)
	}, proptest.Quantity[units.Mass](0.01, 20000), gen.OneConstOf(units.Gram/10, units.Gram, 2*units.Gram, 5*units.Gram)))

	proptest.Check(t, "a larger day never fits worse", prop.ForAll(func(m units.Mass, more float64, meals int) bool {
		s := portion.Scale{Step: units.Gram}
		f, err := s.Fitness(m, meals)
		g, err2 := s.Fitness(min(m*units.Mass(more), 20000), meals)
		return err == nil && err2 == nil && g.Grade <= f.Grade && (f.Meal == 0 || g.HalfStepOfMeal() <= f.HalfStepOfMeal())
	}, proptest.Quantity[units.Mass](1, 20000), gen.Float64Range(1, 3), gen.IntRange(1, 24)))
}

func TestGradesThroughText(t *testing.T) {
	for g := portion.Fits; g <= portion.Overload; g++ {
		text, err := g.MarshalText()
		var back portion.Grade
		if err != nil || back.UnmarshalText(text) != nil || back != g {
			t.Errorf("%d: %s, %v, back %v", g, text, err, back)
		}
	}
	var g portion.Grade
	if err := g.UnmarshalText([]byte("fine")); err == nil || g != 0 {
		t.Errorf("fine: %v, %v", g, err)
	}
}

func TestScaleThroughJSON(t *testing.T) {
	s := portion.Scale{Step: 0.1, Capacity: 500}
	data, err := json.Marshal(s)
	if err != nil || string(data) != `{"step":"0.1 g","capacity":"500 g"}` {
		t.Fatalf("%s, %v", data, err)
	}
	var back portion.Scale
	if err := json.Unmarshal(data, &back); err != nil || back != s {
		t.Errorf("back %v, %v", back, err)
	}
	for _, bad := range []string{`{"step":1}`, `{"step":"1 g","readability":"1 g"}`, `{"step":"0 g"}`, `{"step":"1 g","step":"5 g"}`, `{"step":"5 g","capacity":"1 g"}`} {
		if err := json.Unmarshal([]byte(bad), &back); err == nil || back != s {
			t.Errorf("%s: %v, %v", bad, back, err)
		}
	}
}

var fitnessSink portion.Fitness

func BenchmarkFitness(b *testing.B) {
	s, in := portion.Scale{Step: units.Gram}, weights()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		f, err := s.Fitness(in[i&1023]/100, 6)
		if err != nil {
			b.Fatal(err)
		}
		fitnessSink = f
	}
}

// BenchmarkFitnessFloor is the bare arithmetic of BenchmarkFitness.
func BenchmarkFitnessFloor(b *testing.B) {
	in := weights()
	for i := 0; b.Loop(); i++ {
		n := math.Round(float64(in[i&1023] / 100))
		least := math.Floor(n / 6)
		sink[0], sink[1], sink[2] = n, least, 50/least
	}
}

func ExampleWeighed_Fitness() {
	ration, err := portion.Weigh(prescribedCat(231), diet.Only(asFed("a dry food", 3850))) // 60 g
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, step := range []units.Mass{units.Gram, 5 * units.Gram} {
		w, err := ration.On(step)
		if err != nil {
			fmt.Println(err)
			return
		}
		f, err := w.Fitness(0, 4)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v scale: half a step is %.1f %% of a meal, %v. %s\n", step, f.HalfStepOfMeal(), f.Grade, f.Remedy())
	}
	// Output:
	// 1 g scale: half a step is 3.3 % of a meal, coarse. use a 0.1 g scale, or weigh the day's 60 g once and divide it
	// 5 g scale: half a step is 16.7 % of a meal, too_coarse. use a 0.1 g scale
}

// How little may be weighed on a scale that shows whole grams?
func ExampleScale_LeastFor() {
	scale := portion.Scale{Step: units.Gram}
	least, err := scale.LeastFor(5)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(least, "for 5 %;", scale.LeastLoad(), "as the guide for scales has it")
	// Output: 16.4 g for 5 %; 20 g as the guide for scales has it
}
