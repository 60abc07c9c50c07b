package energy

import (
	"strings"

	"example.org/bowlgram/units"
)

// Growth is the energy of a weaned puppy or kitten, from 4 weeks to 2 years of
// age, on its current weight. p is that weight over the expected AdultWeight.
//
//	puppies
//	fediaf         210, 175, 140 × kg^0.75 to 50, 80, 100 %     default with AdultWeight
//	nrc_2006       130 × kg^0.75 × 3.2 × (e^(-0.87p) - 0.1)     needs AdultWeight
//	klein_2019     (1.063 - 0.565p) MJ × kg^0.75                needs AdultWeight
//	factor_on_rer  3.0 under 4 months, then 2.0                 needs Age; default without AdultWeight
//	kittens
//	nrc_2006       100 × kg^0.67 × 6.7 × (e^(-0.189p) - 0.66)   default with AdultWeight
//	fediaf         2.25, 1.875, 1.5 × 87.5 × kg^0.67            AdultWeight (50, 70 %), or Age (4, 9, to 12 months)
//	factor_on_rer  3.0, 2.5, 2.0 to 50, 70, 100 %; 2.5 without AdultWeight
//	per_kilogram   250 down to 85 × kg, by completed month      needs Age to 1 y; default without AdultWeight
//
//	month          0    1    2    3    4    5    6    7    8    9    10  11  12
//	kcal/kg        250  240  210  200  175  145  135  120  110  100  95  90  85
//
// FEDIAF is the default for puppies, since NRC 2006 runs a third higher at 30 %
// of the adult weight, what pet puppies ate in Klein 2019 agrees with FEDIAF,
// and overfeeding harms the joints of large breeds. Where AdultWeight is not
// known it is not guessed: the figure goes by age, with a caution, and without
// an age there is none.
//
// Exactly on a boundary the lower figure holds (ours; no source says), so that
// the energy falls by a sixth or more where a band ends, while the animal grows.
// The NRC forms have no jumps, but fall before the animal is grown and end above
// the adult figure.
//
// Refused are a weight above AdultWeight, one below a fiftieth of it (ours), a
// recorded ideal weight (the expected weight goes in AdultWeight), a nursling,
// a pregnant or lactating animal, and ferrets, for whose young no energy is
// published.
type Growth struct {
	Animal      Animal     `json:"animal"`                // at its current weight; no ideal weight
	AdultWeight units.Mass `json:"adult_weight,omitzero"` // expected when full grown; zero: not known
	Method      Method     `json:"method,omitzero"`       // zero: the default above
}

// growthReweigh: once a week or more often. Ours, within the published
// intervals for the young.
const growthReweigh = Week

// Ages of growth: the youngest is a nursling before, and the charts of Salt and
// others 2017 end at 2 years. Until weaned it eats gruel and milk. All ours.
const (
	growthFrom = 4 * Week
	growthTo   = 2 * Year
	weaned     = 8 * Week
)

// smallestPart of the adult weight: below it one of the two is a slip. Ours;
// at four weeks a puppy of a giant breed has a thirtieth (from memory).
const smallestPart = 1.0 / 50

// youngPart of the adult weight: below it an animal may be a nursling, so that
// its age must be known. Ours; at birth it has up to 6.5 % of its dam's weight
// (SACN 5th ed.), at eight weeks a fifth.
const youngPart = 0.15

// method returns the method used.
func (s Growth) method() Method {
	switch dog := s.Animal.Species == Dog; {
	case s.Method != 0:
		return s.Method
	case s.AdultWeight == 0 && dog:
		return FactorOnRER
	case s.AdultWeight == 0:
		return PerKilogram
	case dog:
		return FEDIAF
	}
	return NRC2006
}

// Estimate returns the energy of the growing animal.
func (s Growth) Estimate() (Estimate, error) {
	method := s.method()
	if faults := s.check(method); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	e := Estimate{
		Stage: s, Animal: s.Animal, Weight: s.Animal.Weight, Basis: Current, Method: method, Reweigh: growthReweigh,
	}
	e.Daily, e.Low, e.High = s.energy(method)
	return e, nil
}

func (s Growth) check(method Method) units.ErrorList {
	a := s.Animal
	// An ideal weight is refused as such, whatever it is.
	a.Ideal = 0
	faults := a.check(true)
	if s.Animal.Ideal != 0 {
		faults = append(faults, refuse("ideal weight", s.Animal.Ideal.String(), "none in growth",
			"the expected adult weight goes in AdultWeight"))
	}
	if err := a.checkSpecies(noYoung, Dog, Cat); err != nil {
		faults = append(faults, err)
	}
	faults = append(faults, a.misplaced("an animal that is growing, not pregnant or lactating", Growing)...)
	switch {
	case 0 < a.Age && a.Age < growthFrom:
		faults = append(faults, refuse("age", a.Age.String(), growthAges, "still nursing: Nursling"))
	case growthTo < a.Age && a.Age <= maxAge:
		faults = append(faults, refuse("age", a.Age.String(), growthAges, "grown: Adult"))
	}
	if a.Species != Dog && a.Species != Cat {
		return faults
	}
	faults = append(faults, s.checkWeights()...)
	return append(faults, s.checkMethod(method)...)
}

const growthAges = "4 wk to 2 y in growth"

// checkWeight refuses a weight that no puppy or kitten of that age has.
func (s Growth) checkWeight() error {
	a := s.Animal
	if a.Age < growthFrom || growthTo < a.Age {
		return a.checkWeight(anyStage[:], "")
	}
	table := growthBounds(a.Age)
	return a.checkWeight(table[:], article(a.Age)+" "+a.Age.String()+" old ")
}

