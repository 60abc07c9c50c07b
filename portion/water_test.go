package portion_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
	"github.com/leanovate/gopter/prop"
)

// moist is a food of so many kcal/kg and so much water.
func moist(name string, perKilogram float64, moisture units.Percent) diet.Food {
	f := asFed(name, perKilogram)
	f.Analysis.Moisture = moisture
	return f
}

func closeTo(got, want units.Volume) bool { return math.Abs(float64(got-want)) < 1e-9 }

// A dog of 30 kg by 44 to 66 mL/kg: 1320 to 1980 mL, and 1 mL for each of its kcal.
// On 400 g of a food of 10 % it eats 40 mL of it.
func TestWaterOfADog(t *testing.T) {
	need := must(energy.Prescribed{Animal: animalOf(energy.Dog, 30, 0), Daily: 1436, By: "a veterinarian"})
	r, err := portion.Weigh(need, diet.Only(moist("dry", 3590, 10)))
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		basis                portion.WaterBasis
		low, high            units.Volume
		drinkLow, drinkHigh  units.Volume
		text                 string
		wantBasis            portion.WaterBasis
		firstWordsOfItsWhere string
	}{
		{0, 1320, 1980, 1280, 1940, "from 1280 mL to 1940 mL a day", portion.ByWeight, "44 to 66 mL/kg"},
		{portion.ByWeight, 1320, 1980, 1280, 1940, "from 1280 mL to 1940 mL a day", portion.ByWeight, "44 to 66 mL/kg"},
		{portion.ByEnergy, 1436, 1436, 1396, 1396, "about 1396 mL a day", portion.ByEnergy, "about 1 mL"},
		{portion.ByDryMatter, 720, 1080, 680, 1040, "from 680 mL to 1040 mL a day", portion.ByDryMatter, "44 to 66 mL/kg"},
	} {
		w, err := r.Water(test.basis)
		if err != nil {
			t.Fatal(err)
		}
		if w.Basis != test.wantBasis || !closeTo(w.Total.Low, test.low) || !closeTo(w.Total.High, test.high) || !closeTo(w.Food, 40) ||
			!closeTo(w.Drink.Low, test.drinkLow) || !closeTo(w.Drink.High, test.drinkHigh) || w.String() != test.text {
			t.Errorf("%v: %+v, %s", test.basis, w, w)
		}
		if where := w.Source().Where; len(where) < 10 || where[:10] != test.firstWordsOfItsWhere[:10] {
			t.Errorf("%v: %s", test.basis, where)
		}
		if c := w.Cautions(); len(c) != 2 {
			t.Errorf("%v: %v", test.basis, c)
		}
	}
}

// An oil has no water, which its analysis says one way or the other: of 400 g of
// food with 10 % and 20 g of oil 40 mL is water.
func TestWaterWithAnOil(t *testing.T) {
	oil := asFed("oil", 8800)
	oil.Form = diet.FatOrOil
	none, byDefault := oil, oil
	none.Analysis.None, byDefault.Analysis.Defaults = diet.Moisture, diet.FatOrOil
	need := must(energy.Prescribed{Animal: animalOf(energy.Dog, 30, 0), Daily: 1436 + 176, By: "a veterinarian"})
	for _, f := range []diet.Food{none, byDefault} {
		r, err := portion.Weigh(need, diet.Menu{{Food: f, Amount: diet.Fixed(20)}, {Food: moist("dry", 3590, 10), Amount: diet.Rest()}})
		if err != nil {
			t.Fatal(err)
		}
		// (400 − 40 + 20) × 2 to 3 mL.
		if w, err := r.Water(portion.ByDryMatter); err != nil || !closeTo(w.Food, 40) || !closeTo(w.Total.Low, 760) || !closeTo(w.Total.High, 1140) {
			t.Errorf("%+v, %v", w, err)
		}
	}
	r, err := portion.Weigh(need, diet.Menu{{Food: oil, Amount: diet.Fixed(20)}, {Food: moist("dry", 3590, 10), Amount: diet.Rest()}})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := r.Water(0); err == nil {
		t.Error("an oil that doesn't say so was taken to have none")
	}
}

