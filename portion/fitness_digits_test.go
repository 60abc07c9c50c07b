package portion_test

import (
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// To weigh the day once helps where that is off by at most 2.5 % (ours): 100 g on
// a scale of 5 g for 97.57 g are +2.49 %, for 97.55 g +2.51 %.
func TestEndsOfWeighingTheDayOnce(t *testing.T) {
	for _, test := range []struct {
		scale portion.Scale
		day   units.Mass
		want  bool
	}{
		{portion.Scale{Step: 5}, 97.57, true},
		{portion.Scale{Step: 5}, 97.55, false},
		{portion.Scale{Step: 4.1}, 80, true}, // 82 g
		{portion.Scale{Step: 1, Capacity: 30}, 30, true},
		{portion.Scale{Step: 1, Capacity: 29}, 30, false}, // the day is too much for it
	} {
		f, err := test.scale.Fitness(test.day, 2)
		if err != nil || f.Grade != portion.Coarse || f.DayOnce != test.want {
			t.Errorf("%v in two: %+v, %v", test.day, f, err)
		}
	}
}

// A scale is usual for a meal of 20 of its steps, and no remedy for itself.
func TestEndsOfAFinerScale(t *testing.T) {
	for _, test := range []struct {
		step, day, want units.Mass
	}{{5, 40, 1}, {5, 39.9, 0.1}, {1, 4, 0.1}, {1, 3.9, 0}} {
		f, err := portion.Scale{Step: test.step}.Fitness(test.day, 2)
		if err != nil || f.Finer != test.want {
			t.Errorf("%v in two on %v: %+v, %v, want %v", test.day, test.step, f, err, test.want)
		}
	}
	// 10.5 g of 4000 kcal/kg are weighed as 11 g, 44 kcal. They leave 8.5 kcal of 52.5
	// kcal: 17 g of a food of 500 kcal/kg, of which 21 g should have been.
	w := weighedOn(t, prescribed(52.5), diet.Menu{
		{Food: asFed("dry", 4000), Amount: diet.Fixed(10.5)}, {Food: asFed("stew", 500), Amount: diet.Rest()},
	}, units.Gram)
	if f, err := w.Fitness(1, 1); err != nil || f.Day != 17 || f.Grade != portion.Coarse || f.Finer != 0.1 {
		t.Errorf("17 g for 21 g on 1 g: %+v, %v", f, err)
	}
}

// A capacity is of 20 steps or more.
func TestEndsOfACapacity(t *testing.T) {
	for _, test := range []struct {
		step, capacity units.Mass
		ok             bool
	}{{1, 20, true}, {1, 19.9, false}, {5, 100, true}, {5, 99, false}, {0.1, 2, true}, {1, 0, true}, {1, units.Mass(math.Inf(1)), false}} {
		if err := (portion.Scale{Step: test.step, Capacity: test.capacity}).Validate(); (err == nil) != test.ok {
			t.Errorf("%v in steps of %v: %v", test.capacity, test.step, err)
		}
	}
}

// A scale holds so much and no more, also where that is little. The first of two
// meals of 41 g is 21 g.
func TestEndsOfAnOverload(t *testing.T) {
	for _, test := range []struct {
		scale portion.Scale
		day   units.Mass
		meals int
		want  string // of the caution
	}{
		{portion.Scale{Step: 1, Capacity: 20.5}, 41, 2, "a meal of 41 g of food a day in 2 is more than the 20.5 g that the scale holds with its bowl: weigh it in parts"},
		{portion.Scale{Step: 1, Capacity: 21}, 41, 2, ""},
		{portion.Scale{Step: 0.01, Capacity: 0.5}, 0.6, 1, "0.6 g of food is more than the 0.5 g that the scale holds with its bowl: weigh it in parts"},
		{portion.Scale{Step: 0.01, Capacity: 0.5}, 0.5, 1, ""},
	} {
		f, err := test.scale.Fitness(test.day, test.meals)
		if err != nil {
			t.Fatal(err)
		}
		if c, _ := f.Caution(); c.Text != test.want {
			t.Errorf("%v of %+v in %d: %q, want %q", test.day, test.scale, test.meals, c.Text, test.want)
		}
	}
}

// What is read of a scale without anything on it, of one meal, and of meals of a
// gram and less.
func TestLinesOfAFitness(t *testing.T) {
	if f := (portion.Fitness{}); f.Off() != 0 || f.HalfStepOfMeal() != 0 || f.Uncertainty() != 0 {
		t.Errorf("nothing: off %v, half a step %v", f.Off(), f.HalfStepOfMeal())
	}
	if text := (portion.Fitness{Grade: portion.Fits, Scale: portion.Scale{Step: 1}, Day: 30, Meal: 30, Exact: 30}).Explain(); text != "" {
		t.Errorf("no meals are explained: %q", text)
	}
	for _, test := range []struct {
		step, day units.Mass
		meals     int
		want      []string
	}{
		// 0.5 g of 30 g are 1.7 %.
		{1, 30.1, 1, []string{"day       30.10 g is 30 g on a 1 g scale, -0.3 %\nload      30 g, at once\n", "half a step, 0.5 g, is 1.7 % of that\n"}},
		{1, 29.9, 1, []string{"day       29.90 g is 30 g on a 1 g scale, +0.3 %\n"}},
		{1, 30, 2, []string{"day       30.00 g is 30 g on a 1 g scale, 0.0 %\nload      15 g, the smallest of 2 meals\n", "is 3.3 % of that and 1.7 % of the day\n"}},
		{1, 3, 3, []string{"load      1 g, the smallest of 3 meals\n", "is 50.0 % of that and 16.7 % of the day\n"}},
		{1, 2, 3, []string{"load      some of the 3 meals are less than a step\n", "is 25.0 % of the day\n", "standard uncertainty 1 g ÷ √12 = 0.289 g\n"}},
		{0.1, 1, 2, []string{"load      0.5 g, the smallest of 2 meals\n", "half a step, 0.05 g, is 10.0 % of that and 5.0 % of the day\n"}},
	} {
		f, err := portion.Scale{Step: test.step}.Fitness(test.day, test.meals)
		if err != nil {
			t.Fatal(err)
		}
		text := f.Explain()
		for _, want := range test.want {
			if !strings.Contains(text, want) {
				t.Errorf("%v in %d on %v: no %q in\n%s", test.day, test.meals, test.step, want, text)
			}
		}
	}
}

// A tolerance is from 0.01 % to 50 % (ours): 82 steps over its percentage are the
// least load.
func TestEndsOfATolerance(t *testing.T) {
	s := portion.Scale{Step: 1}
	for _, test := range []struct {
		tolerance units.Percent
		want      units.Mass // 0: refused
	}{
		{0.01, 8200}, {0.015, 82 / 0.015}, {0.0099, 0}, {50, 1.64}, {49.5, 82 / 49.5}, {50.5, 0},
	} {
		got, err := s.LeastFor(test.tolerance)
		if (err == nil) != (test.want > 0) || math.Abs(float64(got-test.want)) > 1e-9 {
			t.Errorf("%v: %v, %v, want %v", test.tolerance, got, err, test.want)
		}
	}
	// 82 steps of 2 g over 5.
	if m, err := (portion.Scale{Step: 2}).LeastFor(5); err != nil || math.Abs(float64(m-32.8)) > 1e-9 {
		t.Errorf("on a scale of 2 g: %v, %v", m, err)
	}
	const want = `portion: tolerance "not a finite number": want 0.01 % to 50 %`
	if m, err := s.LeastFor(units.Percent(math.Inf(-1))); m != 0 || err == nil || err.Error() != want {
		t.Errorf("minus infinity: %v, %v", m, err)
	}
	if m, err := (portion.Scale{}).LeastFor(5); m != 0 || err == nil {
		t.Errorf("no scale: %v, %v", m, err)
	}
}
