package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// Every published method for one puppy: 6.4 kg now, 22 kg when grown. The four
// figures are worked out by hand in TestEveryMethodGivesWhatItsFormulaSays.
func ExampleCompare() {
	puppy := energy.Animal{Species: energy.Dog, Weight: 6.4 * units.Kilogram, Age: 12 * energy.Week}
	all, err := energy.Compare(energy.Growth{Animal: puppy, AdultWeight: 22 * units.Kilogram})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range all {
		fmt.Printf("%.0f kcal/day by %v, puppies like it %.0f to %.0f\n",
			e.Daily.Kilocalories(), e.Method, e.Low.Kilocalories(), e.High.Kilocalories())
	}
	// Output:
	// 845 kcal/day by fediaf, puppies like it 591 to 1098
	// 1132 kcal/day by nrc_2006, puppies like it 793 to 1472
	// 864 kcal/day by klein_2019, puppies like it 605 to 1123
	// 845 kcal/day by factor_on_rer, puppies like it 591 to 1098
}

func ExampleMethods() {
	for _, q := range energy.Methods() {
		if q.Stage == "lactation" && q.Species == energy.Ferret {
			fmt.Printf("%v: %s kcal/day\n%v\n", q.Method, q.Formula, q.Source)
		}
	}
	// Output:
	// per_kilogram: 875 (600 to 1200) × kg kcal/day
	// Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010, p. 1218
}
