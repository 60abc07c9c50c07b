package portion_test

import (
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Wet food in the morning and at noon, two parts and one, and dry at night.
func ExampleWeighed_Serve() {
	menu := diet.Menu{{Food: catWet, Amount: diet.Share(50)}, {Food: catDry, Amount: diet.Rest()}}
	weighed, err := fed(givenCat(263.8), menu)
	if err != nil {
		fmt.Println(err)
		return
	}
	wet, dry := []string{catWet.Name}, []string{catDry.Name}
	meals, err := weighed.Serve(portion.Timetable{
		{At: portion.At(7, 0), Parts: 2, Foods: wet},
		{At: portion.At(13, 0), Parts: 1, Foods: wet},
		{At: portion.At(20, 30), Foods: dry},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range meals {
		fmt.Println(m.At, m.Mass, m.Food)
	}
	// Output:
	// 07:00 81 g Tarnwick House Cat Wet
	// 13:00 40 g Tarnwick House Cat Wet
	// 20:30 34 g Tarnwick House Cat Dry
}

func ExampleMealsFor() {
	kitten := energy.Animal{Species: energy.Cat, Weight: 1.5 * units.Kilogram, Age: 4 * energy.Month, Condition: energy.BCS9(5)}
	need, err := energy.Growth{Animal: kitten, AdultWeight: 4 * units.Kilogram}.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	if f, ok := portion.MealsFor(need); ok {
		fmt.Printf("%s: %d meals or more, food always there: %t\n", f.For, f.Low, f.FreeChoice)
	}
	// Output: a kitten: 3 meals or more, food always there: true
}

func ExampleTimetable_LongestGap() {
	minutes, _ := portion.Timetable{{At: portion.At(7, 0)}, {At: portion.At(18, 0)}}.LongestGap()
	fmt.Println(minutes/60, "h")
	// Output: 13 h
}

func ExampleParseClock() {
	at, err := portion.ParseClock("7:30")
	fmt.Println(at, err)
	_, err = portion.ParseClock("7:30 pm")
	fmt.Println(err)
	// Output:
	// 07:30 <nil>
	// portion: time "7:30 pm": want hours and minutes of a 24-hour clock, as in "07:30" (6 pm is 18:00)
}
