package transition_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

func TestPlansThatAreRefused(t *testing.T) {
	treat := diet.Item{Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true}
	many := diet.Menu{{Food: asFed("0", 3000), Amount: diet.Rest()}}
	for _, name := range []string{"1", "2", "3", "4", "5", "6", "7"} {
		many = append(many, diet.Item{Food: asFed(name, 3000), Amount: diet.Share(10)})
	}
	for _, tt := range []struct {
		name   string
		change func(*transition.Plan)
		want   string
	}{
		{
			"nothing at all", func(p *transition.Plan) { *p = transition.Plan{} },
			`portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g; portion: meals "0": want 1 to 24 a day; diet: from: menu "0 foods": want 1 to 8 foods; diet: to: menu "0 foods": want 1 to 8 foods`,
		},
		{
			"no old food", func(p *transition.Plan) { p.From = nil },
			`diet: from: menu "0 foods": want 1 to 8 foods`,
		},
		{
			"meals and scale", func(p *transition.Plan) { p.Meals, p.Scale = 25, -1 },
			`portion: scale step "-1 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g; portion: meals "25": want 1 to 24 a day`,
		},
		{
			"a basis that is none", func(p *transition.Plan) { p.Basis = 9 },
			`transition: basis "9": want energy, mass, old_total or amount_fed`,
		},
		{
			"an old food without energy", func(p *transition.Plan) { p.From = diet.Only(noLabel) },
			`transition: from "loose kibble": want a label with the energy of the old food (where nobody knows it, the grams fed now as a fixed amount, with the basis "amount_fed")`,
		},
		{
			"its grams, but not the basis", func(p *transition.Plan) { p.From = diet.Menu{{Food: noLabel, Amount: diet.Fixed(300)}} },
			`transition: from "loose kibble": want a label with the energy of the old food (where nobody knows it, the grams fed now as a fixed amount, with the basis "amount_fed")`,
		},
		{
			"the basis, but not its grams", func(p *transition.Plan) { p.From, p.Basis = diet.Only(noLabel), transition.ByAmountFed },
			`transition: from "rest of loose kibble": want the grams of each old food that are fed now, as a fixed amount, for the basis amount_fed`,
		},
		{"the basis for a food that is known", func(p *transition.Plan) {
			p.From, p.Basis = diet.Menu{{Food: houseDry, Amount: diet.Fixed(300)}}, transition.ByAmountFed
		}, `transition: basis "amount_fed": want energy: that of every old food is known`},
		{"too few grams for the day", func(p *transition.Plan) {
			p.From, p.Basis = diet.Menu{{Food: noLabel, Amount: diet.Fixed(30)}}, transition.ByAmountFed
		}, `transition: from "30 g of loose kibble": want the grams fed now, all of the day: for 1068.0 kcal a day they would have to hold 35600 kcal/kg`},
		{"a known food that holds it all", func(p *transition.Plan) {
			p.From, p.Basis = diet.Menu{{Food: noLabel, Amount: diet.Fixed(30)}, {Food: houseDry, Amount: diet.Fixed(310)}}, transition.ByAmountFed
		}, `transition: from "30 g of loose kibble, 310 g of Tarnwick House Dog Dry": want the grams fed now, all of the day: for 1068.0 kcal a day they would have to hold -1187 kcal/kg`},
		{
			"a new food without energy", func(p *transition.Plan) { p.To = diet.Only(noLabel) },
			`diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed)`,
		},
		{
			"no change", func(p *transition.Plan) { p.To = p.From },
			`transition: to "rest of Tarnwick House Dog Dry": want another menu than the old one`,
		},
		{
			"other treats", func(p *transition.Plan) { p.To = append(p.To, treat) },
			`transition: treats "none before, 2 biscuit of house biscuit after": want the same treats in both menus: they stay as they are (one change at a time)`,
		},
		{
			"two labels of one name", func(p *transition.Plan) { p.To[0].Food.Name = houseDry.Name },
			`transition: food "Tarnwick House Dog Dry": want a name for each food, by which the two can be told apart`,
		},
		{
			"a food without a name", func(p *transition.Plan) { p.To[0].Food.Name = "" },
			`transition: food "": want a name for each food, by which the two can be told apart`,
		},
		{
			"too many foods", func(p *transition.Plan) { p.To = many },
			`transition: menus "9 foods": want at most 8 foods in both together`,
		},
		{
			"menus that don't add up", func(p *transition.Plan) { p.From[0].Amount, p.To[0].Amount = diet.Share(50), diet.Share(60) },
			`diet: from: menu "50 % and no rest": want a rest, or shares of 100 %; diet: to: menu "60 % and no rest": want a rest, or shares of 100 %`,
		},
		{
			"no name in by", func(p *transition.Plan) { p.By = "-\n" },
			`transition: by "-\n": want the name of the veterinarian who ordered the change, on one line`,
		},
	} {
		p := toSlim()
		tt.change(&p)
		if days, err := p.Days(oakum()); err == nil || err.Error() != tt.want || days != nil {
			t.Errorf("%s\ngot  %v\nwant %s", tt.name, err, tt.want)
		}
	}
	const want = `transition: need "0 kcal": want an estimate of more than 0 kcal a day`
	p := toSlim()
	if _, err := p.Days(energy.Estimate{}); err == nil || err.Error() != want {
		t.Errorf("no need: %v", err)
	}
	e := oakum()
	e.Daily = units.Energy(math.NaN())
	if _, err := p.Days(e); err == nil {
		t.Error("a need that is no number")
	}
}

