package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

var (
	sourceOrphanKitten   = advice.Source{Work: sacn, Where: "Table 23-4, p. 420", Seen: advice.Primary}
	sourceOrphanPuppy    = advice.Source{Work: "Eldredge, Carlson, Carlson, Giffin, Dog Owner's Home Veterinary Handbook, 4th ed., 2007", Where: "Pediatrics, p. 499", Seen: advice.Primary}
	sourceUnweanedPuppy  = advice.Source{Work: nrc, Where: "from birth to weaning", Seen: advice.Secondary}
	sourceUnweanedKitten = advice.Source{Work: "National Academies, Your Cat's Nutritional Needs, 2006 (owner booklet of NRC 2006)", Where: "p. 5", Seen: advice.Primary}
	sourceKittenSpread   = advice.Source{Work: "Lawler, Theriogenology 70:384-392, 2008", Where: "20 to 26 kcal/100 g", Seen: advice.Secondary}
	sourceStomach        = advice.Source{Work: "Lawler, Theriogenology 70:384-392, 2008", Where: "4 mL/100 g", Seen: advice.Secondary}
)

// Figures of nurslings are kcal for each 100 g of body weight. Low and high of a
// row are the ends of what the sources print for that age, whichever of them
// value is from: they differ by nearly two.

// perPound makes kcal/lb, as the handbook prints them, kcal/100 g.
const perPound = float64(100 * units.Gram / units.Pound)

// From birth to weaning, whatever the age.
const (
	unweanedPuppy  = 25
	unweanedKitten = 22.5 // the middle of 20 to 25

	lawlerKitten = 26 // the high end of Lawler's 20 to 26
)

// orphanPuppies is by week of life. The text beside the handbook's table keeps
// 60 kcal/lb for the first three weeks, which is the low end there.
var orphanPuppies = [...]coefficient{
	{60 * perPound, 60 * perPound, unweanedPuppy, "puppy in week 1, printed as 60 kcal/lb", sourceOrphanPuppy},
	{70 * perPound, 60 * perPound, unweanedPuppy, "puppy in week 2, printed as 70 kcal/lb", sourceOrphanPuppy},
	{80 * perPound, 60 * perPound, unweanedPuppy, "puppy in week 3, printed as 80 kcal/lb", sourceOrphanPuppy},
	{90 * perPound, 90 * perPound, unweanedPuppy, "puppy in week 4, printed as 90 kcal/lb", sourceOrphanPuppy},
}

// The table of orphan kittens starts low on purpose. Table 23-1 of the same
// book prints 38 kcal/100 g as the need at birth.
var (
	orphanKitten1 = coefficient{15, 15, lawlerKitten, "kitten on days 1 to 3, a low start on purpose", sourceOrphanKitten}
	orphanKitten4 = coefficient{20, 20, lawlerKitten, "kitten on days 4 to 6", sourceOrphanKitten}
	orphanKitten7 = coefficient{22.5, 20, lawlerKitten, "kitten from day 7, the middle of 20 to 25", sourceOrphanKitten}
)

// coefficient returns the row for checked inputs.
func (s Nursling) coefficient(method Method) coefficient {
	var c coefficient
	switch a := &s.Animal; {
	case a.Species == Dog:
		c = orphanPuppies[weekOfLife(a.Age)-1]
	case a.Age <= 3:
		c = orphanKitten1
	case a.Age <= 6:
		c = orphanKitten4
	default:
		c = orphanKitten7
	}
	switch {
	case method != NRC2006:
	case s.Animal.Species == Dog:
		c.value, c.label, c.source = unweanedPuppy, "puppy from birth to weaning", sourceUnweanedPuppy
	default:
		c.value, c.label, c.source = unweanedKitten, "kitten from birth to weaning, the middle of 20 to 25", sourceUnweanedKitten
	}
	return c
}

// weekOfLife returns 1 for days 1 to 7, and so on.
func weekOfLife(a Age) int { return int((a + Week - 1) / Week) }

// nurslingHigh are the heaviest weights taken, by week of life: ours, above the
// largest breeds.
var nurslingHigh = [...][4]units.Mass{
	Dog: {2 * units.Kilogram, 3.5 * units.Kilogram, 5 * units.Kilogram, 7 * units.Kilogram},
	Cat: {350 * units.Gram, 500 * units.Gram, 700 * units.Gram, 900 * units.Gram},
}

// nurslingLow are the weights below which it is a slip or a dying animal: ours,
// below the smallest breeds.
var nurslingLow = [...][4]units.Mass{
	Dog: {50 * units.Gram, 70 * units.Gram, 100 * units.Gram, 130 * units.Gram},
	Cat: {40 * units.Gram, 70 * units.Gram, 100 * units.Gram, 130 * units.Gram},
}

// newbornHigh are the weights above which an age up to newborn is likelier to
// be weeks than days: ours, above the largest breeds at that age.
var newbornHigh = [...]units.Mass{Dog: 1200 * units.Gram, Cat: 200 * units.Gram}

const newborn = 4 * Day // nurslings have four weeks, so that a slip has up to four days

// nurslingBounds returns the weights taken in a week of life.
func nurslingBounds(week int) [3]bounds {
	i := week - 1
	return [3]bounds{Dog: {anyStage[Dog].low, nurslingHigh[Dog][i]}, Cat: {anyStage[Cat].low, nurslingHigh[Cat][i]}}
}
