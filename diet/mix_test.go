package diet_test

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// milkPowder is invented: 5100 kcal/kg, and 4 % of water.
func milkPowder() diet.Food {
	return diet.Food{
		Name: "Finnimore Orphan Milk Powder", Form: diet.Powder, Role: diet.Complete,
		For:      diet.Purpose{Species: diet.Cats, Stages: diet.Growth},
		Label:    diet.Label{Energy: 5100 * units.KilocaloriePerKilogram},
		Analysis: diet.Analysis{Kind: diet.Typical, Protein: 38, Fat: 34, Moisture: 4, Ash: 6, None: diet.CrudeFibre},
	}
}

// bottle is the powder made up: 30 g and 125 mL of water make 150 mL.
func bottle() diet.Mix {
	return diet.Mix{
		Name: "orphan milk", Parts: []diet.Part{{Food: milkPowder(), Amount: diet.Fixed(30 * units.Gram)}},
		Water: 125 * units.Millilitre, Made: 150 * units.Millilitre,
	}
}

// slurry is a can for the tube: 150 g with 177 kcal, taken as 145 mL, and 32 mL
// of water. Of the can 78 % is water.
func slurry() diet.Mix {
	can := diet.Food{
		Name: "Tarnwick House Recovery", Form: diet.Wet, Role: diet.Complete,
		For:      diet.Purpose{Species: diet.Cats | diet.Dogs, Stages: diet.AllStages},
		Label:    diet.Label{Serving: diet.Serving{Name: "can", Energy: 177 * units.Kilocalorie, Mass: 150 * units.Gram}},
		Analysis: diet.Analysis{Moisture: 78},
	}
	return diet.Mix{
		Name: "tube slurry", Parts: []diet.Part{{Food: can, Amount: diet.Count(1, "can")}},
		Water: 32 * units.Millilitre, Made: 177 * units.Millilitre,
	}
}

func TestMixWithWater(t *testing.T) {
	for _, tt := range []struct {
		mix           diet.Mix
		kcal          units.Energy
		grams         units.Mass
		perMillilitre units.EnergyPerVolume
		water         units.Mass // in all of it
		halfKcal      units.Energy
		gramsPerUnit  units.Mass
	}{
		// 5.1 × 30 = 153; 153 / 150; 30 × 0.04 + 125; 30 g × ±5 kcal/kg.
		{bottle(), 153, 155, 1.02, 126.2, 0.15, 155.0 / 150},
		// 177 / 177; 150 × 0.78 + 32 = 117 + 32. The far end of the label's rounding
		// is 177.5 kcal in 149.5 g.
		{slurry(), 177, 182, 1.00, 149, 150 * (177.5/149.5 - 177.0/150), 182.0 / 177},
	} {
		f, err := tt.mix.Food()
		if err != nil {
			t.Fatal(err)
		}
		batch, err := f.Unit("batch")
		if err != nil || differ(float64(batch.Energy), float64(tt.kcal)) || batch.Mass != tt.grams || differ(float64(batch.EnergyHalfStep), float64(tt.halfKcal)) {
			t.Errorf("%s: %+v, %v", f.Name, batch, err)
		}
		if v, err := f.PerVolume(); err != nil || differ(float64(v), float64(tt.perMillilitre)) {
			t.Errorf("%s: %v, %v; want %v", f.Name, v, err, tt.perMillilitre)
		}
		if ml, err := f.Unit("mL"); err != nil || differ(float64(ml.Mass), float64(tt.gramsPerUnit)) || differ(float64(ml.Energy), float64(tt.perMillilitre)) {
			t.Errorf("%s: %+v, %v", f.Name, ml, err)
		}
		if water := batch.Mass * units.Mass(f.Analysis.Moisture.Fraction()); differ(float64(water), float64(tt.water)) {
			t.Errorf("%s: %v of water, want %v", f.Name, water, tt.water)
		}
		d, err := f.Density()
		if err != nil || differ(float64(d.Energy), float64(tt.kcal)/float64(tt.grams)*1000) || d.Origin != diet.Derived || f.Form != diet.Liquid {
			t.Errorf("%s, %v: %+v, %v", f.Name, f.Form, d, err)
		}
	}
}

