package portion_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
)

// asFed is a food of so many kcal/kg.
func asFed(name string, perKilogram float64) diet.Food {
	return diet.Food{Name: name, Label: diet.Label{Energy: units.EnergyDensity(perKilogram)}}
}

// Mixed feeding by the rule of taking treats off first and dividing what is left
// by energy (amount = energy / density: Small Animal Clinical Nutrition, 5th ed.,
// Table 21-5). Inputs made up, worked with a pencil to the digits shown.
func TestMixedFeedingIsDividedByEnergy(t *testing.T) {
	dry, wet := diet.Share(25), diet.Share(75)
	for _, tt := range []struct {
		name   string
		daily  units.Energy
		menu   diet.Menu
		grams  []float64
		within float64
	}{
		{"halves", 240, diet.Menu{{Food: asFed("dry", 3900), Amount: diet.Share(50)}, {Food: asFed("wet", 1000), Amount: diet.Share(50)}}, []float64{30.77, 120.0}, 0.005},
		{"60 kcal of treats", 600, diet.Menu{
			{Food: asFed("dry", 3500), Amount: diet.Share(75)},
			{Food: asFed("wet", 1120), Amount: diet.Rest()},
			{Food: asFed("treat", 3000), Amount: diet.Fixed(20), Treat: true},
		}, []float64{115.7, 120.5, 20}, 0.05},
		{"10 kcal of treats", 200, diet.Menu{
			{Food: asFed("treat", 2000), Amount: diet.Fixed(5), Treat: true},
			{Food: asFed("dry", 4000), Amount: dry},
			{Food: asFed("wet", 900), Amount: wet},
		}, []float64{5, 11.875, 158.3}, 0.05},
		{"one can of 90 kcal", 240, diet.Menu{
			{Food: diet.Food{Name: "wet", Label: diet.Label{Serving: diet.Serving{Name: "can", Energy: 90, Mass: 85}}}, Amount: diet.Count(1, "can")},
			{Food: asFed("dry", 4000), Amount: diet.Rest()},
		}, []float64{85, 37.50}, 0.005},
	} {
		r, err := portion.Weigh(prescribedCat(tt.daily), tt.menu)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		for i, want := range tt.grams {
			if got := r.Portion(i).Mass.Grams(); math.Abs(got-want) > tt.within {
				t.Errorf("%s: %v g of %s, want %v", tt.name, got, r.Portion(i).Food, want)
			}
		}
	}
}

// 85 g of wet food are weighed as 90 g on a 10 g scale and hold 90 kcal; of 240
// the rest takes 150 kcal, 37.5 g of 4000 kcal/kg, not (240 - 85) / 4 = 38.75 g.
// On a scale of 0.5 g the first is 85 g, and the rest 38.75 g, weighed as 39 g.
func TestRestIsSizedFromWhatTheWeighedOthersLeave(t *testing.T) {
	menu := diet.Menu{{Food: asFed("dry", 4000), Amount: diet.Rest()}, {Food: asFed("wet", 1000), Amount: diet.Fixed(85)}}
	r, err := portion.Weigh(prescribedCat(240), menu)
	if err != nil {
		t.Fatal(err)
	}
	if got := r.Portion(0).Mass; got != 38.75 {
		t.Errorf("exact rest %v, want 38.75 g", got)
	}
	for step, want := range map[units.Mass][2]units.Mass{10: {40, 90}, 0.5: {39, 85}, 2.5: {40, 85}, 20: {40, 80}} {
		w, err := r.On(step)
		if err != nil {
			t.Errorf("%v: %v", step, err)
			continue
		}
		if got := [2]units.Mass{w.Portion(0).Mass, w.Portion(1).Mass}; got != want {
			t.Errorf("%v scale: %v, want %v", step, got, want)
		}
	}
}

