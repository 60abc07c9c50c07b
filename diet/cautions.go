package diet

import (
	"errors"
	"slices"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Sources of the cautions. The rules that turn a need of the species into a
// level of caution are ours throughout.
var (
	ours = advice.Source{Seen: advice.Ours}

	sourceCatNeeds = advice.Source{
		Work:  "Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010",
		Where: "cats need taurine, arachidonic acid, preformed vitamin A and more protein than dogs",
		Seen:  advice.Memory,
	}
	sourceAdequacy = advice.Source{
		Work:  "AAFCO Model Regulation PF7, nutritional adequacy",
		Where: "the statement names the life stages, or intermittent or supplemental feeding only",
		Seen:  advice.Memory,
	}
	sourceLabel = advice.Source{
		Work:  "AAFCO, Calorie Content",
		Where: "kcal per cup = kcal/kg / 1000 x grams of one cup, weighed",
		Seen:  advice.Primary,
	}
	sourceEightOunces = advice.Source{
		Work:  "WikiVet (a feeding cup is 8 fl oz, about 237 mL); eight ounces by weight are 227 g",
		Where: "one cup of dry food weighs about 85 to 100 g (a veterinary teaching sheet)",
		Seen:  advice.Primary,
	}
)

// Cautions returns what must be said when f is all that the animal a eats: of
// its label, and of whom it is for. The most severe come first. Of the zero Animal
// only what does not depend on one. What [Food.Density] refuses is left to it.
func (f Food) Cautions(a energy.Animal) []advice.Caution {
	c := f.labelCautions(nil)
	c = f.speciesCautions(c, a.Species, true)
	c = f.stageCautions(c, circumstances(a))
	if f.Role == Complementary {
		level := advice.Warn
		if a.Species == energy.Cat {
			level = advice.Refer // no taurine can be counted on
		}
		c = append(c, advice.Caution{
			Level:  level,
			Text:   f.called() + " is a complementary food: it is not a diet by itself",
			Source: sourceAdequacy,
		})
	}
	if f.Role == 0 {
		c = append(c, roleUnstated(f.called()))
	}
	advice.Sort(c)
	return c
}

// roleUnstated says of the foods called so that they may not be a diet.
func roleUnstated(names ...string) advice.Caution {
	return advice.Caution{
		Level: advice.Note, Text: "it is not stated whether " + join(names, "or") + " is a complete food", Source: sourceAdequacy,
	}
}

// join makes a list for a sentence: "a, b or c".
func join(names []string, word string) string {
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " " + word + " " + names[last]
}

// circumstances returns those of a, with what its age says.
func circumstances(a energy.Animal) energy.Circumstances {
	now := a.Circumstances
	if 0 < a.Age && a.Age < growingUntil {
		now |= energy.Growing
	}
	return now
}

// growingUntil is the age below which every animal is growing: ours.
const growingUntil = 6 * energy.Month

// called names f at the start of a sentence.
func (f *Food) called() string {
	if f.Name == "" {
		return "this food"
	}
	return f.Name
}

func (f *Food) labelCautions(c []advice.Caution) []advice.Caution {
	d, err := f.density()
	if err != nil {
		return c
	}
	c = f.gapCautions(c, d)
	for i := range f.Label.Others {
		c = f.unitCautions(c, &f.Label.Others[i], d)
	}
	return f.plausibility(f.servingCautions(f.predictionCautions(c, d), d), d)
}

// predictionCautions says what is to be said of a predicted energy, where there
// is no other, and where the analysis doesn't fit the energy of the label.
func (f *Food) predictionCautions(c []advice.Caution, d Density) []advice.Caution {
	var p Prediction
	err := f.Analysis.overflow() // also where the species, and so the equation, is not known
	switch {
	case err != nil:
	case d.Origin != Predicted && (f.Analysis.Protein == 0 || f.Analysis.Fat == 0):
		return c // no analysis to predict from
	default:
		p, err = f.predicted()
	}
	var said []advice.Caution
	var sum *AnalysisError
	switch {
	case errors.As(err, &sum):
		said = []advice.Caution{{Level: advice.Warn, Text: strings.TrimPrefix(sum.Error(), "diet: "), Source: ours}}
	case err != nil: // too little is given
	case d.Origin == Predicted:
		said = p.Cautions()
	default:
		said = p.Against(d)
	}
	for _, x := range said {
		x.Text = "label of " + f.called() + ": " + x.Text
		c = append(c, x)
	}
	return c
}

// gapCautions says how far the figures of the serving are from the density d of
// f.
func (f *Food) gapCautions(c []advice.Caution, d Density) []advice.Caution {
	if d.Gap > 0 {
		level, advised := advice.Note, ""
		if d.Gap > noteGap {
			level, advised = advice.Warn, ": weigh one "+d.Serving.unit()+" and ask the manufacturer"
		}
		c = append(c, advice.Caution{
			Level: level,
			Text: "label of " + f.called() + ": " + density(d.Energy) + " and the " + density(d.Serving.implied()) + " of one " +
				d.Serving.unit() + " differ by " + number(100*d.Gap) + " % beyond their rounding; kcal/kg is used" + advised,
			Source: sourceLabel,
		})
	}
	return c
}

// servingCautions adds the doubts about the serving of the label of f, whose
// density is d.
func (f *Food) servingCautions(c []advice.Caution, d Density) []advice.Caution {
	if f.Label.Serving.isEightOunces() {
		c = append(c, advice.Caution{
			Level: advice.Warn,
			Text: "label of " + f.called() + ": " + number(float64(d.Serving.Mass)) + " g/" + d.Serving.unit() +
				" is eight ounces by weight, or 240 mL taken for grams, not the food in a cup? Weigh a level cup",
			Source: sourceEightOunces,
		})
	}
	return c
}

// unitCautions adds the doubts about another unit of the label of f, whose
// density is d. What contradicts it is refused only where it is counted: see
// [Food.Unit].
func (f *Food) unitCautions(c []advice.Caution, s *Serving, d Density) []advice.Caution {
	if s.Mass == 0 {
		return c // an energy alone contradicts nothing
	}
	g := f.with(*s, d)
	u, err := g.Density()
	if err != nil {
		return append(c, advice.Caution{
			Level: advice.Warn,
			Text: "label of " + f.called() + ": the figures of one " + s.unit() + " don't fit " + density(d.Energy) +
				", by which it is weighed: don't count it, and check the label",
			Source: sourceLabel,
		})
	}
	return g.servingCautions(g.gapCautions(c, u), u)
}

// plausibility adds the doubts about the energy itself.
func (f *Food) plausibility(c []advice.Caution, d Density) []advice.Caution {
	warn := func(text string) {
		c = append(c, advice.Caution{Level: advice.Warn, Text: "label of " + f.called() + ": " + density(d.Energy) + " " + text, Source: ours})
	}
	known := f.Analysis.Moisture > 0
	water := func() string {
		if !known {
			return ""
		}
		return " at " + number(float64(f.Analysis.Moisture)) + " % moisture"
	}
	if most := f.mostDoubtless(); f.Form != FatOrOil && d.Energy > most {
		foods := "foods"
		if !known && most < mostUsual {
			foods = "wet foods"
		}
		warn("is more than " + foods + " hold" + water() + ", about " + density(most) + " at most, unless it is a fat or an oil: is it as fed?")
	}
	if least := leastUsual * units.EnergyDensity(f.dryMatter()); f.Form != Liquid && known && d.Energy < least {
		warn("is little" + water() + ", where foods hold " + density(least) + " or more: is it kcal/lb, kJ/100 g, or for another food?")
	}
	if maybeDry := f.Form == Dry || f.Form == 0 && !f.Label.Serving.isCan(); maybeDry && !known && d.Energy >= leastAsFed && d.Energy < leastUsual {
		warn("is little for a dry food: is it wet (give its moisture), or kcal per cup, or kcal/lb?")
	}
	if f.Form != Liquid && !known && d.Energy < leastAsFed {
		warn("is less than foods hold: is it kcal/100 g, or kcal per cup or can?")
	}
	return c
}

// plurals turns the text of a species set into words for a sentence.
var plurals = strings.NewReplacer("dog", "dogs", "cat", "cats", "ferret", "ferrets", "other", "other animals", " ", " and ")

// speciesCautions says whom f is for, where that is not s. Alone it is all that
// the animal eats.
func (f *Food) speciesCautions(c []advice.Caution, s energy.Species, alone bool) []advice.Caution {
	made := f.For.Species
	if s == 0 || made.Has(s) {
		return c
	}
	if made == 0 {
		return append(c, advice.Caution{Level: advice.Note, Text: "it is not stated which species " + f.called() + " is for", Source: ours})
	}
	its, can := f.called()+" is food for "+plurals.Replace(made.String()), "it can lack"
	if made == NoSpecies {
		its = f.called() + " is made of foods for different species"
	}
	if alone {
		can = "as the only food it can lack"
	}
	switch {
	case s == energy.Cat:
		return append(c, advice.Caution{
			Level:  advice.Refer,
			Text:   its + ", not for cats: " + can + " taurine and other nutrients that cats need",
			Source: sourceCatNeeds,
		})
	case s == energy.Ferret && made.Has(energy.Cat):
		return append(c, advice.Caution{Level: advice.Note, Text: its + ", given to a ferret: check protein and fat", Source: ours})
	case s == energy.Ferret:
		return append(c, advice.Caution{
			Level:  advice.Refer,
			Text:   its + ", not for ferrets: " + can + " what a strict carnivore needs",
			Source: ours,
		})
	}
	if s == energy.Dog {
		return append(c, advice.Caution{Level: advice.Warn, Text: its + ", not for dogs: choose a food that is", Source: ours})
	}
	return append(c, advice.Caution{Level: advice.Refer, Text: its + ", not for this animal: choose a food that is", Source: ours})
}

func (f *Food) stageCautions(c []advice.Caution, now energy.Circumstances) []advice.Caution {
	for _, need := range [...]struct {
		stage Stages
		when  energy.Circumstances
		who   string
	}{
		{Growth, energy.Growing, "a growing animal"},
		{Reproduction, energy.Pregnant, "a pregnant animal"},
		{Reproduction, energy.Lactating, "a lactating animal"},
	} {
		switch {
		case !now.Has(need.when) || f.For.Stages.Has(need.stage):
		case f.For.Stages == 0:
			c = append(c, advice.Caution{Level: advice.Note, Text: "it is not stated whether " + f.called() + " is for " + need.who, Source: sourceAdequacy})
		default:
			its := f.called() + " is food for " + strings.ReplaceAll(f.For.Stages.String(), " ", " and ")
			if f.For.Stages == NoStage {
				its = f.called() + " is made of foods for different stages"
			}
			c = append(c, advice.Caution{Level: advice.Warn, Text: its + ", not for " + need.who, Source: sourceAdequacy})
		}
	}
	return c
}

// Cautions returns what must be said of the foods of m when the animal a is
// fed nothing else, the most severe first, each once: of every label, of whom
// the foods are for, where no food of several is a complete one, and where it is
// not stated whether one that is no treat and no oil is. What follows from how much there is of each is said by package portion.
func (m Menu) Cautions(a energy.Animal) []advice.Caution {
	if len(m) == 1 { // nothing to compare or to sort
		return m[0].Food.Cautions(a)
	}
	var all []advice.Caution
	complete := false
	var unstated []string
	for i := range m {
		f := &m[i].Food
		all = f.labelCautions(all)
		if m[i].Treat {
			all = f.treatCautions(all, a.Species)
			continue
		}
		complete = complete || f.Role != Complementary
		if name := f.called(); f.Role == 0 && f.Form != FatOrOil && !slices.Contains(unstated, name) {
			unstated = append(unstated, name)
		}
		all = f.speciesCautions(all, a.Species, false)
		all = f.stageCautions(all, circumstances(a))
	}
	if len(m) > 0 && !complete {
		level := advice.Warn
		if a.Species == energy.Cat {
			level = advice.Refer // no taurine can be counted on
		}
		all = append(all, advice.Caution{Level: level, Text: "no food of the menu is a complete one: together they need not be a diet", Source: sourceAdequacy})
	}
	if len(unstated) > 0 {
		all = append(all, roleUnstated(unstated...))
	}
	var once []advice.Caution
	for _, c := range all {
		if !slices.Contains(once, c) {
			once = append(once, c)
		}
	}
	advice.Sort(once)
	return once
}

// treatCautions says so where a treat is made for other species than s.
func (f *Food) treatCautions(c []advice.Caution, s energy.Species) []advice.Caution {
	made := f.For.Species
	if s == 0 || made == 0 || made.Has(s) {
		return c
	}
	its := f.called() + " is a treat for " + plurals.Replace(made.String())
	if made == NoSpecies {
		its = f.called() + " is made of foods for different species"
	}
	return append(c, advice.Caution{Level: advice.Note, Text: its + ": check what is in it", Source: ours})
}
