package portion_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Two foods of a household with cats, and a treat. The can holds 1090 × 0.156 =
// 170.04 kcal, the biscuit 3500 × 0.008 = 28.
var (
	catWet = diet.Food{
		Name: "Tarnwick House Cat Wet", Form: diet.Wet, Role: diet.Complete, For: diet.Purpose{Species: diet.Cats},
		Label: diet.Label{
			Energy:  1090 * units.KilocaloriePerKilogram,
			Serving: diet.Serving{Name: "can", Energy: 170 * units.Kilocalorie, Mass: 156 * units.Gram},
		},
	}
	catDry = diet.Food{
		Name: "Tarnwick House Cat Dry", Form: diet.Dry, Role: diet.Complete, For: diet.Purpose{Species: diet.Cats},
		Label: diet.Label{
			Energy:  3850 * units.KilocaloriePerKilogram,
			Serving: diet.Serving{Name: "cup", Energy: 424 * units.Kilocalorie, Mass: 110 * units.Gram},
		},
	}
	biscuit = diet.Food{
		Name: "House biscuit", Form: diet.Dry, Role: diet.Complementary,
		Label: diet.Label{
			Energy:  3500 * units.KilocaloriePerKilogram,
			Serving: diet.Serving{Name: "biscuit", Energy: 28 * units.Kilocalorie, Mass: 8 * units.Gram},
		},
	}
)

// fed weighs a menu on a scale that shows whole grams.
func fed(stage energy.Stage, menu diet.Menu) (portion.Weighed, error) {
	need, err := stage.Estimate()
	if err != nil {
		return portion.Weighed{}, err
	}
	ration, err := portion.Weigh(need, menu)
	if err != nil {
		return portion.Weighed{}, err
	}
	return ration.On(units.Gram)
}

// Two cats in one home, each with half of its energy wet. Tansy, 4.6 kg: 70 ×
// 4.6^0.75 × 1.2 = 263.8 kcal; half of it, 131.9 kcal, is 121.03 g of the wet food
// and 34.27 g of the dry. Biddle, 6.9 kg and 8/9: 70 × (6.9/1.3)^0.75 × 0.8 = 195.8
// kcal, 89.83 g and 25.43 g. What the two cats eat of the wet food, 211 g, is not
// two equal halves.
func Example_twoCatsInOneHome() {
	menu := diet.Menu{
		{Food: catWet, Amount: diet.Share(50)},
		{Food: catDry, Amount: diet.Rest()},
	}
	tansy := energy.Animal{Species: energy.Cat, Weight: 4.6 * units.Kilogram, Condition: energy.BCS9(5)}
	biddle := energy.Animal{Species: energy.Cat, Weight: 6.9 * units.Kilogram, Condition: energy.BCS9(8)}
	for _, cat := range []struct {
		name  string
		stage energy.Stage
	}{
		{"Tansy", energy.Adult{Animal: tansy, Status: energy.Neutered}},
		{"Biddle", energy.WeightLoss{Animal: biddle}},
	} {
		w, err := fed(cat.stage, menu)
		if err != nil {
			fmt.Println(err)
			return
		}
		wet, dry := w.Ration().Portion(0), w.Ration().Portion(1)
		fmt.Printf("%s, %.1f kcal: %.2f g wet, %.2f g dry\n", cat.name, w.Target().Kilocalories(), wet.Mass.Grams(), dry.Mass.Grams())
		meals, err := w.Meals(2)
		if err != nil {
			fmt.Println(err)
			return
		}
		for _, m := range meals {
			fmt.Printf("  %d  %-5v %s\n", m.Number, m.Mass, m.Food)
		}
	}
	// Output:
	// Tansy, 263.8 kcal: 121.03 g wet, 34.27 g dry
	//   1  61 g  Tarnwick House Cat Wet
	//   1  17 g  Tarnwick House Cat Dry
	//   2  60 g  Tarnwick House Cat Wet
	//   2  17 g  Tarnwick House Cat Dry
	// Biddle, 195.8 kcal: 89.83 g wet, 25.43 g dry
	//   1  45 g  Tarnwick House Cat Wet
	//   1  13 g  Tarnwick House Cat Dry
	//   2  45 g  Tarnwick House Cat Wet
	//   2  12 g  Tarnwick House Cat Dry
}