// Only a treat in whole pieces is counted: a can of 156 g that is divided over
// meals is 155 g on a 5 g scale, 168.95 kcal; 71.05 kcal are left, 18.5 g.
func TestACanInMealsIsWeighed(t *testing.T) {
	r, err := portion.Weigh(prescribedCat(240), diet.Menu{{Food: catWet, Amount: diet.Count(1, "can")}, {Food: catDry, Amount: diet.Rest()}})
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(5 * units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	want := portion.Portion{Food: catWet.Name, Mass: 155, Energy: 168.95}
	if got := w.Portion(0); got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	if got := w.Portion(1).Mass; got != 20 {
		t.Errorf("%v dry, want 20 g", got)
	}
	if got := r.Portion(0); got.Pieces != 1 || got.Unit != "can" || got.Mass != 156 {
		t.Errorf("exact: %+v, want 1 can of 156 g", got)
	}
}

func TestTreatsAreInNoMealAndWholePiecesAreCounted(t *testing.T) {
	menu := diet.Menu{
		{Food: biscuit, Amount: diet.Count(3, ""), Treat: true},
		{Food: kibble, Amount: diet.Rest()},
		{Food: biscuit, Amount: diet.Count(0.5, "Biscuits"), Treat: true},
		{Food: kibble, Amount: diet.Fixed(12), Treat: true},
	}
	r, err := portion.Weigh(prescribed(1000), menu)
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(5 * units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	// 3 × 28 + 5 × 3.5 + 10 × 3.56 = 137.1 kcal; (1000 - 137.1) / 3.56 = 242.4 g.
	want := []portion.Portion{
		{Food: biscuit.Name, Mass: 24, Energy: 84, Pieces: 3, Unit: "biscuit", Treat: true},
		{Food: kibble.Name, Mass: 240, Energy: 854.4},
		{Food: biscuit.Name, Mass: 5, Energy: 17.5, Treat: true},
		{Food: kibble.Name, Mass: 10, Energy: 35.6, Treat: true},
	}
	var got []portion.Portion
	for i := range w.Len() {
		got = append(got, w.Portion(i))
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("weighed (-want +got):\n%s", d)
	}
	if p := r.Portion(2); p.Pieces != 0.5 || p.Unit != "biscuit" || p.Mass != 4 {
		t.Errorf("half a biscuit, exact: %+v", p)
	}
	if w.Count(0) != 0 || w.Count(1) != 48 || w.Count(2) != 1 {
		t.Errorf("steps %d, %d and %d, want 0, 48 and 1", w.Count(0), w.Count(1), w.Count(2))
	}
	meals, err := w.Meals(5)
	if err != nil {
		t.Fatal(err)
	}
	if len(meals) != 5 {
		t.Errorf("%d entries of meals, want 5: no treats", len(meals))
	}
	for _, m := range meals {
		if m.Food != kibble.Name {
			t.Errorf("meal %+v", m)
		}
	}
	if n, unit, ok := w.Household(0); n != 3 || unit != "biscuit" || !ok {
		t.Errorf("about %v %s, want 3 biscuit", n, unit)
	}
}

func TestImpossibleMenusShowTheirSums(t *testing.T) {
	bad := asFed("a bag", 0)
	for _, tt := range []struct {
		name  string
		daily units.Energy
		menu  diet.Menu
		want  string
	}{
		{
			"310 kcal of 250", 250,
			diet.Menu{
				{Food: catDry, Amount: diet.Rest()},
				{Food: asFed("wet", 1000), Amount: diet.Fixed(282)},
				{Food: biscuit, Amount: diet.Count(1, "biscuit"), Treat: true},
			},
			`portion: menu "282 g of wet 282.0 kcal + 1 biscuit of House biscuit 28.0 kcal = 310.0 kcal": want less than the day's 250.0 kcal in treats, counts and fixed amounts, or there is nothing left for the other foods`,
		},
		{
			"all of it", 170,
			diet.Menu{{Food: asFed("wet", 1000), Amount: diet.Fixed(170)}, {Food: catDry, Amount: diet.Share(100)}},
			`portion: menu "170 g of wet 170.0 kcal": want less than the day's 170.0 kcal in treats, counts and fixed amounts, or there is nothing left for the other foods`,
		},
		{
			"80 % and no rest", 250,
			diet.Menu{{Food: catWet, Amount: diet.Share(50)}, {Food: catDry, Amount: diet.Share(30)}},
			`diet: menu "50 % + 30 % = 80 % and no rest": want a rest, or shares of 100 %`,
		},
		{
			"all faults", units.Energy(math.NaN()),
			diet.Menu{{Food: bad, Amount: diet.Share(30)}, {Food: kibble, Amount: diet.Count(1, "can")}, {Food: bad, Amount: diet.Rest()}},
			`portion: need "not a finite number": want an estimate of more than 0 kcal a day; diet: menu[1].amount "1 can": want a unit on the label of "Tarnwick House Dog Dry": cup; ` +
				`diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed); ` +
				`diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed)`,
		},
		{
			"a can that says nothing", 250,
			diet.Menu{{Food: diet.Food{Name: "wet", Label: diet.Label{Energy: 1000, Serving: diet.Serving{Name: "can"}}}, Amount: diet.Count(1, "can")}, {Food: catDry, Amount: diet.Rest()}},
			`diet: label.serving "": want the grams or the kcal of one can`,
		},
		{
			"together half the body", 2200,
			diet.Menu{{Food: asFed("broth", 800), Amount: diet.Share(50)}, {Food: asFed("stew", 800), Amount: diet.Rest()}},
			`portion: mass of the menu "2750.00 g a day": want at most 2300.00 g (half the body weight, 20 kg at most) (is the label's energy per 100 g, or per cup?)`,
		},
		{
			"each half the body", 4000,
			diet.Menu{{Food: asFed("broth", 800), Amount: diet.Share(50)}, {Food: asFed("stew", 800), Amount: diet.Rest()}},
			`portion: mass of broth "2500.00 g a day": want at most 2300.00 g (half the body weight, 20 kg at most) (is the label's energy per 100 g, or per cup?); ` +
				`portion: mass of stew "2500.00 g a day": want at most 2300.00 g (half the body weight, 20 kg at most) (is the label's energy per 100 g, or per cup?)`,
		},
	} {
		need := energy.Estimate{Daily: tt.daily, Animal: energy.Animal{Species: energy.Cat, Weight: 4600}}
		r, err := portion.Weigh(need, tt.menu)
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != tt.want {
			t.Errorf("%s: error %v\nwant %s", tt.name, err, tt.want)
		}
		if !r.Equal(portion.Ration{}) {
			t.Errorf("%s: a ration came back with the error", tt.name)
		}
	}
}

// 5 kcal of 240 are 1.3 g of the dry food, and 4 kcal are 2 g of the treat: both
// less than half of 5 g. 240 - 5 × 30 leaves 90 kcal.
func TestEveryFoodTooSmallForTheScaleIsNamed(t *testing.T) {
	r, err := portion.Weigh(prescribedCat(240), diet.Menu{
		{Food: asFed("dry", 3850), Amount: diet.Share(2)},
		{Food: asFed("treat", 2000), Amount: diet.Fixed(2), Treat: true},
		{Food: asFed("wet", 1000), Amount: diet.Rest()},
	})
	if err != nil {
		t.Fatal(err)
	}
	_, err = r.On(5)
	const want = "portion: 1.23 g of dry a day is less than half a step of a 5 g scale: want a finer scale; " +
		"portion: 2.00 g of treat a day is less than half a step of a 5 g scale: want a finer scale"
	var scale *portion.ScaleError
	if !errors.As(err, &scale) || err.Error() != want {
		t.Errorf("error %v\nwant %s", err, want)
	}
	// 231 g of wet food are 250 g on a 50 g scale, and hold more than the day.
	r, err = portion.Weigh(prescribedCat(240), diet.Menu{{Food: asFed("wet", 1000), Amount: diet.Fixed(231)}, {Food: asFed("dry", 4000), Amount: diet.Rest()}})
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(50)
	if want := "portion: 0.00 g of dry a day is less than half a step of a 50 g scale: want a finer scale"; err == nil || err.Error() != want {
		t.Errorf("error %v, want %s", err, want)
	}
	if !w.Equal(portion.Weighed{}) {
		t.Error("a weighed ration came back with the error")
	}
}

// said returns the texts of the cautions that hold a word, with their levels.
func said(c []advice.Caution, word string) string {
	var found []string
	for _, x := range c {
		if strings.Contains(x.Text, word) {
			found = append(found, x.Level.String()+": "+x.Text)
		}
	}
	return strings.Join(found, "\n")
}

func TestTreatsAboveATenthAreCautioned(t *testing.T) {
	// Harbottle's 888 kcal with 3 biscuits, 84 kcal or 9.5 %, and with 8, 224 or
	// 25 %; and 280 kcal with one, which is exactly a tenth.
	for _, tt := range []struct {
		daily units.Energy
		n     float64
		want  string
	}{
		{888, 3, ""},
		{888, 8, "warn: treats are 224.0 kcal, 25 % of the day's 888.0 kcal: at most 10 %, 88.8 kcal"},
		{280, 1, ""},
		{279.9, 1, "warn: treats are 28.0 kcal, 10 % of the day's 279.9 kcal: at most 10 %, 28.0 kcal"},
	} {
		r, err := portion.Weigh(prescribed(tt.daily), diet.Menu{
			{Food: kibble, Amount: diet.Rest()}, {Food: biscuit, Amount: diet.Count(tt.n, "biscuit"), Treat: true},
		})
		if err != nil {
			t.Fatal(err)
		}
		if got := said(r.Cautions(), "treats are"); got != tt.want {
			t.Errorf("%v of %v: %q, want %q", tt.n, tt.daily, got, tt.want)
		}
		if got := said(r.Cautions(), "complete food"); got != "" {
			t.Errorf("%v of %v: treats alone are said twice: %q", tt.n, tt.daily, got)
		}
	}
}

func TestAnyTreatForACatInWeightLossIsCautioned(t *testing.T) {
	biddle := energy.Animal{Species: energy.Cat, Weight: 6.9 * units.Kilogram, Condition: energy.BCS9(8)}
	harbottle := energy.Animal{Species: energy.Dog, Weight: 38.5 * units.Kilogram, Condition: energy.BCS9(8)}
	menu := diet.Menu{{Food: catDry, Amount: diet.Rest()}, {Food: biscuit, Amount: diet.Fixed(1), Treat: true}}
	const want = "warn: no treats for a cat in weight loss, unless they match its food: House biscuit, 3.5 kcal a day"
	for _, tt := range []struct {
		name  string
		stage energy.Stage
		menu  diet.Menu
		want  string
	}{
		{"cat", energy.WeightLoss{Animal: biddle}, menu, want},
		{"cat, no treat", energy.WeightLoss{Animal: biddle}, diet.Only(catDry), ""},
		{"cat, adult", energy.Adult{Animal: biddle, Status: energy.Neutered}, menu, ""},
		{"dog", energy.WeightLoss{Animal: harbottle}, menu, ""},
	} {
		w, err := fed(tt.stage, tt.menu)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		if got := said(w.Cautions(2), "match its food: "); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// 23 kcal of topper and 23 of a treat whose label doesn't say what it is are 46 of
// 250, 18 %; neither is a tenth alone.
func TestTreatOfNoStatedRoleIsNoDiet(t *testing.T) {
	topper, treat := asFed("broth", 1000), asFed("rusk", 1000)
	topper.Role = diet.Complementary
	for role, want := range map[diet.Role]string{
		0:                  "warn: broth, rusk: 46.0 kcal a day, 18 % of the energy, from what is not, or not stated to be, a complete food: above 10 % the diet may lack nutrients",
		diet.Complementary: "warn: broth, rusk: 46.0 kcal a day, 18 % of the energy, from what is not a complete food: above 10 % the diet may lack nutrients",
		diet.Complete:      "",
	} {
		treat.Role = role
		w, err := fed(givenCat(250), diet.Menu{{Food: topper, Amount: diet.Fixed(23)}, {Food: treat, Amount: diet.Fixed(23), Treat: true}, {Food: catDry, Amount: diet.Rest()}})
		if err != nil {
			t.Fatal(err)
		}
		if got := said(w.Cautions(2), "complete food: above"); got != want {
			t.Errorf("%v: %q, want %q", role, got, want)
		}
	}
}

// 25 kcal of 250 are a tenth.
func TestFoodThatIsNoDietIsCautionedAboveATenth(t *testing.T) {
	topper := asFed("broth", 1000)
	topper.Role = diet.Complementary
	for _, tt := range []struct {
		grams units.Mass
		treat bool
		want  string
	}{
		{25, false, ""},
		{26, false, "warn: broth: 26.0 kcal a day, 10 % of the energy, from what is not a complete food: above 10 % the diet may lack nutrients"},
		{60, false, "warn: broth: 60.0 kcal a day, 24 % of the energy, from what is not a complete food: above 10 % the diet may lack nutrients"},
		{60, true, ""}, // said of treats
	} {
		r, err := portion.Weigh(prescribedCat(250), diet.Menu{{Food: catDry, Amount: diet.Rest()}, {Food: topper, Amount: diet.Fixed(tt.grams), Treat: tt.treat}})
		if err != nil {
			t.Fatal(err)
		}
		if got := said(r.Cautions(), "complete food"); got != tt.want {
			t.Errorf("%v: %q, want %q", tt.grams, got, tt.want)
		}
	}
	alone, err := portion.Weigh(prescribedCat(250), diet.Only(topper))
	if err != nil {
		t.Fatal(err)
	}
	if got := said(alone.Cautions(), "complete food"); got != "" {
		t.Errorf("a topper alone is said twice: %q", got)
	}
	r, err := portion.Weigh(prescribedCat(250), diet.Menu{{Food: topper, Amount: diet.Share(50)}, {Food: topper, Amount: diet.Rest()}})
	if err != nil {
		t.Fatal(err)
	}
	if got, want := said(r.Cautions(), "complete one"), "refer: no food of the menu is a complete one: together they need not be a diet"; got != want {
		t.Errorf("only toppers: %q, want %q", got, want)
	}
}

// The stage says it, though the animal's circumstances don't.
func TestAdultFoodForGrowthOrLactationIsCautioned(t *testing.T) {
	adult := catDry
	adult.For.Stages = diet.Maintenance
	treat := biscuit
	treat.For.Stages = diet.Maintenance
	queen := energy.Animal{Species: energy.Cat, Weight: 4 * units.Kilogram, Condition: energy.BCS9(5)}
	kitten := energy.Animal{Species: energy.Cat, Weight: 1.2 * units.Kilogram, Condition: energy.BCS9(5)} // age not known
	const its = "warn: Tarnwick House Cat Dry is food for maintenance, not for "
	for _, tt := range []struct {
		stage energy.Stage
		want  string
	}{
		{energy.Lactation{Animal: queen, Young: 4, Week: 3}, its + "a lactating animal"},
		{energy.Gestation{Animal: queen, Week: 6, WeightBeforeMating: 3600}, its + "a pregnant animal"},
		{energy.Growth{Animal: kitten, AdultWeight: 4 * units.Kilogram}, its + "a growing animal"},
		{energy.Nursling{Animal: energy.Animal{Species: energy.Cat, Weight: 400, Age: 3 * energy.Week}}, its + "a growing animal"},
		{energy.Adult{Animal: queen, Status: energy.Neutered}, ""},
	} {
		for _, menu := range []diet.Menu{
			diet.Only(adult),
			{{Food: adult, Amount: diet.Rest()}, {Food: treat, Amount: diet.Count(1, "biscuit"), Treat: true}},
		} {
			w, err := fed(tt.stage, menu)
			if err != nil {
				t.Errorf("%T: %v", tt.stage, err)
				continue
			}
			if got := said(w.Cautions(3), "maintenance"); got != tt.want {
				t.Errorf("%T, %d foods: %q, want %q", tt.stage, len(menu), got, tt.want)
			}
		}
	}
}

// 400 g of each of two foods are 8.7 % of 4.6 kg, and 17 % together.
func TestMuchFoodInSeveralIsReferred(t *testing.T) {
	r, err := portion.Weigh(prescribedCat(640), diet.Menu{{Food: asFed("broth", 800), Amount: diet.Share(50)}, {Food: asFed("stew", 800), Amount: diet.Rest()}})
	if err != nil {
		t.Fatal(err)
	}
	const want = "refer: 800.00 g of all the foods a day is 17 % of the body weight: check the label's kcal/kg, the energy and the weight first"
	if got := said(r.Cautions(), "of the body weight"); got != want {
		t.Errorf("%q, want %q", got, want)
	}
	// 600 / 0.8 = 750 g, 16 % of it; the other 40 kcal need no second caution.
	r, err = portion.Weigh(prescribedCat(640), diet.Menu{{Food: asFed("broth", 800), Amount: diet.Rest()}, {Food: asFed("dry", 4000), Amount: diet.Fixed(10)}})
	if err != nil {
		t.Fatal(err)
	}
	const one = "refer: 750.00 g of broth a day is 16 % of the body weight: check the label's kcal/kg, the energy and the weight first"
	if got := said(r.Cautions(), "of the body weight"); got != one {
		t.Errorf("%q, want %q", got, one)
	}
}

// A queen of 4 kg with four kittens takes 17 % of her weight: 541 kcal (NRC 2006:
// 100 × 4^0.67 + 60 × 4 × 1.2), 676 g of 800 kcal/kg.
func TestMuchFoodIsUsualInLactation(t *testing.T) {
	queen := energy.Animal{Species: energy.Cat, Weight: 4 * units.Kilogram, Condition: energy.BCS9(5)}
	w, err := fed(energy.Lactation{Animal: queen, Young: 4, Week: 3}, diet.Only(asFed("stew", 800)))
	if err != nil {
		t.Fatal(err)
	}
	if share := w.Portion(0).Mass / queen.Weight; share < 0.16 || share > 0.20 {
		t.Errorf("the day is %v of the weight: choose another food", share)
	}
	if got := said(w.Cautions(4), "of the body weight"); got != "" {
		t.Errorf("%q", got)
	}
}

// Neither is a part of a meal: the biscuits are not weighed, and 25 g of cheese are
// weighed once, in 25 steps.
func TestTreatsAreNotTooCoarseForMeals(t *testing.T) {
	w, err := fed(given(1237), diet.Menu{
		{Food: kibble, Amount: diet.Rest()},
		{Food: biscuit, Amount: diet.Count(2, ""), Treat: true},
		{Food: asFed("cheese", 4000), Amount: diet.Fixed(25), Treat: true},
	})
	if err != nil {
		t.Fatal(err)
	}
	if got := said(w.Cautions(3), "scale"); got != "" {
		t.Errorf("%q", got)
	}
}

// 3.3 g of a treat are 3 g on a 1 g scale, 9.1 % less; but that is 1 kcal of 240.
func TestErrorOfTheScaleWeighsByTheEnergy(t *testing.T) {
	r, err := portion.Weigh(prescribedCat(240), diet.Menu{
		{Food: asFed("treat", 3500), Amount: diet.Fixed(3.3), Treat: true},
		{Food: asFed("wet", 1000), Amount: diet.Share(70)},
		{Food: asFed("dry", 4000), Amount: diet.Rest()},
	})
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	const want = "note: the 1 g scale makes 3 g of treat out of 3.30 g a day, -9.1 %: use a 0.1 g scale"
	if got := said(w.Cautions(2), "out of"); got != want {
		t.Errorf("%q, want %q", got, want)
	}
	// 168 kcal are 168 g, weighed as 200 g: 32 kcal, 13 % of the day. The 40 kcal that
	// they leave are 50 g, weighed as 100 g: 80 kcal, 8 more than the 72 of 90 g, 3 %.
	r, err = portion.Weigh(prescribedCat(240), diet.Menu{
		{Food: asFed("wet", 1000), Amount: diet.Share(70)}, {Food: asFed("stew", 800), Amount: diet.Rest()},
	})
	if err != nil {
		t.Fatal(err)
	}
	w, err = r.On(100 * units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	const coarse = "refer: the 100 g scale makes 200 g of wet out of 168.00 g a day, +19.0 %: use a 1 g scale\n" +
		"warn: the 100 g scale makes 100 g of stew out of 90.00 g a day, +11.1 %: use a 1 g scale"
	if got := said(w.Cautions(1), "out of"); got != coarse {
		t.Errorf("%q, want %q", got, coarse)
	}
}
