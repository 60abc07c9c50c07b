package main

import (
	"strings"
	"testing"
)

// 30 g of powder of 5100 kcal/kg and 125 mL of water make 150 mL that hold 153
// kcal and weigh 155 g.
const milk = "food,energy,serving,serving energy,serving mass,moisture,for,stages\nkitten,,150 mL,153 kcal,155 g,81.4 %,cat dog,growth\n"

// 200 g of kitten get 45 kcal: 45 / 153 of 155 g are 45.59 g, and 45.6 g are 44.1
// mL; a sixth is 7.6 g and 7.4 mL, within the 8 mL that its stomach holds.
func TestMilkByWeightAndVolume(t *testing.T) {
	out := textOf(t, milk, "species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 6; scale: 0.1 g")
	for _, want := range []string{
		"45.6 g a day, 45 kcal, 6 meals\n",
		" 1 [   7.6 g ] ", " 6 [   7.6 g ] ",
		"    by syringe: about 7.4 mL a meal, 44.1 mL a day (155 g are 150 mL)\n",
	} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
	if strings.Contains(out, "stomach holds") {
		t.Errorf("a meal that fits is warned about:\n%s", out)
	}
	if strings.Contains(out, "no milk") {
		t.Errorf("milk is taken for something else:\n%s", out)
	}
}

// Dry food, and milk powder before the water is in it, are refused to nobody but
// come with a refer-level caution, above the grams.
func TestNurslingIsFedMilk(t *testing.T) {
	const want = "!! VETERINARIAN FIRST: kitten is no milk by its label"
	out := textOf(t, testFoods, "species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 6; scale: 0.1 g")
	if at := strings.Index(out, want); at < 0 || at > strings.Index(out, " 1 [") {
		t.Errorf("no %q above the grams in\n%s", want, out)
	}
	const kitten = "species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 6; scale: 0.1 g"
	const columns = "food,energy,serving,serving energy,serving mass,moisture,for,form\n"
	for row, milk := range map[string]bool{
		"kitten,5000 kcal/kg,15 mL,35 kcal,7 g,4 %,cat,\n":            false, // a spoon of powder
		"kitten,5000 kcal/kg,15 mL,35 kcal,7 g,,cat,powder\n":         false,
		"kitten,990 kcal/kg,150 mL,153.5 kcal,155 g,,cat,liquid\n":    true,
		"kitten,990 kcal/kg,bottle,153.5 kcal,155 g,81 %,cat,\n":      true,
		"kitten,990 kcal/kg,bottle,153.5 kcal,155 g,,cat,liquid\n":    false, // nothing says so
		"kitten,990 kcal/kg,150 mL,153.5 kcal,155 g,81.4 %,cat,wet\n": true,
	} {
		out := textOf(t, columns+row, kitten)
		if got := !strings.Contains(out, want); got != milk || !strings.Contains(out, " 1 [") {
			t.Errorf("milk %v, want %v: %s\n%s", got, milk, row, out)
		}
	}
	if out := textOf(t, testFoods, "species: cat; weight: 4 kg; stage: adult; status: intact"); strings.Contains(out, "no milk") {
		t.Errorf("an adult is to have milk:\n%s", out)
	}
}

// A fifth is 9.2 g, 8.9 mL, a sixth 7.4 mL; without the volume its grams are
// taken, 7.6 of a sixth. A 10 g scale has no feed below 9.7 mL. There is no amount
// until the feeds are small enough, and what is to be said of the animal stays.
func TestMealBeyondTheStomach(t *testing.T) {
	const row = "species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 5; scale: 0.1 g"
	bottle := strings.Replace(milk, "150 mL", "bottle", 1)
	for _, test := range []struct{ foods, row, want string }{
		{milk, row, `meals "5": a feed of 8.9 mL is more than its stomach holds, 8.0 mL: want 6 or more`},
		{bottle, row, `meals "5": a feed of 9.2 mL is more than its stomach holds, 8.0 mL: want 6 or more`},
		{milk, strings.Replace(row, "meals: 5", "meals: 2", 1), `meals "2": a feed of 22.1 mL is more than its stomach holds, 8.0 mL: want 6 or more`},
		{milk, strings.Replace(row, "0.1 g", "10 g", 1), `meals "5": a feed of 9.7 mL is more than its stomach holds, 8.0 mL: want a richer milk or a finer scale, no number of feeds up to 24 is enough`},
	} {
		out := textOf(t, test.foods, test.row)
		if !strings.Contains(strings.Join(strings.Fields(out), " "), "[ NO AMOUNT ] line 2: "+test.want) || strings.Contains(out, " 1 [") {
			t.Errorf("no %q, or an amount, in\n%s", test.want, out)
		}
		if !strings.Contains(out, "! never feed a chilled nursling") {
			t.Errorf("nothing is said of the animal:\n%s", out)
		}
		sheet, stderr, status := sheetOf(t, allColumns+staged(test.row), test.foods)
		if !strings.Contains(stderr, test.want) || status != exitBadRows || !strings.Contains(sheet, "\nAsh,pen,kitten,,,,") {
			t.Errorf("status %d, %s\n%s", status, stderr, sheet)
		}
	}
	for _, foods := range []string{milk, bottle} {
		if out := textOf(t, foods, strings.Replace(row, "meals: 5", "meals: 6", 1)); !strings.Contains(out, " 1 [   7.6 g ] ") {
			t.Errorf("six feeds:\n%s", out)
		}
	}
}
