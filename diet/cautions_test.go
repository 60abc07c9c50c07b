package diet_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func TestCautions(t *testing.T) {
	dogFood := houseDog
	dogFood.For = diet.Purpose{Species: diet.Dogs, Stages: diet.Maintenance}
	with := func(f diet.Food, change func(*diet.Food)) diet.Food {
		change(&f)
		return f
	}
	type said struct {
		Level advice.Level
		Text  string
		Seen  advice.Seen
	}
	for _, tt := range []struct {
		name   string
		food   diet.Food
		animal energy.Animal
		want   []said
	}{
		{"all well", dogFood, energy.Animal{Species: energy.Dog}, nil},
		{"dog food for a cat", dogFood, energy.Animal{Species: energy.Cat}, []said{
			{advice.Refer, "Tarnwick House Dog Dry is food for dogs, not for cats: as the only food it can lack taurine and other nutrients that cats need", advice.Memory},
		}},
		{"dog food for a ferret", dogFood, energy.Animal{Species: energy.Ferret}, []said{
			{advice.Refer, "Tarnwick House Dog Dry is food for dogs, not for ferrets: as the only food it can lack what a strict carnivore needs", advice.Ours},
		}},
		{
			"cat food for a ferret", with(dogFood, func(f *diet.Food) { f.For.Species = diet.Cats }),
			energy.Animal{Species: energy.Ferret},
			[]said{{advice.Note, "Tarnwick House Dog Dry is food for cats, given to a ferret: check protein and fat", advice.Ours}},
		},
		{
			"cat food for a dog", with(dogFood, func(f *diet.Food) { f.For.Species = diet.Cats | diet.Ferrets }),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Warn, "Tarnwick House Dog Dry is food for cats and ferrets, not for dogs: choose a food that is", advice.Ours}},
		},
		{"dog food for a rabbit", dogFood, energy.Animal{Species: energy.Other}, []said{
			{advice.Refer, "Tarnwick House Dog Dry is food for dogs, not for this animal: choose a food that is", advice.Ours},
		}},
		{"species of the food not stated", houseDog, energy.Animal{Species: energy.Cat}, []said{
			{advice.Note, "it is not stated which species Tarnwick House Dog Dry is for", advice.Ours},
		}},
		{"species of the animal not stated", dogFood, energy.Animal{}, nil},
		{
			"complementary", with(dogFood, func(f *diet.Food) { f.Role = diet.Complementary }),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Warn, "Tarnwick House Dog Dry is a complementary food: it is not a diet by itself", advice.Memory}},
		},
		{"adult food, growing", dogFood, energy.Animal{Species: energy.Dog, Circumstances: energy.Growing}, []said{
			{advice.Warn, "Tarnwick House Dog Dry is food for maintenance, not for a growing animal", advice.Memory},
		}},
		{
			"growth food, lactating", with(dogFood, func(f *diet.Food) { f.For.Stages = diet.Growth }),
			energy.Animal{Species: energy.Dog, Circumstances: energy.Lactating},
			[]said{{advice.Warn, "Tarnwick House Dog Dry is food for growth, not for a lactating animal", advice.Memory}},
		},
		{
			"all stages, pregnant and growing", with(dogFood, func(f *diet.Food) { f.For.Stages = diet.AllStages }),
			energy.Animal{Species: energy.Dog, Circumstances: energy.Pregnant | energy.Growing},
			nil,
		},
		{
			"stages not stated, pregnant", with(dogFood, func(f *diet.Food) { f.For.Stages = 0 }),
			energy.Animal{Species: energy.Dog, Circumstances: energy.Pregnant},
			[]said{{advice.Note, "it is not stated whether Tarnwick House Dog Dry is for a pregnant animal", advice.Memory}},
		},
		{
			"gap, note", with(dogFood, func(f *diet.Food) { f.Label.Serving.Energy = 360 }),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Note, "label of Tarnwick House Dog Dry: 3560 kcal/kg and the 3600 kcal/kg of one cup differ by 0.34 % beyond their rounding; kcal/kg is used", advice.Primary}},
		},
		{
			"gap, warn", with(dogFood, func(f *diet.Food) { f.Label.Serving.Energy = 380 }),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Warn, "label of Tarnwick House Dog Dry: 3560 kcal/kg and the 3800 kcal/kg of one cup differ by 5.92 % beyond their rounding; kcal/kg is used: weigh one cup and ask the manufacturer", advice.Primary}},
		},
		{
			"eight ounces, though consistent", with(dogFood, func(f *diet.Food) { f.Label.Serving.Energy, f.Label.Serving.Mass = 808, 227 }),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Warn, "label of Tarnwick House Dog Dry: 227 g/cup is eight ounces by weight, or 240 mL taken for grams, not the food in a cup? Weigh a level cup", advice.Primary}},
		},
		{
			"too rich", with(dogFood, func(f *diet.Food) { f.Label = diet.Label{Energy: 5920} }),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Warn, "label of Tarnwick House Dog Dry: 5920 kcal/kg is more than foods hold at 9 % moisture, about 5915 kcal/kg at most, unless it is a fat or an oil: is it as fed?", advice.Ours}},
		},
		{
			"a fat", with(dogFood, func(f *diet.Food) { f.Label, f.Form = diet.Label{Energy: 8500}, diet.FatOrOil }), energy.Animal{Species: energy.Dog}, nil,
		},
		{
			"too rich for wet", with(dogFood, func(f *diet.Food) { f.Label, f.Form, f.Analysis.Moisture = diet.Label{Energy: 4650}, diet.Wet, 0 }),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Warn, "label of Tarnwick House Dog Dry: 4650 kcal/kg is more than wet foods hold, about 2600 kcal/kg at most, unless it is a fat or an oil: is it as fed?", advice.Ours}},
		},
		{
			"too poor", with(dogFood, func(f *diet.Food) {
				f.Label, f.Analysis.Moisture, f.Role = diet.Label{Energy: 356}, 0, diet.Complementary
			}),
			energy.Animal{Species: energy.Dog},
			[]said{{advice.Warn, "label of Tarnwick House Dog Dry: 356 kcal/kg is less than foods hold: is it kcal/100 g, or kcal per cup or can?", advice.Ours}, {advice.Warn, "Tarnwick House Dog Dry is a complementary food: it is not a diet by itself", advice.Memory}},
		},
		{
			"a thin broth", with(dogFood, func(f *diet.Food) { f.Label, f.Form, f.Analysis.Moisture = diet.Label{Energy: 60}, diet.Liquid, 0 }), energy.Animal{Species: energy.Dog}, nil,
		},
		{
			"most severe first", with(dogFood, func(f *diet.Food) { f.Role, f.Label.Serving.Energy, f.Name = diet.Complementary, 360, "" }),
			energy.Animal{Species: energy.Cat},
			[]said{
				{advice.Refer, "this food is food for dogs, not for cats: as the only food it can lack taurine and other nutrients that cats need", advice.Memory},
				{advice.Refer, "this food is a complementary food: it is not a diet by itself", advice.Memory},
				{advice.Note, "label of this food: 3560 kcal/kg and the 3600 kcal/kg of one cup differ by 0.34 % beyond their rounding; kcal/kg is used", advice.Primary},
			},
		},
		{"role not stated", with(dogFood, func(f *diet.Food) { f.Role = 0 }), energy.Animal{Species: energy.Dog}, []said{
			{advice.Note, "it is not stated whether Tarnwick House Dog Dry is a complete food", advice.Memory},
		}},
		{"a refused label is left to Density", biscuits, energy.Animal{}, nil},
	} {
		var got []said
		for _, c := range tt.food.Cautions(tt.animal) {
			got = append(got, said{c.Level, c.Text, c.Source.Seen})
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
		if diff := cmp.Diff(tt.food.Cautions(tt.animal), diet.Only(tt.food).Cautions(tt.animal)); diff != "" {
			t.Errorf("%s: the menu of it says otherwise (-food +menu):\n%s", tt.name, diff)
		}
	}
}

