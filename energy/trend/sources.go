package trend

import "example.org/bowlgram/energy/advice"

// The works that rates, steps, flags and their wording rest on.
var (
	sacn   = "Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010"
	aaha14 = "Brooks and others, 2014 AAHA Weight Management Guidelines, J Am Anim Hosp Assoc 50:1-11"
	aaha21 = "Cline and others, 2021 AAHA Nutrition and Weight Management Guidelines, J Am Anim Hosp Assoc 57:153-178"
	cote   = "Cohn, Côté (eds), Côté's Clinical Veterinary Advisor, 4th ed., 2020"

	sourceRate       = advice.Source{Work: sacn, Where: "p. 522 and Box 27-12, p. 532", Seen: advice.Primary}
	sourceRateCat    = advice.Source{Work: sacn, Where: "p. 529", Seen: advice.Primary}
	sourceTarget     = advice.Source{Work: aaha14, Where: "1 to 2 % a week in dogs, 0.5 to 2 % in cats", Seen: advice.Secondary}
	sourceStep       = advice.Source{Work: aaha14, Where: "5 to 20 %, usually 10 %", Seen: advice.Memory}
	sourceBigStep    = advice.Source{Work: sacn, Where: "case, p. 540: 920 to 725 kcal after a gain", Seen: advice.Primary}
	sourceAsk        = advice.Source{Work: sacn, Where: "Box 27-12, p. 532, and Box 27-1, p. 504", Seen: advice.Primary}
	sourceMonth      = advice.Source{Work: "Weight reduction in pets (veterinary client handout)", Where: "cut after a month without response", Seen: advice.Primary}
	sourceRecheck    = advice.Source{Work: sacn, Where: "Box 27-12, p. 532: every 2 weeks for the first 2 months", Seen: advice.Primary}
	sourceMonthly    = advice.Source{Work: aaha14, Where: "Monitoring: every 2 weeks until the rate is established, then monthly", Seen: advice.Primary}
	sourceAfter      = advice.Source{Work: "Nelson, Couto (eds), Small Animal Internal Medicine, 6th ed., 2020", Where: "p. 907", Seen: advice.Primary}
	sourceRegain     = advice.Source{Work: "Deagle and others, J Nutr Sci 2014;3:e25", Where: "12 of 26 cats regained more than 5 %", Seen: advice.Primary}
	sourceCat24      = advice.Source{Work: cote, Where: "p. 3088", Seen: advice.Primary}
	sourceHalf       = advice.Source{Work: sacn, Where: "p. 529; the two days are ours", Seen: advice.Primary}
	sourceThird      = advice.Source{Work: aaha21, Where: "Feeding plans for hospitalized patients", Seen: advice.Primary}
	sourceShelter    = advice.Source{Work: "Cornell University, Nutrition in the shelter", Where: "more than 3 % in an adult", Seen: advice.Primary}
	sourceTenth      = advice.Source{Work: "a critical-care textbook chapter on when to start nutritional support", Where: "10 % lost", Seen: advice.Secondary}
	sourceKittenGain = advice.Source{Work: sacn, Where: "Table 23-5, p. 422", Seen: advice.Primary}
	sourcePuppyGain  = advice.Source{Work: sacn, Where: "Table 16-1, p. 297", Seen: advice.Primary}
	sourceFirstDay   = advice.Source{Work: "University of Minnesota (Root Kustritz), feeding orphans", Where: "gains every day after the first 24 h", Seen: advice.Primary}
	sourceTissue     = advice.Source{Work: sacn, Where: "Table 27-15, p. 528: 7,920 kcal/kg", Seen: advice.Primary}
	ours             = advice.Source{Seen: advice.Ours}
)