// Seefeldt and Chapman 1979 in DiBartola, Table 1-10: cats on dry food, 76.9 g of dry
// matter with 7.4 g of water, drank 167.2 mL; on canned food, 116 g of water eaten,
// 22.8 mL. The dry-fed ones are within 2 to 3 mL/g; canned food holds it all.
func TestWaterOfMeasuredCats(t *testing.T) {
	weigh := func(dry, water float64) portion.Ration {
		need := must(energy.Prescribed{Animal: animalOf(energy.Cat, 4, 0), Daily: 250, By: "a veterinarian"})
		grams := dry + water
		r, err := portion.Weigh(need, diet.Only(moist("food", 250/grams*1000, units.Percent(100*water/grams))))
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	w, err := weigh(76.9, 7.4).Water(portion.ByDryMatter)
	if err != nil || !w.Drink.Contains(167.2) || math.Abs(float64(w.Food-7.4)) > 1e-9 {
		t.Errorf("dry food: %+v, %v", w, err)
	}
	w, err = weigh(35.2, 116).Water(portion.ByDryMatter)
	if err != nil || w.Drink != (units.Range[units.Volume]{}) || w.String() != "about 0 mL a day" {
		t.Errorf("canned food: %+v, %v", w, err)
	}
	if c := w.Cautions(); len(c) != 3 || c[2].Text != "the food may hold all the water of the day: such animals drink little, and are still offered water" {
		t.Errorf("canned food: %v", c)
	}
}

func TestWaterRefused(t *testing.T) {
	weigh := func(a energy.Animal, menu diet.Menu) portion.Ration {
		r, err := portion.Weigh(must(energy.Prescribed{Animal: a, Daily: 200, By: "a veterinarian"}), menu)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	wet := moist("wet", 1000, 78)
	cat := animalOf(energy.Cat, 4, 0)
	kitten := energy.Animal{Species: energy.Cat, Weight: 800, Age: 28}
	for _, test := range []struct {
		name   string
		ration portion.Ration
		basis  portion.WaterBasis
		want   string
	}{
		{"no ration", portion.Ration{}, 0, `portion: ration "": want a ration from Weigh (its error was not looked at?)`},
		{
			"no moisture", weigh(cat, diet.Menu{{Food: catWet, Amount: diet.Share(50)}, {Food: catDry, Amount: diet.Rest()}}), 0,
			`portion: moisture of Tarnwick House Cat Wet "": want the moisture on the label, for the water that is eaten; portion: moisture of Tarnwick House Cat Dry "": want the moisture on the label, for the water that is eaten`,
		},
		{"no weight", weigh(energy.Animal{}, diet.Only(wet)), 0, `portion: weight "": want the animal's weight (or reckon by energy)`},
		{"no basis", weigh(cat, diet.Only(wet)), 4, `portion: water basis "out of range": want weight, energy or dry_matter`},
		{"a rabbit", weigh(energy.Animal{Species: energy.Other, Weight: 2000}, diet.Only(wet)), portion.ByDryMatter, `portion: species "other": want dog or cat for water by dry matter`},
		{"a nursling", weigh(kitten, diet.Only(wet)), 0, `portion: age "4 wk": want a weaned animal (a nursling's water is in its milk)`},
	} {
		w, err := test.ration.Water(test.basis)
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != test.want || w != (portion.Water{}) {
			t.Errorf("%s: %+v, error\n%v\nwant\n%s", test.name, w, err, test.want)
		}
	}
	var none portion.Water
	if none.Cautions() != nil || none.String() != "" || none.Source().Work != "" {
		t.Error("the zero water says something")
	}
}

// 132 × kg^0.75 and 80 × kg^0.75 are rates of a clinic's infusions.
func TestClinicRatesAreNoBasis(t *testing.T) {
	const hint = " (a clinic's fluid rate is a treatment, not what an animal drinks)"
	for in, want := range map[string]string{
		"maintenance fluid": `portion: water basis "maintenance fluid": want weight, energy or dry_matter` + hint,
		"132 × kg^0.75":     `portion: water basis "132 × kg^0.75": want weight, energy or dry_matter` + hint,
		"80*bw^0.75":        `portion: water basis "80*bw^0.75": want weight, energy or dry_matter` + hint,
		"60 mL/kg":          `portion: water basis "60 mL/kg": want weight, energy or dry_matter` + hint,
		"thirst":            `portion: water basis "thirst": want weight, energy or dry_matter`,
		"":                  `portion: water basis "": want weight, energy or dry_matter`,
	} {
		b := portion.ByEnergy
		if got, err := portion.ParseWaterBasis(in); err == nil || err.Error() != want || got != 0 {
			t.Errorf("%q: %v, %v; want %s", in, got, err, want)
		}
		if err := b.UnmarshalText([]byte(in)); in != "" && (err == nil || b != portion.ByEnergy) {
			t.Errorf("%q: %v, receiver %v", in, err, b)
		}
	}
}

func TestWaterBasisText(t *testing.T) {
	for b, want := range map[portion.WaterBasis]string{0: "", portion.ByWeight: "weight", portion.ByEnergy: "energy", portion.ByDryMatter: "dry_matter"} {
		text, err := b.MarshalText()
		if err != nil || string(text) != want || b.String() != want {
			t.Errorf("%d: %q, %v", b, text, err)
		}
		var back portion.WaterBasis
		if err := back.UnmarshalText(text); err != nil || back != b {
			t.Errorf("%q: %v, %v", text, back, err)
		}
	}
	if _, err := portion.WaterBasis(4).MarshalText(); err == nil {
		t.Error("4 is written")
	}
	w := portion.Water{Basis: portion.ByWeight, Total: units.Range[units.Volume]{Low: 176, High: 264}, Food: 5.2, Drink: units.Range[units.Volume]{Low: 170.8, High: 258.8}}
	text, err := json.Marshal(w)
	const want = `{"basis":"weight","total":{"low":"176 mL","high":"264 mL"},"food":"5.2 mL","drink":{"low":"170.8 mL","high":"258.8 mL"}}`
	if err != nil || string(text) != want {
		t.Errorf("%s, %v", text, err)
	}
	var back portion.Water
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(w, back); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
}

func TestWaterProperties(t *testing.T) {
	proptest.Check(t, "food and drink are the day's water, unless the food holds more", prop.ForAll(func(kg, kcal, moisture float64) string {
		need := must(energy.Prescribed{Animal: animalOf(energy.Dog, kg, 0), Daily: units.Energy(kcal), By: "a veterinarian"})
		r, err := portion.Weigh(need, diet.Only(moist("food", 3000, units.Percent(moisture))))
		if err != nil {
			return err.Error()
		}
		for basis := portion.ByWeight; basis <= portion.ByDryMatter; basis++ {
			w, err := r.Water(basis)
			switch {
			case err != nil:
				return err.Error()
			case !w.Total.IsValid() || !w.Drink.IsValid() || w.Drink.Low < 0 || !(w.Food > 0):
				return w.String()
			case w.Drink.High > 0 && math.Abs(float64(w.Drink.High+w.Food-w.Total.High)) > 1e-9*float64(w.Total.High):
				return w.String()
			}
		}
		return ""
	}, proptest.Quantity[float64](2, 60), proptest.Quantity[float64](100, 2500), proptest.Quantity[float64](1, 30)))
}
