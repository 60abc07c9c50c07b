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
		caution string // about the meals; "" for none
		level   advice.Level
	}{
		{0.1 * units.Gram, "72.3 g", "12.1 g,12.1 g,12.1 g,12 g,12 g,12 g", "", 0},
		{units.Gram, "72 g", "12 g,12 g,12 g,12 g,12 g,12 g", "a 1 g scale is coarse for 12 g of Tarnwick Kitten Dry: half a step is 4.2 % of it: use a 0.1 g scale, or weigh the day's 72 g once and divide it", advice.Note},
		{5 * units.Gram, "70 g", "15 g,15 g,10 g,10 g,10 g,10 g", "a 5 g scale is coarse for 10 g of Tarnwick Kitten Dry: half a step is 25.0 % of it: use a 0.1 g scale", advice.Warn},
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
			if strings.Contains(c.Text, "coarse") {
				found = c
			}
		}
		if found.Text != test.caution || found.Level != test.level {
			t.Errorf("%v scale: caution %v %q, want %v %q", test.step, found.Level, found.Text, test.level, test.caution)
		}
	}
}

// 72.29 g on a 5 g scale are 70 g, 3.2 % less; 65.15 g on a 100 g scale would
// be 100 g, 53.5 % more.
func TestDayThatTheScaleChangesIsSaid(t *testing.T) {
	food := diet.Food{Name: "Tarnwick House Cat Dry", Label: diet.Label{Energy: 3850 * units.KilocaloriePerKilogram}}
	for _, test := range []struct {
		daily units.Energy
		step  units.Mass
		level advice.Level
		text  string
	}{
		{278.3165, 5, advice.Warn, "the 5 g scale makes 70 g of Tarnwick House Cat Dry out of 72.29 g a day, -3.2 %: use a 1 g scale"},
		{250.8275, 100, advice.Refer, "the 100 g scale makes 100 g of Tarnwick House Cat Dry out of 65.15 g a day, +53.5 %: use a 1 g scale"},
		{250.8275, 5, 0, ""}, // 65 g, 0.2 % less
	} {
		ration, err := portion.Weigh(prescribed(test.daily), diet.Only(food))
		if err != nil {
			t.Fatal(err)
		}
		w, err := ration.On(test.step)
		if err != nil {
			t.Fatal(err)
		}
		found := advice.Caution{}
		for _, c := range w.Cautions(1) {
			if strings.Contains(c.Text, "makes") {
				found = c
			}
		}
		if found.Level != test.level || found.Text != test.text {
			t.Errorf("%v on %v: %v %q, want %v %q", test.daily, test.step, found.Level, found.Text, test.level, test.text)
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
	// Half a step is 25 % of the day's 2 g: to weigh it once doesn't help.
	const want = "some of the 3 meals get no oil on a 1 g scale: use a finer scale, or feed fewer meals"
	for _, c := range w.Cautions(3) {
		if c.Level == advice.Warn && c.Text == want {
			return
		}
	}
	t.Errorf("cautions %v, want %q", w.Cautions(3), want)
}
