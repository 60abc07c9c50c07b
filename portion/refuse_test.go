package portion_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

func TestRefusedNeedsAndMenus(t *testing.T) {
	need := prescribed(1000)
	noDensity := diet.Food{Name: "a bag without a label"}
	perHundred := kibble
	perHundred.Label = diet.Label{Energy: 500 * units.KilocaloriePerKilogram}
	for _, test := range []struct {
		name string
		need energy.Estimate
		menu diet.Menu
		want string
	}{
		{"no energy", energy.Estimate{}, diet.Only(kibble), `portion: need "0 kcal": want an estimate of more than 0 kcal a day`},
		{"NaN", energy.Estimate{Daily: units.Energy(math.NaN())}, diet.Only(kibble), `portion: need "not a finite number": want an estimate of more than 0 kcal a day`},
		{"infinite", energy.Estimate{Daily: units.Energy(math.Inf(1))}, diet.Only(kibble), `portion: need "not a finite number": want an estimate of more than 0 kcal a day`},
		{"half the body", prescribed(7000), diet.Only(perHundred), `portion: mass of Tarnwick House Dog Dry "14000.00 g a day": want at most 12450.00 g (half the body weight, 20 kg at most) (is the label's energy per 100 g, or per cup?)`},
	} {
		r, err := portion.Weigh(test.need, test.menu)
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != test.want {
			t.Errorf("%s: error %q, want %q", test.name, err, test.want)
		}
		if !r.Equal(portion.Ration{}) {
			t.Errorf("%s: a ration came back with the error", test.name)
		}
	}
	for _, menu := range []diet.Menu{nil, {{Food: kibble}}, diet.Only(noDensity)} {
		if _, err := portion.Weigh(need, menu); err == nil {
			t.Errorf("menu %v: no error", menu)
		}
	}
}

func TestZeroRationHasNoMeals(t *testing.T) {
	var r portion.Ration
	var w portion.Weighed
	if m, err := r.Meals(2, units.Gram); err == nil || m != nil {
		t.Errorf("zero ration: %v, %v", m, err)
	}
	if m, err := w.Meals(2); err == nil || m != nil {
		t.Errorf("zero weighed: %v, %v", m, err)
	}
}

// 3.5 kg at 890 kcal and 1500 kcal/kg is 593 g, 17 % of the body weight.
func TestMuchFoodForTheBodyIsReferred(t *testing.T) {
	wet := diet.Food{Name: "a wet food", Label: diet.Label{Energy: 1500 * units.KilocaloriePerKilogram}}
	need, err := energy.Prescribed{
		Animal: energy.Animal{Species: energy.Cat, Weight: 3.5 * units.Kilogram, Condition: energy.BCS9(5)}, Daily: 890, By: "a veterinarian",
	}.Estimate()
	if err != nil {
		t.Fatal(err)
	}
	r, err := portion.Weigh(need, diet.Only(wet))
	if err != nil {
		t.Fatal(err)
	}
	const want = "593.33 g of a wet food a day is 17 % of the body weight: check the label's kcal/kg, the energy and the weight first"
	for _, c := range r.Cautions() {
		if c.Text == want {
			return
		}
	}
	t.Errorf("cautions %v, want %q", r.Cautions(), want)
}

// A ferret's 300 kcal are 25 % of its weight in a wet food of 1000 kcal/kg, and a
// kitten takes 22 % in milk: nothing unusual.
func TestMuchFoodIsUsualForFerretsAndTheYoung(t *testing.T) {
	wet := diet.Food{Name: "a wet food", Form: diet.Wet, Label: diet.Label{Energy: 1000 * units.KilocaloriePerKilogram}}
	for _, stage := range []energy.Stage{
		energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}},
		energy.Prescribed{Animal: energy.Animal{Species: energy.Cat, Weight: 200, Age: 3 * energy.Week}, Daily: 44, By: "a veterinarian"},
		energy.Prescribed{Animal: energy.Animal{Species: energy.Cat, Weight: 4000, Circumstances: energy.Lactating}, Daily: 1000, By: "a veterinarian"},
	} {
		need, err := stage.Estimate()
		if err != nil {
			t.Fatal(err)
		}
		r, err := portion.Weigh(need, diet.Only(wet))
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range r.Cautions() {
			if strings.Contains(c.Text, "of the body weight") {
				t.Errorf("%+v: %v", stage, c)
			}
		}
	}
}

func TestRefusedScales(t *testing.T) {
	ration, err := portion.Weigh(prescribed(1000), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	for _, step := range []units.Mass{0, -1, 0.0005, 1001, units.Mass(math.NaN()), units.Mass(math.Inf(1)), 1.0 / 3} {
		w, err := ration.On(step)
		var field *units.FieldError
		if !errors.As(err, &field) || field.Field != "scale step" {
			t.Errorf("step %v: error %v, want the scale step refused", float64(step), err)
		}
		if w.Len() != 0 {
			t.Errorf("step %v: a weighed ration came back with the error", float64(step))
		}
	}
	_, err = ration.On(1000 * units.Gram)
	var scale *portion.ScaleError
	if !errors.As(err, &scale) {
		t.Fatalf("281 g on a 1 kg scale: error %v, want a *ScaleError", err)
	}
	const want = "portion: 280.90 g of Tarnwick House Dog Dry a day is less than half a step of a 1 kg scale: want a finer scale"
	if got := err.Error(); got != want {
		t.Errorf("error %q, want %q", got, want)
	}
}

func TestRefusedMeals(t *testing.T) {
	ration, err := portion.Weigh(prescribed(1000), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	kept := []portion.Meal{{Number: 9}}
	for _, n := range []int{math.MinInt, -1, 0, 25, math.MaxInt} {
		got, err := ration.AppendMeals(kept, n, units.Gram)
		var field *units.FieldError
		if !errors.As(err, &field) || field.Field != "meals" || field.Accepted != "1 to 24 a day" {
			t.Errorf("%d meals: error %v", n, err)
		}
		if len(got) != 1 || got[0] != kept[0] {
			t.Errorf("%d meals: dst came back as %v", n, got)
		}
	}
	got, err := ration.AppendMeals(kept, 2, 0)
	if err == nil || err.Error() != `portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g` || len(got) != 1 || got[0] != kept[0] {
		t.Errorf("no step: %v, %v", got, err)
	}
}