// Four kittens of 229.5 mL a day and 4 % that is spilt: 239 mL of the bottle
// above take 48 g of powder and 199 mL of water.
func TestMixForAVolume(t *testing.T) {
	m, err := bottle().Making(239 * units.Millilitre)
	if err != nil {
		t.Fatal(err)
	}
	powder, _ := m.Parts[0].Amount.Fixed()
	if math.Abs(powder.Grams()-48) > 0.5 || math.Abs(m.Water.Millilitres()-199) > 0.5 || m.Made != 239 {
		t.Errorf("%v of powder, %v of water in %v", powder, m.Water, m.Made)
	}
	if first, _ := bottle().Parts[0].Amount.Fixed(); first != 30 {
		t.Errorf("the recipe became %v", first)
	}
	if two := slurry().Times(2); two.Parts[0].Amount != diet.Count(2, "can") || two.Water != 64 || two.Made != 354 {
		t.Errorf("%+v", two)
	}
}

// 60 g at 3500 kcal/kg and 150 g at 1120 are 378 kcal in 210 g, 1800 kcal/kg.
func TestMixWithoutWater(t *testing.T) {
	kibble, stew := food("kibble", 3500, "", 0, 0, 9), food("stew", 1120, "", 0, 0, 75)
	m := diet.Mix{Parts: []diet.Part{{kibble, diet.Fixed(60)}, {stew, diet.Fixed(150)}}}
	f, err := m.Food()
	if err != nil {
		t.Fatal(err)
	}
	d, err := f.Density()
	if err != nil || differ(float64(d.Energy), 1800) || f.Name != "kibble + stew" || f.Form != 0 {
		t.Errorf("%+v: %v, %v", f, d.Energy, err)
	}
	// (60 × 0.09 + 150 × 0.75) / 210 = 117.9 / 210
	if differ(float64(f.Analysis.Moisture), 11790.0/210) {
		t.Errorf("moisture %v", f.Analysis.Moisture)
	}
	if v, err := f.PerVolume(); err == nil || v != 0 {
		t.Errorf("%v per volume", v)
	}
}

// A mix can be a part of another.
func TestMixOfAMix(t *testing.T) {
	milk, err := bottle().Food()
	if err != nil {
		t.Fatal(err)
	}
	f, err := diet.Mix{Parts: []diet.Part{{Food: milk, Amount: diet.Count(75, "mL")}}, Water: 75, Made: 150}.Food()
	if err != nil {
		t.Fatal(err)
	}
	if v, err := f.PerVolume(); err != nil || differ(float64(v), 0.51) {
		t.Errorf("%v, %v", v, err)
	}
	if f.Name != "orphan milk + water" {
		t.Error(f.Name)
	}
}