// article returns the one before an age of growth: an 8 wk old, an 11 mo old, an 18
// mo old puppy.
func article(a Age) string {
	text := a.String()
	if number := text[:strings.IndexByte(text, ' ')]; number[0] == '8' || number == "11" || number == "18" {
		return "an"
	}
	return "a"
}

// growthBounds returns the weights taken at an age: ours, wider than any breed,
// so that a slip of the unit or of a digit is seen.
func growthBounds(a Age) [3]bounds {
	weeks := units.Mass((a - growthFrom) / Week)
	return [3]bounds{
		Dog: {min(150+25*weeks, 800), min(7000+2500*weeks, anyStage[Dog].high)},
		Cat: {min(150+30*weeks, 1000), min(1000+250*weeks, 12000)},
	}
}

// checkWeights refuses weights that no puppy or kitten has, or will have.
func (s Growth) checkWeights() units.ErrorList {
	var faults units.ErrorList
	w, adult := s.Animal.Weight, s.AdultWeight
	if err := s.checkWeight(); err != nil {
		faults = append(faults, err)
	}
	if adult == 0 {
		return faults
	}
	grown := Animal{Species: s.Animal.Species, Weight: adult}
	if fault, ok := grown.checkWeight(adults[:], "").(*units.FieldError); ok {
		fault.Field = "adult weight"
		faults = append(faults, fault)
	}
	switch {
	case len(faults) > 0:
	case w > adult:
		faults = append(faults, refuse("weight", w.String(), "at most the expected adult weight of "+readable(atMost(adult)),
			"grown: Adult; or one of the two is in other units"))
	case s.Animal.Age == 0 && w < youngPart*adult:
		faults = append(faults, refuse("age", "", "an age, for an animal below 15 % of its adult weight",
			"under 4 wk it gets half as much: Nursling"))
	case w < smallestPart*adult:
		faults = append(faults, refuse("weight", w.String(), "at least a fiftieth of the expected adult weight of "+readable(adult),
			"one of the two is in other units, or it is still nursing: Nursling"))
	}
	return faults
}

// checkMethod refuses a method that the species doesn't have, and one that
// lacks what it needs.
func (s Growth) checkMethod(m Method) units.ErrorList {
	accepted := []Method{FEDIAF, NRC2006, Klein2019, FactorOnRER}
	if s.Animal.Species == Cat {
		accepted = []Method{NRC2006, FEDIAF, FactorOnRER, PerKilogram}
	}
	if err := checkMethod(m, accepted...); err != nil {
		return units.ErrorList{err}
	}
	dog, age, sized := s.Animal.Species == Dog, s.Animal.Age, s.AdultWeight != 0
	byMonth := m == PerKilogram || m == FEDIAF && !dog && !sized
	byAge := byMonth || m == FactorOnRER && (dog || !sized)
	ages := "4 wk to 2 y"
	if byMonth {
		ages = "4 wk to 1 y"
	}
	switch {
	case !sized && (m == NRC2006 || m == Klein2019 || m == FEDIAF && dog):
		return units.ErrorList{refuse("adult weight", "", "the expected adult weight for method "+m.String(),
			"not given; without it: "+byAgeOnly(dog))}
	case byAge && age == 0 && s.Method == 0:
		return units.ErrorList{refuse("age", "", ages+", or the expected adult weight", "neither is given")}
	case byAge && age == 0:
		return units.ErrorList{refuse("age", "", ages+" for method "+m.String(), "not given")}
	case byMonth && tableEnd < age && age <= growthTo:
		return units.ErrorList{refuse("age", age.String(), ages+" for method "+m.String(),
			"its table ends there: Adult, if grown; else the expected adult weight and method nrc_2006")}
	}
	return nil
}

// byAgeOnly returns the methods that do without an adult weight.
func byAgeOnly(dog bool) string {
	if dog {
		return FactorOnRER.String()
	}
	return list([]Method{PerKilogram, FEDIAF, FactorOnRER})
}

// part returns the current weight over the adult weight.
func (s Growth) part() float64 { return float64(s.Animal.Weight / s.AdultWeight) }

// metabolic returns the weight to the power of the species, and how that is
// written.
func (s Growth) metabolic() (x float64, text string) {
	a := &s.Animal
	if a.Species == Cat {
		return MetabolicWeight(Cat, a.Weight), "kg^0.67"
	}
	return MetabolicWeight(Dog, a.Weight), "kg^0.75"
}

// base returns what the coefficient of a row is multiplied with, and how that
// is written.
func (s Growth) base(m Method) (base units.Energy, text string) {
	switch w := s.Animal.Weight; m {
	case FactorOnRER:
		return rer(w), "resting energy"
	case PerKilogram:
		return units.Energy(w.Kilograms()), "kg"
	}
	x, text := s.metabolic()
	return units.Energy(x), text
}

// energy returns the day's energy by a method, with its spread.
func (s Growth) energy(m Method) (daily, low, high units.Energy) {
	switch x, _ := s.metabolic(); m {
	case NRC2006:
		c := s.curve()
		daily = units.Energy(c.maintenance * x * c.factor(s.part()))
	case Klein2019:
		daily = units.Energy(kleinFactor(s.part())*x) * units.Megajoule
	default:
		c := s.row(m)
		base, _ := s.base(m)
		daily = units.Energy(c.value) * base
		low, high = c.spread(s.Animal.Species, base, daily)
		return daily, low, high
	}
	low, high = spread(s.Animal.Species, daily)
	return daily, low, high
}
