package transition

import "example.org/bowlgram/energy/advice"

const sacn = "Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010"

const cote = "Cohn, Côté (eds), Côté's Clinical Veterinary Advisor: Dogs and Cats, 4th ed., 2020"

var (
	ours           = advice.Source{Seen: advice.Ours}
	sourceMissouri = advice.Source{Work: "University of Missouri Veterinary Health Center, nutrition FAQ", Where: "25 % on days 1 and 2, 50, 75, all from day 7", Seen: advice.Primary}
	sourceCats     = advice.Source{Work: sacn, Where: "ch. 20, p. 386: a quarter more each day, done on day 4", Seen: advice.Primary}
	sourceCatRange = advice.Source{Work: sacn, Where: "ch. 20, p. 386: 4 to 7 days", Seen: advice.Primary}
	sourceDogRange = advice.Source{Work: sacn, Where: "ch. 14, p. 279: 3 to 7 days", Seen: advice.Primary}
	sourceKitten   = advice.Source{Work: "The Complete Cat Breed Book (DK)", Where: "p. 215: a tenth more each day, all on day 10", Seen: advice.Primary}
	sourceTufts    = advice.Source{Work: "Tufts University Cummings School, Catnip, Why do so many cats have GI problems with new foods (Linder)", Seen: advice.Primary}
	sourceSlow     = advice.Source{Work: sourceTufts.Work, Where: "1 month to 6 weeks for slow cats; the steps are ours", Seen: advice.Primary}
	sourceSoft     = advice.Source{Work: sacn, Where: "ch. 25, p. 471: several more days on the present mix; back one step for 1 to 2 days: Tufts, Catnip (Linder)", Seen: advice.Primary}
	sourceLasting  = advice.Source{Work: sourceTufts.Work, Where: "lasting or worse signs: talk to the veterinarian", Seen: advice.Primary}
	sourceSafeGo   = advice.Source{Work: cote, Where: "client sheet, How to Change a Pet's Diet, p. 3178: go on only if stool, attitude and appetite are normal", Seen: advice.Primary}
	sourceDietFood = advice.Source{Work: cote, Where: "client sheet on obesity, p. 3088: 1 to 2 weeks", Seen: advice.Primary}
	sourceCat24    = advice.Source{Work: cote, Where: "client sheet, p. 3088: no food for 24 h", Seen: advice.Primary}
	sourceHalf     = advice.Source{Work: sacn, Where: "p. 529: at least half of the food planned; to give the old food back and call is ours", Seen: advice.Primary}
	sourceBowls    = advice.Source{Work: "University of Missouri Veterinary Health Center, nutrition FAQ", Where: "cats: two bowls", Seen: advice.Primary}
	sourceRehomed  = advice.Source{Work: "The Complete Cat Breed Book (DK)", Where: "p. 215: the old food for the first week", Seen: advice.Primary}
)