// Half of the energy is neither half of the grams nor half a can. Of 240 kcal,
// 120 / 1.09 = 110.1 g are wet and 120 / 3.85 = 31.2 g dry. With half a can beside
// them the dry food makes 78 × 1.09 + 31.2 × 3.85 = 205 kcal, 15 % short; the same
// 141.3 g in equal parts are 70.6 × (1.09 + 3.85) = 349 kcal, 45 % too much.
func Example_halfTheEnergy() {
	ration, err := portion.Weigh(prescribedCat(240), diet.Menu{
		{Food: catWet, Amount: diet.Share(50)},
		{Food: catDry, Amount: diet.Share(50)},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	wet, dry := ration.Portion(0), ration.Portion(1)
	fmt.Printf("%.1f g wet and %.1f g dry\n", wet.Mass.Grams(), dry.Mass.Grams())
	fmt.Printf("%.2f of a can, %.0f %% of the grams, %.0f %% of the energy\n", wet.Mass.Grams()/156,
		100*wet.Mass.Grams()/(wet.Mass+dry.Mass).Grams(), 100*wet.Energy.Kilocalories()/240)
	// Output:
	// 110.1 g wet and 31.2 g dry
	// 0.71 of a can, 78 % of the grams, 50 % of the energy
}

// A whole can, and dry food to fill: 263.8 - 170.04 = 93.8 kcal, 24.35 g.
func Example_wholeCan() {
	tansy := energy.Animal{Species: energy.Cat, Weight: 4.6 * units.Kilogram, Condition: energy.BCS9(5)}
	w, err := fed(energy.Adult{Animal: tansy, Status: energy.Neutered}, diet.Menu{
		{Food: catWet, Amount: diet.Count(1, "can")},
		{Food: catDry, Amount: diet.Rest()},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for i := range w.Len() {
		fmt.Println(w.Portion(i).Mass, w.Portion(i).Food)
	}
	fmt.Printf("%.1f kcal of %.1f\n", w.Energy().Kilocalories(), w.Target().Kilocalories())
	// Output:
	// 156 g Tarnwick House Cat Wet
	// 24 g Tarnwick House Cat Dry
	// 262.4 kcal of 263.8
}

// Treats come out first. Bolster, 24.6 kg, has 1.6 × 70 × 24.6^0.75 = 1237.1 kcal a
// day; two biscuits are 56, and (1237.1 - 56) / 3.56 = 331.78 g. On top of 1237.1
// kcal of food they would make 4.5 % more.
func Example_treatsFirst() {
	bolster := energy.Animal{Species: energy.Dog, Weight: 24.6 * units.Kilogram, Condition: energy.BCS9(5)}
	w, err := fed(energy.Adult{Animal: bolster, Status: energy.Neutered}, diet.Menu{
		{Food: kibble, Amount: diet.Rest()},
		{Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for i := range w.Len() {
		if p := w.Portion(i); p.Treat {
			fmt.Println(p.Pieces, p.Unit, "of", p.Food, p.Energy, "outside meals")
		} else {
			fmt.Println(p.Mass, p.Food)
		}
	}
	meals, err := w.Meals(2)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range meals {
		fmt.Println(m.Number, m.Mass, m.Food)
	}
	// Output:
	// 332 g Tarnwick House Dog Dry
	// 2 biscuit of House biscuit 56 kcal outside meals
	// 1 166 g Tarnwick House Dog Dry
	// 2 166 g Tarnwick House Dog Dry
}
