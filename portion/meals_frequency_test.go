package portion_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// animalOf is an animal in ideal condition.
func animalOf(s energy.Species, kg float64, age energy.Age) energy.Animal {
	return energy.Animal{Species: s, Weight: units.Mass(kg) * units.Kilogram, Age: age, Condition: energy.BCS9(5)}
}

// The numbers of meals that are printed, with their sources at the table.
func TestMealsRecommended(t *testing.T) {
	const kg = units.Kilogram
	prescribe := func(a energy.Animal) energy.Stage {
		return energy.Prescribed{Animal: a, Daily: 300, By: "a veterinarian"}
	}
	with := func(a energy.Animal, c energy.Circumstances) energy.Animal {
		a.Circumstances = c
		return a
	}
	fat := func(s energy.Species, kg float64) energy.Animal {
		a := animalOf(s, kg, 0)
		a.Condition = energy.BCS9(8)
		return a
	}
	dog, cat := animalOf(energy.Dog, 20, 0), animalOf(energy.Cat, 4, 0)
	for _, test := range []struct {
		name      string
		stage     energy.Stage
		low, high int
		free      bool
		seen      advice.Seen
	}{
		{"a grown dog: ASPCApro, at least 2", energy.Adult{Animal: dog, Status: energy.Neutered}, 2, 0, false, advice.Secondary},
		{"a grown cat: SACN p. 385, 2 preferred", energy.Adult{Animal: cat, Status: energy.Neutered}, 2, 0, false, advice.Primary},
		{"a growing dog: SACN Table 17-3, 2 to 4", energy.Growth{Animal: animalOf(energy.Dog, 20, 8*energy.Month), AdultWeight: 25 * kg}, 2, 4, false, advice.Primary},
		{"a growing dog of no age", energy.Growth{Animal: animalOf(energy.Dog, 10, 0), AdultWeight: 25 * kg}, 2, 4, false, advice.Primary},
		{"a puppy: Best Friends, 3 to 4", energy.Growth{Animal: animalOf(energy.Dog, 6.4, 12*energy.Week), AdultWeight: 22 * kg}, 3, 4, false, advice.Secondary},
		{"a puppy on a set figure", prescribe(animalOf(energy.Dog, 6.4, 6*energy.Month-1)), 3, 4, false, advice.Secondary},
		{"a dog of six months on a set figure", prescribe(animalOf(energy.Dog, 12, 6*energy.Month)), 2, 0, false, advice.Secondary},
		{"a kitten: SACN Table 20-5, 3; p. 434, free choice", energy.Growth{Animal: animalOf(energy.Cat, 1.5, 4*energy.Month), AdultWeight: 4 * kg}, 3, 0, true, advice.Primary},
		{"a kitten of five months", energy.Growth{Animal: animalOf(energy.Cat, 2, 5*energy.Month), AdultWeight: 4 * kg}, 3, 0, false, advice.Primary},
		{"a kitten of six months: SACN p. 434, 2", energy.Growth{Animal: animalOf(energy.Cat, 2.5, 6*energy.Month), AdultWeight: 4 * kg}, 2, 0, false, advice.Primary},
		{"a pregnant queen: SACN Table 20-5, 3", energy.Gestation{Animal: cat, Week: 6}, 3, 0, false, advice.Primary},
		{"a queen with kittens", energy.Lactation{Animal: cat, Young: 3, Week: 3}, 3, 0, true, advice.Primary},
		{"a bitch: SACN p. 18, often", energy.Lactation{Animal: dog, Young: 4, Week: 3}, 3, 0, true, advice.Ours},
		{"a pregnant bitch on a set figure", prescribe(with(dog, energy.Pregnant)), 3, 0, false, advice.Ours},
		{"weight loss, cat: SACN p. 542, 2", energy.WeightLoss{Animal: fat(energy.Cat, 6)}, 2, 0, false, advice.Primary},
		{"weight loss, dog: Clinician's Brief, 2", energy.WeightLoss{Animal: fat(energy.Dog, 30)}, 2, 0, false, advice.Primary},
		{"an ill cat: SACN Table 20-5, debilitated, 3", prescribe(with(cat, energy.Ill)), 3, 0, false, advice.Primary},
		{"refeeding: DiBartola Box 26-6, every 4 to 6 h", energy.Refeeding{Animal: cat, Ladder: energy.FourDayLadder(), Day: 1, By: "a veterinarian"}, 4, 6, false, advice.Primary},
		{"a ferret: 24 h over 6 h", energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * kg}}, 4, 0, true, advice.Ours},
	} {
		f, ok := portion.MealsFor(must(test.stage))
		if !ok || f.Low != test.low || f.High != test.high || f.FreeChoice != test.free || f.Source.Seen != test.seen {
			t.Errorf("%s: %+v, %t", test.name, f, ok)
		}
	}
	for name, stage := range map[string]energy.Stage{
		"a nursling":                 energy.Nursling{Animal: energy.Animal{Species: energy.Cat, Weight: 200, Age: 10}},
		"a nursling on a set figure": prescribe(energy.Animal{Species: energy.Cat, Weight: 500, Age: 28}),
		"a rabbit":                   prescribe(energy.Animal{Species: energy.Other, Weight: 2000}),
		"no animal":                  prescribe(energy.Animal{}),
	} {
		if f, ok := portion.MealsFor(must(stage)); ok || f != (portion.Frequency{}) {
			t.Errorf("%s: %+v", name, f)
		}
	}
}

