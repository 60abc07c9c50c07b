package diet

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// The works that the figures of the standards are from, and how each was seen.
const (
	workAAFCO = "AAFCO, Methods for Substantiating Nutritional Adequacy of Dog and Cat Foods, proposed revisions edited per comments " +
		"for the 2014 Official Publication (adopted, with edits, in 2016)"
	workAAFCOProfiles = "AAFCO Dog and Cat Food Nutrient Profiles (2016)"
	workFEDIAFDogs    = "FEDIAF Nutritional Guidelines (2016 and later)"
	workFEDIAFCats    = "FEDIAF Nutritional Guidelines (2019 and later)"
	workNRC           = "NRC 2006, Nutrient Requirements of Dogs and Cats"
)

var (
	aafcoDog      = &advice.Source{Work: workAAFCO, Where: "dog food profiles based on calorie content", Seen: advice.Primary}
	aafcoDogDM    = &advice.Source{Work: workAAFCO, Where: "Example A2, profile column, at 4000 kcal/kg DM", Seen: advice.Primary}
	aafcoCatDM    = &advice.Source{Work: workAAFCO, Where: "cat food profiles based on dry matter, at 4000 kcal/kg DM", Seen: advice.Primary}
	aafcoCatB1    = &advice.Source{Work: workAAFCO, Where: "Example B1, profile column, at 4000 kcal/kg DM", Seen: advice.Primary}
	aafcoCopied   = &advice.Source{Work: workAAFCOProfiles, Where: "based on dry matter, at 4000 kcal/kg DM", Seen: advice.Secondary}
	aafcoRecalled = &advice.Source{Work: workAAFCOProfiles, Where: "as adopted", Seen: advice.Memory}

	// The protein of puppies, 25 and 20 % of dry matter, was read in FEDIAF's own
	// substantiation of it; the rest of the table was not.
	fediafDog      = &advice.Source{Work: workFEDIAFDogs, Where: "recommended levels for dogs", Seen: advice.Memory}
	fediafCat      = &advice.Source{Work: workFEDIAF, Where: "Table III-4, per 100 g of dry matter", Seen: advice.Primary}
	fediafCat100   = &advice.Source{Work: workFEDIAF, Where: "Table VII-19 b, adult cats at 100 kcal/kg^0.67", Seen: advice.Primary}
	fediafCatBones = &advice.Source{Work: workFEDIAFCats, Where: "recommended levels for cats", Seen: advice.Memory}

	nrcProtein  = &advice.Source{Work: workNRC, Where: "recommended allowance, as FEDIAF quotes it", Seen: advice.Secondary}
	nrcRecalled = &advice.Source{Work: workNRC, Where: "ch. 15, recommended allowance", Seen: advice.Memory}
)

// The equation, and where the intakes that the minima are tied to are from.
var (
	sourceEquation = advice.Source{
		Work: workFEDIAF, Where: "units/1000 kcal = requirement per kg of metabolic weight × 1000 / energy per kg of it", Seen: advice.Primary,
	}
	sourceReferenceCats = advice.Source{Work: workFEDIAF, Where: "2.1: 75 and 100 kcal/kg^0.67 in cats", Seen: advice.Primary}
	sourceReferenceDogs = advice.Source{Work: workFEDIAFDogs, Where: "95 and 110 kcal/kg^0.75 in dogs", Seen: advice.Memory}
	sourceReferenceNRC  = advice.Source{Work: workFEDIAF, Where: "2.5: NRC's allowances assume 130 kcal/kg^0.75 in dogs and 100 kcal/kg^0.67 in cats", Seen: advice.Primary}
)

// intakeSource says where the intake that the minima of t are tied to is from.
func (t *standardTable) intakeSource() advice.Source {
	switch {
	case t.standard == NRC2006:
		return sourceReferenceNRC
	case t.species == energy.Cat:
		return sourceReferenceCats
	}
	return sourceReferenceDogs
}
