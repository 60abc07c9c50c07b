package portion

import (
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Plan is the weighed ration of one animal, by its name.
type Plan struct {
	Animal  string  `json:"animal"` // at most 256 bytes on one line
	Weighed Weighed `json:"weighed"`
}

// Equal reports whether p and q are the same in every figure.
func (p Plan) Equal(q Plan) bool { return p.Animal == q.Animal && p.Weighed.Equal(q.Weighed) }

// UnmarshalJSON reads a plan. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves p as it was.
func (p *Plan) UnmarshalJSON(data []byte) error {
	type plain Plan
	return strictjson.Record("portion", "plan", data, func(x plain) { *p = Plan(x) })
}

// Group is the plans of animals that are fed in one place. [Group.Bowls] gives
// each its own bowl, which is how it is done wherever they can be kept apart for
// the meal: weigh each bowl, lift it after a set time, weigh it back. Where they
// can't, [Group.OneBowl] gives an order that says what isn't known.
type Group []Plan

// maxGroup is the most animals in one place; ours.
const maxGroup = 100

// Bowl is one food of one meal for one animal.
type Bowl struct {
	Animal string `json:"animal"`
	Meal
}

// Bowls splits each animal's day into n meals, 1 to 24: meal by meal, and in it
// animal by animal and food by food. Each row is that of [Weighed.Meals]; treats are
// given outside meals.
//
// All faults come back at once: no animal or more than 100 (ours), an animal without
// a name that stands on a line, or with one that differs from another's in case or
// spaces only, and a plan without a ration.
func (g Group) Bowls(n int) ([]Bowl, error) {
	errs := g.check()
	if n < 1 || n > MaxMeals {
		errs = append(errs, unfit("meals", strconv.Itoa(n), acceptedMeals, ""))
	}
	if len(errs) > 0 {
		return nil, errs.Err()
	}
	var bowls []Bowl
	var meals []Meal
	for i := range g {
		meals, _ = g[i].Weighed.AppendMeals(meals[:0], n) // n and the ration are sound
		for _, m := range meals {
			bowls = append(bowls, Bowl{g[i].Animal, m})
		}
	}
	slices.SortStableFunc(bowls, func(a, b Bowl) int { return a.Number - b.Number })
	return bowls, nil
}

func (g Group) check() units.ErrorList {
	if len(g) < 1 || len(g) > maxGroup {
		return units.ErrorList{unfit("group", strconv.Itoa(len(g))+" animals", "1 to "+strconv.Itoa(maxGroup), "")}
	}
	return checkPlans("group", g)
}

// checkPlans refuses animals without a name that stands on a line, or with one that
// nobody tells from another's, and plans without a ration.
func checkPlans(list string, plans []Plan) units.ErrorList {
	var errs units.ErrorList
	first := make(map[string]int, len(plans))
	for i := range plans {
		name := plans[i].Animal
		field := func(member string) string { return list + "[" + strconv.Itoa(i) + "]." + member }
		key := string(oneline.AppendKey(nil, name))
		j, twice := first[key]
		switch {
		case key == "":
			errs = append(errs, unfit(field("animal"), name, "a name", ""))
		case !oneline.Fits(name):
			errs = append(errs, unfit(field("animal"), name, oneline.Wanted, ""))
		case twice && plans[j].Animal == name:
			errs = append(errs, unfit(field("animal"), name, "each animal once", "it is "+list+"["+strconv.Itoa(j)+"] too"))
		case twice:
			errs = append(errs, unfit(field("animal"), name, "each animal once", "who tells it from "+strconv.Quote(plans[j].Animal)+", "+list+"["+strconv.Itoa(j)+"]?"))
		default:
			first[key] = i
		}
		if plans[i].Weighed.ration.n == 0 {
			errs = append(errs, unfit(field("weighed"), "", "a ration from Weigh and On", "its error was not looked at?"))
		}
	}
	return errs
}

// OneBowl is a group order: one bowl for several animals. What each of them eats
// of it is not known, and Cautions say so. Treats are given to each animal by
// hand and are not in the bowl. Store the Group, not the order: one that is read
// back knows the names of its animals and nothing else of them.
type OneBowl struct {
	Animals []string     `json:"animals"`
	Step    units.Mass   `json:"step"`
	Foods   []Meal       `json:"foods"`  // the day of each food; Number is 0
	Meals   []Meal       `json:"meals"`  // the day split
	Energy  units.Energy `json:"energy"` // of the bowl in a day
	plans   Group
}

// OneBowl adds the weighed days of the animals up to one bowl and splits it into n
// meals, 1 to 24. The counts of each food are the sum of those of the animals
// exactly.
//
// Besides what [Group.Bowls] refuses, one bowl needs two animals or more, of one
// species, plans on the same scale and, for foods of one name, the same record of
// the food.
func (g Group) OneBowl(n int) (OneBowl, error) {
	errs := g.check()
	if n < 1 || n > MaxMeals {
		errs = append(errs, unfit("meals", strconv.Itoa(n), acceptedMeals, ""))
	}
	if len(g) == 1 {
		errs = append(errs, unfit("group", "1 animal", "two or more for one bowl", ""))
	}
	if len(errs) > 0 {
		return OneBowl{}, errs.Err()
	}
	b := OneBowl{Step: g[0].Weighed.scale.step, plans: g}
	var foods []diet.Food
	var densities []units.EnergyDensity
	for i := range g {
		w := &g[i].Weighed
		field := "group[" + strconv.Itoa(i) + "]"
		b.Animals = append(b.Animals, g[i].Animal)
		if w.scale.step != b.Step {
			errs = append(errs, unfit(field+".weighed", w.scale.step.String()+" scale", "the "+b.Step.String()+" scale of "+g[0].Animal, ""))
		}
		if s, want := w.ration.need.Animal.Species, g[0].Weighed.ration.need.Animal.Species; s != want {
			errs = append(errs, unfit(field+".weighed", "a "+s.String(), "a "+want.String()+" as "+g[0].Animal+" is", "what one species eats can harm another"))
		}
		for k := range w.ration.n {
			item := &w.ration.menu[k]
			if item.Treat {
				continue
			}
			at := slices.IndexFunc(foods, func(f diet.Food) bool { return f.Name == item.Food.Name })
			switch {
			case at < 0:
				at = len(foods)
				foods, densities = append(foods, item.Food), append(densities, w.ration.parts[k].density.Energy)
				b.Foods = append(b.Foods, Meal{Food: item.Food.Name})
			case foods[at] != item.Food:
				errs = append(errs, unfit(field+".weighed", item.Food.Name, "the same record of the food in every plan", "weigh the plan again on the new label"))
				continue
			}
			b.Foods[at].Count += w.counts[k]
		}
	}
	if len(errs) > 0 {
		return OneBowl{}, errs.Err()
	}
	scale := g[0].Weighed.scale
	for i := range b.Foods {
		f := &b.Foods[i]
		f.Mass = scale.mass(f.Count)
		f.Energy = densities[i].Energy(f.Mass)
		b.Energy += f.Energy
	}
	for number := range n {
		for i, f := range b.Foods {
			count := share(f.Count, n, number)
			m := scale.mass(count)
			b.Meals = append(b.Meals, Meal{Number: number + 1, Food: f.Food, Count: count, Mass: m, Energy: densities[i].Energy(m)})
		}
	}
	return b, nil
}

var (
	sourceGroup  = advice.Source{Work: "animal shelter guidance that restates the Association of Shelter Veterinarians", Where: "individual housing for any animal that needs individual monitoring", Seen: advice.Secondary}
	sourceOthers = advice.Source{Work: sacn, Where: "p. 529: an animal in weight loss must not reach the others' food", Seen: advice.Primary}
)

// Cautions returns what the order must be shown with, the gravest first: that
// the intake of each animal is not known, which animals need a bowl of their
// own, and what every plan warns of or refers for, with the names of the animals
// it is said of.
func (b OneBowl) Cautions() []advice.Caution {
	if len(b.Animals) == 0 {
		return nil
	}
	c := []advice.Caution{{
		Level: advice.Warn, Source: ours,
		Text: "one bowl for " + oneline.Of(strings.Join(b.Animals, ", ")) + ": what each eats is not known; weigh every animal often",
	}}
	meals := 0
	if n := len(b.Meals); n > 0 {
		meals = b.Meals[n-1].Number
	}
	names := make(map[advice.Caution][]string)
	var said []advice.Caution // in the order of the plans
	for i := range b.plans {
		p := &b.plans[i]
		if why, source := ownBowl(&p.Weighed.ration.need); why != "" {
			c = append(c, advice.Caution{Level: advice.Refer, Source: source, Text: p.Animal + " needs a bowl of its own: " + why})
		}
		// The bowl is weighed, not the meals of each: the scale is judged by the day.
		for _, x := range appendFrequency(p.Weighed.cautions(1), &p.Weighed.ration, meals) {
			if x.Level == advice.Note {
				continue
			}
			if names[x] == nil {
				said = append(said, x)
			}
			if of := names[x]; !slices.Contains(of, p.Animal) {
				names[x] = append(of, p.Animal)
			}
		}
	}
	for _, x := range said {
		of := names[x]
		x.Text = strings.Join(of, ", ") + ": " + x.Text
		c = append(c, x)
	}
	advice.Sort(c)
	return c
}

// ownBowl says why an animal can't be fed from one bowl with others.
func ownBowl(need *energy.Estimate) (why string, source advice.Source) {
	switch need.Stage.(type) {
	case energy.WeightLoss:
		return "weight loss", sourceOthers
	case energy.WeightGain:
		return "weight gain", ours
	case energy.Refeeding:
		return "refeeding", ours
	case energy.Prescribed:
		return "a prescribed amount", ours
	case energy.Nursling:
		return "a nursling", ours
	}
	const watched = energy.Ill | energy.TubeFed | energy.TherapeuticDiet | energy.Diabetic | energy.UrinaryDisease |
		energy.Pancreatitis | energy.KidneyDisease | energy.LiverDisease
	if c := need.Animal.Circumstances & watched; c != 0 {
		return c.String(), sourceGroup
	}
	if need.Animal.DaysUnfed > 0 {
		return "it has not eaten", sourceGroup
	}
	const hungry = energy.Growing | energy.Pregnant | energy.Lactating // it eats more than its share
	if c := animalOf(need).Circumstances & hungry; c != 0 {
		return c.String(), ours
	}
	return "", advice.Source{}
}