func TestFewMealsAreCautioned(t *testing.T) {
	for _, test := range []struct {
		stage energy.Stage
		food  diet.Food
		meals int
		want  string // none: nothing of the number of meals
	}{
		{
			energy.Adult{Animal: animalOf(energy.Dog, 25, 0), Status: energy.Neutered},
			kibble, 1,
			"note: 1 meal a day: 2 or more are recommended for a grown dog; a large or deep-chested dog's stomach can turn on one large meal [ASPCApro, shelter nutrition, at least two meals; two smaller ones for large and deep-chested dogs (as quoted elsewhere)]",
		},
		{
			energy.Adult{Animal: animalOf(energy.Dog, 24.9, 0), Status: energy.Neutered},
			kibble, 1,
			"note: 1 meal a day: 2 or more are recommended for a grown dog [ASPCApro, shelter nutrition, at least two meals; two smaller ones for large and deep-chested dogs (as quoted elsewhere)]",
		},
		{energy.Adult{Animal: animalOf(energy.Dog, 24.9, 0), Status: energy.Neutered}, kibble, 2, ""},
		{
			energy.Growth{Animal: animalOf(energy.Dog, 6.4, 12*energy.Week), AdultWeight: 22 * units.Kilogram},
			kibble, 2,
			"warn: 2 meals a day: 3 to 4 are recommended for a puppy under six months [Best Friends Animal Society, 3 to 4 meals from 6 weeks to 6 months (as quoted elsewhere)]",
		},
		{energy.Growth{Animal: animalOf(energy.Dog, 6.4, 12*energy.Week), AdultWeight: 22 * units.Kilogram}, kibble, 6, ""},
		{
			energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1200}},
			catDry, 2,
			"warn: 2 meals a day: 4 or more are recommended for a ferret, or food that is always there [Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010, p. 1216: transit of 3 to 6 h; four meals are 24 h over 6 h (ours, not published)]",
		},
	} {
		w, err := fed(test.stage, diet.Only(test.food))
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		all := w.TimetableCautions(make(portion.Timetable, test.meals))
		for i, c := range all {
			if strings.Contains(c.Text, "recommended for") {
				got = append(got, c.String())
			}
			if i > 0 && c.Level > all[i-1].Level {
				t.Errorf("%v is not after %v", all[i-1], c)
			}
		}
		if strings.Join(got, "\n") != test.want {
			t.Errorf("%d meals:\n got %q\nwant %q", test.meals, got, test.want)
		}
		// What the scale and the energy call for is there as well.
		if len(all) < len(w.Cautions(test.meals)) {
			t.Errorf("%d meals: %d cautions of %d", test.meals, len(all), len(w.Cautions(test.meals)))
		}
	}
}
