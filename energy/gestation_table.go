package energy

import "example.org/bowlgram/energy/advice"

var (
	sacnBitch     = advice.Source{Work: sacn, Where: "Table 15-10, p. 292", Seen: advice.Primary}
	sacnQueen     = advice.Source{Work: sacn, Where: "ch. 22, p. 410 (steps by week: ours)", Seen: advice.Primary}
	sacnJill      = advice.Source{Work: sacn, Where: "p. 1218", Seen: advice.Primary}
	sacnGain      = advice.Source{Work: sacn, Where: "Table 15-2, p. 283", Seen: advice.Primary}
	sacnQueenGain = advice.Source{Work: sacn, Where: "ch. 22, p. 411", Seen: advice.Primary}

	// "Must", for the young, the pregnant and the lactating.
	sourceOften = advice.Source{
		Work:  "Association of Shelter Veterinarians, Guidelines for Standards of Care in Animal Shelters, 2nd ed., 2022",
		Where: "nutrition section", Seen: advice.Secondary,
	}
	sourceToxaemia = advice.Source{Work: "pregnancy toxaemia of ferrets, veterinary teaching", Seen: advice.Memory}
)

// Weeks of gestation from mating that have a published figure. The jill's six
// are her 42 days, from memory.
var gestationWeeks = [...]int{Dog: 9, Cat: 9, Ferret: 6}

// lateGestation is the first of the last five weeks of a bitch, from day 29:
// NRC 2006 and SACN 5th ed., Table 15-10.
const lateGestation = 5

// bitchNRCLate is kcal × kg^-1, added from then on to those × kg^-0.75.
const bitchNRCLate = 26

// Coefficients of NRC 2006: kcal × kg^-0.75 of a bitch, kg^-0.67 of a queen.
var (
	bitchNRC = coefficient{130, 0, 0, "pregnant bitch", nrcMemory}
	queenNRC = coefficient{140, 0, 0, "pregnant queen, in every week", nrcMemory}
)

// Factors on the resting energy requirement.
var (
	bitchFactorEarly = coefficient{1.9, 1.8, 2.0, "bitch in weeks 1 to 4, the middle of 1.8 to 2.0", sacnBitch}
	bitchFactorLate  = coefficient{2.85, 2.2, 3.5, "bitch in the last 5 weeks, the middle of 2.2 to 3.5", sacnBitch}
)

// A queen's factor rises gradually between these: SACN 5th ed., p. 410. Even
// steps from week 1 to week 9 are ours.
const (
	queenMating = 1.6
	queenBirth  = 2.0
)

// jillGestation is "about twice" maintenance: SACN 5th ed., p. 1218.
const jillGestation = 2

// jillPregnant is kcal for each kg.
var jillPregnant = coefficient{
	jillGestation * ferretPerKilogram.value, jillGestation * ferretPerKilogram.low, jillGestation * ferretPerKilogram.high,
	"pregnant jill, about twice the 200 to 300 of maintenance", sacnJill,
}
