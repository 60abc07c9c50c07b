package energy

import (
	"math"

	"example.org/bowlgram/energy/advice"
)

var (
	sacnLitter    = advice.Source{Work: sacn, Where: "Table 5-2, p. 61", Seen: advice.Primary}
	sacnLitterMem = advice.Source{Work: sacn, Where: "Table 5-2, p. 61", Seen: advice.Memory}
	sacnPerPuppy  = advice.Source{Work: sacn, Where: "Table 15-10, p. 292 (2.1) and case, p. 294 (1.9)", Seen: advice.Primary}

	sourceQueenBooklet = advice.Source{Work: "National Academies, Your Cat's Nutritional Needs, 2006", Where: "p. 5, row of the nursing queen", Seen: advice.Primary}
	sourceFogle        = advice.Source{Work: "Fogle, on the nursing queen", Seen: advice.Memory}
	sourceBell         = advice.Source{Work: "Bell, Feeding Pregnant, Nursing and Growing Ferrets", Seen: advice.Primary}

	// The guidelines ask for small amounts often, or free choice.
	sourceFloor     = advice.Source{Work: sourceOften.Work + ": small amounts often or free choice; taken as free choice, and the figure as a floor", Seen: advice.Ours}
	sourceEclampsia = advice.Source{Work: "eclampsia, veterinary teaching", Seen: advice.Memory}
)

// milk is the form of NRC 2006 for a species: base × kg^x for herself and, for
// her milk, so many kcal × kg^-1 by litter, times a factor by week.
//
// All of it is from memory but for the queen's 100, and 60 × 1.2, which
// reproduce the owner booklet.
type milk struct {
	base   coefficient
	litter func(young int) float64
	weeks  []float64 // week 1 first
	peak   int       // week, the first if there are two
}

var milks = [...]milk{
	Dog: {
		base:   coefficient{145, 0, 0, "lactating bitch", nrcMemory},
		litter: bitchLitter,
		weeks:  []float64{0.75, 0.95, 1.1, 1.2},
		peak:   4,
	},
	Cat: {
		base:   coefficient{100, 0, 0, "lactating queen", nrcMemory},
		litter: queenLitter,
		weeks:  []float64{0.9, 0.9, 1.2, 1.2, 1.1, 1.0, 0.8},
		peak:   3,
	},
}

// jillWeeks: kits are weaned at six to eight weeks, from memory.
const jillWeeks = 6

// lactationWeeks returns the last week with a published figure.
func lactationWeeks(s Species) int {
	if s == Ferret {
		return jillWeeks
	}
	return len(milks[s].weeks)
}

// A bitch's first four puppies and her next four: kcal × kg^-1 for each.
const (
	firstPuppies = 24
	nextPuppies  = 12
	maxPuppies   = 8 // more have no published figure
)

// What the owner booklet's nursing queens are computed with.
const (
	bookletLitter = 60
	bookletWeek   = 1.2
)

// splitLitter returns how many puppies count as first and how many as next.
func splitLitter(young int) (first, next int) {
	return min(young, 4), min(max(young-4, 0), 4)
}

func bitchLitter(young int) float64 {
	first, next := splitLitter(young)
	return float64(firstPuppies*first + nextPuppies*next)
}

func queenLitter(young int) float64 {
	switch {
	case young < 3:
		return 18
	case young <= 4:
		return 60
	}
	return 70
}

// bitchFactors are on the resting energy requirement, by the largest litter
// that each holds for.
var bitchFactors = [...]struct {
	puppies int
	coefficient
}{
	{1, coefficient{3.0, 0, 0, "lactating bitch with 1 puppy", sacnLitter}},
	{2, coefficient{3.5, 0, 0, "lactating bitch with 2 puppies", sacnLitter}},
	{4, coefficient{4.0, 0, 0, "lactating bitch with 3 or 4 puppies", sacnLitter}},
	{6, coefficient{5.0, 0, 0, "lactating bitch with 5 or 6 puppies", sacnLitterMem}},
	{8, coefficient{5.5, 0, 0, "lactating bitch with 7 or 8 puppies", sacnLitterMem}},
	{math.MaxInt, coefficient{6.0, 0, 0, "lactating bitch with 9 puppies or more, at least", sacnLitterMem}},
}

var queenLactating = coefficient{4, 2, 6, "lactating queen, the middle of 2 to 6", advice.Source{Work: melbourne, Seen: advice.Secondary}}

// What stands beside a bitch's figure, on the resting energy requirement: a
// range, and for the peak a multiple with a part of it more for each puppy.
const (
	bitchLow, bitchHigh = 4, 8 // SACN 5th ed., Table 15-10, p. 292

	perPuppyLow  = 1.9 // SACN case, p. 294, and Melbourne after the BSAVA textbook
	perPuppyHigh = 2.1 // Table 15-10, p. 292
	perPuppy     = 0.25
)

// fogle is kcal × kg^-1 of a queen, two weeks each.
var fogle = [...]float64{110, 150, 210}

// A jill at peak lactation eats 3 to 4 times maintenance, of which the middle
// is used: SACN 5th ed., p. 1218. Bell: 2 or 3 times as usual.
const (
	jillLow, jillHigh         = 3, 4
	jillBellLow, jillBellHigh = 2, 3
)

// jillLactating is kcal for each kg; the low and the high end of both ranges
// go together.
var jillLactating = coefficient{
	(jillLow + jillHigh) / 2.0 * ferretPerKilogram.value, jillLow * ferretPerKilogram.low, jillHigh * ferretPerKilogram.high,
	"lactating jill at the peak, 3 to 4 times the 200 to 300 of maintenance, the middle of each", sacnJill,
}
