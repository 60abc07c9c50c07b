package transition

import (
	"fmt"
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// fewMeals is the number of meals from which they are small: ours.
const fewMeals = 3

// offDay is how far from the need a day may be by its basis before it is a
// warning: ours. Rounding alone has cautions of its own.
const offDay = 0.025

// week is the least that a change to a food for weight loss takes (Côté 2020).
const week = 7

// cautions returns what a day must be shown with.
func (m *mixer) cautions(w portion.Weighed, need energy.Estimate, part units.Percent) []advice.Caution {
	var c []advice.Caution
	if m.plan.Basis == ByOldTotal {
		// The need of w is not one that its stage gives.
		c = append(need.Cautions(), w.Ration().Menu().Cautions(need.Animal)...)
		if off := float64(w.Energy()/need.Daily) - 1; off > offDay || off < -offDay {
			c = append(c, advice.Caution{Level: advice.Warn, Source: ours, Text: fmt.Sprintf(
				"sharing out the old food's grams gives %s at a share of %s instead of %s, %+.0f %%: share the energy",
				kcal(w.Energy()), roundPercent(part), kcal(need.Daily), 100*off)})
		}
	} else {
		c = w.Cautions(m.plan.Meals)
	}
	c = m.planCautions(c, need)
	advice.Sort(c)
	return c
}

// planCautions appends what is said of the change as a whole.
func (m *mixer) planCautions(c []advice.Caution, need energy.Estimate) []advice.Caution {
	say := func(l advice.Level, s advice.Source, text string) {
		c = append(c, advice.Caution{Level: l, Source: s, Text: text})
	}
	p, a := m.plan, &need.Animal
	if d := a.Circumstances & gated; d != 0 {
		say(advice.Refer, ours, "a change of food in such an animal ("+d.String()+") is by order of "+p.By+" only: call at any sign of trouble")
	}
	cat, ferret := a.Species == energy.Cat, a.Species == energy.Ferret
	if m.steps != Immediate {
		say(advice.Note, sourceSafeGo, "go on to the next step only if stool, attitude and appetite are normal")
	}
	if len(p.From) > 0 {
		say(advice.Warn, ours, "vomiting, blood or dullness: give the old food again and call a veterinarian now")
	} else {
		say(advice.Warn, ours, "vomiting, blood or dullness: call a veterinarian now")
	}
	switch {
	case ferret && len(p.From) > 0:
		say(advice.Warn, ours, "no schedule is published for ferrets; refusal can be total: keep the old food in reach all through the change")
	case cat && len(p.From) > 0:
		say(advice.Warn, sourceCat24, "a cat that refuses the food gets the old one back, and a veterinarian is called: never wait it out")
		say(advice.Note, sourceBowls, "a cat that won't take the mix: the new food in a second bowl")
	case cat:
		say(advice.Warn, sourceCat24, "for a cat that refuses the food a veterinarian is called: never wait it out")
	case ferret:
		say(advice.Warn, ours, "no schedule is published for ferrets; refusal can be total: for one that eats nothing a veterinarian is called now")
	}
	c = m.paceCaution(c, need)
	if cat && young(need) && len(p.From) > 0 {
		say(advice.Note, sourceRehomed, "a kitten in a new home keeps its old food for the first week")
	}
	if m.steps == Immediate { // there are no shares
		return c
	}
	switch p.Basis {
	case ByMass:
		say(advice.Note, sourceTufts, "the shares are of grams: those of energy, as published, differ")
	case ByOldTotal: // said of the day, with the figures
	case ByAmountFed:
		say(advice.Warn, ours, "the old food's energy isn't known: what is fed now is taken for the whole day's; watch the weight")
	default:
		say(advice.Note, sourceTufts, "the shares are of energy, not of scoops, cups or grams")
	}
	return c
}

// paceCaution says where the steps are quick for the animal.
func (m *mixer) paceCaution(c []advice.Caution, need energy.Estimate) []advice.Caution {
	days := m.steps.untilFull()
	length := "1 day"
	if days > 1 {
		length = strconv.Itoa(days) + " days"
	}
	say := func(s advice.Source, text string) {
		c = append(c, advice.Caution{Level: advice.Warn, Source: s, Text: text})
	}
	switch {
	case m.steps == Immediate:
		text := "an abrupt change, set out by no source: for an animal whose old food nobody knows or has"
		if m.plan.Meals < fewMeals {
			text += "; in small meals, 3 a day or more"
		}
		say(ours, text)
	case need.Animal.Species == energy.Ferret && days < Slow.Days():
		say(ours, length+" is short for a ferret: it can take weeks")
	case days < week && losing(need):
		say(sourceDietFood, length+" is short: a change to a food for weight loss takes 1 to 2 weeks")
	case need.Animal.Species == energy.Cat && days < leastCat:
		say(sourceCatRange, fmt.Sprintf("all new on day %d is short for a cat: 4 to 7 days are published", days))
	case need.Animal.Species == energy.Dog && days < leastDog:
		say(sourceDogRange, fmt.Sprintf("all new on day %d is short for a dog: 3 to 7 days are published", days))
	}
	if from, to := m.steps.leap(); m.steps != Immediate && to-from > publishedRise {
		say(ours, fmt.Sprintf("from %s to %s at once: no published schedule rises by more than %s", roundPercent(from), roundPercent(to), roundPercent(publishedRise)))
	}
	return c
}

// leastCat and leastDog are the shortest changes published (SACN, p. 386 and
// p. 279); publishedRise is the largest rise of a published schedule, in percent
// of the new food.
const (
	leastCat      = 4
	leastDog      = 3
	publishedRise = 25
)

// losing reports whether the need is that of a weight loss.
func losing(need energy.Estimate) bool {
	_, ok := need.Stage.(energy.WeightLoss)
	return ok
}

// fullyGrown is the age under which an animal is young here: ours.
const fullyGrown = 6 * energy.Month

// young reports whether the animal is known to grow.
func young(need energy.Estimate) bool {
	switch need.Stage.(type) {
	case energy.Growth, energy.Nursling:
		return true
	}
	a := &need.Animal
	return a.Circumstances.Has(energy.Growing) || 0 < a.Age && a.Age < fullyGrown
}
