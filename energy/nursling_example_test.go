package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// By hand: from day 7 a kitten gets 22.5 kcal for each 100 g; 22.5 × 1.89 =
// 42.5. It should gain 10 to 13 g a day (SACN 5th ed., Tables 23-4 and 23-1).
func ExampleNursling() {
	kitten := energy.Animal{Species: energy.Cat, Weight: 189 * units.Gram, Age: 12 * energy.Day}
	s := energy.Nursling{Animal: kitten, DayBefore: 184 * units.Gram}
	e, err := s.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kcal/day, weigh again in %v\n", e.Daily.Kilocalories(), e.Reweigh)
	for _, c := range e.Cautions() {
		if c.Level == advice.Refer {
			fmt.Println(c.Text)
		}
	}
	// Output:
	// 42.5 kcal/day, weigh again in 1 d
	// gained only 5 g in a day (184 g to 189 g): a kitten must gain 7 g or more; see that it is warm, and call the veterinarian today
}

// Dog Owner's Home Veterinary Handbook, 4th ed., p. 499: an orphan puppy of a
// pound gets 60, 70, 80 and 90 kcal a day in its first four weeks.
func ExampleNursling_puppy() {
	for week := range energy.Age(4) {
		puppy := energy.Animal{Species: energy.Dog, Weight: units.Pound, Age: 1 + week*energy.Week}
		e, err := energy.Nursling{Animal: puppy}.Estimate()
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("day %d: %.0f kcal\n", puppy.Age, e.Daily.Kilocalories())
	}
	// Output:
	// day 1: 60 kcal
	// day 8: 70 kcal
	// day 15: 80 kcal
	// day 22: 90 kcal
}

// SACN 5th ed., Table 16-1: 3.5 to 6 % of its weight a day in weeks 2 to 4.
func ExampleNursling_DailyGain() {
	puppy := energy.Animal{Species: energy.Dog, Weight: 800 * units.Gram, Age: 2 * energy.Week}
	g, err := energy.Nursling{Animal: puppy}.DailyGain()
	fmt.Printf("%v to %v a day, alarm under %v, %v\n", g.Low, g.High, g.Alarm, err)
	// Output: 28 g to 48 g a day, alarm under 28 g, <nil>
}
