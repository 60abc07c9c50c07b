package energy_test

import (
	"fmt"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// FEDIAF 2021, in Veterinary Nursing Journal 37(4), 2022, Table 2: 210 kcal ×
// kg^0.75 up to half of the adult weight. By hand: 16^0.75 = 8, × 210 = 1680.
func ExampleGrowth() {
	puppy := energy.Animal{
		Species:   energy.Dog,
		Weight:    16 * units.Kilogram,
		Age:       4 * energy.Month,
		Condition: energy.BCS9(5),
	}
	e, err := energy.Growth{Animal: puppy, AdultWeight: 40 * units.Kilogram}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v by %v, weigh again in %v\n", e.Daily, e.Method, e.Reweigh)
	for line := range strings.Lines(e.Explain()) {
		if strings.HasPrefix(line, "adult") || strings.HasPrefix(line, "formula") || strings.HasPrefix(line, "   ") {
			fmt.Print(line)
		}
	}
	// Output:
	// 1680 kcal by fediaf, weigh again in 1 wk
	// adult     40 kg expected: p = 16/40 = 0.400
	// formula   210 × kg^0.75 (puppy below 50 % of its adult weight)
	//           = 210 × 16^0.75 = 210 × 8.000 = 1680.0 kcal
}

// The kitten that a shelter knows no adult weight of. SACN 5th ed., Table 24-4,
// p. 434: 210 kcal/kg at 2 months; × 0.9 = 189.
func ExampleGrowth_byAge() {
	kitten := energy.Animal{Species: energy.Cat, Weight: 900 * units.Gram, Age: 2 * energy.Month}
	e, err := energy.Growth{Animal: kitten}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v by %v\n", e.Daily, e.Method)
	fmt.Println(e.Cautions()[0])
	// Output:
	// 189 kcal by per_kilogram
	// warn: expected adult weight not given: the figure goes by age and current weight alone, whatever the size when grown [ours, not published]
}

func ExampleGrowth_refused() {
	pup := energy.Animal{Species: energy.Dog, Weight: 600 * units.Gram, Age: 3 * energy.Week}
	_, err := energy.Growth{Animal: pup, AdultWeight: 9 * units.Kilogram}.Estimate()
	fmt.Println(err)
	// Output: energy: age "3 wk": want 4 wk to 2 y in growth (still nursing: Nursling)
}
