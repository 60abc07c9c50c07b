package energy

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

var (
	fediafGrowth = advice.Source{
		Work: "FEDIAF Nutritional Guidelines, 2021", Where: "in Veterinary Nursing Journal 37(4), 2022, Table 2, p. 28", Seen: advice.Secondary,
	}
	nrcPuppy = advice.Source{
		Work: nrc, Where: "growing puppies; its factors to one decimal in Veterinary Nursing Journal 37(4), 2022, Table 2", Seen: advice.Secondary,
	}
	nrcKitten = advice.Source{Work: nrc, Where: "growing kittens", Seen: advice.Memory}
	klein     = advice.Source{
		Work:  "Klein and others, Metabolisable energy intake and growth of privately owned growing dogs, J Anim Physiol Anim Nutr, 2019",
		Where: "abstract", Seen: advice.Primary,
	}
	sacn24 = advice.Source{Work: sacn, Where: "Table 24-4, p. 434", Seen: advice.Primary}
)

// growthBand is a row that holds below a part of the adult weight or, where
// the row is chosen by age, below an age. The last row of a table has no end.
type growthBand struct {
	part, whole units.Mass // part/whole of the adult weight
	until       Age
	coefficient
}

// kcal × kg^-0.75.
var puppyFEDIAF = []growthBand{
	{1, 2, 0, coefficient{210, 0, 0, "puppy below 50 % of its adult weight", fediafGrowth}},
	{4, 5, 0, coefficient{175, 0, 0, "puppy from 50 % and below 80 % of its adult weight", fediafGrowth}},
	{0, 0, 0, coefficient{140, 0, 0, "puppy from 80 % of its adult weight", fediafGrowth}},
}

// kcal × kg^-0.67: a multiple of the maintenance of 75 to 100, of each the
// middle. Low and high are the lower and the upper ends together.
var kittenFEDIAF = []growthBand{
	{1, 2, 4 * Month, coefficient{2.25 * 87.5, 2.0 * 75, 2.5 * 100, "kitten below 50 % of its adult weight, or under 4 months: the middle of 2.0 to 2.5 × the middle of 75 to 100", fediafGrowth}},
	{7, 10, 9 * Month, coefficient{1.875 * 87.5, 1.75 * 75, 2.0 * 100, "kitten from 50 % and below 70 % of its adult weight, or from 4 and under 9 months: the middle of 1.75 to 2.0 × the middle of 75 to 100", fediafGrowth}},
	{0, 0, 0, coefficient{1.5 * 87.5, 1.5 * 75, 1.5 * 100, "kitten from 70 % of its adult weight, or from 9 months: 1.5 × the middle of 75 to 100", fediafGrowth}},
}

// Factors on the resting energy requirement, kcal per kcal. The table for
// puppies is headed large and giant breeds and ends at 12 months; AAHA 2021
// gives the same two factors for all of them and no end (from memory).
var puppyFactors = []growthBand{
	{0, 0, 4 * Month, coefficient{3.0, 0, 0, "puppy under 4 months", sacn33}},
	{0, 0, 0, coefficient{2.0, 0, 0, "puppy from 4 months", sacn33}},
}

var kittenFactors = []growthBand{
	{1, 2, 0, coefficient{3.0, 0, 0, "kitten below 50 % of its adult weight", sacn24}},
	{7, 10, 0, coefficient{2.5, 0, 0, "kitten from 50 % and below 70 % of its adult weight", sacn24}},
	{0, 0, 0, coefficient{2.0, 0, 0, "kitten from 70 % of its adult weight", sacn24}},
}

// kittenFactor holds throughout growth, for the kitten whose adult weight is
// not known.
var kittenFactor = coefficient{2.5, 0, 0, "growing kitten", melbFactor}

// kittenPerKilogram is kcal for each kg by completed months of age, from birth:
// SACN 5th ed., Table 24-4, p. 434. The text of p. 430 gives a kitten of 10
// months 80.
var kittenPerKilogram = [...]float64{250, 240, 210, 200, 175, 145, 135, 120, 110, 100, 95, 90, 85}

// What the text of the book has where its table has 95.
const (
	kittenTextMonth       = 10
	kittenTextPerKilogram = 80
)

// tableEnd is the last age of the tables by month.
const tableEnd = Year

// band returns the row for the animal: by its part of the adult weight where
// that is given, else by age. Exactly on a boundary it is the row above, whose
// figure is the lower one; no source says which.
func band(rows []growthBand, a Animal, adult units.Mass) coefficient {
	last := len(rows) - 1
	for _, r := range rows[:last] {
		if r.whole*a.Weight < r.part*adult*(1-onBoundary) || adult == 0 && a.Age < r.until {
			return r.coefficient
		}
	}
	return rows[last].coefficient
}

// row returns the coefficient for checked inputs and a method that has one.
func (s Growth) row(m Method) coefficient {
	a := s.Animal
	switch {
	case m == PerKilogram:
		month := int(a.Age / Month)
		c := coefficient{kittenPerKilogram[month], 0, 0, "kitten of " + strconv.Itoa(month) + " months", sacn24}
		if month < 2 {
			c.label = [...]string{"kitten under 1 month, the row of the newborn", "kitten of 1 month"}[month]
		}
		return c
	case m == FEDIAF && a.Species == Cat:
		return band(kittenFEDIAF, a, s.AdultWeight)
	case m == FEDIAF:
		return band(puppyFEDIAF, a, s.AdultWeight)
	case a.Species == Dog:
		return band(puppyFactors, a, 0)
	case s.AdultWeight == 0:
		return kittenFactor
	}
	return band(kittenFactors, a, s.AdultWeight)
}

// growthCurve is the form of NRC 2006: maintenance × scale × (e^(-rate p) - less),
// p being the part of the adult weight. The bracket holds less as well.
//
// It is not monotone: the energy peaks at 70.3 % (puppies) and about 82 %
// (kittens) of the adult weight, whatever that is, and falls from there. It does
// not meet the adult figure at p = 1 either: it ends 2.1 % above 130 × kg^0.75
// and 12.4 % above 100 × kg^0.67.
type growthCurve struct {
	maintenance, scale, rate, less float64
	source                         advice.Source
}

var (
	puppyNRC  = growthCurve{130, 3.2, 0.87, 0.1, nrcPuppy}
	kittenNRC = growthCurve{100, 6.7, 0.189, 0.66, nrcKitten}
)

func (s Growth) curve() *growthCurve {
	if s.Animal.Species == Cat {
		return &kittenNRC
	}
	return &puppyNRC
}

func (c *growthCurve) decay(p float64) float64  { return math.Exp(-c.rate * p) }
func (c *growthCurve) factor(p float64) float64 { return c.scale * (c.decay(p) - c.less) }

// (kleinConstant - kleinSlope p) MJ × kg^0.75: Klein and others 2019.
const (
	kleinConstant = 1.063
	kleinSlope    = 0.565
)

// kleinFactor returns MJ × kg^-0.75. The conversion keeps the product from
// being fused with the difference.
func kleinFactor(p float64) float64 { return kleinConstant - float64(kleinSlope*p) }
