package energy

import "example.org/bowlgram/energy/advice"

var (
	sacn33     = advice.Source{Work: sacn, Where: "Table 33-7, p. 683", Seen: advice.Primary}
	melbFactor = advice.Source{Work: melbourne, Seen: advice.Primary}
	catFactor  = advice.Source{Work: catCare, Where: "Table 1", Seen: advice.Primary}
	nrcSeen    = advice.Source{Work: nrc, Where: "ch. 3, as FEDIAF Annex VII-2 names it", Seen: advice.Secondary}
	nrcMemory  = advice.Source{Work: nrc, Where: "ch. 3", Seen: advice.Memory}
	fediafSeen = advice.Source{Work: fediaf, Where: "Table VII-12", Seen: advice.Primary}
)

// Factors on the resting energy requirement, kcal per kcal, by status.
//
// AAHA 2021, Box 1, takes 1.4 for a neutered dog where SACN and the teaching
// guides take 1.6; the working of a neutered dog prints both.
var dogFactors = [...]coefficient{
	Neutered: {1.6, 0, 0, "neutered dog", sacn33},
	Intact:   {1.8, 0, 0, "intact dog", sacn33},
	Inactive: {1.2, 0, 0, "inactive or obese-prone dog, the lower end of 1.2 to 1.4", sacn33},
	Senior:   {1.4, 0, 0, "senior dog", melbFactor},
	Unknown:  {1.6, 0, 0, "neuter status unknown: the lower factor, that of a neutered dog", sacn33},
}

var catFactors = [...]coefficient{
	Neutered: {1.2, 0, 0, "neutered cat", catFactor},
	Intact:   {1.4, 0, 0, "intact cat", catFactor},
	Inactive: {1.0, 0, 0, "inactive or obese-prone cat", catFactor},
	Senior:   {1.25, 1.1, 1.4, "senior cat, the middle of 1.1 to 1.4", advice.Source{Work: melbourne, Seen: advice.Secondary}},
	Unknown:  {1.2, 0, 0, "neuter status unknown: the lower factor, that of a neutered cat", catFactor},
}

// aahaNeuteredDog stands beside 1.6 in the working: AAHA 2021, Box 1.
const aahaNeuteredDog = 1.4

// Allometric coefficients, kcal × kg^-0.75.
var dogNRC = [...]coefficient{
	Neutered: {130, 0, 0, "kennel or active pet dog", nrcSeen},
	Intact:   {130, 0, 0, "kennel or active pet dog", nrcSeen},
	Inactive: {95, 0, 0, "inactive pet dog", nrcMemory},
	Senior:   {105, 0, 0, "older dog", nrcMemory},
	Unknown:  {130, 0, 0, "kennel or active pet dog", nrcSeen},
}

var dogFEDIAF = [...]coefficient{
	Neutered: {110, 0, 0, "dog with 1 to 3 h a day of low-impact activity", fediafSeen},
	Intact:   {110, 0, 0, "dog with 1 to 3 h a day of low-impact activity", fediafSeen},
	Inactive: {95, 0, 0, "dog with less than 1 h a day of activity", fediafSeen},
	Senior:   {95, 0, 0, "dog over 7 years", advice.Source{Work: fediaf, Where: "table by age", Seen: advice.Secondary}},
	Unknown:  {95, 0, 0, "activity unknown: the lower figure", fediafSeen},
}

// Allometric coefficients of cats, kcal × kg^-0.67.
var catFEDIAF = [...]coefficient{
	Neutered: {75, 0, 0, "neutered or indoor cat", fediafSeen},
	Intact:   {100, 0, 0, "active cat", fediafSeen},
	Inactive: {75, 0, 0, "neutered or indoor cat", fediafSeen},
	Senior:   {75, 0, 0, "neutered or indoor cat", fediafSeen},
	Unknown:  {75, 0, 0, "neuter status unknown: the lower figure", fediafSeen},
}

// NRC 2006 has one curve for lean cats, kcal × kg^-0.67, and one for
// overweight cats, kcal × kg^-0.40, on the weight they have. Both reproduce the
// owner booklet of 2006.
var (
	catNRCLean = coefficient{100, 0, 0, "lean cat", nrcSeen}
	catNRCFat  = coefficient{130, 0, 0, "overweight cat, on its current weight", nrcMemory}
)

const (
	exponentCat    = 0.67
	exponentCatFat = 0.40
)

// Bermingham and others: 70 groups of dogs from pet to racing, kcal × kg^-0.93,
// and 115 groups of cats, light, normal or heavy, each with a power of its own.
// Which score is light or heavy is ours. The minus signs before the exponents
// in print are part of the unit.
var (
	dogBermingham = coefficient{81.5, 0, 0, "dogs from pet to racing", sourceBerminghamDog}

	catBerminghamLight  = coefficient{53.7, 0, 0, "light cat", sourceBerminghamCat}
	catBerminghamNormal = coefficient{46.8, 0, 0, "cat of normal weight", sourceBerminghamCat}
	catBerminghamHeavy  = coefficient{131.8, 0, 0, "heavy cat, on its current weight", sourceBerminghamCat}
)

const (
	exponentDogBermingham       = 0.93
	exponentCatBerminghamLight  = 1.061
	exponentCatBerminghamNormal = 1.115
	exponentCatBerminghamHeavy  = 0.366
)

// dogThes is the mean of 586 client-owned dogs, 58 % of them neutered, with the
// standard deviation of 29 on either side, kcal × kg^-0.75.
var dogThes = coefficient{98, 98 - 29, 98 + 29, "client-owned dogs, mean and standard deviation of 586", sourceThes}

var (
	sourceBerminghamDog = advice.Source{Work: "Bermingham and others, Energy requirements of adult dogs: a meta-analysis, PLoS ONE 2014;9(10):e109681", Where: "abstract", Seen: advice.Primary}
	sourceBerminghamCat = advice.Source{Work: "Bermingham and others, Energy requirements of adult cats, Br J Nutr 2010;103:1083-1093", Where: "abstract", Seen: advice.Primary}
	sourceThes          = advice.Source{Work: "Thes M, dissertation on the energy requirement of privately kept dogs and cats, LMU Munich, 2014", Where: "abstract", Seen: advice.Primary}
)

// ferretPerKilogram is kcal for each kg: SACN 5th ed., Table 70-1, prints 200
// to 300. The middle is used.
var ferretPerKilogram = coefficient{250, 200, 300, "adult ferret, the middle of 200 to 300", sourceFerret}
