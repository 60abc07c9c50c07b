package archgrid_test

import (
	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// The foods are invented. Their figures are crooked on purpose.

func species(s energy.Species) diet.SpeciesSet {
	return map[energy.Species]diet.SpeciesSet{energy.Dog: diet.Dogs, energy.Cat: diet.Cats, energy.Ferret: diet.Ferrets}[s]
}

// dry states its energy, wet has that of its can, and raw is predicted.
func dry(s energy.Species) diet.Food {
	return diet.Food{
		Name: "Tarnwick House Dry", Form: diet.Dry, Role: diet.Complete, For: diet.Purpose{Species: species(s), Stages: diet.AllStages},
		Label: diet.Label{
			Energy:  3567 * units.KilocaloriePerKilogram,
			Serving: diet.Serving{Name: "cup", Energy: 363 * units.Kilocalorie, Mass: 101 * units.Gram},
		},
	}
}

func wet(s energy.Species) diet.Food {
	return diet.Food{
		Name: "Tarnwick House Wet", Form: diet.Wet, Role: diet.Complete, For: diet.Purpose{Species: species(s), Stages: diet.Maintenance},
		Label:    diet.Label{Serving: diet.Serving{Name: "can", Energy: 173 * units.Kilocalorie, Mass: 156 * units.Gram}},
		Analysis: diet.Analysis{Kind: diet.Guaranteed, Moisture: 78, Protein: 9.3, Fat: 5.1},
	}
}

func predicted(s energy.Species, by diet.Predictor) diet.Food {
	return diet.Food{
		Name: "Low Mill " + by.String(), Form: diet.Wet, For: diet.Purpose{Species: species(s)}, Predictor: by,
		Analysis: diet.Analysis{Kind: diet.Typical, Moisture: 71.3, Protein: 13.7, Fat: 7.9, Fibre: 0.7, Ash: 2.3},
	}
}

func biscuit() diet.Food {
	return diet.Food{
		Name: "House biscuit", Role: diet.Complementary,
		Label: diet.Label{Energy: 3510 * units.KilocaloriePerKilogram, Serving: diet.Serving{Name: "biscuit", Mass: 3 * units.Gram}},
	}
}

// gruel is dry food made up with water.
func gruel(s energy.Species) diet.Food {
	f, err := diet.Mix{
		Name: "gruel", Parts: []diet.Part{{Food: dry(s), Amount: diet.Fixed(37 * units.Gram)}}, Water: 110, Made: 143,
	}.Food()
	if err != nil {
		panic(err)
	}
	return f
}

// menu is one of five, by number.
func menu(s energy.Species, number int) diet.Menu {
	switch number % 5 {
	case 0:
		return diet.Only(dry(s))
	case 1:
		return diet.Menu{{Food: wet(s), Amount: diet.Share(50)}, {Food: dry(s), Amount: diet.Rest()}}
	case 2:
		return diet.Menu{
			{Food: biscuit(), Amount: diet.Count(1, "biscuit"), Treat: true},
			{Food: predicted(s, diet.FourStep), Amount: diet.Share(33.3)},
			{Food: wet(s), Amount: diet.Fixed(20 * units.Gram)},
			{Food: dry(s), Amount: diet.Share(66.7)},
		}
	case 3:
		return diet.Only(gruel(s))
	}
	return diet.Menu{
		{Food: predicted(s, diet.ModifiedAtwater), Amount: diet.Share(61)},
		{Food: predicted(s, diet.Atwater), Amount: diet.Share(17)},
		{Food: dry(s), Amount: diet.Rest()},
	}
}