func TestCautionsOfAMenu(t *testing.T) {
	cat := houseCat
	cat.For = diet.Purpose{Species: diet.Cats, Stages: diet.Maintenance}
	dog := houseDog
	dog.For = diet.Purpose{Species: diet.Dogs, Stages: diet.Maintenance}
	topper, other := dog, cat
	topper.Role, other.Role = diet.Complementary, diet.Complementary
	main := diet.Item{Food: cat, Amount: diet.Rest()}
	unstated := func(name string, form diet.Form) diet.Food {
		f := cat
		f.Name, f.Form, f.Role, f.Label = name, form, 0, diet.Label{Energy: 1100, Serving: diet.Serving{Name: "can", Mass: 150}}
		f.Analysis = diet.Analysis{Moisture: 75}
		return f
	}
	for _, tt := range []struct {
		name   string
		menu   diet.Menu
		animal energy.Animal
		want   []string
	}{
		{"two of one kind", diet.Menu{main, {Food: cat, Amount: diet.Share(20)}}, energy.Animal{Species: energy.Cat}, nil},
		{"a dog treat for a cat", diet.Menu{main, {Food: topper, Amount: diet.Fixed(1), Treat: true}}, energy.Animal{Species: energy.Cat}, []string{
			"note: Tarnwick House Dog Dry is a treat for dogs: check what is in it",
		}},
		{"part of a cat's food", diet.Menu{main, {Food: dog, Amount: diet.Share(50)}}, energy.Animal{Species: energy.Cat}, []string{
			"refer: Tarnwick House Dog Dry is food for dogs, not for cats: it can lack taurine and other nutrients that cats need",
		}},
		{"part of a ferret's food", diet.Menu{main, {Food: dog, Amount: diet.Share(50)}}, energy.Animal{Species: energy.Ferret}, []string{
			"refer: Tarnwick House Dog Dry is food for dogs, not for ferrets: it can lack what a strict carnivore needs",
			"note: Tarnwick House Cat Dry is food for cats, given to a ferret: check protein and fat",
		}},
		{"a complementary food beside a complete one", diet.Menu{main, {Food: other, Amount: diet.Fixed(5)}}, energy.Animal{Species: energy.Cat}, nil},
		{"no complete food, cat", diet.Menu{{Food: other, Amount: diet.Rest()}, {Food: other, Amount: diet.Fixed(5)}}, energy.Animal{Species: energy.Cat}, []string{
			"refer: no food of the menu is a complete one: together they need not be a diet",
		}},
		{"no complete food but the treat, dog", diet.Menu{{Food: topper, Amount: diet.Rest()}, {Food: dog, Amount: diet.Fixed(5), Treat: true}}, energy.Animal{Species: energy.Dog}, []string{
			"warn: no food of the menu is a complete one: together they need not be a diet",
		}},
		{"adult food and treat, growing", diet.Menu{main, {Food: cat, Amount: diet.Fixed(1), Treat: true}}, energy.Animal{Species: energy.Cat, Age: 3 * energy.Month}, []string{
			"warn: Tarnwick House Cat Dry is food for maintenance, not for a growing animal",
		}},
		{"roles not stated: one note, and none of a treat or an oil", diet.Menu{
			{Food: unstated("Kibble", diet.Dry), Amount: diet.Rest()},
			{Food: unstated("Stew", diet.Wet), Amount: diet.Share(30)},
			{Food: unstated("Can", diet.Wet), Amount: diet.Count(1, "")},
			{Food: unstated("Stew", diet.Wet), Amount: diet.Share(10)},
			{Food: unstated("Oil", diet.FatOrOil), Amount: diet.Fixed(2)},
			{Food: unstated("Rusk", diet.Dry), Amount: diet.Fixed(2), Treat: true},
		}, energy.Animal{Species: energy.Cat}, []string{"note: it is not stated whether Kibble, Stew or Can is a complete food"}},
		{"not stated of one", diet.Menu{main, {Food: unstated("Stew", diet.Wet), Amount: diet.Share(50)}}, energy.Animal{Species: energy.Cat}, []string{
			"note: it is not stated whether Stew is a complete food",
		}},
		{"none", nil, energy.Animal{Species: energy.Cat}, nil},
	} {
		var got []string
		for _, c := range tt.menu.Cautions(tt.animal) {
			got = append(got, c.Level.String()+": "+c.Text)
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
	}
}
