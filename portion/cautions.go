package portion

import (
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// mostExtra is the part of a day's energy that treats may be, and by the same
// reason other food that is not a complete diet.
const mostExtra = 0.10

// tenth allows for the last bits of a sum that makes exactly a tenth.
const tenth = mostExtra * (1 + 1e-12)

const sacn = "Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010"

var (
	ours         = advice.Source{Seen: advice.Ours}
	sourceTreats = advice.Source{Work: sacn, Where: "p. 522: treats at most 10 % of the day's energy", Seen: advice.Primary}
	sourceNone   = advice.Source{Work: sacn, Where: "no treats for cats in weight loss, unless matched to the food", Seen: advice.Primary}
)

// Cautions returns what the ration must be shown with, the gravest first: what
// is to be said of the animal, of its energy, of each food, and of how much
// there is of it.
func (r Ration) Cautions() []advice.Caution { return r.cautions() }

func (r *Ration) cautions() []advice.Caution {
	c := append(r.need.Cautions(), r.menu.Cautions(r.animal())...)
	c = r.extraCautions(c)
	c = r.massCautions(c)
	advice.Sort(c)
	return c
}

// animal returns the animal with what the stage of the estimate says of it.
func (r *Ration) animal() energy.Animal { return animalOf(&r.need) }

// animalOf returns the animal of an estimate with what its stage says of it. A
// nursling is growing by its age.
func animalOf(need *energy.Estimate) energy.Animal {
	a := need.Animal
	switch need.Stage.(type) {
	case energy.Growth:
		a.Circumstances |= energy.Growing
	case energy.Gestation:
		a.Circumstances |= energy.Pregnant
	case energy.Lactation:
		a.Circumstances |= energy.Lactating
	}
	return a
}

// extraCautions says where treats, or food that is no diet by itself, are more
// than a small part of the day.
func (r *Ration) extraCautions(c []advice.Caution) []advice.Caution {
	var treats, unbalanced units.Energy
	var treatNames, unbalancedNames []string
	others, unstated := false, false
	for i := range r.n {
		item, e := &r.menu[i], r.parts[i].energy
		if item.Treat {
			treats += e
			treatNames = append(treatNames, item.Food.Name)
		}
		if role := item.Food.Role; role == diet.Complementary || role == 0 && item.Treat { // few treats are a diet
			unbalanced += e
			unstated = unstated || role == 0
			unbalancedNames = append(unbalancedNames, item.Food.Name)
			others = others || !item.Treat
		}
	}
	daily := r.need.Daily
	if _, ok := r.need.Stage.(energy.WeightLoss); ok && treats > 0 && r.need.Animal.Species == energy.Cat {
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: sourceNone,
			Text: "no treats for a cat in weight loss, unless they match its food: " + strings.Join(treatNames, ", ") + ", " + kcal(treats) + " a day",
		})
	}
	if treats > tenth*daily {
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: sourceTreats,
			Text: "treats are " + kcal(treats) + ", " + percent(treats, daily) + " of the day's " + kcal(daily) + ": at most 10 %, " + kcal(mostExtra*daily),
		})
	}
	// Of a menu of one food, and of treats alone, it is said already.
	if others && r.n > 1 && unbalanced > tenth*daily {
		from := "what is not a complete food"
		if unstated {
			from = "what is not, or not stated to be, a complete food"
		}
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: ours,
			Text: strings.Join(unbalancedNames, ", ") + ": " + kcal(unbalanced) + " a day, " + percent(unbalanced, daily) +
				" of the energy, from " + from + ": above 10 % the diet may lack nutrients",
		})
	}
	return c
}

// massCautions says where there is much food for the body.
func (r *Ration) massCautions(c []advice.Caution) []advice.Caution {
	a := &r.need.Animal
	if !(a.Weight > 0) {
		return c
	}
	const hungry = energy.Growing | energy.Pregnant | energy.Lactating
	limit := adultShare
	if a.Species == energy.Ferret || r.animal().Circumstances&hungry != 0 || 0 < a.Age && a.Age < energy.Year {
		limit = hungryShare
	}
	say := func(m units.Mass, what string) bool {
		share := float64(m / a.Weight)
		if share > limit {
			c = append(c, advice.Caution{
				Level: advice.Refer, Source: ours,
				Text: trimmed(m) + " of " + what + " a day is " + strconv.FormatFloat(100*share, 'f', 0, 64) +
					" % of the body weight: check the label's kcal/kg, the energy and the weight first",
			})
		}
		return share > limit
	}
	var sum units.Mass
	said := false
	for i := range r.n {
		sum += r.parts[i].mass
		said = say(r.parts[i].mass, r.menu[i].Food.Name) || said
	}
	if !said {
		say(sum, "all the foods")
	}
	return c
}

// percent writes the part of the day that e is, without decimals.
func percent(e, daily units.Energy) string {
	return strconv.FormatFloat(100*float64(e/daily), 'f', 0, 64) + " %"
}
