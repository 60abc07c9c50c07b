package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

var (
	sourcePuppyMeals  = advice.Source{Work: sacn, Where: "p. 314-315", Seen: advice.Primary}
	sourceKittenMeals = advice.Source{Work: sacn, Where: "p. 434", Seen: advice.Primary}
	sourceGrown       = advice.Source{Work: "Sanderson, Feeding Practices in Small Animals, MSD Veterinary Manual, rev. 2023", Where: "Life-stage Nutrition", Seen: advice.Primary}
)

// Adult weights that decide cautions on dogs: ours. The published limit of
// large breeds is 23 kg (50 lb).
const (
	largeBreed = 25 * units.Kilogram
	toyBreed   = 4 * units.Kilogram
)

// Weights that don't go with the age: half of the adult weight is reached at
// about four months (SACN 5th ed., Box 16-3 and Table 24-4). Ours, wide enough
// for giants and narrow enough for pounds taken as kilograms.
const (
	earlyAge  = 12 * Week
	earlyPart = 0.6
	lateAge   = 6 * Month
	latePart  = 0.3
)

func (s Growth) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	a := &e.Animal
	dog := a.Species == Dog
	switch {
	case a.Age == 0:
		add(advice.Warn, "age not given: the figure is too much for one under 4 weeks (Nursling) and for a grown one (Adult)", ours)
	case a.Age < weaned:
		add(advice.Note, "weaning: gruel beside the milk, several times a day and free choice; the figure is a guide", ours)
	case a.Age >= fullyGrown && dog:
		add(advice.Warn, a.Age.String()+" old: small and medium dogs are usually grown by 8 to 12 months, large ones by 10 to 16: Adult, if it no longer gains", sourceGrown)
	case a.Age >= fullyGrown:
		add(advice.Warn, a.Age.String()+" old: cats are usually grown by 200 to 220 days: Adult, if it no longer gains", sourceGrown)
	}
	if s.AdultWeight == 0 {
		add(advice.Warn, "expected adult weight not given: the figure goes by age and current weight alone, whatever the size when grown", ours)
	} else {
		c = appendWeightWatch(c, &Animal{Species: a.Species, Weight: s.AdultWeight})
		if p := s.part(); 0 < a.Age && a.Age < earlyAge && p > earlyPart || a.Age >= lateAge && p < latePart {
			add(advice.Warn, readable(a.Weight)+" of "+readable(s.AdultWeight)+" is unusual at "+a.Age.String()+": check both weights and their units", ours)
		}
	}
	if nine, ok := a.Condition.Nine(); ok && nine >= warnFat-1 {
		if dog {
			add(advice.Warn, "above ideal while it grows: no weight-loss plan; 10 % less in measured meals, and score again in 2 weeks", sacn33)
		} else {
			add(advice.Warn, "above ideal while it grows: no weight-loss plan; measured meals, not free choice", sourceKittenMeals)
		}
	}
	if dog {
		c = s.appendPuppyCautions(c, e)
	}
	return append(c, startingEstimate())
}

func (s Growth) appendPuppyCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	a := &e.Animal
	if a.DaysUnfed == 1 {
		add(advice.Refer, "a puppy that has eaten nothing for a day needs a veterinarian now", ours)
	}
	add(advice.Note, "once weaned, measured meals and not free choice; treats at most 10 % of the energy", sourcePuppyMeals)
	const fewHours = "can't go more than a few hours without food; wobbling or seizures are an emergency"
	switch {
	case s.AdultWeight >= largeBreed || a.Weight >= largeBreed:
		add(advice.Warn, "25 kg or more when grown: overfeeding harms the joints; once weaned measured meals only, and keep it lean", ours)
	case 0 < s.AdultWeight && s.AdultWeight < toyBreed:
		add(advice.Warn, "a toy puppy "+fewHours, ours)
	case s.AdultWeight == 0 && a.Weight < toyBreed:
		add(advice.Warn, "if it is of a toy breed it "+fewHours, ours)
	}
	switch {
	case e.Method == NRC2006:
		add(advice.Note, "NRC 2006 runs high: pet puppies ate 78 % of it at 8 to 17 weeks and 83 % at 17 to 26 weeks", klein)
	case e.Method == Klein2019 && 0 < a.Age && a.Age < weaned:
		add(advice.Warn, "the puppies of Klein 2019 were over 8 weeks old", klein)
	}
	return c
}
