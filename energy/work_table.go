package energy

import (
	"math"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Factors on the resting energy requirement for the whole day, kcal per kcal.
var exerciseFactors = [...]coefficient{
	LightExercise:    {2, 0, 0, "light exercise", sourceExercise},
	ModerateExercise: {3, 0, 0, "moderate exercise", sourceExercise},
	HeavyExercise:    {6, 4, 8, "heavy exercise, the middle of 4 to 8", sourceExercise},
}

// runningCost is kcal for each kilogram and kilometre. The value is ours,
// between what trotting and galloping cost northern breeds (3.0 J/kg/m, 0.72),
// retrievers (3.8, 0.91) and hounds (4.2, 1.00), and a rule of 0.8 kcal/lb/mile
// (1.10) for a brisk walk. These are whole costs: the little that a resting dog
// needs in the same time is in the maintenance as well.
var runningCost = coefficient{1, 0.7, 1.1, "kcal for each kg and km", sourceRunning}

// The running equation of SACN 5th ed., Table 18-6, p. 332, footnote, kcal/kg:
// 1.77 × km × kg^-0.40 + 1.25 × kg^-0.25.
//
// It is printed without the hours: that they belong to the second term, which
// has no distance in it, is our reading. The table is of 1 km and can't be
// multiplied by a distance, though a case of the book does so and gets more than
// twice what the printed equation gives: 990 kcal against 417 for 25 kg and 33 km.
const (
	twoTermDistance         = 1.77 // kcal/kg for a kilometre
	twoTermDistanceExponent = -0.40
	twoTermHour             = 1.25 // kcal/kg for an hour, by our reading
	twoTermHourExponent     = -0.25
)

// perDistance returns the energy of a distance at a cost for each kilogram and
// kilometre.
func perDistance(cost float64, w units.Mass, d units.Length) units.Energy {
	return units.Energy(cost * w.Kilograms() * d.Kilometres())
}

// twoTerm returns the energy of a distance run in so many hours. The inner
// conversions keep the products from being fused with the sum.
func twoTerm(w units.Mass, d units.Length, hours float64) units.Energy {
	kg := w.Kilograms()
	distance := float64(twoTermDistance * d.Kilometres() * math.Pow(kg, twoTermDistanceExponent))
	time := float64(twoTermHour * hours * math.Pow(kg, twoTermHourExponent))
	return units.Energy(kg * (distance + time))
}

var (
	sourceExercise = advice.Source{Work: melbourne, Where: "fig. 13.28 and 13.29, p. 329, of the latter", Seen: advice.Secondary}
	sourceTwoTerm  = advice.Source{Work: sacn, Where: "Table 18-6, p. 332, footnote", Seen: advice.Primary}
	sourceBryce    = advice.Source{
		Work:  "Bryce and Williams, Comparative locomotor costs of domestic dogs, J Exp Biol 2017;220:312",
		Where: "abstract", Seen: advice.Primary,
	}
	sourceRunning = advice.Source{
		Work: sourceBryce.Work + " (3.0 to 4.2 J/kg/m, 0.72 to 1.00 kcal/kg/km), and a rule of 0.8 kcal/lb/mile for a brisk walk (1.10) whose origin was not found",
		Seen: advice.Ours,
	}
	sourceMostWork = advice.Source{Work: sacn, Where: "p. 259, after Hinchcliff and others 1997", Seen: advice.Primary}
	sourceCold     = advice.Source{
		Work: "FEDIAF Nutritional Guidelines, annex on thermoregulation and housing (10 to 90 %); Ahlstrøm, Redman, Speakman, Energy expenditure and water turnover in hunting dogs in winter conditions, Br J Nutr 2011 (little effect)",
		Seen: advice.Primary,
	}
)