// A tenth of 237.6 kcal is 5.73 g of one and 6.17 g of the other food: less than
// half a step of 20 g. A run of days with one fault is said once.
func TestDaysThatCannotBeWeighed(t *testing.T) {
	p := transition.Plan{From: diet.Only(catDry), To: diet.Only(kittenDry), Steps: transition.TenSteps, Meals: 2, Scale: 20 * units.Gram}
	days, err := p.Days(neuteredCat(4 * units.Kilogram))
	const want = `transition: day 1: portion: 5.73 g of Tarnwick Kitten Dry a day is less than half a step of a 20 g scale: want a finer scale; ` +
		`transition: day 9: portion: 6.17 g of Tarnwick House Cat Dry a day is less than half a step of a 20 g scale: want a finer scale`
	var day *transition.DayError
	if err == nil || err.Error() != want || days != nil || !errors.As(err, &day) || day.First != 1 || day.Last != 1 {
		t.Errorf("got  %v\nwant %s", err, want)
	}
	p = toSlim()
	_, err = p.DaysWith(func(day int) energy.Estimate {
		if day > 4 {
			return energy.Estimate{}
		}
		return oakum()
	})
	const run = `transition: days 5 to 7: portion: need "0 kcal": want an estimate of more than 0 kcal a day`
	if err == nil || err.Error() != run {
		t.Errorf("got  %v\nwant %s", err, run)
	}
}

func TestOnlyAVeterinarianChangesTheFoodOfTheIll(t *testing.T) {
	for name, c := range map[string]energy.Circumstances{
		"therapeutic_diet": energy.TherapeuticDiet, "diabetic": energy.Diabetic, "urinary_disease": energy.UrinaryDisease,
		"pancreatitis": energy.Pancreatitis, "kidney_disease": energy.KidneyDisease, "liver_disease": energy.LiverDisease,
		"ill": energy.Ill, "tube_fed": energy.TubeFed, "ill diabetic": energy.Ill | energy.Diabetic,
	} {
		need := estimate(energy.Prescribed{
			Animal: energy.Animal{Species: energy.Dog, Weight: 18 * units.Kilogram, Condition: energy.BCS9(5), Circumstances: c | energy.Growing},
			Daily:  1068, By: "Dr Ysolde Crake",
		})
		p := toSlim()
		want := `energy: circumstances "` + name + `": a change of food can harm such an animal; needed: the name of the veterinarian who ordered it: Plan{By}`
		var vet *energy.VeterinarianError
		days, err := p.Days(need)
		if err == nil || err.Error() != want || !errors.Is(err, energy.ErrVeterinarian) || !errors.As(err, &vet) || days != nil {
			t.Errorf("%s: %v", name, err)
		}
		p.By = "Dr Ysolde Crake"
		days = mustDays(t, p, need)
		requireCaution(t, days, "refer: a change of food in such an animal ("+name+") is by order of Dr Ysolde Crake only: call at any sign of trouble [ours, not published]")
		if first := days[0].Cautions[0]; first.Level.String() != "refer" {
			t.Errorf("%s: a caution of level %s comes first", name, first.Level)
		}
	}
	// One that falls ill on the way.
	p := toSlim()
	_, err := p.DaysWith(func(day int) energy.Estimate {
		e := oakum()
		if day >= 3 {
			e.Animal.Circumstances = energy.Ill
		}
		return e
	})
	const want = `transition: days 3 to 7: energy: circumstances "ill": a change of food can harm such an animal; needed: the name of the veterinarian who ordered it: Plan{By}`
	if err == nil || err.Error() != want || !errors.Is(err, energy.ErrVeterinarian) {
		t.Errorf("ill from day 3: %v", err)
	}
}

