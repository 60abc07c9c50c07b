package portion_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
)

// A cat of 4.6 kg takes 202 to 304 mL of water a day. Half on wet food of 78 %
// water and half on dry food of 8 %, it eats 121.0 × 0.78 + 34.3 × 0.08 = 97 mL of
// that and is expected to drink the rest.
func ExampleRation_Water() {
	wet, dry := catWet, catDry
	wet.Analysis.Moisture, dry.Analysis.Moisture = 78, 8
	ration, err := portion.Weigh(prescribedCat(263.8), diet.Menu{{Food: wet, Amount: diet.Share(50)}, {Food: dry, Amount: diet.Rest()}})
	if err != nil {
		fmt.Println(err)
		return
	}
	water, err := ration.Water(portion.ByWeight)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f mL in the food; drinks %s\n", water.Food.Millilitres(), water)
	_, err = portion.ParseWaterBasis("fluid rate")
	fmt.Println(err)
	// Output:
	// 97 mL in the food; drinks from 105 mL to 206 mL a day
	// portion: water basis "fluid rate": want weight, energy or dry_matter (a clinic's fluid rate is a treatment, not what an animal drinks)
}
