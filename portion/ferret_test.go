package portion_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// 1.2 kg at 250 kcal/kg (the middle of SACN 5th ed., Table 70-1) are 300 kcal,
// 300 / 4150 × 1000 = 72.29 g of a dry food of 4150 kcal/kg.
func TestFerretInSixMealsOnThreeScales(t *testing.T) {
	need, err := energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}}.Estimate()
	if err != nil {
		t.Fatal(err)
	}
	food := diet.Food{
		Name: "Tarnwick Kitten Dry", For: diet.Purpose{Species: diet.Cats | diet.Ferrets},
		Label: diet.Label{Energy: 4150 * units.KilocaloriePerKilogram},
	}
	ration, err := portion.Weigh(need, diet.Only(food))
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		step    units.Mass
		day     string
		meals   string
		caution string // the part about the scale; "" for none
		level   advice.Level
	}{
		{0.1 * units.Gram, "72.3 g", "12.1 g,12.1 g,12.1 g,12 g,12 g,12 g", "", 0},
		{units.Gram, "72 g", "12 g,12 g,12 g,12 g,12 g,12 g", "a 1 g scale is coarse for 12 g of Tarnwick Kitten Dry: half a step is 4.2 % of it: use a 0.1 g scale, or weigh the day's 72 g once and divide it", advice.Note},
		{5 * units.Gram, "70 g", "15 g,15 g,10 g,10 g,10 g,10 g", "a 5 g scale is coarse for 10 g of Tarnwick Kitten Dry: half a step is 25.0 % of it: use a 0.1 g scale, or weigh the day's 70 g once and divide it", advice.Warn},
	} {
		w, err := ration.On(test.step)
		if err != nil {
			t.Fatal(err)
		}
		if got := w.Portion(0).Mass.String(); got != test.day {
			t.Errorf("%v scale: %s a day, want %s", test.step, got, test.day)
		}
		meals, err := w.Meals(6)
		if err != nil {
			t.Fatal(err)
		}
		var masses []string
		for _, m := range meals {
			masses = append(masses, m.Mass.String())
		}
		if got := strings.Join(masses, ","); got != test.meals {
			t.Errorf("%v scale: meals %s, want %s", test.step, got, test.meals)
		}
		found := advice.Caution{}
		for _, c := range w.Cautions(6) {
			if strings.Contains(c.Text, "scale") {
				found = c
			}
		}
		if found.Text != test.caution || found.Level != test.level {
			t.Errorf("%v scale: caution %v %q, want %v %q", test.step, found.Level, found.Text, test.level, test.caution)
		}
	}
}

func TestMealsThatGetNothingAreSaid(t *testing.T) {
	food := diet.Food{Name: "oil", Label: diet.Label{Energy: 9000 * units.KilocaloriePerKilogram}}
	ration, err := portion.Weigh(prescribed(18), diet.Only(food)) // 2 g
	if err != nil {
		t.Fatal(err)
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	const want = "some of the 3 meals get no oil on a 1 g scale: use a finer scale, or weigh the day's 2 g once and divide it, or feed fewer meals"
	for _, c := range w.Cautions(3) {
		if c.Level == advice.Warn && c.Text == want {
			return
		}
	}
	t.Errorf("cautions %v, want %q", w.Cautions(3), want)
}