func TestCautionsOfThePlan(t *testing.T) {
	ferret := estimate(energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}})
	kitten := estimate(energy.Growth{
		Animal:      energy.Animal{Species: energy.Cat, Weight: 1500 * units.Gram, Age: 14 * energy.Week, Condition: energy.BCS9(5)},
		AdultWeight: 4 * units.Kilogram,
	})
	slim := estimate(energy.WeightLoss{Animal: energy.Animal{Species: energy.Dog, Weight: 38.5 * units.Kilogram, Condition: energy.BCS9(8)}})
	const cote = "Cohn, Côté (eds), Côté's Clinical Veterinary Advisor: Dogs and Cats, 4th ed., 2020"
	for _, tt := range []struct {
		need   energy.Estimate
		change func(*transition.Plan)
		want   string
	}{
		{oakum(), nil, "warn: vomiting, blood or dullness: give the old food again and call a veterinarian now [ours, not published]"},
		{oakum(), nil, "note: go on to the next step only if stool, attitude and appetite are normal [" + cote + ", client sheet, How to Change a Pet's Diet, p. 3178: go on only if stool, attitude and appetite are normal]"},
		{oakum(), nil, "note: the shares are of energy, not of scoops, cups or grams [Tufts University Cummings School, Catnip, Why do so many cats have GI problems with new foods (Linder)]"},
		{kitten, nil, "warn: a cat that refuses the food gets the old one back, and a veterinarian is called: never wait it out [" + cote + ", client sheet, p. 3088: no food for 24 h]"},
		{kitten, nil, "note: a kitten in a new home keeps its old food for the first week [The Complete Cat Breed Book (DK), p. 215: the old food for the first week]"},
		{kitten, nil, "note: a cat that won't take the mix: the new food in a second bowl [University of Missouri Veterinary Health Center, nutrition FAQ, cats: two bowls]"},
		{ferret, nil, "warn: no schedule is published for ferrets; refusal can be total: keep the old food in reach all through the change [ours, not published]"},
		{ferret, func(p *transition.Plan) { p.Steps = transition.TenSteps }, "warn: 10 days is short for a ferret: it can take weeks [ours, not published]"},
		{slim, func(p *transition.Plan) { p.Steps = transition.FourDays }, "warn: 4 days is short: a change to a food for weight loss takes 1 to 2 weeks [" + cote + ", client sheet on obesity, p. 3088: 1 to 2 weeks]"},
		// The days of the last step make no change slower.
		{ferret, func(p *transition.Plan) { p.Steps = mustSteps("100 % 60 d") }, "warn: 1 day is short for a ferret: it can take weeks [ours, not published]"},
		{slim, func(p *transition.Plan) { p.Steps = mustSteps("50 %, 100 % 10 d") }, "warn: 2 days is short: a change to a food for weight loss takes 1 to 2 weeks [" + cote + ", client sheet on obesity, p. 3088: 1 to 2 weeks]"},
		{oakum(), func(p *transition.Plan) { p.Steps = mustSteps("100 %") }, "warn: all new on day 1 is short for a dog: 3 to 7 days are published [Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010, ch. 14, p. 279: 3 to 7 days]"},
		{oakum(), func(p *transition.Plan) { p.Steps = mustSteps("100 %") }, "warn: from 0 % to 100 % at once: no published schedule rises by more than 25 % [ours, not published]"},
		{kitten, func(p *transition.Plan) { p.Steps = mustSteps("25 %, 50 %, 100 %") }, "warn: all new on day 3 is short for a cat: 4 to 7 days are published [Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010, ch. 20, p. 386: 4 to 7 days]"},
		{oakum(), func(p *transition.Plan) { p.Steps = mustSteps("10 % 9 d, 100 %") }, "warn: from 10 % to 100 % at once: no published schedule rises by more than 25 % [ours, not published]"},
		{ferret, func(p *transition.Plan) { p.Steps, p.From = transition.Immediate, nil }, "warn: no schedule is published for ferrets; refusal can be total: for one that eats nothing a veterinarian is called now [ours, not published]"},
		{oakum(), func(p *transition.Plan) { p.Steps, p.From = transition.Immediate, nil }, "warn: an abrupt change, set out by no source: for an animal whose old food nobody knows or has; in small meals, 3 a day or more [ours, not published]"},
		{oakum(), func(p *transition.Plan) { p.Steps, p.From = transition.Immediate, nil }, "warn: vomiting, blood or dullness: call a veterinarian now [ours, not published]"},
		{kitten, func(p *transition.Plan) { p.Steps, p.From = transition.Immediate, nil }, "warn: for a cat that refuses the food a veterinarian is called: never wait it out [" + cote + ", client sheet, p. 3088: no food for 24 h]"},
		{oakum(), func(p *transition.Plan) { p.Steps, p.Meals = transition.Immediate, 3 }, "warn: an abrupt change, set out by no source: for an animal whose old food nobody knows or has [ours, not published]"},
		{oakum(), func(p *transition.Plan) { p.Basis = transition.ByMass }, "note: the shares are of grams: those of energy, as published, differ [Tufts University Cummings School, Catnip, Why do so many cats have GI problems with new foods (Linder)]"},
		{oakum(), func(p *transition.Plan) { p.Basis = transition.ByOldTotal }, "warn: sharing out the old food's grams gives 937.5 kcal at a share of 75 % instead of 1068.0 kcal, -12 %: share the energy [ours, not published]"},
	} {
		p := toSlim()
		p.Steps, p.Scale = transition.Steps{}, 0.1*units.Gram
		if tt.change != nil {
			tt.change(&p)
		}
		if p.Basis == transition.ByOldTotal {
			p.Scale = units.Gram
		}
		requireCaution(t, mustDays(t, p, tt.need), tt.want)
	}
	// No caution that doesn't fit: a pace that is published, a kitten whose old food
	// nobody knows.
	for _, tt := range []struct {
		need  energy.Estimate
		steps string
		not   string
	}{
		{oakum(), "four_stages", "short"},
		{oakum(), "four_days", "short"},
		{oakum(), "slow", "at once"},
		{kitten, "four_days", "short"},
		{kitten, "ten_steps", "at once"},
		{oakum(), "25 %, 50 %, 100 %", "short"},
		{kitten, "immediate", "keeps its old food"},
	} {
		p := toSlim()
		p.Steps = mustSteps(tt.steps)
		if p.Steps == transition.Immediate {
			p.From = nil
		}
		for _, c := range transition.Cautions(mustDays(t, p, tt.need)) {
			if strings.Contains(c.Text, tt.not) {
				t.Errorf("%s: %s", tt.steps, c)
			}
		}
	}
	// Seven days are enough for a dog on a weight loss.
	for _, c := range transition.Cautions(mustDays(t, toSlim(), slim)) {
		if c.Text == "7 days is short: a change to a food for weight loss takes 1 to 2 weeks" {
			t.Errorf("%s", c)
		}
	}
}