func TestAnalysisOfAMix(t *testing.T) {
	of := func(a diet.Analysis) diet.Food {
		return diet.Food{Label: diet.Label{Energy: 3500}, Analysis: a}
	}
	full := diet.Analysis{Kind: diet.Typical, Protein: 20, Fat: 10, Fibre: 2, Moisture: 10, Ash: 6}
	guaranteed := full
	guaranteed.Kind = diet.Guaranteed
	unstated := full
	unstated.Kind = 0
	oil := diet.Food{Form: diet.FatOrOil, Label: diet.Label{Energy: 8800}, Analysis: diet.Analysis{Fat: 100, None: diet.CrudeProtein | diet.CrudeFibre | diet.Moisture | diet.CrudeAsh}}
	for _, tt := range []struct {
		name  string
		parts []diet.Part
		water units.Volume
		want  diet.Analysis
	}{
		{"halved by water", []diet.Part{{of(full), diet.Fixed(100)}}, 100, diet.Analysis{Kind: diet.Typical, Protein: 10, Fat: 5, Fibre: 1, Moisture: 55, Ash: 3}},
		{"what one lacks is not given", []diet.Part{{of(full), diet.Fixed(50)}, {of(diet.Analysis{Kind: diet.Typical, Protein: 30}), diet.Fixed(50)}}, 0, diet.Analysis{Kind: diet.Typical, Protein: 25}},
		{"none is zero", []diet.Part{{of(unstated), diet.Fixed(50)}, {oil, diet.Fixed(50)}}, 0, diet.Analysis{Protein: 10, Fat: 55, Fibre: 1, Moisture: 5, Ash: 3}},
		{"guaranteed and typical", []diet.Part{{of(full), diet.Fixed(50)}, {of(guaranteed), diet.Fixed(50)}}, 0, diet.Analysis{Moisture: 10}},
		{"typical and not stated", []diet.Part{{of(full), diet.Fixed(50)}, {of(unstated), diet.Fixed(50)}}, 0, unstated},
		{"oils", []diet.Part{{oil, diet.Fixed(10)}, {oil, diet.Fixed(30)}}, 0, oil.Analysis},
		{"too dry to be said of a food", []diet.Part{{of(diet.Analysis{Moisture: 2}), diet.Fixed(10)}, {oil, diet.Fixed(30)}}, 0, diet.Analysis{}},
		{"by default", []diet.Part{{of(diet.Analysis{Defaults: diet.Dry}), diet.Fixed(50)}}, 50, diet.Analysis{Fibre: 1.5, Moisture: 55, Ash: 3}},
	} {
		f, err := diet.Mix{Parts: tt.parts, Water: tt.water}.Food()
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
		}
		if diff := cmp.Diff(tt.want, f.Analysis); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
	}
}

func TestWhomAMixIsFor(t *testing.T) {
	part := func(form diet.Form, role diet.Role, s diet.SpeciesSet, st diet.Stages) diet.Part {
		return diet.Part{Food: diet.Food{Form: form, Role: role, For: diet.Purpose{Species: s, Stages: st}, Label: diet.Label{Energy: 3000}}, Amount: diet.Fixed(10)}
	}
	all := part(diet.Wet, diet.Complete, diet.Cats|diet.Dogs, diet.AllStages)
	cat := part(diet.Wet, diet.Complete, diet.Cats, diet.Growth)
	topper := part(diet.Dry, diet.Complementary, 0, 0)
	dog := part(diet.Wet, diet.Complete, diet.Dogs, diet.Maintenance)
	grams := func(p diet.Part, g units.Mass) diet.Part { p.Amount = diet.Fixed(g); return p }
	drink := part(diet.Liquid, diet.Complete, diet.Cats, diet.Growth)
	for _, tt := range []struct {
		name string
		mix  diet.Mix
		want diet.Food
	}{
		{"what both are", diet.Mix{Parts: []diet.Part{all, cat}}, diet.Food{Form: diet.Wet, Role: diet.Complete, For: diet.Purpose{Species: diet.Cats, Stages: diet.Growth}}},
		{"as much of a topper", diet.Mix{Parts: []diet.Part{all, topper}}, diet.Food{Role: diet.Complementary}},
		{"a tenth of a topper", diet.Mix{Parts: []diet.Part{grams(all, 90), topper}}, diet.Food{}},
		{"a little more", diet.Mix{Parts: []diet.Part{grams(all, 89), topper}}, diet.Food{Role: diet.Complementary}},
		{"role not stated", diet.Mix{Parts: []diet.Part{all, part(diet.Wet, 0, diet.Cats, diet.Growth)}}, diet.Food{Form: diet.Wet, For: cat.Food.For}},
		{"cats and dogs", diet.Mix{Parts: []diet.Part{cat, dog}}, diet.Food{Form: diet.Wet, Role: diet.Complete, For: diet.Purpose{Species: diet.NoSpecies, Stages: diet.NoStage}}},
		{"none stays none", diet.Mix{Parts: []diet.Part{cat, dog, all}}, diet.Food{Form: diet.Wet, Role: diet.Complete, For: diet.Purpose{Species: diet.NoSpecies, Stages: diet.NoStage}}},
		{"not stated of one", diet.Mix{Parts: []diet.Part{cat, part(diet.Wet, diet.Complete, 0, 0)}}, diet.Food{Form: diet.Wet, Role: diet.Complete}},
		{"toppers", diet.Mix{Parts: []diet.Part{topper, topper}}, diet.Food{Form: diet.Dry, Role: diet.Complementary}},
		{"with a drink", diet.Mix{Parts: []diet.Part{cat, drink}}, diet.Food{Form: diet.Liquid, Role: diet.Complete, For: cat.Food.For}},
		{"soaked", diet.Mix{Parts: []diet.Part{cat}, Water: 10}, diet.Food{Form: diet.Liquid, Role: diet.Complete, For: cat.Food.For}},
		{"the form as given", diet.Mix{Parts: []diet.Part{cat}, Water: 10, Form: diet.Wet}, diet.Food{Form: diet.Wet, Role: diet.Complete, For: cat.Food.For}},
	} {
		f, err := tt.mix.Food()
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
		}
		f.Label, f.Analysis = diet.Label{}, diet.Analysis{}
		if f != tt.want {
			t.Errorf("%s: %+v, want %+v", tt.name, f, tt.want)
		}
	}
}

