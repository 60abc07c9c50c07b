package portion

import (
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Frequency is how many meals a day are recommended for an animal. It is
// comparable.
type Frequency struct {
	Low        int           // meals a day at least
	High       int           // at most; 0: no more than that are named
	FreeChoice bool          // food that is always there is recommended too
	For        string        // whom it is for, as in "a grown cat"
	Level      advice.Level  // of fewer meals than Low
	Source     advice.Source // of Low and High
}

var (
	sourceDogMeals    = advice.Source{Work: "ASPCApro, shelter nutrition", Where: "at least two meals; two smaller ones for large and deep-chested dogs", Seen: advice.Secondary}
	sourceCatMeals    = advice.Source{Work: sacn, Where: "p. 385", Seen: advice.Primary}
	sourceCatOften    = advice.Source{Work: sacn, Where: "Table 20-5, p. 385", Seen: advice.Primary}
	sourceKittenMeals = advice.Source{Work: sacn, Where: "p. 434", Seen: advice.Primary}
	sourcePuppyMeals  = advice.Source{Work: sacn, Where: "Table 17-3, p. 314", Seen: advice.Primary}
	sourcePuppyYoung  = advice.Source{Work: "Best Friends Animal Society", Where: "3 to 4 meals from 6 weeks to 6 months", Seen: advice.Secondary}
	sourceLossDog     = advice.Source{Work: "Clinician's Brief, Obesity Management Calculation Sheet", Where: "two meals a day", Seen: advice.Primary}
	sourceLossCat     = advice.Source{Work: sacn, Where: "case, p. 542: at least two meals", Seen: advice.Primary}
	sourceBolus       = advice.Source{
		Work:  "DiBartola (ed), Fluid, Electrolyte, and Acid-Base Disorders in Small Animal Practice, 4th ed., 2012 (edition inferred from its pages)",
		Where: "Box 26-6, p. 640: every 4 to 6 hours", Seen: advice.Primary,
	}
	sourceDamMeals    = advice.Source{Work: sacn, Where: "p. 18 names late gestation and lactation for frequent meals, without a number", Seen: advice.Ours}
	sourceFerretMeals = advice.Source{Work: sacn, Where: "p. 1216: transit of 3 to 6 h; four meals are 24 h over 6 h", Seen: advice.Ours}
)

// Ages at which a recommendation changes: SACN 5th ed. p. 434 for kittens,
// Best Friends for puppies.
const (
	ageFreeChoice = 5 * energy.Month
	ageTwoMeals   = 6 * energy.Month
)

// largeDog is from where on one meal a day brings the word on bloat: ours. The
// source says large or deep-chested, with no weight.
const largeDog = 25 * units.Kilogram

// MealsFor returns how many meals a day are recommended for the animal of an
// estimate, by its species, its stage and its age, and false where nothing was
// found in print: for species other than dog, cat and ferret, and for nurslings,
// whose feeds follow from what their stomach takes: see [Bottle.LeastFeeds].
//
// For a grown dog or cat it is 2 or more, for a puppy 3 or 4 to six months and
// 2 to 4 after, for a kitten, a queen and an ill cat 3 or more, for refeeding 4
// to 6. A ferret has food always, or at least four meals (ours, from its
// transit time of 3 to 6 h).
func MealsFor(need energy.Estimate) (Frequency, bool) {
	a, age := need.Animal, need.Animal.Age
	circumstances := stageOf(need)
	young := circumstances.Has(energy.Growing) || 0 < age && age < ageTwoMeals
	_, nursling := need.Stage.(energy.Nursling)
	_, refeeding := need.Stage.(energy.Refeeding)
	_, loss := need.Stage.(energy.WeightLoss)
	const dam = energy.Pregnant | energy.Lactating
	isDam := circumstances&dam != 0
	lactating := circumstances.Has(energy.Lactating)
	switch {
	case nursling || 0 < age && age <= 4*energy.Week:
		return Frequency{}, false
	case a.Species == energy.Ferret:
		return Frequency{4, 0, true, "a ferret", advice.Warn, sourceFerretMeals}, true
	case a.Species != energy.Dog && a.Species != energy.Cat:
		return Frequency{}, false
	case refeeding:
		return Frequency{4, 6, false, "refeeding", advice.Warn, sourceBolus}, true
	case isDam && a.Species == energy.Cat:
		return Frequency{3, 0, lactating, "a queen", advice.Warn, sourceCatOften}, true
	case isDam:
		return Frequency{3, 0, lactating, "a bitch in gestation or lactation", advice.Warn, sourceDamMeals}, true
	case young && a.Species == energy.Dog:
		if 0 < age && age < ageTwoMeals {
			return Frequency{3, 4, false, "a puppy under six months", advice.Warn, sourcePuppyYoung}, true
		}
		return Frequency{2, 4, false, "a growing dog", advice.Warn, sourcePuppyMeals}, true
	case young:
		if age >= ageTwoMeals {
			return Frequency{2, 0, false, "a kitten from six months", advice.Warn, sourceKittenMeals}, true
		}
		return Frequency{3, 0, 0 < age && age < ageFreeChoice, "a kitten", advice.Warn, sourceCatOften}, true
	case a.Species == energy.Cat && circumstances&(energy.Ill|energy.TubeFed) != 0:
		return Frequency{3, 0, false, "an ill cat", advice.Warn, sourceCatOften}, true
	case loss && a.Species == energy.Cat:
		return Frequency{2, 0, false, "a cat in weight loss", advice.Note, sourceLossCat}, true
	case loss:
		return Frequency{2, 0, false, "a dog in weight loss", advice.Note, sourceLossDog}, true
	case a.Species == energy.Cat:
		return Frequency{2, 0, false, "a grown cat", advice.Note, sourceCatMeals}, true
	}
	return Frequency{2, 0, false, "a grown dog", advice.Note, sourceDogMeals}, true
}

// stageOf returns the circumstances of the animal with what the stage says.
func stageOf(need energy.Estimate) energy.Circumstances { return animalOf(&need).Circumstances }

// appendFrequency says where so many meals a day are fewer than recommended. It
// is a caution, never a refusal.
func appendFrequency(c []advice.Caution, r *Ration, meals int) []advice.Caution {
	f, ok := MealsFor(r.need)
	if !ok || meals < 1 || meals >= f.Low {
		return c
	}
	text := strconv.Itoa(meals) + " meals a day: "
	if meals == 1 {
		text = "1 meal a day: "
	}
	text += strconv.Itoa(f.Low) + " or more"
	if f.High > 0 {
		text = text[:len(text)-len(" or more")] + " to " + strconv.Itoa(f.High)
	}
	text += " are recommended for " + f.For
	if f.FreeChoice {
		text += ", or food that is always there"
	}
	if a := &r.need.Animal; a.Species == energy.Dog && a.Weight >= largeDog {
		text += "; a large or deep-chested dog's stomach can turn on one large meal"
	}
	return append(c, advice.Caution{Level: f.Level, Text: text, Source: f.Source})
}
