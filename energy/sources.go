package energy

import "example.org/bowlgram/energy/advice"

// The works that the equations and the cautions rest on, one variable each.
var (
	sacn      = "Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010"
	nrc       = "National Research Council, Nutrient Requirements of Dogs and Cats, 2006"
	fediaf    = "FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs, Annex VII-2"
	melbourne = "Melbourne Polytechnic, Veterinary Nursing Key Mathematical Concepts: Dietary requirements (after Gajanayake, Lumbis, Greet, Girling 2011)"
	catCare   = "Cat Healthy Protocols (Canada), 4 Nutritional Assessment"
	aaha21    = "Cline and others, 2021 AAHA Nutrition and Weight Management Guidelines, J Am Anim Hosp Assoc 57:153-178"

	sourceRER = advice.Source{Work: sacn, Where: "Table 5-2, p. 61", Seen: advice.Primary}
	sourceBox = advice.Source{Work: sacn, Where: "Table 14-4, p. 279", Seen: advice.Primary}

	sourceWeightUsed = advice.Source{Work: aaha21, Where: "Feeding plans for hospitalized patients", Seen: advice.Primary}

	// The general spread of the population around an equation.
	sourceSpreadDog = advice.Source{Work: "AAHA 2010 and WSAVA 2011 nutritional assessment guidelines", Where: "dogs ±30 %", Seen: advice.Secondary}
	sourceSpreadCat = advice.Source{Work: sacn, Where: "p. 377, cats at least ±50 %", Seen: advice.Primary}

	sourceStarved = advice.Source{Work: "Pointer and others 2013 (emaciated: 30 % or more below ideal), taken as 2/9 or 1/5 and less", Seen: advice.Ours}
	sourceRefeed  = advice.Source{Work: "UC Davis Koret Shelter Medicine Program, Starvation and Re-Feeding Animals", Seen: advice.Primary}
	sourceCat24   = advice.Source{Work: "Cohn, Côté (eds), Côté's Clinical Veterinary Advisor, 4th ed., 2020", Where: "p. 3088", Seen: advice.Primary}
	sourceFerret  = advice.Source{Work: sacn, Where: "Table 70-1 after McLain 1988", Seen: advice.Secondary}
	sourceTransit = advice.Source{Work: sacn, Where: "p. 1216", Seen: advice.Primary}
	ours          = advice.Source{Seen: advice.Ours}
)