func TestCautionsOfAMix(t *testing.T) {
	texts := func(m diet.Mix) []string {
		var list []string
		for _, c := range m.Cautions(energy.Animal{Species: energy.Cat, Circumstances: energy.Growing}) {
			if c.Level == 0 || c.Source.Seen == 0 {
				t.Errorf("%+v", c)
			}
			list = append(list, c.Text)
		}
		return list
	}
	unmeasured, mixed, unnamed := bottle(), bottle(), bottle()
	unmeasured.Made = 0
	guaranteed := milkPowder()
	guaranteed.Analysis.Kind = diet.Guaranteed
	mixed.Parts = append(mixed.Parts, diet.Part{Food: guaranteed, Amount: diet.Fixed(1)})
	unnamed.Name, unnamed.Made, unnamed.Parts[0].Food.Name = "", 0, ""
	const room = ": the volume it fills is not given, and is not the sum of its parts, since what is stirred in takes room: measure it before giving mL"
	for _, tt := range []struct {
		mix  diet.Mix
		want []string
	}{
		{bottle(), nil},
		{unmeasured, []string{"orphan milk" + room}},
		{unnamed, []string{"this mix" + room}},
		{mixed, []string{"orphan milk: some of its foods have guaranteed figures and some typical ones, so that only its moisture is given"}},
		{diet.Mix{}, nil},
	} {
		if diff := cmp.Diff(tt.want, texts(tt.mix)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.mix.Name, diff)
		}
	}
	// What is wrong with a part is said of the mix.
	dogs := bottle()
	dogs.Parts[0].Food.For.Species = diet.Dogs
	if c := dogs.Cautions(energy.Animal{Species: energy.Cat}); len(c) == 0 || c[0].Level != advice.Refer {
		t.Errorf("food for dogs: %v", c)
	}
}

