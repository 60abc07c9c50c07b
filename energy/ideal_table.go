package energy

import "example.org/bowlgram/energy/advice"

// Weight above ideal for each point above 5/9, in percent of the ideal weight.
//
// They are not taken off the current weight, as Vet Times 2015 also prints: that
// reads "% over ideal" as if it were "% of the current weight". A dog of 40 kg at
// 9/9 would have to come down to 24 or 16 kg, where division by 1.40 says 28.6 kg
// and body fat 30 kg.
const (
	perPoint     = 10 // about: MVMA 2023; the low end of Vet Times 2015
	perPointHigh = 15 // the high end of Vet Times 2015
)

// Body fat in percent at the scores 5/9 to 9/9. SACN 5th ed., Table 27-3, p.
// 506, prints 20, 30 and "at least 40" for 3/5, 4/5 and 5/5, which are 5/9, 7/9
// and 9/9; the two between are AAHA 2014 (from memory).
var bodyFat = [...]int{5: idealFat, 6: 25, 7: 30, 8: 35, 9: 40}

// idealFat is the body fat at ideal weight: SACN 5th ed., Table 27-3; within
// the 15 to 24 % that Tudor 2013 reports from the work of Witzel.
const idealFat = 20

// Scores on the scale of nine.
const (
	idealScore = 5
	topScore   = 9
)

var (
	sourceIdealOrder = advice.Source{Work: sacn, Where: "Table 27-11, p. 527", Seen: advice.Primary}
	sourcePerPoint   = advice.Source{Work: "MVMA Proceedings 2023, Nutritional Management of Canine and Feline Obesity", Where: "about 10 % over ideal a point", Seen: advice.Primary}
	sourcePerPoint15 = advice.Source{Work: "Vet Times, Tackling obesity in cats and dogs, 2015-11-03", Where: "10 to 15 % a point", Seen: advice.Primary}
	sourceBodyFat    = advice.Source{Work: sacn, Where: "Table 27-3, p. 506; 6/9 and 8/9 from memory of AAHA 2014", Seen: advice.Primary}
)