func TestMixJSON(t *testing.T) {
	m := bottle()
	m.Form, m.Parts[0].Food = diet.Liquid, diet.Food{Label: diet.Label{Energy: 5100}}
	const want = `{"name":"orphan milk","form":"liquid","parts":[{"food":{"label":{"energy":"5100 kcal/kg"}},"amount":"30 g"}],"water":"125 mL","made":"150 mL"}`
	got, err := json.Marshal(m)
	if err != nil || string(got) != want {
		t.Errorf("%s, %v", got, err)
	}
	var back diet.Mix
	if err := json.Unmarshal([]byte(want), &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(m, back); diff != "" {
		t.Errorf("read (-want +got):\n%s", diff)
	}
	for _, tt := range []struct{ text, want string }{
		{`{"volume":"150 mL"}`, `diet: mix: json: unknown field "volume": want name, form, parts, water or made`},
		{`{"water":125}`, `diet: mix.water "number": want text with a unit, as in "100 mL"`},
		{`{"parts":[{"food":{},"grams":30}]}`, `diet: part: json: unknown field "grams": want food or amount`},
		{`{"parts":[{"food":{},"amount":"30"}]}`, `diet: amount "30": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest`},
	} {
		err := json.Unmarshal([]byte(tt.text), &back)
		if err == nil || err.Error() != tt.want {
			t.Errorf("%s: %v\nwant %s", tt.text, err, tt.want)
		}
		if diff := cmp.Diff(m, back); diff != "" {
			t.Errorf("%s changed the receiver:\n%s", tt.text, diff)
		}
	}
	if err := json.Unmarshal([]byte(`null`), &back); err != nil || back.Name != m.Name {
		t.Errorf("null: %+v, %v", back, err)
	}
}

// Two foods that are for different animals, or ages, make one that is for none of
// them: that isn't as if nothing were stated.
func TestAMixForNobody(t *testing.T) {
	of := func(name string, s diet.SpeciesSet, st diet.Stages, role diet.Role, grams units.Mass) diet.Part {
		f := diet.Food{Name: name, Form: diet.Wet, Role: role, For: diet.Purpose{Species: s, Stages: st}, Label: diet.Label{Energy: 1000}, Analysis: diet.Analysis{Moisture: 76}}
		return diet.Part{Food: f, Amount: diet.Fixed(grams)}
	}
	kitten := energy.Animal{Species: energy.Cat, Circumstances: energy.Growing}
	for _, tt := range []struct {
		name  string
		parts []diet.Part
		who   energy.Animal
		want  string // of the food made, the gravest
		mix   string // of the mix, the gravest
	}{
		{
			"for a cat",
			[]diet.Part{of("cat can", diet.Cats, diet.AllStages, diet.Complete, 1), of("dog can", diet.Dogs, diet.AllStages, diet.Complete, 199)},
			kitten,
			"refer: stew is made of foods for different species, not for cats: as the only food it can lack taurine and other nutrients that cats need",
			"refer: dog can is food for dogs, not for cats: it can lack taurine and other nutrients that cats need",
		},
		{
			"for a dog",
			[]diet.Part{of("cat can", diet.Cats, diet.AllStages, diet.Complete, 1), of("dog can", diet.Dogs, diet.AllStages, diet.Complete, 199)},
			energy.Animal{Species: energy.Dog},
			"warn: stew is made of foods for different species, not for dogs: choose a food that is",
			"warn: cat can is food for cats, not for dogs: choose a food that is",
		},
		{
			"for a kitten",
			[]diet.Part{of("adult can", diet.Cats, diet.Maintenance, diet.Complete, 199), of("kitten can", diet.Cats, diet.Growth, diet.Complete, 1)},
			kitten,
			"warn: stew is made of foods for different stages, not for a growing animal",
			"warn: adult can is food for maintenance, not for a growing animal",
		},
		{ // 199 of 200 g at the same kcal/kg
			"meat",
			[]diet.Part{of("cat can", diet.Cats, diet.AllStages, diet.Complete, 1), of("chicken", diet.Cats, diet.AllStages, diet.Complementary, 199)},
			kitten,
			"refer: stew is a complementary food: it is not a diet by itself",
			"refer: stew: 99.5 % of the energy is from what is not a complete food (chicken): above 10 % it may lack nutrients",
		},
	} {
		m := diet.Mix{Name: "stew", Parts: tt.parts}
		f, err := m.Food()
		if err != nil {
			t.Fatal(err)
		}
		text := func(list []advice.Caution) string {
			if len(list) == 0 {
				return ""
			}
			return list[0].Level.String() + ": " + list[0].Text
		}
		if got := text(f.Cautions(tt.who)); got != tt.want {
			t.Errorf("%s: %s\nwant %s", tt.name, got, tt.want)
		}
		if got := text(m.Cautions(tt.who)); got != tt.mix {
			t.Errorf("%s: the mix: %s\nwant %s", tt.name, got, tt.mix)
		}
		treat := diet.Menu{{Food: f, Amount: diet.Fixed(5), Treat: true}, {Food: tt.parts[0].Food, Amount: diet.Rest()}}
		if none := f.For.Species == diet.NoSpecies; none {
			const want = "stew is made of foods for different species: check what is in it"
			said := false
			for _, c := range treat.Cautions(tt.who) {
				said = said || c.Text == want
			}
			if !said {
				t.Errorf("%s: %v", tt.name, treat.Cautions(tt.who))
			}
		}
	}
}
